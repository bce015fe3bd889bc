// Compiled once for each format, which TOPWIRE_FUZZED_FORMAT names; without it the format
// is found out from the case as from a file.

#include "core/base/contract.h"
#include "core/weather/read_weather.h"
#include "tests/fuzz/fuzzing.h"

#include <algorithm>
#include <cmath>

namespace topwire::fuzzing {

namespace {

/// The last byte of a case chooses what a person may say beside the file.
WeatherReading readingFrom(unsigned choice) {
  WeatherReading reading;
  reading.today = dayOf(2027, 4, 6);
#ifdef TOPWIRE_FUZZED_FORMAT
  reading.format = WeatherFormat::TOPWIRE_FUZZED_FORMAT;
#endif
  if ((choice & 0x40U) != 0) reading.source = WeatherSource::forecast;
  if ((choice & 0x80U) != 0) reading.station = "XX000000001";
  switch (choice & 0x30U) {
    case 0x10:
      reading.temperatureUnit = TemperatureUnit::fahrenheit;
      reading.rainUnit = RainUnit::inches;
      break;
    case 0x20:
      reading.temperatureUnit = TemperatureUnit::celsius;
      break;
    case 0x30:
      reading.temperatureUnit = TemperatureUnit::tenthsOfCelsius;
      break;
    default:
      break;
  }
  return reading;
}

void checkDay(const WeatherDay& day) {
  for (const auto& temperature : {day.minimum, day.maximum})
    TOPWIRE_REQUIRE(!temperature || (*temperature >= -90 && *temperature <= 60));
  TOPWIRE_REQUIRE(!day.rain || (*day.rain >= 0 && *day.rain <= 2000));
  TOPWIRE_REQUIRE(!day.whole() || *day.minimum <= *day.maximum);
  TOPWIRE_REQUIRE(day.minimum || day.maximum || day.rain);
}

void checkDays(const WeatherFile& file) {
  const WeatherReport& report = file.report;
  int whole = 0;
  int forecast = 0;
  for (std::size_t i = 0; i < file.days.size(); ++i) {
    TOPWIRE_REQUIRE(i == 0 || file.days[i - 1].day < file.days[i].day);
    checkDay(file.days[i].weather);
    whole += file.days[i].weather.whole() ? 1 : 0;
    forecast += file.days[i].weather.source == WeatherSource::forecast ? 1 : 0;
  }
  TOPWIRE_REQUIRE(whole > 0 && whole == report.wholeDays);
  TOPWIRE_REQUIRE(static_cast<std::size_t>(whole + report.partDays) == file.days.size());
  TOPWIRE_REQUIRE(forecast == report.forecastDays);
  TOPWIRE_REQUIRE(report.takenAsForecast <= forecast);
}

void checkReport(const WeatherReport& report) {
  const int length = report.period.length();
  TOPWIRE_REQUIRE(length >= report.wholeDays);
  TOPWIRE_REQUIRE((report.gaps > 0) == (length > report.wholeDays));
  TOPWIRE_REQUIRE((report.gaps > 0) == report.longestGap.has_value());
  if (report.longestGap) {
    TOPWIRE_REQUIRE(report.period.first < report.longestGap->first);
    TOPWIRE_REQUIRE(report.longestGap->last < report.period.last);
    TOPWIRE_REQUIRE(report.longestGap->length() <= length - report.wholeDays);
  }
  TOPWIRE_REQUIRE(report.coldest <= report.warmest);
  TOPWIRE_REQUIRE(static_cast<int>(report.swapped.size()) <= report.wholeDays);
  TOPWIRE_REQUIRE(report.faults.size() <= 20);
  TOPWIRE_REQUIRE(report.furtherFaults == 0 || report.faults.size() == 20);
  for (const auto& [flag, count] : report.flagged)
    TOPWIRE_REQUIRE(flag != ' ' && count > 0);
  for (const Sentence& sentence : sentencesOf(report)) checkSpeakable(sentence);
  for (const Problem& fault : report.faults) checkSpeakable(fault.sentence);
}

void check(std::string_view text, const WeatherReading& reading) {
  const auto read = readWeather(text, "case", reading);
  if (!read) return checkSpeakable(read.error());
  TOPWIRE_REQUIRE(read->has_value());
  checkDays(**read);
  checkReport((*read)->report);
}

/// A reading that is stopped at once hands out nothing, or ends before it was asked.
void checkStopping(std::string_view text, const WeatherReading& reading) {
  bool asked = false;
  const auto read = readWeather(text, "case", reading, [&asked](double share) {
    TOPWIRE_REQUIRE(share >= 0 && share <= 1);
    asked = true;
    return false;
  });
  TOPWIRE_REQUIRE(!asked || (read && !read->has_value()));
}

}  // namespace

}  // namespace topwire::fuzzing

// The name is libFuzzer's.
// NOLINTNEXTLINE(readability-identifier-naming)
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace topwire::fuzzing;
  tally(size);
  const auto reading = readingFrom(size == 0 ? 0 : data[size - 1]);
  check(textOf(data, size), reading);
  checkStopping(textOf(data, size), reading);
  return 0;
}
