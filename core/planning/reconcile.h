#pragma once

#include "core/orchard/orchard.h"
#include "core/planning/planner.h"

#include <map>
#include <vector>

namespace topwire {

/// One thing a new plan changed against the stored one.
struct PlanDifference {
  enum class Kind { appeared, moved, dropped, keptUnasked } kind;
  TaskKey task;
  int opensShift = 0;  ///< days later (negative: earlier), for `moved`
  int closesShift = 0;

  friend bool operator==(const PlanDifference&, const PlanDifference&) = default;
};

struct Reconciled {
  std::map<TaskKey, StoredTask> tasks;
  std::vector<PlanDifference> differences;
};

/// Windows move, new tasks appear, tasks the rules no longer ask for go if untouched and
/// stay, marked, if they have ticks or a person's word. Stored tasks of seasons outside
/// `planned` are left as they are.
Reconciled reconcile(const Orchard& orchard, const Plan& plan, SeasonSpan planned);

/// "6 tasks moved, 2 appeared" and the like, for the line a window shows; empty where
/// nothing differs.
std::vector<Sentence> summaryOf(const std::vector<PlanDifference>& differences);

}  // namespace topwire
