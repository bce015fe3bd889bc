#include "core/targets/fruit_target.h"
#include "core/targets/tree_figures.h"
#include "tests/support/builders.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace topwire {

namespace {

const TargetTables& tables() {
  return testing::shippedTables().targets;
}

Length inches(double count) {
  return Length::micrometres(std::llround(count * 25'400));
}

/// University of Massachusetts Extension (Clements), crop load guide, 2017: trunk
/// diameter in inches, and the fruit it carries where trees are prone to crop every other
/// year and where they are not.
TEST(CropLoad, PublishedTable) {
  struct Row {
    double trunk;
    int biennial;
    int annual;
  };

  constexpr Row table[] = {
      {1.00, 20, 30}, {1.25, 32, 48}, {1.50, 46, 68}, {2.00, 81, 122}};
  for (const auto& [trunk, biennial, annual] : table) {
    const double area = trunkAreaFromDiameter(inches(trunk));
    EXPECT_EQ(fruitOnTrunk(area, tables().cropLoad(true)->fruitPerCm2), biennial)
        << trunk;
    EXPECT_EQ(fruitOnTrunk(area, tables().cropLoad(false)->fruitPerCm2), annual) << trunk;
  }
}

/// Girth over pi is the diameter: 7.9 cm around are 5.0 cm² (worked example from memory
/// of extension leaflets that give 0.0796 girth²).
TEST(CropLoad, GirthSaysTheSameAsDiameter) {
  EXPECT_NEAR(trunkAreaFromGirth(Length::millimetres(79)), 4.97, 0.01);
  EXPECT_NEAR(trunkAreaFromGirth(Length::millimetres(100)), 0.0796 * 100, 0.01);
  const Length around = Length::micrometres(std::llround(38'100 * std::numbers::pi));
  EXPECT_NEAR(trunkAreaFromGirth(around),
              trunkAreaFromDiameter(Length::micrometres(38'100)),
              1e-4);
}

/// Common practice: trees that fill their space at a trunk of 1.5 in carry about 30 fruit
/// in the third leaf; strong trees keep about 15 in the second, and none any in the
/// first.
class FruitByLeafAndTrunk : public ::testing::Test {
protected:
  FruitRange keep(int leaf, Vigour vigour, double trunk) {
    Planting& planting = orchard.plantings.begin()->second;
    planting.planted = dayOf(2028 - leaf, 4, 10);
    planting.vigour = vigour;
    orchard.measurements.clear();
    Measurement taken;
    taken.planting = planting.id;
    taken.day = dayOf(2027, 2, 1);
    taken.values = {inches(trunk).inMicrometres()};
    if (trunk > 0) orchard.measurements[taken.id] = taken;
    return fruitTarget(orchard,
                       testing::shippedTables(),
                       planting,
                       Season{2027},
                       dayOf(2027, 4, 6))
        ->keep;
  }

  Orchard orchard =
      testing::orchardOfOne(testing::northernSettings(), dayOf(2025, 4, 10));
};

TEST_F(FruitByLeafAndTrunk, ThirdLeafAtAnInchAndAHalf) {
  for (const Vigour vigour : {Vigour::moderate, Vigour::strong}) {
    const FruitRange range = keep(3, vigour, 1.5);
    EXPECT_LE(range.from, 30);
    EXPECT_GE(range.to, 30);
    EXPECT_NEAR((range.from + range.to) / 2.0, 30, 3);
  }
  EXPECT_LT(keep(3, Vigour::weak, 1.5).to, 30);
}

TEST_F(FruitByLeafAndTrunk, SecondLeafStrongAndWeak) {
  const FruitRange strong = keep(2, Vigour::strong, 1.0);
  EXPECT_NEAR((strong.from + strong.to) / 2.0, 15, 2);
  EXPECT_EQ(keep(2, Vigour::weak, 1.0), (FruitRange{0, 0}));
}

TEST_F(FruitByLeafAndTrunk, FirstLeafKeepsNone) {
  for (const Vigour vigour : {Vigour::weak, Vigour::moderate, Vigour::strong})
    EXPECT_EQ(keep(1, vigour, 0.7), (FruitRange{0, 0}));
}

/// Worked from the table above: a fourth-leaf trunk of 4.5 cm carries 95 at 6 per cm².
TEST_F(FruitByLeafAndTrunk, FourthLeafWithinWhatTheTrunkCarries) {
  const FruitRange range = keep(4, Vigour::moderate, 4.5 / 2.54);
  EXPECT_LE(range.to, 95);
  EXPECT_GE(range.to, 90);
}

/// Common practice: rows 11 ft apart carry trees of 10 ft (9.9); Robinson (2020) allows
/// the row spacing itself.
TEST(MatureHeight, IsNineTenthsOfTheRowSpacing) {
  EXPECT_NEAR(matureHeight(Length::feet(11)).from.inFeet(), 9.9, 1e-9);
  EXPECT_NEAR(matureHeight(Length::feet(12)).from.inFeet(), 10.8, 1e-9);
  EXPECT_NEAR(matureHeight(Length::feet(10)).from.inFeet(), 9, 1e-9);
  EXPECT_EQ(matureHeight(Length::feet(12)).to, Length::feet(12));
}

}  // namespace

}  // namespace topwire
