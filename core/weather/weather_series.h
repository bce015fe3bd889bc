#pragma once

#include "core/orchard/orchard.h"

#include <map>
#include <optional>
#include <vector>

namespace topwire {

/// The station's days in one row, for reading many of them.
class WeatherSeries {
public:
  explicit WeatherSeries(const std::map<MonthOfYear, WeatherMonth>& months);

  /// From the first of the first month kept to the last of the last one; none where
  /// nothing is kept.
  const std::optional<DaySpan>& days() const { return days_; }

  /// The day's figures where both temperatures are known, else nothing.
  const WeatherDay* at(Day day) const;
  /// How many of these days have both temperatures.
  int wholeDaysIn(DaySpan span) const;

private:
  std::optional<DaySpan> days_;
  std::vector<WeatherDay> values_;
};

}  // namespace topwire
