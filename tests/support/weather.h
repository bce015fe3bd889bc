#pragma once

#include "core/orchard/orchard.h"

namespace topwire::testing {

/// Notes a day's weather in the orchard.
inline void put(Orchard& orchard, Day day, const WeatherDay& weather) {
  const CivilDate date = civil(day);
  const MonthOfYear month{static_cast<int>(date.year()), unsigned{date.month()}};
  WeatherMonth& kept = orchard.weather[month];
  kept.month = month;
  kept.days.at(unsigned{date.day()} - 1) = weather;
}

/// A mild dry day, for tests to change one figure of.
inline WeatherDay mild() {
  return {5, 15, 0, WeatherSource::measured};
}

}  // namespace topwire::testing
