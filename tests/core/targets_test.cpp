#include "core/orchard/measurements.h"
#include "core/targets/planting_targets.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;

std::vector<std::string> spoken(const std::vector<Sentence>& sentences) {
  std::vector<std::string> told;
  for (const Sentence& sentence : sentences) told.push_back(inEnglish(sentence));
  return told;
}

/// Gala on M.9 T337 in rows 11 ft apart, in the third leaf in 2027 unless said otherwise.
class TargetsTest : public ::testing::Test {
protected:
  Planting& gala() { return orchard.plantings.begin()->second; }

  void measure(Measure what, Day day, std::vector<std::int64_t> values) {
    Measurement taken;
    taken.id = {0, ++last};
    taken.planting = gala().id;
    taken.measure = what;
    taken.day = day;
    taken.values = std::move(values);
    orchard.measurements[taken.id] = taken;
  }

  PlantingTargets targets(Day today = dayOf(2027, 4, 6)) {
    const FixedForecaster forecaster;
    const auto forecast = forecaster.over(orchard, today);
    return targetsOf(orchard, shippedTables(), *forecast, gala(), today);
  }

  std::vector<std::string> fruitReasons() {
    return spoken(reasonsOf(*targets().fruit, gala(), UnitSystem::usCustomary));
  }

  Orchard orchard = orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
  std::uint64_t last = 0;
};

constexpr std::int64_t inch = 25'400;

TEST_F(TargetsTest, GiveDensityAndMatureHeight) {
  const PlantingTargets aim = targets();
  EXPECT_EQ(aim.leaf, 3);
  EXPECT_NEAR(aim.density->perAcre, 1320, 1e-9);
  EXPECT_NEAR(aim.density->perHectare, 3262, 1);
  EXPECT_NEAR(aim.matureHeight->from.inFeet(), 9.9, 1e-9);
}

TEST_F(TargetsTest, KeepWhatTheLeafSaysWithoutATrunk) {
  EXPECT_EQ(targets().fruit->keep, (FruitRange{25, 35}));
  const auto told = fruitReasons();
  EXPECT_THAT(told,
              Contains("Leaf 3, moderate trees: 25 to 35 fruit on a trunk of 1.5 in, as "
                       "is usual then."));
  EXPECT_THAT(told, Contains("None that competes with the leader."));
  EXPECT_THAT(told, Contains(HasSubstr("No trunk was measured in this season or")));
  EXPECT_THAT(told, Contains(HasSubstr("Source: About 30 where the space is filled")));
}

TEST_F(TargetsTest, AThinTrunkTakesFruitOff) {
  measure(Measure::trunkDiameter, dayOf(2027, 2, 3), {inch, inch + inch / 2, inch});
  const FruitTarget fruit = *targets().fruit;
  EXPECT_EQ(fruit.keep, (FruitRange{15, 21}));
  EXPECT_THAT(
      fruitReasons(),
      Contains("The trunk was 1.17 in across on 3 February 2027, 6.9 cm² of wood: "
               "thinner than usual, so the range goes down with it."));
  EXPECT_THAT(fruitReasons(), Contains("At 6 fruit for each cm² it carries 41 at most."));
}

TEST_F(TargetsTest, AThickTrunkKeepsTheUpperHalf) {
  measure(Measure::trunkDiameter, dayOf(2027, 2, 3), {2 * inch});
  EXPECT_EQ(targets().fruit->keep, (FruitRange{30, 35}));
}

TEST_F(TargetsTest, ATrunkOfYearsAgoSaysNothing) {
  measure(Measure::trunkDiameter, dayOf(2025, 11, 3), {inch});
  EXPECT_EQ(targets().fruit->keep, (FruitRange{25, 35}));
}

