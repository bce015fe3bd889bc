#pragma once

#include "core/orchard/trade_tables.h"

#include <optional>
#include <string>
#include <vector>

namespace topwire {

/// Both included.
struct FruitRange {
  int from = 0;
  int to = 0;

  friend bool operator==(const FruitRange&, const FruitRange&) = default;
};

struct TrunkReading {
  Length diameter;  ///< mean of the sample trees
  double area = 0;  ///< square centimetres
  Day day{};

  friend bool operator==(const TrunkReading&, const TrunkReading&) = default;
};

/// Fruit to keep per tree in one season, with what it was worked out from.
///
/// The table by leaf gives a range for a trunk as thick as is usual then. A thinner trunk
/// takes it down in step with its cross-section; a thicker one leaves the upper half of
/// it. Fruit per square centimetre of trunk (4 where a cultivar is prone to crop every
/// other year, else 6) is the most a tree is left with, up to the seventh leaf: after
/// that the space is full, and the yield aimed at decides. The grower's own figure goes
/// before all.
struct FruitTarget {
  FruitRange keep;
  Season season{};
  int leaf = 0;
  Vigour vigour = Vigour::moderate;
  bool biennial = false;
  bool byGrower = false;
  std::string note;                   ///< the grower's
  FruitRange byLeaf;                  ///< the table's
  Length usualTrunk;                  ///< diameter that range is meant for
  std::optional<TrunkReading> trunk;  ///< where it counts in this leaf
  std::optional<int> mostByTrunk;
  bool limited = false;  ///< the range was cut down to that
  double fruitPerCm2 = 0;
  std::string source;
  std::string loadSource;
};

/// The trunk as measured last, in this season or the one before it; an older one would
/// speak of a thinner tree.
std::optional<TrunkReading> trunkReading(const Orchard& orchard,
                                         const Planting& planting,
                                         Season season,
                                         Day upTo);

/// Nothing for trees that are not planted yet.
std::optional<FruitTarget> fruitTarget(const Orchard& orchard,
                                       const TradeTables& tables,
                                       const Planting& planting,
                                       Season season,
                                       Day upTo);

/// The rule alone: the range by leaf for a trunk of this cross-section.
FruitRange fruitByTrunk(FruitRange byLeaf, double usualArea, double area);

/// Fruit that a trunk carries at so many for each square centimetre.
int fruitOnTrunk(double area, double fruitPerCm2);

std::vector<Sentence> reasonsOf(const FruitTarget& target,
                                const Planting& planting,
                                UnitSystem units);

}  // namespace topwire
