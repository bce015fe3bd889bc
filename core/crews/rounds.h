#pragma once

#include "core/crews/crew_problem.h"

#include <vector>

namespace topwire {

/// A gang at some rows of one job on one day.
struct Visit {
  int job = 0;
  int first = 0;  ///< index into CrewJob::rows
  int rows = 0;

  int end() const { return first + rows; }
};

/// By gang and day, at `gang * days + day`: what the gang does that day, in its order.
using Rounds = std::vector<std::vector<Visit>>;

Rounds roundsOf(const CrewProblem& problem, const CrewSchedule& plan);

}  // namespace topwire
