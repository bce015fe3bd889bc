#include "core/planning/outlooks.h"

namespace topwire {

Outlooks outlooksOf(const Orchard& orchard, const Trade& trade, Day today) {
  const Season season = seasonOf(today, orchard.settings.hemisphere());
  Outlooks outlooks;
  for (const auto& [id, planting] : orchard.plantings)
    outlooks.emplace(id, trade.forecaster.outlook(orchard, planting, season, today));
  return outlooks;
}

}  // namespace topwire
