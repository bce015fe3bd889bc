#include "core/phenology/stage_needs.h"

#include "core/base/contract.h"
#include "core/phenology/stage.h"

#include <algorithm>
#include <array>

namespace topwire {

namespace {

/// Bud swell's and full pink's days are from memory.
constexpr std::array ladder{
    Rung{stages::budSwell, stages::silverTip, -7},
    Rung{stages::silverTip, stages::silverTip, 0},
    Rung{stages::greenTip, stages::greenTip, 0},
    Rung{stages::halfInchGreen, stages::halfInchGreen, 0},
    Rung{stages::tightCluster, stages::tightCluster, 0},
    Rung{stages::pink, stages::pink, 0},
    Rung{stages::fullPink, stages::firstBloom, -2},
    Rung{stages::firstBloom, stages::firstBloom, 0},
    Rung{stages::fullBloom, stages::fullBloom, 0},
    Rung{stages::petalFall, stages::petalFall, 0},
};

/// For a cultivar the table does not know: that of Golden Delicious.
constexpr int usualBloomToHarvest = 151;

const StageHeat& heatIn(const TradeTables& tables, int bbch) {
  const StageHeat* heat = tables.heatOf(stageByCode(bbch)->name.en);
  TOPWIRE_REQUIRE(heat != nullptr);
  return *heat;
}

}  // namespace

std::span<const Rung> heatLadder() {
  return ladder;
}

const Rung* rungOf(int bbch) {
  const auto found = std::ranges::find(ladder, bbch, &Rung::bbch);
  return found == ladder.end() ? nullptr : &*found;
}

/// Fruit of 10 mm 14 to 20 days and the June drop about 40 days after full bloom are from
/// memory, and so are their deviations. Harvest: 5 to 9 days by cultivar at
/// Klein-Altendorf, 1958-2020.
std::vector<AfterBloom> fruitStages(const Cultivar* cultivar) {
  const int bloomToHarvest =
      cultivar != nullptr ? cultivar->bloomToHarvestDays : usualBloomToHarvest;
  return {{stages::fruitSet, 17, 3},
          {stages::juneDrop, 40, 5},
          {stages::harvest, bloomToHarvest, 7}};
}

/// Shoots of bearing trees stop in late July, of young ones into September (75 to 110
/// days after full bloom); from memory. Trees count as young to their third leaf.
AfterBloom terminalBud(int leaf) {
  return {stages::terminalBud, leaf <= 3 ? 110 : 75, 10};
}

/// The shift is measured at full bloom; stages before it move by the same share of their
/// heat.
PublishedNeed publishedNeed(const TradeTables& tables,
                            const Cultivar* cultivar,
                            const Rung& rung) {
  const StageHeat& heat = heatIn(tables, rung.heatOf);
  const double shift = cultivar != nullptr ? cultivar->bloomShiftDays : 0;
  const double share =
      shift * heatUnitsPerDayAtBloom / heatIn(tables, stages::fullBloom).needed;
  return {heat.needed * (1 + share), heat.deviation};
}

}  // namespace topwire
