#include "core/crews/crew_question.h"

#include "tests/support/crew_orchard.h"
#include "tests/support/weather.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

constexpr Seconds hour = 3600;

/// Ties from 1 to 20 April, for anyone.
Operation tying() {
  return operation("tie", atMonth(4, 1), atMonth(4, 20));
}

Operation pruning() {
  Operation made = operation("prune", atMonth(4, 1), atMonth(4, 20));
  made.skill = "pruning";
  return made;
}

CrewOrchard oneBlock(std::vector<Operation> operations) {
  CrewOrchard made{std::move(operations)};
  made.addBlock(1, "Creek");
  made.addCrew(1, "Heron", 4);
  return made;
}

std::string allOf(const std::vector<Sentence>& notes) {
  std::string text;
  for (const Sentence& note : notes) text += inEnglish(note) + '\n';
  return text;
}

TEST(CrewQuestion, AsksForEachRowLeft) {
  const CrewOrchard there = oneBlock({tying()});
  const CrewQuestion question = there.question();
  ASSERT_THAT(question.tasks, ElementsAre(CrewOrchard::key(1, "tie")));
  const CrewJob& job = question.problem.jobs.front();
  ASSERT_THAT(job.rows, SizeIs(10));
  EXPECT_EQ(job.rows[3].row, 4);
  EXPECT_EQ(job.rows[3].work, hour);
  EXPECT_EQ(job.opens, -4);
  EXPECT_EQ(job.closes, 15);
}

TEST(CrewQuestion, LeavesOutRowsDoneAndPartsOfRows) {
  CrewOrchard there = oneBlock({tying()});
  there.tick(CrewOrchard::key(1, "tie"), RowSet::range(1, 8));
  there.tick(CrewOrchard::key(1, "tie"), RowSet::range(9, 9), 60);
  const CrewQuestion question = there.question();
  const CrewJob& job = question.problem.jobs.front();
  ASSERT_THAT(job.rows, SizeIs(2));
  EXPECT_EQ(job.rows[0].row, 9);
  EXPECT_EQ(job.rows[0].work, hour * 4 / 10);
  EXPECT_EQ(job.rows[1].work, hour);
}

TEST(CrewQuestion, AsksNothingOfWorkThatIsDone) {
  CrewOrchard there = oneBlock({tying()});
  there.tick(CrewOrchard::key(1, "tie"), RowSet::range(1, 10));
  EXPECT_THAT(there.question().tasks, IsEmpty());
}

TEST(CrewQuestion, RestsOnSundaysAndHolidays) {
  CrewOrchard there = oneBlock({tying()});
  there.orchard.workDays[dayOf(2027, 4, 7)] = {dayOf(2027, 4, 7), 0, "Holiday"};
  there.orchard.workDays[dayOf(2027, 4, 8)] = {dayOf(2027, 4, 8), 50, "Rain until noon"};
  there.orchard.workDays[dayOf(2027, 4, 18)] = {dayOf(2027, 4, 18), 100, "Late already"};
  const auto& length = there.question().problem.dayLength;
  EXPECT_EQ(length[0], 8 * hour);
  EXPECT_EQ(length[2], 0) << "the holiday";
  EXPECT_EQ(length[3], 4 * hour);
  EXPECT_EQ(length[6], 0) << "11 April 2027 is a Sunday";
  EXPECT_EQ(length[13], 8 * hour) << "a Sunday that is worked";
}

TEST(CrewQuestion, CountsWhoTurnedOutAndWhoIsOff) {
  CrewOrchard there = oneBlock({tying()});
  Crew& crew = there.orchard.crews.begin()->second;
  crew.daysOff = {{dayOf(2027, 4, 7), dayOf(2027, 4, 9)}};
  there.orchard.turnouts[{crew.id, there.today}] = {{crew.id, there.today}, 3};
  const Gang gang = there.question().problem.gangs.at(0);
  EXPECT_EQ(gang.workers[0], 3);
  EXPECT_EQ(gang.workers[1], 4);
  EXPECT_EQ(gang.workers[2], 0);
  EXPECT_EQ(gang.workers[4], 0);
  EXPECT_EQ(gang.workers[5], 4);
}

