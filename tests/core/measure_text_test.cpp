#include "core/orchard/measure_text.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using Values = std::vector<std::int64_t>;

Values read(std::string_view text,
            Measure measure = Measure::trunkDiameter,
            UnitSystem units = UnitSystem::usCustomary) {
  const auto values = readMeasured(text, measure, units);
  EXPECT_TRUE(values.has_value()) << text << ": " << inEnglish(values.error());
  return values.value_or(Values{});
}

TEST(ReadMeasured, TakesAListWithOneUnit) {
  EXPECT_THAT(read("1.5, 1 5/8, 1.4 in"), ElementsAre(38'100, 41'275, 35'560));
  EXPECT_THAT(read("38 36 41 mm"), ElementsAre(38'000, 36'000, 41'000));
  EXPECT_THAT(read("38,36,41 mm"), ElementsAre(38'000, 36'000, 41'000));
  EXPECT_THAT(read("38; 36\n41mm"), ElementsAre(38'000, 36'000, 41'000));
  EXPECT_THAT(read("1.5 in, 1.6"), ElementsAre(38'100, 40'640));
}

TEST(ReadMeasured, TakesTheUsualUnitWhereNoneIsTyped) {
  EXPECT_THAT(read("1.5 2"), ElementsAre(38'100, 50'800));
  EXPECT_THAT(read("38", Measure::trunkDiameter, UnitSystem::metric),
              ElementsAre(38'000));
  EXPECT_THAT(read("2.9", Measure::leaderHeight, UnitSystem::metric),
              ElementsAre(2'900'000));
  EXPECT_THAT(read("45 50", Measure::shootGrowth, UnitSystem::metric),
              ElementsAre(450'000, 500'000));
  EXPECT_THAT(read("18", Measure::leaderGrowth), ElementsAre(457'200));
}

TEST(ReadMeasured, TakesFractionsAndDecimalCommas) {
  EXPECT_THAT(read("5/8 3/4 1 1/2"), ElementsAre(15'875, 19'050, 38'100));
  EXPECT_THAT(read("3,8 3,6 cm"), ElementsAre(38'000, 36'000));
  EXPECT_THAT(read("3,8, 3,6 cm"), ElementsAre(38'000, 36'000));
  EXPECT_THAT(read("1.5,1.6"), ElementsAre(38'100, 40'640));
}

TEST(ReadMeasured, TakesFeetWithInches) {
  EXPECT_THAT(read("7 ft 2 in; 6 ft 11 in", Measure::leaderHeight),
              ElementsAre(2'184'400, 2'108'200));
  EXPECT_THAT(read("7'2\" 7'3\"", Measure::leaderHeight),
              ElementsAre(2'184'400, 2'209'800));
  EXPECT_THAT(read("7.5, 8 ft, 90 in", Measure::leaderHeight),
              ElementsAre(2'286'000, 2'438'400, 2'286'000));
}

TEST(ReadMeasured, TakesCountsAndPercent) {
  EXPECT_THAT(read("28 31 25", Measure::fruitPerTree), ElementsAre(28, 31, 25));
  EXPECT_THAT(read("80 90 %", Measure::spaceFilled), ElementsAre(80, 90));
  EXPECT_THAT(read("", Measure::fruitPerTree), ElementsAre());
}

TEST(ReadMeasured, NamesWhatItCannotRead) {
  for (const auto& [text, part] : {std::pair{"38 x 41", "\"x\""},
                                   std::pair{"38 furlong", "\"furlong\""},
                                   std::pair{"-3", "\"-3\""},
                                   std::pair{"1/0", "0"},
                                   std::pair{"3.", "3."}}) {
    const auto values = readMeasured(text, Measure::trunkDiameter, UnitSystem::metric);
    if (std::string_view{text} == "3." || std::string_view{text} == "1/0") {
      EXPECT_FALSE(values.has_value()) << text;
      continue;
    }
    ASSERT_FALSE(values.has_value()) << text;
    EXPECT_EQ(values.error().place, "values");
    EXPECT_THAT(inEnglish(values.error().sentence), HasSubstr(part));
  }
  EXPECT_FALSE(readMeasured("2.5", Measure::fruitPerTree, UnitSystem::metric));
  EXPECT_FALSE(readMeasured("25 mm", Measure::fruitPerTree, UnitSystem::metric));
}

TEST(MeasuredText, WritesWhatIsReadBack) {
  EXPECT_EQ(measuredText(38'100, Measure::trunkDiameter, UnitSystem::usCustomary),
            "1.5 in");
  EXPECT_EQ(measuredText(38'100, Measure::trunkDiameter, UnitSystem::metric), "38.1 mm");
  EXPECT_EQ(measuredText(3'048'000, Measure::leaderHeight, UnitSystem::metric), "3.05 m");
  EXPECT_EQ(measuredText(3'048'000, Measure::leaderHeight, UnitSystem::usCustomary),
            "10 ft");
  EXPECT_EQ(measuredText(412'000, Measure::shootGrowth, UnitSystem::metric), "41 cm");
  EXPECT_EQ(measuredText(31, Measure::fruitPerTree, UnitSystem::metric), "31");
  EXPECT_EQ(measuredText(80, Measure::spaceFilled, UnitSystem::metric), "80 %");
  for (const Measure measure : allMeasures())
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::usCustomary}) {
      const std::string text = measuredText(60'960'0, measure, units);
      EXPECT_THAT(read(text, measure, units), ElementsAre(::testing::Gt(0))) << text;
      EXPECT_EQ(measureByCode(codeOf(measure)), measure);
    }
}

}  // namespace
}  // namespace topwire
