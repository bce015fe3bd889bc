#include "core/crews/crew_dispatch.h"
#include "core/crews/dispatcher.h"
#include "core/crews/flat_problem.h"
#include "core/crews/job_values.h"
#include "core/crews/row_trades.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace topwire {

namespace {

/// Trades for each job, and the most.
constexpr int tradesPerJob = 1500;
constexpr int mostTrades = 3'000'000;

/// How often, while it trades rows, the search has the whole plan gone through.
constexpr int passes = 10;

/// Of every day this much, in thousandths, goes in moves and whole rows in most plans:
/// with prices for the rest, what can be done at full hours only is given up in time.
constexpr Seconds goneEachDay = 50;

/// Rows in their order are worth this part of what is at stake.
constexpr Loss forTidiness = 20'000;

LabourFlow withLessTime(const CrewProblem& problem, const LabourFlow& flow) {
  CrewProblem less = problem;
  const auto shorten = [](std::vector<Seconds>& lengths) {
    for (Seconds& length : lengths) length -= length * goneEachDay / 1000;
  };
  shorten(less.dayLength);
  for (Gang& gang : less.gangs) shorten(gang.length);
  return solveLabourFlow(less, flow.ranges);
}

class Search {
public:
  Search(const CrewProblem& problem, const LabourFlow& flow)
      : problem_{problem}, flow_{flow}, prices_{&flow}, bestPrices_{&flow} {}

  void shortenDays() {
    shorter_ = withLessTime(problem_.asked(), flow_);
    prices_ = &*shorter_;
  }

  void dispatchBy(const DispatchRule& rule);
  void improve(const SearchLimits& limits);
  void spareMoves(const SearchLimits& limits);

  bool isBest() const { return best_.loss == flow_.bound; }

  CrewSchedule take() { return std::move(best_); }

private:
  void follow(Dispatcher& dispatcher, const Rounds& rounds, Loss mayLose);

  const FlatProblem problem_;
  const LabourFlow& flow_;
  std::optional<LabourFlow> shorter_;
  const LabourFlow* prices_;
  const LabourFlow* bestPrices_;
  DispatchRule bestRule_;
  CrewSchedule best_;
};

void Search::dispatchBy(const DispatchRule& rule) {
  const JobValues values{problem_, *prices_, rule};
  Dispatcher dispatcher{problem_, values};
  const Loss loss = dispatcher.run();
  if (!best_.undone.empty() && loss >= best_.loss) return;
  best_ = dispatcher.schedule();
  bestPrices_ = prices_;
  bestRule_ = rule;
}

/// `mayLose`: how much more than the best plan so far.
void Search::follow(Dispatcher& dispatcher, const Rounds& rounds, Loss mayLose) {
  if (dispatcher.follow(rounds) <= best_.loss + mayLose) best_ = dispatcher.schedule();
}

/// Of plans that lose nothing, the one with the fewest ways to go.
void Search::spareMoves(const SearchLimits& limits) {
  SearchNumbers numbers{limits.seed};
  RowTrades trades{problem_, flow_};
  const JobValues values{problem_, *bestPrices_, bestRule_};
  Dispatcher dispatcher{problem_, values};
  const CrewSchedule before = best_;
  trades.start(best_);
  trades.loseNothing();
  trades.trade(limits.evaluations / passes, 0, numbers);
  trades.tidy();
  follow(dispatcher, trades.rounds(), 0);
  if (best_.moving > before.moving) best_ = before;
}

void Search::improve(const SearchLimits& limits) {
  SearchNumbers numbers{limits.seed};
  RowTrades trades{problem_, flow_};
  const JobValues values{problem_, *bestPrices_, bestRule_};
  Dispatcher dispatcher{problem_, values};
  for (int pass = 1; pass <= passes && !isBest(); ++pass) {
    trades.start(best_);
    trades.trade(
        limits.evaluations / passes, 1024 * (passes - pass) / (passes - 1), numbers);
    follow(dispatcher, trades.rounds(), -1);
  }
  trades.start(best_);
  trades.tidy();
  follow(dispatcher, trades.rounds(), problem_.asked().stake() / forTidiness);
}

}  // namespace

SearchLimits searchLimits(const CrewProblem& problem) {
  const auto jobs = static_cast<int>(
      std::min<std::size_t>(problem.jobs.size(), mostTrades / tradesPerJob));
  SearchLimits limits;
  limits.evaluations = std::max(limits.evaluations, jobs * tradesPerJob);
  return limits;
}

CrewSchedule findPlan(const CrewProblem& problem,
                      const LabourFlow& flow,
                      const SearchLimits& limits) {
  using By = DispatchRule::By;
  Search search{problem, flow};
  search.dispatchBy({By::price, 3, 0.3});
  if (search.isBest()) {
    if (limits.evaluations > 0) search.spareMoves(limits);
    return search.take();
  }
  search.shortenDays();
  search.dispatchBy({By::price, 4, 0.1});
  if (limits.evaluations == 0) return search.take();
  search.dispatchBy({By::price, 2, 0.1});
  search.dispatchBy({By::price, 3, 0.3});
  search.dispatchBy({By::dueDate});
  search.improve(limits);
  return search.take();
}

}  // namespace topwire
