#include "core/planning/planner.h"
#include "core/planning/reconcile.h"
#include "tests/support/builders.h"
#include "tests/support/measuring.h"
#include "tests/support/operations.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

const TradeTables noTables;
constexpr PlantingId gala{0, 2};

Plan planOf(const Orchard& orchard, const Operation& operation, int season = 2027) {
  const FixedForecaster forecaster;
  const Programmes programmes = programmesOf({operation});
  const Trade trade{noTables, programmes, forecaster};
  return planTasks(orchard, trade, {Season{season}, Season{season}}, dayOf(season, 4, 6));
}

bool isAsked(const Orchard& orchard, const Operation& operation, int season = 2027) {
  return !planOf(orchard, operation, season).tasks.empty();
}

std::vector<std::string> openings(const Plan& plan) {
  std::vector<std::string> days;
  for (const Task& task : plan.tasks) days.push_back(isoText(task.opens));
  return days;
}

/// In the third leaf in season 2027.
Orchard north() {
  return orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
}

Orchard south() {
  return orchardOfOne(southernSettings(), dayOf(2025, 9, 10));
}

/// 14 to 40 days after bloom: 24 May to 19 June 2027, 24 November to 20 December.
Operation thinning(Condition condition) {
  Operation thin = operation("thin", atStage(65, 14), atStage(65, 40));
  thin.when = {condition};
  return thin;
}

/// The whole of February and March before the leaf, August and September in the south.
Operation pruning(Condition condition) {
  Operation prune = operation("prune", atMonth(2, 1), atMonth(3, 31));
  prune.when = {condition};
  return prune;
}

/// From 1 June to 31 August, December to February in the south; every 21 days.
Operation tying() {
  Operation tie = operation("tie", atMonth(6, 1), atMonth(8, 31));
  tie.repeat = Repeat{{21, 21, 21}, std::nullopt, std::nullopt};
  return tie;
}

const Condition thickTrunk = atLeast(Measure::trunkDiameter, Length::millimetres(38));

TEST(ConditionalWork, isAskedForWhereNothingWasMeasured) {
  const Plan plan = planOf(north(), thinning(thickTrunk));
  ASSERT_THAT(plan.tasks, SizeIs(1));
  ASSERT_THAT(plan.tasks[0].conditions, SizeIs(1));
  EXPECT_FALSE(plan.tasks[0].conditions[0].measured);
}

