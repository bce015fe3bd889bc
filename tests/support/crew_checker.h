#pragma once

#include "core/crews/crew_problem.h"

#include <string>
#include <vector>

namespace topwire::testing {

/// All that a schedule breaks of what the problem asks, a sentence each. Written from
/// what core/crews/crew_problem.h says, knowing nothing of how schedules are made.
std::vector<std::string> violations(const CrewProblem& problem,
                                    const CrewSchedule& schedule);

/// The loss of what the stints do and leave.
Loss lossOf(const CrewProblem& problem, const CrewSchedule& schedule);

}  // namespace topwire::testing
