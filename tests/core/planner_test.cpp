#include "core/planning/planner.h"

#include "core/phenology/stage.h"
#include "tests/support/builders.h"
#include "tests/support/operations.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::IsEmpty;
using ::testing::SizeIs;

const TradeTables noTables;

/// Tasks of the orchard's one planting under these operations, seasons first to last.
std::vector<Task> tasksOf(const Orchard& orchard,
                          const Programmes& programmes,
                          int first,
                          int last,
                          Day today = dayOf(2027, 4, 6)) {
  const FixedForecaster forecaster;
  const Trade trade{noTables, programmes, forecaster};
  return planTasks(orchard, trade, {Season{first}, Season{last}}, today).tasks;
}

std::vector<Task> tasksOf(const Orchard& orchard, Operation operation, int season) {
  return tasksOf(orchard, programmesOf({std::move(operation)}), season, season);
}

Orchard north(Day planted = dayOf(2025, 4, 10)) {
  return orchardOfOne(northernSettings(), planted);
}

Orchard south(Day planted) {
  return orchardOfOne(southernSettings(), planted);
}

Tick tick(const TaskKey& task, const std::string& rows, Day day, std::uint64_t id) {
  Tick made;
  made.id = {1, id};
  made.task = task;
  made.rows = parseRows(rows).rows;
  made.by = "Wren";
  made.day = day;
  return made;
}

// FixedForecaster: full bloom 10 May, pink 3 May, green tip 8 April, petal fall 19 May.
TEST(Planner, HangsAWindowOnStagesWithOffsets) {
  const auto tasks =
      tasksOf(north(), operation("pinch", atStage(53, 3), atStage(57, -2)), 2027);
  ASSERT_THAT(tasks, SizeIs(1));
  EXPECT_EQ(isoText(tasks[0].opens), "2027-04-11");
  EXPECT_EQ(isoText(tasks[0].closes), "2027-05-01");
  EXPECT_EQ(tasks[0].opensWhy.stage->bbch, 53);
  EXPECT_EQ(isoText(tasks[0].opensWhy.anchorDay), "2027-04-08");
  EXPECT_EQ(tasks[0].leaf, 3);
}

// Dormant pruning in February or March before the leaf, August or September in the south:
// common practice.
TEST(Planner, TurnsMonthsBySixSouthOfTheEquator) {
  const Operation prune = operation("prune", atMonth(2, 1), atMonth(3, 31));
  const auto northern = tasksOf(north(), prune, 2027);
  const auto southern = tasksOf(south(dayOf(2025, 9, 1)), prune, 2027);
  EXPECT_EQ(isoText(northern.at(0).opens), "2027-02-01");
  EXPECT_EQ(isoText(southern.at(0).opens), "2027-08-01");
  EXPECT_EQ(isoText(southern.at(0).closes), "2027-09-30");
}

TEST(Planner, KeepsASouthernSeasonTogetherAcrossNewYear) {
  const auto tasks = tasksOf(
      south(dayOf(2025, 9, 1)), operation("thin", atStage(71), atMonth(7, 20)), 2027);
  ASSERT_THAT(tasks, SizeIs(1));
  EXPECT_EQ(isoText(tasks[0].opens), "2027-11-27");
  EXPECT_EQ(isoText(tasks[0].closes), "2028-01-20");
  EXPECT_EQ(tasks[0].key.season.year, 2027);
}

// Offsets from bloom, not "plus six months": hand thinning 14 to 40 days after a bloom of
// 12 November is 26 November to 22 December (derived in the trade notes' worked
// schedule).
TEST(Planner, CountsSouthernOffsetsFromTheStage) {
  const auto tasks = tasksOf(south(dayOf(2025, 9, 1)),
                             operation("thin", atStage(65, 14), atStage(65, 40)),
                             2026);
  EXPECT_EQ(isoText(tasks.at(0).opens), "2026-11-24");
  EXPECT_EQ(isoText(tasks.at(0).closes), "2026-12-20");
}

TEST(Planner, PlansTheChainBeforePlantingOnceWithoutLeaves) {
  const Operation order = operation("order-trees", atPlanting(-36), atPlanting(-30), {});
  const Orchard orchard = north(dayOf(2029, 4, 10));
  const auto tasks = tasksOf(orchard, programmesOf({order}), 2024, 2030);
  ASSERT_THAT(tasks, SizeIs(1));
  EXPECT_EQ(isoText(tasks[0].opens), "2026-04-10");
  EXPECT_EQ(isoText(tasks[0].closes), "2026-10-10");
  EXPECT_EQ(tasks[0].leaf, -2);
  EXPECT_EQ(tasks[0].key.season.year, 2026);
}

