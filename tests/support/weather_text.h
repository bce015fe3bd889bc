#pragma once

#include "core/weather/read_weather.h"

#include <gmock/gmock.h>

#include <string>
#include <string_view>

namespace topwire::testing {

inline const Day weatherToday = dayOf(2027, 4, 6);

inline WeatherReading readingToday() {
  WeatherReading reading;
  reading.today = weatherToday;
  return reading;
}

/// What the text holds; a failure with the problems where it was refused.
inline WeatherFile readWhole(std::string_view text,
                             const WeatherReading& reading = readingToday()) {
  const auto read = readWeather(text, "weather.txt", reading);
  if (read) return read->value();
  for (const Problem& problem : read.error()) ADD_FAILURE() << inEnglish(problem);
  return {};
}

/// The problems of a text that is refused, a line each.
inline std::string refusal(std::string_view text,
                           const WeatherReading& reading = readingToday()) {
  const auto read = readWeather(text, "weather.txt", reading);
  if (read) return "was read";
  std::string lines;
  for (const Problem& problem : read.error()) lines += inEnglish(problem) + '\n';
  return lines;
}

inline std::string told(const WeatherReport& report) {
  std::string lines;
  for (const Sentence& sentence : sentencesOf(report))
    lines += inEnglish(sentence) + '\n';
  return lines;
}

inline std::string faultsOf(const WeatherReport& report) {
  std::string lines;
  for (const Problem& problem : report.faults) lines += inEnglish(problem) + '\n';
  return lines;
}

inline WeatherDay celsius(double minimum, double maximum) {
  WeatherDay day;
  day.minimum = minimum;
  day.maximum = maximum;
  return day;
}

/// A month of GHCN-Daily in fixed width, all missing; `cells` are eight signs a day, from
/// the first day on.
inline std::string fixedWidthLine(std::string_view station,
                                  std::string_view yearAndMonth,
                                  std::string_view element,
                                  std::string_view cells) {
  std::string line{station};
  line.append(yearAndMonth).append(element).append(cells);
  while (line.size() < 269) line += "-9999   ";
  return line + '\n';
}

}  // namespace topwire::testing
