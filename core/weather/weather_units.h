#pragma once

#include "core/weather/degree_days.h"
#include "core/weather/weather_file.h"

#include <optional>
#include <vector>

namespace topwire {

/// Degrees C to 0.01.
double inCelsius(double value, TemperatureUnit unit);
/// Millimetres to 0.01.
double inMillimetres(double value, RainUnit unit);

/// Between the coldest and the warmest that thermometers have shown, with room: -89.2 C
/// at Vostok and 56.7 C in Death Valley (World Meteorological Organization, archive of
/// weather and climate extremes; from memory).
bool isPossibleTemperature(double celsius);
/// The most in a day is 1825 mm, on La Reunion in 1966 (same archive; from memory).
bool isPossibleRain(double millimetres);
/// 999, -99.9 and the like, by which files say that there is no value. Some of them are a
/// temperature in one unit or other, so only to be asked of what is none.
bool isMissingCode(double value);

struct UnitGuess {
  TemperatureUnit unit = TemperatureUnit::celsius;
  bool sure = false;  ///< no other unit would give weather that apples grow in
};

/// The unit that days of both temperatures are most likely in, as they stand in the file.
UnitGuess likeliestUnit(std::vector<DayExtremes> days);
/// The unit of daily rain amounts in a file whose temperatures are in `unit`.
RainUnit likeliestRainUnit(const std::vector<double>& amounts, TemperatureUnit unit);

/// What speaks against days in degrees C being what they were taken for; nothing where
/// nothing does.
std::optional<Sentence> doubtOf(std::vector<DayExtremes> days, TemperatureUnit taken);

}  // namespace topwire
