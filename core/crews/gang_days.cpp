#include "core/crews/gang_days.h"

#include "core/crews/index.h"

#include <algorithm>

namespace topwire {

int GangDays::workersAt(int which, const FlatJob& job) const {
  return std::min(hoursOf(which).workers, problem_.blockMost[at(job.block)]);
}

bool GangDays::mayHold(int which, const FlatJob& job) const {
  const int day = dayOf(which);
  if (!problem_.openOn(job, day) || hoursOf(which).workers == 0) return false;
  if ((problem_.gangs[at(gangOf(which))].skills >> job.skill & 1U) == 0) return false;
  return problem_.blockShuts[at(job.block)] == 0
         || problem_.asked().blocks[at(job.block)].closedUntil(day) == 0;
}

Seconds GangDays::workOf(const Visit& visit) const {
  const FlatJob& job = problem_.job(visit.job);
  return problem_.workOfFirst(job, visit.end()) - problem_.workOfFirst(job, visit.first);
}

Seconds GangDays::timeOf(int which, const Visit& visit) const {
  const FlatJob& job = problem_.job(visit.job);
  const Seconds workers = workersAt(which, job);
  const int pace = problem_.pace(job, gangOf(which));
  if (pace == 1000) return (workOf(visit) + workers - 1) / workers;
  return (workOf(visit) * pace + 1000 * workers - 1) / (1000 * workers);
}

Seconds GangDays::freeAfter(int which, const Round& round) const {
  const GangDay& hours = hoursOf(which);
  Seconds time = 0;
  Seconds young = 0;
  int block = -1;
  for (const Visit& visit : round) {
    const FlatJob& job = problem_.job(visit.job);
    if (block >= 0) time += problem_.asked().moveFrom(block, job.block);
    block = job.block;
    const Seconds here = timeOf(which, visit);
    time += here;
    if (job.young) young += here;
  }
  const Seconds forOthers = hours.forAll - (time - young);
  const Seconds left = hours.length - time;
  return forOthers < 0 ? std::min(forOthers, left) : left;
}

int GangDays::rowsThatFit(int which,
                          const Round& round,
                          Seconds free,
                          const Visit& visit) const {
  const int block = problem_.job(visit.job).block;
  const auto isThere = [&](const Visit& known) {
    return problem_.job(known.job).block == block;
  };
  if (!round.empty() && std::ranges::none_of(round, isThere))
    free -= problem_.asked().moveFrom(problem_.job(round.back().job).block, block);
  if (free <= 0) return 0;
  if (timeOf(which, visit) <= free) return visit.rows;
  int fit = 0;
  int beyond = visit.rows;
  while (beyond - fit > 1) {
    const int middle = (fit + beyond) / 2;
    const bool fits = timeOf(which, {visit.job, visit.first, middle}) <= free;
    (fits ? fit : beyond) = middle;
  }
  return fit;
}

}  // namespace topwire
