#include "core/weather/weather_file.h"

#include <array>
#include <cstdint>
#include <string_view>
#include <utility>

namespace topwire {

namespace {

Sentence formatSentence(const WeatherReport& report) {
  const auto& [minimum, maximum, rain] = report.headings;
  switch (report.format) {
    case WeatherFormat::ghcnFixedWidth:
      return phrase("Weather file", "Read as GHCN-Daily of fixed width.");
    case WeatherFormat::ghcnByStation:
      return phrase("Weather file", "Read as GHCN-Daily by station.");
    case WeatherFormat::dailySummaries:
      return phrase("Weather file", "Read as daily summaries.");
    case WeatherFormat::plainTable:
      break;
  }
  if (rain.empty())
    return {phrase("Weather file",
                   "Read as a table: the minimum from \"%1\", the maximum from \"%2\"."),
            {minimum, maximum}};
  return {
      phrase("Weather file",
             "Read as a table: the minimum from \"%1\", the maximum from \"%2\", rain "
             "from \"%3\"."),
      {minimum, maximum, rain}};
}

void tellStation(const WeatherReport& report, std::vector<Sentence>& told) {
  if (report.stationId.empty()) return;
  if (report.stationName.empty())
    told.push_back({phrase("Weather file", "Station %1."), {report.stationId}});
  else
    told.push_back({phrase("Weather file", "Station %1, %2."),
                    {report.stationId, report.stationName}});
}

void tellDays(const WeatherReport& report, std::vector<Sentence>& told) {
  const auto [first, last] = report.period;
  told.push_back(
      {counted(report.wholeDays,
               phrase("Weather file", "One day with both temperatures was read, %2."),
               phrase("Weather file",
                      "%1 days with both temperatures were read, from %2 to "
                      "%3.")),
       {report.wholeDays, first, last}});
  if (report.partDays > 0)
    told.push_back({counted(report.partDays,
                            phrase("Weather file", "One more day lacks a temperature."),
                            phrase("Weather file", "%1 more days lack a temperature.")),
                    {report.partDays}});
}

void tellForecast(const WeatherReport& report, std::vector<Sentence>& told) {
  if (report.forecastDays > 0)
    told.push_back({counted(report.forecastDays,
                            phrase("Weather file", "One of the days is a forecast."),
                            phrase("Weather file", "%1 of the days are a forecast.")),
                    {report.forecastDays}});
  if (report.takenAsForecast > 0)
    told.push_back(
        {counted(report.takenAsForecast,
                 phrase("Weather file",
                        "One day lies after today and was taken for a forecast, though "
                        "the file does not say so."),
                 phrase("Weather file",
                        "%1 days lie after today and were taken for a forecast, though "
                        "the file does not say so.")),
         {report.takenAsForecast}});
}

Phrase unitPhrase(UnitOrigin origin) {
  switch (origin) {
    case UnitOrigin::inferred:
      return phrase("Weather file",
                    "The file does not tell its unit: temperatures were taken for %1, "
                    "because then they run from %2 to %3 degrees Celsius.");
    case UnitOrigin::heading:
      return phrase("Weather file",
                    "Temperatures were taken for %1, as the headings say: from %2 to %3 "
                    "degrees Celsius.");
    case UnitOrigin::told:
      return phrase("Weather file",
                    "Temperatures were taken for %1, as you said: from %2 to %3 degrees "
                    "Celsius.");
    case UnitOrigin::format:
      break;
  }
  return phrase("Weather file", "Temperatures run from %2 to %3 degrees Celsius.");
}

void tellUnits(const WeatherReport& report, std::vector<Sentence>& told) {
  told.push_back(
      {unitPhrase(report.unitOrigin),
       {nameOf(report.unit), Figure{report.coldest, 1}, Figure{report.warmest, 1}}});
  if (report.doubt) told.push_back(*report.doubt);
  if (report.hasRain && report.rainUnitOrigin == UnitOrigin::inferred)
    told.push_back({phrase("Weather file",
                           "The file does not tell the unit of rain either: it was taken "
                           "for %1."),
                    {nameOf(report.rainUnit)}});
  if (report.dateOrder)
    told.push_back(*report.dateOrder == DateOrder::dayFirst
                       ? phrase("Weather file",
                                "Its dates were read with the day before the month, "
                                "which only then makes days that follow each other.")
                       : phrase("Weather file",
                                "Its dates were read with the month before the day, "
                                "which only then makes days that follow each other."));
}

void tellGaps(const WeatherReport& report, std::vector<Sentence>& told) {
  if (!report.longestGap) return;
  const auto [first, last] = *report.longestGap;
  const int length = report.longestGap->length();
  if (length == 1)
    told.push_back(
        {counted(report.gaps,
                 phrase("Weather file", "One day is missing: %2."),
                 phrase("Weather file",
                        "%1 days are missing, none of them next to another; the first "
                        "is %2.")),
         {report.gaps, first}});
  else
    told.push_back(
        {counted(
             report.gaps,
             phrase("Weather file", "Days are missing once, from %3 to %4 (%2 days)."),
             phrase("Weather file",
                    "Days are missing %1 times, the longest from %3 to %4 (%2 days).")),
         {report.gaps, length, first, last}});
}

struct FlagName {
  char flag;
  Words name;
};

/// Section III of the readme of GHCN-Daily (NOAA National Centers for Environmental
/// Information); the Spanish is ours.
const std::vector<FlagName>& flagNames() {
  static const std::vector<FlagName> names{
      {'D', {"failed duplicate check", "repite otro mes o año"}},
      {'G', {"failed gap check", "lejos de los demás valores"}},
      {'I', {"failed internal consistency check", "no concuerda con los otros datos"}},
      {'K', {"failed streak check", "el mismo valor demasiados días"}},
      {'L', {"failed check on length of multiday period", "período de varios días"}},
      {'M', {"failed megaconsistency check", "no concuerda con la serie"}},
      {'N', {"failed naught check", "cero dudoso"}},
      {'O', {"failed climatological outlier check", "fuera de lo usual en el clima"}},
      {'R', {"failed lagged range check", "salto dudoso de un día a otro"}},
      {'S', {"failed spatial consistency check", "no concuerda con las vecinas"}},
      {'T', {"failed temporal consistency check", "no concuerda con los días vecinos"}},
      {'W', {"temperature too warm for snow", "demasiado calor para nieve"}},
      {'X', {"failed bounds check", "fuera de los límites"}},
      {'Z', {"flagged after a person looked at it", "marcado tras revisión"}}};
  return names;
}

Words nameOfFlag(char flag) {
  for (const auto& [known, name] : flagNames())
    if (known == flag) return name;
  return {"another check", "otro control"};
}

void tellFlagged(const WeatherReport& report, std::vector<Sentence>& told) {
  for (const auto& [flag, count] : report.flagged)
    told.push_back(
        {counted(count,
                 phrase("Weather file",
                        "One value was dropped because its source flags it %2: %3."),
                 phrase("Weather file",
                        "%1 values were dropped because their source flags them %2: "
                        "%3.")),
         {count, std::string{flag}, nameOfFlag(flag)}});
}

void tellImpossible(const WeatherReport& report, std::vector<Sentence>& told) {
  if (report.impossible == 0) return;
  told.push_back({counted(report.impossible,
                          phrase("Weather file",
                                 "One value was dropped because no instrument shows it."),
                          phrase("Weather file",
                                 "%1 values were dropped because no instrument shows "
                                 "them.")),
                  {report.impossible}});
}

void tellSwapped(const WeatherReport& report, std::vector<Sentence>& told) {
  if (report.swapped.empty()) return;
  const auto count = static_cast<std::int64_t>(report.swapped.size());
  told.push_back({counted(count,
                          phrase("Weather file",
                                 "One day had its minimum above its maximum, %2; the two "
                                 "were swapped."),
                          phrase("Weather file",
                                 "%1 days had their minimum above their maximum, the "
                                 "first on %2; the two were swapped.")),
                  {count, report.swapped.front()}});
}

void tellRepeated(const WeatherReport& report, std::vector<Sentence>& told) {
  if (report.repeatedDays == 0) return;
  told.push_back(
      {counted(report.repeatedDays,
               phrase("Weather file",
                      "One day stands in the file more than once; the later line was "
                      "taken, but a measurement before a forecast."),
               phrase("Weather file",
                      "%1 days stand in the file more than once; the later line was "
                      "taken, but a measurement before a forecast.")),
       {report.repeatedDays}});
}

void tellUnreadable(const WeatherReport& report, std::vector<Sentence>& told) {
  if (report.unreadableLines == 0) return;
  const auto count = static_cast<std::int64_t>(report.unreadableLines);
  told.push_back({counted(count,
                          phrase("Weather file", "One line could not be read."),
                          phrase("Weather file", "%1 lines could not be read.")),
                  {count}});
}

void tellFurther(const WeatherReport& report, std::vector<Sentence>& told) {
  if (report.furtherFaults == 0) return;
  told.push_back(
      {counted(report.furtherFaults,
               phrase("Weather file", "One fault more is not shown beside the first."),
               phrase("Weather file", "%1 faults more are not shown beside the first.")),
       {report.furtherFaults}});
}

}  // namespace

std::vector<Sentence> sentencesOf(const WeatherReport& report) {
  std::vector<Sentence> told{formatSentence(report)};
  for (const auto tell : {tellStation,
                          tellDays,
                          tellForecast,
                          tellUnits,
                          tellGaps,
                          tellFlagged,
                          tellImpossible,
                          tellSwapped,
                          tellRepeated,
                          tellUnreadable,
                          tellFurther})
    tell(report, told);
  return told;
}

Words nameOf(TemperatureUnit unit) {
  switch (unit) {
    case TemperatureUnit::celsius:
      return {"degrees Celsius", "grados Celsius"};
    case TemperatureUnit::fahrenheit:
      return {"degrees Fahrenheit", "grados Fahrenheit"};
    case TemperatureUnit::tenthsOfCelsius:
      break;
  }
  return {"tenths of a degree Celsius", "décimas de grado Celsius"};
}

Words nameOf(RainUnit unit) {
  switch (unit) {
    case RainUnit::millimetres:
      return {"millimetres", "milímetros"};
    case RainUnit::inches:
      return {"inches", "pulgadas"};
    case RainUnit::tenthsOfMillimetres:
      break;
  }
  return {"tenths of a millimetre", "décimas de milímetro"};
}

}  // namespace topwire
