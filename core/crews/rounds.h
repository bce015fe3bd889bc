#pragma once

#include "core/crews/crew_problem.h"

#include <vector>

namespace topwire {

/// By gang and day, at `gang * days + day`: what the gang does that day, in its order.
using Rounds = std::vector<std::vector<Stretch>>;

/// Behind the others, as part of the last stretch where it is the next row of its job.
void addRow(std::vector<Stretch>& round, int job, int row);

Rounds roundsOf(const CrewProblem& problem, const CrewSchedule& plan);

}  // namespace topwire