TEST(CrewQuestion, SplitsACrewLargerThanAGangMayBe) {
  CrewOrchard there = oneBlock({tying()});
  Crew& crew = there.orchard.crews.begin()->second;
  crew.workers = 9;
  there.orchard.settings.gangAtMost = 5;
  there.orchard.turnouts[{crew.id, there.today}] = {{crew.id, there.today}, 7};
  const auto gangs = there.question().problem.gangs;
  ASSERT_THAT(gangs, SizeIs(2));
  EXPECT_EQ(gangs[0].workers[0], 4);
  EXPECT_EQ(gangs[1].workers[0], 3);
  EXPECT_EQ(gangs[0].workers[1], 5);
  EXPECT_EQ(gangs[1].workers[1], 4);
}

TEST(CrewQuestion, KeepsCrewsOutOfAClosedBlock) {
  CrewOrchard there = oneBlock({tying()});
  const BlockId block = there.orchard.blocks.begin()->first;
  there.orchard.closures[{0, 1}] = {
      {0, 1}, block, dayOf(2027, 4, 5), dayOf(2027, 4, 6), 10 * 60, "Spray"};
  const auto shut = there.question().problem.blocks.at(0).shut;
  ASSERT_THAT(shut, SizeIs(2));
  EXPECT_EQ(shut[0].day, 0);
  EXPECT_GE(shut[0].from, 8 * hour) << "all day";
  EXPECT_EQ(shut[1].day, 1);
  EXPECT_EQ(shut[1].from, hour * 7 / 2) << "work begins at 06:30";
}

TEST(CrewQuestion, OpensAgainBeforeWorkBegins) {
  CrewOrchard there = oneBlock({tying()});
  const BlockId block = there.orchard.blocks.begin()->first;
  there.orchard.closures[{0, 1}] = {
      {0, 1}, block, dayOf(2027, 4, 4), dayOf(2027, 4, 5), 6 * 60, ""};
  EXPECT_THAT(there.question().problem.blocks.at(0).shut, IsEmpty());
}

TEST(CrewQuestion, NotesWorkNoCrewHasTheSkillFor) {
  CrewOrchard there = oneBlock({pruning(), tying()});
  there.orchard.crews.begin()->second.skills = {"tractor"};
  const CrewQuestion question = there.question();
  EXPECT_THAT(question.tasks, ElementsAre(CrewOrchard::key(1, "tie")));
  EXPECT_THAT(allOf(question.notes), HasSubstr("\"pruning\""));
}

TEST(CrewQuestion, TakesACrewWithoutSkillsForAllRound) {
  CrewOrchard there = oneBlock({pruning()});
  const CrewQuestion question = there.question();
  ASSERT_THAT(question.tasks, SizeIs(1));
  const int skill = question.problem.jobs.front().skill;
  EXPECT_EQ(question.skills.at(static_cast<std::size_t>(skill)), "pruning");
  EXPECT_TRUE(question.problem.gangs.at(0).skills.at(static_cast<std::size_t>(skill)));
}

TEST(CrewQuestion, SaysThatThereAreNoCrews) {
  CrewOrchard there{{tying()}};
  there.addBlock(1, "Creek");
  const CrewQuestion question = there.question();
  EXPECT_THAT(allOf(question.notes), HasSubstr("no crews"));
  EXPECT_THAT(question.problem.gangs, IsEmpty());
}

TEST(CrewQuestion, KnowsWhatHasToBeDoneFirst) {
  Operation after = operation("clip", atMonth(4, 1), atMonth(4, 20));
  after.needs = {"tie"};
  const CrewOrchard there = oneBlock({tying(), after});
  const CrewQuestion question = there.question();
  EXPECT_THAT(jobOf(question, CrewOrchard::key(1, "clip")).needs,
              ElementsAre(question.jobOf(CrewOrchard::key(1, "tie")).value()));
}

TEST(CrewQuestion, HoldsWhatIsPinnedToALaterDay) {
  CrewOrchard there = oneBlock({tying()});
  Pin pin;
  pin.id = {0, 1};
  pin.kind = PinKind::notBefore;
  pin.task = CrewOrchard::key(1, "tie");
  pin.day = dayOf(2027, 4, 9);
  there.orchard.pins[pin.id] = pin;
  EXPECT_EQ(there.question().problem.jobs.front().opens, 4);
}

