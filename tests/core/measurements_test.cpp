#include "core/orchard/measurements.h"

#include "tests/support/builders.h"
#include "tests/support/measuring.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::IsEmpty;
using ::testing::SizeIs;

const Day today = dayOf(2027, 4, 6);
constexpr PlantingId gala{0, 2};

Orchard north() {
  return orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
}

TEST(Measurements, takesTheLastOneUpToTheDay) {
  Orchard orchard = north();
  measure(orchard, gala, Measure::leaderHeight, dayOf(2027, 3, 1), {2'000'000});
  measure(orchard, gala, Measure::leaderHeight, dayOf(2026, 3, 1), {1'000'000});
  measure(orchard, gala, Measure::leaderHeight, dayOf(2027, 4, 7), {3'000'000});
  EXPECT_EQ(latest(orchard, gala, Measure::leaderHeight, today)->day, dayOf(2027, 3, 1));
  EXPECT_EQ(latest(orchard, gala, Measure::leaderHeight, dayOf(2026, 2, 1)), nullptr);
  EXPECT_EQ(latest(orchard, gala, Measure::spaceFilled, today), nullptr);
  EXPECT_EQ(latest(orchard, PlantingId{0, 9}, Measure::leaderHeight, today), nullptr);
}

TEST(Measurements, takesTheMeanOfTheSampleTrees) {
  Measurement measurement;
  EXPECT_FALSE(meanOf(measurement));
  measurement.values = {30, 31, 35};
  EXPECT_DOUBLE_EQ(*meanOf(measurement), 32);
}

TEST(Measurements, leavesOutThoseWithoutValues) {
  Orchard orchard = north();
  measure(orchard, gala, Measure::trunkGirth, today, {});
  EXPECT_THAT(measurementsOf(orchard, gala), IsEmpty());
  measure(orchard, gala, Measure::trunkGirth, today, {100'000});
  EXPECT_THAT(measurementsOf(orchard, gala), SizeIs(1));
}

// A girth of 7.9 cm and a diameter of 2.5 cm stand in one row of the table of trunk areas
// (derived in the trade notes from the circle's formula).
TEST(Measurements, readsATrunksDiameterFromItsGirth) {
  Orchard orchard = north();
  const Planting& planting = orchard.plantings.at(gala);
  EXPECT_FALSE(trunkDiameter(orchard, planting, today));
  measure(orchard, gala, Measure::trunkGirth, dayOf(2027, 3, 1), {78'000, 80'000});
  EXPECT_NEAR(trunkDiameter(orchard, planting, today)->inMetres(), 0.025, 0.0002);
}

TEST(Measurements, takesTheLaterOfGirthAndDiameterAndOnOneDayTheOneAskedFor) {
  Orchard orchard = north();
  const Planting& planting = orchard.plantings.at(gala);
  measure(orchard, gala, Measure::trunkDiameter, dayOf(2026, 3, 1), {20'000});
  measure(orchard, gala, Measure::trunkGirth, dayOf(2027, 3, 1), {94'248});
  EXPECT_EQ(trunkDiameter(orchard, planting, today), Length::millimetres(30));
  measure(orchard, gala, Measure::trunkDiameter, dayOf(2027, 3, 1), {31'000});
  measure(orchard, gala, Measure::trunkGirth, dayOf(2027, 3, 1), {90'000});
  EXPECT_EQ(trunkDiameter(orchard, planting, today), Length::millimetres(31));
  const auto girth = lastMean(
      measurementsOf(orchard, gala), Measure::trunkGirth, {dayOf(2027, 1, 1), today});
  EXPECT_EQ(girth, (MeasuredMean{90'000, dayOf(2027, 3, 1)}));
}

TEST(Measurements, takesTheHighestWireOrTheUsualHeight) {
  Block block;
  EXPECT_EQ(topWireOf(block), Length::feet(10));
  block.wires = {Length::feet(3), Length::feet(9), Length::feet(6)};
  EXPECT_EQ(topWireOf(block), Length::feet(9));
}

}  // namespace
}  // namespace topwire
