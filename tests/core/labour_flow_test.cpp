#include "core/crews/labour_flow.h"

#include "tests/support/crew_instances.h"

#include <gtest/gtest.h>

namespace topwire::testing {

namespace {

/// One block, one gang of one worker, days of ten seconds.
CrewProblem tenSecondDays(int days) {
  CrewProblem problem;
  problem.days = days;
  problem.dayLength.assign(static_cast<std::size_t>(days), 10);
  problem.blocks.push_back({5, {}});
  Gang gang;
  gang.skills = {true};
  gang.workers.assign(static_cast<std::size_t>(days), 1);
  problem.gangs.push_back(gang);
  return problem;
}

CrewJob jobOf(Seconds work, int opens, int closes, Loss leftUndone) {
  CrewJob job;
  job.rows = {{1, work}};
  job.opens = opens;
  job.closes = job.last = closes;
  job.leftUndone = leftUndone;
  return job;
}

LabourFlow byDay(const CrewProblem& problem) {
  return solveLabourFlow(problem, dayRanges(problem.days));
}

/// A worker of one skill, who has one second of one day for trees that are not young.
Gang oneSecondOf(const CrewProblem& problem, int skill, int day) {
  Gang gang;
  const auto days = static_cast<std::size_t>(problem.days);
  gang.skills.resize(static_cast<std::size_t>(problem.skills));
  gang.skills[static_cast<std::size_t>(skill)] = true;
  gang.workers.resize(days);
  gang.workers[static_cast<std::size_t>(day)] = 1;
  gang.keptForYoung.resize(days);
  gang.keptForYoung[static_cast<std::size_t>(day)] = problem.lengthOf(day) - 1;
  return gang;
}

}  // namespace

TEST(LabourFlow, leavesWhatWeighsLeast) {
  CrewProblem problem = tenSecondDays(1);
  problem.jobs = {jobOf(8, 0, 0, 3000), jobOf(6, 0, 0, 1000)};
  const LabourFlow flow = byDay(problem);
  EXPECT_EQ(flow.bound, 4 * 1000);
  EXPECT_EQ(flow.undone, (std::vector<Seconds>{0, 4}));
  EXPECT_EQ(flow.priceOn(0, 0), 1000);
}

TEST(LabourFlow, isLateWhereThatCostsLessThanLeaving) {
  CrewProblem problem = tenSecondDays(3);
  problem.jobs = {jobOf(25, 0, 0, 1000)};
  problem.jobs[0].last = 9;
  problem.jobs[0].perDayLate = 300;
  EXPECT_EQ(byDay(problem).bound, 10 * 300 + 5 * 600);
}

TEST(LabourFlow, keepsTimeForYoungTreesEvenIfTheyNeedLess) {
  CrewProblem problem = tenSecondDays(1);
  problem.gangs[0].keptForYoung = {7};
  problem.jobs = {jobOf(5, 0, 0, 1000), jobOf(2, 0, 0, 10)};
  problem.jobs[1].young = true;
  const LabourFlow flow = byDay(problem);
  EXPECT_EQ(flow.undone, (std::vector<Seconds>{2, 0}));
}

TEST(LabourFlow, holdsAJobToTheRoomInItsBlock) {
  CrewProblem problem = tenSecondDays(2);
  problem.gangs[0].workers = {9, 9};
  problem.blocks[0] = {2, {{0, 4}, {1, 10}}};
  problem.jobs = {jobOf(30, 0, 1, 1000)};
  EXPECT_EQ(byDay(problem).undone[0], 30 - 2 * 6);
}

TEST(LabourFlow, countsADayItMayNotWorkForNothing) {
  CrewProblem problem = tenSecondDays(3);
  problem.jobs = {jobOf(30, -5, 7, 1000)};
  problem.jobs[0].shut = {false, true};
  EXPECT_EQ(byDay(problem).undone[0], 10);
}

TEST(LabourFlow, asksWeeksForNoMoreThanTheirDaysHold) {
  CrewProblem problem = tenSecondDays(20);
  problem.jobs = {jobOf(100, 8, 17, 1000)};
  const auto ranges = dayRanges(20, 3);
  ASSERT_EQ(ranges.size(), 6U);
  EXPECT_EQ(ranges.back().first, 17);
  EXPECT_EQ(solveLabourFlow(problem, ranges).bound, 0);
  problem.jobs[0].rows[0].work = 101;
  problem.gangs[0].workers.assign(20, 3);
  problem.blocks[0].workersAtMost = 1;
  EXPECT_EQ(solveLabourFlow(problem, ranges).bound, 1000);
}

TEST(LabourFlow, priceIsWhatTheNextSecondSaves) {
  for (std::uint64_t seed = 1; seed <= 25; ++seed) {
    CrewProblem problem = oddProblem(seed);
    for (CrewJob& job : problem.jobs) job.young = false;
    const LabourFlow flow = byDay(problem);
    for (int skill = 0; skill < problem.skills; ++skill)
      for (int day = 0; day < problem.days; ++day) {
        if (problem.lengthOf(day) == 0) continue;
        CrewProblem more = problem;
        more.gangs.push_back(oneSecondOf(problem, skill, day));
        EXPECT_EQ(flow.bound - byDay(more).bound, flow.priceOn(skill, day))
            << seed << ' ' << skill << ' ' << day;
      }
  }
}

TEST(LabourFlow, ofRangesIsNoMoreThanOfDays) {
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    const CrewProblem problem = oddProblem(seed);
    EXPECT_LE(solveLabourFlow(problem, dayRanges(problem.days, 2)).bound,
              byDay(problem).bound)
        << seed;
  }
}

}  // namespace topwire::testing