TEST(CrewQuestion, PinsACrewToAJob) {
  CrewOrchard there = oneBlock({tying()});
  Pin pin;
  pin.id = {0, 1};
  pin.kind = PinKind::crewToJob;
  pin.task = CrewOrchard::key(1, "tie");
  pin.crew = CrewId{0, 1};
  pin.day = dayOf(2027, 4, 6);
  there.orchard.pins[pin.id] = pin;
  const CrewQuestion question = there.question();
  ASSERT_THAT(question.problem.pins, SizeIs(1));
  EXPECT_EQ(question.problem.pins[0].day, 1);
  EXPECT_THAT(question.notes, IsEmpty());
}

TEST(CrewQuestion, NotesPinsThatCannotHold) {
  CrewOrchard there = oneBlock({tying()});
  Pin pin;
  pin.kind = PinKind::crewToJob;
  pin.task = CrewOrchard::key(1, "tie");
  pin.crew = CrewId{0, 1};
  for (const Day day : {dayOf(2027, 4, 11), dayOf(2027, 4, 6)}) {
    pin.id = {0, static_cast<std::uint64_t>(dayOfYear(day))};
    pin.day = day;
    there.orchard.pins[pin.id] = pin;
  }
  Pin hold = pin;
  hold.id = {0, 1};
  hold.kind = PinKind::notBefore;
  hold.day = dayOf(2027, 4, 8);
  there.orchard.pins[hold.id] = hold;
  const CrewQuestion question = there.question();
  EXPECT_THAT(question.problem.pins, IsEmpty());
  EXPECT_THAT(allOf(question.notes), HasSubstr("11 April 2027 but has nobody"));
  EXPECT_THAT(allOf(question.notes), HasSubstr("6 April 2027 to work that is not open"));
}

TEST(CrewQuestion, NotesTicksOnRowsThatAreNotThere) {
  CrewOrchard there = oneBlock({tying()});
  there.tick(CrewOrchard::key(1, "tie"), RowSet::range(9, 12));
  const CrewQuestion question = there.question();
  EXPECT_THAT(question.problem.jobs.front().rows, SizeIs(8));
  EXPECT_THAT(allOf(question.notes), HasSubstr("(11-12)"));
}

TEST(CrewQuestion, NotesAWindowThatIsOver) {
  Operation early = operation("rub", atMonth(3, 1), atMonth(3, 20));
  early.cutOff = CutOff{atMonth(4, 2), {}};
  const CrewOrchard there = oneBlock({early, tying()});
  const CrewQuestion question = there.question();
  EXPECT_THAT(question.tasks, ElementsAre(CrewOrchard::key(1, "tie")));
  EXPECT_THAT(allOf(question.notes), HasSubstr("of use until 2 April 2027"));
}

TEST(CrewQuestion, LetsWorkThatMindsRainWaitForADryDay) {
  Operation minds = operation("brush", atMonth(4, 1), atMonth(4, 20));
  minds.avoid = {Avoid::wet};
  CrewOrchard there = oneBlock({minds, tying()});
  WeatherDay rain = mild();
  rain.rain = 8;
  rain.source = WeatherSource::forecast;
  put(there.orchard, dayOf(2027, 4, 7), rain);
  const CrewQuestion question = there.question();
  const CrewJob& wet = jobOf(question, CrewOrchard::key(1, "brush"));
  EXPECT_FALSE(wet.isOpenOn(2));
  EXPECT_TRUE(wet.isOpenOn(3));
  EXPECT_TRUE(jobOf(question, CrewOrchard::key(1, "tie")).isOpenOn(2));
}

