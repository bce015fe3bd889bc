#include "tests/support/weather_text.h"

#include <algorithm>
#include <vector>

namespace topwire {
namespace {

using ::testing::Each;
using ::testing::HasSubstr;
using testing::readingToday;
using testing::readWhole;
using testing::refusal;
using ::testing::SizeIs;
using testing::told;

TEST(ReadWeather, saysWhatAFileIsThatIsNone) {
  struct Row {
    std::string text;
    const char* part;
  };

  const Row rows[] = {
      {"", "The file is empty."},
      {" \r\n\n", "The file is empty."},
      {"\xef\xbb\xbf", "The file is empty."},
      {std::string{"\xff\xfe"
                   "d\0a\0t\0",
                   8},
       "UTF-16; save it again as UTF-8."},
      {"PK\x03\x04...", "a spreadsheet or an archive"},
      {"\x1f\x8b\x08", "compressed; unpack it"},
      {std::string{"SQLite format 3\0...", 19}, "The file is not text"},
      {"Dear Sir,\nit was warm.\n", "none of the weather files that can be read: GHCN"},
      {"date,temperature\n2027-03-01,5\n", "none of the weather files"},
      {"date,tmin,humidity\n2027-03-01,5,80\n", "No heading names the maximum"},
      {"fecha;m\xc3\xa1xima\n2027-03-01;5\n", "No heading names the minimum"},
      {"when,tmin,tmax\n2027-03-01,5,8\n", "No heading names the date"},
      {"date,tmin,tmax\n", "no day with both a minimum and a maximum"},
      {"date,tmin,tmax\n2027-03-01,5,\n", "no day with both a minimum and a maximum"}};
  for (const auto& [text, part] : rows) {
    const std::string said = refusal(text);
    EXPECT_THAT(said, HasSubstr(part)) << text;
    EXPECT_THAT(said, ::testing::StartsWith("weather.txt: ")) << text;
  }
}

TEST(ReadWeather, refusesAFileOfWhichMostCannotBeRead) {
  std::string text = "date,tmin,tmax\n2027-03-01,1,8\n";
  EXPECT_EQ(readWhole(text + "soon,1,8\n").report.unreadableLines, 1U);
  text += "soon,1,8\nlater,1,8\n";
  EXPECT_EQ(
      refusal(text),
      "weather.txt: Of 3 lines 2 cannot be read, so nothing was taken from the "
      "file.\n"
      "weather.txt:3: \"soon\" is no day of the calendar that can be read; the line "
      "is left out.\n"
      "weather.txt:4: \"later\" is no day of the calendar that can be read; the "
      "line is left out.\n");
}

TEST(ReadWeather, tellsTheFirstFaultsAndCountsTheOthers) {
  std::string text = "date,tmin,tmax\n";
  for (int day = 1; day <= 28; ++day)
    text += "2027-02-" + std::string(day < 10 ? "0" : "") + std::to_string(day)
            + ",1,8\nsoon,1,8\n2027-02-01,1,warm\n";
  text += text.substr(text.find('\n') + 1);
  const WeatherFile file = readWhole(text);
  EXPECT_THAT(file.report.faults, SizeIs(20));
  EXPECT_EQ(file.report.furtherFaults, 2 * 2 * 28 - 20);
  EXPECT_EQ(file.report.faults.front().place, "weather.txt:3");
  EXPECT_THAT(told(file.report),
              HasSubstr("92 faults more are not shown beside the first.\n"));
}

TEST(ReadWeather, daysOutsideTheCenturiesOfMeasuringAreNoDays) {
  const WeatherFile file = readWhole(
      "date,tmin,tmax\n1699-12-31,1,8\n1700-01-01,1,8\n2199-12-31,1,8\n2200-01-01,1,8\n");
  EXPECT_EQ(file.report.wholeDays, 2);
  EXPECT_EQ(file.report.unreadableLines, 2U);
}

std::string longTable() {
  std::string text = "date,tmin,tmax\n";
  for (Day day = dayOf(1950, 1, 1); day < dayOf(2020, 1, 1); day = plusDays(day, 1))
    text += isoText(day) + ",1.5,8.5\n";
  return text;
}

TEST(ReadWeather, tellsItsProgress) {
  std::vector<double> shares;
  const auto read = readWeather(longTable(), "long.csv", readingToday(), [&](double at) {
    shares.push_back(at);
    return true;
  });
  ASSERT_TRUE(read && *read);
  EXPECT_GT(shares.size(), 5U);
  EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
  EXPECT_THAT(shares, Each(::testing::AllOf(::testing::Ge(0), ::testing::Le(1))));
}

TEST(ReadWeather, stopsWhenAskedToAndHandsNothingOut) {
  int asked = 0;
  const auto read = readWeather(
      longTable(), "long.csv", readingToday(), [&](double) { return ++asked < 3; });
  ASSERT_TRUE(read) << "stopping is no problem";
  EXPECT_EQ(*read, std::nullopt);
  EXPECT_EQ(asked, 3);
}

TEST(ReadWeather, aFormatCanBeForced) {
  WeatherReading reading = readingToday();
  reading.format = WeatherFormat::ghcnFixedWidth;
  EXPECT_THAT(refusal("date,tmin,tmax\n2027-03-01,1,8\n", reading),
              HasSubstr("Of 2 lines 2 cannot be read"));
}

TEST(ReadWeather, oneLineOfAnyLengthIsNoBurden) {
  for (const char filler : {',', '"', ';', 'a', '0', ' '}) {
    const std::string text(3'000'000, filler);
    EXPECT_NE(refusal(text), "was read");
    EXPECT_NE(refusal("date,tmin,tmax\n" + text), "was read");
  }
}

}  // namespace
}  // namespace topwire
