#include "core/edit/crew_deeds.h"
#include "core/edit/deeds.h"
#include "core/planning/progress.h"
#include "tests/core/deeds_support.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using testing::after;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using testing::leaderTie;
using testing::nameOf;
using testing::orchardOfTwo;
using ::testing::Pair;
using testing::said;
using testing::tieTheLeader;

const Day tuesday = dayOf(2027, 4, 6);

NotedHours noted(int first, int last, int minutes) {
  return {leaderTie(), tieTheLeader, RowSet::range(first, last), minutes, "North"};
}

Task otherTask() {
  Task task = leaderTie();
  task.key.operation = "rub-rivals";
  return task;
}

Tick ticked(std::uint64_t id, int first, int last, int percent, int minutes) {
  Tick tick;
  tick.id = {1, id};
  tick.rows = RowSet::range(first, last);
  tick.percent = percent;
  tick.minutes = minutes;
  tick.by = "North";
  tick.day = tuesday;
  return tick;
}

Orchard ticking(const Orchard& orchard, const Tick& tick) {
  return after(orchard, tickRows(orchard, leaderTie(), tieTheLeader, tick));
}

class HoursNoted : public ::testing::Test {
protected:
  Orchard note(const std::vector<NotedHours>& entries) {
    return after(orchard, noteHours(orchard, entries, tuesday, ids));
  }

  Orchard orchard = orchardOfTwo();
  IdSource ids = IdSource::countingFrom(500);
};

TEST_F(HoursNoted, TickTheRowsOfSeveralJobsInOneChange) {
  NotedHours other = noted(3, 3, 60);
  other.task = otherTask();
  const auto change = noteHours(orchard, {noted(1, 4, 240), other}, tuesday, ids);
  EXPECT_EQ(nameOf(change), "Hours of 6 April 2027 noted: 2 jobs");
  const auto progress = progressOf(after(orchard, change));
  EXPECT_EQ(progress.at(leaderTie().key).minutes, 240);
  EXPECT_EQ(progress.at(leaderTie().key).wholeRows(), RowSet::range(1, 4));
  EXPECT_EQ(progress.at(otherTask().key).minutes, 60);
}

TEST_F(HoursNoted, GiveRowsThatWereTickedWithoutHoursTheirMinutes) {
  orchard = ticking(orchard, ticked(1, 1, 8, 100, 0));
  const Progress progress = progressOf(note({noted(1, 4, 240)})).at(leaderTie().key);
  EXPECT_EQ(progress.wholeRows(), RowSet::range(1, 8));
  EXPECT_EQ(progress.minutes, 240);
}

TEST_F(HoursNoted, ReplaceTheMinutesNotedBeforeForTheSameRowsAlone) {
  orchard = ticking(orchard, ticked(1, 1, 8, 100, 800));
  const Progress progress = progressOf(note({noted(1, 4, 240)})).at(leaderTie().key);
  EXPECT_EQ(progress.wholeRows(), RowSet::range(1, 8));
  EXPECT_EQ(progress.minutes, 400 + 240);
}

TEST_F(HoursNoted, OfTwoEntriesMayShareATick) {
  orchard = ticking(orchard, ticked(1, 1, 9, 100, 900));
  const Progress progress =
      progressOf(note({noted(1, 4, 240), noted(5, 8, 160)})).at(leaderTie().key);
  EXPECT_EQ(progress.wholeRows(), RowSet::range(1, 9));
  EXPECT_EQ(progress.minutes, 100 + 240 + 160);
}

TEST_F(HoursNoted, KeepRowsThatAreHalfDoneHalfDone) {
  orchard = ticking(orchard, ticked(1, 1, 2, 50, 0));
  orchard = ticking(orchard, ticked(2, 3, 3, 100, 0));
  const Progress progress = progressOf(note({noted(1, 4, 101)})).at(leaderTie().key);
  EXPECT_THAT(progress.percentByRow,
              ElementsAre(Pair(1, 50), Pair(2, 50), Pair(3, 100), Pair(4, 100)));
  EXPECT_EQ(progress.minutes, 101);
}

TEST_F(HoursNoted, LeaveTicksOfOtherDaysAsTheyAre) {
  Tick earlier = ticked(1, 1, 4, 50, 120);
  earlier.day = plusDays(tuesday, -1);
  orchard = ticking(orchard, earlier);
  const Progress progress = progressOf(note({noted(1, 4, 240)})).at(leaderTie().key);
  EXPECT_EQ(progress.wholeRows(), RowSet::range(1, 4));
  EXPECT_EQ(progress.minutes, 120 + 240);
}

TEST_F(HoursNoted, AreUndoneAsOne) {
  orchard = ticking(orchard, ticked(1, 1, 8, 100, 0));
  const auto change = noteHours(orchard, {noted(1, 4, 240)}, tuesday, ids);
  Orchard undone = after(orchard, change);
  apply(undone, inverted(*change, ids));
  EXPECT_EQ(progressOf(undone).at(leaderTie().key).wholeRows(), RowSet::range(1, 8));
  EXPECT_EQ(progressOf(undone).at(leaderTie().key).minutes, 0);
}

TEST_F(HoursNoted, FaultsAreSaidWithTheEntryAndItsField) {
  NotedHours nobody = noted(20, 21, -1);
  nobody.by = " ";
  EXPECT_THAT(
      said(noteHours(orchard, {noted(1, 4, 60), nobody, noted(4, 5, 60)}, tuesday, ids)),
      ElementsAre(HasSubstr("2.rows: Row 21 is not in this task"),
                  HasSubstr("2.minutes: Worker-minutes lie between"),
                  HasSubstr("2.by: Say who did the work"),
                  "3.rows: Rows 4 of this work are noted twice; note them once."));
  EXPECT_THAT(said(noteHours(orchard, {}, tuesday, ids)),
              ElementsAre("No work is named to note hours for."));
}

}  // namespace
}  // namespace topwire
