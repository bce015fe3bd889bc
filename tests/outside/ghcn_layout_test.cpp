#include "tests/support/weather_text.h"

#include <map>
#include <string>

namespace topwire {
namespace {

using ::testing::ElementsAre;
using ::testing::Pair;
using testing::readWhole;

/// A line as section III of the readme of GHCN-Daily lays it down (NOAA National Centers
/// for Environmental Information, Global Historical Climatology Network - Daily; the
/// columns also on the Met Office Hadley Centre's page of daily temperature benchmarks,
/// whose files are of the same form):
///
///     ID 1-11, YEAR 12-15, MONTH 16-17, ELEMENT 18-21,
///     VALUE1 22-26, MFLAG1 27, QFLAG1 28, SFLAG1 29,
///     VALUE2 30-34, MFLAG2 35, QFLAG2 36, SFLAG2 37, ...
///     VALUE31 262-266, MFLAG31 267, QFLAG31 268, SFLAG31 269
class LayoutLine {
public:
  LayoutLine(const std::string& id,
             const std::string& year,
             const std::string& month,
             const std::string& element)
      : text_(269, ' ') {
    at(1, id);
    at(12, year);
    at(16, month);
    at(18, element);
    for (int day = 1; day <= 31; ++day) value(day, -9999);
  }

  /// Writes from a column on, counted from 1 as the readme does.
  LayoutLine& at(int column, const std::string& signs) {
    text_.replace(static_cast<std::size_t>(column - 1), signs.size(), signs);
    return *this;
  }

  LayoutLine& value(int day, int tenths) {
    std::string five = std::to_string(tenths);
    five.insert(0, 5 - five.size(), ' ');
    return at(valueColumn(day), five);
  }

  LayoutLine& flag(int day, char quality) {
    return at(valueColumn(day) + 6, std::string{quality});
  }

  std::string text() const { return text_ + '\n'; }

private:
  static int valueColumn(int day) { return 22 + (day - 1) * 8; }

  std::string text_;
};

TEST(GhcnLayout, theReadmesColumnsAgreeWithEachOther) {
  const std::string line = LayoutLine{"XX000000001", "2024", "01", "TMAX"}
                               .at(22, "  123")
                               .at(30, "  -45")
                               .at(262, "  378")
                               .at(269, "S")
                               .text();
  ASSERT_EQ(line.size(), 270U);
  const WeatherFile file = readWhole(line
                                     + LayoutLine{"XX000000001", "2024", "01", "TMIN"}
                                           .value(1, -100)
                                           .value(2, -200)
                                           .value(31, 0)
                                           .text());
  EXPECT_THAT(file.days,
              ElementsAre(DatedWeather{dayOf(2024, 1, 1), testing::celsius(-10, 12.3)},
                          DatedWeather{dayOf(2024, 1, 2), testing::celsius(-20, -4.5)},
                          DatedWeather{dayOf(2024, 1, 31), testing::celsius(0, 37.8)}))
      << "tenths of a degree";
}

/// A leap year with every element the grower may meet in a station's file, and every
/// quality flag the readme lists, each of which means that a check failed.
TEST(GhcnLayout, aYearOfAStation) {
  const std::string flags = "DGIKLMNORSTWXZ";
  const char* const months[] = {
      "01", "02", "03", "04", "05", "06", "07", "08", "09", "10", "11", "12"};
  const int lengths[] = {31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  std::string text;
  for (std::size_t month = 0; month < 12; ++month) {
    for (const char* element : {"TMAX", "TMIN", "TAVG", "TOBS", "PRCP", "SNOW", "SNWD"}) {
      LayoutLine line{"XX000000001", "2024", months[month], element};
      const int value = std::string{element} == "TMAX"   ? 150
                        : std::string{element} == "TMIN" ? 40
                                                         : 12;
      for (int day = 1; day <= lengths[month]; ++day) line.value(day, value);
      if (month == 2 && std::string{element} == "TMAX")
        for (std::size_t i = 0; i < flags.size(); ++i)
          line.value(static_cast<int>(i) + 1, 999)
              .flag(static_cast<int>(i) + 1, flags[i]);
      text += line.text();
    }
  }
  const WeatherFile file = readWhole(text);
  EXPECT_EQ(file.days.size(), 366U);
  EXPECT_EQ(file.report.wholeDays, 366 - 14);
  EXPECT_EQ(file.report.partDays, 14);
  EXPECT_EQ(file.report.flagged.size(), flags.size());
  EXPECT_EQ(file.report.gaps, 1);
  EXPECT_EQ(file.report.longestGap, (DaySpan{dayOf(2024, 3, 1), dayOf(2024, 3, 14)}));
  WeatherDay usual = testing::celsius(4, 15);
  usual.rain = 1.2;
  EXPECT_EQ(file.days.at(59), (DatedWeather{dayOf(2024, 2, 29), usual}));
  EXPECT_TRUE(file.report.faults.empty());
}

/// The fields of readme-by_station.txt in the same archive: ID, YYYYMMDD, ELEMENT, VALUE,
/// M-FLAG, Q-FLAG, S-FLAG, OBS-TIME.
TEST(GhcnLayout, byStationHasTheFieldsOfItsReadme) {
  const WeatherFile file = readWhole(
      "XX000000001,19860529,TMAX,261,,,0,0700\n"
      "XX000000001,19860529,TMIN,128,,,0,0700\n"
      "XX000000001,19860530,TMAX,267,,S,0,0700\n");
  EXPECT_THAT(
      file.days,
      ElementsAre(DatedWeather{dayOf(1986, 5, 29), testing::celsius(12.8, 26.1)}));
  EXPECT_THAT(file.report.flagged, ElementsAre(Pair('S', 1)));
}

}  // namespace
}  // namespace topwire
