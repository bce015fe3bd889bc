#include "core/crews/shortage.h"

#include "core/crews/most_work.h"
#include "tests/support/crew_instances.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numeric>

namespace topwire::testing {

namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

int closing(const CrewJob& job) {
  return job.closes;
}

CrewProblem oneWorker(int days) {
  CrewProblem problem;
  problem.days = days;
  problem.skills = 2;
  problem.dayLength.assign(static_cast<std::size_t>(days), 100);
  problem.blocks = {{2, {}}, {2, {}}};
  Gang gang;
  gang.skills = {true, true};
  gang.workers.assign(static_cast<std::size_t>(days), 1);
  problem.gangs = {gang};
  return problem;
}

CrewJob jobOf(int block, Seconds work, int opens, int closes) {
  CrewJob job;
  job.block = block;
  job.rows = {{1, work}};
  job.opens = opens;
  job.closes = job.last = closes;
  job.leftUndone = 1000;
  return job;
}

Seconds missingIn(const CrewProblem& problem) {
  const MostWork most{problem};
  return std::reduce(most.undone().begin(), most.undone().end());
}

CrewProblem onlyJobs(const CrewProblem& problem, const std::vector<int>& jobs) {
  CrewProblem only = problem;
  only.jobs.clear();
  for (const int job : jobs)
    only.jobs.push_back(problem.jobs[static_cast<std::size_t>(job)]);
  return only;
}

/// All jobs due in the plan's days, and none of them late.
CrewProblem oddAndDue(std::uint64_t seed) {
  CrewProblem problem = oddProblem(seed);
  for (CrewJob& job : problem.jobs) {
    job.closes = std::clamp(job.closes, job.opens, problem.days - 1);
    job.last = job.closes;
  }
  return problem;
}

}  // namespace

TEST(Shortage, isNoneWhereAllFits) {
  CrewProblem problem = oneWorker(3);
  problem.jobs = {jobOf(0, 300, 0, 2)};
  EXPECT_THAT(findShortages(problem, closing), IsEmpty());
}

TEST(Shortage, namesTheDaysAndTheFewestWhoHelp) {
  CrewProblem problem = oneWorker(6);
  problem.dayLength[3] = 0;
  problem.jobs = {jobOf(0, 250, 2, 4), jobOf(1, 200, 2, 4), jobOf(0, 50, 0, 5)};
  const auto shortages = findShortages(problem, closing);
  ASSERT_EQ(shortages.size(), 1U);
  EXPECT_THAT(shortages[0].jobs, ElementsAre(0, 1));
  EXPECT_EQ(shortages[0].firstDay, 2);
  EXPECT_EQ(shortages[0].lastDay, 4);
  EXPECT_EQ(shortages[0].workingDays, 2);
  EXPECT_EQ(shortages[0].missing, 250);
  EXPECT_EQ(shortages[0].beyondHelp, 0);
  EXPECT_EQ(shortages[0].workersMore, 2);
}

TEST(Shortage, tellsWhatNobodyCanHelp) {
  CrewProblem problem = oneWorker(1);
  problem.jobs = {jobOf(0, 260, 0, 0)};
  const auto shortages = findShortages(problem, closing);
  ASSERT_EQ(shortages.size(), 1U);
  EXPECT_EQ(shortages[0].missing, 160);
  EXPECT_EQ(shortages[0].beyondHelp, 60);
  EXPECT_EQ(shortages[0].workersMore, 1);
}

TEST(Shortage, keepsApartWhatDoesNotCompete) {
  CrewProblem problem = oneWorker(9);
  problem.jobs = {jobOf(0, 150, 6, 6), jobOf(1, 130, 1, 1), jobOf(1, 20, 3, 4)};
  const auto shortages = findShortages(problem, closing);
  ASSERT_EQ(shortages.size(), 2U);
  EXPECT_THAT(shortages[0].jobs, ElementsAre(1));
  EXPECT_EQ(shortages[0].missing, 30);
  EXPECT_THAT(shortages[1].jobs, ElementsAre(0));
  EXPECT_EQ(shortages[1].firstDay, 6);
}

TEST(Shortage, ofAWindowThatIsOverIsBeyondHelp) {
  CrewProblem problem = oneWorker(2);
  problem.jobs = {jobOf(0, 40, -9, -1)};
  const auto shortages = findShortages(problem, closing);
  ASSERT_EQ(shortages.size(), 1U);
  EXPECT_EQ(shortages[0].missing, 40);
  EXPECT_EQ(shortages[0].beyondHelp, 40);
  EXPECT_EQ(shortages[0].workersMore, 0);
}

TEST(Shortage, looksNoFurtherThanThePlan) {
  CrewProblem problem = oneWorker(2);
  problem.jobs = {jobOf(0, 4000, 0, 2)};
  EXPECT_THAT(findShortages(problem, closing), IsEmpty());
}

TEST(Shortage, addsUpToAllThatIsMissing) {
  for (std::uint64_t seed = 1; seed <= 150; ++seed) {
    const CrewProblem problem = oddAndDue(seed);
    Seconds missing = 0;
    for (const Shortage& shortage : findShortages(problem, closing)) {
      missing += shortage.missing;
      EXPECT_LE(shortage.beyondHelp, shortage.missing) << seed;
    }
    EXPECT_EQ(missing, missingIn(problem)) << seed;
  }
}

TEST(Shortage, isHelpedByThoseWorkersAndNoFewer) {
  int helped = 0;
  for (std::uint64_t seed = 1; seed <= 150; ++seed) {
    CrewProblem problem = oddAndDue(seed);
    for (CrewJob& job : problem.jobs) job.skill = 0;
    for (const Shortage& shortage : findShortages(problem, closing)) {
      if (shortage.workersMore == 0) continue;
      CrewProblem more = onlyJobs(problem, shortage.jobs);
      Gang& gang = more.gangs.emplace_back();
      gang.skills.resize(static_cast<std::size_t>(problem.skills));
      gang.skills[static_cast<std::size_t>(shortage.skill)] = true;
      gang.workers.resize(static_cast<std::size_t>(problem.days));
      const auto missingWith = [&](int workers) {
        for (int day = shortage.firstDay; day <= shortage.lastDay; ++day)
          more.gangs.back().workers[static_cast<std::size_t>(day)] = workers;
        return missingIn(more);
      };
      const Seconds least = missingWith(1000);
      EXPECT_EQ(least, shortage.beyondHelp) << seed;
      EXPECT_EQ(missingWith(0), shortage.missing) << seed;
      EXPECT_EQ(missingWith(shortage.workersMore), least) << seed;
      EXPECT_GT(missingWith(shortage.workersMore - 1), least) << seed;
      ++helped;
    }
  }
  EXPECT_GT(helped, 40);
}

}  // namespace topwire::testing
