#pragma once

#include "core/edit/deeds.h"
#include "core/orchard/orchard.h"
#include "core/orchard/trade_tables.h"

#include <string>
#include <vector>

namespace topwire::testing {

/// Two blocks. Creek 1 (rows 1-28): Gala in 1-20 (code p10), a pollinizer in 21 (p11), a
/// replant in 3-4 (p12). Hill (rows 1-5): no planting.
Orchard orchardOfTwo();
/// Three cultivars and two rootstocks, by name only.
const TradeTables& smallTables();

/// A task of Gala in Creek 1, rows 1-20, 1 to 20 April 2027, and a tick of its rows 1-4.
Task leaderTie();
Tick goodTick();
extern const Words tieTheLeader;

/// "place: sentence" of each problem; empty where the deed is allowed.
std::vector<std::string> said(const Checked<Change>& change);
/// The change's name in English.
std::string nameOf(const Checked<Change>& change);
/// The orchard with the change applied; a failed expectation where it was refused.
Orchard after(Orchard orchard, const Checked<Change>& change);

}  // namespace topwire::testing
