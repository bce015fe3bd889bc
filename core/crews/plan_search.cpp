#include "core/crews/crew_dispatch.h"
#include "core/crews/dispatcher.h"
#include "core/crews/flat_problem.h"
#include "core/crews/job_values.h"

#include <array>
#include <memory>

namespace topwire {

namespace {

/// More jobs than these, about five hundred blocks' worth, gain nothing by a search of
/// any length that a person waits for.
constexpr std::size_t jobsAtMost = 2300;

using By = DispatchRule::By;
constexpr std::array rules{DispatchRule{By::price, 2, 0.1},
                           DispatchRule{By::price, 4, 0.1},
                           DispatchRule{By::price, 3, 0.3},
                           DispatchRule{By::slack, 3, 0},
                           DispatchRule{By::slack, 12, 0}};

/// Prices with a twentieth of every day gone on the way, as it is in most plans: what can
/// be done at full hours only is given up in time.
LabourFlow withMoves(const CrewProblem& problem, const LabourFlow& flow) {
  CrewProblem less = problem;
  const auto shorten = [](std::vector<Seconds>& lengths) {
    for (Seconds& length : lengths) length -= length / 20;
  };
  shorten(less.dayLength);
  for (Gang& gang : less.gangs) shorten(gang.length);
  return solveLabourFlow(less, flow.ranges);
}

/// SplitMix64 (Steele, Lea, Flood 2014): the same numbers with any library.
class Numbers {
public:
  explicit Numbers(std::uint64_t seed) : state_{seed} {}

  std::uint64_t next() {
    state_ += 0x9e3779b97f4a7c15U;
    std::uint64_t z = state_;
    z = (z ^ z >> 30) * 0xbf58476d1ce4e5b9U;
    z = (z ^ z >> 27) * 0x94d049bb133111ebU;
    return z ^ z >> 31;
  }

  int below(int bound) {
    return static_cast<int>(next() % static_cast<std::uint64_t>(bound));
  }

private:
  std::uint64_t state_;
};

/// Factors from a half to two, in 1024ths, the middle ones more often.
int someLift(Numbers& numbers) {
  const int away = numbers.below(512) + numbers.below(512) - 511;
  return away < 0 ? 1024 * 1024 / (1024 - 2 * away) : 1024 + 2 * away;
}

class Search {
public:
  explicit Search(const FlatProblem& problem) : problem_{problem} {}

  void tryRules(const LabourFlow& flow);
  void improve(const LabourFlow& flow, const SearchLimits& limits);
  CrewSchedule best();

private:
  std::vector<int> contested(const LabourFlow& flow) const;

  const FlatProblem& problem_;
  std::unique_ptr<JobValues> values_;
  std::unique_ptr<Dispatcher> dispatcher_;
  std::vector<int> lifts_;
  Loss loss_ = 0;
};

void Search::tryRules(const LabourFlow& flow) {
  for (const DispatchRule& rule : rules) {
    auto values = std::make_unique<JobValues>(problem_, flow, rule);
    auto dispatcher = std::make_unique<Dispatcher>(problem_, *values);
    const Loss loss = dispatcher->run();
    if (dispatcher_ && loss >= loss_) continue;
    loss_ = loss;
    dispatcher_ = std::move(dispatcher);
    values_ = std::move(values);
  }
}

void Search::improve(const LabourFlow& flow, const SearchLimits& limits) {
  const std::vector<int> jobs = contested(flow);
  if (jobs.empty()) return;
  lifts_.assign(problem_.jobs.size(), 1024);
  dispatcher_->startKeeping();
  dispatcher_->run(lifts_);
  dispatcher_->keep();
  Numbers numbers{limits.seed};
  for (int made = 0; made < limits.evaluations && loss_ > flow.bound; ++made) {
    const int changed =
        jobs[static_cast<std::size_t>(numbers.below(static_cast<int>(jobs.size())))];
    int& lift = lifts_[static_cast<std::size_t>(changed)];
    const int before = lift;
    lift = someLift(numbers);
    const int firstDay = problem_.job(changed).firstDay;
    const Loss loss = dispatcher_->runFrom(firstDay, lifts_, loss_);
    if (loss <= loss_) {
      loss_ = loss;
      dispatcher_->keep();
    } else {
      lift = before;
    }
  }
}

/// Jobs that may be done on a day on which labour is short; all, if it never is.
std::vector<int> Search::contested(const LabourFlow& flow) const {
  std::vector<int> found;
  for (const int number : problem_.byFirstDay) {
    const FlatJob& job = problem_.job(number);
    for (int day = job.firstDay; day <= job.lastDay; ++day)
      if (flow.priceOn(job.skill, day) > 0) {
        found.push_back(number);
        break;
      }
  }
  return found.empty() ? problem_.byFirstDay : found;
}

CrewSchedule Search::best() {
  dispatcher_->run(lifts_);
  return dispatcher_->schedule();
}

}  // namespace

CrewSchedule findPlan(const CrewProblem& problem,
                      const LabourFlow& flow,
                      const SearchLimits& limits) {
  const FlatProblem flat{problem};
  const bool few = problem.jobs.size() <= jobsAtMost;
  Search search{flat};
  search.tryRules(flow);
  if (few) search.tryRules(withMoves(problem, flow));
  if (few && limits.evaluations > 0) search.improve(flow, limits);
  return search.best();
}

}  // namespace topwire
