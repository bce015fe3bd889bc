#include "tests/support/weather_text.h"

namespace topwire {
namespace {

using ::testing::AllOf;
using testing::celsius;
using ::testing::ElementsAre;
using testing::faultsOf;
using testing::fixedWidthLine;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Pair;
using testing::readingToday;
using testing::readWhole;
using testing::refusal;
using ::testing::SizeIs;
using testing::told;

const std::string twoDays =
    fixedWidthLine("XX000000001", "202702", "TMAX", "   56  S   11  S")
    + fixedWidthLine("XX000000001", "202702", "TMIN", "  -22  S   -5  S")
    + fixedWidthLine("XX000000001", "202702", "PRCP", "    0T S  254  S")
    + fixedWidthLine("XX000000001", "202702", "SNWD", "  100  S  100  S");

TEST(ReadFixedWidth, tenthsBecomeDegreesAndMillimetres) {
  const WeatherFile file = readWhole(twoDays);
  WeatherDay first = celsius(-2.2, 5.6);
  first.rain = 0;
  WeatherDay second = celsius(-0.5, 1.1);
  second.rain = 25.4;
  EXPECT_THAT(file.days,
              ElementsAre(DatedWeather{dayOf(2027, 2, 1), first},
                          DatedWeather{dayOf(2027, 2, 2), second}));
  EXPECT_EQ(file.report.format, WeatherFormat::ghcnFixedWidth);
  EXPECT_EQ(file.report.stationId, "XX000000001");
  EXPECT_EQ(file.report.wholeDays, 2);
  EXPECT_EQ(told(file.report),
            "Read as GHCN-Daily of fixed width.\n"
            "Station XX000000001.\n"
            "2 days with both temperatures were read, from 1 February 2027 to 2 February "
            "2027.\n"
            "Temperatures run from -2.2 to 5.6 degrees Celsius.\n");
}

TEST(ReadFixedWidth, windowsLineEndsAndTrimmedBlanksChangeNothing) {
  std::string windows;
  std::string trimmed;
  for (const char c : twoDays) {
    if (c == '\n') {
      windows += '\r';
      trimmed.erase(trimmed.find_last_not_of(' ') + 1);
    }
    windows += c;
    trimmed += c;
  }
  EXPECT_EQ(readWhole(windows).days, readWhole(twoDays).days);
  EXPECT_EQ(readWhole(trimmed).days, readWhole(twoDays).days);
  EXPECT_THAT(readWhole(trimmed).report.faults, IsEmpty());
}

TEST(ReadFixedWidth, flaggedValuesAreDroppedAndCountedByFlag) {
  const WeatherFile file = readWhole(
      fixedWidthLine("XX000000001", "202702", "TMAX", "   56  S   11 IS  400 XS  500 XS")
      + fixedWidthLine("XX000000001", "202702", "TMIN", "  -22  S   -5  S  -10  S"));
  EXPECT_THAT(file.report.flagged, ElementsAre(Pair('I', 1), Pair('X', 2)));
  EXPECT_EQ(file.report.wholeDays, 1);
  EXPECT_EQ(file.report.partDays, 2);
  EXPECT_THAT(told(file.report),
              AllOf(HasSubstr("One value was dropped because its source flags it I: "
                              "failed internal consistency check.\n"),
                    HasSubstr("2 values were dropped because their source flags them X: "
                              "failed bounds check.\n"),
                    HasSubstr("2 more days lack a temperature.\n")));
}

TEST(ReadFixedWidth, aDayTheMonthDoesNotHaveIsTold) {
  std::string cells;
  for (int day = 0; day < 30; ++day) cells += "   10  S";
  const WeatherFile file =
      readWhole(fixedWidthLine("XX000000001", "202702", "TMAX", cells)
                + fixedWidthLine("XX000000001", "202702", "TMIN", cells));
  EXPECT_EQ(file.report.wholeDays, 28);
  EXPECT_THAT(
      faultsOf(file.report),
      HasSubstr("weather.txt:1: There is a value for day 29, which the month does "
                "not have; it is left out.\n"));
  EXPECT_THAT(file.report.faults, SizeIs(4));
}

TEST(ReadFixedWidth, aLineCutShortKeepsItsWholeValues) {
  const std::string cut = twoDays.substr(0, twoDays.find("  254") + 3);
  const WeatherFile file = readWhole(cut);
  EXPECT_EQ(file.days.at(1).weather.rain, std::nullopt);
  EXPECT_EQ(file.days.at(0).weather.rain, 0);
  EXPECT_THAT(faultsOf(file.report),
              HasSubstr("weather.txt:3: The line ends after 32 letters"));
}

TEST(ReadFixedWidth, otherLinesAreToldAndSkipped) {
  const WeatherFile file = readWhole(twoDays + "and so on\n\n");
  EXPECT_EQ(file.report.unreadableLines, 1U);
  EXPECT_EQ(
      faultsOf(file.report),
      "weather.txt:5: The line \"and so on\" does not have the shape of the others; "
      "it is left out.\n");
  EXPECT_THAT(told(file.report), HasSubstr("One line could not be read.\n"));
}

TEST(ReadFixedWidth, aYearBeforeAllMeasuringIsNone) {
  const WeatherFile file =
      readWhole(twoDays + fixedWidthLine("XX000000001", "169912", "TMAX", "   10  S"));
  EXPECT_EQ(file.report.unreadableLines, 1U);
  EXPECT_EQ(file.report.wholeDays, 2);
}

TEST(ReadFixedWidth, ofSeveralStationsOneMustBeNamed) {
  const std::string other = fixedWidthLine("XX000000002", "202702", "TMAX", "   99  S")
                            + fixedWidthLine("XX000000002", "202702", "TMIN", "   11  S");
  EXPECT_EQ(refusal(twoDays + other),
            "weather.txt: The file holds several stations; say which one to read: "
            "XX000000001, XX000000002.\n");
  WeatherReading reading = readingToday();
  reading.station = "xx000000002";
  const WeatherFile file = readWhole(twoDays + other, reading);
  EXPECT_THAT(file.days, ElementsAre(DatedWeather{dayOf(2027, 2, 1), celsius(1.1, 9.9)}));
  reading.station = "XX000000003";
  EXPECT_EQ(refusal(twoDays + other, reading),
            "weather.txt: The file has no station \"XX000000003\"; it has XX000000001, "
            "XX000000002.\n");
}

TEST(ReadFixedWidth, aRainGaugeAloneIsRefused) {
  EXPECT_EQ(refusal(fixedWidthLine("XX000000001", "202702", "PRCP", "  254  S")),
            "weather.txt: The file holds no day with both a minimum and a maximum "
            "temperature.\n");
}

const std::string byStation =
    "XX000000001,20270201,TMAX,56,,,S,0700\n"
    "XX000000001,20270201,TMIN,-22,,,S,0700\n"
    "XX000000001,20270201,PRCP,0,T,,S,\n"
    "XX000000001,20270202,TMAX,11,,,S,\n"
    "XX000000001,20270202,TMIN,-5,,,S,\n"
    "XX000000001,20270202,PRCP,254,,,S,\n"
    "XX000000001,20270202,SNWD,100,,,S,\n";

TEST(ReadByStation, saysTheSameAsFixedWidth) {
  const WeatherFile file = readWhole(byStation);
  EXPECT_EQ(file.report.format, WeatherFormat::ghcnByStation);
  EXPECT_EQ(file.days, readWhole(twoDays).days);
  EXPECT_THAT(told(file.report), HasSubstr("Read as GHCN-Daily by station.\n"));
}

TEST(ReadByStation, headingsOfSomeCopiesAreNoFault) {
  const WeatherFile file =
      readWhole("ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME\n" + byStation);
  EXPECT_EQ(file.days, readWhole(byStation).days);
  EXPECT_THAT(file.report.faults, IsEmpty());
}

TEST(ReadByStation, flagsMissingAndBrokenLines) {
  const WeatherFile file = readWhole(byStation
                                     + "XX000000001,20270203,TMAX,300,,I,S,\n"
                                       "XX000000001,20270204,TMAX,-9999,,,S,\n"
                                       "XX000000001,20270230,TMAX,100,,,S,\n"
                                       "XX000000001,20270205,TMAX,warm,,,S,\n"
                                       "XX000000001,20270206,TMAX\n"
                                       "nothing\n");
  EXPECT_EQ(file.days, readWhole(byStation).days);
  EXPECT_THAT(file.report.flagged, ElementsAre(Pair('I', 1)));
  EXPECT_EQ(
      faultsOf(file.report),
      "weather.txt:10: \"20270230\" is no day of the calendar that can be read; the "
      "line is left out.\n"
      "weather.txt:11: \"warm\" is no number; it is left out.\n"
      "weather.txt:13: The line \"nothing\" does not have the shape of the others; "
      "it is left out.\n");
}

}  // namespace
}  // namespace topwire
