#include "app/models/crew_planner.h"

#include "core/edit/crew_deeds.h"
#include "tests/app/crew_orchard.h"
#include "tests/app/memory_files.h"

#include <QCoreApplication>
#include <QSignalSpy>

#include <gmock/gmock.h>

namespace topwire {

namespace {

using testing::kestrel;
using testing::orchardOfTwoCrews;
using testing::wren;

class CrewPlannerTest : public ::testing::Test {
protected:
  CrewPlannerTest() {
    files.orchards["one"] = orchardOfTwoCrews();
    files.orchards["two"] = orchardOfTwoCrews();
    files.orchards["two"].settings.name = "Elsewhere";
    session.setToday(dayOf(2027, 4, 6));
  }

  void open(const char* name) {
    ASSERT_TRUE(session.open(QLatin1String(name), Access::write));
  }

  Checked<Change> turnout(int workers) {
    return setTurnout(session.orchard(), {{kestrel, session.today()}, workers});
  }

  int workersOfKestrel(const CrewPlan& plan) {
    for (const CrewLane& lane : lanesOn(session.orchard(), plan, session.today()))
      if (lane.crew == kestrel) return lane.workers;
    return -1;
  }

  testing::MemoryFiles files;
  testing::FixedForecaster forecaster;
  Session session{
      testing::shippedTables(), testing::shippedProgrammes(), forecaster, files, [] {
        return std::int64_t{1'806'969'600};
      }};
};

TEST_F(CrewPlannerTest, nothingIsPlannedWhileNobodyLooks) {
  CrewPlanner planner{session};
  planner.setRuns(CrewPlanner::Runs::atOnce);
  open("one");
  EXPECT_EQ(planner.plan(), nullptr);
  planner.setWatched(true);
  ASSERT_NE(planner.plan(), nullptr);
  EXPECT_FALSE(planner.plan()->schedule.stints.empty());
}

TEST_F(CrewPlannerTest, aChangeIsAnsweredBeforeTheWholePlanIsThere) {
  CrewPlanner planner{session};
  open("one");
  planner.setWatched(true);
  QSignalSpy spy{&planner, &CrewPlanner::planned};
  ASSERT_TRUE(spy.wait(20'000));
  ASSERT_NE(planner.plan(), nullptr);
  session.perform(turnout(1));
  EXPECT_EQ(workersOfKestrel(*planner.plan()), 1) << "at once, with the last prices";
}

TEST_F(CrewPlannerTest, theWholePlanComesFromBesideAndIsTheSameAsAtOnce) {
  CrewPlanner beside{session};
  CrewPlanner atOnce{session};
  for (CrewPlanner* planner : {&beside, &atOnce}) planner->setMostTrades(50);
  atOnce.setRuns(CrewPlanner::Runs::atOnce);
  open("one");
  atOnce.setWatched(true);
  QSignalSpy spy{&beside, &CrewPlanner::planned};
  beside.setWatched(true);
  while (beside.plan() == nullptr || spy.count() < 3) ASSERT_TRUE(spy.wait(20'000));
  EXPECT_EQ(beside.plan()->schedule, atOnce.plan()->schedule);
}

TEST_F(CrewPlannerTest, aPlanOfAnOlderQuestionIsDropped) {
  CrewPlanner planner{session};
  planner.setRuns(CrewPlanner::Runs::atOnce);
  open("one");
  planner.setWatched(true);
  const std::uint64_t asked = planner.generation();
  const CrewPlan old = *planner.plan();
  session.perform(turnout(1));
  QSignalSpy spy{&planner, &CrewPlanner::planned};
  planner.take(asked, old);
  EXPECT_EQ(spy.count(), 0);
  EXPECT_EQ(workersOfKestrel(*planner.plan()), 1);
  planner.take(planner.generation(), old);
  EXPECT_EQ(spy.count(), 1) << "one of the last question is taken";
}

TEST_F(CrewPlannerTest, anotherOrchardForgetsThePlan) {
  CrewPlanner planner{session};
  open("one");
  planner.setWatched(true);
  QSignalSpy spy{&planner, &CrewPlanner::planned};
  ASSERT_TRUE(spy.wait(20'000));
  ASSERT_NE(planner.plan(), nullptr);
  open("two");
  EXPECT_EQ(planner.plan(), nullptr) << "prices of one orchard say nothing of another";
  ASSERT_TRUE(spy.wait(20'000));
  EXPECT_NE(planner.plan(), nullptr);
}

TEST_F(CrewPlannerTest, itMayGoWhileAPlanIsBeingMade) {
  open("one");
  for (int round = 0; round < 5; ++round) {
    CrewPlanner planner{session};
    planner.setWatched(true);
    session.perform(turnout(round));
  }
  QCoreApplication::processEvents();
  EXPECT_EQ(session.orchard().turnouts.size(), 1U);
}

TEST_F(CrewPlannerTest, aDayLaterItIsAPlanFromThatDay) {
  CrewPlanner planner{session};
  planner.setRuns(CrewPlanner::Runs::atOnce);
  open("one");
  planner.setWatched(true);
  session.setToday(dayOf(2027, 4, 7));
  ASSERT_NE(planner.plan(), nullptr);
  EXPECT_EQ(isoText(planner.plan()->question.first), "2027-04-07");
}

}  // namespace

}  // namespace topwire