TEST(ConditionalWork, followsTheMeanOfTheSample) {
  Orchard orchard = north();
  measure(orchard, gala, Measure::trunkDiameter, dayOf(2027, 3, 1), {36'000, 40'000});
  const Plan plan = planOf(orchard, thinning(thickTrunk));
  ASSERT_THAT(plan.tasks, SizeIs(1));
  EXPECT_EQ(plan.tasks[0].conditions[0].measured,
            (MeasuredMean{38'000, dayOf(2027, 3, 1)}));
  measure(orchard, gala, Measure::trunkDiameter, dayOf(2027, 3, 2), {36'000, 39'000});
  EXPECT_FALSE(isAsked(orchard, thinning(thickTrunk)));
}

TEST(ConditionalWork, isWeighedOnEitherSideAndInBothHemispheres) {
  const Length measured = Length::millimetres(30);
  for (Orchard orchard : {north(), south()}) {
    measureLength(orchard, gala, Measure::trunkDiameter, dayOf(2027, 7, 15), measured);
    for (const int season : {2027, 2028}) {
      // The northern season's thinning closes in June, before the trunk was measured.
      const bool known = season == 2028 || orchard.settings.latitude < 0;
      EXPECT_EQ(isAsked(orchard, thinning(thickTrunk), season), !known);
      EXPECT_TRUE(
          isAsked(orchard,
                  thinning(below(Measure::trunkDiameter, Length::millimetres(31))),
                  season));
    }
  }
}

TEST(ConditionalWork, takesATrunksGirthForItsDiameter) {
  Orchard orchard = north();
  measureLength(
      orchard, gala, Measure::trunkGirth, dayOf(2027, 3, 1), Length::millimetres(119));
  EXPECT_FALSE(isAsked(orchard, thinning(thickTrunk)));
  measureLength(
      orchard, gala, Measure::trunkGirth, dayOf(2027, 3, 2), Length::millimetres(120));
  EXPECT_TRUE(isAsked(orchard, thinning(thickTrunk)));
}

TEST(ConditionalWork, holdsNothingMeasuredAfterItsClosingAgainstIt) {
  Orchard orchard = north();
  const Length thin = Length::millimetres(20);
  measureLength(orchard, gala, Measure::trunkDiameter, dayOf(2027, 6, 20), thin);
  EXPECT_TRUE(isAsked(orchard, thinning(thickTrunk)));
  measureLength(orchard, gala, Measure::trunkDiameter, dayOf(2027, 6, 19), thin);
  EXPECT_FALSE(isAsked(orchard, thinning(thickTrunk)));
}

TEST(ConditionalWork, needsAllOfItsConditions) {
  Orchard orchard = north();
  Operation thin = thinning(thickTrunk);
  thin.when.push_back({Measure::spaceFilled, Condition::Side::atLeast, 90, false});
  measureLength(
      orchard, gala, Measure::trunkDiameter, dayOf(2027, 3, 1), Length::millimetres(40));
  EXPECT_TRUE(isAsked(orchard, thin));
  measure(orchard, gala, Measure::spaceFilled, dayOf(2027, 3, 1), {80});
  EXPECT_FALSE(isAsked(orchard, thin));
}

TEST(ConditionalWork, asksDormantPruningByLastSeasonsShoots) {
  const Condition strong = atLeast(Measure::shootGrowth, Length::centimetres(40));
  Orchard northern = north();
  measureLength(
      northern, gala, Measure::shootGrowth, dayOf(2026, 9, 1), Length::centimetres(25));
  EXPECT_FALSE(isAsked(northern, pruning(strong)));
  EXPECT_TRUE(isAsked(northern, pruning(strong), 2028));
  Orchard southern = south();
  measureLength(
      southern, gala, Measure::shootGrowth, dayOf(2027, 3, 1), Length::centimetres(25));
  EXPECT_FALSE(isAsked(southern, pruning(strong)));
  EXPECT_TRUE(isAsked(southern, pruning(strong), 2028));
}

TEST(ConditionalWork, thinsByThisSeasonsFruitAndPrunesByLastSeasons) {
  const Condition many{Measure::fruitPerTree, Condition::Side::atLeast, 30, false};
  Orchard orchard = north();
  measure(orchard, gala, Measure::fruitPerTree, dayOf(2026, 8, 1), {10});
  EXPECT_TRUE(isAsked(orchard, thinning(many)));
  EXPECT_FALSE(isAsked(orchard, pruning(many)));
  measure(orchard, gala, Measure::fruitPerTree, dayOf(2027, 6, 1), {10});
  EXPECT_FALSE(isAsked(orchard, thinning(many)));
}

TEST(ConditionalWork, knowsTheTopWireOfTheBlock) {
  Operation tie = operation("tie", atMonth(6, 1), atMonth(8, 31));
  tie.when = {belowTopWire()};
  Orchard orchard = north();
  measureLength(orchard, gala, Measure::leaderHeight, dayOf(2027, 3, 1), Length::feet(9));
  EXPECT_TRUE(isAsked(orchard, tie));
  orchard.blocks.begin()->second.wires = {Length::feet(4), Length::feet(9)};
  EXPECT_FALSE(isAsked(orchard, tie));
}

TEST(ConditionalWork, staysForItsTicks) {
  Orchard orchard = north();
  const Operation thin = thinning(thickTrunk);
  const Plan before = planOf(orchard, thin);
  orchard.tasks = reconcile(orchard, before, {Season{2027}, Season{2027}}).tasks;
  Tick tick;
  tick.id = {1, 1};
  tick.task = before.tasks.at(0).key;
  tick.rows = RowSet::range(1, 4);
  tick.day = dayOf(2027, 5, 25);
  orchard.ticks[tick.id] = tick;
  measure(orchard, gala, Measure::trunkDiameter, dayOf(2027, 6, 1), {20'000});
  const Plan after = planOf(orchard, thin);
  ASSERT_THAT(after.tasks, SizeIs(1));
  EXPECT_TRUE(after.tasks[0].noLongerAsked);
  EXPECT_EQ(after.tasks[0].opens, before.tasks[0].opens);
}

TEST(RepeatedWork, leavesNoFurtherVisitOnceTheTopWireIsReached) {
  Operation tie = tying();
  tie.repeat->until = atTopWire();
  Orchard orchard = north();
  EXPECT_THAT(openings(planOf(orchard, tie)),
              ElementsAre("2027-06-01", "2027-06-22", "2027-07-13", "2027-08-03"));
  measureLength(
      orchard, gala, Measure::leaderHeight, dayOf(2027, 6, 15), Length::feet(9));
  EXPECT_THAT(planOf(orchard, tie).tasks, SizeIs(4));
  measureLength(
      orchard, gala, Measure::leaderHeight, dayOf(2027, 7, 1), Length::feet(10));
  const Plan cut = planOf(orchard, tie);
  EXPECT_THAT(openings(cut), ElementsAre("2027-06-01", "2027-06-22"));
  EXPECT_EQ(cut.tasks[1].until->holds(), true);
  EXPECT_EQ(cut.tasks[0].until->holds(), false);
  EXPECT_THAT(planOf(orchard, tie, 2028).tasks, IsEmpty());
}

TEST(RepeatedWork, endsInTheSouthAsInTheNorth) {
  Operation tie = tying();
  tie.repeat->until = atTopWire();
  Orchard orchard = south();
  EXPECT_THAT(openings(planOf(orchard, tie)),
              ElementsAre("2027-12-01", "2027-12-22", "2028-01-12", "2028-02-02"));
  measureLength(
      orchard, gala, Measure::leaderHeight, dayOf(2028, 1, 1), Length::feet(10));
  EXPECT_THAT(openings(planOf(orchard, tie)), ElementsAre("2027-12-01", "2027-12-22"));
}

TEST(RepeatedWork, startsAgainWhereTheMeasureIsOfEachSeason) {
  Operation tie = tying();
  tie.repeat->until = atLeast(Measure::leaderGrowth, Length::inches(24));
  Orchard orchard = north();
  measureLength(
      orchard, gala, Measure::leaderGrowth, dayOf(2027, 7, 1), Length::inches(30));
  EXPECT_THAT(planOf(orchard, tie).tasks, SizeIs(2));
  EXPECT_THAT(planOf(orchard, tie, 2028).tasks, SizeIs(4));
}

TEST(RepeatedWork, isWeighedVisitByVisit) {
  Operation tie = tying();
  tie.when = {belowTopWire()};
  Orchard orchard = north();
  measureLength(
      orchard, gala, Measure::leaderHeight, dayOf(2027, 7, 1), Length::feet(10));
  EXPECT_THAT(openings(planOf(orchard, tie)), ElementsAre("2027-06-01"));
}

// 14 in in 14 days of this season: 15 in take 15 days.
TEST(RepeatedWork, comesSoonerByTwoHeightsOfThisSeason) {
  Operation tie = tying();
  tie.repeat->everyGrowth = Length::inches(15);
  Orchard orchard = north();
  measureLength(
      orchard, gala, Measure::leaderHeight, dayOf(2026, 9, 1), Length::inches(40));
  measureLength(
      orchard, gala, Measure::leaderHeight, dayOf(2027, 5, 20), Length::inches(60));
  EXPECT_EQ(planOf(orchard, tie).tasks, planOf(north(), tying()).tasks);
  measureLength(
      orchard, gala, Measure::leaderHeight, dayOf(2027, 6, 3), Length::inches(74));
  const Plan plan = planOf(orchard, tie);
  EXPECT_THAT(openings(plan),
              ElementsAre("2027-06-01",
                          "2027-06-16",
                          "2027-07-01",
                          "2027-07-16",
                          "2027-07-31",
                          "2027-08-15"));
  EXPECT_EQ(plan.tasks[1].opensWhy.repeatEvery, 15);
  EXPECT_EQ(plan.tasks[1].opensWhy.growth,
            (GrowthPace{dayOf(2027, 5, 20), dayOf(2027, 6, 3), Length::inches(14)}));
  EXPECT_EQ(isoText(plan.tasks[0].closes), "2027-06-15");
  EXPECT_EQ(isoText(*plan.tasks[0].cutOff), "2027-06-30");
}

TEST(RepeatedWork, comesSoonerByTheGrowthNotedSoFar) {
  Operation tie = tying();
  tie.repeat->everyGrowth = Length::inches(15);
  Orchard orchard = south();
  measureLength(
      orchard, gala, Measure::leaderGrowth, dayOf(2027, 11, 20), Length::inches(6));
  measureLength(
      orchard, gala, Measure::leaderGrowth, dayOf(2027, 12, 4), Length::inches(20));
  EXPECT_EQ(openings(planOf(orchard, tie)).at(1), "2027-12-16");
}

}  // namespace
}  // namespace topwire
