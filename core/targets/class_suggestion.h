#pragma once

#include "core/orchard/trade_tables.h"

#include <optional>
#include <vector>

namespace topwire {

/// The season whose growth is measured on this day: until 15 April (15 October) nothing
/// has grown, and it is last season's.
Season grownSeason(Day day, Hemisphere hemisphere);

/// What a season's growth of one measure, taken in dormancy, says of the class.
struct GrowthReading {
  Season season{};  ///< that grew
  Measure measure = Measure::leaderGrowth;
  Length mean;
  Day day{};
  Length wantedFrom;  ///< of a moderate tree in this leaf
  Length wantedTo;
  std::optional<Vigour> says;  ///< nothing between the target and the edges
  bool farOff = false;         ///< more than half outside the edge
};

/// The class the growth speaks for. Two winters in the new band, or one more than half
/// outside it, shift it by a step; growth from before the grower last set the class is
/// not counted again.
struct ClassSuggestion {
  enum class Basis {
    nothingMeasured,
    asItIs,
    measuresDisagree,
    oneWinter,
    twoWinters,
    farOff
  };

  Season from{};  ///< the season the class would hold from
  Vigour current = Vigour::moderate;
  Vigour suggested = Vigour::moderate;
  Basis basis = Basis::nothingMeasured;
  std::vector<GrowthReading> readings;  ///< of the last season and the one before it

  bool changes() const { return suggested != current; }
};

ClassSuggestion suggestClass(const Orchard& orchard,
                             const TradeTables& tables,
                             const Planting& planting,
                             Day today);

std::vector<Sentence> reasonsOf(const ClassSuggestion& suggestion,
                                Hemisphere hemisphere,
                                UnitSystem units);

}  // namespace topwire
