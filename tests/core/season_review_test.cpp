#include "core/closing/season_review.h"

#include "tests/support/builders.h"
#include "tests/support/operations.h"

#include <gmock/gmock.h>

namespace topwire {

namespace {

using testing::atMonth;
using ::testing::ElementsAre;
using testing::operation;

/// A planting in its second leaf of 2027, ten rows of a hundred trees: five jobs of ten
/// worker-hours each, looked back on in November.
struct Autumn {
  Orchard orchard =
      testing::orchardOfOne(testing::northernSettings(), dayOf(2026, 4, 10));
  Programmes programmes =
      testing::programmesOf({operation("prune", atMonth(2, 1), atMonth(3, 1)),
                             operation("tie", atMonth(5, 1), atMonth(5, 30)),
                             operation("thin", atMonth(6, 1), atMonth(6, 20)),
                             operation("weed", atMonth(7, 1), atMonth(7, 20)),
                             operation("guard", atMonth(11, 20), atMonth(12, 10))});
  testing::FixedForecaster forecaster;
  Day today = dayOf(2027, 11, 5);

  TaskKey key(const std::string& job) const { return {{0, 2}, job, Season{2027}, 1}; }

  void tick(const std::string& job, const std::string& rows, int minutes) {
    Tick made;
    made.id = {0, orchard.ticks.size() + 1};
    made.task = key(job);
    made.rows = parseRows(rows).rows;
    made.minutes = minutes;
    made.day = dayOf(2027, 6, 3);
    orchard.ticks[made.id] = made;
  }

  void measure(Measure measure, Day day, std::vector<std::int64_t> values) {
    Measurement made;
    made.id = {0, orchard.measurements.size() + 1};
    made.planting = {0, 2};
    made.measure = measure;
    made.day = day;
    made.values = std::move(values);
    orchard.measurements[made.id] = made;
  }

  PlantingReview review() const {
    const Trade trade{testing::shippedTables(), programmes, forecaster};
    const Plan plan = planTasks(orchard, trade, plannedSeasons(orchard, today), today);
    return reviewOf(orchard, plan, trade, Season{2027}, today).plantings.at(0);
  }
};

std::vector<std::string> jobsOf(const PlantingReview& review, TaskOutcome outcome) {
  std::vector<std::string> jobs;
  for (const ReviewedTask& task : review.tasks)
    if (task.outcome == outcome) jobs.push_back(task.task.operation);
  return jobs;
}

TEST(SeasonReview, tellsWhatBecameOfEveryTask) {
  Autumn autumn;
  autumn.tick("tie", "1-10", 480);
  autumn.tick("thin", "1-4", 300);
  TaskMark aside;
  aside.task = autumn.key("weed");
  aside.setAsideReason = "mulched instead";
  autumn.orchard.marks[aside.task] = aside;
  const PlantingReview review = autumn.review();
  EXPECT_EQ(review.leaf, 2);
  EXPECT_THAT(jobsOf(review, TaskOutcome::done), ElementsAre("tie"));
  EXPECT_THAT(jobsOf(review, TaskOutcome::partDone), ElementsAre("thin"));
  EXPECT_THAT(jobsOf(review, TaskOutcome::missed), ElementsAre("prune"));
  EXPECT_THAT(jobsOf(review, TaskOutcome::setAside), ElementsAre("weed"));
  EXPECT_THAT(jobsOf(review, TaskOutcome::ahead), ElementsAre("guard"));
  EXPECT_EQ(rowsText(review.tasks[1].rowsLeft), "5-10");
  EXPECT_EQ(review.tasks[3].reason, "mulched instead");
}

TEST(SeasonReview, setsHoursNotedAgainstHoursPlanned) {
  Autumn autumn;
  // At the programme's own pace, so that nothing else is learned from them.
  autumn.tick("tie", "1-10", 600);
  autumn.tick("thin", "1-4", 240);
  const PlantingReview review = autumn.review();
  EXPECT_DOUBLE_EQ(review.hoursPlanned(), 50);
  EXPECT_DOUBLE_EQ(review.hoursDone(), 14);
  EXPECT_DOUBLE_EQ(review.hoursNoted(), 14);
}

TEST(SeasonReview, wantsTheMeasuresOfTheLeaf) {
  Autumn autumn;
  autumn.measure(Measure::trunkGirth, dayOf(2027, 10, 20), {90'000});
  autumn.measure(Measure::leaderHeight, dayOf(2027, 3, 20), {2'000'000});
  const PlantingReview review = autumn.review();
  ASSERT_EQ(review.measures.size(), 4U);
  EXPECT_EQ(review.measures[0].measure, Measure::trunkDiameter);
  EXPECT_EQ(review.measures[0].measured, dayOf(2027, 10, 20)) << "girth will do";
  EXPECT_EQ(review.measures[1].measure, Measure::leaderHeight);
  EXPECT_FALSE(review.measures[1].measured) << "March tells of the season before";
  EXPECT_EQ(review.missingTrees, std::nullopt);
}

TEST(SeasonReview, asksNoLeaderOfBearingTrees) {
  Autumn autumn;
  autumn.orchard.plantings.begin()->second.planted = dayOf(2021, 4, 10);
  for (const WantedMeasure& wanted : autumn.review().measures)
    EXPECT_NE(wanted.measure, Measure::leaderHeight);
}

TEST(SeasonReview, takesTheLastCountOfMissingTrees) {
  Autumn autumn;
  autumn.measure(Measure::missingTrees, dayOf(2027, 10, 20), {14});
  autumn.measure(Measure::missingTrees, dayOf(2027, 6, 1), {3});
  autumn.measure(Measure::missingTrees, dayOf(2027, 11, 6), {99});
  EXPECT_EQ(autumn.review().missingTrees, 14)
      << "what is measured after today is not yet";
}

TEST(SeasonReview, tellsVisitsOfOneWorkOnce) {
  Autumn autumn;
  PlantingReview review = autumn.review();
  const std::size_t lines = byWork(review).size();
  EXPECT_EQ(lines, review.tasks.size());
  ReviewedTask again = review.tasks[0];
  again.task.pass = 2;
  again.rowsLeft = parseRows("2").rows;
  review.tasks.push_back(again);
  EXPECT_EQ(byWork(review).size(), lines);
  EXPECT_EQ(byWork(review)[0].visits, 2);
  EXPECT_EQ(byWork(review)[0].last.task.pass, 2);
  EXPECT_EQ(rowsText(byWork(review)[0].last.rowsLeft), "1-10");
}

TEST(MeasuredDays, reachThroughTheWinterAfter) {
  const DaySpan north = measuredDaysOf(Season{2027}, Hemisphere::north);
  EXPECT_EQ(north.first, dayOf(2027, 4, 15));
  EXPECT_EQ(north.last, dayOf(2028, 4, 14));
  const DaySpan south = measuredDaysOf(Season{2027}, Hemisphere::south);
  EXPECT_EQ(south.first, dayOf(2027, 10, 15));
  EXPECT_EQ(south.last, dayOf(2028, 10, 14));
}

}  // namespace

}  // namespace topwire