TEST(Planner, CapsMonthOffsetsFromALeapDay) {
  const auto tasks =
      tasksOf(north(dayOf(2028, 2, 29)),
              programmesOf({operation("order", atPlanting(-12), atPlanting(-12, 7), {})}),
              2026,
              2029);
  EXPECT_EQ(isoText(tasks.at(0).opens), "2027-02-28");
}

struct LeafCase {
  const char* name;
  Day planted;
  int season;
  bool asked;
};

class FirstLeafOnly : public ::testing::TestWithParam<LeafCase> {};

TEST_P(FirstLeafOnly, AppliesInThatLeaf) {
  const auto tasks = tasksOf(north(GetParam().planted),
                             operation("tie", atMonth(7, 1), atMonth(12, 20), {{1, 1}}),
                             GetParam().season);
  EXPECT_EQ(!tasks.empty(), GetParam().asked);
}

INSTANTIATE_TEST_SUITE_P(
    Planner,
    FirstLeafOnly,
    ::testing::Values(LeafCase{"spring", dayOf(2027, 4, 10), 2027, true},
                      LeafCase{"secondLeaf", dayOf(2026, 4, 10), 2027, false},
                      LeafCase{"inLeafInJune", dayOf(2027, 6, 12), 2027, true},
                      LeafCase{"autumnThisYear", dayOf(2027, 11, 10), 2027, false},
                      LeafCase{"autumnBefore", dayOf(2026, 11, 10), 2027, true}),
    [](const auto& tested) { return tested.param.name; });

TEST(Planner, HoldsAWindowUntilTheTreesAreInTheGround) {
  const auto tasks = tasksOf(
      north(dayOf(2027, 4, 20)), operation("rub", atStage(53), atStage(57)), 2027);
  ASSERT_THAT(tasks, SizeIs(1));
  EXPECT_EQ(isoText(tasks[0].opens), "2027-04-20");
  EXPECT_TRUE(tasks[0].opensWhy.heldForPlanting);
}

TEST(Planner, DropsAWindowThatWasOverBeforePlanting) {
  EXPECT_THAT(
      tasksOf(
          north(dayOf(2027, 6, 12)), operation("rub", atStage(53), atStage(57)), 2027),
      IsEmpty());
}

TEST(Planner, DatesWorkAfterOtherWorkByItsClosingUntilItIsDone) {
  const Programmes programmes =
      programmesOf({operation("tie", afterJob("wire", 1), afterJob("wire", 21)),
                    operation("wire", atMonth(4, 1), atMonth(4, 30))});
  Orchard orchard = north();
  auto tasks = tasksOf(orchard, programmes, 2027, 2027);
  ASSERT_THAT(tasks, SizeIs(2));
  EXPECT_EQ(isoText(tasks[1].opens), "2027-05-01");
  EXPECT_FALSE(tasks[1].opensWhy.completion->done);

  const Tick done = tick(tasks[0].key, "1-10", dayOf(2027, 4, 12), 1);
  orchard.ticks[done.id] = done;
  tasks = tasksOf(orchard, programmes, 2027, 2027);
  EXPECT_EQ(isoText(tasks[1].opens), "2027-04-13");
  EXPECT_TRUE(tasks[1].opensWhy.completion->done);
}

TEST(Planner, CountsWorkAsDoneOnlyWhenEveryRowIs) {
  const Programmes programmes =
      programmesOf({operation("wire", atMonth(4, 1), atMonth(4, 30)),
                    operation("tie", afterJob("wire", 1), afterJob("wire", 21))});
  Orchard orchard = north();
  const TaskKey wire = tasksOf(orchard, programmes, 2027, 2027)[0].key;
  const Tick part = tick(wire, "1-9", dayOf(2027, 4, 12), 1);
  orchard.ticks[part.id] = part;
  const auto tasks = tasksOf(orchard, programmes, 2027, 2027);
  EXPECT_EQ(isoText(tasks[1].opens), "2027-05-01");
}

TEST(Planner, FindsWorkItWaitsForInAnEarlierSeason) {
  const Programmes programmes =
      programmesOf({operation("wire", atMonth(4, 1), atMonth(4, 30), {{1, 1}}),
                    operation("tie", afterJob("wire", 7), atMonth(9, 1), {{3, 3}})});
  const auto tasks = tasksOf(north(), programmes, 2027, 2027);
  ASSERT_THAT(tasks, SizeIs(1));
  EXPECT_EQ(isoText(tasks[0].opens), "2025-05-07");
}

