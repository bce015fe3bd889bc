#include "tests/support/builders.h"
#include "tests/support/operations.h"

#include <gmock/gmock.h>

namespace topwire {

namespace {

using namespace topwire::testing;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

const Programme& wall() {
  return shippedProgrammes().at("planar-wall-apple");
}

/// Characters, not bytes, so that accents do not count double.
std::size_t lengthOf(const std::string& text) {
  return static_cast<std::size_t>(std::ranges::count_if(
      text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

/// Six uprights from two arms, 6 ft by 10 ft.
Orchard wallOrchard(const Settings& settings, Day planted) {
  Orchard orchard = orchardOfOne(settings, planted);
  orchard.blocks.begin()->second.rowSpacing = Length::feet(10);
  Planting& planting = orchard.plantings.begin()->second;
  planting.treeSpacing = Length::feet(6);
  planting.programme = wall().id;
  return orchard;
}

TEST(PlanarWall, SpeaksBothLanguagesNamesSourcesAndFitsTheSheet) {
  EXPECT_GE(wall().operations.size(), 30U);
  for (const Operation& operation : wall().operations) {
    SCOPED_TRACE(operation.id);
    EXPECT_GE(operation.source.size(), 20U);
    EXPECT_NE(operation.name.en, operation.name.es);
    EXPECT_EQ(operation.how.size(), 3U);
    EXPECT_EQ(operation.caution.en.empty(), operation.caution.es.empty());
    if (operation.secondsPerTreeAt(1) != 0) {
      EXPECT_THAT(operation.source, HasSubstr("erived"));
    }
    for (const Language language : {Language::english, Language::spanish}) {
      EXPECT_LE(lengthOf(operation.doneWhen.in(language)), 90U);
      for (const Words& line : operation.how) EXPECT_LE(lengthOf(line.in(language)), 84U);
    }
  }
}

TEST(PlanarWall, IsPlannedFromTheOrderToLeafEightInBothHemispheres) {
  const FixedForecaster forecaster;
  const Trade trade{shippedTables(), shippedProgrammes(), forecaster};
  for (const Orchard& orchard : {wallOrchard(northernSettings(), dayOf(2027, 4, 10)),
                                 wallOrchard(southernSettings(), dayOf(2027, 9, 10))}) {
    const Plan plan =
        planTasks(orchard, trade, {Season{2023}, Season{2034}}, dayOf(2023, 7, 1));
    EXPECT_THAT(plan.notes, IsEmpty());
    std::set<int> leaves;
    for (const Task& task : plan.tasks) {
      leaves.insert(task.leaf);
      EXPECT_LE(task.opens, task.closes) << task.key.operation;
    }
    EXPECT_EQ(*leaves.begin(), -3);
    for (int leaf = -1; leaf <= 8; ++leaf) EXPECT_TRUE(leaves.contains(leaf)) << leaf;
  }
}

TEST(PlanarWall, BuildsItsFrameInOrder) {
  // Trunk, arms, uprights: each waits for what carries it (common practice).
  for (const auto& [id, need] : {std::pair{"wall-head-cut", "plant"},
                                 std::pair{"wall-choose-arms", "wall-head-cut"},
                                 std::pair{"wall-arm-tie", "wall-choose-arms"},
                                 std::pair{"wall-bend-arms", "wall-arm-tie"},
                                 std::pair{"wall-set-stakes", "wall-bend-arms"},
                                 std::pair{"wall-choose-uprights", "wall-bend-arms"},
                                 std::pair{"wall-upright-tie", "wall-set-stakes"}})
    EXPECT_THAT(wall().find(id)->needs, ::testing::Contains(need)) << id;
}

TEST(PlanarWall, TakesFourTimesASingleLeadersTying) {
  // Good Fruit Grower, Lake Ontario field day 2019: about four times for four leaders.
  const Operation& single =
      *shippedProgrammes().at("tall-spindle-apple").find("leader-tie");
  for (const int leaf : {2, 4})
    EXPECT_NEAR(wall().find("wall-upright-tie")->secondsPerTreeAt(leaf),
                4.0 * single.secondsPerTreeAt(leaf),
                12);
}

TEST(PlanarWall, HasNoWorkOfAnotherTreeForm) {
  for (const char* id : {"feather-removal", "limb-bending", "leader-tie", "height-cut"})
    EXPECT_EQ(wall().find(id), nullptr) << id;
}

/// "Cuadro" is what crews call a block; "bloque" is of concrete.
TEST(ShippedProgrammes, CallABlockACuadro) {
  for (const auto& [id, programme] : shippedProgrammes())
    for (const Operation& operation : programme.operations) {
      std::string spanish =
          operation.name.es + operation.caution.es + operation.delayReason.es;
      for (const Words& line : operation.how) spanish += line.es;
      EXPECT_THAT(spanish, Not(HasSubstr("bloque"))) << operation.id;
    }
}

TEST(ShippedProgrammes, SayWhatDelayCostsOfEveryOperation) {
  for (const auto& [id, programme] : shippedProgrammes())
    for (const Operation& operation : programme.operations) {
      EXPECT_FALSE(operation.delayReason.en.empty()) << operation.id;
      EXPECT_NE(operation.delayReason.en, operation.delayReason.es) << operation.id;
      EXPECT_LE(lengthOf(operation.delayReason.es), 90U) << operation.id;
    }
}

/// Hands do not go into leaves while a block is closed after a spray.
TEST(ShippedProgrammes, KeepHandsOutWhileABlockIsClosed) {
  for (const auto& [id, programme] : shippedProgrammes())
    for (const Operation& operation : programme.operations) {
      if (operation.oncePerPlanting() || operation.leaves.front().first < 1) continue;
      if (operation.id == "chemical-thinning" || operation.id == "fence-walk") continue;
      EXPECT_TRUE(operation.avoid.contains(Avoid::spray)) << operation.id;
    }
}

}  // namespace

}  // namespace topwire
