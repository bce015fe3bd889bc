#pragma once

#include "core/base/result.h"
#include "core/orchard/weather_records.h"

#include <array>
#include <cstddef>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace topwire {

enum class WeatherFormat {
  ghcnFixedWidth,  ///< GHCN-Daily's .dly: a station's element and month a line
  ghcnByStation,   ///< GHCN-Daily's CSV without headings: a station's element and day a
                   ///< line
  dailySummaries,  ///< NOAA's CSV with DATE, TMAX and TMIN; does not tell its unit
  plainTable,      ///< any CSV with headings for a date, a minimum and a maximum
};

enum class TemperatureUnit { celsius, fahrenheit, tenthsOfCelsius };
enum class RainUnit { millimetres, inches, tenthsOfMillimetres };

/// How a unit is known, the surest last.
enum class UnitOrigin { inferred, heading, told, format };

/// In which order dates written like 3/4/2027 name day and month.
enum class DateOrder { dayFirst, monthFirst };

/// What a person may say of a file before it is read; what is left open is found out.
struct WeatherReading {
  Day today{};
  /// What the days are where the file does not mark them. Whatever it marks, a day after
  /// `today` is a forecast.
  WeatherSource source = WeatherSource::measured;
  std::optional<WeatherFormat> format;
  /// Goes before the file's headings; a format that fixes its unit is not asked.
  std::optional<TemperatureUnit> temperatureUnit;
  std::optional<RainUnit> rainUnit;
  /// The station's id or name, capitals aside, where a file holds several.
  std::optional<std::string> station;
};

/// Told the share read so far (0 to 1); answers whether to go on.
using ReadingProgress = std::function<bool(double share)>;

/// What was found in a file and what became of it.
struct WeatherReport {
  WeatherFormat format = WeatherFormat::plainTable;
  std::string stationId;    ///< empty where the file names none
  std::string stationName;  ///< empty where the file names none
  /// The headings of minimum, maximum and rain; empty where there is no such column.
  std::array<std::string, 3> headings;

  TemperatureUnit unit = TemperatureUnit::celsius;
  UnitOrigin unitOrigin = UnitOrigin::format;
  RainUnit rainUnit = RainUnit::millimetres;
  UnitOrigin rainUnitOrigin = UnitOrigin::format;
  bool hasRain = false;
  std::optional<DateOrder> dateOrder;  ///< where dates had to be settled
  double coldest = 0;                  ///< degrees C
  double warmest = 0;
  std::optional<Sentence> doubt;  ///< why the unit may not be the one taken

  DaySpan period{};         ///< from the first to the last day with both temperatures
  int wholeDays = 0;        ///< with both temperatures
  int partDays = 0;         ///< with one temperature, or rain alone
  int forecastDays = 0;     ///< among them all
  int takenAsForecast = 0;  ///< of those, how many only because they lie after today

  int gaps = 0;  ///< stretches of the period without days of both temperatures
  std::optional<DaySpan> longestGap;

  std::map<char, int> flagged;  ///< values dropped, by the source's quality flag
  int impossible = 0;  ///< values dropped because no thermometer or gauge shows them
  std::vector<Day> swapped;  ///< days whose minimum stood above their maximum
  int repeatedDays = 0;      ///< days that stand in the file more than once
  std::size_t unreadableLines = 0;
  Problems faults;  ///< the first ones, by line
  int furtherFaults = 0;
};

struct WeatherFile {
  std::vector<DatedWeather> days;  ///< ascending, each day once
  WeatherReport report;
};

/// The report as a person is told it, the same in the window and on the command line. The
/// faults are not in it: each is a sentence of its own, with its place.
std::vector<Sentence> sentencesOf(const WeatherReport& report);

Words nameOf(TemperatureUnit unit);
Words nameOf(RainUnit unit);

}  // namespace topwire
