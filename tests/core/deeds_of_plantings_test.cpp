#include "core/edit/deeds.h"
#include "tests/core/deeds_support.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

#include <functional>

namespace topwire {
namespace {

using testing::after;
using ::testing::Contains;
using ::testing::ElementsAre;
using testing::goodTick;
using ::testing::HasSubstr;
using testing::leaderTie;
using testing::nameOf;
using testing::orchardOfTwo;
using testing::said;
using testing::smallTables;
using testing::tieTheLeader;

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
  EXPECT_EQ(said(addPlanting(orchard, smallTables(), planting)), GetParam().expected);
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
  EXPECT_EQ(nameOf(addPlanting(orchard, smallTables(), planting)),
            "Planting Hill: Gala added");
  planting.treeSpacing = Length::metres(3);
  EXPECT_THAT(said(addPlanting(orchard, smallTables(), planting)),
              ElementsAre(HasSubstr("shorter than the tree spacing")));
}

TEST(PlantingDeeds, EditKeepsReplantsAndTickedRowsInside) {
  Orchard orchard = orchardOfTwo();
  orchard = after(orchard, tickRows(orchard, leaderTie(), tieTheLeader, goodTick()));
  Planting gala = orchard.plantings.at({0, 10});
  gala.rows = RowSet::range(4, 20);
  EXPECT_THAT(said(editPlanting(orchard, smallTables(), gala)),
              ElementsAre("rows: Rows 1-3 have ticks of this planting; keep them.",
                          "rows: Planting p12 is a replant in rows 3; keep those here."));
  gala.rows = RowSet::range(1, 20);
  gala.block = {0, 2};
  EXPECT_THAT(
      said(editPlanting(orchard, smallTables(), gala)),
      Contains("Creek 1: Gala has ticks on record and can't move to another block."));
}

TEST(PlantingDeeds, RowsWhoseTicksWereTakenBackAreFreeAgain) {
  Orchard orchard = orchardOfTwo();
  orchard.plantings.erase({0, 12});
  orchard = after(orchard, tickRows(orchard, leaderTie(), tieTheLeader, goodTick()));
  orchard = after(orchard, takeBackTick(orchard, {1, 1}, {1, 2}, dayOf(2027, 4, 7)));
  Planting gala = orchard.plantings.at({0, 10});
  gala.rows = RowSet::range(5, 20);
  EXPECT_EQ(nameOf(editPlanting(orchard, smallTables(), gala)),
            "Planting Creek 1: Gala changed");
}

TEST(PlantingDeeds, AHostOfReplantsIsNotDeletedUnderThem) {
  EXPECT_THAT(said(deletePlanting(orchardOfTwo(), {0, 10})),
              ElementsAre("Planting p12 is a replant in these rows; delete it first."));
  EXPECT_EQ(nameOf(deletePlanting(orchardOfTwo(), {0, 12})),
            "Planting Creek 1: Gala deleted");
}

}  // namespace
}  // namespace topwire
