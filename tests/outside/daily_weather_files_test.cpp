#include "core/weather/degree_days.h"
#include "tests/support/builders.h"
#include "tests/support/weather_text.h"

#include <fstream>
#include <map>
#include <optional>
#include <sstream>
#include <string>

namespace topwire {
namespace {

using testing::readWhole;

std::optional<std::string> contentOf(const std::string& path) {
  std::ifstream file{path, std::ios::binary};
  if (!file) return std::nullopt;
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

std::map<int, double> sumsByYear(const WeatherFile& file, unsigned lastMonth) {
  std::map<int, double> sums;
  for (const auto& [day, weather] : file.days)
    if (static_cast<unsigned>(civil(day).month()) <= lastMonth)
      sums[yearOf(day)] += simpleAverage({*weather.minimum, *weather.maximum}, 6.1);
  return sums;
}

/// Seattle-Tacoma 2012 to 2015, degrees C and mm: seattle-weather.csv of the package
/// vega-datasets, made from GHCN-Daily; a work of the United States Government, so that
/// it may stand beside this. The sums of January to April above 6.1 degrees C were worked
/// by another program.
TEST(DailyWeatherFiles, seattle) {
  const WeatherFile file =
      readWhole(testing::sourceText("tests/outside/seattle-weather.csv"));
  EXPECT_EQ(file.report.wholeDays, 1461);
  EXPECT_EQ(file.report.gaps, 0);
  EXPECT_EQ(file.report.unit, TemperatureUnit::celsius);
  EXPECT_EQ(file.report.rainUnit, RainUnit::millimetres);
  EXPECT_EQ(file.report.doubt, std::nullopt);
  const auto sums = sumsByYear(file, 4);
  EXPECT_NEAR(sums.at(2012), 206.65, 0.005);
  EXPECT_NEAR(sums.at(2013), 255.80, 0.005);
  EXPECT_NEAR(sums.at(2014), 313.55, 0.005);
  EXPECT_NEAR(sums.at(2015), 417.65, 0.005);
}

/// The first lines of that file as published.
TEST(DailyWeatherFiles, seattlesFirstDays) {
  const WeatherFile file = readWhole(
      "date,precipitation,temp_max,temp_min,wind,weather\n"
      "2012-01-01,0.0,12.8,5.0,4.7,drizzle\n"
      "2012-01-02,10.9,10.6,2.8,4.5,rain\n"
      "2012-01-03,0.8,11.7,7.2,2.3,rain\n");
  ASSERT_EQ(file.days.size(), 3U);
  WeatherDay second = testing::celsius(2.8, 10.6);
  second.rain = 10.9;
  EXPECT_EQ(file.days.at(1), (DatedWeather{dayOf(2012, 1, 2), second}));
}

/// Klein-Altendorf 1998 to 2010, recorded by the University of Bonn (A. Kunz, M. Blanke
/// and co-workers); open data kept beside the project, not in it.
TEST(DailyWeatherFiles, kleinAltendorf) {
  const auto text =
      contentOf(TOPWIRE_SOURCE_DIR "/../shared/data/daily_temperature_1998_2010.csv");
  if (!text) GTEST_SKIP() << "the daily record is not beside this copy of the project";
  const WeatherFile file = readWhole(*text);
  EXPECT_EQ(file.report.period, (DaySpan{dayOf(1998, 1, 1), dayOf(2010, 5, 31)}));
  EXPECT_EQ(file.report.wholeDays, 4534);
  EXPECT_EQ(file.report.partDays, 0);
  EXPECT_EQ(file.report.gaps, 0);
  EXPECT_EQ(file.report.coldest, -19.94);
  EXPECT_EQ(file.report.warmest, 39.5);
  EXPECT_EQ(file.report.unit, TemperatureUnit::celsius);
  EXPECT_TRUE(file.report.swapped.empty());
  EXPECT_TRUE(file.report.faults.empty());
  EXPECT_EQ(file.report.doubt, std::nullopt);
}

}  // namespace
}  // namespace topwire
