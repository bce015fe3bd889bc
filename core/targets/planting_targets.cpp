#include "core/targets/planting_targets.h"

#include "core/units/conversions.h"

namespace topwire {

namespace {

std::string trimmed(double value, int decimals) {
  std::string text = inEnglish(Value{Figure{value, decimals}});
  if (decimals == 0) return text;
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text;
}

}  // namespace

PlantingTargets targetsOf(const Orchard& orchard,
                          const TradeTables& tables,
                          StageForecast& forecast,
                          const Planting& planting,
                          Day today) {
  const Block& block = blockOf(orchard, planting);
  PlantingTargets targets;
  targets.season = seasonOf(today, orchard.settings.hemisphere());
  targets.leaf = leafOf(orchard, planting, targets.season);
  targets.vigour = vigourIn(targets.season, orchard, tables, planting);
  targets.density = densityOf(block, planting);
  if (block.rowSpacing > Length{}) targets.matureHeight = matureHeight(block.rowSpacing);
  targets.trunk = trunkReading(orchard, planting, targets.season, today);
  targets.fruit = fruitTarget(orchard, tables, planting, targets.season, today);
  targets.leader = leaderCourse(orchard, tables, forecast, planting, targets.season);
  targets.leaderStanding = leaderStanding(orchard, tables, forecast, planting, today);
  targets.suggestion = suggestClass(orchard, tables, planting, today);
  if (const Nutrition* row =
          tables.targets.nutrient("nitrogen", targets.leaf, targets.vigour.vigour))
    targets.nitrogen = *row;
  return targets;
}

std::string amountText(const Nutrition& nutrition, UnitSystem units) {
  const bool metric = units == UnitSystem::metric;
  const auto text = [metric](double grams) {
    return trimmed(metric ? grams : grams / gramsPerOunce, metric ? 0 : 1);
  };
  const std::string from = text(nutrition.gramsFrom);
  const std::string to = text(nutrition.gramsTo);
  // An en dash reads the same in both languages.
  return (from == to ? to : from + "\u2013" + to) + (metric ? " g" : " oz");
}

std::vector<Sentence> reasonsOf(const Nutrition& nutrition) {
  return {{phrase("Targets",
                  "As nutrient, not as fertilizer, for a tree and season. A soil or leaf "
                  "test goes before this figure, and so do local rules.")},
          {phrase("Targets", "%1"), {nutrition.caution}},
          {phrase("Targets", "Source: %1"), {nutrition.source}}};
}

}  // namespace topwire
