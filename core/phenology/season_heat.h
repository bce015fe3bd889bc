#pragma once

#include "core/orchard/orchard.h"
#include "core/phenology/heat_units.h"

#include <optional>
#include <vector>

namespace topwire {

/// A sum by the end of `day`.
struct HeatSample {
  Day day{};
  double sum = 0;

  friend bool operator==(const HeatSample&, const HeatSample&) = default;
};

/// How past years stood by the end of `day`: eight in ten lie from `low` to `high`, half
/// of them from `lowerQuarter` to `upperQuarter`.
struct HeatBand {
  Day day{};
  double low = 0;
  double lowerQuarter = 0;
  double middle = 0;
  double upperQuarter = 0;
  double high = 0;

  friend bool operator==(const HeatBand&, const HeatBand&) = default;
};

/// One season's heat against the station's past years, as a chart shows it. The three
/// lines join: each begins where the one before it ends.
struct SeasonHeat {
  HeatMeasure measure = HeatMeasure::heatUnits;
  std::vector<HeatSample> measured;
  std::vector<HeatSample> forecast;
  std::vector<HeatSample> likely;  ///< on to the season's middle as past years had it
  std::vector<HeatBand> past;
  int pastYears = 0;  ///< 0 where the band comes from monthly normals
  double today = 0;   ///< the sum by the end of the last day known up to today
  /// How many days sooner than the middle of past years that sum was reached.
  int daysAhead = 0;
  std::optional<Day> measuredTo;
  int missingDays = 0;  ///< gaps between the first summed day and `measuredTo`

  friend bool operator==(const SeasonHeat&, const SeasonHeat&) = default;
};

SeasonHeat seasonHeat(const Orchard& orchard,
                      const Planting& planting,
                      Season season,
                      Day today,
                      HeatMeasure measure);

}  // namespace topwire
