#include "core/planning/day_cautions.h"
#include "tests/support/builders.h"
#include "tests/support/weather.h"

#include <gtest/gtest.h>

namespace topwire {
namespace {

using namespace topwire::testing;

/// Michigan State University Extension, "Critical Spring Temperatures for Tree Fruit Bud
/// Development Stages", apples, degrees Fahrenheit, from Washington State University
/// EB0913. In FixedForecaster's year (full bloom 10 May 2027) `day` lies in the stage.
struct PublishedRow {
  const char* stage;
  Day day;
  double tenPercentKill;
  double ninetyPercentKill;
};

const PublishedRow publishedRows[] = {
    {"silver tip", dayOf(2027, 4, 2), 15, 2},
    {"green tip", dayOf(2027, 4, 10), 18, 10},
    {"half-inch green", dayOf(2027, 4, 18), 23, 15},
    {"tight cluster", dayOf(2027, 4, 26), 27, 21},
    {"first pink", dayOf(2027, 5, 4), 28, 24},
    {"full pink", dayOf(2027, 5, 6), 28, 25},
    {"first bloom", dayOf(2027, 5, 8), 28, 25},
    {"full bloom", dayOf(2027, 5, 12), 28, 25},
    {"post bloom", dayOf(2027, 5, 21), 28, 25},
};

double celsius(double fahrenheit) {
  return (fahrenheit - 32) / 1.8;
}

/// The severity of that day's frost; nothing without a frost caution.
std::optional<Severity> frostAt(Day day, double minimum) {
  Orchard orchard = orchardOfOne(northernSettings(), dayOf(2020, 4, 10));
  WeatherDay weather = mild();
  weather.minimum = minimum;
  put(orchard, day, weather);
  const Planting& planting = orchard.plantings.begin()->second;
  const Outlook outlook = FixedForecaster{}.outlook(orchard, planting, {2027}, day);
  for (const DayCaution& caution :
       cautionsFor(orchard, shippedTables(), planting, outlook, day))
    if (caution.kind == CautionKind::frost) return caution.severity;
  return std::nullopt;
}

TEST(FrostKill, AgreesWithThePublishedTable) {
  for (const PublishedRow& row : publishedRows) {
    SCOPED_TRACE(row.stage);
    const double ten = celsius(row.tenPercentKill);
    const double ninety = celsius(row.ninetyPercentKill);
    EXPECT_EQ(frostAt(row.day, ten), Severity::serious);
    EXPECT_EQ(frostAt(row.day, ninety + 0.1), Severity::serious);
    EXPECT_EQ(frostAt(row.day, ninety), Severity::grave);
    EXPECT_EQ(frostAt(row.day, ninety - 10), Severity::grave);
    EXPECT_EQ(frostAt(row.day, ten + 0.1), Severity::low);
    EXPECT_EQ(frostAt(row.day, ten + 1), Severity::low);
    EXPECT_EQ(frostAt(row.day, ten + 1.1), std::nullopt);
  }
}

}  // namespace
}  // namespace topwire
