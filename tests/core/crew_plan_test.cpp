#include "core/crews/crew_plan.h"

#include "core/crews/crew_words.h"
#include "core/crews/labour_ahead.h"
#include "core/crews/plan_and_done.h"
#include "tests/support/crew_orchard.h"
#include "tests/support/weather.h"

#include <gmock/gmock.h>

#include <numeric>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::SizeIs;

Operation tying(unsigned lastOfApril = 20) {
  return operation("tie", atMonth(4, 1), atMonth(4, lastOfApril));
}

/// Of use until its closing alone.
Operation rubbing(unsigned lastOfApril) {
  Operation made = operation("rub", atMonth(4, 1), atMonth(4, lastOfApril));
  made.cutOff = CutOff{atMonth(4, lastOfApril), {}};
  made.delayCost = DelayCost::high;
  return made;
}

/// Blocks of ten hours' work each, and one crew of two: sixteen hours a day.
CrewOrchard blocksOf(int blocks, std::vector<Operation> operations) {
  CrewOrchard made{std::move(operations)};
  for (int n = 1; n <= blocks; ++n)
    made.addBlock(static_cast<std::uint64_t>(n), "Block " + std::to_string(n));
  made.addCrew(1, "Heron", 2);
  return made;
}

std::string allOf(const std::vector<Sentence>& sentences) {
  std::string text;
  for (const Sentence& one : sentences) text += inEnglish(one) + '\n';
  return text;
}

std::vector<MissedWindow> missedOf(const CrewOrchard& there) {
  const CrewPlan plan = there.planned();
  return missedInPastYears(pastRain(there.orchard, there.trade(), plan.question), plan);
}

double hoursIn(const CrewPlan& plan) {
  return std::accumulate(plan.schedule.stints.begin(),
                         plan.schedule.stints.end(),
                         0.0,
                         [](double sum, const Stint& stint) {
                           return sum + static_cast<double>(stint.work) / 3600;
                         });
}

TEST(CrewPlan, DoesWhatThereIsTimeFor) {
  const CrewPlan plan = blocksOf(3, {tying()}).planned();
  EXPECT_DOUBLE_EQ(hoursIn(plan), 30);
  EXPECT_EQ(plan.schedule.loss, 0);
  EXPECT_THAT(windowsAtRisk(plan), IsEmpty());
}

TEST(CrewPlan, ShowsACrewsDayAsALane) {
  CrewOrchard there = blocksOf(3, {tying()});
  const CrewPlan plan = there.planned();
  const auto lanes = lanesOn(there.orchard, plan, there.today);
  ASSERT_THAT(lanes, SizeIs(1));
  EXPECT_EQ(lanes[0].workers, 2);
  EXPECT_DOUBLE_EQ(lanes[0].hours, 16);
  ASSERT_FALSE(lanes[0].jobs.empty());
  const LaneJob& first = lanes[0].jobs.front();
  EXPECT_EQ(first.startMinute, 390) << "06:30";
  EXPECT_EQ(first.endMinute, 390 + 300) << "ten hours of work for two";
  EXPECT_EQ(rowsText(first.rows), "1-10");
  EXPECT_DOUBLE_EQ(first.hours, 10);
}

TEST(CrewPlan, ShowsEmptyLanesOnADayOff) {
  CrewOrchard there = blocksOf(1, {tying()});
  there.orchard.crews.begin()->second.daysOff = {{there.today, there.today}};
  const auto lanes = lanesOn(there.orchard, there.planned(), there.today);
  ASSERT_THAT(lanes, SizeIs(1));
  EXPECT_EQ(lanes[0].workers, 0);
  EXPECT_THAT(lanes[0].jobs, IsEmpty());
}

TEST(CrewPlan, KeepsACrewToItsOwnHours) {
  CrewOrchard there = blocksOf(3, {tying()});
  there.orchard.crews.begin()->second.hoursPerDay = 6;
  Crew& late = there.addCrew(2, "Wren", 2);
  late.hoursPerDay = 10;
  const CrewPlan plan = there.planned();
  const auto lanes = lanesOn(there.orchard, plan, there.today);
  ASSERT_THAT(lanes, SizeIs(2));
  EXPECT_DOUBLE_EQ(lanes[0].hours, 12);
  EXPECT_DOUBLE_EQ(lanes[1].hours, 20);
  for (const LaneJob& job : lanes[0].jobs) EXPECT_LE(job.endMinute, 390 + 360);
  EXPECT_DOUBLE_EQ(worthOfDays(plan, 1).at(0).hours, 32);
}

