#include "core/crews/dispatcher.h"

#include "core/crews/index.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>

namespace topwire {

namespace {

/// How many jobs a gang looks at before it chooses.
constexpr int looksAt = 16;

/// How many it tries that turn out not to fit it: where it has found one, and at most.
constexpr int triesEnough = 64;
constexpr int triesAtMost = 400;

}  // namespace

Dispatcher::Dispatcher(const FlatProblem& problem, const JobValues& values)
    : problem_{problem}, values_{values} {
  const double keep = std::clamp(problem.asked().keepTogether, 0.0, 1.0);
  stay_ = 1024 + std::llround(keep * 1024);
  leave_ = 1024 - std::llround(keep * 614);
  now_.jobs.resize(problem.jobs.size());
  now_.gangs.resize(problem.gangs.size());
  now_.doneAt.resize(at(problem.doneSlots));
  today_.resize(problem.jobs.size());
  worth_.resize(problem.jobs.size());
  now_.ranked.resize(at(problem.asked().skills));
  blockStints_.assign(problem.asked().blocks.size(), -1);
  leastMove_ = problem.asked().move;
  for (const auto& moves : problem.asked().moveBetween)
    for (std::size_t to = 0; to < moves.size(); ++to)
      if (&moves != &problem.asked().moveBetween[to])
        leastMove_ = std::min(leastMove_, moves[to]);
  std::size_t rows = 0;
  for (const FlatJob& job : problem.jobs) rows += at(job.rows) + 1;
  now_.taken.resize(rows);
}

bool Dispatcher::Turn::after(const Turn& other) const {
  return std::tie(now, order, gang) > std::tie(other.now, other.order, other.gang);
}

void Dispatcher::reset() {
  for (std::size_t job = 0; job < now_.jobs.size(); ++job) {
    now_.jobs[job] = {};
    now_.jobs[job].left = problem_.jobs[job].work;
    stepTo(problem_.jobs[job], 0, now_.jobs[job]);
  }
  now_.gangs.assign(now_.gangs.size(), {});
  std::ranges::fill(now_.taken, char{0});
  std::ranges::fill(today_, 0);
  std::ranges::fill(worth_, 0);
  std::ranges::fill(now_.doneAt, never);
  for (RankedJobs& ranked : now_.ranked) ranked.clear();
  now_.opened = 0;
  now_.late = 0;
}

Loss Dispatcher::run(int days) {
  reset();
  std::ranges::fill(blockStints_, -1);
  placed_.clear();
  listedRows_.clear();
  for (int day = 0; day < std::min(days, problem_.days()); ++day) planDay(day);
  return now_.late + leftBehind();
}

Loss Dispatcher::follow(const Rounds& rounds, int days) {
  rounds_ = &rounds;
  const Loss loss = run(days);
  rounds_ = nullptr;
  return loss;
}

Loss Dispatcher::leftBehind() const {
  Loss loss = 0;
  for (std::size_t job = 0; job < now_.jobs.size(); ++job)
    loss += now_.jobs[job].left * problem_.jobs[job].leftUndone;
  for (const GangState& gang : now_.gangs)
    if (gang.carriedJob >= 0)
      loss += gang.carriedLeft * problem_.job(gang.carriedJob).leftUndone;
  return loss;
}

void Dispatcher::planDay(int day) {
  day_ = day;
  dayLength_ = problem_.asked().lengthOf(day);
  if (dayLength_ == 0) return;
  for (const int block : blocksUsed_) blockStints_[at(block)] = -1;
  blocksUsed_.clear();
  idle_.clear();
  woken_.clear();
  cramped_.clear();
  rankJobs();
  queueGangs();
  while (!turns_.empty()) {
    const Turn turn = turns_.front();
    std::pop_heap(turns_.begin(), turns_.end(), [](const Turn& one, const Turn& other) {
      return one.after(other);
    });
    turns_.pop_back();
    take(turn);
  }
}

bool Dispatcher::isOver(int job) const {
  return now_.jobs[at(job)].left == 0 || day_ > problem_.job(job).lastDay;
}

/// For something that can be done no more.
bool Dispatcher::waitsInVain(int job) const {
  const auto& jobs = problem_.asked().jobs;
  return std::ranges::any_of(jobs[at(job)].needs,
                             [&](int needed) { return jobs[at(needed)].last < day_; });
}

void Dispatcher::rankJobs() {
  const auto& opening = problem_.byFirstDay;
  while (now_.opened < opening.size()
         && problem_.job(opening[now_.opened]).firstDay <= day_) {
    const int job = opening[now_.opened++];
    now_.ranked[at(problem_.job(job).skill)].add(job);
  }
  const auto worthOf = [&](int number) -> std::int64_t {
    const FlatJob& job = problem_.job(number);
    JobState& state = now_.jobs[at(number)];
    std::int64_t& worth = today_[at(number)];
    worth = worth_[at(number)] = 0;
    if (isOver(number)) return -1;
    if (!problem_.openOn(job, day_)) return 0;
    worth = values_.worth(job, day_, state.left);
    worth_[at(number)] = worth;
    if (state.waits == never && waitsInVain(number)) state.waits = 0;
    return state.waits == never ? worth = 0 : worth;
  };
  const std::size_t front = 3 * problem_.gangs.size() + 2 * looksAt;
  for (RankedJobs& ranked : now_.ranked) ranked.rankBy(worthOf, front);
}

void Dispatcher::queueGangs() {
  fewWorkers_ = std::numeric_limits<int>::max();
  for (int gang = 0; gang < static_cast<int>(now_.gangs.size()); ++gang) {
    GangState& state = now_.gangs[at(gang)];
    const GangDay& today = problem_.gangDay(gang, day_);
    state.workers = today.workers;
    state.dayEnd = today.length;
    state.forAll = today.forAll;
    state.block = -1;
    if (today.workers == 0) continue;
    fewWorkers_ = std::min(fewWorkers_, (3 * today.workers + 3) / 4);
    int order = 2 + problem_.gangs[at(gang)].skillCount;
    if (!problem_.pinsOf(gang, day_).empty())
      order = 0;
    else if (state.carriedJob >= 0)
      order = 1;
    push({0, order, gang});
  }
}

void Dispatcher::push(Turn turn) {
  turns_.push_back(turn);
  std::push_heap(turns_.begin(), turns_.end(), [](const Turn& one, const Turn& other) {
    return one.after(other);
  });
}

void Dispatcher::take(const Turn& turn) {
  if (takePinned(turn)) return;
  const GangState& gang = now_.gangs[at(turn.gang)];
  const int carried = gang.carriedJob;
  if (carried >= 0 && problem_.openOn(problem_.job(carried), day_)
      && takeOffered(turn, carried))
    return;
  if (takeStretch(turn)) return;
  Offer best;
  if (gang.ownJob >= 0 && today_[at(gang.ownJob)] > 0) compare(turn, gang.ownJob, best);
  if (gang.block >= 0) offerInBlock(turn, best);
  offerAny(turn, woken_, best);
  offerRanked(turn, best);
  if (best.job < 0) offerAny(turn, cramped_, best);
  if (best.job >= 0)
    place(turn, best);
  else
    idle_.push_back(turn.gang);
}

bool Dispatcher::takePinned(const Turn& turn) {
  for (const GangPin& pin : problem_.pinsOf(turn.gang, day_))
    if (takeOffered(turn, pin.job)) return true;
  return false;
}

bool Dispatcher::takeOffered(const Turn& turn, int job) {
  Offer offer;
  if (!fit(turn, job, offer)) return false;
  place(turn, offer);
  return true;
}

void Dispatcher::offerInBlock(const Turn& turn, Offer& best) {
  const auto skills = problem_.gangs[at(turn.gang)].skills;
  for (const int job : problem_.jobsOfBlock(now_.gangs[at(turn.gang)].block))
    if (today_[at(job)] > 0 && (skills >> problem_.job(job).skill & 1U) != 0)
      compare(turn, job, best);
}

void Dispatcher::offerAny(const Turn& turn, const std::vector<int>& jobs, Offer& best) {
  const auto skills = problem_.gangs[at(turn.gang)].skills;
  int looked = 0;
  for (const int job : jobs) {
    if (now_.jobs[at(job)].left == 0 || (skills >> problem_.job(job).skill & 1U) == 0)
      continue;
    compare(turn, job, best);
    if (++looked == looksAt) return;
  }
}

void Dispatcher::offerRanked(const Turn& turn, Offer& best) {
  // No other block is worth the way there.
  const GangState& gang = now_.gangs[at(turn.gang)];
  if (gang.block >= 0 && gang.dayEnd - turn.now < 2 * leastMove_) return;
  const auto skills = problem_.gangs[at(turn.gang)].skills;
  heads_.clear();
  for (int skill = 0; skill < static_cast<int>(now_.ranked.size()); ++skill)
    if ((skills >> skill & 1U) != 0)
      heads_.emplace_back(skill, now_.ranked[at(skill)].next(0, today_));
  const std::int64_t away = mostShareAway(turn);
  int looked = 0;
  for (int tried = 0;
       looked < looksAt && tried < (best.job < 0 ? triesAtMost : triesEnough);
       ++tried) {
    std::pair<int, std::size_t>* head = nullptr;
    for (auto& one : heads_) {
      const RankedJobs& ranked = now_.ranked[at(one.first)];
      if (one.second == ranked.size()) continue;
      if (head == nullptr
          || ranked[one.second].before(now_.ranked[at(head->first)][head->second]))
        head = &one;
    }
    if (head == nullptr) return;
    RankedJobs& ranked = now_.ranked[at(head->first)];
    const RankedJob next = ranked[head->second];
    // Nor, but for one of the gang's own, can any further down do better than what was
    // found.
    if (next.worth * away <= best.score) return;
    if (compare(turn, next.job, best)) ++looked;
    head->second = ranked.next(head->second + 1, today_);
  }
}

/// The greatest share of what is left of the day that can be spent at work in another
/// block, as `score` counts it.
std::int64_t Dispatcher::mostShareAway(const Turn& turn) const {
  if (now_.gangs[at(turn.gang)].block < 0 || values_.isStrictOrder()) return 1024;
  const Seconds left = now_.gangs[at(turn.gang)].dayEnd - turn.now;
  const std::int64_t share = (left - leastMove_) * 1024 / left + 1;
  return share * share / 1024 + 1;
}

bool Dispatcher::compare(const Turn& turn, int job, Offer& best) {
  Offer offer;
  if (!fit(turn, job, offer)) return false;
  // It would spend longer on the way than at work.
  if (offer.time < offer.begin - turn.now) return false;
  offer.score = score(turn, offer);
  if (offer.score > best.score || (offer.score == best.score && job < best.job))
    best = offer;
  return 4 * offer.workers >= 3 * now_.gangs[at(turn.gang)].workers;
}

}  // namespace topwire
