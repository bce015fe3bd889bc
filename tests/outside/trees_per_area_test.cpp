#include "core/units/length.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace topwire {

namespace {

/// Whole trees on an acre of 43,560 square feet (international foot), worked out by hand
/// from 43,560 / (row x tree).
TEST(TreesPerArea, AcreTable) {
  constexpr std::array treeInches{30, 36, 42, 48, 60};

  struct Row {
    int feet;
    std::array<int, 5> trees;
  };

  constexpr Row table[] = {{10, {1742, 1452, 1245, 1089, 871}},
                           {11, {1584, 1320, 1131, 990, 792}},
                           {12, {1452, 1210, 1037, 908, 726}},
                           {13, {1340, 1117, 957, 838, 670}},
                           {14, {1245, 1037, 889, 778, 622}}};
  for (const auto& [feet, trees] : table)
    for (std::size_t i = 0; i < trees.size(); ++i) {
      const double exact =
          treesPerAcre(Length::feet(feet), Length::inches(treeInches[i]));
      // 1,037.14 and 907.5 round as the table does; 907.5 up.
      EXPECT_EQ(std::lround(exact + 1e-9), trees[i]) << feet << " ft, " << treeInches[i];
    }
}

/// 10,000 square metres divided by row times tree.
TEST(TreesPerArea, HectareTable) {
  constexpr std::array treeCentimetres{80, 90, 100, 120, 150};

  struct Row {
    int centimetres;
    std::array<int, 5> trees;
  };

  constexpr Row table[] = {{300, {4167, 3704, 3333, 2778, 2222}},
                           {320, {3906, 3472, 3125, 2604, 2083}},
                           {350, {3571, 3175, 2857, 2381, 1905}},
                           {400, {3125, 2778, 2500, 2083, 1667}}};
  for (const auto& [centimetres, trees] : table)
    for (std::size_t i = 0; i < trees.size(); ++i)
      EXPECT_EQ(std::lround(treesPerHectare(Length::centimetres(centimetres),
                                            Length::centimetres(treeCentimetres[i]))),
                trees[i])
          << centimetres << " cm, " << treeCentimetres[i];
}

/// Common practice: the two plantings every grower of narrow walls knows by heart.
TEST(TreesPerArea, CommonPlantings) {
  EXPECT_NEAR(treesPerAcre(Length::feet(11), Length::feet(3)), 1320, 1e-9);
  EXPECT_NEAR(treesPerAcre(Length::feet(12), Length::feet(3)), 1210, 1e-9);
}

/// Barritt 1998 (Compact Fruit Tree 31(1)) prints both units of two spacings: 1.25 x 3.25
/// m as 2,460 a hectare and 996 an acre (2,461.5 cut down to tens), 2 x 4.5 m as 1,111
/// and 450.
TEST(TreesPerArea, PrintedSpacings) {
  const Length close = Length::centimetres(125);
  EXPECT_NEAR(treesPerHectare(Length::centimetres(325), close), 2460, 2);
  EXPECT_NEAR(treesPerAcre(Length::centimetres(325), close), 996, 1);
  EXPECT_NEAR(treesPerHectare(Length::centimetres(450), Length::metres(2)), 1111, 0.5);
  EXPECT_NEAR(treesPerAcre(Length::centimetres(450), Length::metres(2)), 450, 0.5);
}

}  // namespace

}  // namespace topwire
