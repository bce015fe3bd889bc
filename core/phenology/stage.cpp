#include "core/phenology/stage.h"

#include <algorithm>
#include <array>

namespace topwire {

std::span<const Stage> allStages() {
  // The English names are those of the North American extension services' bud stage
  // charts (New York's Food and Life Sciences Bulletin 58, 1976; Utah State University);
  // the Spanish ones are common practice.
  static const std::array all{
      Stage{stages::budSwell, {"bud swell", "yema hinchada"}},
      Stage{stages::silverTip, {"silver tip", "punta plateada"}},
      Stage{stages::greenTip, {"green tip", "punta verde"}},
      Stage{stages::halfInchGreen, {"half-inch green", "media pulgada verde"}},
      Stage{stages::tightCluster, {"tight cluster", "racimo apretado"}},
      Stage{stages::pink, {"pink", "botón rosado"}},
      Stage{stages::fullPink, {"full pink", "botón rosado pleno"}},
      Stage{stages::firstBloom, {"first bloom", "primera flor"}},
      Stage{stages::fullBloom, {"full bloom", "plena floración"}},
      Stage{stages::petalFall, {"petal fall", "caída de pétalos"}},
      Stage{stages::fruitSet, {"fruit set", "cuajado"}},
      Stage{stages::juneDrop, {"June drop", "caída fisiológica de frutos"}},
      Stage{stages::terminalBud, {"terminal bud set", "yema terminal formada"}},
      Stage{stages::harvest, {"harvest", "cosecha"}},
      Stage{stages::leafFall, {"leaf fall", "caída de hojas"}},
  };
  return all;
}

const Stage* stageByCode(int bbch) {
  const auto all = allStages();
  const auto found = std::ranges::find(all, bbch, &Stage::bbch);
  return found == all.end() ? nullptr : &*found;
}

}  // namespace topwire
