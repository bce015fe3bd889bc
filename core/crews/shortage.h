#pragma once

#include "core/crews/crew_problem.h"

#include <functional>
#include <vector>

namespace topwire {

/// Work that cannot all be done in its windows, with the days that are too few.
struct Shortage {
  std::vector<int> jobs;  ///< of the skill, that compete for these days
  int skill = 0;
  int firstDay = 0;
  int lastDay = 0;      ///< inclusive
  int workingDays = 0;  ///< among them
  Seconds missing = 0;  ///< worker-seconds that find no place
  /// What remains with any number of workers: blocks hold only so many, windows are only
  /// so long.
  Seconds beyondHelp = 0;
  /// The fewest further workers of that skill, all these days, with whom nothing but
  /// `beyondHelp` is missing; 0 where nobody can help.
  int workersMore = 0;
};

/// By maximum flow over the jobs' last useful days (`closes` of jobs to be kept in time,
/// as `deadlineOf` answers), the earliest first. Moves are not counted, so it is missing
/// at least that much.
std::vector<Shortage> findShortages(const CrewProblem& problem,
                                    const std::function<int(const CrewJob&)>& deadlineOf);

}  // namespace topwire
