#pragma once

#include "core/planning/planner.h"

namespace topwire {

/// Why a task stands where it does, in sentences: opening, closing, cut-off with its
/// reason, what was measured for it, what it waits for and what delay costs, the vigour
/// that chose this branch, and the labour.
std::vector<Sentence> explain(const Orchard& orchard,
                              const Trade& trade,
                              const Task& task);
/// What the task is called: its operation's name, or the title a person gave it.
Words titleOf(const Task& task, const Operation* operation);

}  // namespace topwire
