#pragma once

#include "core/base/phrase.h"

#include <span>

namespace topwire {

/// One growth stage of the BBCH scale for pome fruit (Meier, ed., Growth stages of mono-
/// and dicotyledonous plants, BBCH Monograph), with the trade's everyday name.
struct Stage {
  int bbch;
  Words name;  ///< "green tip"
};

/// The stages Topwire dates, in the order most plantings reach them. Their codes rise,
/// with one exception: shoots stop growing (91) weeks before harvest (87), since the
/// scale numbers fruit and shoots apart. Leaf buds' twin codes (07 for 53, 10 for 54) are
/// not listed: flower buds set the windows.
std::span<const Stage> allStages();
/// Nothing for a code Topwire does not date.
const Stage* stageByCode(int bbch);

namespace stages {
inline constexpr int budSwell = 51;
inline constexpr int silverTip = 52;
inline constexpr int greenTip = 53;
inline constexpr int halfInchGreen = 54;
inline constexpr int tightCluster = 55;
inline constexpr int pink = 57;
inline constexpr int fullPink = 59;
inline constexpr int firstBloom = 60;
inline constexpr int fullBloom = 65;
inline constexpr int petalFall = 69;
inline constexpr int fruitSet = 71;
inline constexpr int juneDrop = 73;
inline constexpr int harvest = 87;
inline constexpr int terminalBud = 91;
inline constexpr int leafFall = 95;
}  // namespace stages

}  // namespace topwire
