#include "app/paper/contact_sheet.h"
#include "app/words/resources.h"

#include <gmock/gmock.h>

#include <map>

namespace topwire {

namespace {

const Programmes& shipped() {
  static const Programmes programmes = loadShipped().value().programmes;
  return programmes;
}

std::string svgOf(const Operation& operation, int leaf) {
  const auto drawing = drawingFor(operation.drawing, leaf);
  return drawing ? toSvg(*drawing, Qt::black, Qt::white).toStdString() : std::string{};
}

bool isDoneIn(const Operation& operation, int leaf) {
  for (const LeafRange& range : operation.leaves)
    if (range.contains(leaf)) return true;
  return operation.oncePerPlanting();
}

TEST(DrawingsOfProgrammes, AreThereForEachOperationInEachOfItsLeaves) {
  EXPECT_GE(shipped().size(), 2U);
  for (const auto& [id, programme] : shipped())
    for (const Operation& operation : programme.operations)
      for (int leaf = -3; leaf <= 12; ++leaf)
        if (isDoneIn(operation, leaf)) {
          EXPECT_NE(svgOf(operation, leaf), "")
              << id << ' ' << operation.id << ' ' << leaf;
        }
}

TEST(DrawingsOfProgrammes, DifferFromOperationToOperation) {
  for (const auto& [id, programme] : shipped()) {
    std::map<std::string, std::string> seen;
    for (const Operation& operation : programme.operations) {
      const auto [at, fresh] = seen.emplace(svgOf(operation, 3), operation.id);
      EXPECT_TRUE(fresh) << id << ' ' << operation.id << " as " << at->second;
    }
  }
}

/// The tree is grown up in its sixth leaf on the wall, in its seventh as a cone.
TEST(DrawingsOfProgrammes, ShowTheTreeGrowFromLeafToLeaf) {
  for (const auto& [id, programme] : shipped())
    for (const Operation& operation : programme.operations)
      for (int leaf = 1; leaf < 6; ++leaf) {
        if (operation.oncePerPlanting() || !isDoneIn(operation, leaf)
            || !isDoneIn(operation, leaf + 1))
          continue;
        EXPECT_NE(svgOf(operation, leaf), svgOf(operation, leaf + 1))
            << id << ' ' << operation.id << ' ' << leaf;
      }
}

TEST(DrawingsOfProgrammes, StandStillOnceTheTreeIsGrownUp) {
  const Operation& pruning = *shipped().at("tall-spindle-apple").find("dormant-pruning");
  EXPECT_NE(svgOf(pruning, 6), svgOf(pruning, 7));
  EXPECT_EQ(svgOf(pruning, 7), svgOf(pruning, 20));
}

TEST(DrawingsOfProgrammes, ShowAWallInTheWallsOwnProgramme) {
  const Programme& wall = shipped().at("planar-wall-apple");
  const Programme& spindle = shipped().at("tall-spindle-apple");
  for (const char* id : {"suckers", "weed-strip", "white-paint", "brush-sweep"})
    EXPECT_NE(svgOf(*wall.find(id), 3), svgOf(*spindle.find(id), 3)) << id;
  for (const char* id : {"soil-test", "lime", "row-marking"})
    EXPECT_EQ(svgOf(*wall.find(id), 0), svgOf(*spindle.find(id), 0)) << id;
}

}  // namespace

}  // namespace topwire
