#pragma once

#include "core/planning/planner.h"

#include <map>

namespace topwire {

/// The stages of every planting in one season.
using Outlooks = std::map<PlantingId, Outlook>;

Outlooks outlooksOf(const Orchard& orchard, StageForecast& forecast, Season season);
/// Those of the season that `today` lies in.
Outlooks outlooksOf(const Orchard& orchard, const Trade& trade, Day today);

}  // namespace topwire
