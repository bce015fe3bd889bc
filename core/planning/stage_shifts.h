#pragma once

#include "core/planning/outlooks.h"
#include "core/planning/reconcile.h"

#include <optional>
#include <vector>

namespace topwire {

/// A stage that came to lie elsewhere in these plantings, and how many tasks moved that
/// hang on it.
struct StageShift {
  int bbch = 0;
  int days = 0;             ///< later; negative: earlier
  std::optional<Day> seen;  ///< where it was not seen before
  std::vector<PlantingId> plantings;
  int tasks = 0;

  friend bool operator==(const StageShift&, const StageShift&) = default;
};

/// What of `differences` comes from stages that moved between two plannings: those seen
/// first, then by the number of tasks. `plan` is the new one; the outlooks are both of
/// `season`. A task counts under the stage behind the edge of its window that moved
/// furthest.
std::vector<StageShift> stageShifts(const Outlooks& before,
                                    const Outlooks& after,
                                    Season season,
                                    const Plan& plan,
                                    const std::vector<PlanDifference>& differences);

/// "Green tip at Creek 2 expected 4 days earlier: 6 tasks moved.", the first few.
std::vector<Sentence> sentencesOf(const Orchard& orchard,
                                  const std::vector<StageShift>& shifts);

}  // namespace topwire
