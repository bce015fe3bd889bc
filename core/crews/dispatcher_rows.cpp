#include "core/crews/dispatcher.h"
#include "core/crews/index.h"

#include <algorithm>
#include <tuple>

namespace topwire {

void Dispatcher::place(const Turn& turn, const Offer& offer) {
  const FlatJob& job = problem_.job(offer.job);
  GangState& gang = now_.gangs[at(turn.gang)];
  Placed placed;
  placed.gang = turn.gang;
  placed.day = day_;
  placed.job = offer.job;
  placed.workers = offer.workers;
  placed.begin = offer.begin;
  placeRows(job, offer, placed);
  placed.end =
      offer.begin + timeFor(placed.work, placed.workers, problem_.pace(job, turn.gang));
  if (offer.row >= 0)
    placeCarried(job, offer, turn.gang, placed.end);
  else if (job.firstDone >= 0)
    for (int row = 0; row < placed.rows; ++row)
      markDone(
          job,
          placed.listed ? listedRows_[at(placed.firstRow + row)] : placed.firstRow + row,
          placed.end);
  int& inBlock = blockStints_[at(job.block)];
  if (inBlock < 0) blocksUsed_.push_back(job.block);
  placed.nextInBlock = inBlock;
  inBlock = static_cast<int>(placed_.size());
  placed_.push_back(placed);
  if (day_ > job.closes) now_.late += placed.work * (day_ - job.closes) * job.perDayLate;
  gang.block = job.block;
  gang.ownJob = offer.job;
  if (!job.young) gang.forAll -= placed.end - turn.now;
  JobState& state = now_.jobs[at(offer.job)];
  state.owner = turn.gang;
  if (state.left == 0) today_[at(offer.job)] = 0;
  if (job.firstDone >= 0) wakeWaiting(offer, placed.end);
  if (placed.end < gang.dayEnd)
    push({placed.end, 2 + problem_.gangs[at(turn.gang)].skillCount, turn.gang});
}

void Dispatcher::placeRows(const FlatJob& job, const Offer& offer, Placed& placed) {
  JobState& state = now_.jobs[at(offer.job)];
  if (offer.rows > 0) return placeStretch(job, offer, placed);
  if (offer.rowByRow || offer.row >= 0) return placeRowByRow(job, offer, placed);
  const Seconds before = problem_.workOfFirst(job, state.nextRow);
  int end = job.rows;
  if (offer.work < state.left) {
    end = state.nextRow + 1;
    int beyond = job.rows;
    while (beyond - end > 1) {
      const int middle = end + (beyond - end) / 2;
      const bool fits = problem_.workOfFirst(job, middle) - before <= offer.capacity;
      (fits ? end : beyond) = middle;
    }
  }
  placed.firstRow = state.nextRow;
  placed.rows = end - state.nextRow;
  placed.work = problem_.workOfFirst(job, end) - before;
  stepTo(job, end, state);
  state.taken = end;
  state.left -= placed.work;
}

/// The rows that were summed when this was offered.
void Dispatcher::placeRowByRow(const FlatJob& job, const Offer& offer, Placed& placed) {
  JobState& state = now_.jobs[at(offer.job)];
  placed.listed = true;
  placed.firstRow = static_cast<int>(listedRows_.size());
  if (offer.row >= 0) {
    listedRows_.push_back(offer.row);
    placed.rows = 1;
    placed.work = offer.work;
    return;
  }
  for (int row = state.nextRow; row < job.rows && placed.work < offer.work; ++row) {
    char& taken = now_.taken[at(job.firstSum + row)];
    const Seconds work = problem_.workOfRow(job, row);
    if (taken != 0 || placed.work + work > offer.capacity
        || readyAt(job, row) > moment(offer.begin))
      continue;
    taken = 1;
    ++state.taken;
    placed.work += work;
    listedRows_.push_back(row);
  }
  placed.rows = static_cast<int>(listedRows_.size()) - placed.firstRow;
  state.left -= placed.work;
  stepOver(job, state);
}

/// To the next row that is not taken.
void Dispatcher::stepOver(const FlatJob& job, JobState& state) const {
  int next = state.nextRow;
  while (next < job.rows && now_.taken[at(job.firstSum + next)] != 0) ++next;
  stepTo(job, next, state);
}

void Dispatcher::stepTo(const FlatJob& job, int row, JobState& state) const {
  state.nextRow = row;
  state.nextWork = row < job.rows ? problem_.workOfRow(job, row) : 0;
}

/// Begins a row longer than a day, or goes on with it.
void Dispatcher::placeCarried(const FlatJob& job,
                              const Offer& offer,
                              int number,
                              Seconds end) {
  GangState& gang = now_.gangs[at(number)];
  if (gang.carriedJob < 0) {
    gang.carriedJob = offer.job;
    gang.carriedRow = offer.row;
    gang.carriedLeft = problem_.workOfRow(job, offer.row);
    now_.jobs[at(offer.job)].left -= gang.carriedLeft;
    now_.taken[at(job.firstSum + offer.row)] = 1;
    ++now_.jobs[at(offer.job)].taken;
    ++now_.jobs[at(offer.job)].carried;
  }
  gang.carriedLeft -= offer.work;
  if (gang.carriedLeft > 0) return;
  gang.carriedJob = -1;
  --now_.jobs[at(offer.job)].carried;
  markDone(job, offer.row, end);
}

void Dispatcher::markDone(const FlatJob& job, int row, Seconds end) {
  if (job.firstDone >= 0) now_.doneAt[at(job.firstDone + row)] = moment(end);
}

/// Gangs that found nothing may find what has waited for this job.
void Dispatcher::wakeWaiting(const Offer& offer, Seconds end) {
  for (const int waiting : problem_.waitingFor(offer.job)) {
    JobState& state = now_.jobs[at(waiting)];
    state.needed = std::max(state.needed, moment(end));
    if (isAllDone(problem_.asked().jobs[at(waiting)].needs)) state.free = state.needed;
    if (state.waits == 0) continue;
    state.waits = 0;
    today_[at(waiting)] = worth_[at(waiting)];
    if (worth_[at(waiting)] > 0) woken_.push_back(waiting);
  }
  for (const int gang : idle_)
    if (end < now_.gangs[at(gang)].dayEnd)
      push({end, 2 + problem_.gangs[at(gang)].skillCount, gang});
  idle_.clear();
}

bool Dispatcher::isAllDone(const std::vector<int>& jobs) const {
  return std::ranges::all_of(jobs, [this](int job) {
    return now_.jobs[at(job)].left == 0 && now_.jobs[at(job)].carried == 0;
  });
}

CrewSchedule Dispatcher::schedule() const {
  CrewSchedule plan;
  plan.loss = now_.late + leftBehind();
  for (const JobState& state : now_.jobs) plan.undone.push_back(state.left);
  for (const GangState& gang : now_.gangs)
    if (gang.carriedJob >= 0) plan.undone[at(gang.carriedJob)] += gang.carriedLeft;
  plan.stints.reserve(placed_.size());
  for (const Placed& placed : placed_) {
    Stint& stint = plan.stints.emplace_back();
    stint.gang = placed.gang;
    stint.day = placed.day;
    stint.job = placed.job;
    stint.begin = placed.begin;
    stint.end = placed.end;
    stint.workers = placed.workers;
    stint.work = placed.work;
    stint.rows.reserve(at(placed.rows));
    for (int row = placed.firstRow; row < placed.firstRow + placed.rows; ++row)
      stint.rows.push_back(placed.listed ? listedRows_[at(row)] : row);
  }
  std::ranges::sort(plan.stints, {}, [](const Stint& stint) {
    return std::tuple{stint.day, stint.gang, stint.begin};
  });
  plan.moving = movingIn(problem_.asked(), plan.stints);
  return plan;
}

}  // namespace topwire
