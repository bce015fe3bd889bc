#include "core/weather/weather_headings.h"
#include "tests/support/weather_text.h"

#include <clocale>

namespace topwire {
namespace {

using ::testing::AllOf;
using testing::celsius;
using ::testing::ElementsAre;
using testing::faultsOf;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::Pair;
using testing::readingToday;
using testing::readWhole;
using testing::refusal;
using testing::told;

std::string tableOf(const std::string& headings, const std::vector<std::string>& rows) {
  std::string text = headings + '\n';
  for (const std::string& row : rows) text += row + '\n';
  return text;
}

TEST(Headings, areUnderstoodByTheirWords) {
  struct Row {
    const char* heading;
    std::optional<ColumnKind> kind;
  };

  const Row rows[] = {{"DATE", ColumnKind::date},
                      {"Fecha", ColumnKind::date},
                      {"D\xc3\xad"
                       "a",
                       ColumnKind::date},
                      {"TMIN", ColumnKind::minimum},
                      {"temp_min", ColumnKind::minimum},
                      {"minTemp", ColumnKind::minimum},
                      {"Temp. M\xc3\xadn. (\xc2\xb0"
                       "C)",
                       ColumnKind::minimum},
                      {"Temperatura m\xc3\xadnima del aire (\xc2\xba"
                       "C)",
                       ColumnKind::minimum},
                      {"TEMPERATURA M\xcdNIMA", ColumnKind::minimum},
                      {"m\xednima", ColumnKind::minimum},
                      {"temperaturemin", ColumnKind::minimum},
                      {"Low", ColumnKind::minimum},
                      {"t2m_max", ColumnKind::maximum},
                      {"tmaxF", ColumnKind::maximum},
                      {"Daily maximum temperature [deg C]", ColumnKind::maximum},
                      {"M\xc3\x81XIMA", ColumnKind::maximum},
                      {"precipitation", ColumnKind::rain},
                      {"Lluvia (mm)", ColumnKind::rain},
                      {"Precipitaci\xc3\xb3n", ColumnKind::rain},
                      {"forecast", ColumnKind::forecast},
                      {"Pron\xc3\xb3stico", ColumnKind::forecast},
                      {"STATION", ColumnKind::station},
                      {"station name", ColumnKind::name},
                      {"location", ColumnKind::station},
                      {"min humidity", std::nullopt},
                      {"max wind", std::nullopt},
                      {"min max", std::nullopt},
                      {"temperature", std::nullopt},
                      {"rain hours", std::nullopt},
                      {"forecast max", std::nullopt},
                      {"forecast date", std::nullopt},
                      {"", std::nullopt},
                      {"12", std::nullopt}};
  for (const auto& [heading, kind] : rows) {
    const auto understood = understand(heading);
    EXPECT_EQ(understood ? std::optional{understood->kind} : std::nullopt, kind)
        << heading;
  }
}

TEST(Headings, tellUnits) {
  EXPECT_EQ(understand("tmax (F)")->temperatureUnit, TemperatureUnit::fahrenheit);
  EXPECT_EQ(understand("TMAX (Degrees Fahrenheit)")->temperatureUnit,
            TemperatureUnit::fahrenheit);
  EXPECT_EQ(understand("m\xc3\xadnima \xc2\xb0"
                       "C")
                ->temperatureUnit,
            TemperatureUnit::celsius);
  EXPECT_EQ(understand("max (tenths of C)")->temperatureUnit,
            TemperatureUnit::tenthsOfCelsius);
  EXPECT_EQ(understand("tmax")->temperatureUnit, std::nullopt);
  EXPECT_EQ(understand("rain (in)")->rainUnit, RainUnit::inches);
  EXPECT_EQ(understand("rain in mm")->rainUnit, RainUnit::millimetres);
  EXPECT_TRUE(understand("TMAX_ATTRIBUTES")->attributes);
}

TEST(ReadTable, columnsInAnyOrder) {
  const WeatherFile file = readWhole(tableOf(
      "wind,Max,rain,date,Min", {"1,12.5,0.2,2027-03-01,-1.75", "2,13,,2027-03-02,+0"}));
  WeatherDay first = celsius(-1.75, 12.5);
  first.rain = 0.2;
  EXPECT_THAT(file.days,
              ElementsAre(DatedWeather{dayOf(2027, 3, 1), first},
                          DatedWeather{dayOf(2027, 3, 2), celsius(0, 13)}));
  EXPECT_EQ(
      told(file.report),
      "Read as a table: the minimum from \"Min\", the maximum from \"Max\", rain "
      "from \"rain\".\n"
      "2 days with both temperatures were read, from 1 March 2027 to 2 March 2027.\n"
      "The file does not tell its unit: temperatures were taken for degrees "
      "Celsius, because then they run from -1.8 to 13.0 degrees Celsius.\n"
      "The file does not tell the unit of rain either: it was taken for "
      "millimetres.\n");
}

TEST(ReadTable, separatorsMarksTitlesAndRemarks) {
  const auto expected = ElementsAre(DatedWeather{dayOf(2027, 3, 1), celsius(-1.5, 12.5)},
                                    DatedWeather{dayOf(2027, 3, 2), celsius(0, 13)});
  for (const char* text : {"fecha;m\xc3\xadnima;m\xc3\xa1xima\n"
                           "2027-03-01;-1,5;12,5\n2027-03-02;0;13\n",
                           "\xef\xbb\xbf"
                           "date,tmin,tmax\r\n2027-03-01,-1.5,12.5\r\n"
                           "2027-03-02,0,13\r\n",
                           "date\ttmin\ttmax\n20270301\t-1.5\t12,5\n20270302\t0\t13",
                           "date,tmin,tmax\r2027/3/1,-1.5,12.5\r2027/3/2,0,13\r",
                           "Our station\n\n# from the shed\ndate,tmin,tmax\n"
                           "2027-03-01T00:00,-1.5,12.5\n,,\n# a remark\n"
                           "2027-03-02 00:00,0,13\n",
                           "\"date\",\"tmin\",\"tmax\"\n"
                           "\"2027-03-01\",\" -1.5\",\"12,5\"\n"
                           "\"2027-03-02\",\"0\",\"13\"\n",
                           "date,tmin,tmax\n2027-03-01,-1.5,12.5\n"
                           "date,tmin,tmax\n2027-03-02,0,13\n"}) {
    const WeatherFile file = readWhole(text);
    EXPECT_THAT(file.days, expected) << text;
    EXPECT_THAT(file.report.faults, IsEmpty()) << text;
  }
}

TEST(ReadTable, whatStandsForNoValueIsNone) {
  const WeatherFile file = readWhole(tableOf(
      "date,tmin,tmax,rain",
      {"2027-03-01,1,2,T", "2027-03-02,NA,,-", "2027-03-03,-9999,-99.9,", "2027-03-04"}));
  EXPECT_EQ(file.report.wholeDays, 1);
  EXPECT_EQ(file.days.at(0).weather.rain, 0) << "a trace";
  EXPECT_THAT(file.report.faults, IsEmpty());
}

TEST(ReadTable, swapsAMinimumAboveItsMaximumAndSaysSo) {
  const WeatherFile file =
      readWhole(tableOf("date,tmin,tmax", {"2027-03-01,9,2", "2027-03-02,1,8"}));
  EXPECT_EQ(file.days.at(0).weather, celsius(2, 9));
  EXPECT_THAT(file.report.swapped, ElementsAre(dayOf(2027, 3, 1)));
  EXPECT_THAT(told(file.report),
              HasSubstr("One day had its minimum above its maximum, 1 March 2027; the "
                        "two were swapped.\n"));
}

TEST(ReadTable, gapsStayGaps) {
  const WeatherFile file = readWhole(tableOf("date,tmin,tmax",
                                             {"2027-03-01,1,8",
                                              "2027-03-03,1,8",
                                              "2027-03-04,,8",
                                              "2027-03-05,,",
                                              "2027-03-07,1,8",
                                              "2027-03-08,1,8"}));
  EXPECT_EQ(file.report.gaps, 2);
  EXPECT_EQ(file.report.longestGap, (DaySpan{dayOf(2027, 3, 4), dayOf(2027, 3, 6)}));
  EXPECT_EQ(file.report.wholeDays, 4);
  EXPECT_EQ(file.report.partDays, 1);
  EXPECT_THAT(told(file.report),
              AllOf(HasSubstr("Days are missing 2 times, the longest from 4 March 2027 "
                              "to 6 March 2027 (3 days).\n"),
                    HasSubstr("One more day lacks a temperature.\n")));
}

TEST(ReadTable, ofADayThatStandsTwiceTheLaterLineIsTaken) {
  const WeatherFile file = readWhole(
      tableOf("date,tmin,tmax", {"2027-03-02,1,8", "2027-03-01,0,7", "2027-03-02,2,"}));
  EXPECT_THAT(file.days,
              ElementsAre(DatedWeather{dayOf(2027, 3, 1), celsius(0, 7)},
                          DatedWeather{dayOf(2027, 3, 2), celsius(2, 8)}));
  EXPECT_EQ(file.report.repeatedDays, 1);
  EXPECT_THAT(told(file.report), HasSubstr("One day stands in the file more than once"));
}

TEST(ReadTable, aForecastNeverStandsBeforeAMeasurement) {
  const WeatherFile file = readWhole(tableOf("date,tmin,tmax,forecast",
                                             {"2027-04-04,1,8,no",
                                              "2027-04-04,5,9,yes",
                                              "2027-04-05,5,9,yes",
                                              "2027-04-05,2,,no",
                                              "2027-04-06,1,8,",
                                              "2027-04-07,3,9,x"}));
  WeatherDay half;
  half.minimum = 2;
  WeatherDay coming = celsius(3, 9);
  coming.source = WeatherSource::forecast;
  EXPECT_THAT(file.days,
              ElementsAre(DatedWeather{dayOf(2027, 4, 4), celsius(1, 8)},
                          DatedWeather{dayOf(2027, 4, 5), half},
                          DatedWeather{dayOf(2027, 4, 6), celsius(1, 8)},
                          DatedWeather{dayOf(2027, 4, 7), coming}));
  EXPECT_EQ(file.report.forecastDays, 1);
  EXPECT_EQ(file.report.takenAsForecast, 0);
}

TEST(ReadTable, whatLiesAfterTodayIsAForecastWhateverTheFileSays) {
  const WeatherFile file = readWhole(
      tableOf("date,tmin,tmax", {"2027-04-06,1,8", "2027-04-07,1,8", "2027-04-08,1,8"}));
  EXPECT_EQ(file.days.at(0).weather.source, WeatherSource::measured);
  EXPECT_EQ(file.days.at(1).weather.source, WeatherSource::forecast);
  EXPECT_THAT(told(file.report),
              HasSubstr("2 days lie after today and were taken for a forecast, though "
                        "the file does not say so.\n"));
}

TEST(ReadTable, aWholeFileCanBeAForecast) {
  WeatherReading reading = readingToday();
  reading.source = WeatherSource::forecast;
  const WeatherFile file =
      readWhole(tableOf("date,tmin,tmax", {"2027-04-06,1,8", "2027-04-07,1,8"}), reading);
  EXPECT_EQ(file.report.forecastDays, 2);
  EXPECT_EQ(file.report.takenAsForecast, 0);
  EXPECT_THAT(told(file.report), HasSubstr("2 of the days are a forecast.\n"));
}

TEST(ReadTable, aMarkNobodyUnderstandsIsTold) {
  const WeatherFile file =
      readWhole(tableOf("date,tmin,tmax,forecast", {"2027-04-06,1,8,maybe"}));
  EXPECT_EQ(file.days.at(0).weather.source, WeatherSource::forecast);
  EXPECT_EQ(faultsOf(file.report),
            "weather.txt:2: \"maybe\" does not say whether the day is a forecast; it was "
            "taken for one.\n");
}

TEST(ReadTable, theWholeFileSettlesDayAndMonth) {
  const auto sameDay = [](const std::vector<std::string>& dates) {
    std::vector<std::string> rows;
    for (const std::string& date : dates) rows.push_back(date + ",1,8");
    return tableOf("date,tmin,tmax", rows);
  };
  const WeatherFile dayFirst =
      readWhole(sameDay({"03/04/2026", "1/1/2026", "25/04/2026"}));
  EXPECT_EQ(dayFirst.days.at(1).day, dayOf(2026, 4, 3));
  EXPECT_THAT(told(dayFirst.report),
              HasSubstr("Its dates were read with the day before the month"));
  const WeatherFile monthFirst = readWhole(sameDay({"3-4-2026", "4-25-2026"}));
  EXPECT_EQ(monthFirst.days.at(0).day, dayOf(2026, 3, 4));
  EXPECT_EQ(monthFirst.report.dateOrder, DateOrder::monthFirst);
  const WeatherFile following =
      readWhole(sameDay({"03.04.2026", "04.04.2026", "05.04.2026"}));
  EXPECT_EQ(following.days.at(2).day, dayOf(2026, 4, 5));
  const WeatherFile onlyEqual = readWhole(sameDay({"04/04/2026"}));
  EXPECT_EQ(onlyEqual.report.dateOrder, std::nullopt);
  EXPECT_EQ(
      refusal(sameDay({"03/04/2026"})),
      "weather.txt: The dates do not say whether the day or the month stands first; "
      "write them like 2027-04-03.\n");
  EXPECT_THAT(refusal(sameDay({"13/04/2026", "04/13/2026"})),
              HasSubstr("do not say whether the day or the month"));
}

TEST(ReadTable, oneMistypedDateUnsettlesNothing) {
  std::vector<std::string> rows;
  for (int day = 1; day <= 28; ++day)
    rows.push_back(std::to_string(day) + "/02/2026,1,8");
  rows.emplace_back("02/29/2026,1,8");
  rows.emplace_back("31/02/2026,1,8");
  rows.emplace_back("3/2/26,1,8");
  const WeatherFile file = readWhole(tableOf("date,tmin,tmax", rows));
  EXPECT_EQ(file.report.wholeDays, 28);
  EXPECT_EQ(file.report.dateOrder, DateOrder::dayFirst);
  EXPECT_EQ(file.report.unreadableLines, 3U);
  EXPECT_THAT(faultsOf(file.report),
              HasSubstr("weather.txt:30: \"02/29/2026\" is no day of the calendar"));
}

TEST(ReadTable, unitsAreToldOrReadFromTheHeadings) {
  WeatherReading reading = readingToday();
  reading.temperatureUnit = TemperatureUnit::fahrenheit;
  const std::string plain = tableOf("date,tmin,tmax", {"2027-03-01,32,50"});
  EXPECT_EQ(readWhole(plain, reading).days.at(0).weather, celsius(0, 10));
  EXPECT_THAT(told(readWhole(plain, reading).report),
              HasSubstr("Temperatures were taken for degrees Fahrenheit, as you said: "
                        "from 0.0 to 10.0 degrees Celsius.\n"));
  const WeatherFile byHeading =
      readWhole(tableOf("date,tmin (F),tmax (F),rain (in)", {"2027-03-01,33,50,1"}));
  EXPECT_EQ(byHeading.days.at(0).weather.minimum, 0.56);
  EXPECT_EQ(byHeading.days.at(0).weather.rain, 25.4);
  EXPECT_EQ(byHeading.report.unitOrigin, UnitOrigin::heading);
  EXPECT_EQ(readWhole(tableOf("date,tmin,tmax (F)", {"2027-03-01,32,50"}))
                .days.at(0)
                .weather.minimum,
            0);
  EXPECT_EQ(refusal(tableOf("date,tmin (C),tmax (F)", {"2027-03-01,32,50"})),
            "weather.txt: The headings \"tmin (C)\" and \"tmax (F)\" name different "
            "units; say the unit, or give both the same.\n");
}

TEST(ReadTable, guessesTheUnitByItsRangeAndSaysSo) {
  const auto july = [](int minimum, int maximum) {
    std::vector<std::string> rows;
    for (int day = 10; day < 30; ++day)
      rows.push_back("2026-07-" + std::to_string(day) + ',' + std::to_string(minimum)
                     + ',' + std::to_string(maximum));
    return tableOf("date,tmin,tmax", rows);
  };
  const WeatherFile fahrenheit = readWhole(july(57, 81));
  EXPECT_EQ(fahrenheit.report.unit, TemperatureUnit::fahrenheit);
  EXPECT_EQ(fahrenheit.report.unitOrigin, UnitOrigin::inferred);
  EXPECT_EQ(fahrenheit.report.doubt, std::nullopt);
  EXPECT_EQ(readWhole(july(139, 272)).report.unit, TemperatureUnit::tenthsOfCelsius);
  EXPECT_EQ(readWhole(july(-20, 60)).report.unit, TemperatureUnit::tenthsOfCelsius);
  EXPECT_EQ(readWhole(july(9, 19)).report.unit, TemperatureUnit::celsius);
  EXPECT_EQ(readWhole(july(9, 19)).report.doubt, std::nullopt);
  const WeatherFile either = readWhole(july(31, 44));
  EXPECT_EQ(either.report.unit, TemperatureUnit::celsius);
  EXPECT_THAT(told(either.report), HasSubstr("could be degrees Fahrenheit"));
}

TEST(ReadTable, aUnitThatCannotBeIsRefusedOrDoubted) {
  WeatherReading reading = readingToday();
  reading.temperatureUnit = TemperatureUnit::celsius;
  const std::string hot = tableOf(
      "date,tmin,tmax",
      {"2026-07-01,57,81", "2026-07-02,57,81", "2026-07-03,57,81", "2026-07-04,57,58"});
  EXPECT_THAT(refusal(hot, reading),
              HasSubstr("weather.txt: Taken as degrees Celsius, 3 of 8 temperatures are "
                        "none that a thermometer shows; the unit must be another.\n"));
  const std::string warm = tableOf("date,tmin,tmax", {"2026-07-01,41,58"});
  EXPECT_THAT(told(readWhole(warm, reading).report),
              HasSubstr("Taken as degrees Celsius the warmest days reach 58.0 degrees"));
}

TEST(ReadTable, impossibleValuesAreDroppedAndTold) {
  std::vector<std::string> rows;
  for (int day = 10; day < 32; ++day)
    rows.push_back("2027-03-" + std::to_string(day) + ",1,8,2");
  rows.emplace_back("2027-03-01,-95,8,2");
  rows.emplace_back("2027-03-02,1,8,-2");
  const WeatherFile file = readWhole(tableOf("date,tmin,tmax,rain", rows));
  EXPECT_EQ(file.report.impossible, 2);
  EXPECT_EQ(file.report.wholeDays, 23);
  EXPECT_EQ(
      faultsOf(file.report),
      "weather.txt:24: The value -95.00 is none that an instrument shows; it is "
      "left out.\n"
      "weather.txt:25: The value -2.00 is none that an instrument shows; it is left "
      "out.\n");
}

const std::string summaries =
    "\"STATION\",\"NAME\",\"LATITUDE\",\"TMAX\",\"TMAX_ATTRIBUTES\",\"DATE\",\"TMIN\","
    "\"TMIN_ATTRIBUTES\",\"PRCP\",\"PRCP_ATTRIBUTES\"\n"
    "\"XX000000001\",\"ALDER BEND, \"\"LOW\"\" FIELD, XX\",\"46.9\",\"66\",\",,W\","
    "\"2026-07-01\",\"48\",\",,W,0700\",\"0.00\",\"T,,W\"\n"
    "\"XX000000001\",\"ALDER BEND, \"\"LOW\"\" FIELD, XX\",\"46.9\",\"70\",\",I,W\","
    "\"2026-07-02\",\"48\",\",,W\",\"0.10\",\",,W\"\n";

TEST(ReadDailySummaries, quotedNamesFlagsAndUnits) {
  const WeatherFile file = readWhole(summaries);
  EXPECT_EQ(file.report.format, WeatherFormat::dailySummaries);
  EXPECT_EQ(file.report.stationId, "XX000000001");
  EXPECT_EQ(file.report.stationName, "ALDER BEND, \"LOW\" FIELD, XX");
  EXPECT_THAT(file.report.flagged, ElementsAre(Pair('I', 1)));
  EXPECT_EQ(file.report.unit, TemperatureUnit::fahrenheit);
  EXPECT_EQ(file.report.rainUnit, RainUnit::inches);
  EXPECT_EQ(file.days.at(0).weather.maximum, 18.89);
  EXPECT_EQ(file.days.at(1).weather.maximum, std::nullopt);
  EXPECT_EQ(file.days.at(1).weather.rain, 2.54);
  EXPECT_THAT(told(file.report),
              AllOf(HasSubstr("Read as daily summaries.\n"),
                    HasSubstr("Station XX000000001, ALDER BEND, \"LOW\" FIELD, XX.\n"),
                    HasSubstr("temperatures were taken for degrees Fahrenheit, because "
                              "then they run from 8.9 to 18.9 degrees Celsius.\n"),
                    HasSubstr("it was taken for inches.\n")));
}

// The form in which the archive hands out whole stations: tenths, right-aligned in
// quotes.
TEST(ReadDailySummaries, nativeTenths) {
  const WeatherFile file = readWhole(
      "\"STATION\",\"DATE\",\"NAME\",\"TMAX\",\"TMAX_ATTRIBUTES\",\"TMIN\","
      "\"TMIN_ATTRIBUTES\",\"PRCP\"\n"
      "\"XX000000001\",\"2026-07-01\",\"ALDER BEND\",\"  189\",\",,E\",\"   89\","
      "\",,E\",\"  254\"\n");
  WeatherDay day = celsius(8.9, 18.9);
  day.rain = 25.4;
  EXPECT_THAT(file.days, ElementsAre(DatedWeather{dayOf(2026, 7, 1), day}));
}

TEST(ReadDailySummaries, aStationCanBeAskedForByItsName) {
  const std::string text =
      "STATION,NAME,DATE,TMAX,TMIN\n"
      "XX1,ALDER BEND,2026-07-01,20.1,10\n"
      "XX2,\"QUARRY, XX\",2026-07-01,21.1,11\n";
  WeatherReading reading = readingToday();
  reading.station = "quarry, xx";
  EXPECT_EQ(readWhole(text, reading).days.at(0).weather, celsius(11, 21.1));
  EXPECT_THAT(refusal(text), HasSubstr("several stations"));
  reading.station = "Mill";
  EXPECT_THAT(refusal("date,tmin,tmax\n2026-07-01,1,2\n", reading),
              HasSubstr("does not name its station, so \"Mill\" cannot be looked for"));
}

/// Speaks with a decimal comma where the machine has such a locale.
class DecimalComma {
public:
  DecimalComma() {
    for (const char* name : {"es_ES.UTF-8", "de_DE.UTF-8", "fr_FR.UTF-8"})
      if (std::setlocale(LC_ALL, name) != nullptr) return;
  }

  ~DecimalComma() { std::setlocale(LC_ALL, "C"); }

  DecimalComma(const DecimalComma&) = delete;
  DecimalComma& operator=(const DecimalComma&) = delete;
};

TEST(ReadTable, theLocaleChangesNothing) {
  const DecimalComma comma;
  const WeatherFile file = readWhole(tableOf("date,tmin,tmax", {"2027-03-01,1.5,8.25"}));
  EXPECT_THAT(file.days,
              ElementsAre(DatedWeather{dayOf(2027, 3, 1), celsius(1.5, 8.25)}));
  EXPECT_THAT(told(file.report), Not(HasSubstr("8,")));
}

}  // namespace
}  // namespace topwire
