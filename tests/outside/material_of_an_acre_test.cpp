#include "core/material/material_counts.h"
#include "core/material/material_list.h"
#include "tests/support/builders.h"
#include "tests/support/operations.h"

#include <gtest/gtest.h>

namespace topwire {

namespace {

using testing::planting;
using testing::shippedTables;

/// One acre (43,560 square feet) in ten rows of 363 ft, 12 ft apart, trees at 3 ft. What
/// stands on it follows from that: 43,560 / 12 = 3,630 ft of row, / 3 = 1,210 trees.
/// Posts every 33 ft: 32 to 35 ft is the published best spacing (Five most common
/// mistakes, Good Fruit Grower). Four wires: Walden Effect and Country Folks.
struct Acre {
  Orchard orchard;
  Block block = topwire::testing::block(1, "Acre", "1-10");
  Planting trees;

  Acre() {
    orchard.settings = testing::northernSettings();
    block.rowSpacing = Length::feet(12);
    block.rowLength = Length::feet(363);
    orchard.blocks[block.id] = block;
    trees = planting(2, block, dayOf(2028, 4, 10));
    trees.treesPerRow.reset();
    orchard.plantings[trees.id] = trees;
  }

  double count(Per per) const {
    return countIn(10, per, orchard, shippedTables(), trees);
  }
};

double inFeet(double metres) {
  return metres / 0.3048;
}

TEST(MaterialOfAnAcre, followsFromItsGeometry) {
  const Acre acre;
  EXPECT_NEAR(inFeet(acre.count(Per::metreOfRow)), 3630, 1e-6);
  EXPECT_NEAR(acre.count(Per::tree), 1210, 1e-9);
  EXPECT_NEAR(treesPerAcre(Length::feet(12), Length::feet(3)), 1210, 1e-9);
  EXPECT_NEAR(acre.count(Per::post), 110, 1e-9);
  EXPECT_NEAR(inFeet(acre.count(Per::metreOfWire)), 14'520, 1e-6);
  EXPECT_NEAR(acre.count(Per::rowEnd), 20, 1e-9);
}

TEST(MaterialOfAnAcre, isBoughtWithThreePercentMoreWire) {
  const Acre acre;
  Operation trellis = testing::operation(
      "trellis", testing::atPlanting(0, -30), testing::atPlanting(), {{0, 0}});
  trellis.materials = {{"wire", {"wire", "alambre"}, 1, Per::metreOfWire},
                       {"post", {"post", "poste"}, 1, Per::post},
                       {"end post", {"end post", "poste"}, 1, Per::rowEnd}};
  const Programmes programmes = testing::programmesOf({trellis});
  const testing::FixedForecaster forecaster;
  const MaterialList list = materialOfPlanting(acre.orchard,
                                               {shippedTables(), programmes, forecaster},
                                               acre.trees,
                                               dayOf(2027, 11, 25));
  const auto line = [&list](const std::string& item) {
    for (const MaterialLine& one : list.lines)
      if (one.item == item) return one;
    ADD_FAILURE() << item;
    return MaterialLine{};
  };
  EXPECT_NEAR(inFeet(line("wire").needed), 14'520, 1e-6);
  EXPECT_NEAR(inFeet(line("wire").toBuy), 14'955.6, 1e-6);
  // Rolls of 1,200 m: 14,955.6 ft are 4,558.5 m.
  EXPECT_EQ(line("wire").packs, 4);
  EXPECT_EQ(line("post").needed, 110);
  EXPECT_EQ(line("end post").needed, 20);
  EXPECT_EQ(line("tree").needed, 1210);
}

}  // namespace

}  // namespace topwire
