#include "core/orchard/orchard.h"

#include <gmock/gmock.h>

namespace topwire {

namespace {

using ::testing::ElementsAre;

Block blockNamed(std::uint64_t id, const std::string& name) {
  Block block;
  block.id = {0, id};
  block.name = name;
  block.rows = RowSet::range(1, 10);
  return block;
}

Planting plantingIn(std::uint64_t id, BlockId block, const std::string& code) {
  Planting planting;
  planting.id = {0, id};
  planting.block = block;
  planting.code = code;
  planting.rows = RowSet::range(1, 10);
  planting.planted = dayOf(2025, 4, 10);
  return planting;
}

Orchard orchardWithBlocks(const std::vector<std::string>& names) {
  Orchard orchard;
  std::uint64_t id = 0;
  for (const std::string& name : names) {
    const Block block = blockNamed(++id, name);
    orchard.blocks[block.id] = block;
  }
  return orchard;
}

std::vector<std::string> namesInOrder(const Orchard& orchard) {
  std::vector<std::string> names;
  for (const Block* block : blocksInOrder(orchard)) names.push_back(block->name);
  return names;
}

/// One block, one planting; the tests change what they are about.
struct OneOfEach {
  Orchard orchard = orchardWithBlocks({"Creek"});
  Block& block = orchard.blocks.begin()->second;
  Planting& planting = orchard.plantings[PlantingId{0, 7}] =
      plantingIn(7, block.id, "creek-gala");
};

TEST(BlocksInOrder, compareNumbersInNamesAsNumbers) {
  const auto orchard =
      orchardWithBlocks({"Creek 10", "creek 2", "Creek 1", "Alder", "10"});
  EXPECT_THAT(namesInOrder(orchard),
              ElementsAre("10", "Alder", "Creek 1", "creek 2", "Creek 10"));
}

TEST(BlocksInOrder, compareNumbersTooLongForAnInteger) {
  const auto orchard = orchardWithBlocks(
      {"B 123456789012345678901", "B 99999999999999999999", "B 007", "B 8"});
  EXPECT_THAT(
      namesInOrder(orchard),
      ElementsAre("B 007", "B 8", "B 99999999999999999999", "B 123456789012345678901"));
}

TEST(BlocksInOrder, putAShorterNameFirst) {
  EXPECT_THAT(namesInOrder(orchardWithBlocks({"Creek 1 east", "Creek 1", "Creek"})),
              ElementsAre("Creek", "Creek 1", "Creek 1 east"));
}

TEST(PlantingsOf, areMainThenPollinizerThenReplantByFirstRow) {
  Orchard orchard = orchardWithBlocks({"Creek", "Hill"});
  const BlockId creek{0, 1};
  const auto add = [&](std::uint64_t id, PlantingKind kind, int firstRow) {
    Planting planting = plantingIn(id, creek, "p" + std::to_string(id));
    planting.kind = kind;
    planting.rows = RowSet::range(firstRow, firstRow + 1);
    orchard.plantings[planting.id] = planting;
  };
  add(1, PlantingKind::replant, 1);
  add(2, PlantingKind::pollinizer, 3);
  add(3, PlantingKind::main, 9);
  add(4, PlantingKind::main, 5);
  orchard.plantings[{0, 5}] = plantingIn(5, BlockId{0, 2}, "elsewhere");

  std::vector<std::string> codes;
  for (const Planting* planting : plantingsOf(orchard, creek))
    codes.push_back(planting->code);
  EXPECT_THAT(codes, ElementsAre("p4", "p3", "p2", "p1"));
}

TEST(Trees, followTheTotalBeforeTheCountPerRow) {
  OneOfEach one;
  one.planting.treesPerRow = 100;
  EXPECT_EQ(treesIn(one.orchard, one.planting), 1000);
  one.planting.trees = 25;
  EXPECT_EQ(treesIn(one.orchard, one.planting), 25);
  EXPECT_DOUBLE_EQ(treesPerRow(one.orchard, one.planting), 2.5);
}

TEST(Trees, areCountedByLengthWhereNoCountIsGiven) {
  OneOfEach one;
  one.planting.treeSpacing = Length::feet(3);
  one.block.rowLength = Length::feet(475);
  // 475 / 3 = 158.3: no third of a tree stands at the end of a row.
  EXPECT_DOUBLE_EQ(treesPerRow(one.orchard, one.planting), 158);
  EXPECT_EQ(treesIn(one.orchard, one.planting), 1580);
}

TEST(Trees, areNoneWhereNeitherCountNorLengthsSay) {
  OneOfEach one;
  EXPECT_EQ(treesIn(one.orchard, one.planting), 0);
  one.block.rowLength = Length::metres(100);
  EXPECT_EQ(treesIn(one.orchard, one.planting), 0);  // no spacing between trees
}

TEST(ElevationOf, isTheBlocksOrElseTheOrchards) {
  OneOfEach one;
  one.orchard.settings.elevation = Length::metres(300);
  EXPECT_EQ(elevationOf(one.orchard, one.planting), Length::metres(300));
  one.block.elevation = Length::metres(350);
  EXPECT_EQ(elevationOf(one.orchard, one.planting), Length::metres(350));
}

TEST(LeafOf, countsInTheOrchardsHemisphere) {
  OneOfEach one;
  one.planting.planted = dayOf(2025, 9, 10);
  one.orchard.settings.latitude = 47;
  EXPECT_EQ(leafOf(one.orchard, one.planting, Season{2026}), 1);  // autumn planting
  one.orchard.settings.latitude = -39;
  EXPECT_EQ(leafOf(one.orchard, one.planting, Season{2026}), 2);  // spring planting
}

TEST(HasRecords, seesTicksMarksAndObservationsOfThatPlantingOnly) {
  const OneOfEach one;
  const PlantingId id = one.planting.id;
  const TaskKey task{id, "leader-tie", Season{2027}, 1};
  EXPECT_FALSE(hasRecords(one.orchard, id));

  Orchard ticked = one.orchard;
  ticked.ticks[{0, 1}].task = task;
  EXPECT_TRUE(hasRecords(ticked, id));
  EXPECT_FALSE(hasRecords(ticked, PlantingId{0, 99}));

  Orchard marked = one.orchard;
  marked.marks[task].task = task;
  EXPECT_TRUE(hasRecords(marked, id));

  Orchard observed = one.orchard;
  observed.observations[{0, 1}].planting = id;
  EXPECT_TRUE(hasRecords(observed, id));
}

TEST(Lookups, findByCodeAndByNameOrNothing) {
  const OneOfEach one;
  EXPECT_EQ(plantingByCode(one.orchard, "creek-gala"), &one.planting);
  EXPECT_EQ(plantingByCode(one.orchard, "creek"), nullptr);
  EXPECT_EQ(blockByName(one.orchard, "Creek"), &one.block);
  EXPECT_EQ(blockByName(one.orchard, "creek "), nullptr);
  EXPECT_EQ(&blockOf(one.orchard, one.planting), &one.block);
}

TEST(FreshCode, isPlainLowerCaseWithHyphens) {
  struct Row {
    const char* block;
    const char* cultivar;
    const char* code;
  };

  for (const Row& row : {Row{"Creek 1", "Gala", "creek-1-gala"},
                         Row{"Peña  Alta/2", "Pinova", "pena-alta-2-pinova"},
                         Row{"Süßer Grund", "Ærø & Co.", "susser-grund-aero-co"},
                         Row{"--Hill--", "", "hill"},
                         Row{"果園", "", "planting"}})
    EXPECT_EQ(freshCode({}, row.block, row.cultivar), row.code) << row.block;
}

TEST(FreshCode, isNumberedWhereItIsTaken) {
  OneOfEach one;
  EXPECT_EQ(freshCode(one.orchard, "Creek", "Gala"), "creek-gala-2");
  one.orchard.plantings[{0, 8}] = plantingIn(8, one.block.id, "creek-gala-2");
  EXPECT_EQ(freshCode(one.orchard, "Creek", "Gala"), "creek-gala-3");
}

}  // namespace

}  // namespace topwire
