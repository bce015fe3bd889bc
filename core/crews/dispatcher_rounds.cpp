#include "core/crews/dispatcher.h"
#include "core/crews/index.h"

#include <algorithm>

namespace topwire {

const std::vector<Stretch>& Dispatcher::roundOf(int gang) const {
  static const std::vector<Stretch> none;
  if (rounds_ != nullptr) return (*rounds_)[at(gang * problem_.days() + day_)];
  const auto& agreed = problem_.asked().agreed;
  return day_ == 0 && at(gang) < agreed.size() ? agreed[at(gang)] : none;
}

/// The first stretch of the gang's round that can be done now, as far as it can.
bool Dispatcher::takeStretch(const Turn& turn) {
  const auto skills = problem_.gangs[at(turn.gang)].skills;
  for (const Stretch& stretch : roundOf(turn.gang)) {
    const FlatJob& job = problem_.job(stretch.job);
    const bool isAble = (skills >> job.skill & 1U) != 0;
    if (!isAble || isOver(stretch.job) || !problem_.openOn(job, day_)) continue;
    int row = stretch.first;
    while (row < stretch.end() && isTaken(stretch.job, row)) ++row;
    Offer offer;
    if (row == stretch.end() || !fitStretch(turn, stretch, row, offer)) continue;
    place(turn, offer);
    return true;
  }
  return false;
}

bool Dispatcher::isTaken(int job, int row) const {
  return row < now_.jobs[at(job)].nextRow
         || now_.taken[at(problem_.job(job).firstSum + row)] != 0;
}

/// From `row` on; a gang that finds room for few of its workers does better elsewhere.
bool Dispatcher::fitStretch(const Turn& turn,
                            const Stretch& stretch,
                            int row,
                            Offer& offer) {
  const FlatJob& job = problem_.job(stretch.job);
  offer.job = stretch.job;
  offer.begin = startOf(job, turn);
  if (!fitTime(turn, job, offer)) return false;
  const int workers = now_.gangs[at(turn.gang)].workers;
  if (4 * offer.workers < 3 * std::min(workers, problem_.blockMost[at(job.block)]))
    return false;
  offer.first = row;
  for (; row < stretch.end() && !isTaken(stretch.job, row); ++row) {
    const Seconds work = problem_.workOfRow(job, row);
    const bool fits = offer.work + work <= offer.capacity;
    if (!fits || readyAt(job, row) > moment(offer.begin)) break;
    offer.work += work;
    ++offer.rows;
  }
  return offer.rows > 0 || fitLongRow(turn, row, offer);
}

/// Begins a row that is too long for any day, and goes on the next.
bool Dispatcher::fitLongRow(const Turn& turn, int row, Offer& offer) {
  const FlatJob& job = problem_.job(offer.job);
  if (now_.gangs[at(turn.gang)].carriedJob >= 0 || readyAt(job, row) > moment(offer.begin)
      || !isLongerThanDay(job, turn.gang, problem_.workOfRow(job, row)))
    return false;
  offer.row = row;
  offer.work = offer.capacity;
  return true;
}

void Dispatcher::placeStretch(const FlatJob& job, const Offer& offer, Placed& placed) {
  JobState& state = now_.jobs[at(offer.job)];
  std::fill_n(now_.taken.begin() + job.firstSum + offer.first, offer.rows, 1);
  state.taken += offer.rows;
  state.left -= offer.work;
  placed.firstRow = offer.first;
  placed.rows = offer.rows;
  placed.work = offer.work;
  stepOver(job, state);
}

}  // namespace topwire
