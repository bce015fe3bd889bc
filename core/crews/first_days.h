#pragma once

#include "core/crews/crew_problem.h"
#include "core/crews/labour_flow.h"

#include <optional>
#include <vector>

namespace topwire {

/// A plan of a problem before rows of it were ticked.
struct EarlierPlan {
  const CrewProblem& problem;
  const CrewSchedule& schedule;
  std::vector<int> jobNow;  ///< by its jobs: their number now; -1: done
};

/// The earlier plan gone on with: of the first `days` each gang does what it was to do,
/// and fills by price the time that ticked rows leave it; later days stay as they were,
/// less what is done by then. Nothing where more has changed than rows, or where a row
/// is carried from day to day: then all has to be dispatched anew.
std::optional<CrewSchedule> redoFirstDays(const CrewProblem& problem,
                                          const LabourFlow& flow,
                                          const EarlierPlan& earlier,
                                          int days);

}  // namespace topwire
