#include "core/phenology/outlook.h"

#include <algorithm>

namespace topwire {

const StageEstimate* Outlook::find(int bbch) const {
  const auto found = std::ranges::find(stages, bbch, &StageEstimate::bbch);
  return found == stages.end() ? nullptr : &*found;
}

}  // namespace topwire