/// Sixteen worker-hours: ten in the first block, a move of twenty minutes for two, then
/// rows of an hour for as long as they fit.
TEST(CrewPlan, CountsNobodyIdleOnTheWay) {
  CrewOrchard there = blocksOf(3, {tying()});
  const auto lanes = lanesOn(there.orchard, there.planned(), there.today);
  double worked = 0;
  for (const LaneJob& job : lanes.at(0).jobs) worked += job.hours;
  EXPECT_DOUBLE_EQ(worked, 15);
  EXPECT_NEAR(lanes[0].idle, 16 - 15 - 2.0 / 3, 1e-9);
}

TEST(CrewPlan, MakesAPlanWithoutCrews) {
  CrewOrchard there{{tying()}};
  there.addBlock(1, "Creek");
  const CrewPlan plan = there.planned();
  EXPECT_THAT(plan.schedule.stints, IsEmpty());
  EXPECT_THAT(lanesOn(there.orchard, plan, there.today), IsEmpty());
}

/// Five blocks of ten hours each, of use until Wednesday, with sixteen hours a day: 50
/// wanted, 48 there.
TEST(CrewPlan, WarnsOfWorkThatFindsNoHands) {
  const CrewOrchard there = blocksOf(5, {rubbing(7)});
  const auto risks = windowsAtRisk(there.planned());
  ASSERT_FALSE(risks.empty());
  EXPECT_TRUE(risks[0].lost);
  EXPECT_NEAR(risks[0].hoursMissing, 2, 1e-9);
  EXPECT_EQ(risks[0].by, dayOf(2027, 4, 7));
  EXPECT_EQ(risks[0].workingDays, 3);
  EXPECT_EQ(risks[0].workersMore, 1);
  EXPECT_EQ(risks[0].beyondHelp, 0);
  EXPECT_THAT(risks[0].tasks, SizeIs(5));
}

TEST(CrewPlan, SaysTheWarningWithItsFigures) {
  const CrewOrchard there = blocksOf(5, {rubbing(7)});
  const CrewPlan plan = there.planned();
  const std::string words =
      allOf(wordsOf(there.orchard, there.trade(), windowsAtRisk(plan).at(0)));
  EXPECT_THAT(words, HasSubstr("2.0 worker-hours"));
  EXPECT_THAT(words, HasSubstr("7 April 2027"));
  EXPECT_THAT(words, HasSubstr("1 more worker on these days would save all of it."));
  const DayHeadline head = headlineOf(there.orchard, plan, there.today);
  ASSERT_TRUE(head.shortBy);
  EXPECT_EQ(inEnglish(*head.shortBy), "2 hours short by 7 April 2027.");
}

/// The same with a row and a half done: 48.5 hours wanted, 48 there.
TEST(CrewPlan, SaysAShortageOfLessThanAnHourInMinutes) {
  CrewOrchard there = blocksOf(5, {rubbing(7)});
  there.tick(CrewOrchard::key(1, "rub"), RowSet::range(1, 1));
  there.tick(CrewOrchard::key(1, "rub"), RowSet::range(2, 2), 50);
  const DayHeadline head = headlineOf(there.orchard, there.planned(), there.today);
  ASSERT_TRUE(head.shortBy);
  EXPECT_EQ(inEnglish(*head.shortBy), "30 minutes short by 7 April 2027.");
}

/// One block holds two people at a time, whoever is hired: 16 hours a day.
TEST(CrewPlan, SaysWhatNoHiringCanSave) {
  CrewOrchard there{{rubbing(5)}};
  there.addBlock(1, "Creek").workersAtMost = 1;
  there.addCrew(1, "Heron", 6);
  const auto risks = windowsAtRisk(there.planned());
  ASSERT_FALSE(risks.empty());
  EXPECT_NEAR(risks[0].hoursMissing, 2, 1e-9) << "ten hours, eight of one worker";
  EXPECT_NEAR(risks[0].beyondHelp, 2, 1e-9);
  EXPECT_EQ(risks[0].workersMore, 0);
  EXPECT_THAT(allOf(wordsOf(there.orchard, there.trade(), risks[0])),
              HasSubstr("No hiring saves 2.0 hours"));
}

