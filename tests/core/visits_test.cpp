#include "core/planning/visits.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace topwire {
namespace {

using ::testing::ElementsAre;
using ::testing::SizeIs;

const DaySpan summer{dayOf(2027, 5, 1), dayOf(2027, 8, 31)};

VisitRule rule(int days, std::vector<GrowthPace> paces = {}) {
  return {days, Length::inches(15), std::move(paces)};
}

GrowthPace pace(Day from, int days, Length grown) {
  return {from, plusDays(from, days), grown};
}

std::vector<std::string> openings(const std::vector<Visit>& visits) {
  std::vector<std::string> days;
  for (const Visit& visit : visits) days.push_back(isoText(visit.days.first));
  return days;
}

TEST(Visits, followEachOtherByTheClassWhereNothingWasMeasured) {
  EXPECT_THAT(openings(visitsIn(summer, rule(28))),
              ElementsAre("2027-05-01", "2027-05-29", "2027-06-26", "2027-07-24"));
}

// 3 in a week are 15 in in 35 days: the class is quicker.
TEST(Visits, keepToTheClassWhereGrowthIsSlow) {
  const auto slow = pace(dayOf(2027, 5, 5), 7, Length::inches(3));
  EXPECT_EQ(visitsIn(summer, rule(28, {slow})), visitsIn(summer, rule(28)));
}

// 7 in a week are 15 in in 15 days.
TEST(Visits, comeSoonerWhereTheLeaderGrowsFast) {
  const auto fast = pace(dayOf(2027, 5, 5), 7, Length::inches(7));
  const auto visits = visitsIn({summer.first, dayOf(2027, 6, 25)}, rule(28, {fast}));
  EXPECT_THAT(openings(visits),
              ElementsAre("2027-05-01", "2027-05-16", "2027-05-31", "2027-06-15"));
  EXPECT_EQ(visits[1].every, 15);
  EXPECT_EQ(visits[1].growth, fast);
  EXPECT_FALSE(visits[0].growth);
  EXPECT_EQ(visits[1].days.last, dayOf(2027, 5, 30));
}

TEST(Visits, leaveThoseDueBeforeTheGrowthWasKnown) {
  const auto late = pace(dayOf(2027, 6, 20), 20, Length::inches(20));
  EXPECT_THAT(openings(visitsIn(summer, rule(28, {late}))),
              ElementsAre("2027-05-01",
                          "2027-05-29",
                          "2027-06-26",
                          "2027-07-11",
                          "2027-07-26",
                          "2027-08-10"));
}

TEST(Visits, comeAtOnceWhereGrowthIsKnownPastItsTime) {
  const auto late = pace(dayOf(2027, 5, 10), 12, Length::inches(20));
  EXPECT_EQ(visitsIn(summer, rule(28, {late}))[1].days.first, dayOf(2027, 5, 22));
}

TEST(Visits, goBackToTheClassWhereTheLeaderStandsStill) {
  const auto fast = pace(dayOf(2027, 5, 1), 10, Length::inches(10));
  const auto still = pace(dayOf(2027, 5, 11), 10, Length{});
  const auto visits = visitsIn(summer, rule(28, {fast, still}));
  EXPECT_EQ(openings(visits)[1], "2027-05-16");
  EXPECT_EQ(openings(visits)[2], "2027-06-13");
  EXPECT_FALSE(visits[2].growth);
}

TEST(Visits, lieAWeekApartAtTheLeastUnlessTheClassAsksForMore) {
  const auto rampant = pace(dayOf(2027, 5, 1), 2, Length::inches(20));
  EXPECT_EQ(visitsIn(summer, rule(28, {rampant}))[1].every, 7);
  EXPECT_EQ(visitsIn(summer, rule(4, {rampant}))[1].every, 4);
}

TEST(Visits, areOneWhereTheWindowIsShort) {
  EXPECT_THAT(visitsIn({summer.first, summer.first}, rule(28)), SizeIs(1));
}

/// The window's length with half an interval, over the interval: what a remainder under
/// half an interval amounts to where intervals are even.
RC_GTEST_PROP(VisitsOfOneInterval, fillTheWindow, ()) {
  const int days = *rc::gen::inRange(1, 60);
  const int length = *rc::gen::inRange(1, 400);
  const DaySpan window{summer.first, plusDays(summer.first, length - 1)};
  const auto visits = visitsIn(window, rule(days));
  RC_ASSERT(static_cast<int>(visits.size()) == std::max(1, (length + days / 2) / days));
  RC_ASSERT(visits.front().days.first == window.first);
  RC_ASSERT(visits.back().days.last == window.last);
  for (std::size_t i = 1; i < visits.size(); ++i)
    RC_ASSERT(daysBetween(visits[i - 1].days.last, visits[i].days.first) == 1);
}

TEST(DaysToGrow, roundDownAndAreNoneForATreeThatStandsStill) {
  const Day from = dayOf(2027, 6, 1);
  EXPECT_EQ(daysToGrow(Length::inches(15), pace(from, 10, Length::inches(11))), 13);
  EXPECT_EQ(daysToGrow(Length::inches(15), pace(from, 10, Length{})), std::nullopt);
  EXPECT_EQ(daysToGrow(Length::metres(90'000), pace(from, 360, Length::micrometres(1))),
            36'500);
  EXPECT_EQ(daysToGrow(Length::inches(15), pace(from, 10, Length::inches(-1))),
            std::nullopt);
}

}  // namespace
}  // namespace topwire
