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
