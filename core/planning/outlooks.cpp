#include "core/planning/outlooks.h"

namespace topwire {

Outlooks outlooksOf(const Orchard& orchard, const Trade& trade, Day today) {
  return outlooksOf(orchard,
                    *trade.forecaster.over(orchard, today),
                    seasonOf(today, orchard.settings.hemisphere()));
}

Outlooks outlooksOf(const Orchard& orchard, StageForecast& forecast, Season season) {
  Outlooks outlooks;
  for (const auto& [id, planting] : orchard.plantings)
    outlooks.emplace(id, forecast.outlook(planting, season));
  return outlooks;
}

}  // namespace topwire
