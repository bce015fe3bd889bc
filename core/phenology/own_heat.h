#pragma once

#include "core/orchard/orchard.h"
#include "core/orchard/trade_tables.h"
#include "core/phenology/calibration.h"

#include <functional>
#include <optional>

namespace topwire {

/// Heat by the end of a day of a season where the record knows it; `planting` is null at
/// the orchard's own elevation.
using HeatBy =
    std::function<std::optional<double>(const Planting* planting, Season, Day)>;

/// The grower's own dates of seasons other than `current` against the published sums: the
/// book of past seasons, and what was seen in plantings past their first leaf. Dates from
/// seasons without a daily record teach nothing.
std::vector<OwnHeat> ownHeatOf(const Orchard& orchard,
                               const TradeTables& tables,
                               Season current,
                               const HeatBy& heatBy);

}  // namespace topwire
