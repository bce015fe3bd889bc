#pragma once

#include "core/planning/planner.h"

namespace topwire {

/// Why a task stands where it does, in sentences: opening, closing, cut-off with its
/// reason, the vigour that chose this branch, and the labour.
std::vector<Sentence> explain(const Orchard& orchard,
                              const Trade& trade,
                              const Task& task);
/// The one that matters most today in short: "Closes at green tip, expected 10 April."
Sentence explainEdge(const DateReason& reason,
                     const Programmes& programmes,
                     const Orchard& orchard);

Words titleOf(const Task& task, const Operation* operation);

}  // namespace topwire