// Leader tying every 2 to 3 weeks in flush, 4 weeks on weak trees: the trade notes' T11.
TEST(Planner, RepeatsByVigourUntilTheClosing) {
  Operation tie = operation("tie", atMonth(6, 1), atMonth(9, 1));
  tie.repeat = Repeat{{28, 21, 14}, {}, {}};
  Orchard orchard = north();
  const auto passesFor = [&](Vigour vigour) {
    orchard.plantings.begin()->second.vigour = vigour;
    return tasksOf(orchard, tie, 2027);
  };
  EXPECT_THAT(passesFor(Vigour::weak), SizeIs(3));
  EXPECT_THAT(passesFor(Vigour::strong), SizeIs(7));
  const auto moderate = passesFor(Vigour::moderate);
  ASSERT_THAT(moderate, SizeIs(4));
  for (std::size_t i = 0; i + 1 < moderate.size(); ++i) {
    EXPECT_EQ(moderate[i].key.pass, static_cast<int>(i) + 1);
    EXPECT_EQ(plusDays(moderate[i].closes, 1), moderate[i + 1].opens);
    EXPECT_EQ(moderate[i].cutOff, moderate[i + 1].closes);
  }
  EXPECT_EQ(moderate.back().closes, dayOf(2027, 9, 1));
}

TEST(Planner, PutsNoCutOffBeforeTheClosing) {
  Operation tape = operation("tape", atStage(57), atStage(71));
  tape.cutOff = CutOff{atStage(69), {"petals are down", "ya cayeron los pétalos"}};
  const auto tasks = tasksOf(north(), tape, 2027);
  EXPECT_EQ(tasks.at(0).cutOff, tasks.at(0).closes);
}

Operation flowerRemoval(Anchor opens, Anchor closes, Anchor cutOff) {
  Operation flowers = operation("flowers", std::move(opens), std::move(closes));
  flowers.cutOff = CutOff{std::move(cutOff), {"open flowers", "flores abiertas"}};
  return flowers;
}

// FixedForecaster: first bloom 7 May, between 2 and 12 May; full bloom 10, between 5 and
// 15 May.
TEST(Planner, TakesTheEarlyEdgeOfBloomForACutOff) {
  const auto tasks =
      tasksOf(north(), flowerRemoval(atStage(54), atStage(60), atStage(65, -1)), 2027);
  EXPECT_EQ(isoText(*tasks.at(0).cutOff), "2027-05-04");
  EXPECT_EQ(isoText(tasks[0].closes), "2027-05-02");
  EXPECT_EQ(tasks[0].cutOffWhy->earlyEdge, EarlyEdge::taken);
  EXPECT_EQ(isoText(tasks[0].cutOffWhy->anchorDay), "2027-05-05");
  EXPECT_EQ(tasks[0].closesWhy.earlyEdge, EarlyEdge::taken);
}

TEST(Planner, ClosesNoLaterThanACutOffBeforeAnEarlyBloom) {
  const auto tasks =
      tasksOf(north(), flowerRemoval(atMonth(4, 20), atMonth(5, 6), atStage(60)), 2027);
  EXPECT_EQ(isoText(tasks.at(0).closes), "2027-05-02");
  EXPECT_EQ(tasks[0].closesWhy, *tasks[0].cutOffWhy);
  EXPECT_EQ(tasks[0].cutOff, tasks[0].closes);
}

TEST(Planner, TakesTheEarlyEdgeWhereAWindowClosesAtBloomBeforeALaterCutOff) {
  const auto tasks =
      tasksOf(north(), flowerRemoval(atStage(54), atStage(60), atStage(69)), 2027);
  EXPECT_EQ(isoText(tasks.at(0).closes), "2027-05-02");
  EXPECT_EQ(isoText(*tasks[0].cutOff), "2027-05-19");
  EXPECT_EQ(tasks[0].cutOffWhy->earlyEdge, EarlyEdge::none);
}

