#include "core/crews/round_fit.h"

#include "core/crews/index.h"

#include <algorithm>

namespace topwire {

int RoundFit::workersAt(int which, const FlatJob& job) const {
  return std::min(hoursOf(which).workers, problem_.blockMost[at(job.block)]);
}

bool RoundFit::mayHold(int which, const FlatJob& job) const {
  const int day = dayOf(which);
  if (!problem_.openOn(job, day) || hoursOf(which).workers == 0) return false;
  if ((problem_.gangs[at(gangOf(which))].skills >> job.skill & 1U) == 0) return false;
  return problem_.blockShuts[at(job.block)] == 0
         || problem_.asked().blocks[at(job.block)].closedUntil(day) == 0;
}

Seconds RoundFit::workOf(const Stretch& stretch) const {
  const FlatJob& job = problem_.job(stretch.job);
  return problem_.workOfFirst(job, stretch.end())
         - problem_.workOfFirst(job, stretch.first);
}

Seconds RoundFit::timeOf(int which, const Stretch& stretch) const {
  const FlatJob& job = problem_.job(stretch.job);
  const Seconds workers = workersAt(which, job);
  const int pace = problem_.pace(job, gangOf(which));
  if (pace == 1000) return (workOf(stretch) + workers - 1) / workers;
  return (workOf(stretch) * pace + 1000 * workers - 1) / (1000 * workers);
}

Seconds RoundFit::freeAfter(int which, const Round& round) const {
  const GangDay& hours = hoursOf(which);
  Seconds time = 0;
  Seconds young = 0;
  int block = -1;
  for (const Stretch& stretch : round) {
    const FlatJob& job = problem_.job(stretch.job);
    if (block >= 0) time += problem_.asked().moveFrom(block, job.block);
    block = job.block;
    const Seconds here = timeOf(which, stretch);
    time += here;
    if (job.young) young += here;
  }
  const Seconds forOthers = hours.forAll - (time - young);
  const Seconds left = hours.length - time;
  return forOthers < 0 ? std::min(forOthers, left) : left;
}

int RoundFit::rowsThatFit(int which,
                          const Round& round,
                          Seconds free,
                          const Stretch& stretch) const {
  const int block = problem_.job(stretch.job).block;
  const auto isThere = [&](const Stretch& known) {
    return problem_.job(known.job).block == block;
  };
  if (!round.empty() && std::ranges::none_of(round, isThere))
    free -= problem_.asked().moveFrom(problem_.job(round.back().job).block, block);
  if (free <= 0) return 0;
  if (timeOf(which, stretch) <= free) return stretch.rows;
  int fit = 0;
  int beyond = stretch.rows;
  while (beyond - fit > 1) {
    const int middle = (fit + beyond) / 2;
    const bool fits = timeOf(which, {stretch.job, stretch.first, middle}) <= free;
    (fits ? fit : beyond) = middle;
  }
  return fit;
}

}  // namespace topwire
