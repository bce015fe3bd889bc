// Plans for some thousands of random problems with all that a problem can ask, held
// against a checker that knows nothing of how they are made.

#include "core/crews/crew_dispatch.h"
#include "tests/support/crew_checker.h"
#include "tests/support/crew_instances.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>

namespace topwire::testing {

namespace {

using By = DispatchRule::By;
constexpr std::array rules{DispatchRule{By::price, 5, 0.1},
                           DispatchRule{By::dueDate, 0, 0}};

/// Some of a season's ranges are longer than a day.
LabourFlow flowOf(const CrewProblem& problem, std::uint64_t seed) {
  return solveLabourFlow(problem, dayRanges(problem.days, seed % 3 == 0 ? 4 : 56));
}

void expectHolds(const CrewProblem& problem,
                 const LabourFlow& flow,
                 const CrewSchedule& plan) {
  EXPECT_THAT(violations(problem, plan), ::testing::IsEmpty());
  EXPECT_EQ(plan.loss, lossOf(problem, plan));
  EXPECT_GE(plan.loss, flow.bound);
}

}  // namespace

class CrewPlansHold : public ::testing::TestWithParam<int> {};

TEST_P(CrewPlansHold, whateverTheProblemAsks) {
  constexpr std::uint64_t each = 100;
  const auto first = static_cast<std::uint64_t>(GetParam()) * each;
  for (std::uint64_t seed = first; seed < first + each; ++seed) {
    SCOPED_TRACE(seed);
    const CrewProblem problem = oddProblem(seed);
    const LabourFlow flow = flowOf(problem, seed);
    for (const DispatchRule& rule : rules)
      expectHolds(problem, flow, dispatch(problem, flow, rule));
    expectHolds(problem, flow, findPlan(problem, flow, {3000, seed}));
  }
}

INSTANTIATE_TEST_SUITE_P(seeds, CrewPlansHold, ::testing::Range(0, 14));

TEST(CrewPlans, areNoOthersForWhatMattersToNobody) {
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    SCOPED_TRACE(seed);
    const CrewProblem problem = oddProblem(seed);
    CrewProblem more = problem;
    more.blocks.push_back({3, {{0, 3600}}});
    for (auto& moves : more.moveBetween) moves.push_back(60);
    if (!more.moveBetween.empty()) more.moveBetween.emplace_back(more.blocks.size(), 60);
    Gang nobody;
    nobody.skills.assign(static_cast<std::size_t>(more.skills), true);
    nobody.workers.assign(static_cast<std::size_t>(more.days), 0);
    more.gangs.push_back(nobody);
    const LabourFlow flow = flowOf(problem, seed);
    EXPECT_EQ(flowOf(more, seed).bound, flow.bound);
    for (const DispatchRule& rule : rules)
      EXPECT_EQ(dispatch(more, flow, rule), dispatch(problem, flow, rule));
  }
}

TEST(CrewPlans, waitNoLongerForWhatCanBeDoneNoMore) {
  CrewProblem problem;
  problem.days = 6;
  problem.skills = 2;
  problem.dayLength.assign(6, 8 * 3600);
  problem.blocks.push_back({4, {}});
  problem.gangs.push_back({0, {true, false}, std::vector<int>(6, 2), {}, {}});
  CrewJob nobodyCan;
  nobodyCan.skill = 1;
  nobodyCan.rows = {{1, 3600}, {2, 3600}};
  nobodyCan.last = nobodyCan.closes = 1;
  nobodyCan.leftUndone = 10;
  CrewJob after = nobodyCan;
  after.skill = 0;
  after.last = after.closes = 5;
  after.needs = {0};
  problem.jobs = {nobodyCan, after};
  const LabourFlow flow = solveLabourFlow(problem, dayRanges(6));
  const CrewSchedule plan = findPlan(problem, flow, {1000, 1});
  EXPECT_THAT(violations(problem, plan), ::testing::IsEmpty());
  EXPECT_THAT(plan.undone, ::testing::ElementsAre(7200, 0));
  ASSERT_FALSE(plan.stints.empty());
  EXPECT_EQ(plan.stints.front().day, 2);
}

TEST(CrewPlans, beginARowLongerThanADayWhereThatWasAgreed) {
  CrewProblem problem;
  problem.days = 5;
  problem.dayLength.assign(5, 8 * 3600);
  problem.blocks.assign(2, {4, {}});
  problem.gangs.push_back({0, {true}, std::vector<int>(5, 1), {}, {}});
  CrewJob longRow;
  longRow.rows = {{1, 10 * 3600}};
  longRow.last = longRow.closes = 4;
  longRow.leftUndone = 1;
  CrewJob dear = longRow;
  dear.block = 1;
  dear.rows = {{1, 3600}, {2, 3600}};
  dear.leftUndone = 1000;
  problem.jobs = {longRow, dear};
  problem.agreed = {{{0, 0, 1}}};
  const LabourFlow flow = solveLabourFlow(problem, dayRanges(5));
  const CrewSchedule plan = findPlan(problem, flow, {1000, 1});
  EXPECT_THAT(violations(problem, plan), ::testing::IsEmpty());
  EXPECT_EQ(plan.stints.front().job, 0);
  EXPECT_EQ(plan.loss, 0);
}

TEST(SearchLimits, growWithTheOrchardUpToASecondsWorth) {
  CrewProblem problem;
  problem.jobs.resize(60);
  EXPECT_EQ(searchLimits(problem).evaluations, SearchLimits{}.evaluations);
  problem.jobs.resize(1000);
  EXPECT_GT(searchLimits(problem).evaluations, SearchLimits{}.evaluations);
  problem.jobs.resize(30'000);
  EXPECT_EQ(searchLimits(problem).evaluations, 3'000'000);
}

class OrchardPlansHold : public ::testing::TestWithParam<double> {};

TEST_P(OrchardPlansHold, atEveryLoad) {
  for (std::uint64_t seed = 1; seed <= 3; ++seed) {
    SCOPED_TRACE(seed);
    const CrewProblem problem = orchardProblem({12, 56, GetParam(), seed});
    const LabourFlow flow = solveLabourFlow(problem, dayRanges(problem.days));
    const CrewSchedule plan = findPlan(problem, flow, {20'000, 1});
    expectHolds(problem, flow, plan);
    EXPECT_EQ(plan, findPlan(problem, flow, {20'000, 1}));
  }
}

INSTANTIATE_TEST_SUITE_P(loads,
                         OrchardPlansHold,
                         ::testing::Values(0.6, 0.8, 1.0, 1.2, 1.4));

}  // namespace topwire::testing
