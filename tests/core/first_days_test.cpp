// Plans gone on with after ticks, held against the checker that knows nothing of how they
// are made.

#include "core/crews/first_days.h"

#include "core/crews/crew_dispatch.h"
#include "tests/support/crew_checker.h"
#include "tests/support/crew_instances.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <numeric>

namespace topwire::testing {

namespace {

struct Ticked {
  CrewProblem problem;
  std::vector<int> jobNow;
};

/// Numbers of jobs and rows after some rows are done; a job without rows is asked for no
/// more.
Ticked ticked(const CrewProblem& before, SeededNumbers& numbers, double share) {
  Ticked after{before, {}};
  after.problem.jobs.clear();
  for (const CrewJob& job : before.jobs) {
    CrewJob left = job;
    std::erase_if(left.rows, [&](const RowOfWork&) { return numbers.chance(share); });
    const bool isGone = left.rows.empty();
    after.jobNow.push_back(isGone ? -1 : static_cast<int>(after.problem.jobs.size()));
    if (!isGone) after.problem.jobs.push_back(std::move(left));
  }
  for (CrewJob& job : after.problem.jobs) {
    for (int& needed : job.needs) needed = after.jobNow[static_cast<std::size_t>(needed)];
    std::erase(job.needs, -1);
  }
  for (GangPin& pin : after.problem.pins)
    pin.job = after.jobNow[static_cast<std::size_t>(pin.job)];
  std::erase_if(after.problem.pins, [](const GangPin& pin) { return pin.job < 0; });
  after.problem.agreed.clear();
  return after;
}

LabourFlow flowOf(const CrewProblem& problem) {
  return solveLabourFlow(problem, dayRanges(problem.days));
}

void expectHolds(const CrewProblem& problem, const CrewSchedule& plan) {
  EXPECT_THAT(violations(problem, plan), ::testing::IsEmpty());
  EXPECT_EQ(plan.loss, lossOf(problem, plan));
}

}  // namespace

TEST(FirstDays, holdWhateverTheProblemAsks) {
  int redone = 0;
  for (std::uint64_t seed = 0; seed < 600; ++seed) {
    SCOPED_TRACE(seed);
    const CrewProblem before = oddProblem(seed);
    const LabourFlow flow = flowOf(before);
    const CrewSchedule plan = findPlan(before, flow, {1000, seed});
    SeededNumbers numbers{seed};
    const Ticked after = ticked(before, numbers, 0.2);
    const int days = numbers.between(0, before.days);
    const auto again =
        redoFirstDays(after.problem, flow, {before, plan, after.jobNow}, days);
    if (!again) continue;
    ++redone;
    expectHolds(after.problem, *again);
  }
  EXPECT_GT(redone, 200);
}

TEST(FirstDays, keepAnOrchardsPlanAndUseTheTimeThatIsLeft) {
  for (const double load : {0.8, 1.0, 1.2, 1.4}) {
    SCOPED_TRACE(load);
    const CrewProblem before = orchardProblem({20, 56, load, 3});
    const LabourFlow flow = flowOf(before);
    const CrewSchedule plan = findPlan(before, flow, {50'000, 1});
    SeededNumbers numbers{7};
    const Ticked after = ticked(before, numbers, 0.02);
    const auto again =
        redoFirstDays(after.problem, flow, {before, plan, after.jobNow}, 7);
    ASSERT_TRUE(again);
    expectHolds(after.problem, *again);
    EXPECT_LE(again->loss, plan.loss) << "there is less to do, and no less time";
  }
}

TEST(FirstDays, areThePlanItselfWhereNothingWasTicked) {
  const CrewProblem problem = orchardProblem({20, 56, 1.2, 5});
  const LabourFlow flow = flowOf(problem);
  const CrewSchedule plan = findPlan(problem, flow, {50'000, 1});
  std::vector<int> same(problem.jobs.size());
  std::iota(same.begin(), same.end(), 0);
  const auto again = redoFirstDays(problem, flow, {problem, plan, same}, 14);
  ASSERT_TRUE(again);
  EXPECT_EQ(again->loss, plan.loss);
  EXPECT_EQ(again->undone, plan.undone);
}

TEST(FirstDays, goOnWithRowsThatALaterJobDoesNotHold) {
  CrewProblem before;
  before.days = 14;
  before.dayLength.assign(14, 8 * 3600);
  before.blocks.push_back({4, {}});
  before.gangs.push_back({0, {true}, std::vector<int>(14, 1), {}, {}});
  CrewJob later;
  later.rows = {{1, 3600}};
  later.opens = 10;
  later.last = later.closes = 13;
  later.leftUndone = 100;
  CrewJob needing = later;
  needing.opens = 0;
  needing.rows = {{1, 3600}, {2, 3600}, {3, 3600}, {4, 3600}};
  needing.needs = {0};
  before.jobs = {later, needing};
  const LabourFlow flow = flowOf(before);
  const CrewSchedule plan = findPlan(before, flow, {0, 1});
  CrewProblem after = before;
  after.jobs[1].rows.pop_back();
  const auto again = redoFirstDays(after, flow, {before, plan, {0, 1}}, 7);
  ASSERT_TRUE(again);
  expectHolds(after, *again);
  EXPECT_EQ(again->undone[1], 0);
  EXPECT_EQ(again->stints.front().day, 0);
}

TEST(FirstDays, areNotEnoughWhereMoreThanRowsHasChanged) {
  const CrewProblem before = orchardProblem({8, 28, 1.0, 1});
  const LabourFlow flow = flowOf(before);
  const CrewSchedule plan = findPlan(before, flow, {0, 1});
  std::vector<int> same(before.jobs.size());
  std::iota(same.begin(), same.end(), 0);
  const EarlierPlan earlier{before, plan, same};
  CrewProblem fewer = before;
  fewer.gangs.front().workers.front() = 1;
  EXPECT_FALSE(redoFirstDays(fewer, flow, earlier, 7));
  CrewProblem closed = before;
  closed.blocks.front().shut.push_back({3, 3600});
  EXPECT_FALSE(redoFirstDays(closed, flow, earlier, 7));
  CrewProblem later = before;
  ++later.jobs.back().opens;
  EXPECT_FALSE(redoFirstDays(later, flow, earlier, 7));
  CrewProblem unticked = before;
  unticked.jobs.front().rows.insert(unticked.jobs.front().rows.begin(), {900, 600});
  EXPECT_FALSE(redoFirstDays(unticked, flow, earlier, 7));
}

}  // namespace topwire::testing
