#pragma once

#include "core/planning/planner.h"

#include <vector>

namespace topwire {

/// "Hand thinning, Creek 1", as a work's name with its block.
Words nameWithBlock(const Orchard& orchard, const Trade& trade, const TaskKey& task);

/// "Hand thinning, Creek 1 and Creek 2; Leader tie, Creek 1": those of one name together,
/// `most` names at most, then how many more.
Words namesOf(const Orchard& orchard,
              const Trade& trade,
              const std::vector<TaskKey>& tasks,
              int most);

Words titleOfTask(const Orchard& orchard, const Trade& trade, const TaskKey& task);

}  // namespace topwire
