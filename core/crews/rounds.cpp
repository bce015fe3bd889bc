#include "core/crews/rounds.h"

#include "core/crews/index.h"

namespace topwire {

bool isWhole(const CrewProblem& problem, const Stint& stint) {
  return stint.rows.size() != 1
         || stint.work == problem.jobs[at(stint.job)].rows[at(stint.rows.front())].work;
}

void addRow(std::vector<Stretch>& round, int job, int row) {
  if (!round.empty() && round.back().job == job && round.back().end() == row)
    ++round.back().rows;
  else
    round.push_back({job, row, 1});
}

Rounds roundsOf(const CrewProblem& problem, const CrewSchedule& plan) {
  Rounds rounds(problem.gangs.size() * at(problem.days));
  for (const Stint& stint : plan.stints) {
    auto& round = rounds[at(stint.gang * problem.days + stint.day)];
    for (const int row : stint.rows) addRow(round, stint.job, row);
  }
  return rounds;
}

}  // namespace topwire