TEST(CrewPlan, DispatchesAgainAfterATick) {
  CrewOrchard there = blocksOf(3, {tying()});
  const CrewPlan before = there.planned();
  there.tick(CrewOrchard::key(1, "tie"), RowSet::range(1, 10));
  const CrewPlan after = replanCrews(there.question(), before);
  EXPECT_DOUBLE_EQ(hoursIn(after), 20);
  EXPECT_EQ(after.flow.price.size(), after.question.skills.size());
}

TEST(CrewPlan, KeepsWarningsOfWhatIsStillAskedUntilThePlanIsMadeAgain) {
  CrewOrchard there = blocksOf(5, {rubbing(7)});
  const CrewPlan before = there.planned();
  there.tick(CrewOrchard::key(2, "rub"), RowSet::range(1, 10));
  const auto risks = windowsAtRisk(replanCrews(there.question(), before));
  ASSERT_FALSE(risks.empty());
  EXPECT_THAT(risks[0].tasks, SizeIs(4));
  EXPECT_THAT(risks[0].tasks, Not(::testing::Contains(CrewOrchard::key(2, "rub"))));
  EXPECT_THAT(windowsAtRisk(there.planned()), IsEmpty()) << "forty hours fit";
}

TEST(CrewPlan, SendsAPinnedCrewWhereItIsPinned) {
  CrewOrchard there = blocksOf(3, {tying()});
  there.orchard.pins[{0, 1}] = {{0, 1},
                                PinKind::crewToJob,
                                CrewOrchard::key(3, "tie"),
                                CrewId{0, 1},
                                there.today,
                                ""};
  const CrewPlan plan = there.planned();
  const auto lanes = lanesOn(there.orchard, plan, there.today);
  ASSERT_FALSE(lanes.at(0).jobs.empty());
  EXPECT_EQ(lanes[0].jobs[0].task, CrewOrchard::key(3, "tie"));
  EXPECT_TRUE(lanes[0].jobs[0].pinned);
  EXPECT_THAT(
      allOf(whyOn(
          there.orchard, there.trade(), plan, CrewOrchard::key(3, "tie"), there.today)),
      HasSubstr("pinned"));
}

TEST(CrewPlan, TellsWhyTodayAndHowLongTheRestCanWait) {
  const CrewOrchard there = blocksOf(4, {tying(8)});
  const CrewPlan plan = there.planned();
  const auto lanes = lanesOn(there.orchard, plan, there.today);
  const std::string why = allOf(whyOn(
      there.orchard, there.trade(), plan, lanes.at(0).jobs.at(0).task, there.today));
  EXPECT_THAT(why, HasSubstr("It closes on 8 April 2027"));
  EXPECT_THAT(why, HasSubstr("4 working days"));
  const auto waiting = waitingOn(there.orchard, there.trade(), plan, there.today);
  ASSERT_FALSE(waiting.empty());
  EXPECT_THAT(inEnglish(waiting[0].why), HasSubstr("closes on 8 April 2027"));
}

TEST(CrewPlan, SaysWhatWorkWaitsFor) {
  Operation after = operation("clip", atMonth(4, 1), atMonth(4, 20));
  after.needs = {"tie"};
  const CrewOrchard there = blocksOf(3, {tying(), after});
  const CrewPlan plan = there.planned();
  std::string told;
  for (const WaitingTask& one :
       waitingOn(there.orchard, there.trade(), plan, there.today))
    told += inEnglish(one.why) + '\n';
  EXPECT_THAT(told, HasSubstr("It waits for Do tie"));
}

