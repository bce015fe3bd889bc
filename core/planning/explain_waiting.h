#pragma once

#include "core/planning/planner.h"

#include <vector>

namespace topwire {

/// What was measured against what the programme asks for.
std::vector<Sentence> aboutConditions(const Orchard& orchard, const Task& task);
/// What has to be done first, how far it is and which rows are ready.
std::vector<Sentence> aboutNeeds(const Orchard& orchard,
                                 const Programme* programme,
                                 const Task& task);
/// The growth that brought a visit forward.
Sentence aboutGrowth(const GrowthPace& pace, Length wanted, int days, UnitSystem units);
/// What a day's delay costs, where the programme says more than the usual.
std::vector<Sentence> aboutDelay(const Operation& operation);

}  // namespace topwire