TEST_F(TargetsTest, GirthStandsForDiameter) {
  measure(Measure::trunkGirth, dayOf(2027, 2, 3), {119'695});  // pi times 1.5 in
  EXPECT_NEAR(targets().trunk->area, 11.4, 0.01);
}

TEST_F(TargetsTest, TheTrunksLoadLimitsTheRange) {
  gala().cultivar = "Fuji";
  gala().planted = dayOf(2023, 4, 10);  // the fifth leaf
  measure(Measure::trunkDiameter, dayOf(2027, 2, 3), {19 * inch / 10});
  const FruitTarget fruit = *targets().fruit;
  EXPECT_EQ(fruit.keep, (FruitRange{58, 73}));
  EXPECT_THAT(fruitReasons(),
              Contains("At 4 fruit for each cm² it carries 73 at most, which limits the "
                       "range."));
  EXPECT_THAT(fruitReasons(),
              Contains("Fuji is prone to crop every other year, so it keeps fewer."));
}

TEST_F(TargetsTest, AFullSpaceIsNotRuledByTheTrunk) {
  gala().planted = dayOf(2017, 4, 10);
  measure(Measure::trunkDiameter, dayOf(2027, 2, 3), {inch});
  EXPECT_EQ(targets().fruit->keep, (FruitRange{100, 120}));
  EXPECT_THAT(fruitReasons(), Contains(HasSubstr("From the eighth leaf on")));
}

TEST_F(TargetsTest, WeakAndBiennialTreesKeepFewerInEveryLeaf) {
  for (int leaf = 2; leaf <= 8; ++leaf) {
    gala().planted = dayOf(2028 - leaf, 4, 10);
    gala().cultivar = "Gala";
    gala().vigour = Vigour::moderate;
    const FruitRange moderate = targets().fruit->keep;
    gala().vigour = Vigour::weak;
    EXPECT_LT(targets().fruit->keep.to, moderate.to) << leaf;
    gala().vigour = Vigour::moderate;
    gala().cultivar = "Fuji";
    EXPECT_LT(targets().fruit->keep.to, moderate.to) << leaf;
  }
}

TEST_F(TargetsTest, TheGrowersFigureGoesBeforeAll) {
  SeasonTarget word;
  word.of = {gala().id, Season{2027}};
  word.fruitFrom = 40;
  word.fruitTo = 45;
  word.note = "buyer wants size";
  orchard.targets[word.of] = word;
  measure(Measure::trunkDiameter, dayOf(2027, 2, 3), {inch});
  EXPECT_EQ(targets().fruit->keep, (FruitRange{40, 45}));
  EXPECT_THAT(fruitReasons(),
              Contains("Your own figure for this season goes before all others."));
  EXPECT_THAT(fruitReasons(), Contains("Your note: buyer wants size"));
}

TEST_F(TargetsTest, TreesNotPlantedYetHaveNone) {
  gala().planted = dayOf(2028, 4, 10);
  const PlantingTargets aim = targets();
  EXPECT_FALSE(aim.fruit);
  EXPECT_FALSE(aim.leader);
  EXPECT_FALSE(aim.nitrogen);
  EXPECT_TRUE(aim.density);
}

TEST_F(TargetsTest, TheLeaderReachesTheTopWireInTheSecondLeaf) {
  gala().planted = dayOf(2026, 4, 10);
  const LeaderCourse course = *targets().leader;
  EXPECT_EQ(course.leaf, 2);
  EXPECT_NEAR(course.start.inFeet(), 7.5, 1e-9);
  EXPECT_NEAR(course.end.inFeet(), 10, 1e-9);
  EXPECT_EQ(course.wantedOn(dayOf(2027, 1, 1)), course.start);
  EXPECT_EQ(course.wantedOn(course.growth.first), course.start);
  EXPECT_EQ(course.wantedOn(course.growth.last), course.end);
  EXPECT_EQ(course.wantedOn(dayOf(2027, 12, 1)), course.end);
  const int half = daysBetween(course.growth.first, course.growth.last) / 2;
  EXPECT_NEAR(course.wantedOn(plusDays(course.growth.first, half)).inFeet(), 8.75, 0.03);
  EXPECT_EQ(course.aim, LeaderCourse::Aim::topWire);
}

TEST_F(TargetsTest, TheBlocksOwnWireGoesBeforeTheTables) {
  gala().planted = dayOf(2026, 4, 10);
  orchard.blocks.begin()->second.wires = {Length::feet(3), Length::feet(9)};
  EXPECT_EQ(targets().leader->end, Length::feet(9));
}

TEST_F(TargetsTest, TheLeaderIsComparedWithItsDay) {
  gala().planted = dayOf(2026, 4, 10);
  const LeaderCourse course = *targets().leader;
  const Day day = plusDays(course.growth.first, 40);
  const std::int64_t wanted = course.wantedOn(day).inMicrometres();
  const auto standing = [&](double share) {
    orchard.measurements.clear();
    measure(Measure::leaderHeight,
            day,
            {static_cast<std::int64_t>(static_cast<double>(wanted) * share)});
    return targets(dayOf(2027, 10, 1)).leaderStanding->standing;
  };
  EXPECT_EQ(standing(1), Standing::asWanted);
  EXPECT_EQ(standing(0.9), Standing::behind);
  EXPECT_EQ(standing(1.1), Standing::ahead);
  EXPECT_THAT(inEnglish(sentenceOf(*targets(dayOf(2027, 10, 1)).leaderStanding,
                                   UnitSystem::usCustomary)),
              HasSubstr("ahead of the"));
}

TEST_F(TargetsTest, MatureTreesKeepTheBlocksHeight) {
  gala().planted = dayOf(2021, 4, 10);
  const LeaderCourse course = *targets().leader;
  EXPECT_EQ(course.aim, LeaderCourse::Aim::matureHeight);
  EXPECT_NEAR(course.end.inFeet(), 9.9, 1e-9);
}

TEST_F(TargetsTest, OneWinterOutsideIsNotEnough) {
  measure(Measure::shootGrowth, dayOf(2027, 1, 20), {32 * inch});  // over 30 in
  const ClassSuggestion suggestion = targets().suggestion;
  EXPECT_EQ(suggestion.basis, ClassSuggestion::Basis::oneWinter);
  EXPECT_FALSE(suggestion.changes());
  EXPECT_EQ(suggestion.from, Season{2027});
}

TEST_F(TargetsTest, TwoWintersOutsideShiftTheClassAStep) {
  measure(Measure::shootGrowth, dayOf(2027, 1, 20), {32 * inch});
  measure(Measure::shootGrowth, dayOf(2025, 12, 2), {13 * inch});  // first leaf: over 12
  const ClassSuggestion suggestion = targets().suggestion;
  EXPECT_EQ(suggestion.basis, ClassSuggestion::Basis::twoWinters);
  EXPECT_EQ(suggestion.suggested, Vigour::strong);
  EXPECT_THAT(
      spoken(reasonsOf(suggestion, Hemisphere::north, UnitSystem::usCustomary)),
      ElementsAre(
          "Season 2026, shoot growth: 32 in; a moderate tree makes 15 in to 30 in.",
          "Season 2025, shoot growth: 13 in; a moderate tree makes 6 in to 8 in.",
          "Two winters running say so: from moderate to strong. You have the last "
          "word."));
}

TEST_F(TargetsTest, OneWinterMoreThanHalfOutsideShiftsItToo) {
  measure(Measure::leaderGrowth, dayOf(2026, 11, 20), {64 * inch});  // over 1.5 x 42
  EXPECT_EQ(targets().suggestion.basis, ClassSuggestion::Basis::farOff);
  EXPECT_EQ(targets().suggestion.suggested, Vigour::strong);
  orchard.measurements.clear();
  measure(Measure::leaderGrowth, dayOf(2026, 11, 20), {8 * inch});  // under half of 18
  EXPECT_EQ(targets().suggestion.suggested, Vigour::weak);
}

TEST_F(TargetsTest, AClassShiftsByOneStepAtATime) {
  gala().vigour = Vigour::strong;
  measure(Measure::leaderGrowth, dayOf(2026, 11, 20), {8 * inch});
  EXPECT_EQ(targets().suggestion.suggested, Vigour::moderate);
}

TEST_F(TargetsTest, MeasuresThatDisagreeChangeNothing) {
  measure(Measure::leaderGrowth, dayOf(2026, 11, 20), {64 * inch});
  measure(Measure::shootGrowth, dayOf(2026, 11, 20), {10 * inch});
  EXPECT_EQ(targets().suggestion.basis, ClassSuggestion::Basis::measuresDisagree);
  EXPECT_FALSE(targets().suggestion.changes());
}

TEST_F(TargetsTest, GrowthSoFarIsNotAWinters) {
  measure(Measure::leaderGrowth, dayOf(2026, 7, 20), {64 * inch});
  EXPECT_EQ(targets().suggestion.basis, ClassSuggestion::Basis::nothingMeasured);
}

TEST_F(TargetsTest, TheGrowersWordIsNotQuestionedByTheSameWinter) {
  measure(Measure::leaderGrowth, dayOf(2026, 11, 20), {64 * inch});
  SeasonTarget word;
  word.of = {gala().id, Season{2027}};
  word.vigour = Vigour::moderate;
  word.vigourReason = "they will calm down with fruit";
  orchard.targets[word.of] = word;
  EXPECT_FALSE(targets().suggestion.changes());
  EXPECT_EQ(targets().suggestion.basis, ClassSuggestion::Basis::nothingMeasured);
}

TEST_F(TargetsTest, SouthernWintersLieInTheMiddleOfTheYear) {
  orchard.settings = southernSettings();
  gala().planted = dayOf(2024, 9, 10);
  measure(Measure::leaderGrowth, dayOf(2026, 7, 20), {64 * inch});
  const ClassSuggestion suggestion = targets(dayOf(2026, 8, 6)).suggestion;
  EXPECT_EQ(suggestion.from, Season{2026});
  EXPECT_EQ(suggestion.suggested, Vigour::strong);
  EXPECT_EQ(grownSeason(dayOf(2026, 7, 20), Hemisphere::south), Season{2025});
  EXPECT_EQ(grownSeason(dayOf(2026, 12, 20), Hemisphere::south), Season{2026});
}

TEST_F(TargetsTest, NitrogenIsSaidAsNutrientWithItsCaution) {
  const Nutrition nitrogen = *targets().nitrogen;
  EXPECT_EQ(amountText(nitrogen, UnitSystem::metric), "14 g");
  EXPECT_EQ(amountText(nitrogen, UnitSystem::usCustomary), "0.5 oz");
  const auto told = spoken(reasonsOf(nitrogen));
  EXPECT_THAT(told, Contains(HasSubstr("A soil or leaf test goes before this figure")));
  EXPECT_THAT(told, Contains(HasSubstr("Nothing in the planting hole")));
  gala().vigour = Vigour::weak;
  EXPECT_EQ(amountText(*targets().nitrogen, UnitSystem::metric), "14–28 g");
  gala().planted = dayOf(2024, 4, 10);
  EXPECT_FALSE(targets().nitrogen);  // leaf analysis decides
}

/// For every leaf and class that grows there is a figure, and ranges run upwards.
TEST(ShippedTargetTables, CoverLeavesAndClasses) {
  const TargetTables& tables = shippedTables().targets;
  for (const Vigour vigour : {Vigour::weak, Vigour::moderate, Vigour::strong}) {
    for (int leaf = 0; leaf <= 12; ++leaf)
      EXPECT_NE(tables.leaderHeight(leaf, vigour), nullptr) << leaf;
    for (int leaf = 1; leaf <= 3; ++leaf) {
      EXPECT_NE(tables.nutrient("nitrogen", leaf, vigour), nullptr) << leaf;
      EXPECT_NE(tables.growth(Measure::leaderGrowth, leaf), nullptr) << leaf;
    }
  }
  for (int leaf = 1; leaf <= 12; ++leaf) {
    EXPECT_NE(tables.growth(Measure::shootGrowth, leaf), nullptr) << leaf;
    for (const auto trees :
         {CropStrength::weakOrBiennial, CropStrength::moderate, CropStrength::strong})
      EXPECT_NE(tables.fruit(leaf, trees), nullptr) << leaf;
  }
  EXPECT_NE(tables.cropLoad(true), nullptr);
  EXPECT_NE(tables.cropLoad(false), nullptr);
}

TEST(ReadTargetTables, TellsFaultsWithTheirLine) {
  const auto wrong = readFruitByLeaf(R"([[fruit_by_leaf]]
leaf = 2
trees = "sturdy"
fruit_from = 30
fruit_to = 20
source = "a test"
)",
                                     "f.toml");
  ASSERT_FALSE(wrong.has_value());
  std::vector<std::string> told;
  for (const Problem& problem : wrong.error()) told.push_back(inEnglish(problem));
  EXPECT_THAT(told, Contains(HasSubstr("f.toml:3: In row number 1 the field trees")));
  EXPECT_THAT(told, Contains(HasSubstr("fruit_to lies below")));
  EXPECT_THAT(told, Contains(HasSubstr("trunk_in is missing")));
}

}  // namespace
}  // namespace topwire
