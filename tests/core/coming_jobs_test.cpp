#include "core/crews/coming_jobs.h"

#include "tests/support/crew_orchard.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <numeric>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::Each;
using ::testing::Field;
using ::testing::SizeIs;

/// Blocks of ten hours' work each, and one crew: eight hours a day for each worker.
struct Ahead : CrewOrchard {
  Ahead(int blocks, int workers, std::vector<Operation> operations)
      : CrewOrchard(std::move(operations)) {
    for (int n = 1; n <= blocks; ++n)
      addBlock(static_cast<std::uint64_t>(n), "Block " + std::to_string(n));
    addCrew(1, "Heron", workers);
  }

  std::vector<ComingJob> jobs(int within = 28) const {
    const Plan tasks = plan();
    return comingJobs(planned(), viewsOf(orchard, tasks, today), within);
  }
};

Operation tying(unsigned lastOfApril) {
  return operation("tie", atMonth(4, 1), atMonth(4, lastOfApril));
}

TEST(ComingJobs, AreInTimeWhereTheirWholeSpanIs) {
  const auto jobs = Ahead{3, 2, {tying(20)}}.jobs();
  ASSERT_THAT(jobs, SizeIs(3));
  EXPECT_THAT(jobs, Each(Field(&ComingJob::finish, Finish::inTime)));
  for (const ComingJob& job : jobs) {
    EXPECT_DOUBLE_EQ(job.hours, 10);
    EXPECT_EQ(job.closes, dayOf(2027, 4, 20));
    EXPECT_TRUE(job.forecast.span->contains(*job.forecast.done));
  }
}

/// Ten hours for one worker end on the second day, the last of the window; taking half as
/// long again they end on the third.
TEST(ComingJobs, MayBeLateWhereTheSpanGoesPastTheClosing) {
  const auto jobs = Ahead{1, 1, {tying(6)}}.jobs();
  ASSERT_THAT(jobs, SizeIs(1));
  EXPECT_EQ(jobs[0].forecast.done, dayOf(2027, 4, 6));
  EXPECT_EQ(jobs[0].forecast.span->last, dayOf(2027, 4, 7));
  EXPECT_EQ(jobs[0].finish, Finish::maybeLate);
}

/// A week's ticks at the programme's pace make it known, and the span narrower.
TEST(ComingJobs, AreSurerWhereThePaceIsKnown) {
  Ahead there{4, 1, {tying(30)}};
  const auto widest = [](const std::vector<ComingJob>& jobs) {
    int days = 0;
    for (const ComingJob& job : jobs)
      days =
          std::max(days, daysBetween(job.forecast.span->first, job.forecast.span->last));
    return days;
  };
  const int unknown = widest(there.jobs());
  for (std::uint64_t block = 1; block <= 3; ++block)
    there.tick(CrewOrchard::key(block, "tie"), RowSet::range(1, 9), 100, 9 * 60);
  EXPECT_LT(widest(there.jobs()), unknown);
}

TEST(ComingJobs, StandWithTheLateOnesFirst) {
  const auto jobs = Ahead{5, 2, {tying(6)}}.jobs();
  ASSERT_THAT(jobs, SizeIs(5));
  EXPECT_EQ(jobs.front().finish, Finish::late);
  EXPECT_GT(*jobs.front().forecast.done, dayOf(2027, 4, 6));
  EXPECT_TRUE(std::ranges::is_sorted(jobs, {}, &ComingJob::finish));
}

/// Fifty hours of use until Wednesday, and 48 there.
TEST(ComingJobs, AreLostWhereRowsAreLeftAtTheEndOfTheirUse) {
  Operation rubbing = operation("rub", atMonth(4, 1), atMonth(4, 7));
  rubbing.cutOff = CutOff{atMonth(4, 7), {}};
  const auto jobs = Ahead{5, 2, {rubbing}}.jobs();
  EXPECT_EQ(jobs.front().finish, Finish::lost);
  EXPECT_EQ(jobs.front().lastUse, dayOf(2027, 4, 7));
  EXPECT_FALSE(jobs.front().forecast.span);
  const double undone = std::accumulate(
      jobs.begin(), jobs.end(), 0.0, [](double sum, const ComingJob& job) {
        return sum + job.undone;
      });
  EXPECT_GE(undone, 2);
}

/// Four weeks of one worker are less than 250 hours.
TEST(ComingJobs, GoOnBeyondThePlanWhereTheyAreOfUseLonger) {
  const Ahead there{25, 1, {operation("tie", atMonth(4, 1), atMonth(6, 30))}};
  const auto jobs = there.jobs();
  EXPECT_LT(jobs.size(), 25U) << "what begins after these weeks is not of them";
  for (const ComingJob& job : jobs)
    EXPECT_EQ(job.finish, job.undone > 0 ? Finish::beyond : Finish::inTime);
}

TEST(ComingJobs, LeaveOutWhatBeginsLater) {
  const Ahead there{1, 2, {operation("thin", atMonth(4, 19), atMonth(4, 30))}};
  EXPECT_THAT(there.jobs(28), SizeIs(1));
  EXPECT_THAT(there.jobs(7), SizeIs(0));
}

}  // namespace
}  // namespace topwire
