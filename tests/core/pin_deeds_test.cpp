#include "core/edit/crew_deeds.h"
#include "core/orchard/working_days.h"
#include "tests/core/deeds_support.h"

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
constexpr CrewId south{0, 31};
constexpr BlockId creek{0, 1};

/// North prunes and works from 06:30 to 14:30; South is asked anything.
Orchard orchardOfCrews() {
  Orchard orchard = orchardOfTwo();
  orchard.crews[north] = {north, "North", 6, 8, {"pruning"}};
  orchard.crews[south] = {south, "South", 4, 8};
  return orchard;
}

Pin pinOf(std::uint64_t id, CrewId crew, Day day = tuesday) {
  return {{0, id}, PinKind::crewToJob, leaderTie().key, crew, day, ""};
}

Pin notBefore(std::uint64_t id, Day day) {
  return {{0, id}, PinKind::notBefore, leaderTie().key, {}, day, " wet ground "};
}

TEST(Pins, SetACrewToAJobAndAreTakenAway) {
  Orchard orchard = orchardOfCrews();
  const auto pinned = addPin(orchard, pinOf(40, north), "pruning");
  EXPECT_EQ(nameOf(pinned), "North pinned to work in Creek 1 on 6 April 2027");
  orchard = after(orchard, pinned);
  EXPECT_EQ(orchard.pins.at({0, 40}).crew, north);
  const auto gone = removePin(orchard, {0, 40});
  EXPECT_EQ(nameOf(gone), "Pin of work in Creek 1 on 6 April 2027 taken away");
  orchard = after(orchard, gone);
  EXPECT_THAT(orchard.pins, IsEmpty());
  EXPECT_THAT(said(removePin(orchard, {0, 40})),
              ElementsAre("That pin is no longer there."));
}

TEST(Pins, ACrewMayHaveTwoJobsOfADayAndAJobTwoCrews) {
  Orchard orchard = orchardOfCrews();
  orchard = after(orchard, addPin(orchard, pinOf(40, north)));
  Pin other = pinOf(41, north);
  other.task.operation = "rub-rivals";
  orchard = after(orchard, addPin(orchard, other));
  orchard = after(orchard, addPin(orchard, pinOf(42, south)));
  EXPECT_EQ(orchard.pins.size(), 3U);
  EXPECT_THAT(said(addPin(orchard, pinOf(43, north))),
              ElementsAre("The crew is pinned to this work on 6 April 2027 already."));
}

struct Against {
  std::function<void(Orchard&)> arrange;
  std::string expected;
};

class ContradictoryPin : public ::testing::TestWithParam<Against> {};

TEST_P(ContradictoryPin, IsRefusedWithWhatStandsAgainstIt) {
  Orchard orchard = orchardOfCrews();
  EXPECT_THAT(said(addPin(orchard, pinOf(40, north), "pruning")), IsEmpty());
  GetParam().arrange(orchard);
  EXPECT_THAT(said(addPin(orchard, pinOf(40, north), "pruning")),
              ElementsAre(GetParam().expected));
}

