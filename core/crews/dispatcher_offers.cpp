#include "core/crews/dispatcher.h"
#include "core/crews/index.h"

#include <algorithm>

namespace topwire {

namespace {

/// Worker-seconds of a job that a gang of this pace gets done.
Seconds workIn(Seconds time, int workers, int pace) {
  return pace == 1000 ? time * workers : time * workers * 1000 / pace;
}

}  // namespace

bool Dispatcher::fit(const Turn& turn, int number, Offer& offer) {
  const FlatJob& job = problem_.job(number);
  if (now_.jobs[at(number)].left == 0 && now_.gangs[at(turn.gang)].carriedJob != number)
    return false;
  offer.job = number;
  offer.begin = startOf(job, turn);
  return fitTime(turn, job, offer) && fitRows(turn, job, offer);
}

/// When the gang can be there, and the block is open.
Seconds Dispatcher::startOf(const FlatJob& job, const Turn& turn) const {
  const int block = now_.gangs[at(turn.gang)].block;
  Seconds begin = turn.now;
  if (block >= 0 && block != job.block)
    begin += problem_.asked().moveFrom(block, job.block);
  if (problem_.blockShuts[at(job.block)] != 0)
    begin = std::max(begin, problem_.asked().blocks[at(job.block)].closedUntil(day_));
  return begin;
}

/// Workers for whom the block has room from `begin` to the day's end; `begin` is put off
/// until there is room for one.
int Dispatcher::roomFrom(const FlatJob& job, Seconds& begin) const {
  const int most = problem_.blockMost[at(job.block)];
  while (true) {
    int there = 0;
    Seconds next = dayLength_;
    for (int stint = blockStints_[at(job.block)]; stint >= 0;
         stint = placed_[at(stint)].nextInBlock) {
      const Placed& other = placed_[at(stint)];
      if (other.end <= begin) continue;
      there += other.workers;
      next = std::min(next, other.end);
    }
    if (there < most || begin >= dayLength_) return most - there;
    begin = next;
  }
}

bool Dispatcher::fitTime(const Turn& turn, const FlatJob& job, Offer& offer) {
  const GangState& gang = now_.gangs[at(turn.gang)];
  if (offer.begin >= gang.dayEnd) return false;
  const int room = roomFrom(job, offer.begin);
  offer.workers = std::min(gang.workers, room);
  if (offer.begin >= dayLength_) {
    today_[at(offer.job)] = 0;
    return false;
  }
  if (room < fewWorkers_ && blockStints_[at(job.block)] >= 0
      && today_[at(offer.job)] > 0) {
    today_[at(offer.job)] = 0;
    cramped_.push_back(offer.job);
  }
  offer.time = gang.dayEnd - offer.begin;
  if (!job.young)
    offer.time = std::min(offer.time, gang.forAll - (offer.begin - turn.now));
  if (offer.workers <= 0 || offer.time <= 0) return false;
  offer.capacity = workIn(offer.time, offer.workers, problem_.pace(job, turn.gang));
  return offer.capacity > 0;
}

bool Dispatcher::fitRows(const Turn& turn, const FlatJob& job, Offer& offer) {
  const GangState& gang = now_.gangs[at(turn.gang)];
  if (gang.carriedJob == offer.job) {
    offer.row = gang.carriedRow;
    offer.work = std::min(gang.carriedLeft, offer.capacity);
    return true;
  }
  offer.rowByRow = goesRowByRow(job, offer);
  if (offer.rowByRow) return fitRowByRow(turn, job, offer);
  const JobState& state = now_.jobs[at(offer.job)];
  offer.work = std::min(state.left, offer.capacity);
  return state.nextWork <= offer.capacity;
}

/// Rows may be done one after the other where all they need is done, and have been so
/// far.
bool Dispatcher::goesRowByRow(const FlatJob& job, const Offer& offer) const {
  const JobState& state = now_.jobs[at(offer.job)];
  if (!job.rowByRow) return state.taken != state.nextRow;
  return job.anyRowMayFit || state.taken != state.nextRow
         || state.free > moment(offer.begin);
}

/// When all that the row needs is done, but for what can be done no more.
Dispatcher::Moment Dispatcher::readyAt(const FlatJob& job, int row) const {
  Moment ready = 0;
  if (job.firstNeed < 0) return ready;
  for (const int slot : problem_.needsOf(job, row)) {
    const Moment done = now_.doneAt[at(slot)];
    if (done != never || day_ <= problem_.lastDayOfSlot(slot))
      ready = std::max(ready, done);
  }
  return ready;
}

/// Sums the rows that may be begun and fit, puts off the beginning if there are none yet,
/// and falls back on a row too long for any day.
bool Dispatcher::fitRowByRow(const Turn& turn, const FlatJob& job, Offer& offer) {
  JobState& state = now_.jobs[at(offer.job)];
  if (state.waits == never) return false;
  Moment next = never;
  int tooLong = -1;
  bool anyReady = false;
  offer.work = 0;
  for (int row = state.nextRow; row < job.rows; ++row) {
    if (now_.taken[at(job.firstSum + row)] != 0) continue;
    if (const Moment ready = readyAt(job, row); ready > moment(offer.begin)) {
      next = std::min(next, ready);
      continue;
    }
    anyReady = true;
    const Seconds work = problem_.workOfRow(job, row);
    if (offer.work + work <= offer.capacity)
      offer.work += work;
    else if (offer.work > 0 || !job.anyRowMayFit)
      break;
    else if (tooLong < 0 && isLongerThanDay(job, turn.gang, work))
      tooLong = row;
  }
  if (offer.work > 0) return true;
  if (tooLong >= 0 && now_.gangs[at(turn.gang)].carriedJob < 0) {
    offer.row = tooLong;
    offer.work = offer.capacity;
    return true;
  }
  if (next == never) {
    if (!anyReady) {
      state.waits = never;
      today_[at(offer.job)] = 0;
    }
    return false;
  }
  if (next >= moment(dayLength_)) return false;
  offer.begin = next - moment(0);
  return fitTime(turn, job, offer) && fitRowByRow(turn, job, offer);
}

bool Dispatcher::isLongerThanDay(const FlatJob& job, int gang, Seconds work) const {
  const GangDay& today = problem_.gangDay(gang, day_);
  const int most = problem_.blockMost[at(job.block)];
  const Seconds whole = job.young ? today.length : today.forAll;
  return work > workIn(whole, std::min(today.workers, most), problem_.pace(job, gang));
}

/// What else the gang finds to do in that block, worth at least half as much.
Seconds Dispatcher::otherWorkInBlock(const Turn& turn, const Offer& offer) const {
  const auto skills = problem_.gangs[at(turn.gang)].skills;
  const FlatJob& job = problem_.job(offer.job);
  Seconds work = 0;
  for (const int other : problem_.jobsOfBlock(job.block))
    if (other != offer.job && today_[at(other)] * 2 >= today_[at(offer.job)]
        && (skills >> problem_.job(other).skill & 1U) != 0)
      work += now_.jobs[at(other)].left;
  return work;
}

/// The job's worth, less what is lost on the way there and onwards, by waiting, and by
/// workers for whom there is no room.
std::int64_t Dispatcher::score(const Turn& turn, const Offer& offer) const {
  const std::int64_t worth = today_[at(offer.job)];
  if (values_.isStrictOrder()) return worth;
  const FlatJob& job = problem_.job(offer.job);
  const int workers = now_.gangs[at(turn.gang)].workers;
  Seconds work = offer.work;
  if (work < offer.capacity)
    work = std::min(offer.capacity, work + otherWorkInBlock(turn, offer));
  Seconds spent = work;
  if (const int pace = problem_.pace(job, turn.gang); pace != 1000)
    spent = spent * pace / 1000;
  if (workers != offer.workers) spent = spent * workers / offer.workers;
  spent += (offer.begin - turn.now) * workers;
  if (work < offer.capacity) spent += problem_.asked().move * workers / 2;
  const std::int64_t share = (work << 10) / spent;
  // Twice, since what is lost on the way is lost for all that has to be done today.
  return worth * share / 1024 * share / 1024 * togetherness(turn, offer.job);
}

std::int64_t Dispatcher::togetherness(const Turn& turn, int number) const {
  const JobState& state = now_.jobs[at(number)];
  if (state.owner < 0) return 1024;
  if (state.owner == turn.gang) return stay_;
  const FlatJob& job = problem_.job(number);
  const GangState& owner = now_.gangs[at(state.owner)];
  const Seconds perDay = owner.workers * owner.dayEnd;
  const bool ownerHasTime = state.left <= (job.closes - day_) * perDay;
  return ownerHasTime ? leave_ : 1024;
}

}  // namespace topwire