// From pink on 3 May to first bloom on 7 May the middle is 5 May.
TEST(Planner, LeavesHalfOfAWindowWhereTheSpanIsWide) {
  const auto tasks =
      tasksOf(north(), flowerRemoval(atStage(57), atStage(60), atStage(69)), 2027);
  EXPECT_EQ(isoText(tasks.at(0).opens), "2027-05-03");
  EXPECT_EQ(isoText(tasks[0].closes), "2027-05-05");
  EXPECT_EQ(tasks[0].closesWhy.earlyEdge, EarlyEdge::heldToMiddle);
  EXPECT_EQ(isoText(tasks[0].closesWhy.day), "2027-05-05");
}

TEST(Planner, ExpectsBloomOnItsDateWhereNothingIsLostByBeingLate) {
  const auto closes = [](const Operation& operation) {
    return isoText(tasksOf(north(), operation, 2027).at(0).closes);
  };
  EXPECT_EQ(closes(operation("guards-off", atStage(54), atStage(60))), "2027-05-07");
  EXPECT_EQ(closes(flowerRemoval(atStage(54), atStage(57), atStage(69))), "2027-05-03");
  EXPECT_EQ(closes(flowerRemoval(atStage(54), atStage(59), atStage(69))), "2027-05-06");
  EXPECT_EQ(closes(flowerRemoval(atStage(65), atStage(65, 28), atStage(65, 28))),
            "2027-06-07");
}

/// FixedForecaster with bloom seen on its days.
class BloomSeen final : public PlainForecaster {
public:
  Outlook outlook(const Orchard& orchard,
                  const Planting& planting,
                  Season season,
                  Day today) const override {
    Outlook outlook = FixedForecaster{}.outlook(orchard, planting, season, today);
    for (StageEstimate& stage : outlook.stages)
      if (stage.bbch == stages::firstBloom || stage.bbch == stages::fullBloom)
        stage.kind = StageKind::observed;
    return outlook;
  }
};

TEST(Planner, ClosesOnTheDayOfABloomThatWasSeen) {
  const Programmes programmes =
      programmesOf({flowerRemoval(atStage(54), atStage(60), atStage(65))});
  const BloomSeen forecaster;
  const Plan plan = planTasks(north(),
                              {noTables, programmes, forecaster},
                              {Season{2027}, Season{2027}},
                              dayOf(2027, 5, 20));
  EXPECT_EQ(isoText(plan.tasks.at(0).closes), "2027-05-07");
  EXPECT_EQ(isoText(*plan.tasks.at(0).cutOff), "2027-05-10");
  EXPECT_EQ(plan.tasks.at(0).cutOffWhy->earlyEdge, EarlyEdge::none);
}

TEST(Planner, TakesTheEarlyEdgeOfASouthernBloom) {
  const auto tasks = tasksOf(south(dayOf(2025, 9, 1)),
                             flowerRemoval(atStage(54), atStage(60), atStage(69)),
                             2027);
  EXPECT_EQ(isoText(tasks.at(0).closes), "2027-11-02");
}

TEST(Planner, TellsOfAWindowThatWouldCloseBeforeItOpens) {
  const FixedForecaster forecaster;
  const Programmes programmes =
      programmesOf({operation("odd", atMonth(6, 1), atStage(53))});
  const Plan plan = planTasks(north(),
                              {noTables, programmes, forecaster},
                              {Season{2027}, Season{2027}},
                              dayOf(2027, 4, 6));
  EXPECT_EQ(plan.tasks.at(0).closes, plan.tasks.at(0).opens);
  EXPECT_THAT(plan.notes, SizeIs(1));
}

TEST(Planner, TellsOfAProgrammeThatIsNotHere) {
  const FixedForecaster forecaster;
  const Programmes none;
  const Plan plan = planTasks(north(),
                              {noTables, none, forecaster},
                              {Season{2027}, Season{2027}},
                              dayOf(2027, 4, 6));
  EXPECT_THAT(plan.tasks, IsEmpty());
  EXPECT_THAT(plan.notes, SizeIs(1));
}

TEST(Planner, LeavesOutWhatClosedBeforeTheRecordsBegin) {
  Orchard orchard = north();
  orchard.settings.recordsFrom = dayOf(2027, 4, 1);
  const Operation prune = operation("prune", atMonth(2, 1), atMonth(3, 31));
  EXPECT_THAT(tasksOf(orchard, prune, 2027), IsEmpty());
  orchard.settings.recordsFrom = dayOf(2027, 3, 31);
  EXPECT_THAT(tasksOf(orchard, prune, 2027), SizeIs(1));
}

