#include "core/calendar/day.h"
#include "core/weather/degree_days.h"

#include <gsl/gsl_integration.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <map>
#include <memory>
#include <numbers>
#include <random>
#include <sstream>
#include <string>

namespace topwire {

namespace {

struct ZalomRow {
  DayExtremes day;
  double nextMinimum;
  double singleTriangle;
  double doubleTriangle;
  double singleSine;
  double doubleSine;
};

/// Zalom, Goodell, Wilson, Barnett and Bentley 1983, Degree-days: the calculation and use
/// of heat units in pest management, University of California leaflet 21373, table 7:
/// degrees F, thresholds 55 and 90, horizontal cutoff. The seventh row's double triangle
/// is printed as 24.88; its own formula gives 27.125, and the leaflet's other columns
/// agree with that row's temperatures, so it is taken for a misprint.
constexpr ZalomRow zalomTable7[] = {{{96, 110}, 91, 35.00, 35.00, 35.00, 35.00},
                                    {{45, 54}, 38, 0, 0, 0, 0},
                                    {{60, 80}, 75, 15.00, 18.75, 15.00, 18.75},
                                    {{75, 88}, 60, 26.50, 22.75, 26.50, 22.75},
                                    {{50, 82}, 45, 11.39, 10.62, 11.85, 11.31},
                                    {{45, 70}, 50, 4.50, 5.06, 5.31, 5.70},
                                    {{60, 100}, 75, 23.75, 27.125, 22.82, 26.26},
                                    {{75, 95}, 60, 29.38, 25.76, 28.91, 25.30},
                                    {{50, 101}, 48, 19.56, 19.19, 18.95, 18.69},
                                    {{48, 95}, 50, 16.76, 17.13, 16.96, 17.23}};

TEST(DegreeDayMethods, ZalomTable7) {
  constexpr Thresholds limits{55, 90, Cutoff::horizontal};
  constexpr double printed = 0.0051;
  for (const ZalomRow& row : zalomTable7) {
    SCOPED_TRACE(std::to_string(row.day.minimum) + " " + std::to_string(row.day.maximum));
    EXPECT_NEAR(singleTriangle(row.day, limits), row.singleTriangle, printed);
    EXPECT_NEAR(
        doubleTriangle(row.day, row.nextMinimum, limits), row.doubleTriangle, printed);
    EXPECT_NEAR(singleSine(row.day, limits), row.singleSine, printed);
    EXPECT_NEAR(doubleSine(row.day, row.nextMinimum, limits), row.doubleSine, printed);
  }
}

/// McMaster and Wilhelm 1997, Growing degree-days: one equation, two interpretations,
/// Agricultural and Forest Meteorology 87:291, table 1, base 0 degrees C.
TEST(DegreeDayMethods, McMasterAndWilhelmTable1) {
  struct Row {
    double maximum;
    double minimum;
    double method1;
    double method2;
  };

  constexpr Row table[] = {{20, 10, 15, 15},
                           {10, 1, 5.5, 5.5},
                           {8, -2, 3, 4},
                           {6, 0, 3, 3},
                           {10, 5, 7.5, 7.5},
                           {5, -5, 0, 2.5},
                           {-2, -7, 0, 0},
                           {-5, -10, 0, 0},
                           {10, -2, 4, 5},
                           {15, 2, 8.5, 8.5}};
  for (const Row& row : table) {
    const DayExtremes day{row.minimum, row.maximum};
    EXPECT_DOUBLE_EQ(simpleAverage(day, 0), row.method1) << row.maximum;
    EXPECT_DOUBLE_EQ(modifiedAverage(day, 0, 100), row.method2) << row.maximum;
  }
}

/// Western Regional Climate Center's and University of California IPM's own examples.
TEST(DegreeDayMethods, AveragesOfTheServicesOwnExamples) {
  EXPECT_DOUBLE_EQ(simpleAverage({51, 95}, 60), 13);
  EXPECT_DOUBLE_EQ(simpleAverage({64, 64}, 53), 11);
}

/// Worked from the four formulas apart from this program, to four decimals.
TEST(DegreeDayMethods, FourMethodsOnOneDay) {
  struct Row {
    double base;
    DayExtremes day;
    double average;
    double modified;
    double triangle;
    double sine;
  };

  constexpr Row table[] = {{6.1, {0, 10}, 0, 1.95, 0.7605, 1.0802},
                           {6.1, {2, 14}, 1.9, 3.95, 2.6004, 2.9564},
                           {6.1, {-3, 9}, 0, 1.45, 0.3504, 0.6210},
                           {6.1, {5, 15}, 3.9, 4.45, 3.9605, 4.0566},
                           {4.4, {-5, 6}, 0, 0.8, 0.1164, 0.2629},
                           {10, {4, 20}, 2, 5, 3.125, 3.6265}};
  for (const Row& row : table) {
    EXPECT_NEAR(simpleAverage(row.day, row.base), row.average, 5.1e-5);
    EXPECT_NEAR(modifiedAverage(row.day, row.base, 100), row.modified, 5.1e-5);
    EXPECT_NEAR(singleTriangle(row.day, {row.base}), row.triangle, 5.1e-5);
    EXPECT_NEAR(singleSine(row.day, {row.base}), row.sine, 5.1e-5);
  }
}

/// The integral of `function` over [0, 1] by GSL's adaptive quadrature, in pieces: in one
/// stretch its estimate of the remaining difference overlooks a kink near an end.
double integral(const std::function<double(double)>& function) {
  constexpr std::size_t limit = 2000;
  constexpr int pieces = 50;
  const std::unique_ptr<gsl_integration_workspace, void (*)(gsl_integration_workspace*)>
      workspace{gsl_integration_workspace_alloc(limit), gsl_integration_workspace_free};
  const gsl_function integrand{
      [](double at, void* f) {
        return (*static_cast<const std::function<double(double)>*>(f))(at);
      },
      const_cast<std::function<double(double)>*>(&function)};
  double sum = 0;
  for (int piece = 0; piece < pieces; ++piece) {
    double part = 0;
    double bound = 0;
    gsl_integration_qag(&integrand,
                        double{1} * piece / pieces,
                        double{1} * (piece + 1) / pieces,
                        1e-8,
                        0,
                        limit,
                        GSL_INTEG_GAUSS21,
                        workspace.get(),
                        &part,
                        &bound);
    sum += part;
  }
  return sum;
}

/// What a moment at `temperature` counts, from the cutoffs' definitions.
double rate(double temperature, Thresholds limits) {
  const double over = std::max(0.0, temperature - limits.upper);
  const double heat = std::max(0.0, temperature - limits.lower);
  switch (limits.cutoff) {
    case Cutoff::none:
      return heat;
    case Cutoff::horizontal:
      return heat - over;
    case Cutoff::intermediate:
      return heat - 2 * over;
    case Cutoff::vertical:
      return over > 0 ? 0 : heat;
  }
  return 0;
}

/// Half a day's course, minimum at 0 to maximum at 1; the other half mirrors it.
double onTriangle(DayExtremes day, double at) {
  return day.minimum + (day.maximum - day.minimum) * at;
}

double onSine(DayExtremes day, double at) {
  const double half = (day.maximum - day.minimum) / 2;
  return day.minimum + half * (1 + std::sin(std::numbers::pi * (at - 0.5)));
}

constexpr Cutoff allCutoffs[] = {
    Cutoff::none, Cutoff::horizontal, Cutoff::intermediate, Cutoff::vertical};

TEST(DegreeDayMethods, AgreeWithNumericIntegrationOfTheDaysCourse) {
  std::mt19937 random{1983};  // NOLINT(cert-msc51-cpp): the same days in every run
  std::uniform_real_distribution<double> coldest{-12, 32};
  std::uniform_real_distribution<double> span{0.5, 24};
  for (int i = 0; i < 150; ++i) {
    const double minimum = coldest(random);
    const DayExtremes day{minimum, minimum + span(random)};
    for (const Cutoff cutoff : allCutoffs) {
      // A vertical cutoff makes the integrand jump, which quadrature may miss by a
      // sliver.
      const double tolerance = cutoff == Cutoff::vertical ? 2e-3 : 1e-5;
      const Thresholds limits{6.1, 28, cutoff};
      SCOPED_TRACE(std::to_string(day.minimum) + " " + std::to_string(day.maximum)
                   + " cutoff " + std::to_string(static_cast<int>(cutoff)));
      EXPECT_NEAR(singleTriangle(day, limits),
                  integral([&](double at) { return rate(onTriangle(day, at), limits); }),
                  tolerance);
      EXPECT_NEAR(singleSine(day, limits),
                  integral([&](double at) { return rate(onSine(day, at), limits); }),
                  tolerance);
    }
  }
}

/// Sums above 6.1 degrees C by single sine to day 120 at Klein-Altendorf, worked from the
/// record of the University of Bonn (A. Kunz, M. Blanke and co-workers) by another
/// program. The record is open data kept beside the project, not in it.
TEST(DegreeDayMethods, SpringSumsOfARealRecord) {
  std::ifstream file{TOPWIRE_SOURCE_DIR
                     "/../shared/data/daily_temperature_1998_2010.csv"};
  if (!file) GTEST_SKIP() << "the daily record is not beside this copy of the project";
  std::map<int, double> sums;
  std::string line;
  std::getline(file, line);
  while (std::getline(file, line)) {
    const Day day = parseDay(line.substr(0, 10)).value();
    std::istringstream values{line.substr(11)};
    DayExtremes range{};
    char comma = 0;
    values >> range.minimum >> comma >> range.maximum;
    if (dayOfYear(day) <= 120) sums[yearOf(day)] += singleSine(range, {6.1});
  }
  constexpr double expected[] = {
      276.6, 242.1, 250.6, 187.3, 325.1, 290.9, 285.4, 295.9, 182.9, 353.9};
  int year = 1998;
  for (const double sum : expected) {
    EXPECT_NEAR(sums[year], sum, 0.06) << year;
    ++year;
  }
}

}  // namespace

}  // namespace topwire
