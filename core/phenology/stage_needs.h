#pragma once

#include "core/orchard/trade_tables.h"

#include <span>

namespace topwire {

/// A stage up to petal fall: the one of which the tables give the heat, and for a stage
/// without a published sum, its days from that one.
struct Rung {
  int bbch;
  int heatOf;  ///< BBCH code of the stage whose heat it is
  int days;
};

/// In the order they are reached.
std::span<const Rung> heatLadder();
/// Nothing for a stage that is not dated by heat.
const Rung* rungOf(int bbch);

/// A stage counted in days from full bloom.
struct AfterBloom {
  int bbch;
  int days;
  double deviation;  ///< of the interval, days
};

/// Fruit stages in order; `cultivar` may be null for one the table does not know.
std::vector<AfterBloom> fruitStages(const Cultivar* cultivar);
/// When shoots stop growing, which young trees do later.
AfterBloom terminalBud(int leaf);

/// Heat of a stage as published for Golden Delicious, moved by the cultivar's shift.
struct PublishedNeed {
  double needed;
  double deviation;  ///< from season to season, degree days
};

PublishedNeed publishedNeed(const TradeTables& tables,
                            const Cultivar* cultivar,
                            const Rung& rung);

/// Heat units of one day about bloom: the difference two cultivars a day apart make.
inline constexpr double heatUnitsPerDayAtBloom = 10.5;

}  // namespace topwire