TEST(CrewPlan, SaysWhatADayIsWorth) {
  const CrewPlan calm = blocksOf(1, {tying()}).planned();
  EXPECT_EQ(worthOfDays(calm, 3).at(0).saves, 0);
  EXPECT_THAT(inEnglish(wordsOfWorth(worthOfDays(calm, 3).at(0))),
              HasSubstr("time in hand"));
  const CrewPlan pressed = blocksOf(5, {rubbing(7)}).planned();
  EXPECT_DOUBLE_EQ(worthOfDays(pressed, 3).at(0).saves, 6)
      << "what an hour of such work left undone loses, in resources/tables/delay.toml";
}

TEST(CrewPlan, SaysWhatTheWholeLoses) {
  EXPECT_THAT(allOf(wordsOfWhole(blocksOf(1, {tying()}).planned())),
              HasSubstr("Nothing is lost"));
  const CrewPlan pressed = blocksOf(6, {rubbing(7)}).planned();
  EXPECT_GE(pressed.schedule.loss, pressed.flow.bound);
  EXPECT_THAT(allOf(wordsOfWhole(pressed)), HasSubstr("No plan can do with less"));
}

TEST(CrewPlan, ForecastsWhenWorkIsDone) {
  CrewOrchard there = blocksOf(3, {tying()});
  const CrewPlan plan = there.planned();
  const TaskForecast forecast = forecastOf(plan, there.task(CrewOrchard::key(1, "tie")));
  ASSERT_TRUE(forecast.done && forecast.span);
  EXPECT_LE(*forecast.begins, *forecast.done);
  EXPECT_TRUE(forecast.span->contains(*forecast.done));
}

TEST(CrewPlan, HoldsWhatWasPlannedAgainstWhatWasDone) {
  CrewOrchard there = blocksOf(2, {tying()});
  const auto lanes = lanesOn(there.orchard, there.planned(), there.today);
  for (const PlannedJob& job : plannedJobs(lanes, there.today))
    there.orchard.plannedJobs[job.of] = job;
  const TaskKey task = lanes.at(0).jobs.at(0).task;
  there.tick(task, RowSet::range(1, 4), 100, 200).by = "Heron";
  there.tick(task, RowSet::range(5, 5), 50, 0).by = "Heron";
  EXPECT_EQ(lastPlanned(there.orchard, plusDays(there.today, 1)), there.today);
  EXPECT_EQ(lastPlanned(there.orchard, there.today), std::nullopt);
  const auto both = planAndDone(there.orchard, there.today);
  ASSERT_FALSE(both.empty());
  EXPECT_EQ(rowsText(both[0].done), "1-4");
  EXPECT_EQ(both[0].minutes, 200);
  EXPECT_TRUE(both[0].hoursMissing) << "row 5 has no hours";
}

TEST(CrewPlan, SumsLabourByWeeks) {
  CrewOrchard there = blocksOf(3, {tying()});
  there.today = dayOf(2027, 4, 7);  // a Wednesday
  const CrewPlan plan = there.planned();
  const auto weeks = labourByWeek(plan);
  ASSERT_THAT(weeks, SizeIs(5));
  EXPECT_EQ(weeks[0].monday, dayOf(2027, 4, 5));
  EXPECT_DOUBLE_EQ(weeks[0].there, 4 * 16) << "Wednesday to Saturday";
  EXPECT_DOUBLE_EQ(weeks[1].there, 6 * 16);
  double wanted = 0;
  double planned = 0;
  for (const WeekOfLabour& week : weeks) {
    wanted += week.wanted;
    planned += week.planned;
  }
  EXPECT_NEAR(wanted, 30, 1e-9);
  EXPECT_NEAR(planned, 30, 1e-9);
}

TEST(CrewPlan, SumsWhatIsCarriedOver) {
  CrewOrchard there = blocksOf(12, {tying(10)});
  const auto weeks = labourByWeek(there.planned());
  EXPECT_GT(weeks.at(0).overdue, 120 - 96 - 1e-9) << "no more than 96 hours in a week";
  EXPECT_DOUBLE_EQ(weeks.at(1).overdue, 0);
}

