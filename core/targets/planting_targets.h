#pragma once

#include "core/targets/class_suggestion.h"
#include "core/targets/fruit_target.h"
#include "core/targets/leader_target.h"
#include "core/targets/tree_figures.h"

#include <optional>
#include <string>
#include <vector>

namespace topwire {

/// Everything aimed at for one planting in the season of a day, and how it stands. What
/// can't be said is absent: a tree not planted yet keeps no fruit.
struct PlantingTargets {
  Season season{};
  int leaf = 0;
  VigourBasis vigour{};
  std::optional<Density> density;
  std::optional<LengthRange> matureHeight;
  std::optional<TrunkReading> trunk;  ///< of this season or the last
  std::optional<FruitTarget> fruit;
  std::optional<LeaderCourse> leader;
  std::optional<LeaderStanding> leaderStanding;
  ClassSuggestion suggestion;
  /// As nutrient; nothing from the leaf on in which leaf analysis decides.
  std::optional<Nutrition> nitrogen;
};

PlantingTargets targetsOf(const Orchard& orchard,
                          const TradeTables& tables,
                          StageForecast& forecast,
                          const Planting& planting,
                          Day today);

/// "14–28 g", "0.5–1 oz".
std::string amountText(const Nutrition& nutrition, UnitSystem units);
std::vector<Sentence> reasonsOf(const Nutrition& nutrition);

}  // namespace topwire
