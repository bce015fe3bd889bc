#include "core/planning/needs.h"

#include "core/planning/planner.h"
#include "tests/support/builders.h"
#include "tests/support/measuring.h"
#include "tests/support/operations.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

const TradeTables noTables;
constexpr PlantingId gala{0, 2};

/// Wire first, ties after: the wire goes up once, 20 days around the planting day.
Operation raising() {
  return operation("raise", atPlanting(0, -10), atPlanting(0, 10), {});
}

Operation needing(Operation operation, std::vector<std::string> needs) {
  operation.needs = std::move(needs);
  return operation;
}

Operation tying(std::vector<std::string> needs = {"raise"}) {
  return needing(operation("tie", atMonth(4, 1), atMonth(6, 30)), std::move(needs));
}

class NeedsTest : public ::testing::Test {
protected:
  Plan plan(const std::vector<Operation>& operations, int season = 2027) const {
    const FixedForecaster forecaster;
    const Programmes programmes = programmesOf(operations);
    const Trade trade{noTables, programmes, forecaster};
    return planTasks(
        orchard, trade, {Season{season}, Season{season}}, dayOf(season, 4, 6));
  }

  Task task(const std::vector<Operation>& operations,
            const std::string& id,
            int season = 2027) const {
    for (const Task& task : plan(operations, season).tasks)
      if (task.key.operation == id) return task;
    ADD_FAILURE() << "no " << id;
    return {};
  }

  void tick(const TaskKey& task, RowSet rows, int percent = 100) {
    Tick tick;
    tick.id = {1, orchard.ticks.size() + 1};
    tick.task = task;
    tick.rows = std::move(rows);
    tick.percent = percent;
    tick.day = dayOf(2027, 4, 6);
    orchard.ticks[tick.id] = tick;
  }

  TaskMark& mark(const TaskKey& task) {
    TaskMark& mark = orchard.marks[task];
    mark.task = task;
    return mark;
  }

  Orchard orchard = orchardOfOne(northernSettings(), dayOf(2027, 4, 10));
  const TaskKey wire{gala, "raise", Season{2027}, 1};
};

TEST_F(NeedsTest, NamesWhatIsNotDone) {
  const Task tie = task({raising(), tying()}, "tie");
  EXPECT_THAT(tie.waitsFor, ElementsAre(wire));
  EXPECT_THAT(rowsReady(progressOf(orchard), tie).ranges(), IsEmpty());
}

TEST_F(NeedsTest, LeavesAlreadyLaterWorkWhereItLies) {
  Task with = task({raising(), tying()}, "tie");
  with.waitsFor.clear();
  EXPECT_EQ(with, task({raising(), tying({})}, "tie"));
}

TEST_F(NeedsTest, LetsRowsGoOneByOne) {
  tick(wire, RowSet::range(1, 4));
  tick(wire, RowSet::range(5, 6), 50);
  const Task tie = task({raising(), tying()}, "tie");
  EXPECT_THAT(tie.waitsFor, ElementsAre(wire));
  EXPECT_EQ(rowsReady(progressOf(orchard), tie), RowSet::range(1, 4));
}

TEST_F(NeedsTest, LetsAllRowsGoWhenItIsDone) {
  tick(wire, RowSet::range(1, 10));
  const Task tie = task({raising(), tying()}, "tie");
  EXPECT_THAT(tie.waitsFor, IsEmpty());
  EXPECT_EQ(rowsReady(progressOf(orchard), tie), RowSet::range(1, 10));
}

TEST_F(NeedsTest, LetsGoTheRowsThatHaveEverythingDone) {
  const std::vector<Operation> operations{raising(),
                                          operation("clip", atMonth(4, 1), atMonth(5, 1)),
                                          tying({"raise", "clip"})};
  tick(wire, RowSet::range(1, 6));
  tick({gala, "clip", Season{2027}, 1}, RowSet::range(4, 10));
  EXPECT_EQ(rowsReady(progressOf(orchard), task(operations, "tie")), RowSet::range(4, 6));
}

