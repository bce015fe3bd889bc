#include "core/crews/job_values.h"

#include "core/crews/index.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace topwire {

namespace {

constexpr std::int64_t one = 1 << 14;
constexpr int farOff = 64;
constexpr std::int64_t highest = std::int64_t{1} << 40;

/// Falls off with days in hand as exp(-days / slackDays) nearly does, by whole numbers,
/// since machines differ in how they round exp.
std::vector<std::int64_t> fadeBy(double slackDays) {
  const std::int64_t k = std::max<std::int64_t>(1, std::llround(slackDays * 16));
  std::vector<std::int64_t> fade{one << 20};
  for (int day = 1; day <= farOff; ++day) fade.push_back(fade.back() * k / (k + 16));
  for (std::int64_t& share : fade) share >>= 20;
  return fade;
}

}  // namespace

JobValues::JobValues(const FlatProblem& problem,
                     const LabourFlow& flow,
                     const DispatchRule& rule)
    : problem_{problem}
    , rule_{rule}
    , mix_{std::clamp<std::int64_t>(std::llround(rule.mix * one), 0, one)}
    , fade_{fadeBy(rule.slackDays)} {
  if (rule.by != DispatchRule::By::price) return;
  Seconds work = 1;
  Loss stake = 0;
  for (std::size_t job = 0; job < problem.jobs.size(); ++job) {
    work += problem.jobs[job].work;
    stake += problem.jobs[job].work * problem.asked().jobs[job].weight();
  }
  usual_ = stake / work;
  for (int skill = 0; skill < problem.asked().skills; ++skill) {
    auto& prices = prices_.emplace_back();
    for (int day = 0; day < problem.days(); ++day)
      prices.push_back(flow.priceOn(skill, day));
  }
  ahead_.resize(at(problem.openSlots));
  for (const FlatJob& job : problem.jobs) lost_.push_back(job.leftUndone);
  // What waits for a job mostly opens later.
  for (auto job = problem.byFirstDay.rbegin(); job != problem.byFirstDay.rend(); ++job)
    addWaiting(*job);
  for (const int job : problem.byFirstDay) lookAhead(job);
}

Loss JobValues::leastPrice(const FlatJob& job) const {
  const auto& prices = prices_[at(job.skill)];
  Loss least = std::numeric_limits<Loss>::max();
  for (int day = job.firstDay; day <= job.lastDay; ++day)
    if (problem_.openOn(job, day)) least = std::min(least, prices[at(day)]);
  return least;
}

/// Rows left undone here leave those undone that need them and cannot be done later, less
/// what their labour would have been worth elsewhere.
void JobValues::addWaiting(int number) {
  const FlatJob& job = problem_.job(number);
  for (const int waiting : problem_.waitingFor(number)) {
    const FlatJob& other = problem_.job(waiting);
    if (other.lastDay > problem_.asked().jobs[at(number)].last) continue;
    const Loss gain = lost_[at(waiting)] - leastPrice(other);
    if (gain > 0) lost_[at(number)] += gain * other.work / std::max<Seconds>(1, job.work);
  }
}

void JobValues::lookAhead(int number) {
  const FlatJob& job = problem_.job(number);
  Ahead best;
  best.fill(lost_[at(number)]);
  const auto& prices = prices_[at(job.skill)];
  for (int day = job.lastDay; day >= job.firstDay; --day) {
    ahead_[at(job.firstSlot + day - job.firstDay)] = best;
    if (!problem_.openOn(job, day)) continue;
    Loss cost = prices[at(day)];
    if (day > job.closes) cost += (day - job.closes) * job.perDayLate;
    for (Loss& known : best)
      if (cost < known) std::swap(cost, known);
  }
}

Loss JobValues::saved(const FlatJob& job, int day, Seconds left) const {
  const Ahead& ahead = ahead_[at(job.firstSlot + day - job.firstDay)];
  std::size_t needed = 0;
  if (left > job.dayRoom)
    needed = std::min<std::size_t>(daysAhead,
                                   at(static_cast<int>((left - 1) / job.dayRoom) + 1))
             - 1;
  const Loss late = day > job.closes ? (day - job.closes) * job.perDayLate : 0;
  return std::max<Loss>(0, ahead[needed] - late);
}

std::int64_t JobValues::fading(std::int64_t weight, int daysInHand) const {
  return weight * fade_[at(std::clamp(daysInHand, 0, farOff))];
}

/// Of jobs worth the same the one that closes first goes first, whatever they weigh.
std::int64_t JobValues::nearness(const FlatJob& job, int day, Seconds left) const {
  int inHand = job.closes - day;
  if (left > job.dayRoom) inHand -= static_cast<int>((left - 1) / job.dayRoom);
  const Loss weight =
      job.perDayLate > 0 ? std::min(7 * job.perDayLate, job.leftUndone) : job.leftUndone;
  return fading(std::min(usual_, weight), inHand);
}

std::int64_t JobValues::worth(const FlatJob& job, int day, Seconds left) const {
  if (isStrictOrder()) return highest - job.closes;
  const std::int64_t worth =
      one * saved(job, day, left) + mix_ * nearness(job, day, left) / one;
  return std::clamp<std::int64_t>(worth, 1, highest);
}

}  // namespace topwire
