#include "core/material/material_list.h"

#include "tests/support/builders.h"
#include "tests/support/operations.h"

#include <gmock/gmock.h>

namespace topwire {

namespace {

using testing::atMonth;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using testing::operation;

MaterialItem item(const std::string& name, MaterialUnit unit, double packSize) {
  MaterialItem made;
  made.name = name;
  made.label = {name, name};
  made.unit = unit;
  made.pack = {"pack", "paquete"};
  made.packSize = packSize;
  return made;
}

/// Ten rows of a hundred trees; ties in April, pins and fertiliser in May.
struct Shed {
  Orchard orchard =
      testing::orchardOfOne(testing::northernSettings(), dayOf(2026, 4, 10));
  TradeTables tables = testing::shippedTables();
  Programmes programmes;
  testing::FixedForecaster forecaster;
  Day today = dayOf(2027, 4, 14);

  Shed() {
    tables.materials = {item("soft tie", MaterialUnit::piece, 1000),
                        item("pin", MaterialUnit::piece, 500),
                        item("nitrate", MaterialUnit::gram, 25'000)};
    tables.materials[0].sparePercent = 5;
    tables.materials[1].share = 1.0 / 3;
    Operation tie = operation("tie", atMonth(4, 12), atMonth(4, 25));
    tie.materials = {{"soft tie", {"soft tie", "amarre"}, 3.4, Per::tree}};
    Operation pin = operation("pin", atMonth(5, 3), atMonth(5, 20));
    pin.materials = {{"pin", {"pin", "pinza"}, 5, Per::tree},
                     {"nitrate", {"nitrate", "nitrato"}, 68, Per::tree}};
    Operation flag = operation("flag", atMonth(5, 3), atMonth(5, 20));
    flag.materials = {{"flag", {"flag", "banderola"}, 0.5, Per::rowEnd},
                      {"soft tie", {"soft tie", "amarre"}, 1, Per::rowEnd}};
    programmes = testing::programmesOf({tie, pin, flag});
  }

  Trade trade() const { return {tables, programmes, forecaster}; }

  Plan plan() const {
    return planTasks(orchard, trade(), plannedSeasons(orchard, today), today);
  }

  MaterialList week(IsoWeek week) const {
    return materialOfWeek(orchard, trade(), plan(), week, today);
  }

  MaterialList season() const {
    return materialOfSeason(orchard, trade(), plan(), Season{2027}, today);
  }

  void tick(const std::string& operation, const std::string& rows, int percent = 100) {
    Tick made;
    made.id = {0, orchard.ticks.size() + 1};
    made.task = {{0, 2}, operation, Season{2027}, 1};
    made.rows = parseRows(rows).rows;
    made.percent = percent;
    made.day = today;
    orchard.ticks[made.id] = made;
  }
};

std::vector<std::string> itemsOf(const MaterialList& list) {
  std::vector<std::string> items;
  for (const MaterialLine& line : list.lines) items.push_back(line.item);
  return items;
}

TEST(MaterialList, countsTheRowsStillToDoOfTheWeeksTasks) {
  Shed shed;
  const MaterialList whole = shed.week({2027, 15});
  ASSERT_THAT(itemsOf(whole), ElementsAre("soft tie"));
  EXPECT_EQ(whole.lines[0].needed, 3400);
  EXPECT_EQ(whole.lines[0].toBuy, 3570);
  EXPECT_EQ(whole.lines[0].packs, 4);
  shed.tick("tie", "1-4");
  shed.tick("tie", "5", 50);
  EXPECT_EQ(shed.week({2027, 15}).lines[0].needed, 1870);
  shed.tick("tie", "1-10");
  EXPECT_THAT(shed.week({2027, 15}).lines, IsEmpty());
}

TEST(MaterialList, sumsTheSeasonAndTellsForWhichWork) {
  const MaterialList list = Shed{}.season();
  ASSERT_THAT(itemsOf(list), ElementsAre("soft tie", "pin", "nitrate", "flag"));
  EXPECT_EQ(list.lines[0].needed, 3400 + 20);
  ASSERT_EQ(list.lines[0].uses.size(), 2U);
  EXPECT_EQ(list.lines[0].uses[0].task.operation, "tie");
  EXPECT_DOUBLE_EQ(list.lines[0].uses[1].amount, 20);
}

TEST(MaterialList, buysOnlyTheShareThatDoesNotGoRoundAgain) {
  const MaterialLine pins = Shed{}.season().lines[1];
  EXPECT_EQ(pins.needed, 5000);
  EXPECT_EQ(pins.toBuy, 1667);
  EXPECT_EQ(pins.packs, 4);
}

TEST(MaterialList, keepsWhatTheTableDoesNotKnowInPieces) {
  const MaterialLine flags = Shed{}.season().lines[3];
  EXPECT_EQ(flags.needed, 10);
  EXPECT_EQ(flags.packs, 0);
}

TEST(MaterialList, leavesOutWhatWasSetAside) {
  Shed shed;
  TaskMark aside;
  aside.task = {{0, 2}, "tie", Season{2027}, 1};
  aside.setAsideReason = "wires are down";
  shed.orchard.marks[aside.task] = aside;
  EXPECT_THAT(shed.week({2027, 15}).lines, IsEmpty());
}

TEST(MaterialList, asksOnlyForTreesWhereAReplantStands) {
  Shed shed;
  Planting& planting = shed.orchard.plantings.begin()->second;
  planting.kind = PlantingKind::replant;
  planting.trees = 30;
  const MaterialList list = shed.season();
  ASSERT_THAT(itemsOf(list), ElementsAre("soft tie", "pin", "nitrate"));
  EXPECT_EQ(list.lines[0].needed, 102);
  EXPECT_THAT(list.notes, IsEmpty());
}

TEST(MaterialList, saysWhereTreesCannotBeCounted) {
  Shed shed;
  shed.orchard.plantings.begin()->second.treesPerRow.reset();
  EXPECT_EQ(shed.season().notes.size(), 1U);
}

TEST(MaterialList, ofANewPlantingReachesFromTheOrderToTheFirstLeaf) {
  Shed shed;
  Planting& planting = shed.orchard.plantings.begin()->second;
  planting.planted = dayOf(2030, 4, 10);
  Operation auger = operation("auger", atMonth(9, 1, 0), atMonth(10, 1, 0), {{-2, -2}});
  auger.materials = {{"flag", {"flag", "banderola"}, 1, Per::tree}};
  shed.programmes.begin()->second.operations.push_back(auger);
  const MaterialList list =
      materialOfPlanting(shed.orchard, shed.trade(), planting, shed.today);
  ASSERT_THAT(itemsOf(list), ElementsAre("soft tie", "pin", "nitrate", "flag", "tree"));
  EXPECT_EQ(list.lines[0].needed, 3420) << "the first leaf's, and no later one's";
  EXPECT_EQ(list.lines[3].needed, 1010);
  EXPECT_EQ(list.lines[4].needed, 1000);
}

TEST(MaterialText, speaksTheOrchardsUnits) {
  const auto said = [](double amount, MaterialUnit unit, UnitSystem units) {
    return inEnglish(amountText(amount, unit, units));
  };
  using enum MaterialUnit;
  EXPECT_EQ(said(3400, piece, UnitSystem::metric), "3400");
  EXPECT_EQ(said(68'000, gram, UnitSystem::metric), "68.0 kg");
  EXPECT_EQ(said(68'000, gram, UnitSystem::usCustomary), "149.9 lb");
  EXPECT_EQ(said(66'600, millilitre, UnitSystem::metric), "66.6 L");
  EXPECT_EQ(said(66'550, millilitre, UnitSystem::usCustomary), "17.6 gal");
  EXPECT_EQ(said(4425.7, metre, UnitSystem::usCustomary), "14520 ft");
}

TEST(MaterialTable, isReadAsShipped) {
  const TradeTables& tables = testing::shippedTables();
  const MaterialItem* pins = tables.material("clothes-pin");
  ASSERT_NE(pins, nullptr);
  EXPECT_NEAR(pins->share, 1.0 / 3, 0.01) << "pins go round again: buy a third";
  const TrellisPlan* trellis = tables.trellis("tall-spindle-apple");
  ASSERT_NE(trellis, nullptr);
  EXPECT_THAT(
      trellis->wires,
      ElementsAre(
          Length::inches(30), Length::feet(5), Length::inches(90), Length::feet(10)));
  EXPECT_EQ(trellis->postSpacing, Length::feet(33));
}

TEST(MaterialTable, tellsEveryFaultWithItsLine) {
  const auto read = readMaterials(
      "[[material]]\nitem = \"tie\"\nunit = \"stone\"\nshare = 2\n", "m.toml");
  ASSERT_FALSE(read.has_value());
  EXPECT_GE(read.error().size(), 3U);
  const auto falling = readTrellises(
      "[[trellis]]\nprogramme = \"x\"\nwires_ft = [5, 2]\nposts_every_ft = 33\n"
      "end_posts_a_row = 2\nanchors_a_row = 2\nsource = \"s\"\n",
      "t.toml");
  ASSERT_FALSE(falling.has_value());
  EXPECT_EQ(falling.error().size(), 1U);
}

}  // namespace

}  // namespace topwire