INSTANTIATE_TEST_SUITE_P(
    Deeds,
    ContradictoryPin,
    ::testing::Values(
        Against{[](Orchard& o) {
                  o.crews.at(north).daysOff = {{plusDays(tuesday, -3), tuesday}};
                },
                "day: North is off on 6 April 2027; choose another crew or day."},
        Against{[](Orchard& o) { o.crews.at(north).skills = {"tractor"}; },
                "crew: The work asks for pruning, which North is not down for; choose "
                "another crew, or add the skill to this one."},
        Against{[](Orchard& o) {
                  o.turnouts[{north, tuesday}] = {{north, tuesday}, 0};
                },
                "day: Nobody of North turned out on 6 April 2027; choose another crew."},
        Against{[](Orchard& o) { o.settings.workdays[1] = false; },
                "day: No work is done on 6 April 2027; choose another day, or say that "
                "it is worked."},
        Against{[](Orchard& o) {
                  o.workDays[tuesday] = {tuesday, 0, "snow"};
                },
                "day: No work is done on 6 April 2027 (snow); choose another day, or say "
                "that it is worked."},
        Against{[](Orchard& o) {
                  o.closures[{0, 50}] = {
                      {0, 50}, creek, tuesday, plusDays(tuesday, 1), 360, ""};
                },
                "day: Creek 1 is closed until 06:00 on 7 April 2027; choose a later "
                "day."},
        Against{[](Orchard& o) {
                  o.closures[{0, 50}] = {
                      {0, 50}, creek, plusDays(tuesday, -1), tuesday, 870, ""};
                },
                "day: Creek 1 is closed until 14:30 on 6 April 2027; choose a later "
                "day."},
        Against{[](Orchard& o) {
                  o.pins[{0, 41}] = notBefore(41, plusDays(tuesday, 1));
                },
                "day: This work is not to be begun before 7 April 2027; choose a later "
                "day, or take that pin away."},
        Against{[](Orchard& o) { o.crews.erase(north); },
                "crew: Choose a crew for this work."},
        Against{[](Orchard& o) {
                  o.plantings.erase({0, 10});
                },
                "task: That planting is no longer in the orchard."}));

TEST(Pins, ABlockThatOpensDuringTheDayCanBeWorkedThen) {
  Orchard orchard = orchardOfCrews();
  orchard.closures[{0, 50}] = {{0, 50}, creek, plusDays(tuesday, -1), tuesday, 869, ""};
  EXPECT_THAT(said(addPin(orchard, pinOf(40, north))), IsEmpty());
  EXPECT_THAT(said(addPin(orchard, pinOf(40, north, plusDays(tuesday, -1)))),
              ElementsAre(HasSubstr("closed until 14:29")));
}

TEST(Pins, NotBeforeIsReplacedByALaterWordAndStandsAgainstCrewsBefore) {
  Orchard orchard = orchardOfCrews();
  orchard = after(orchard, addPin(orchard, notBefore(40, plusDays(tuesday, -2))));
  const auto later = addPin(orchard, notBefore(41, tuesday));
  EXPECT_EQ(nameOf(later), "Work in Creek 1 not before 6 April 2027");
  orchard = after(orchard, later);
  ASSERT_EQ(orchard.pins.size(), 1U);
  EXPECT_EQ(orchard.pins.at({0, 41}).reason, "wet ground");
  orchard = after(orchard, addPin(orchard, pinOf(42, south)));
  EXPECT_THAT(said(addPin(orchard, notBefore(43, plusDays(tuesday, 1)))),
              ElementsAre("day: A crew is pinned to this work on 6 April 2027, before 7 "
                          "April 2027; take that pin away, or choose an earlier day."));
}

TEST(Closings, CloseABlockAndOpenItAgain) {
  Orchard orchard = orchardOfCrews();
  const auto closed = closeBlock(
      orchard, {{0, 50}, creek, tuesday, plusDays(tuesday, 1), 360, " spray, label "});
  EXPECT_EQ(nameOf(closed), "Creek 1 closed until 06:00 on 7 April 2027");
  orchard = after(orchard, closed);
  EXPECT_EQ(orchard.closures.at({0, 50}).reason, "spray, label");
  const auto opened = reopenBlock(orchard, {0, 50});
  EXPECT_EQ(nameOf(opened), "Creek 1 opened again");
  orchard = after(orchard, opened);
  EXPECT_THAT(orchard.closures, IsEmpty());
  EXPECT_THAT(said(reopenBlock(orchard, {0, 50})),
              ElementsAre("That closing is no longer there."));
}

