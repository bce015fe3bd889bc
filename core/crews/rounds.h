#pragma once

#include "core/crews/crew_problem.h"

#include <vector>

namespace topwire {

/// By gang and day, at `gang * days + day`: what the gang does that day, in its order.
using Rounds = std::vector<std::vector<Visit>>;

/// Behind the others, as part of the last visit where it is the next row of its job.
void addRow(std::vector<Visit>& round, int job, int row);

Rounds roundsOf(const CrewProblem& problem, const CrewSchedule& plan);

}  // namespace topwire
