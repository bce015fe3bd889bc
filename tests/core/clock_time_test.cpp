#include "core/calendar/clock_time.h"

#include <gtest/gtest.h>

namespace topwire {
namespace {

TEST(ClockTime, EveryMinuteOfADayIsReadAsItIsWritten) {
  for (int minute = 0; minute <= 1440; ++minute)
    EXPECT_EQ(parseClock(clockText(minute)), minute) << clockText(minute);
}

TEST(ClockTime, IsWrittenWithFourDigits) {
  EXPECT_EQ(clockText(0), "00:00");
  EXPECT_EQ(clockText(390), "06:30");
  EXPECT_EQ(clockText(1440), "24:00");
}

TEST(ClockTime, TakesAnHourOfOneDigit) {
  EXPECT_EQ(parseClock("6:05"), 365);
}

TEST(ClockTime, AnythingElseIsRefused) {
  for (const char* bad : {"",
                          ":",
                          "6",
                          "630",
                          "6:5",
                          "06:60",
                          "24:01",
                          "25:00",
                          "-1:00",
                          "6:3a",
                          " 6:30",
                          "006:30",
                          "6:30 ",
                          "99999999999:00"})
    EXPECT_EQ(parseClock(bad), std::nullopt) << bad;
}

}  // namespace
}  // namespace topwire
