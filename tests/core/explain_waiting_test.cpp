#include "core/planning/explain.h"
#include "tests/support/builders.h"
#include "tests/support/measuring.h"
#include "tests/support/operations.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::AllOf;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::IsSupersetOf;
using ::testing::Not;

constexpr PlantingId gala{0, 2};

class ExplainWaiting : public ::testing::Test {
protected:
  std::vector<std::string> why(const std::vector<Operation>& operations,
                               const std::string& id,
                               int pass = 1) const {
    const FixedForecaster forecaster;
    const TradeTables tables;
    const Programmes programmes = programmesOf(operations);
    const Trade trade{tables, programmes, forecaster};
    const Plan plan =
        planTasks(orchard, trade, {Season{2027}, Season{2027}}, dayOf(2027, 4, 6));
    std::vector<std::string> told;
    const Task* task = plan.find({gala, id, Season{2027}, pass});
    if (!task) return {"not planned"};
    for (const Sentence& sentence : explain(orchard, trade, *task))
      told.push_back(inEnglish(sentence));
    return told;
  }

  std::vector<std::string> why(const Operation& operation, int pass = 1) const {
    return why({operation}, operation.id, pass);
  }

  static Operation thinning(Condition condition) {
    Operation thin = operation("thin", atStage(65, 14), atStage(65, 40));
    thin.when = {condition};
    return thin;
  }

  static Operation tying() {
    Operation tie = operation("tie", atMonth(6, 1), atMonth(8, 31));
    tie.repeat = Repeat{{21, 21, 21}, Length::inches(15), atTopWire()};
    return tie;
  }

  Orchard orchard = orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
};

TEST_F(ExplainWaiting, TellsWhatWasNotMeasured) {
  EXPECT_THAT(
      why(thinning(atLeast(Measure::trunkDiameter, Length::millimetres(38)))),
      IsSupersetOf({"Asked for where the trunk's diameter is at least 3.8 cm.",
                    "It was not measured, so the job is asked for; measure some trees to "
                    "be sure."}));
}

TEST_F(ExplainWaiting, TellsWhatWasMeasuredInTheOrchardsUnits) {
  orchard.settings.units = UnitSystem::usCustomary;
  measureLength(
      orchard, gala, Measure::trunkDiameter, dayOf(2027, 3, 1), Length::millimetres(40));
  EXPECT_THAT(why(thinning(atLeast(Measure::trunkDiameter, Length::millimetres(38)))),
              IsSupersetOf({"Asked for where the trunk's diameter is at least 1.5 in.",
                            "Measured on 1 March 2027: 1.6 in."}));
  EXPECT_THAT(why(thinning({Measure::spaceFilled, Condition::Side::below, 90, false})),
              Contains("Asked for where the space filled is below 90 %."));
}

TEST_F(ExplainWaiting, TellsTheTopWireAndWhereItsHeightIsTheUsualOne) {
  const auto told = why(thinning(belowTopWire()));
  EXPECT_THAT(
      told,
      IsSupersetOf(
          {"Asked for where the leader's height is below the top wire, at 3.05 m.",
           "The block's wires are not written down; that height is the usual one."}));
  orchard.blocks.begin()->second.wires = {Length::metres(2)};
  EXPECT_THAT(why(thinning(belowTopWire())),
              AllOf(Contains("Asked for where the leader's height is below the top wire, "
                             "at 2.00 m."),
                    Not(Contains(HasSubstr("not written down")))));
}

TEST_F(ExplainWaiting, TellsWhatEndsTheVisits) {
  EXPECT_THAT(
      why(tying()),
      IsSupersetOf(
          {"The visits end once the leader's height reaches the top wire, at 3.05 m.",
           "It was not measured, so they go on to their closing."}));
  measureLength(
      orchard, gala, Measure::leaderHeight, dayOf(2027, 7, 1), Length::metres(4));
  const auto last = why(tying(), 2);
  EXPECT_THAT(
      last,
      IsSupersetOf({"Measured on 1 July 2027: 4.00 m.", "So no further visit follows."}));
  EXPECT_THAT(last, Not(Contains(HasSubstr("the next visit takes its place"))));
  EXPECT_THAT(why(tying(), 1), Contains(HasSubstr("the next visit takes its place")));
}

TEST_F(ExplainWaiting, TellsTheGrowthThatBroughtAVisitForward) {
  orchard.settings.units = UnitSystem::usCustomary;
  measureLength(
      orchard, gala, Measure::leaderHeight, dayOf(2027, 5, 20), Length::inches(60));
  measureLength(
      orchard, gala, Measure::leaderHeight, dayOf(2027, 6, 3), Length::inches(74));
  EXPECT_THAT(
      why(tying(), 2),
      IsSupersetOf({"Visit 2 of one every 15 days.",
                    "From 20 May 2027 to 3 June 2027 the leader grew 14.0 in; a visit is "
                    "due every 15.0 in, at that pace and a week apart at the least, so "
                    "this one comes after 15 days."}));
}

TEST_F(ExplainWaiting, TellsWhatHasToBeDoneFirst) {
  Operation raise = operation("raise", atMonth(6, 10), atMonth(6, 30));
  Operation tie = operation("tie", atMonth(6, 1), atMonth(8, 31));
  tie.needs = {"raise"};
  EXPECT_THAT(why({raise, tie}, "tie"),
              IsSupersetOf({"It is held to 10 June 2027, since “Do raise” opens no "
                            "earlier.",
                            "Waits for: Do raise, 0 of 10 rows done."}));
  Tick tick;
  tick.id = {1, 1};
  tick.task = {gala, "raise", Season{2027}, 1};
  tick.rows = RowSet::range(1, 4);
  tick.day = dayOf(2027, 6, 12);
  orchard.ticks[tick.id] = tick;
  EXPECT_THAT(why({raise, tie}, "tie"),
              IsSupersetOf({"Waits for: Do raise, 4 of 10 rows done.",
                            "It may begin in rows 1-4."}));
}

TEST_F(ExplainWaiting, TellsWhatDelayCosts) {
  Operation tie = operation("tie", atMonth(6, 1), atMonth(8, 31));
  EXPECT_THAT(why(tie), Not(Contains(HasSubstr("If late"))));
  tie.delayCost = DelayCost::veryHigh;
  EXPECT_THAT(why(tie), Contains("If late: very high."));
  tie.delayCost = DelayCost::high;
  tie.delayReason = {"The leader breaks in wind", "La guía se quiebra con el viento"};
  EXPECT_THAT(why(tie), Contains("If late: high. The leader breaks in wind."));
}

}  // namespace
}  // namespace topwire
