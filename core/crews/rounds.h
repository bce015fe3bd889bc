#pragma once

#include "core/crews/crew_problem.h"

#include <vector>

namespace topwire {

/// By gang and day, at `gang * days + day`: what the gang does that day, in its order.
using Rounds = std::vector<std::vector<Stretch>>;

/// Has all of its rows wholly; a row that goes on another day has a stint to itself.
bool isWhole(const CrewProblem& problem, const Stint& stint);

/// Behind the others, as part of the last stretch where it is the next row of its job.
void addRow(std::vector<Stretch>& round, int job, int row);

Rounds roundsOf(const CrewProblem& problem, const CrewSchedule& plan);

}  // namespace topwire
