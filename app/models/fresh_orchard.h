#pragma once

#include "core/orchard/trade_tables.h"

namespace topwire {

/// An orchard to begin with, so that a first start asks nothing: no blocks, the first
/// station of the tables, and records that begin with this season.
Orchard freshOrchard(const TradeTables& tables,
                     std::string name,
                     UnitSystem units,
                     Day today);

/// Copies a station's place, height and normals into the settings.
void takeStation(Settings& settings, const Station& station);

}  // namespace topwire