TEST_F(NeedsTest, WaitsForNothingThePlantingHasNoneOf) {
  EXPECT_THAT(task({raising(), tying({"other"})}, "tie").waitsFor, IsEmpty());
  Operation forReplants = raising();
  forReplants.kinds = {PlantingKind::replant};
  EXPECT_THAT(task({forReplants, tying()}, "tie").waitsFor, IsEmpty());
}

TEST_F(NeedsTest, WaitsForNothingThatWasSetAside) {
  mark(wire).setAsideReason = "It stands already.";
  EXPECT_THAT(task({raising(), tying()}, "tie").waitsFor, IsEmpty());
}

TEST_F(NeedsTest, WaitsForNothingThatLapsedBeforeItOpens) {
  Operation raise = raising();
  raise.cutOff = CutOff{atPlanting(0, 30), {"-", "-"}};
  Operation tie = tying();
  tie.opens = atMonth(5, 10);
  EXPECT_THAT(task({raise, tie}, "tie").waitsFor, ElementsAre(wire));
  tie.opens = atMonth(5, 11);
  EXPECT_THAT(task({raise, tie}, "tie").waitsFor, IsEmpty());
}

TEST_F(NeedsTest, WaitsOnForATrellisThatWasBegun) {
  Operation raise = raising();
  raise.cutOff = CutOff{atPlanting(0, 30), {"-", "-"}};
  tick(wire, RowSet::range(1, 4));
  for (const int season : {2027, 2030}) {
    Operation tie = tying();
    tie.opens = atMonth(6, 1);
    const Task held = task({raise, tie}, "tie", season);
    EXPECT_THAT(held.waitsFor, ElementsAre(wire));
    EXPECT_EQ(rowsReady(progressOf(orchard), held), RowSet::range(1, 4));
  }
}

TEST_F(NeedsTest, WaitsForNothingThatWasOverBeforeTheRecords) {
  orchard.settings.recordsFrom = dayOf(2027, 4, 21);
  EXPECT_THAT(task({raising(), tying()}, "tie").waitsFor, IsEmpty());
  tick(wire, RowSet::range(1, 4));
  EXPECT_THAT(task({raising(), tying()}, "tie").waitsFor, ElementsAre(wire));
}

// Planted on 5 January, in the season its trellis opens before.
TEST_F(NeedsTest, FindsWorkOfTheSeasonBefore) {
  orchard.plantings.at(gala).planted = dayOf(2027, 1, 5);
  Operation tie = tying();
  tie.opens = atMonth(1, 10);
  EXPECT_THAT(task({raising(), tie}, "tie").waitsFor,
              ElementsAre(TaskKey{gala, "raise", Season{2026}, 1}));
}

TEST_F(NeedsTest, OpensNoEarlierThanWhatItWaitsFor) {
  Operation tie = tying();
  tie.opens = atMonth(3, 20);
  tie.closes = atMonth(4, 30);
  Operation raise = raising();
  raise.opens = atPlanting(0, 5);
  const Task held = task({raise, tie}, "tie");
  EXPECT_EQ(isoText(held.opens), "2027-04-15");
  EXPECT_EQ(isoText(held.closes), "2027-04-30");
  EXPECT_EQ(held.opensWhy.heldForWork, wire);
  tick(wire, RowSet::range(1, 10));
  EXPECT_EQ(isoText(task({raise, tie}, "tie").opens), "2027-04-10");
}

TEST_F(NeedsTest, KeepsADayOfTheWindowAndItsClosing) {
  Operation raise = raising();
  raise.opens = atPlanting(3);
  raise.closes = atPlanting(4);
  const Task held = task({raise, tying()}, "tie");
  EXPECT_EQ(isoText(held.opens), "2027-06-30");
  EXPECT_EQ(isoText(held.closes), "2027-06-30");
}

TEST_F(NeedsTest, FollowsWorkThatAPersonMoved) {
  mark(wire).moved = DaySpan{dayOf(2027, 5, 3), dayOf(2027, 5, 20)};
  EXPECT_EQ(isoText(task({raising(), tying()}, "tie").opens), "2027-05-03");
  mark({gala, "tie", Season{2027}, 1}).moved =
      DaySpan{dayOf(2027, 4, 20), dayOf(2027, 5, 1)};
  const Task moved = task({raising(), tying()}, "tie");
  EXPECT_EQ(isoText(moved.opens), "2027-04-20");
  EXPECT_THAT(moved.waitsFor, ElementsAre(wire));
}

