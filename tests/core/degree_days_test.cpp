#include "core/weather/degree_days.h"

#include <gtest/gtest.h>

namespace topwire {

namespace {

constexpr double base = 6.1;
constexpr double hot = 30;

TEST(DegreeDays, ACrossedMinimumAndMaximumAreSwapped) {
  const DayExtremes day{2, 14};
  const DayExtremes crossed{14, 2};
  const Thresholds limits{base, 12, Cutoff::horizontal};
  EXPECT_DOUBLE_EQ(singleSine(crossed, limits), singleSine(day, limits));
  EXPECT_DOUBLE_EQ(singleTriangle(crossed, limits), singleTriangle(day, limits));
  EXPECT_DOUBLE_EQ(doubleSine(crossed, 5, limits), doubleSine(day, 5, limits));
  EXPECT_DOUBLE_EQ(modifiedAverage(crossed, base, hot), modifiedAverage(day, base, hot));
}

TEST(DegreeDays, NothingBelowTheThresholdAndTheMeanAboveIt) {
  for (const auto method : {singleSine, singleTriangle}) {
    EXPECT_EQ(method({-4, 6.1}, {base}), 0);
    EXPECT_DOUBLE_EQ(method({6.1, 16.1}, {base}), 5);
    EXPECT_DOUBLE_EQ(method({10.1, 10.1}, {base}), 4);
    EXPECT_EQ(method({6.1, 6.1}, {base}), 0);
  }
}

TEST(DegreeDays, ADayHotThroughoutCountsByItsCutoff) {
  const DayExtremes day{32, 36};
  for (const auto method : {singleSine, singleTriangle}) {
    EXPECT_DOUBLE_EQ(method(day, {10}), 24);
    EXPECT_DOUBLE_EQ(method(day, {10, hot, Cutoff::horizontal}), 20);
    EXPECT_DOUBLE_EQ(method(day, {10, hot, Cutoff::intermediate}), 16);
    EXPECT_NEAR(method(day, {10, hot, Cutoff::vertical}), 0, 1e-12);
  }
}

TEST(DegreeDays, ACutoffThatIsNotReachedChangesNothing) {
  const DayExtremes day{1, 29};
  for (const Cutoff cutoff :
       {Cutoff::horizontal, Cutoff::intermediate, Cutoff::vertical}) {
    EXPECT_DOUBLE_EQ(singleSine(day, {base, hot, cutoff}), singleSine(day, {base}));
    EXPECT_DOUBLE_EQ(singleTriangle(day, {base, hot, cutoff}),
                     singleTriangle(day, {base}));
  }
}

TEST(DegreeDays, TwoHalvesWithOneMinimumAreTheWholeDay) {
  const Thresholds limits{base, 12, Cutoff::vertical};
  EXPECT_DOUBLE_EQ(doubleSine({2, 14}, 2, limits), singleSine({2, 14}, limits));
  EXPECT_DOUBLE_EQ(doubleTriangle({2, 14}, 2, limits), singleTriangle({2, 14}, limits));
}

TEST(DegreeDays, TheSecondHalfFallsToTomorrowsMinimum) {
  EXPECT_GT(doubleSine({2, 14}, 6, {base}), singleSine({2, 14}, {base}));
  EXPECT_LT(doubleSine({2, 14}, -2, {base}), singleSine({2, 14}, {base}));
}

TEST(DegreeDaysDeathTest, ACutoffAtOrBelowTheThresholdBreaksTheContract) {
  EXPECT_DEATH(singleSine({2, 14}, {10, 10, Cutoff::horizontal}), "contract broken");
  EXPECT_DEATH(modifiedAverage({2, 14}, 10, 8), "contract broken");
}

}  // namespace

}  // namespace topwire