TEST(CrewPlan, HoldsASuppositionAgainstToday) {
  const CrewOrchard there = blocksOf(5, {rubbing(7)});
  const PlanSum known = sumOf(there.planned());
  EXPECT_GE(known.hoursLost, 2);
  EXPECT_GE(known.windowsMissed, 1);
  const PlanSum helped = sumOf(planCrews(there.question({1, {}, 0}), {50, 1}));
  EXPECT_LT(helped.loss, known.loss);
  const PlanSum rainy = sumOf(planCrews(
      there.question({0, {{dayOf(2027, 4, 6), dayOf(2027, 4, 7)}}, 0}), {50, 1}));
  EXPECT_GE(rainy.hoursLost, 34) << "one day of sixteen hours is left";
}

TEST(CrewPlan, LaysPastYearsRainOverTheDaysAhead) {
  Operation minds = rubbing(10);
  minds.avoid = {Avoid::wet};
  CrewOrchard there = blocksOf(1, {minds});
  WeatherDay rain = mild();
  rain.rain = 6;
  for (int year = 2020; year <= 2026; ++year)
    for (int day = 0; day < there.days; ++day) {
      const Day then = plusDays(dayOf(year, 4, 5), day);
      put(there.orchard, then, year <= 2022 ? rain : mild());
    }
  const auto windows = missedOf(there);
  ASSERT_THAT(windows, SizeIs(1));
  EXPECT_EQ(windows[0].missed, 3);
  EXPECT_EQ(windows[0].years, 7);
}

/// One window of a crop of blocks that minds rain, after seven springs of it.
CrewOrchard afterWetSprings() {
  Operation minds = rubbing(10);
  minds.avoid = {Avoid::wet};
  CrewOrchard there = blocksOf(1, {minds});
  WeatherDay rain = mild();
  rain.rain = 6;
  for (int year = 2020; year <= 2026; ++year)
    for (int day = 0; day < there.days; ++day)
      put(there.orchard, plusDays(dayOf(year, 4, 5), day), rain);
  return there;
}

TEST(CrewPlan, CountsPastYearsOnlyWhileItIsWanted) {
  const CrewOrchard there = afterWetSprings();
  const CrewPlan plan = there.planned();
  const PastRain rain = pastRain(there.orchard, there.trade(), plan.question);
  int asked = 0;
  const auto thrice = [&asked] { return ++asked <= 3; };
  EXPECT_THAT(missedInPastYears(rain, plan, thrice), IsEmpty());
  EXPECT_EQ(asked, 4);
  EXPECT_THAT(missedInPastYears(rain, plan, [] { return true; }), SizeIs(1));
}

TEST(CrewPlan, SaysNothingOfRainWithoutFiveYearsOfIt) {
  Operation minds = rubbing(10);
  minds.avoid = {Avoid::wet};
  CrewOrchard there = blocksOf(1, {minds});
  WeatherDay rain = mild();
  rain.rain = 6;
  for (int year = 2023; year <= 2026; ++year)
    for (int day = 0; day < there.days; ++day)
      put(there.orchard, plusDays(dayOf(year, 4, 5), day), rain);
  EXPECT_THAT(missedOf(there), IsEmpty());
}

TEST(CrewPlan, SaysWhereToKeepOut) {
  CrewOrchard there = blocksOf(1, {tying()});
  there.orchard.closures[{0, 1}] = {{0, 1},
                                    there.orchard.blocks.begin()->first,
                                    there.today,
                                    plusDays(there.today, 1),
                                    6 * 60,
                                    "spray"};
  EXPECT_EQ(allOf(keptOut(there.orchard, there.today)),
            "Block 1: keep out until 06:00 on 6 April 2027, spray.\n");
  EXPECT_THAT(keptOut(there.orchard, plusDays(there.today, 2)), IsEmpty());
}

TEST(CrewPlan, CountsWhoTurnedOut) {
  CrewOrchard there = blocksOf(1, {tying()});
  EXPECT_EQ(inEnglish(headlineOf(there.orchard, there.planned(), there.today).turnout),
            "All 2 workers are expected.");
  const CrewDay today{{0, 1}, there.today};
  there.orchard.turnouts[today] = {today, 1};
  const DayHeadline head = headlineOf(there.orchard, there.planned(), there.today);
  EXPECT_EQ(inEnglish(head.turnout), "1 of 2 turned out.");
  EXPECT_THAT(inEnglish(head.hours), HasSubstr("8 worker-hours"));
}

}  // namespace
}  // namespace topwire
