#include "core/weather/normals.h"

#include "tests/support/builders.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>
#include <string>

namespace topwire {

namespace {

const MonthlyNormals& normalsOf(const std::string& station) {
  return testing::shippedTables().station(station)->normals;
}

TEST(DailyFromMonthly, EachMonthKeepsItsMean) {
  for (const int year : {2027, 2028})
    for (const Station& station : testing::shippedTables().stations) {
      const auto days = dailyFromMonthly(station.normals.minimum, year);
      ASSERT_EQ(days.size(), year == 2028 ? 366U : 365U);
      auto day = days.begin();
      for (unsigned month = 1; month <= 12; ++month) {
        const Day first = dayOf(year, month, 1);
        const int length = daysBetween(first, plusMonthsCapToMonthEnd(first, 1));
        const double sum = std::accumulate(day, day + length, 0.0);
        EXPECT_NEAR(sum / length, station.normals.minimum[month - 1], 1e-9)
            << station.name << " " << month;
        day += length;
      }
    }
}

TEST(DailyFromMonthly, DaysRunOnWithoutStepsAndAcrossNewYear) {
  const auto days = dailyFromMonthly(normalsOf("Penticton").maximum, 2027);
  for (std::size_t i = 0; i < days.size(); ++i)
    EXPECT_LT(std::abs(days[(i + 1) % days.size()] - days[i]), 0.35) << i;
}

TEST(DailyFromMonthly, AYearWithoutSeasonsIsFlat) {
  std::array<double, 12> same{};
  same.fill(7.5);
  for (const double day : dailyFromMonthly(same, 2028)) EXPECT_NEAR(day, 7.5, 1e-9);
}

/// ISO 2533:1975, standard atmosphere: 6.5 K per kilometre.
TEST(LapseCorrection, AKilometreUpIsSixAndAHalfDegreesColder) {
  EXPECT_NEAR(lapseCorrection(Length::metres(1450), Length::metres(450)), -6.5, 1e-9);
  EXPECT_NEAR(lapseCorrection(Length::metres(250), Length::metres(450)), 1.3, 1e-9);
  EXPECT_EQ(lapseCorrection(Length::metres(450), Length::metres(450)), 0);
}

TEST(ExpectedDegreeDays, WithoutScatterItIsThePlainDay) {
  EXPECT_DOUBLE_EQ(expectedDegreeDays({0, 10}, 6.1, 0), singleSine({0, 10}, {6.1}));
}

TEST(ExpectedDegreeDays, ScatterAddsHeatOnlyWhereTheThresholdCuts) {
  EXPECT_GT(expectedDegreeDays({-2, 4}, 6.1, 4), 0);
  EXPECT_EQ(singleSine({-2, 4}, {6.1}), 0);
  EXPECT_NEAR(expectedDegreeDays({18, 30}, 6.1, 4), 17.9, 1e-9);
}

double sumOfNormals(const std::string& station, Day last, double base, double scatter) {
  const auto minimum = dailyFromMonthly(normalsOf(station).minimum, yearOf(last));
  const auto maximum = dailyFromMonthly(normalsOf(station).maximum, yearOf(last));
  double sum = 0;
  for (std::size_t i = 0; i < static_cast<std::size_t>(dayOfYear(last)); ++i)
    sum += expectedDegreeDays({minimum[i], maximum[i]}, base, scatter);
  return sum;
}

struct Sums {
  const char* station;
  double base;
  double scatter;
  double march;
  double april;
  double may;
};

/// Sums from 1 January to the month's end, worked from the same normals by another
/// program; the true sums of the daily records, 1991-2020, are 111, 245 and 479 at
/// Klein-Altendorf and 350, 598 and 978 at Zaragoza above 6.1 degrees.
constexpr Sums sums[] = {{"Klein-Altendorf", 6.1, 0, 52, 174, 404},
                         {"Klein-Altendorf", 6.1, 4, 104, 241, 478},
                         {"Klein-Altendorf", 6.1, 3, 82, 213, 447},
                         {"Klein-Altendorf", 4.0, 0, 118, 294, 589},
                         {"Klein-Altendorf", 4.0, 4, 183, 370, 668},
                         {"Zaragoza", 6.1, 0, 316, 561, 943},
                         {"Zaragoza", 6.1, 4, 363, 613, 996},
                         {"Zaragoza", 6.1, 3, 343, 591, 974},
                         {"Meknes", 6.1, 0, 526, 808, 1214},
                         {"Meknes", 6.1, 4, 560, 845, 1251},
                         {"Meknes", 6.1, 3, 547, 830, 1236}};

TEST(ExpectedDegreeDays, SpringSumsAgreeWithAnotherProgram) {
  for (const Sums& row : sums) {
    SCOPED_TRACE(std::string{row.station} + " " + std::to_string(row.base) + " "
                 + std::to_string(row.scatter));
    const auto sum = [&row](Day last) {
      return sumOfNormals(row.station, last, row.base, row.scatter);
    };
    EXPECT_NEAR(sum(dayOf(2027, 3, 31)), row.march, 2.5);
    EXPECT_NEAR(sum(dayOf(2027, 4, 30)), row.april, 2.5);
    EXPECT_NEAR(sum(dayOf(2027, 5, 31)), row.may, 2.5);
  }
}

}  // namespace

}  // namespace topwire
