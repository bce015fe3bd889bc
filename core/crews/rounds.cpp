#include "core/crews/rounds.h"

#include "core/crews/index.h"

namespace topwire {

Rounds roundsOf(const CrewProblem& problem, const CrewSchedule& plan) {
  Rounds rounds(problem.gangs.size() * at(problem.days));
  for (const Stint& stint : plan.stints)
    for (const int row : stint.rows) {
      auto& round = rounds[at(stint.gang * problem.days + stint.day)];
      if (!round.empty() && round.back().job == stint.job && round.back().end() == row)
        ++round.back().rows;
      else
        round.push_back({stint.job, row, 1});
    }
  return rounds;
}

}  // namespace topwire
