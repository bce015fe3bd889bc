#pragma once

#include "core/planning/planner.h"

#include <string>

namespace topwire::testing {

/// The plan of the orchard's one planting, leaf by leaf, as a grower would check it:
/// what, when, and in a word on what each window hangs. The passes of a repeat are one
/// line.
std::string planText(const Orchard& orchard,
                     const Trade& trade,
                     SeasonSpan seasons,
                     Day today);

}  // namespace topwire::testing