TEST(CrewQuestion, WeighsLatenessAsTheTableSays) {
  Operation dear = tying();
  dear.delayCost = DelayCost::veryHigh;
  dear.cutOff = CutOff{atMonth(4, 25), {}};
  const CrewQuestion question = oneBlock({dear}).question();
  const CrewJob& job = question.problem.jobs.front();
  EXPECT_EQ(job.perDayLate, 600);
  EXPECT_EQ(job.leftUndone, 20'000);
  EXPECT_EQ(job.lateOn(job.closes), 0);
  EXPECT_EQ(job.lateOn(job.closes + 2), 1200);
  EXPECT_EQ(job.last, 20);
}

TEST(CrewQuestion, KeepsHoursForYoungTreesWhileFruitIsPicked) {
  CrewOrchard there{{operation("tie", atMonth(9, 1), atMonth(11, 20))}};
  there.addBlock(1, "Old", dayOf(2020, 4, 10));
  there.addBlock(2, "Young", dayOf(2027, 4, 10));
  there.addCrew(1, "Heron", 4).youngMinutes = 300;
  there.today = dayOf(2027, 9, 1);
  there.days = 100;
  const CrewQuestion question = there.question();
  EXPECT_FALSE(jobOf(question, CrewOrchard::key(1, "tie")).young);
  EXPECT_TRUE(jobOf(question, CrewOrchard::key(2, "tie")).young);
  const auto& kept = question.problem.gangs.at(0).keptForYoung;
  const auto days = std::ranges::count(kept, 300 * 60);
  EXPECT_GE(days, 10);
  EXPECT_LE(days, 15) << "two weeks, without Sundays";
}

TEST(CrewQuestion, SupposesMorePeopleLostDaysAndALateSpring) {
  Operation atBloom =
      operation("rub", atStage(stages::fullBloom), atStage(stages::petalFall));
  CrewOrchard there = oneBlock({tying(), atBloom});
  there.days = 90;
  Supposition supposed;
  supposed.workersMore = 3;
  supposed.lost = {{dayOf(2027, 4, 6), dayOf(2027, 4, 7)}};
  supposed.springLaterBy = 6;
  const CrewQuestion known = there.question();
  const CrewQuestion question = there.question(supposed);
  ASSERT_THAT(question.problem.gangs, SizeIs(2));
  EXPECT_EQ(question.problem.gangs[1].workers[0], 3);
  EXPECT_EQ(question.problem.gangs[1].workers[1], 0);
  EXPECT_EQ(question.problem.dayLength[2], 0);
  const TaskKey rub = CrewOrchard::key(1, "rub");
  EXPECT_EQ(jobOf(question, rub).opens, jobOf(known, rub).opens + 6);
  const TaskKey tie = CrewOrchard::key(1, "tie");
  EXPECT_EQ(jobOf(question, tie).opens, jobOf(known, tie).opens) << "hangs on no stage";
}

TEST(CrewQuestion, GoesByTheDistanceBetweenBlocks) {
  CrewOrchard there{{tying()}};
  Block& creek = there.addBlock(1, "Creek");
  Block& ridge = there.addBlock(2, "Ridge");
  there.addBlock(3, "Somewhere");
  there.addCrew(1, "Heron", 4);
  // A minute of latitude is a nautical mile, 1.852 km.
  creek.latitude = 47.0;
  creek.longitude = ridge.longitude = -120.0;
  ridge.latitude = 47.0 + 1.0 / 60;
  there.orchard.settings.moveMinutes = 10;
  there.orchard.settings.moveMinutesPerKm = 5;
  const CrewProblem problem = there.question().problem;
  EXPECT_EQ(problem.moveFrom(0, 1), (10 + 9) * 60) << "1.852 km at 5 minutes each";
  EXPECT_EQ(problem.moveFrom(0, 2), 10 * 60) << "no coordinates";
  EXPECT_EQ(problem.moveFrom(0, 0), 0);
}

TEST(CrewQuestion, LearnsEachCrewsPace) {
  CrewOrchard there = oneBlock({tying()});
  there.addCrew(2, "Wren", 4);
  // Wren takes half as long again as the programme's hour a row, for eight rows.
  there.tick(CrewOrchard::key(1, "tie"), RowSet::range(1, 8), 100, 8 * 90).by = "Wren";
  const CrewJob job = there.question().problem.jobs.front();
  ASSERT_THAT(job.pace, SizeIs(2));
  EXPECT_EQ(job.pace[0], 1000) << "Heron, who was not seen";
  EXPECT_GT(job.pace[1], 1050);
}

TEST(CrewQuestion, CountsLeapDaysAndPlansOverNewYear) {
  CrewOrchard there{{operation("prune", atMonth(2, 20), atMonth(3, 5))}};
  there.addBlock(1, "Creek");
  there.addCrew(1, "Heron", 4);
  there.today = dayOf(2027, 12, 20);
  there.days = 100;
  const CrewQuestion question = there.question();
  const TaskKey prune{{0, 101}, "prune", Season{2028}, 1};
  ASSERT_TRUE(question.jobOf(prune));
  EXPECT_EQ(question.dayOf(jobOf(question, prune).closes), dayOf(2028, 3, 5));
  EXPECT_EQ(jobOf(question, prune).closes, 76) << "February 2028 has 29 days";
}

}  // namespace
}  // namespace topwire
