#pragma once

namespace topwire {

/// Of a difference; a temperature also moves by 32.
inline constexpr double fahrenheitPerCelsius = 1.8;
inline constexpr double millimetresPerInch = 25.4;
inline constexpr double gramsPerOunce = 28.349523125;

constexpr double toFahrenheit(double celsius) {
  return celsius * 9 / 5 + 32;
}

constexpr double toCelsius(double fahrenheit) {
  return (fahrenheit - 32) * 5 / 9;
}

}  // namespace topwire
