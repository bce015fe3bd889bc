#include "core/edit/deeds.h"
#include "core/phenology/stage.h"
#include "core/planning/progress.h"
#include "tests/core/deeds_support.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

#include <functional>

namespace topwire {
namespace {

using testing::after;
using ::testing::ElementsAre;
using testing::goodTick;
using ::testing::HasSubstr;
using testing::leaderTie;
using testing::nameOf;
using testing::orchardOfTwo;
using testing::said;
using testing::tieTheLeader;

struct BadTick {
  std::function<void(Tick&)> spoil;
  std::vector<std::string> expected;
};

class TickFault : public ::testing::TestWithParam<BadTick> {};

TEST_P(TickFault, IsSaidWithItsField) {
  Tick tick = goodTick();
  GetParam().spoil(tick);
  EXPECT_EQ(said(tickRows(orchardOfTwo(), leaderTie(), tieTheLeader, tick)),
            GetParam().expected);
}

INSTANTIATE_TEST_SUITE_P(
    Deeds,
    TickFault,
    ::testing::Values(
        BadTick{[](Tick&) {}, {}},
        BadTick{[](Tick& tick) { tick.rows = {}; },
                {"rows: No rows are named; type them like 1-4, 7."}},
        BadTick{[](Tick& tick) { tick.rows = RowSet::range(19, 22); },
                {"rows: Rows 21-22 are not in this task. It has rows 1-20."}},
        BadTick{[](Tick& tick) { tick.rows = RowSet::range(1, 21); },
                {"rows: Row 21 is not in this task. It has rows 1-20."}},
        BadTick{[](Tick& tick) { tick.percent = 0; },
                {"percent: How much is done lies between 1 and 100 percent."}},
        BadTick{[](Tick& tick) { tick.percent = 101; },
                {"percent: How much is done lies between 1 and 100 percent."}},
        BadTick{[](Tick& tick) { tick.minutes = -1; },
                {"minutes: Worker-minutes lie between 0 and 288000, a day's work of 200 "
                 "people round the clock; check them."}},
        BadTick{[](Tick& tick) { tick.minutes = 24 * 60 * 200; }, {}},
        BadTick{[](Tick& tick) { tick.minutes = 24 * 60 * 200 + 1; },
                {"minutes: Worker-minutes lie between 0 and 288000, a day's work of 200 "
                 "people round the clock; check them."}},
        BadTick{[](Tick& tick) { tick.by = " "; },
                {"by: Say who did the work, a crew or a person."}},
        BadTick{[](Tick& tick) { tick.day = dayOf(2017, 4, 6); },
                {"day: 6 April 2017 lies more than a year from this task's window, 1 "
                 "April 2027 to 20 April 2027; check the day."}}));

TEST(TickDeeds, NameTheStepForTheUndoButton) {
  Tick tick = goodTick();
  const Orchard orchard = orchardOfTwo();
  EXPECT_EQ(nameOf(tickRows(orchard, leaderTie(), tieTheLeader, tick)),
            "4 rows ticked in Creek 1: Tie the leader");
  tick.rows = RowSet::range(7, 7);
  EXPECT_EQ(nameOf(tickRows(orchard, leaderTie(), tieTheLeader, tick)),
            "1 row ticked in Creek 1: Tie the leader");
  tick.percent = 40;
  EXPECT_EQ(nameOf(tickRows(orchard, leaderTie(), tieTheLeader, tick)),
            "1 row ticked to 40 % in Creek 1: Tie the leader");
}

TEST(TickDeeds, ATickIsTakenBackOnceAndItsTakingBackCanBeTooAgain) {
  const Day day = dayOf(2027, 4, 7);
  Orchard orchard = orchardOfTwo();
  orchard = after(orchard, tickRows(orchard, leaderTie(), tieTheLeader, goodTick()));
  EXPECT_FALSE(takeBackTick(orchard, {9, 9}, {1, 2}, day).has_value());
  orchard = after(orchard, takeBackTick(orchard, {1, 1}, {1, 2}, day));
  EXPECT_THAT(said(takeBackTick(orchard, {1, 1}, {1, 3}, day)),
              ElementsAre("That tick is taken back already."));
  EXPECT_TRUE(progressOf(orchard)[leaderTie().key].wholeRows().empty());
  orchard = after(orchard, takeBackTick(orchard, {1, 2}, {1, 3}, day));
  EXPECT_EQ(progressOf(orchard)[leaderTie().key].wholeRows(), RowSet::range(1, 4));
}

TEST(TickDeeds, UntickingSomeRowsKeepsWhatTicksSaidOfTheOthers) {
  Orchard orchard = orchardOfTwo();
  orchard = after(orchard, tickRows(orchard, leaderTie(), tieTheLeader, goodTick()));
  Tick half = goodTick();
  half.id = {1, 2};
  half.rows = RowSet::range(4, 7);
  half.percent = 50;
  half.minutes = 40;
  orchard = after(orchard, tickRows(orchard, leaderTie(), tieTheLeader, half));
  auto ids = IdSource::countingFrom(50);
  const auto change = untickRows(
      orchard, leaderTie(), tieTheLeader, RowSet::range(4, 5), ids, dayOf(2027, 4, 8));
  EXPECT_EQ(nameOf(change), "2 rows unticked in Creek 1: Tie the leader");
  orchard = after(orchard, change);
  const Progress progress = progressOf(orchard)[leaderTie().key];
  EXPECT_EQ(progress.wholeRows(), RowSet::range(1, 3));
  EXPECT_EQ(progress.partRows(), RowSet::range(6, 7));
  // 3 of 4 rows of 90 minutes, and 2 of 4 rows of 40.
  EXPECT_EQ(progress.minutes, 67 + 20);
  EXPECT_EQ(orchard.ticks.size(), 6U);

  EXPECT_THAT(said(untickRows(orchard,
                              leaderTie(),
                              tieTheLeader,
                              RowSet::range(4, 5),
                              ids,
                              dayOf(2027, 4, 8))),
              ElementsAre(HasSubstr("rows: Nothing is ticked in rows 4-5")));
}

Observation seen(int bbch, Day day, std::uint64_t id = 77) {
  return {{0, id}, {0, 10}, bbch, day, "Ana"};
}

TEST(ObserveStage, NamesTheStageAndReplacesAnEarlierSightingOfTheSameSeason) {
  Orchard orchard = orchardOfTwo();
  const auto first = observeStage(orchard, seen(53, dayOf(2027, 4, 2), 1));
  ASSERT_TRUE(first.has_value());
  EXPECT_THAT(nameOf(first), HasSubstr("Seen in Creek 1: Gala"));
  orchard = after(orchard, first);
  orchard = after(orchard, observeStage(orchard, seen(53, dayOf(2026, 4, 9), 2)));
  orchard = after(orchard, observeStage(orchard, seen(53, dayOf(2027, 4, 4), 3)));
  ASSERT_EQ(orchard.observations.size(), 2U);
  EXPECT_EQ(orchard.observations.at({0, 1}).day, dayOf(2027, 4, 4));
}

TEST(ObserveStage, RefusesUnknownStagesOddSeasonsAndTreesNotYetPlanted) {
  const Orchard orchard = orchardOfTwo();
  EXPECT_THAT(said(observeStage(orchard, seen(42, dayOf(2027, 4, 2)))),
              ElementsAre(HasSubstr("bbch: BBCH 42 is not a stage")));
  EXPECT_THAT(said(observeStage(orchard, seen(53, dayOf(2027, 9, 2)))),
              ElementsAre(HasSubstr("it falls between 1 January 2027 and 31 July 2027")));
  EXPECT_THAT(said(observeStage(orchard, seen(65, dayOf(2023, 5, 2)))),
              ElementsAre("day: These trees were planted on 10 April 2024, after 2 May "
                          "2023; check the day."));
  EXPECT_THAT(said(observeStage({}, seen(65, dayOf(2023, 5, 2)))),
              ElementsAre(HasSubstr("planting: ")));
}

TEST(ObserveStage, TheSouthernSeasonIsItsOwn) {
  Orchard orchard = orchardOfTwo();
  orchard.settings = testing::southernSettings();
  EXPECT_TRUE(observeStage(orchard, seen(65, dayOf(2026, 10, 8))).has_value());
  EXPECT_FALSE(observeStage(orchard, seen(65, dayOf(2026, 4, 8))).has_value());
  EXPECT_TRUE(observeStage(orchard, seen(87, dayOf(2027, 2, 20))).has_value());
}

TEST(ObserveStage, StagesOfOneSeasonComeInOrder) {
  Orchard orchard = orchardOfTwo();
  orchard = after(orchard, observeStage(orchard, seen(57, dayOf(2027, 4, 20), 1)));
  const auto late = said(observeStage(orchard, seen(53, dayOf(2027, 4, 21), 2)));
  ASSERT_EQ(late.size(), 1U);
  EXPECT_THAT(late[0], HasSubstr("comes before"));
  EXPECT_THAT(late[0], HasSubstr("seen here on 20 April 2027"));
  const auto early = said(observeStage(orchard, seen(65, dayOf(2027, 4, 19), 2)));
  ASSERT_EQ(early.size(), 1U);
  EXPECT_THAT(early[0], HasSubstr("comes after"));
  EXPECT_TRUE(observeStage(orchard, seen(53, dayOf(2027, 4, 20), 2)).has_value());
  EXPECT_TRUE(observeStage(orchard, seen(65, dayOf(2026, 5, 1), 2)).has_value());
}

TEST(ObserveStage, TerminalBudsMaySetBeforeHarvest) {
  Orchard orchard = orchardOfTwo();
  orchard =
      after(orchard, observeStage(orchard, seen(stages::harvest, dayOf(2027, 9, 9), 1)));
  EXPECT_TRUE(
      observeStage(orchard, seen(stages::terminalBud, dayOf(2027, 8, 1), 2)).has_value());
  EXPECT_FALSE(
      observeStage(orchard, seen(stages::leafFall, dayOf(2027, 9, 1), 2)).has_value());
}

TEST(TaskDeeds, SettingAsideNeedsAReasonAndKeepsAMove) {
  Orchard orchard = orchardOfTwo();
  EXPECT_THAT(said(setTaskAside(orchard, leaderTie(), tieTheLeader, " ")),
              ElementsAre(HasSubstr("reason: Say why")));
  const DaySpan window{dayOf(2027, 4, 9), dayOf(2027, 4, 30)};
  const auto moved = moveTask(orchard, leaderTie(), tieTheLeader, window);
  EXPECT_EQ(nameOf(moved), "Tie the leader moved in Creek 1: Gala");
  orchard = after(orchard, moved);
  orchard = after(orchard, setTaskAside(orchard, leaderTie(), tieTheLeader, "hail"));
  const TaskMark mark = orchard.marks.at(leaderTie().key);
  EXPECT_EQ(mark.moved, window);
  EXPECT_EQ(mark.setAsideReason, "hail");
  orchard = after(orchard, restoreTask(orchard, leaderTie(), tieTheLeader));
  EXPECT_TRUE(orchard.marks.empty());
  EXPECT_FALSE(restoreTask(orchard, leaderTie(), tieTheLeader).has_value());
}

TEST(TaskDeeds, AWindowRunsForwardsAndStaysNearItsTask) {
  const Orchard orchard = orchardOfTwo();
  EXPECT_THAT(
      said(moveTask(
          orchard, leaderTie(), tieTheLeader, {dayOf(2027, 4, 9), dayOf(2027, 4, 8)})),
      ElementsAre("window: The window ends on 8 April 2027, before it opens on 9 "
                  "April 2027; swap them."));
  EXPECT_THAT(
      said(moveTask(
          orchard, leaderTie(), tieTheLeader, {dayOf(2029, 4, 9), dayOf(2029, 4, 10)})),
      ElementsAre(HasSubstr("more than a year from where the task stands")));
}

TEST(TaskDeeds, WorkByHandHasANameAWindowAndAPassOfItsOwn) {
  Orchard orchard = orchardOfTwo();
  const DaySpan window{dayOf(2027, 4, 9), dayOf(2027, 4, 30)};
  EXPECT_THAT(said(addWork(orchard, {0, 10}, "", window, -1)),
              ElementsAre(HasSubstr("title: "), HasSubstr("secondsPerTree: ")));
  const auto first = addWork(orchard, {0, 10}, "Mend the wire", window, 3);
  EXPECT_EQ(nameOf(first), "Mend the wire added in Creek 1: Gala");
  orchard = after(orchard, first);
  orchard = after(orchard, addWork(orchard, {0, 10}, "Mend the wire", window, 3));
  ASSERT_EQ(orchard.marks.size(), 2U);
  EXPECT_EQ(orchard.marks.rbegin()->first.pass, 2);

  Task mend = leaderTie();
  mend.key = orchard.marks.begin()->first;
  EXPECT_EQ(nameOf(restoreTask(orchard, mend, {"Mend the wire", ""})),
            "Mend the wire deleted in Creek 1: Gala");
  orchard = after(orchard, tickRows(orchard, mend, {"Mend the wire", ""}, goodTick()));
  EXPECT_THAT(said(restoreTask(orchard, mend, {"Mend the wire", ""})),
              ElementsAre(HasSubstr("This work has ticks on record and stays")));
}

}  // namespace
}  // namespace topwire
