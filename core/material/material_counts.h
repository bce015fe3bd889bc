#pragma once

#include "core/orchard/trade_tables.h"
#include "core/programme/programme.h"

namespace topwire {

/// The block's wires, else those the programme is planned with; empty where neither says.
std::vector<Length> wiresOf(const Orchard& orchard,
                            const TradeTables& tables,
                            const Planting& planting);
/// As above; none where neither says.
std::optional<Length> postSpacingOf(const Orchard& orchard,
                                    const TradeTables& tables,
                                    const Planting& planting);
/// The block's, else what its places for trees take up; zero where neither says.
Length rowLengthOf(const Orchard& orchard, const Planting& planting);

/// How many trees, posts, row ends, metres of row or of wire stand in so many rows (or
/// parts of rows) of a planting. Line posts are the running length over their spacing, as
/// order lists count them. A replant stands in a trellis that is there, so it has trees
/// only.
double countIn(double rows,
               Per per,
               const Orchard& orchard,
               const TradeTables& tables,
               const Planting& planting);

}  // namespace topwire
