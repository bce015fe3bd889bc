#include "core/calendar/iso_week.h"

#include <gtest/gtest.h>

#include <ctime>

namespace topwire {

namespace {

struct Example {
  const char* day;
  const char* week;
};

/// Around New Year: ISO 8601:2004 gives the days of 2008, 2010 and 1985 as examples; the
/// others are common practice.
constexpr Example examples[] = {{"2008-12-29", "2009-W01"},
                                {"2010-01-03", "2009-W53"},
                                {"2005-01-01", "2004-W53"},
                                {"2005-01-02", "2004-W53"},
                                {"2007-01-01", "2007-W01"},
                                {"1985-04-12", "1985-W15"}};

TEST(Iso8601, Examples) {
  for (const auto& [day, week] : examples)
    EXPECT_EQ(isoText(isoWeekOf(parseDay(day).value())), week) << day;
}

/// The C library's own count of ISO weeks (%G and %V of strftime), by a path that shares
/// nothing with ours.
std::string weekOfTheCLibrary(Day day) {
  const std::time_t seconds = std::time_t{86'400} * day.time_since_epoch().count();
  std::tm parts{};
  gmtime_r(&seconds, &parts);
  char text[16];
  std::strftime(text, sizeof text, "%G-W%V", &parts);
  return text;
}

TEST(Iso8601, EveryDayFrom1900To2100AgreesWithTheCLibrary) {
  int days = 0;
  for (Day day = dayOf(1900, 1, 1); day <= dayOf(2100, 12, 31); day += Days{1}, ++days)
    ASSERT_EQ(isoText(isoWeekOf(day)), weekOfTheCLibrary(day)) << isoText(day);
  EXPECT_EQ(days, 73'414);
}

/// From the definition: a week belongs to the year of its Thursday, and is numbered by
/// how many Thursdays that year has had.
TEST(Iso8601, EveryDayFrom1900To2100AgreesWithTheDefinition) {
  for (Day day = dayOf(1900, 1, 1); day <= dayOf(2100, 12, 31); day += Days{1}) {
    const Day thursday = plusDays(day, 4 - isoWeekday(day));
    const IsoWeek week{yearOf(thursday), (dayOfYear(thursday) - 1) / 7 + 1};
    ASSERT_EQ(isoWeekOf(day), week) << isoText(day);
  }
}

}  // namespace

}  // namespace topwire
