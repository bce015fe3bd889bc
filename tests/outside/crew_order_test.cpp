// Worked results of scheduling theory, one gang of one worker as the machine.

#include "core/crews/crew_dispatch.h"
#include "core/crews/most_work.h"
#include "tests/support/crew_instances.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

namespace topwire::testing {

namespace {

using By = DispatchRule::By;
constexpr Seconds day = 1000;

CrewProblem oneMachine(int days) {
  CrewProblem problem;
  problem.days = days;
  problem.dayLength.assign(static_cast<std::size_t>(days), day);
  problem.blocks.push_back({1, {}});
  Gang gang;
  gang.skills = {true};
  gang.workers.assign(static_cast<std::size_t>(days), 1);
  problem.gangs.push_back(gang);
  return problem;
}

/// `length` rows of a day each, due at the end of day `due`, the first day being 1.
CrewJob jobOf(int length, int due, Loss perDayLate, Loss leftUndone) {
  CrewJob job;
  for (int row = 1; row <= length; ++row) job.rows.push_back({row, day});
  job.closes = due - 1;
  job.last = perDayLate > 0 ? 10000 : job.closes;
  job.perDayLate = perDayLate;
  job.leftUndone = leftUndone;
  return job;
}

LabourFlow flowOf(const CrewProblem& problem) {
  return solveLabourFlow(problem, dayRanges(problem.days));
}

/// The first day being 1; 0 if not finished.
std::vector<int> completionsOf(const CrewProblem& problem, const CrewSchedule& plan) {
  std::vector<int> completions(problem.jobs.size());
  for (const Stint& stint : plan.stints) {
    const auto job = static_cast<std::size_t>(stint.job);
    if (plan.undone[job] == 0)
      completions[job] = std::max(completions[job], stint.day + 1);
  }
  return completions;
}

int mostLate(const CrewProblem& problem, const std::vector<int>& order) {
  int time = 0;
  int most = -10000;
  for (const int number : order) {
    const CrewJob& job = problem.jobs[static_cast<std::size_t>(number)];
    time += static_cast<int>(job.rows.size());
    most = std::max(most, time - (job.closes + 1));
  }
  return most;
}

int leastMostLate(const CrewProblem& problem) {
  std::vector<int> order(problem.jobs.size());
  std::iota(order.begin(), order.end(), 0);
  int least = 10000;
  do least = std::min(least, mostLate(problem, order));
  while (std::next_permutation(order.begin(), order.end()));
  return least;
}

}  // namespace

// Jackson, "Scheduling a production line to minimize maximum tardiness", 1955: earliest
// due date first makes the greatest lateness as small as it can be. All orders are tried.
TEST(EarliestDueDate, makesTheGreatestLatenessLeast) {
  SeededNumbers numbers{1955};
  for (int instance = 0; instance < 40; ++instance) {
    CrewProblem problem = oneMachine(60);
    for (int job = 0; job < 6; ++job)
      problem.jobs.push_back(
          jobOf(numbers.between(1, 6), numbers.between(1, 20), 100, 1000000));
    const auto plan = dispatch(problem, flowOf(problem), {By::dueDate, 0, 0});
    const auto completions = completionsOf(problem, plan);
    int most = -10000;
    for (std::size_t job = 0; job < problem.jobs.size(); ++job) {
      ASSERT_GT(completions[job], 0);
      most = std::max(most, completions[job] - (problem.jobs[job].closes + 1));
    }
    EXPECT_EQ(most, leastMostLate(problem));
  }
}

// Moore 1968, with Hodgson's form of the rule: go on by due date, and each time one is
// late, leave out the longest so far. The instance is a common form of textbooks: times
// 7 8 4 6 6, due 9 17 18 19 21, at most three on time.
TEST(OnTime, asManyAsMooreAndHodgson) {
  CrewProblem problem = oneMachine(31);
  const std::vector<std::pair<int, int>> jobs{{7, 9}, {8, 17}, {4, 18}, {6, 19}, {6, 21}};
  // Each job weighs the same as a whole.
  for (const auto& [length, due] : jobs)
    problem.jobs.push_back(jobOf(length, due, 0, 840000 / length));
  const auto plan = findPlan(problem, flowOf(problem), {20'000, 1});
  const auto completions = completionsOf(problem, plan);
  int onTime = 0;
  for (std::size_t job = 0; job < jobs.size(); ++job)
    onTime += completions[job] > 0 && completions[job] <= jobs[job].second ? 1 : 0;
  EXPECT_EQ(onTime, 3);
}

// Weighted tardiness of jobs of one day each is an assignment of jobs to days, so the
// flow is exact (a common form of textbooks), and the plan has to find it.
TEST(WeightedTardiness, ofJobsOfADayIsThatOfTheAssignment) {
  SeededNumbers numbers{1977};
  for (int instance = 0; instance < 25; ++instance) {
    CrewProblem problem = oneMachine(7);
    for (int job = 0; job < 7; ++job)
      problem.jobs.push_back(
          jobOf(1, numbers.between(1, 7), numbers.between(1, 9), 1000000));
    std::vector<int> days(7);
    std::iota(days.begin(), days.end(), 0);
    Loss least = 1000000000;
    do {
      Loss loss = 0;
      for (std::size_t job = 0; job < 7; ++job)
        loss += day * problem.jobs[job].lateOn(days[job]);
      least = std::min(least, loss);
    } while (std::next_permutation(days.begin(), days.end()));
    const LabourFlow flow = flowOf(problem);
    EXPECT_EQ(flow.bound, least);
    EXPECT_EQ(findPlan(problem, flow, {30'000, 1}).loss, least) << instance;
  }
}

// Ford and Fulkerson 1956: the maximum flow is the minimum cut.
TEST(MaximumFlow, isTheMinimumCut) {
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    const MostWork most{oddProblem(seed)};
    EXPECT_EQ(most.done(), most.cut()) << seed;
  }
}

}  // namespace topwire::testing
