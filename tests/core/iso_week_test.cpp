#include "core/calendar/iso_week.h"

#include <gtest/gtest.h>

namespace topwire {

namespace {

TEST(IsoWeek, RunsFromMondayToSunday) {
  const DaySpan days = daysOf({2027, 14});
  EXPECT_EQ(isoText(days.first), "2027-04-05");
  EXPECT_EQ(isoText(days.last), "2027-04-11");
  EXPECT_EQ(isoWeekday(days.first), 1);
  EXPECT_EQ(isoWeekday(days.last), 7);
}

TEST(IsoWeek, LongYearsHaveFiftyThree) {
  for (const int year : {2004, 2009, 2015, 2020, 2026, 2032})
    EXPECT_EQ(isoWeeksInYear(year), 53) << year;
  for (const int year : {2008, 2019, 2021, 2025, 2027, 2028})
    EXPECT_EQ(isoWeeksInYear(year), 52) << year;
}

TEST(IsoWeek, NeighboursMeetAcrossTheYear) {
  EXPECT_EQ(nextWeek({2026, 53}), (IsoWeek{2027, 1}));
  EXPECT_EQ(previousWeek({2027, 1}), (IsoWeek{2026, 53}));
  EXPECT_EQ(nextWeek({2027, 52}), (IsoWeek{2028, 1}));
}

TEST(IsoWeek, ReadsItsOwnFormAndNothingElse) {
  struct Row {
    const char* text;
    std::optional<IsoWeek> week;
  };

  const Row rows[] = {{"2027-W14", IsoWeek{2027, 14}},
                      {"2026-W53", IsoWeek{2026, 53}},
                      {"2027-W01", IsoWeek{2027, 1}},
                      {"2027-W53", {}},
                      {"2027-W00", {}},
                      {"2027-W 4", {}},
                      {"2027-W+4", {}},
                      {"2027-w04", {}},
                      {"2027-W4", {}},
                      {"2027W14", {}},
                      {"2027-W014", {}},
                      {" 027-W14", {}},
                      {"+027-W14", {}},
                      {"0000-W14", {}},
                      {"2027-W14 ", {}},
                      {"", {}}};
  for (const auto& [text, week] : rows)
    EXPECT_EQ(parseIsoWeek(text), week) << '"' << text << '"';
}

TEST(IsoWeek, TextIsReadBackAsTheSameWeek) {
  for (IsoWeek week{2019, 50}; week < IsoWeek{2033, 3}; week = nextWeek(week))
    ASSERT_EQ(parseIsoWeek(isoText(week)), week) << isoText(week);
}

TEST(IsoWeekDeathTest, AWeekTheYearLacksBreaksTheContract) {
  EXPECT_DEATH(mondayOf({2027, 53}), "contract broken");
}

}  // namespace

}  // namespace topwire
