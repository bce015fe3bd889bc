#include "core/orchard/target_tables.h"

#include "core/orchard/table_rows.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

const TableKind cropLoadKind{"crop_load", {"load", "carga"}};
const TableKind fruitByLeafKind{"fruit_by_leaf", {"row", "renglón"}};
const TableKind leaderHeightKind{"leader_height", {"row", "renglón"}};
const TableKind shootGrowthKind{"shoot_growth", {"row", "renglón"}};
const TableKind nutritionKind{"nutrition", {"row", "renglón"}};

constexpr TableField sourceField{"source", "source = \"where the figures come from\""};
constexpr TableBounds anyLeaf{0, 99};
constexpr TableBounds anyFruit{0, 1000};
constexpr TableBounds anyGrowth{0, 120};

int wholeNumber(TableRow& row, TableField field, TableBounds bounds) {
  return static_cast<int>(std::lround(row.number(field, bounds)));
}

Length inchesIn(TableRow& row, TableField field, TableBounds bounds) {
  return Length::micrometres(std::llround(25'400 * row.number(field, bounds)));
}

Length feetIn(TableRow& row, TableField field, TableBounds bounds) {
  return Length::micrometres(std::llround(304'800 * row.number(field, bounds)));
}

Vigour vigourIn(TableRow& row) {
  return row.oneOf<Vigour>({"vigour", "vigour = \"moderate\""},
                           {{"moderate", Vigour::moderate},
                            {"weak", Vigour::weak},
                            {"strong", Vigour::strong}});
}

/// Told where a range runs backwards.
template <class T>
void checkOrder(TableRow& row, const T& low, const T& high, const char* highField) {
  if (low <= high) return;
  row.report(phrase("Tables",
                    "In %1 %2 the field %3 lies below the figure it should end at or "
                    "above; swap the two."),
             {highField, ""},
             {},
             row.source());
}

CropLoad cropLoadFrom(TableRow& row) {
  CropLoad load;
  load.name = row.text({"name", "name = \"annual\""});
  load.biennial = row.flag({"biennial", "biennial = false"});
  load.fruitPerCm2 = row.number({"fruit_per_cm2", "fruit_per_cm2 = 6"}, {0.1, 30});
  load.source = row.text(sourceField);
  return load;
}

FruitByLeaf fruitByLeafFrom(TableRow& row) {
  FruitByLeaf fruit;
  fruit.leaf = wholeNumber(row, {"leaf", "leaf = 2"}, anyLeaf);
  fruit.trees =
      row.oneOf<CropStrength>({"trees", "trees = \"moderate\""},
                              {{"moderate", CropStrength::moderate},
                               {"weak or biennial-prone", CropStrength::weakOrBiennial},
                               {"strong", CropStrength::strong}});
  fruit.from = wholeNumber(row, {"fruit_from", "fruit_from = 10"}, anyFruit);
  fruit.to = wholeNumber(row, {"fruit_to", "fruit_to = 15"}, anyFruit);
  checkOrder(row, fruit.from, fruit.to, "fruit_to");
  fruit.trunk = inchesIn(row, {"trunk_in", "trunk_in = 1.0"}, {0.2, 12});
  fruit.source = row.text(sourceField);
  return fruit;
}

LeaderHeight leaderHeightFrom(TableRow& row) {
  LeaderHeight leader;
  leader.leaf = wholeNumber(row, {"leaf", "leaf = 2"}, anyLeaf);
  leader.vigour = vigourIn(row);
  leader.height = feetIn(row, {"height_ft", "height_ft = 10"}, {0.5, 30});
  leader.topWire = row.flag({"top_wire", "top_wire = true"});
  leader.source = row.text(sourceField);
  return leader;
}

ShootGrowth shootGrowthFrom(TableRow& row) {
  ShootGrowth growth;
  growth.measure = row.oneOf<Measure>(
      {"measure", "measure = \"shoot growth\""},
      {{"leader growth", Measure::leaderGrowth}, {"shoot growth", Measure::shootGrowth}});
  growth.firstLeaf = wholeNumber(row, {"first_leaf", "first_leaf = 2"}, anyLeaf);
  growth.lastLeaf = wholeNumber(row, {"last_leaf", "last_leaf = 3"}, anyLeaf);
  checkOrder(row, growth.firstLeaf, growth.lastLeaf, "last_leaf");
  growth.weakBelow = inchesIn(row, {"weak_below_in", "weak_below_in = 15"}, anyGrowth);
  growth.strongAbove =
      inchesIn(row, {"strong_above_in", "strong_above_in = 30"}, anyGrowth);
  growth.targetFrom = inchesIn(row, {"target_from_in", "target_from_in = 15"}, anyGrowth);
  growth.targetTo = inchesIn(row, {"target_to_in", "target_to_in = 30"}, anyGrowth);
  checkOrder(row, growth.weakBelow, growth.targetFrom, "target_from_in");
  checkOrder(row, growth.targetFrom, growth.targetTo, "target_to_in");
  checkOrder(row, growth.targetTo, growth.strongAbove, "strong_above_in");
  growth.source = row.text(sourceField);
  return growth;
}

Nutrition nutritionFrom(TableRow& row) {
  Nutrition nutrition;
  nutrition.nutrient = row.text({"nutrient", "nutrient = \"nitrogen\""});
  nutrition.firstLeaf = wholeNumber(row, {"first_leaf", "first_leaf = 2"}, anyLeaf);
  nutrition.lastLeaf = wholeNumber(row, {"last_leaf", "last_leaf = 3"}, anyLeaf);
  checkOrder(row, nutrition.firstLeaf, nutrition.lastLeaf, "last_leaf");
  nutrition.vigour = vigourIn(row);
  nutrition.gramsFrom = row.number({"grams_from", "grams_from = 14"}, {0, 200});
  nutrition.gramsTo = row.number({"grams_to", "grams_to = 28"}, {0, 200});
  checkOrder(row, nutrition.gramsFrom, nutrition.gramsTo, "grams_to");
  nutrition.caution.en = row.text({"caution_en", "caution_en = \"what to heed\""});
  nutrition.caution.es = row.text({"caution_es", "caution_es = \"qué cuidar\""});
  nutrition.source = row.text(sourceField);
  return nutrition;
}

template <class Row, class Suits>
const Row* firstOf(const std::vector<Row>& rows, Suits suits) {
  const auto found = std::ranges::find_if(rows, suits);
  return found == rows.end() ? nullptr : &*found;
}

/// The row of this leaf, or of the last one the table has where the leaf is older.
template <class Row, class Suits>
const Row* atLeaf(const std::vector<Row>& rows, int leaf, Suits suits) {
  const Row* found = nullptr;
  for (const Row& row : rows)
    if (suits(row) && row.leaf <= leaf && (!found || row.leaf > found->leaf))
      found = &row;
  return found;
}

}  // namespace

const CropLoad* TargetTables::cropLoad(bool biennial) const {
  return firstOf(cropLoads,
                 [biennial](const CropLoad& row) { return row.biennial == biennial; });
}

const FruitByLeaf* TargetTables::fruit(int leaf, CropStrength trees) const {
  return atLeaf(
      fruitByLeaf, leaf, [trees](const FruitByLeaf& row) { return row.trees == trees; });
}

const LeaderHeight* TargetTables::leaderHeight(int leaf, Vigour vigour) const {
  return atLeaf(leaderHeights, leaf, [vigour](const LeaderHeight& row) {
    return row.vigour == vigour;
  });
}

const ShootGrowth* TargetTables::growth(Measure measure, int leaf) const {
  return firstOf(shootGrowth, [measure, leaf](const ShootGrowth& row) {
    return row.measure == measure && row.firstLeaf <= leaf && leaf <= row.lastLeaf;
  });
}

const Nutrition* TargetTables::nutrient(std::string_view name,
                                        int leaf,
                                        Vigour vigour) const {
  return firstOf(nutrition, [name, leaf, vigour](const Nutrition& row) {
    return row.nutrient == name && row.vigour == vigour && row.firstLeaf <= leaf
           && leaf <= row.lastLeaf;
  });
}

Checked<std::vector<CropLoad>> readCropLoads(std::string_view toml,
                                             const std::string& file) {
  return readTable<CropLoad>(toml, file, cropLoadKind, cropLoadFrom);
}

Checked<std::vector<FruitByLeaf>> readFruitByLeaf(std::string_view toml,
                                                  const std::string& file) {
  return readTable<FruitByLeaf>(toml, file, fruitByLeafKind, fruitByLeafFrom);
}

Checked<std::vector<LeaderHeight>> readLeaderHeights(std::string_view toml,
                                                     const std::string& file) {
  return readTable<LeaderHeight>(toml, file, leaderHeightKind, leaderHeightFrom);
}

Checked<std::vector<ShootGrowth>> readShootGrowth(std::string_view toml,
                                                  const std::string& file) {
  return readTable<ShootGrowth>(toml, file, shootGrowthKind, shootGrowthFrom);
}

Checked<std::vector<Nutrition>> readNutrition(std::string_view toml,
                                              const std::string& file) {
  return readTable<Nutrition>(toml, file, nutritionKind, nutritionFrom);
}

}  // namespace topwire
