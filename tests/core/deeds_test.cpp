#include "core/edit/deeds.h"

#include "core/phenology/stage.h"
#include "core/planning/progress.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

#include <functional>
#include <limits>

namespace topwire {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

/// Two blocks. Creek (rows 1-28): Gala in 1-20, pollinizer in 21, replant in 3-4. Hill:
/// no planting.
Orchard orchardOfTwo() {
  Orchard orchard;
  orchard.settings = testing::northernSettings();
  const Block creek = testing::block(1, "Creek 1", "1-28");
  const Block hill = testing::block(2, "Hill", "1-5");
  orchard.blocks = {{creek.id, creek}, {hill.id, hill}};
  Planting gala = testing::planting(10, creek, dayOf(2024, 4, 10));
  gala.rows = RowSet::range(1, 20);
  Planting pollinizer = testing::planting(11, creek, dayOf(2024, 4, 10));
  pollinizer.kind = PlantingKind::pollinizer;
  pollinizer.rows = RowSet::range(21, 21);
  Planting replant = testing::planting(12, creek, dayOf(2026, 4, 10));
  replant.kind = PlantingKind::replant;
  replant.rows = RowSet::range(3, 4);
  replant.trees = 7;
  for (const Planting& one : {gala, pollinizer, replant}) orchard.plantings[one.id] = one;
  return orchard;
}

template <class Entry>
Entry named(const char* name) {
  Entry entry;
  entry.name = name;
  return entry;
}

const TradeTables& tables() {
  static const TradeTables made{{named<Cultivar>("Gala"),
                                 named<Cultivar>("Fuji"),
                                 named<Cultivar>("Golden Delicious")},
                                {named<Rootstock>("M.9 T337"), named<Rootstock>("G.41")},
                                {}};
  return made;
}

Task leaderTie() {
  Task task;
  task.key = {{0, 10}, "leader-tie", {2027}, 1};
  task.opens = dayOf(2027, 4, 1);
  task.closes = dayOf(2027, 4, 20);
  task.rows = RowSet::range(1, 20);
  return task;
}

const Words tieTheLeader{"Tie the leader", "Atar el eje"};

Tick goodTick() {
  Tick tick;
  tick.id = {1, 1};
  tick.rows = RowSet::range(1, 4);
  tick.minutes = 90;
  tick.by = "Crew A";
  tick.day = dayOf(2027, 4, 6);
  return tick;
}

/// "place: sentence" of each problem; empty where the deed is allowed.
std::vector<std::string> said(const Checked<Change>& change) {
  std::vector<std::string> lines;
  if (change) return lines;
  for (const Problem& problem : change.error()) lines.push_back(inEnglish(problem));
  return lines;
}

std::string nameOf(const Checked<Change>& change) {
  return change ? inEnglish(change->name) : "refused: " + said(change).front();
}

Orchard after(Orchard orchard, const Checked<Change>& change) {
  EXPECT_THAT(said(change), IsEmpty());
  if (change) apply(orchard, *change);
  return orchard;
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
  EXPECT_FALSE(editPlanting({}, tables(), {}).has_value());
}

struct BadPlanting {
  std::function<void(Planting&)> spoil;
  std::vector<std::string> expected;
};

class PlantingFault : public ::testing::TestWithParam<BadPlanting> {};

TEST_P(PlantingFault, IsSaidWithItsField) {
  const Orchard orchard = orchardOfTwo();
  Planting planting =
      testing::planting(20, orchard.blocks.at({0, 1}), dayOf(2027, 4, 10));
  planting.rows = RowSet::range(22, 28);
  GetParam().spoil(planting);
  EXPECT_EQ(said(addPlanting(orchard, tables(), planting)), GetParam().expected);
}

INSTANTIATE_TEST_SUITE_P(
    Deeds,
    PlantingFault,
    ::testing::Values(
        BadPlanting{[](Planting&) {}, {}},
        BadPlanting{[](Planting& p) { p.code.clear(); },
                    {"code: A short code is missing, such as creek-1-gala."}},
        BadPlanting{[](Planting& p) { p.code = "p10"; },
                    {"code: The code p10 is taken; choose another."}},
        BadPlanting{[](Planting& p) { p.code = "creek:1"; },
                    {"code: A code has lower-case letters a to z, digits and hyphens "
                     "only."}},
        BadPlanting{[](Planting& p) { p.cultivar = "Gaal"; },
                    {"cultivar: Gaal is not in the table. Is it Gala?"}},
        BadPlanting{[](Planting& p) { p.cultivar = "golden delicous"; },
                    {"cultivar: golden delicous is not in the table. Is it Golden "
                     "Delicious?"}},
        BadPlanting{
            [](Planting& p) { p.cultivar = "Quince of no name"; },
            {"cultivar: Quince of no name is not in the table; choose a name from "
             "the list."}},
        BadPlanting{[](Planting& p) { p.rootstock = "M9 T337"; },
                    {"rootstock: M9 T337 is not in the table. Is it M.9 T337?"}},
        BadPlanting{[](Planting& p) { p.rootstock.clear(); },
                    {"rootstock: Nothing is chosen here; choose a name."}},
        BadPlanting{[](Planting& p) { p.planted = dayOf(1899, 12, 31); },
                    {"planted: Planted on 31 December 1899 can't be right; choose a day "
                     "from 1900 to 2060."}},
        BadPlanting{[](Planting& p) { p.planted = dayOf(2072, 4, 1); },
                    {"planted: Planted on 1 April 2072 can't be right; choose a day from "
                     "1900 to 2060."}},
        BadPlanting{[](Planting& p) { p.rows = {}; },
                    {"rows: A planting needs at least one row; type them like 1-12, "
                     "15."}},
        BadPlanting{[](Planting& p) { p.rows = RowSet::range(22, 29); },
                    {"rows: Row 29 is not in this block. It has rows 1-28."}},
        BadPlanting{[](Planting& p) { p.rows = RowSet::range(28, 31); },
                    {"rows: Rows 29-31 are not in this block. It has rows 1-28."}},
        BadPlanting{
            [](Planting& p) { p.rows = RowSet::range(19, 22); },
            {"rows: Rows 19-20 belong to planting p10 already; choose other rows, "
             "or enter this as a replant.",
             "rows: Row 21 belongs to planting p11 already; choose other rows, or "
             "enter this as a replant."}},
        BadPlanting{[](Planting& p) { p.kind = PlantingKind::replant; },
                    {"rows: Rows 22-28 hold no older planting, which a replant fills up; "
                     "rows that do: 1-21."}},
        BadPlanting{[](Planting& p) {
                      p.kind = PlantingKind::replant;
                      p.rows = RowSet::range(3, 5);
                    },
                    {}},
        BadPlanting{[](Planting& p) { p.treeSpacing = {}; },
                    {"treeSpacing: Trees stand between 0.1 and 20 m apart (0.3 and 65 "
                     "ft); check the tree spacing."}},
        BadPlanting{[](Planting& p) { p.treesPerRow.reset(); },
                    {"trees: Its trees can't be counted; give the trees in a row, or the "
                     "row length of the block."}},
        BadPlanting{[](Planting& p) { p.trees = 0; },
                    {"trees: A count of trees lies between 1 and 1000000; check it."}},
        BadPlanting{[](Planting& p) { p.programme.clear(); },
                    {"programme: A name is missing here; type one."}},
        BadPlanting{[](Planting& p) {
                      p.block = {9, 9};
                    },
                    {"rows: Its block is no longer in the orchard."}},
        BadPlanting{[](Planting& p) {
                      p.code.clear();
                      p.cultivar.clear();
                      p.rows = RowSet::range(29, 29);
                    },
                    {"code: A short code is missing, such as creek-1-gala.",
                     "cultivar: Nothing is chosen here; choose a name.",
                     "rows: Row 29 is not in this block. It has rows 1-28."}}));

TEST(PlantingDeeds, TreesAreCountedFromTheRowLengthWhereTheBlockHasOne) {
  Orchard orchard = orchardOfTwo();
  orchard.blocks[{0, 2}].rowLength = Length::metres(2);
  Planting planting = testing::planting(20, orchard.blocks[{0, 2}], dayOf(2027, 4, 1));
  planting.treesPerRow.reset();
  EXPECT_EQ(nameOf(addPlanting(orchard, tables(), planting)),
            "Planting Hill: Gala added");
  planting.treeSpacing = Length::metres(3);
  EXPECT_THAT(said(addPlanting(orchard, tables(), planting)),
              ElementsAre(HasSubstr("shorter than the tree spacing")));
}

TEST(PlantingDeeds, EditKeepsReplantsAndTickedRowsInside) {
  Orchard orchard = orchardOfTwo();
  orchard = after(orchard, tickRows(orchard, leaderTie(), tieTheLeader, goodTick()));
  Planting gala = orchard.plantings.at({0, 10});
  gala.rows = RowSet::range(4, 20);
  EXPECT_THAT(said(editPlanting(orchard, tables(), gala)),
              ElementsAre("rows: Rows 1-3 have ticks of this planting; keep them.",
                          "rows: Planting p12 is a replant in rows 3; keep those here."));
  gala.rows = RowSet::range(1, 20);
  gala.block = {0, 2};
  EXPECT_THAT(said(editPlanting(orchard, tables(), gala)),
              ::testing::Contains(
                  "Creek 1: Gala has ticks on record and can't move to another block."));
}

TEST(PlantingDeeds, RowsWhoseTicksWereTakenBackAreFreeAgain) {
  Orchard orchard = orchardOfTwo();
  orchard.plantings.erase({0, 12});
  orchard = after(orchard, tickRows(orchard, leaderTie(), tieTheLeader, goodTick()));
  orchard = after(orchard, takeBackTick(orchard, {1, 1}, {1, 2}, dayOf(2027, 4, 7)));
  Planting gala = orchard.plantings.at({0, 10});
  gala.rows = RowSet::range(5, 20);
  EXPECT_EQ(nameOf(editPlanting(orchard, tables(), gala)),
            "Planting Creek 1: Gala changed");
}

TEST(PlantingDeeds, AHostOfReplantsIsNotDeletedUnderThem) {
  EXPECT_THAT(said(deletePlanting(orchardOfTwo(), {0, 10})),
              ElementsAre("Planting p12 is a replant in these rows; delete it first."));
  EXPECT_EQ(nameOf(deletePlanting(orchardOfTwo(), {0, 12})),
            "Planting Creek 1: Gala deleted");
}

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

TEST(CrewDeeds, AreChecked) {
  Orchard orchard = orchardOfTwo();
  orchard = after(orchard, addCrew(orchard, {{0, 1}, "North", 6, 8}));
  EXPECT_THAT(said(addCrew(orchard, {{0, 2}, "north", 0, 25})),
              ElementsAre(HasSubstr("name: There is a crew called North already"),
                          HasSubstr("workers: "),
                          HasSubstr("hoursPerDay: ")));
}

struct BadTick {
  std::function<void(Tick&)> spoil;
  std::vector<std::string> expected;
};

class TickFault : public ::testing::TestWithParam<BadTick> {};

TEST_P(TickFault, IsSaidWithItsField) {
  Tick tick = goodTick();
  GetParam().spoil(tick);
  EXPECT_EQ(said(tickRows(orchardOfTwo(), leaderTie(), tieTheLeader, tick)),
            GetParam().expected);
}

INSTANTIATE_TEST_SUITE_P(
    Deeds,
    TickFault,
    ::testing::Values(
        BadTick{[](Tick&) {}, {}},
        BadTick{[](Tick& tick) { tick.rows = {}; },
                {"rows: No rows are named; type them like 1-4, 7."}},
        BadTick{[](Tick& tick) { tick.rows = RowSet::range(19, 22); },
                {"rows: Rows 21-22 are not in this task. It has rows 1-20."}},
        BadTick{[](Tick& tick) { tick.rows = RowSet::range(1, 21); },
                {"rows: Row 21 is not in this task. It has rows 1-20."}},
        BadTick{[](Tick& tick) { tick.percent = 0; },
                {"percent: How much is done lies between 1 and 100 percent."}},
        BadTick{[](Tick& tick) { tick.percent = 101; },
                {"percent: How much is done lies between 1 and 100 percent."}},
        BadTick{[](Tick& tick) { tick.minutes = -1; },
                {"minutes: Worker-minutes lie between 0 and 288000, a day's work of 200 "
                 "people round the clock; check them."}},
        BadTick{[](Tick& tick) { tick.minutes = 24 * 60 * 200; }, {}},
        BadTick{[](Tick& tick) { tick.minutes = 24 * 60 * 200 + 1; },
                {"minutes: Worker-minutes lie between 0 and 288000, a day's work of 200 "
                 "people round the clock; check them."}},
        BadTick{[](Tick& tick) { tick.by = " "; },
                {"by: Say who did the work, a crew or a person."}},
        BadTick{[](Tick& tick) { tick.day = dayOf(2017, 4, 6); },
                {"day: 6 April 2017 lies more than a year from this task's window, 1 "
                 "April 2027 to 20 April 2027; check the day."}}));

TEST(TickDeeds, NameTheStepForTheUndoButton) {
  Tick tick = goodTick();
  const Orchard orchard = orchardOfTwo();
  EXPECT_EQ(nameOf(tickRows(orchard, leaderTie(), tieTheLeader, tick)),
            "4 rows ticked in Creek 1: Tie the leader");
  tick.rows = RowSet::range(7, 7);
  EXPECT_EQ(nameOf(tickRows(orchard, leaderTie(), tieTheLeader, tick)),
            "1 row ticked in Creek 1: Tie the leader");
  tick.percent = 40;
  EXPECT_EQ(nameOf(tickRows(orchard, leaderTie(), tieTheLeader, tick)),
            "1 row ticked to 40 % in Creek 1: Tie the leader");
}

TEST(TickDeeds, ATickIsTakenBackOnceAndItsTakingBackCanBeTooAgain) {
  const Day day = dayOf(2027, 4, 7);
  Orchard orchard = orchardOfTwo();
  orchard = after(orchard, tickRows(orchard, leaderTie(), tieTheLeader, goodTick()));
  EXPECT_FALSE(takeBackTick(orchard, {9, 9}, {1, 2}, day).has_value());
  orchard = after(orchard, takeBackTick(orchard, {1, 1}, {1, 2}, day));
  EXPECT_THAT(said(takeBackTick(orchard, {1, 1}, {1, 3}, day)),
              ElementsAre("That tick is taken back already."));
  EXPECT_TRUE(progressOf(orchard)[leaderTie().key].wholeRows().empty());
  orchard = after(orchard, takeBackTick(orchard, {1, 2}, {1, 3}, day));
  EXPECT_EQ(progressOf(orchard)[leaderTie().key].wholeRows(), RowSet::range(1, 4));
}

TEST(TickDeeds, UntickingSomeRowsKeepsWhatTicksSaidOfTheOthers) {
  Orchard orchard = orchardOfTwo();
  orchard = after(orchard, tickRows(orchard, leaderTie(), tieTheLeader, goodTick()));
  Tick half = goodTick();
  half.id = {1, 2};
  half.rows = RowSet::range(4, 7);
  half.percent = 50;
  half.minutes = 40;
  orchard = after(orchard, tickRows(orchard, leaderTie(), tieTheLeader, half));
  auto ids = IdSource::countingFrom(50);
  const auto change = untickRows(
      orchard, leaderTie(), tieTheLeader, RowSet::range(4, 5), ids, dayOf(2027, 4, 8));
  EXPECT_EQ(nameOf(change), "2 rows unticked in Creek 1: Tie the leader");
  orchard = after(orchard, change);
  const Progress progress = progressOf(orchard)[leaderTie().key];
  EXPECT_EQ(progress.wholeRows(), RowSet::range(1, 3));
  EXPECT_EQ(progress.partRows(), RowSet::range(6, 7));
  // 3 of 4 rows of 90 minutes, and 2 of 4 rows of 40.
  EXPECT_EQ(progress.minutes, 67 + 20);
  EXPECT_EQ(orchard.ticks.size(), 6U);

  EXPECT_THAT(said(untickRows(orchard,
                              leaderTie(),
                              tieTheLeader,
                              RowSet::range(4, 5),
                              ids,
                              dayOf(2027, 4, 8))),
              ElementsAre(HasSubstr("rows: Nothing is ticked in rows 4-5")));
}

Observation seen(int bbch, Day day, std::uint64_t id = 77) {
  return {{0, id}, {0, 10}, bbch, day, "Ana"};
}

TEST(ObserveStage, NamesTheStageAndReplacesAnEarlierSightingOfTheSameSeason) {
  Orchard orchard = orchardOfTwo();
  const auto first = observeStage(orchard, seen(53, dayOf(2027, 4, 2), 1));
  ASSERT_TRUE(first.has_value());
  EXPECT_THAT(nameOf(first), HasSubstr("seen in Creek 1: Gala"));
  orchard = after(orchard, first);
  orchard = after(orchard, observeStage(orchard, seen(53, dayOf(2026, 4, 9), 2)));
  orchard = after(orchard, observeStage(orchard, seen(53, dayOf(2027, 4, 4), 3)));
  ASSERT_EQ(orchard.observations.size(), 2U);
  EXPECT_EQ(orchard.observations.at({0, 1}).day, dayOf(2027, 4, 4));
}

TEST(ObserveStage, RefusesUnknownStagesOddSeasonsAndTreesNotYetPlanted) {
  const Orchard orchard = orchardOfTwo();
  EXPECT_THAT(said(observeStage(orchard, seen(42, dayOf(2027, 4, 2)))),
              ElementsAre(HasSubstr("bbch: BBCH 42 is not a stage")));
  EXPECT_THAT(said(observeStage(orchard, seen(53, dayOf(2027, 9, 2)))),
              ElementsAre(HasSubstr("it falls between 1 January 2027 and 31 July 2027")));
  EXPECT_THAT(said(observeStage(orchard, seen(65, dayOf(2023, 5, 2)))),
              ElementsAre("day: These trees were planted on 10 April 2024, after 2 May "
                          "2023; check the day."));
  EXPECT_THAT(said(observeStage({}, seen(65, dayOf(2023, 5, 2)))),
              ElementsAre(HasSubstr("planting: ")));
}

TEST(ObserveStage, TheSouthernSeasonIsItsOwn) {
  Orchard orchard = orchardOfTwo();
  orchard.settings = testing::southernSettings();
  EXPECT_TRUE(observeStage(orchard, seen(65, dayOf(2026, 10, 8))).has_value());
  EXPECT_FALSE(observeStage(orchard, seen(65, dayOf(2026, 4, 8))).has_value());
  EXPECT_TRUE(observeStage(orchard, seen(87, dayOf(2027, 2, 20))).has_value());
}

TEST(ObserveStage, StagesOfOneSeasonComeInOrder) {
  Orchard orchard = orchardOfTwo();
  orchard = after(orchard, observeStage(orchard, seen(57, dayOf(2027, 4, 20), 1)));
  const auto late = said(observeStage(orchard, seen(53, dayOf(2027, 4, 21), 2)));
  ASSERT_EQ(late.size(), 1U);
  EXPECT_THAT(late[0], HasSubstr("comes before"));
  EXPECT_THAT(late[0], HasSubstr("seen here on 20 April 2027"));
  const auto early = said(observeStage(orchard, seen(65, dayOf(2027, 4, 19), 2)));
  ASSERT_EQ(early.size(), 1U);
  EXPECT_THAT(early[0], HasSubstr("comes after"));
  EXPECT_TRUE(observeStage(orchard, seen(53, dayOf(2027, 4, 20), 2)).has_value());
  EXPECT_TRUE(observeStage(orchard, seen(65, dayOf(2026, 5, 1), 2)).has_value());
}

TEST(ObserveStage, TerminalBudsMaySetBeforeHarvest) {
  Orchard orchard = orchardOfTwo();
  orchard =
      after(orchard, observeStage(orchard, seen(stages::harvest, dayOf(2027, 9, 9), 1)));
  EXPECT_TRUE(
      observeStage(orchard, seen(stages::terminalBud, dayOf(2027, 8, 1), 2)).has_value());
  EXPECT_FALSE(
      observeStage(orchard, seen(stages::leafFall, dayOf(2027, 9, 1), 2)).has_value());
}

TEST(TaskDeeds, SettingAsideNeedsAReasonAndKeepsAMove) {
  Orchard orchard = orchardOfTwo();
  EXPECT_THAT(said(setTaskAside(orchard, leaderTie(), tieTheLeader, " ")),
              ElementsAre(HasSubstr("reason: Say why")));
  const DaySpan window{dayOf(2027, 4, 9), dayOf(2027, 4, 30)};
  const auto moved = moveTask(orchard, leaderTie(), tieTheLeader, window);
  EXPECT_EQ(nameOf(moved), "Tie the leader moved in Creek 1: Gala");
  orchard = after(orchard, moved);
  orchard = after(orchard, setTaskAside(orchard, leaderTie(), tieTheLeader, "hail"));
  const TaskMark mark = orchard.marks.at(leaderTie().key);
  EXPECT_EQ(mark.moved, window);
  EXPECT_EQ(mark.setAsideReason, "hail");
  orchard = after(orchard, restoreTask(orchard, leaderTie(), tieTheLeader));
  EXPECT_TRUE(orchard.marks.empty());
  EXPECT_FALSE(restoreTask(orchard, leaderTie(), tieTheLeader).has_value());
}

TEST(TaskDeeds, AWindowRunsForwardsAndStaysNearItsTask) {
  const Orchard orchard = orchardOfTwo();
  EXPECT_THAT(
      said(moveTask(
          orchard, leaderTie(), tieTheLeader, {dayOf(2027, 4, 9), dayOf(2027, 4, 8)})),
      ElementsAre("window: The window ends on 8 April 2027, before it opens on 9 "
                  "April 2027; swap them."));
  EXPECT_THAT(
      said(moveTask(
          orchard, leaderTie(), tieTheLeader, {dayOf(2029, 4, 9), dayOf(2029, 4, 10)})),
      ElementsAre(HasSubstr("more than a year from where the task stands")));
}

TEST(TaskDeeds, WorkByHandHasANameAWindowAndAPassOfItsOwn) {
  Orchard orchard = orchardOfTwo();
  const DaySpan window{dayOf(2027, 4, 9), dayOf(2027, 4, 30)};
  EXPECT_THAT(said(addWork(orchard, {0, 10}, "", window, -1)),
              ElementsAre(HasSubstr("title: "), HasSubstr("secondsPerTree: ")));
  const auto first = addWork(orchard, {0, 10}, "Mend the wire", window, 3);
  EXPECT_EQ(nameOf(first), "Mend the wire added in Creek 1: Gala");
  orchard = after(orchard, first);
  orchard = after(orchard, addWork(orchard, {0, 10}, "Mend the wire", window, 3));
  ASSERT_EQ(orchard.marks.size(), 2U);
  EXPECT_EQ(orchard.marks.rbegin()->first.pass, 2);

  Task mend = leaderTie();
  mend.key = orchard.marks.begin()->first;
  EXPECT_EQ(nameOf(restoreTask(orchard, mend, {"Mend the wire", ""})),
            "Mend the wire deleted in Creek 1: Gala");
  orchard = after(orchard, tickRows(orchard, mend, {"Mend the wire", ""}, goodTick()));
  EXPECT_THAT(said(restoreTask(orchard, mend, {"Mend the wire", ""})),
              ElementsAre(HasSubstr("This work has ticks on record and stays")));
}

}  // namespace
}  // namespace topwire
