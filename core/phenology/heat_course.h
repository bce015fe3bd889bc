#pragma once

#include "core/calendar/season.h"
#include "core/orchard/records.h"

#include <vector>

namespace topwire {

/// The heat of one season as the monthly normals let it expect: single-sine degree days
/// above `base`, averaged over the day-to-day scatter, summed from the season's first
/// day.
class HeatCourse {
public:
  /// 43 degrees F, the base of the North American apple ladders.
  static constexpr double base = 6.1;

  /// `correction` is added to the station's temperatures.
  HeatCourse(const MonthlyNormals& normals,
             double correction,
             Season season,
             Hemisphere hemisphere);

  DaySpan season() const { return season_; }

  /// Mean temperature of January (July in the south), degrees C.
  double coldestMonth() const { return coldestMonth_; }

  /// Sum by the end of `day`: 0 before the season, its whole sum after it.
  double by(Day day) const;
  /// The first day by whose end the sum is reached; the season's last day if none is.
  Day reaching(double sum) const;

private:
  DaySpan season_;
  double coldestMonth_;
  std::vector<double> sums_;  ///< by the end of each day of the season
};

}  // namespace topwire
