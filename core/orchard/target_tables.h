#pragma once

#include "core/base/result.h"
#include "core/orchard/records.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace topwire {

/// Fruit for each square centimetre of trunk, as shipped in resources/tables/
/// crop_load.toml.
struct CropLoad {
  std::string name;
  bool biennial = false;  ///< for cultivars prone to crop every other year
  double fruitPerCm2 = 0;
  std::string source;
};

/// The trees a row of the table by leaf speaks of.
enum class CropStrength { weakOrBiennial, moderate, strong };

/// Fruit to keep on a tree of this leaf whose trunk is as thick as is usual then.
struct FruitByLeaf {
  int leaf = 0;  ///< the last one in the table stands for all later ones
  CropStrength trees = CropStrength::moderate;
  int from = 0;
  int to = 0;
  Length trunk;  ///< the usual diameter
  std::string source;
};

/// Height wanted of the leader's tip at the end of a leaf; leaf 0 is the tree as planted.
struct LeaderHeight {
  int leaf = 0;
  Vigour vigour = Vigour::moderate;
  Length height;
  bool topWire = false;  ///< the block's top wire goes before `height`, where it is known
  std::string source;
};

/// What a season's growth says of the class. Between the target and the edges it says
/// nothing.
struct ShootGrowth {
  Measure measure = Measure::leaderGrowth;
  int firstLeaf = 0;
  int lastLeaf = 0;  ///< inclusive
  Length weakBelow;
  Length strongAbove;
  Length targetFrom;
  Length targetTo;
  std::string source;
};

/// Grams of a nutrient, not of a fertilizer, for a tree and season.
struct Nutrition {
  std::string nutrient;
  int firstLeaf = 0;
  int lastLeaf = 0;  ///< inclusive
  Vigour vigour = Vigour::moderate;
  double gramsFrom = 0;
  double gramsTo = 0;
  Words caution;
  std::string source;
};

/// What targets are worked out from.
struct TargetTables {
  std::vector<CropLoad> cropLoads;
  std::vector<FruitByLeaf> fruitByLeaf;
  std::vector<LeaderHeight> leaderHeights;
  std::vector<ShootGrowth> shootGrowth;
  std::vector<Nutrition> nutrition;

  const CropLoad* cropLoad(bool biennial) const;
  const FruitByLeaf* fruit(int leaf, CropStrength trees) const;
  /// Beyond the last leaf of the table that one's.
  const LeaderHeight* leaderHeight(int leaf, Vigour vigour) const;
  const ShootGrowth* growth(Measure measure, int leaf) const;
  const Nutrition* nutrient(std::string_view name, int leaf, Vigour vigour) const;
};

Checked<std::vector<CropLoad>> readCropLoads(std::string_view toml,
                                             const std::string& file);
Checked<std::vector<FruitByLeaf>> readFruitByLeaf(std::string_view toml,
                                                  const std::string& file);
Checked<std::vector<LeaderHeight>> readLeaderHeights(std::string_view toml,
                                                     const std::string& file);
Checked<std::vector<ShootGrowth>> readShootGrowth(std::string_view toml,
                                                  const std::string& file);
Checked<std::vector<Nutrition>> readNutrition(std::string_view toml,
                                              const std::string& file);

}  // namespace topwire
