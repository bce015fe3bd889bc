#include "core/crews/agreed_work.h"

#include "core/crews/plan_and_done.h"
#include "tests/support/crew_orchard.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

Operation tying() {
  return operation("tie", atMonth(4, 1), atMonth(4, 20));
}

/// Three blocks of ten worker-hours each, and four people for eight hours.
CrewOrchard threeBlocks() {
  CrewOrchard made{{tying()}};
  for (std::uint64_t block = 1; block <= 3; ++block)
    made.addBlock(block, "Block " + std::to_string(block));
  made.addCrew(1, "Heron", 4);
  return made;
}

void accept(CrewOrchard& there) {
  const auto lanes = lanesOn(there.orchard, there.planned(), there.today);
  for (const PlannedJob& job : plannedJobs(lanes, there.today))
    there.orchard.plannedJobs[job.of] = job;
}

/// As nobody would plan it: the last block first, and half of the first after it.
void acceptOddly(CrewOrchard& there) {
  const PlannedPlace first{there.today, {0, 1}, 1};
  const PlannedPlace then{there.today, {0, 1}, 2};
  const auto rows = RowSet::range(4, 8);
  there.orchard.plannedJobs[first] = {
      first, CrewOrchard::key(3, "tie"), RowSet::range(1, 10), 420, 600, 4};
  there.orchard.plannedJobs[then] = {then, CrewOrchard::key(1, "tie"), rows, 590, 300, 4};
}

std::vector<std::pair<TaskKey, RowSet>> workOf(const CrewOrchard& there) {
  std::vector<std::pair<TaskKey, RowSet>> work;
  for (const CrewLane& lane : lanesOn(there.orchard, there.planned(), there.today))
    for (const LaneJob& job : lane.jobs) work.emplace_back(job.task, job.rows);
  return work;
}

TEST(AgreedWork, IsDoneInItsOrderBeforeAllElse) {
  CrewOrchard there = threeBlocks();
  acceptOddly(there);
  const auto work = workOf(there);
  ASSERT_GE(work.size(), 3U);
  EXPECT_EQ(work[0], std::pair(CrewOrchard::key(3, "tie"), RowSet::range(1, 10)));
  EXPECT_EQ(work[1].first, CrewOrchard::key(1, "tie"));
  EXPECT_TRUE(work[1].second.contains(RowSet::range(4, 8)));
}

TEST(AgreedWork, StaysWhatItWasAfterATick) {
  CrewOrchard there = threeBlocks();
  acceptOddly(there);
  there.tick(CrewOrchard::key(3, "tie"), RowSet::range(1, 6));
  const auto work = workOf(there);
  ASSERT_GE(work.size(), 2U);
  EXPECT_EQ(work[0], std::pair(CrewOrchard::key(3, "tie"), RowSet::range(7, 10)));
  EXPECT_EQ(work[1].first, CrewOrchard::key(1, "tie"));
  EXPECT_TRUE(work[1].second.contains(RowSet::range(4, 8)));
}

TEST(AgreedWork, IsInQuestionWhenSomebodyStaysAway) {
  CrewOrchard there = threeBlocks();
  acceptOddly(there);
  EXPECT_THAT(there.question().problem.agreed, SizeIs(1));
  there.orchard.crews.at({0, 1}).workers = 3;
  EXPECT_THAT(there.question().problem.agreed, IsEmpty());
}

TEST(AgreedWork, IsOfThatDayAlone) {
  CrewOrchard there = threeBlocks();
  acceptOddly(there);
  there.today = plusDays(there.today, 1);
  EXPECT_THAT(there.question().problem.agreed, IsEmpty());
}

TEST(AgreedWork, GoesToTheGangsOfALargeCrewInTheirOrder) {
  CrewOrchard there = threeBlocks();
  there.orchard.crews.at({0, 1}).workers = 9;
  const auto lanes = lanesOn(there.orchard, there.planned(), there.today);
  ASSERT_GT(lanes.front().gangs, 1);
  const auto before = workOf(there);
  accept(there);
  EXPECT_THAT(there.question().problem.agreed, SizeIs(lanes.front().gangs));
  EXPECT_EQ(workOf(there), before);
}

TEST(AgreedWork, LeavesOutWhatIsOver) {
  CrewOrchard there = threeBlocks();
  acceptOddly(there);
  there.tick(CrewOrchard::key(3, "tie"), RowSet::range(1, 10));
  const CrewProblem problem = there.question().problem;
  ASSERT_THAT(problem.agreed, SizeIs(1));
  EXPECT_THAT(problem.agreed.front(), ElementsAre(Stretch{0, 3, 5}));
}

}  // namespace
}  // namespace topwire