TEST_F(NeedsTest, HoldsAWholeChain) {
  Operation raise = raising();
  raise.opens = atMonth(5, 5);
  raise.closes = atMonth(5, 25);
  const std::vector<Operation> operations{
      needing(operation("prune", atMonth(4, 15), atMonth(6, 30)), {"tie"}),
      tying(),
      raise};
  EXPECT_EQ(isoText(task(operations, "tie").opens), "2027-05-05");
  EXPECT_EQ(isoText(task(operations, "prune").opens), "2027-05-05");
}

TEST_F(NeedsTest, WaitsForTheVisitThatIsDueAndNotForThoseToCome) {
  Operation check = operation("check", atMonth(4, 1), atMonth(9, 30));
  check.repeat = Repeat{{30, 30, 30}, std::nullopt, std::nullopt};
  const Operation tie =
      needing(operation("tie", atMonth(6, 1), atMonth(6, 30)), {"check"});
  EXPECT_THAT(task({check, tie}, "tie").waitsFor,
              ElementsAre(TaskKey{gala, "check", Season{2027}, 2}));
}

TEST_F(NeedsTest, HoldsTheFirstVisitOfARepeatAndTellsAllOfThem) {
  Operation raise = raising();
  raise.opens = atMonth(4, 20);
  raise.closes = atMonth(5, 25);
  Operation tie = tying();
  tie.repeat = Repeat{{30, 30, 30}, std::nullopt, std::nullopt};
  for (const Task& each : plan({raise, tie}).tasks) {
    if (each.key.operation != "tie") continue;
    EXPECT_EQ(isoText(each.opens), each.key.pass == 1 ? "2027-04-20" : "2027-05-20");
    EXPECT_EQ(each.opensWhy.heldForWork.has_value(), each.key.pass == 1);
    EXPECT_THAT(each.waitsFor, ElementsAre(wire));
  }
}

TEST_F(NeedsTest, TellsNothingOfWorkThatIsDoneItself) {
  tick({gala, "tie", Season{2027}, 1}, RowSet::range(1, 10));
  EXPECT_THAT(task({raising(), tying()}, "tie").waitsFor, IsEmpty());
}

// In 2027 a measurement leaves the notching out; that of 2026 is no stand-in for it.
TEST_F(NeedsTest, TakesNoEarlierSeasonForWorkThatWasLeftOut) {
  orchard.plantings.at(gala).planted = dayOf(2026, 3, 1);
  Operation notching = operation("notch", atMonth(4, 1), atMonth(4, 20));
  notching.when = {below(Measure::trunkDiameter, Length::millimetres(30))};
  const Operation tie = tying({"notch"});
  const Operation check = operation("check", afterJob("notch", 5), afterJob("notch", 9));
  EXPECT_EQ(isoText(task({notching, tie, check}, "check").opens), "2027-04-25");
  measureLength(
      orchard, gala, Measure::trunkDiameter, dayOf(2027, 3, 1), Length::millimetres(32));
  EXPECT_THAT(task({notching, tie, check}, "tie").waitsFor, IsEmpty());
  for (const Task& each : plan({notching, tie, check}).tasks)
    EXPECT_NE(each.key.operation, "check");
}

TEST_F(NeedsTest, HoldsInTheSouth) {
  orchard = orchardOfOne(southernSettings(), dayOf(2027, 10, 10));
  Operation raise = raising();
  raise.opens = atPlanting(0, 20);
  raise.closes = atPlanting(0, 40);
  const Task tie = task({raise, tying()}, "tie");
  EXPECT_EQ(isoText(tie.opens), "2027-10-30");
  EXPECT_EQ(isoText(tie.closes), "2027-12-30");
  EXPECT_THAT(tie.waitsFor, ElementsAre(wire));
}

}  // namespace
}  // namespace topwire
