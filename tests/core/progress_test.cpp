#include "core/planning/progress.h"

#include "tests/support/builders.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::SizeIs;

class ProgressTest : public ::testing::Test {
protected:
  ProgressTest() {
    task.key = {orchard.plantings.begin()->first, "rub", Season{2027}, 1};
    task.opens = dayOf(2027, 4, 10);
    task.closes = dayOf(2027, 4, 20);
    task.rows = RowSet::range(1, 10);
    task.secondsPerTree = 36;
  }

  TickId tick(const std::string& rows, int percent = 100, Day day = dayOf(2027, 4, 12)) {
    Tick made;
    made.id = {0, ++last};
    made.task = task.key;
    made.rows = parseRows(rows).rows;
    made.percent = percent;
    made.minutes = 30;
    made.day = day;
    orchard.ticks[made.id] = made;
    return made.id;
  }

  TickId takeBack(TickId taken) {
    Tick made = orchard.ticks.at(taken);
    made.id = {0, ++last};
    made.takesBack = taken;
    orchard.ticks[made.id] = made;
    return made.id;
  }

  TaskView view(Day today) const {
    Plan plan;
    plan.tasks.push_back(task);
    const auto views = viewsOf(orchard, plan, today);
    TaskView only = views.at(0);
    only.task = &task;
    return only;
  }

  Orchard orchard = orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
  Task task;
  std::uint64_t last = 0;
};

TEST_F(ProgressTest, TakesTheMostThatAnyTickSaysOfARow) {
  tick("1-3");
  tick("3-5", 50);
  const Progress progress = progressOf(orchard).at(task.key);
  EXPECT_EQ(rowsText(progress.wholeRows()), "1-3");
  EXPECT_EQ(rowsText(progress.partRows()), "4-5");
  EXPECT_DOUBLE_EQ(progress.rowsDone(), 4);
  EXPECT_EQ(progress.minutes, 60);
}

TEST_F(ProgressTest, TakingBackAndTakingThatBack) {
  const TickId first = tick("1-3");
  const TickId taker = takeBack(first);
  EXPECT_FALSE(progressOf(orchard).contains(task.key));
  takeBack(taker);
  EXPECT_EQ(rowsText(progressOf(orchard).at(task.key).wholeRows()), "1-3");
  EXPECT_THAT(standingTicks(orchard), SizeIs(1));
}

TEST_F(ProgressTest, CountsTheHoursOfPartsOfRows) {
  // 100 trees a row at 36 s: one worker-hour a row.
  EXPECT_DOUBLE_EQ(view(dayOf(2027, 4, 12)).hoursLeft, 10);
  tick("1-2");
  tick("3", 50);
  EXPECT_DOUBLE_EQ(view(dayOf(2027, 4, 12)).hoursLeft, 7.5);
}

TEST_F(ProgressTest, IgnoresRowsThatHaveLeftThePlanting) {
  tick("1-12");
  EXPECT_DOUBLE_EQ(view(dayOf(2027, 4, 12)).hoursLeft, 0);
  EXPECT_EQ(view(dayOf(2027, 4, 12)).state, TaskState::done);
}

struct StateCase {
  const char* name;
  Day today;
  TaskState state;
};

class StateByDay : public ProgressTest,
                   public ::testing::WithParamInterface<StateCase> {};

TEST_P(StateByDay, Undone) {
  task.cutOff = dayOf(2027, 4, 25);
  EXPECT_EQ(view(GetParam().today).state, GetParam().state);
}

INSTANTIATE_TEST_SUITE_P(
    Progress,
    StateByDay,
    ::testing::Values(StateCase{"dayBefore", dayOf(2027, 4, 9), TaskState::waiting},
                      StateCase{"openingDay", dayOf(2027, 4, 10), TaskState::open},
                      StateCase{"fourDaysLeft", dayOf(2027, 4, 16), TaskState::open},
                      StateCase{"threeDaysLeft", dayOf(2027, 4, 17), TaskState::closing},
                      StateCase{"closingDay", dayOf(2027, 4, 20), TaskState::closing},
                      StateCase{"dayAfter", dayOf(2027, 4, 21), TaskState::late},
                      StateCase{"cutOffDay", dayOf(2027, 4, 25), TaskState::late},
                      StateCase{"afterCutOff", dayOf(2027, 4, 26), TaskState::lapsed}),
    [](const auto& tested) { return tested.param.name; });

TEST_F(ProgressTest, StaysLateToTheSeasonsEndWithoutACutOff) {
  EXPECT_EQ(view(dayOf(2027, 12, 31)).state, TaskState::late);
  EXPECT_EQ(view(dayOf(2028, 1, 1)).state, TaskState::lapsed);
}

TEST_F(ProgressTest, SetAsideByAPerson) {
  orchard.marks[task.key] = {task.key, std::nullopt, "Hail took the crop", "", 0};
  EXPECT_EQ(view(dayOf(2027, 4, 12)).state, TaskState::setAside);
  tick("1-10");
  EXPECT_EQ(view(dayOf(2027, 4, 12)).state, TaskState::done);
}

TEST_F(ProgressTest, PutsTheUrgentFirst) {
  Plan plan;
  for (const int shift : {20, -5, -30, 0}) {
    Task shifted = task;
    shifted.key.pass = shift + 100;
    shifted.opens = plusDays(task.opens, shift);
    shifted.closes = plusDays(task.closes, shift);
    if (shift == -30) shifted.cutOff = plusDays(shifted.closes, 25);
    plan.tasks.push_back(shifted);
  }
  std::vector<TaskState> states;
  for (const TaskView& one : viewsOf(orchard, plan, dayOf(2027, 4, 12)))
    states.push_back(one.state);
  EXPECT_EQ(
      states,
      (std::vector{
          TaskState::late, TaskState::closing, TaskState::open, TaskState::waiting}));
}

}  // namespace
}  // namespace topwire
