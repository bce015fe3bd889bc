#include "core/edit/deeds.h"

#include "tests/core/deeds_support.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

#include <functional>
#include <limits>

namespace topwire {
namespace {

using testing::after;
using ::testing::ElementsAre;
using testing::goodTick;
using ::testing::HasSubstr;
using testing::leaderTie;
using testing::nameOf;
using testing::orchardOfTwo;
using testing::said;
using testing::smallTables;
using testing::tieTheLeader;

struct BadSettings {
  std::function<void(Settings&)> spoil;
  std::string expected;
};

class SettingsFault : public ::testing::TestWithParam<BadSettings> {};

TEST_P(SettingsFault, IsSaidWithItsField) {
  Settings settings = testing::northernSettings();
  GetParam().spoil(settings);
  EXPECT_THAT(said(changeSettings(orchardOfTwo(), settings)),
              ElementsAre(HasSubstr(GetParam().expected)));
}

INSTANTIATE_TEST_SUITE_P(
    Deeds,
    SettingsFault,
    ::testing::Values(
        BadSettings{[](Settings& s) { s.name.clear(); }, "name: A name is missing"},
        BadSettings{[](Settings& s) { s.station = " "; }, "station: A name is missing"},
        BadSettings{[](Settings& s) { s.latitude = 91; }, "latitude: A latitude"},
        BadSettings{
            [](Settings& s) { s.latitude = std::numeric_limits<double>::quiet_NaN(); },
            "latitude: A latitude"},
        BadSettings{[](Settings& s) { s.elevation = Length::metres(-500); },
                    "elevation: An elevation"},
        BadSettings{[](Settings& s) { s.normals = {}; },
                    "normals: The monthly temperatures are missing"},
        BadSettings{[](Settings& s) { s.normals.minimum[2] = 30; },
                    "normals: In March the minimum (30.0) is above the maximum (11.3)"},
        BadSettings{[](Settings& s) { s.normals.maximum[6] = 82.8; },
                    "normals: A temperature of July is not between -60 and 60"},
        BadSettings{[](Settings& s) { s.firstLeafDelayDays = 61; },
                    "firstLeafDelay: Trees in their first leaf"},
        BadSettings{[](Settings& s) { s.firstLeafDelayDays = -1; },
                    "firstLeafDelay: Trees in their first leaf"},
        BadSettings{[](Settings& s) { s.recordsFrom = dayOf(1066, 1, 1); },
                    "recordsFrom: Records can't begin on 1 January 1066"}));

TEST(SettingsDeeds, TheHemisphereStaysOnceWorkIsTicked) {
  Orchard orchard = orchardOfTwo();
  Settings south = orchard.settings;
  south.latitude = -39;
  EXPECT_EQ(nameOf(changeSettings(orchard, south)), "Orchard settings changed");
  orchard = after(orchard, tickRows(orchard, leaderTie(), tieTheLeader, goodTick()));
  EXPECT_THAT(said(changeSettings(orchard, south)),
              ElementsAre(HasSubstr("latitude: Work is ticked already")));
}

struct BadBlock {
  std::function<void(Block&)> spoil;
  std::vector<std::string> expected;
};

class BlockFault : public ::testing::TestWithParam<BadBlock> {};

TEST_P(BlockFault, IsSaidWithItsField) {
  Block block = testing::block(3, "Moor", "1-10");
  GetParam().spoil(block);
  EXPECT_EQ(said(addBlock(orchardOfTwo(), block)), GetParam().expected);
}

INSTANTIATE_TEST_SUITE_P(
    Deeds,
    BlockFault,
    ::testing::Values(
        BadBlock{[](Block&) {}, {}},
        BadBlock{[](Block& b) { b.name = "  "; },
                 {"name: A name is missing here; type one."}},
        BadBlock{[](Block& b) { b.name = " hILL "; },
                 {"name: There is a block called Hill already; choose another name."}},
        BadBlock{[](Block& b) { b.name = "a\nb"; },
                 {"name: Keep this on one line, without control characters."}},
        BadBlock{[](Block& b) { b.name = "caf\xE9"; },
                 {"name: This text is not in UTF-8, so its letters can't be read."}},
        BadBlock{[](Block& b) { b.name = std::string(200, 'x'); },
                 {"name: This text is too long; keep it under 120 letters."}},
        BadBlock{[](Block& b) { b.rows = {}; },
                 {"rows: A block needs at least one row; type them like 1-12, 15."}},
        BadBlock{[](Block& b) { b.minimumCorrection = -10; }, {}},
        BadBlock{[](Block& b) { b.minimumCorrection = -10.1; },
                 {"minimumCorrection: A correction is 10 degrees Celsius (18 Fahrenheit) "
                  "at most, up or down; check it."}},
        BadBlock{[](Block& b) {
                   b.maximumCorrection = std::numeric_limits<double>::quiet_NaN();
                 },
                 {"maximumCorrection: A correction is 10 degrees Celsius (18 Fahrenheit) "
                  "at most, up or down; check it."}},
        BadBlock{[](Block& b) { b.rowSpacing = {}; },
                 {"rowSpacing: Rows stand between 0.5 and 20 m apart (1.7 and 65 ft); "
                  "check the row spacing."}},
        BadBlock{[](Block& b) { b.rowSpacing = Length::metres(-3); },
                 {"rowSpacing: Rows stand between 0.5 and 20 m apart (1.7 and 65 ft); "
                  "check the row spacing."}},
        BadBlock{[](Block& b) { b.rowSpacing = Length::millimetres(500); }, {}},
        BadBlock{[](Block& b) { b.rowSpacing = Length::metres(20); }, {}},
        BadBlock{
            [](Block& b) { b.rowLength = Length::metres(0); },
            {"rowLength: A row is between 1 and 3,000 m long (3 and 9,800 ft); check "
             "the row length."}},
        BadBlock{[](Block& b) { b.elevation = Length::metres(9000); },
                 {"elevation: An elevation lies between -430 m and 5,000 m; check it."}},
        BadBlock{[](Block& b) {
                   b.name.clear();
                   b.rows = {};
                   b.rowSpacing = Length::metres(21);
                 },
                 {"name: A name is missing here; type one.",
                  "rows: A block needs at least one row; type them like 1-12, 15.",
                  "rowSpacing: Rows stand between 0.5 and 20 m apart (1.7 and 65 ft); "
                  "check the row spacing."}}));

TEST(BlockDeeds, NamesAreComparedWithoutCaseInAccentedLettersToo) {
  Orchard orchard = orchardOfTwo();
  orchard.blocks[{0, 2}].name = "Río Ñandú";
  EXPECT_THAT(said(addBlock(orchard, testing::block(3, "RÍO ÑANDÚ", "1-3"))),
              ElementsAre(HasSubstr("called Río Ñandú already")));
}

TEST(BlockDeeds, AddTrimsTheNameAndNamesTheStep) {
  const auto change = addBlock(orchardOfTwo(), testing::block(3, " Moor ", "1-10"));
  EXPECT_EQ(nameOf(change), "Block Moor added");
  EXPECT_TRUE(after(orchardOfTwo(), change).blocks.contains({0, 3}));
}

TEST(BlockDeeds, RowsUnderAPlantingCannotBeTakenAway) {
  Block creek = testing::block(1, "Creek 1", "1-19");
  EXPECT_THAT(said(editBlock(orchardOfTwo(), creek)),
              ElementsAre("rows: Row 20 holds trees of planting p10; keep it, or change "
                          "the planting first.",
                          "rows: Row 21 holds trees of planting p11; keep it, or change "
                          "the planting first."));
  creek.rows = RowSet::range(1, 21);
  EXPECT_EQ(nameOf(editBlock(orchardOfTwo(), creek)), "Block Creek 1 changed");
}

TEST(BlockDeeds, DeletingTakesPlantingsObservationsAndMarksAlong) {
  Orchard orchard = orchardOfTwo();
  orchard.observations[{0, 5}] = {{0, 5}, {0, 10}, 53, dayOf(2027, 4, 1), ""};
  orchard.marks[leaderTie().key] = {leaderTie().key, std::nullopt, "wet", "", 0};
  const Orchard left = after(orchard, deleteBlock(orchard, {0, 1}));
  EXPECT_EQ(left.blocks.size(), 1U);
  EXPECT_TRUE(left.plantings.empty());
  EXPECT_TRUE(left.observations.empty());
  EXPECT_TRUE(left.marks.empty());
}

TEST(BlockDeeds, ABlockOrPlantingWithTicksStays) {
  Orchard orchard = orchardOfTwo();
  orchard = after(orchard, tickRows(orchard, leaderTie(), tieTheLeader, goodTick()));
  const std::string stays =
      "Creek 1: Gala has ticks on record and stays, so that they keep their place. Set "
      "its open tasks aside instead.";
  EXPECT_THAT(said(deleteBlock(orchard, {0, 1})), ElementsAre(stays));
  EXPECT_EQ(said(deletePlanting(orchard, {0, 10})).front(), stays);
  EXPECT_EQ(nameOf(deleteBlock(orchard, {0, 2})), "Block Hill deleted");
}

TEST(BlockDeeds, WhatIsGoneCanBeNeitherEditedNorDeleted) {
  EXPECT_FALSE(editBlock({}, testing::block(1, "Creek", "1")).has_value());
  EXPECT_FALSE(deleteBlock({}, {0, 1}).has_value());
  EXPECT_FALSE(deletePlanting({}, {0, 1}).has_value());
  EXPECT_FALSE(editPlanting({}, smallTables(), {}).has_value());
}

}  // namespace
}  // namespace topwire
