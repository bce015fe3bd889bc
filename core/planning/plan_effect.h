#pragma once

#include "core/planning/reconcile.h"

#include <vector>

namespace topwire {

/// What one plan would change against another, from `today` on.
struct PlanEffect {
  std::vector<PlanDifference> differences;  ///< by key
  double hours = 0;  ///< worker-hours more in today's season; negative: fewer

  bool none() const;
};

/// Work that is over by `today` in both plans is left out; of the hours, all but what is
/// still to do.
PlanEffect effectBetween(const Orchard& orchard,
                         const Plan& before,
                         const Plan& after,
                         Day today);

/// Of putting `instead` in the place of the programme of its id.
PlanEffect effectOf(const Orchard& orchard,
                    const Trade& trade,
                    const Programme& instead,
                    Day today);

/// "6 tasks move", "2 come", "1 goes", "12 worker-hours more this season"; one sentence
/// saying so where nothing changes.
std::vector<Sentence> summaryOf(const PlanEffect& effect);

}  // namespace topwire
