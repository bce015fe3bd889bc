#pragma once

#include "core/orchard/orchard.h"

namespace topwire::testing {

/// Notes a day's weather in the orchard.
inline void put(Orchard& orchard, Day day, const WeatherDay& weather) {
  WeatherMonth& month = orchard.weather[monthOf(day)];
  month.month = monthOf(day);
  month.on(day) = weather;
}

/// A mild dry day, for tests to change one figure of.
inline WeatherDay mild() {
  return {5, 15, 0, WeatherSource::measured};
}

}  // namespace topwire::testing
