#include "app/paper/tree_form.h"

#include <gmock/gmock.h>

namespace topwire {

namespace {

constexpr double topWire = 26;  ///< where the highest wire is drawn; y grows downwards

TEST(TreeForm, GrowsUntilItFillsItsSpace) {
  for (int leaf = 1; leaf <= 5; ++leaf) {
    EXPECT_LT(spindle(leaf).top.y(), spindle(leaf - 1).top.y()) << leaf;
    EXPECT_GE(spindle(leaf).limbs.size(), spindle(leaf - 1).limbs.size()) << leaf;
  }
  EXPECT_EQ(spindle(7).top, spindle(30).top);
  EXPECT_EQ(spindle(0).top, spindle(-3).top);
}

TEST(TreeForm, ReachesTheTopWireAboutTheEndOfTheSecondLeaf) {
  EXPECT_GT(spindle(1).top.y(), topWire);
  EXPECT_NEAR(spindle(2).top.y(), topWire, 4);
  EXPECT_LT(spindle(3).top.y(), topWire);
}

TEST(TreeForm, ThickensItsTrunk) {
  for (int leaf = 1; leaf <= 7; ++leaf)
    EXPECT_GT(spindle(leaf).stems.front().base, spindle(leaf - 1).stems.front().base);
}

/// Nothing above is longer than what is below.
TEST(TreeForm, IsACone) {
  for (int leaf = 3; leaf <= 7; ++leaf) {
    const auto reach = [&](const TreeForm::Limb& limb) {
      return std::abs(limb.tip.x() - limb.foot.x());
    };
    const TreeForm tree = spindle(leaf);
    for (std::size_t i = 2; i < tree.limbs.size(); ++i)
      EXPECT_LE(reach(tree.limbs[i]), reach(tree.limbs[i - 1])) << leaf;
  }
}

TEST(TreeForm, WallHasSixUprightsFromTheSecondLeafOn) {
  EXPECT_EQ(wallTree(0).stems.size(), 1U);
  EXPECT_EQ(wallTree(1).stems.size(), 3U);  // two arms at a slant
  for (int leaf = 2; leaf <= 6; ++leaf)
    EXPECT_EQ(wallTree(leaf).stems.size(), 9U) << leaf;
  EXPECT_GT(wallTree(2).top.y(), wallTree(3).top.y());
  EXPECT_LE(wallTree(5).top.y(), topWire);
}

TEST(TreeForm, HasAPlaceForEachHeightEvenWithoutLimbs) {
  const TreeForm whip = wallTree(0);
  EXPECT_EQ(whip.limbTip(0), whip.knee);
  EXPECT_EQ(whip.limbTip(1), whip.top);
  const TreeForm grown = spindle(5);
  EXPECT_EQ(grown.limbTip(0), grown.limbs.front().tip);
  EXPECT_EQ(grown.limbTip(1), grown.limbs.back().tip);
}

}  // namespace

}  // namespace topwire
