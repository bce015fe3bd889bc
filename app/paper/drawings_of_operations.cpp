#include "app/paper/drawings_of_operations.h"

#include <array>

namespace topwire {

namespace {

struct Named {
  std::string_view name;
  Drawing (*draw)();
};

constexpr std::array drawn{Named{"order-trees", orderTrees},
                           Named{"soil-test", soilTest},
                           Named{"order-trellis", orderTrellis},
                           Named{"raise-trellis", raiseTrellis},
                           Named{"plant", plantTrees},
                           Named{"feather-removal", featherRemoval},
                           Named{"first-tie", firstTie},
                           Named{"rub-rivals", rubRivals},
                           Named{"second-rub", secondRub},
                           Named{"flower-removal", flowerRemoval},
                           Named{"clothes-pins", clothesPins},
                           Named{"limb-bending", limbBending},
                           Named{"leader-tie", leaderTie},
                           Named{"pinch-laterals", pinchLaterals},
                           Named{"hand-thinning", handThinning},
                           Named{"chemical-thinning", chemicalThinning},
                           Named{"notching", notchBareWood},
                           Named{"dormant-pruning", dormantPruning},
                           Named{"renewal-cuts", renewalCuts},
                           Named{"height-cut", heightCut},
                           Named{"brush-sweep", brushSweep},
                           Named{"summer-pruning", summerPruning},
                           Named{"root-pruning", rootPruning},
                           Named{"suckers", suckerRemoval},
                           Named{"tie-check", tieCheck},
                           Named{"limb-clips", limbClips},
                           Named{"trellis-check", trellisCheck},
                           Named{"guards-on", guardsOn},
                           Named{"guards-off", guardsOff},
                           Named{"white-paint", whitePaint},
                           Named{"weed-strip", weedStrip},
                           Named{"nitrogen", nitrogenSplit},
                           Named{"water-check", waterCheck},
                           Named{"blight-patrol", blightPatrol},
                           Named{"leaf-fall-round", leafFallRound},
                           Named{"replant", replantGaps}};

}  // namespace

std::vector<std::string_view> drawingNames() {
  std::vector<std::string_view> names;
  names.reserve(drawn.size());
  for (const Named& named : drawn) names.push_back(named.name);
  return names;
}

const Drawing* drawingFor(std::string_view name) {
  static const std::vector<Drawing> drawings = [] {
    std::vector<Drawing> all;
    all.reserve(drawn.size());
    for (const Named& named : drawn) all.push_back(named.draw());
    return all;
  }();
  for (std::size_t i = 0; i < drawn.size(); ++i)
    if (drawn.at(i).name == name) return &drawings[i];
  return nullptr;
}

}  // namespace topwire
