#include "core/edit/crew_deeds.h"

#include "core/edit/deeds.h"
#include "core/orchard/working_days.h"
#include "tests/core/deeds_support.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

#include <functional>

namespace topwire {
namespace {

using testing::after;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing::leaderTie;
using testing::nameOf;
using testing::orchardOfTwo;
using testing::said;

const Day tuesday = dayOf(2027, 4, 6);
constexpr CrewId north{0, 30};

Crew northCrew() {
  return {north, "North", 6, 8};
}

Orchard orchardWithNorth() {
  Orchard orchard = orchardOfTwo();
  orchard.crews[north] = northCrew();
  return orchard;
}

struct BadCrew {
  std::function<void(Crew&)> spoil;
  std::vector<std::string> expected;
};

class CrewFault : public ::testing::TestWithParam<BadCrew> {};

TEST_P(CrewFault, IsSaidWithItsFieldWhetherAddedOrChanged) {
  Orchard orchard = orchardOfTwo();
  orchard.crews[{0, 31}] = {{0, 31}, "South", 4, 8};
  Crew crew = northCrew();
  GetParam().spoil(crew);
  EXPECT_EQ(said(addCrew(orchard, crew)), GetParam().expected);
  orchard.crews[north] = northCrew();
  EXPECT_EQ(said(editCrew(orchard, crew)), GetParam().expected);
}

INSTANTIATE_TEST_SUITE_P(
    Deeds,
    CrewFault,
    ::testing::Values(
        BadCrew{[](Crew&) {}, {}},
        BadCrew{[](Crew& c) { c.name = " SOUTH "; },
                {"name: There is a crew called South already; choose another name."}},
        BadCrew{[](Crew& c) { c.workers = 0; },
                {"workers: A crew has between 1 and 200 workers."}},
        BadCrew{[](Crew& c) { c.hoursPerDay = 0.4; },
                {"hoursPerDay: A working day has between half an hour and 24 hours."}},
        BadCrew{[](Crew& c) {
                  c.skills = {"pruning", " "};
                },
                {"skills: A name is missing here; type one."}},
        BadCrew{[](Crew& c) {
                  c.skills = {"pruning", " Pruning "};
                },
                {"skills: pruning is named twice; name it once."}},
        BadCrew{[](Crew& c) { c.skills = {"pruning, tractor"}; },
                {"skills: Write one name between commas; pruning, tractor holds a comma "
                 "itself."}},
        BadCrew{[](Crew& c) { c.members = {"a\nb"}; },
                {"members: Keep this on one line, without control characters."}},
        BadCrew{[](Crew& c) {
                  c.workers = 1;
                  c.members = {"Ana", "Béa"};
                },
                {"members: 2 people are named, and the crew has 1 workers; correct one "
                 "of the two."}},
        BadCrew{[](Crew& c) {
                  c.daysOff = {{tuesday, plusDays(tuesday, -1)}};
                },
                {"daysOff: The days off run from 6 April 2027 back to 5 April 2027; "
                 "swap the two."}},
        BadCrew{[](Crew& c) {
                  c.daysOff = {{dayOf(1066, 1, 1), tuesday}};
                },
                {"daysOff: 1 January 1066 lies outside the years 1900 to 2200; check "
                 "the day."}},
        BadCrew{[](Crew& c) { c.youngMinutes = -1; },
                {"youngMinutes: Hours kept for young trees lie between none and the "
                 "crew's 48.0 worker-hours of a day."}},
        BadCrew{[](Crew& c) { c.youngMinutes = 2881; },
                {"youngMinutes: Hours kept for young trees lie between none and the "
                 "crew's 48.0 worker-hours of a day."}}));

TEST(CrewDeeds, TidyWhatIsTyped) {
  Crew typed = northCrew();
  typed.name = " North ";
  typed.skills = {" Pruning", "PODA Ñ"};
  typed.members = {" Ana "};
  typed.daysOff = {{plusDays(tuesday, 9), plusDays(tuesday, 9)}, {tuesday, tuesday}};
  const Orchard orchard = after(orchardOfTwo(), addCrew(orchardOfTwo(), typed));
  const Crew& crew = orchard.crews.at(north);
  EXPECT_EQ(crew.name, "North");
  EXPECT_THAT(crew.skills, ElementsAre("pruning", "poda ñ"));
  EXPECT_THAT(crew.members, ElementsAre("Ana"));
  EXPECT_EQ(crew.daysOff.front().first, tuesday);
}

TEST(CrewDeeds, SayWhatTheyChange) {
  const Orchard orchard = orchardWithNorth();
  Crew more = northCrew();
  more.workers = 7;
  EXPECT_EQ(nameOf(editCrew(orchard, more)), "Crew North changed");
  EXPECT_EQ(nameOf(deleteCrew(orchard, north)), "Crew North deleted");
  EXPECT_EQ(after(orchard, editCrew(orchard, more)).crews.at(north).workers, 7);
}

TEST(CrewDeeds, OfACrewThatIsGoneAreRefused) {
  const Orchard orchard = orchardOfTwo();
  const auto gone = ElementsAre("That crew is no longer in the orchard.");
  EXPECT_THAT(said(editCrew(orchard, northCrew())), gone);
  EXPECT_THAT(said(deleteCrew(orchard, north)), gone);
  EXPECT_THAT(said(setTurnout(orchard, {{north, tuesday}, 3})),
              ElementsAre("crew: That crew is no longer in the orchard."));
}

/// With a turnout, pins of both kinds, a closing and a planned job.
Orchard busyOrchard() {
  Orchard orchard = orchardWithNorth();
  orchard = after(orchard, setTurnout(orchard, {{north, tuesday}, 3}));
  const TaskKey task = leaderTie().key;
  orchard = after(
      orchard, addPin(orchard, {{0, 40}, PinKind::crewToJob, task, north, tuesday, ""}));
  orchard =
      after(orchard,
            addPin(orchard,
                   {{0, 41}, PinKind::notBefore, task, {}, plusDays(tuesday, -2), ""}));
  orchard = after(
      orchard,
      closeBlock(
          orchard,
          {{0, 42}, {0, 1}, plusDays(tuesday, 3), plusDays(tuesday, 4), 360, "spray"}));
  return after(
      orchard,
      acceptPlan(orchard,
                 tuesday,
                 {{{tuesday, north, 1}, task, RowSet::range(1, 4), 390, 480, 6}}));
}

TEST(CrewDeeds, ADeletedCrewTakesItsDaysAlongAndComesBackWithThem) {
  const Orchard orchard = busyOrchard();
  const auto change = deleteCrew(orchard, north);
  const Orchard without = after(orchard, change);
  EXPECT_THAT(without.crews, IsEmpty());
  EXPECT_THAT(without.turnouts, IsEmpty());
  EXPECT_THAT(without.plannedJobs, IsEmpty());
  ASSERT_EQ(without.pins.size(), 1U);
  EXPECT_EQ(without.pins.begin()->second.kind, PinKind::notBefore);
  Orchard again = without;
  auto ids = IdSource::countingFrom(900);
  apply(again, inverted(*change, ids));
  EXPECT_EQ(again, orchard);
}

TEST(CrewDeeds, ADeletedBlockTakesPinsClosingsAndPlannedJobsAlong) {
  const Orchard orchard = busyOrchard();
  const auto change = deleteBlock(orchard, {0, 1});
  const Orchard without = after(orchard, change);
  EXPECT_THAT(without.pins, IsEmpty());
  EXPECT_THAT(without.closures, IsEmpty());
  EXPECT_THAT(without.plannedJobs, IsEmpty());
  EXPECT_EQ(without.turnouts.size(), 1U);
  Orchard again = without;
  auto ids = IdSource::countingFrom(900);
  apply(again, inverted(*change, ids));
  EXPECT_EQ(again, orchard);
}

TEST(CrewDeeds, ADeletedPlantingTakesItsPinsAndPlannedJobsAlong) {
  Orchard orchard = busyOrchard();
  orchard.plantings.erase({0, 12});  // the replant in its rows
  const Orchard without = after(orchard, deletePlanting(orchard, {0, 10}));
  EXPECT_THAT(without.pins, IsEmpty());
  EXPECT_THAT(without.plannedJobs, IsEmpty());
  EXPECT_EQ(without.closures.size(), 1U);
}

TEST(WorkDays, AreSaidReplacedAndTakenBack) {
  Orchard orchard = orchardOfTwo();
  const Day sunday = dayOf(2027, 4, 11);
  EXPECT_EQ(workablePercent(orchard, tuesday), 100);
  EXPECT_EQ(workablePercent(orchard, sunday), 0);
  const auto worked = setWorkDay(orchard, {sunday, 100, " frost "});
  EXPECT_EQ(nameOf(worked), "11 April 2027: 100 % of the usual hours can be worked");
  orchard = after(orchard, worked);
  EXPECT_EQ(orchard.workDays.at(sunday).reason, "frost");
  EXPECT_EQ(workablePercent(orchard, sunday), 100);
  orchard = after(orchard, setWorkDay(orchard, {sunday, 40, ""}));
  EXPECT_EQ(workablePercent(orchard, sunday), 40);
  const auto cleared = clearWorkDay(orchard, sunday);
  EXPECT_EQ(nameOf(cleared), "11 April 2027: worked as its weekday is again");
  orchard = after(orchard, cleared);
  EXPECT_THAT(orchard.workDays, IsEmpty());
  EXPECT_THAT(said(clearWorkDay(orchard, sunday)),
              ElementsAre("day: Nothing is said of 11 April 2027; it is worked as its "
                          "weekday is."));
}

TEST(WorkDays, FaultsAreSaidWithTheirFields) {
  EXPECT_THAT(said(setWorkDay(orchardOfTwo(), {dayOf(2500, 1, 1), 101, "a\nb"})),
              ElementsAre(HasSubstr("day: 1 January 2500 lies outside"),
                          HasSubstr("reason: Keep this on one line"),
                          HasSubstr("percent: How much of a day can be worked")));
  EXPECT_THAT(said(setWorkDay(orchardOfTwo(), {tuesday, -1, ""})),
              ElementsAre(HasSubstr("percent: ")));
}

TEST(Turnouts, AreNotedWhereTheyAreNotTheUsualNumber) {
  Orchard orchard = orchardWithNorth();
  const auto absent = setTurnout(orchard, {{north, tuesday}, 0});
  EXPECT_EQ(nameOf(absent), "North: 0 of 6 turned out on 6 April 2027");
  orchard = after(orchard, absent);
  EXPECT_EQ(orchard.turnouts.at({north, tuesday}).workers, 0);
  orchard = after(orchard, setTurnout(orchard, {{north, tuesday}, 9}));
  EXPECT_EQ(orchard.turnouts.at({north, tuesday}).workers, 9);
  orchard = after(orchard, setTurnout(orchard, {{north, tuesday}, 6}));
  EXPECT_THAT(orchard.turnouts, IsEmpty());
  const auto usual = setTurnout(orchard, {{north, tuesday}, 6});
  ASSERT_TRUE(usual.has_value());
  EXPECT_TRUE(usual->empty());
}

TEST(Turnouts, OutOfReasonAreRefused) {
  const Orchard orchard = orchardWithNorth();
  for (const int workers : {-1, 1000})
    EXPECT_THAT(said(setTurnout(orchard, {{north, tuesday}, workers})),
                ElementsAre("workers: Between 0 and 999 workers can turn out; check the "
                            "number."));
  EXPECT_THAT(said(setTurnout(orchard, {{north, tuesday}, 999})), IsEmpty());
}

TEST(WorkingSettings, FaultsAreSaidWithTheirFields) {
  const Orchard orchard = orchardOfTwo();
  Settings settings = orchard.settings;
  settings.workdays = {};
  settings.startMinute = 1440;
  settings.moveMinutes = 241;
  settings.moveMinutesPerKm = -1;
  settings.keepTogether = 101;
  settings.gangAtMost = 0;
  EXPECT_THAT(
      said(changeSettings(orchard, settings)),
      ElementsAre(HasSubstr("workdays: Work is done on one day"),
                  HasSubstr("start: Work begins between 00:00 and 23:59"),
                  HasSubstr("moveMinutes: Going to another block takes 0 to 240"),
                  HasSubstr("moveMinutesPerKm: A kilometre takes 0 to 60"),
                  HasSubstr("keepTogether: How much crews are kept together"),
                  HasSubstr("gangAtMost: People who move together are 1 to 200")));
}

TEST(BlockPlaces, FaultsAreSaidWithTheirFields) {
  const Orchard orchard = orchardOfTwo();
  Block block = testing::block(3, "Moor", "1-10");
  block.workersAtMost = 0;
  block.latitude = 47.0;
  EXPECT_THAT(said(addBlock(orchard, block)),
              ElementsAre(HasSubstr("workersAtMost: Between 1 and 999"),
                          HasSubstr("longitude: A place on the map takes")));
  block.workersAtMost = 999;
  block.latitude = -47.0;
  block.longitude = 181;
  EXPECT_THAT(said(addBlock(orchard, block)),
              ElementsAre(HasSubstr("latitude: A block lies within one degree"),
                          HasSubstr("longitude: A longitude lies between")));
  block.latitude = 47.5;
  block.longitude = -120.5;
  EXPECT_THAT(said(addBlock(orchard, block)), IsEmpty());
}

}  // namespace
}  // namespace topwire