TEST(Closings, FaultsAreSaidWithTheirFields) {
  const Orchard orchard = orchardOfCrews();
  const auto saidOf = [&](BlockClosure closure) {
    return said(closeBlock(orchard, closure));
  };
  EXPECT_THAT(saidOf({{}, {0, 99}, tuesday, tuesday, 360, ""}),
              ElementsAre("block: That block is no longer in the orchard."));
  EXPECT_THAT(saidOf({{}, creek, tuesday, plusDays(tuesday, -1), 1441, "a\nb"}),
              ElementsAre(HasSubstr("until: The block is closed from 6 April 2027 back"),
                          HasSubstr("untilMinute: A time of day lies between"),
                          HasSubstr("reason: Keep this on one line")));
  EXPECT_THAT(saidOf({{}, creek, tuesday, plusDays(tuesday, 367), 0, ""}),
              ElementsAre(HasSubstr("until: A block is closed for a year at most")));
  EXPECT_THAT(saidOf({{}, creek, tuesday, tuesday, 0, ""}),
              ElementsAre(HasSubstr("untilMinute: The block would open as soon")));
}

PlannedJob planned(CrewId crew, int order, RowSet rows, Day day = tuesday) {
  return {{day, crew, order}, leaderTie().key, std::move(rows), 390, 480, 6};
}

TEST(AcceptedPlans, ReplaceThatOfTheirDayAloneAndAreUndone) {
  Orchard orchard = orchardOfCrews();
  const Day next = plusDays(tuesday, 1);
  orchard = after(
      orchard, acceptPlan(orchard, next, {planned(north, 1, RowSet::range(1, 2), next)}));
  const auto first = acceptPlan(
      orchard,
      tuesday,
      {planned(south, 1, RowSet::range(5, 9)), planned(north, 1, RowSet::range(1, 4))});
  EXPECT_EQ(nameOf(first), "Plan of 6 April 2027 accepted: 2 jobs");
  orchard = after(orchard, first);
  EXPECT_EQ(orchard.plannedJobs.size(), 3U);
  const auto second =
      acceptPlan(orchard, tuesday, {planned(north, 1, RowSet::range(1, 6))});
  EXPECT_EQ(nameOf(second), "Plan of 6 April 2027 accepted: 1 job");
  Orchard settled = after(orchard, second);
  EXPECT_EQ(settled.plannedJobs.size(), 2U);
  EXPECT_EQ(settled.plannedJobs.at({tuesday, north, 1}).rows, RowSet::range(1, 6));
  auto ids = IdSource::countingFrom(900);
  apply(settled, inverted(*second, ids));
  EXPECT_EQ(settled, orchard);
}

TEST(AcceptedPlans, FaultsAreSaidWithTheirFields) {
  const Orchard orchard = orchardOfCrews();
  const auto saidOf = [&](const std::vector<PlannedJob>& jobs) {
    return said(acceptPlan(orchard, tuesday, jobs));
  };
  EXPECT_THAT(saidOf({}),
              ElementsAre("The plan of 6 April 2027 has no job, so there is none to "
                          "accept."));
  EXPECT_THAT(
      saidOf({planned({0, 99}, 1, RowSet::range(21, 22), dayOf(2027, 4, 7))}),
      ElementsAre(HasSubstr("crew: That crew is no longer"),
                  HasSubstr("day: A job of 7 April 2027 stands in the plan"),
                  HasSubstr("rows: The rows 21-22 are not all in Creek 1: Gala")));
  EXPECT_THAT(saidOf({planned(north, 1, RowSet::range(1, 2)),
                      planned(north, 1, RowSet::range(3, 4))}),
              ElementsAre(HasSubstr("order: Two jobs of the plan stand in one place")));
  PlannedJob nobody = planned(north, 1, RowSet::range(1, 2));
  nobody.workers = 0;
  EXPECT_THAT(saidOf({nobody}), ElementsAre(HasSubstr("hours: A job of the plan")));
  PlannedJob gone = planned(north, 1, RowSet::range(1, 2));
  gone.task.planting = {0, 99};
  EXPECT_THAT(saidOf({gone}), ElementsAre(HasSubstr("task: That planting is no longer")));
}

}  // namespace
}  // namespace topwire