TEST(Planner, LeavesAWindowWhereAPersonMovedIt) {
  Orchard orchard = north();
  const Operation prune = operation("prune", atMonth(2, 1), atMonth(3, 31));
  const TaskKey key = tasksOf(orchard, prune, 2027)[0].key;
  TaskMark mark;
  mark.task = key;
  mark.moved = DaySpan{dayOf(2027, 3, 1), dayOf(2027, 4, 15)};
  orchard.marks[key] = mark;
  const auto tasks = tasksOf(orchard, prune, 2027);
  EXPECT_EQ(isoText(tasks.at(0).opens), "2027-03-01");
  EXPECT_EQ(isoText(tasks.at(0).closes), "2027-04-15");
  EXPECT_TRUE(tasks.at(0).opensWhy.byHand);
}

TEST(Planner, AddsWorkByHand) {
  Orchard orchard = north();
  TaskMark mark;
  mark.task = {orchard.plantings.begin()->first, "by-hand", Season{2027}, 1};
  mark.handTitle = "Mend the gate";
  mark.moved = DaySpan{dayOf(2027, 4, 7), dayOf(2027, 4, 9)};
  mark.handSecondsPerTree = 2;
  orchard.marks[mark.task] = mark;
  const auto tasks = tasksOf(orchard, programmesOf({}), 2027, 2027);
  ASSERT_THAT(tasks, SizeIs(1));
  EXPECT_EQ(tasks[0].handTitle, "Mend the gate");
  EXPECT_EQ(tasks[0].secondsPerTree, 2);
  EXPECT_EQ(tasks[0].trees, 1000);
}

TEST(Planner, KeepsTickedTasksTheRulesNoLongerAskFor) {
  Orchard orchard = north();
  const TaskKey key{orchard.plantings.begin()->first, "old-job", Season{2027}, 1};
  orchard.tasks[key] = {key, dayOf(2027, 3, 1), dayOf(2027, 3, 20), std::nullopt, false};
  EXPECT_THAT(tasksOf(orchard, programmesOf({}), 2027, 2027), IsEmpty());
  const Tick some = tick(key, "1-2", dayOf(2027, 3, 4), 1);
  orchard.ticks[some.id] = some;
  const auto tasks = tasksOf(orchard, programmesOf({}), 2027, 2027);
  ASSERT_THAT(tasks, SizeIs(1));
  EXPECT_TRUE(tasks[0].noLongerAsked);
}

TEST(Planner, GivesTheSamePlanTwice) {
  const FixedForecaster forecaster;
  const Trade trade{shippedTables(), shippedProgrammes(), forecaster};
  const SeasonSpan seasons{Season{2020}, Season{2030}};
  const Plan once = planTasks(north(), trade, seasons, dayOf(2027, 4, 6));
  const Plan again = planTasks(north(), trade, seasons, dayOf(2027, 4, 6));
  EXPECT_EQ(once.tasks, again.tasks);
  EXPECT_GT(once.tasks.size(), 100U);
}

TEST(Planner, ClosesEveryShippedWindowOnOrAfterItsOpening) {
  const FixedForecaster forecaster;
  const Trade trade{shippedTables(), shippedProgrammes(), forecaster};
  for (const Orchard& orchard : {north(), south(dayOf(2025, 9, 1))}) {
    const Plan plan =
        planTasks(orchard, trade, {Season{2020}, Season{2035}}, dayOf(2027, 4, 6));
    EXPECT_THAT(plan.notes, IsEmpty());
    for (const Task& task : plan.tasks) {
      EXPECT_LE(task.opens, task.closes) << taskText(orchard, task.key);
      EXPECT_LE(task.closes, task.cutOff.value_or(task.closes));
    }
  }
}

TEST(TaskText, ReadsBackWhatItPrints) {
  const Orchard orchard = north();
  const TaskKey key{orchard.plantings.begin()->first, "leader-tie", Season{2027}, 2};
  EXPECT_EQ(taskText(orchard, key), "p2:leader-tie:2027:2");
  EXPECT_EQ(parseTask(orchard, "p2:leader-tie:2027:2"), key);
  EXPECT_EQ(parseTask(orchard, "p2:leader-tie:2027")->pass, 1);
  for (const char* bad : {"",
                          "p2",
                          "p2:leader-tie",
                          "p9:leader-tie:2027:2",
                          "p2:leader-tie:20x7:2",
                          "p2:leader-tie:2027:b",
                          "p2::2027:1"})
    EXPECT_FALSE(parseTask(orchard, bad)) << bad;
}

}  // namespace
}  // namespace topwire
