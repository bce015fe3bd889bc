#include "core/weather/weather_units.h"

#include "core/units/conversions.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace topwire {

namespace {

// The figures below tell units apart and are common practice: at 50 degrees C a warm
// afternoon is unheard of where apples grow, at 50 F it is a cool one.
constexpr double hottestAfternoon = 50;
constexpr double leastOfAYear =
    12;  ///< a year's warm afternoons in C reach at least this
constexpr std::size_t mostOfAYear = 200;

/// Nights and afternoons lie about 10 C, 18 F or 100 tenths apart, and rarely twice that.
constexpr double widestSpreadInDegrees = 45;
constexpr double hottestInFahrenheit = 140;

/// Inches of rain a day rarely pass single figures; millimetres often do.
constexpr double wettestInInches = 20;

double toHundredths(double value) {
  const double rounded = std::round(value * 100) / 100;
  return rounded == 0 ? 0 : rounded;  // no minus zero
}

/// What `share` of the values lie below. Not of no values.
double quantile(std::vector<double> values, double share) {
  const auto place =
      static_cast<std::ptrdiff_t>(share * static_cast<double>(values.size() - 1));
  std::ranges::nth_element(values, values.begin() + place);
  return values[static_cast<std::size_t>(place)];
}

/// One day in fifty is warmer.
double warmAfternoon(const std::vector<DayExtremes>& days) {
  std::vector<double> maxima;
  maxima.reserve(days.size());
  for (const DayExtremes& day : days)
    maxima.push_back(std::max(day.minimum, day.maximum));
  return quantile(std::move(maxima), 0.98);
}

double usualSpread(const std::vector<DayExtremes>& days) {
  std::vector<double> spreads;
  spreads.reserve(days.size());
  for (const DayExtremes& day : days)
    spreads.push_back(std::abs(day.maximum - day.minimum));
  return quantile(std::move(spreads), 0.5);
}

bool allWhole(const std::vector<DayExtremes>& days) {
  return std::ranges::all_of(days, [](const DayExtremes& day) {
    return day.minimum == std::trunc(day.minimum)
           && day.maximum == std::trunc(day.maximum);
  });
}

}  // namespace

double inCelsius(double value, TemperatureUnit unit) {
  switch (unit) {
    case TemperatureUnit::celsius:
      return toHundredths(value);
    case TemperatureUnit::fahrenheit:
      return toHundredths(toCelsius(value));
    case TemperatureUnit::tenthsOfCelsius:
      break;
  }
  return toHundredths(value / 10);
}

double inMillimetres(double value, RainUnit unit) {
  switch (unit) {
    case RainUnit::millimetres:
      return toHundredths(value);
    case RainUnit::inches:
      return toHundredths(value * millimetresPerInch);
    case RainUnit::tenthsOfMillimetres:
      break;
  }
  return toHundredths(value / 10);
}

bool isPossibleTemperature(double celsius) {
  return celsius >= -90 && celsius <= 60;
}

bool isPossibleRain(double millimetres) {
  return millimetres >= 0 && millimetres <= 2000;
}

bool isMissingCode(double value) {
  static constexpr std::array codes{99.0, 99.9, 999.0, 999.9, 9999.0, 9999.9, 99.99};
  return std::ranges::find(codes, std::abs(value)) != codes.end();
}

UnitGuess likeliestUnit(std::vector<DayExtremes> days) {
  std::erase_if(days, [](const DayExtremes& day) {
    return isMissingCode(day.minimum) || isMissingCode(day.maximum);
  });
  if (days.empty()) return {};
  const double warm = warmAfternoon(days);
  const bool whole = allWhole(days);
  if (whole && (warm > hottestInFahrenheit || usualSpread(days) > widestSpreadInDegrees))
    return {TemperatureUnit::tenthsOfCelsius, true};
  if (warm > hottestAfternoon) return {TemperatureUnit::fahrenheit, true};
  // A cool month in whole degrees F reads like a warm one in degrees C.
  const bool either = whole && days.size() < mostOfAYear && warm >= hottestAfternoon / 2;
  return {TemperatureUnit::celsius, !either};
}

RainUnit likeliestRainUnit(const std::vector<double>& amounts, TemperatureUnit unit) {
  if (unit == TemperatureUnit::tenthsOfCelsius) return RainUnit::tenthsOfMillimetres;
  if (unit == TemperatureUnit::celsius || amounts.empty()) return RainUnit::millimetres;
  return std::ranges::max(amounts) > wettestInInches ? RainUnit::millimetres
                                                     : RainUnit::inches;
}

std::optional<Sentence> doubtOf(std::vector<DayExtremes> days, TemperatureUnit taken) {
  if (days.empty()) return std::nullopt;
  const double warm = warmAfternoon(days);
  if (warm > hottestAfternoon)
    return Sentence{phrase("Weather file",
                           "Taken as %1 the warmest days reach %2 degrees Celsius; that "
                           "is no orchard's weather, so say the unit and import again."),
                    {nameOf(taken), Figure{warm, 1}}};
  if (days.size() >= mostOfAYear && warm < leastOfAYear)
    return Sentence{phrase("Weather file",
                           "Taken as %1 the warmest days reach only %2 degrees Celsius; "
                           "if that cannot be, say the unit and import again."),
                    {nameOf(taken), Figure{warm, 1}}};
  return std::nullopt;
}

}  // namespace topwire
