#pragma once

#include "core/planning/outlooks.h"

#include <span>
#include <string>
#include <vector>

namespace topwire {

/// What a day's weather gives reason to think of.
enum class CautionKind {
  frost,          ///< near or below what kills flower buds of the planting's stage
  freezing,       ///< a frosty morning that the buds stand, in the growing season
  hardCold,       ///< dormant trees would meet hard cold with fresh cuts
  blightWeather,  ///< warm and wet days ahead while trees grow; never a measure of risk
  wet,            ///< rain on the day
  damp,           ///< rain on the day before or after: fresh cuts want it dry
  heat,
};

/// Frost: within a degree above the temperature that kills one bud in ten, at it, or at
/// the one that kills nine in ten.
enum class Severity { low, serious, grave };

/// A reason to think twice about a day's work in one planting. It never forbids: the
/// grower and local advice decide.
struct DayCaution {
  Day day{};
  CautionKind kind = CautionKind::wet;
  Severity severity = Severity::low;
  /// The least certain of the figures it stands on.
  WeatherSource source = WeatherSource::measured;
  /// The figure it is about, with the worse the higher: of cautions alike it tells which
  /// goes furthest.
  double extent = 0;
  Sentence sentence;  ///< "Rain, 4.2 mm."
  Sentence advice;    ///< "Disease spreads in wet trees, and rungs slip."

  friend bool operator==(const DayCaution&, const DayCaution&) = default;
};

/// What the weather known of `day`, and of the days around it that a rule looks at, gives
/// reason to think of; the weightiest first. Nothing known, no caution. The station's
/// temperatures are corrected for the block. `outlook` is that of the season `day` lies
/// in.
std::vector<DayCaution> cautionsFor(const Orchard& orchard,
                                    const TradeTables& tables,
                                    const Planting& planting,
                                    const Outlook& outlook,
                                    Day day);

/// Enough rain to wet trees and rungs; what falls at or below freezing stays dry.
bool isWetDay(const WeatherDay& weather);

using CautionsByPlanting = std::map<PlantingId, std::vector<DayCaution>>;
/// Plantings without a caution are left out.
CautionsByPlanting cautionsOn(const Orchard& orchard,
                              const TradeTables& tables,
                              const Outlooks& outlooks,
                              Day day);

/// Whether two say the same but for their figures.
bool alike(const DayCaution& one, const DayCaution& other);

/// A caution with the plantings it holds for; the words are those of the planting it hits
/// hardest.
struct SharedCaution {
  DayCaution caution;
  std::vector<PlantingId> plantings;

  friend bool operator==(const SharedCaution&, const SharedCaution&) = default;
};

/// Cautions alike as one, the weightiest first, else in the order of the blocks.
std::vector<SharedCaution> sharedAmong(const Orchard& orchard,
                                       const CautionsByPlanting& cautions);

/// Those of `today` and the days after it, `days` in all: by day, the weightiest first.
std::vector<SharedCaution> cautionsAhead(const Orchard& orchard,
                                         const TradeTables& tables,
                                         const Outlooks& outlooks,
                                         Day today,
                                         int days = 10);

/// "Creek 1, Creek 2", with the cultivar where only part of a block is meant: "Creek 1
/// (Gala)"; empty where it holds for every planting that stands in the ground.
std::string placesOf(const Orchard& orchard, const SharedCaution& caution);

/// Of a planting's cautions for a day, the weightiest that is a reason to let this work
/// wait; nullptr where none is. Its sentence says why.
const DayCaution* shouldWait(const Operation& operation,
                             std::span<const DayCaution> cautions);

/// What stands below any list of cautions: figures differ from place to place, and local
/// advice comes first.
Sentence cautionAdvice();

}  // namespace topwire
