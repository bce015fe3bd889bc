#include "tests/support/builders.h"

#include <gtest/gtest.h>

namespace topwire {

namespace {

struct Filled {
  Orchard orchard =
      testing::orchardOfOne(testing::northernSettings(), dayOf(2022, 4, 10));
  Planting& host = orchard.plantings.begin()->second;

  Planting& fill(std::uint64_t id, const std::string& rows, int trees) {
    Planting made = testing::planting(id, orchard.blocks.begin()->second, {});
    made.kind = PlantingKind::replant;
    made.rows = parseRows(rows).rows;
    made.trees = trees;
    made.treesPerRow.reset();
    return orchard.plantings[made.id] = made;
  }
};

TEST(ReplantedTrees, standInPlacesOfTheirHost) {
  Filled filled;
  const Planting& replant = filled.fill(7, "3-4", 21);
  EXPECT_EQ(treesIn(filled.orchard, replant), 21);
  EXPECT_EQ(treesIn(filled.orchard, filled.host), 1000 - 21);
  EXPECT_DOUBLE_EQ(placesPerRow(filled.orchard, filled.host), 100);
  EXPECT_DOUBLE_EQ(treesPerRow(filled.orchard, filled.host), 97.9);
}

TEST(ReplantedTrees, areTakenOffATypedTotalToo) {
  Filled filled;
  filled.host.trees = 940;
  filled.fill(7, "1-10", 40);
  EXPECT_EQ(treesIn(filled.orchard, filled.host), 900);
}

TEST(ReplantedTrees, acrossTwoHostsAreTakenOffByTheirRows) {
  Filled filled;
  filled.host.rows = parseRows("1-6").rows;
  Planting other = testing::planting(8, filled.orchard.blocks.begin()->second, {});
  other.rows = parseRows("7-10").rows;
  filled.orchard.plantings[other.id] = other;
  filled.fill(7, "6-8", 30);
  EXPECT_EQ(treesIn(filled.orchard, filled.host), 600 - 10);
  EXPECT_EQ(treesIn(filled.orchard, other), 400 - 20);
}

TEST(ReplantedTrees, neverLeaveFewerThanNone) {
  Filled filled;
  filled.fill(7, "1-10", 1200);
  EXPECT_EQ(treesIn(filled.orchard, filled.host), 0);
}

TEST(ReplantedTrees, elsewhereTakeNothing) {
  Filled filled;
  filled.fill(7, "1-10", 40).block = {0, 99};
  EXPECT_EQ(treesIn(filled.orchard, filled.host), 1000);
}

}  // namespace

}  // namespace topwire
