// How long crew plans take to make, and how good they are.
//
//   crew_plan_bench [options of the library]   times, beside earliest due date and CLP
//   crew_plan_bench table [BLOCKS SEEDS]       loss above the bound, in % of the stake

#include "core/crews/crew_dispatch.h"
#include "core/crews/first_days.h"
#include "core/crews/labour_network.h"
#include "tests/support/crew_instances.h"

#include <benchmark/benchmark.h>
#include <coin/Clp_C_Interface.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <numeric>
#include <string>
#include <vector>

namespace topwire::testing {

namespace {

using By = DispatchRule::By;
constexpr DispatchRule byPrice{By::price, 4, 0.1};
constexpr DispatchRule byDueDate{By::dueDate, 0, 0};

/// The same model as the flow's, as any linear program: a row for each node.
double solveWithClp(const LabourNetwork& network, const CrewProblem& problem) {
  std::vector<CoinBigIndex> starts{0};
  std::vector<int> rows;
  std::vector<double> factors;
  std::vector<double> rooms;
  std::vector<double> costs;
  for (const auto& arc : network.arcs) {
    rows.insert(rows.end(), {arc.from, arc.to});
    factors.insert(factors.end(), {1, -1});
    starts.push_back(static_cast<CoinBigIndex>(rows.size()));
    rooms.push_back(static_cast<double>(arc.room));
    costs.push_back(static_cast<double>(arc.cost));
  }
  std::vector<double> supply(static_cast<std::size_t>(network.nodes));
  for (std::size_t job = 0; job < problem.jobs.size(); ++job) {
    supply[job] = static_cast<double>(problem.jobs[job].work());
    supply[static_cast<std::size_t>(network.sink)] -= supply[job];
  }
  const std::vector<double> least(rooms.size());
  Clp_Simplex* model = Clp_newModel();
  Clp_setLogLevel(model, 0);
  Clp_loadProblem(model,
                  static_cast<int>(rooms.size()),
                  network.nodes,
                  starts.data(),
                  rows.data(),
                  factors.data(),
                  least.data(),
                  rooms.data(),
                  costs.data(),
                  supply.data(),
                  supply.data());
  Clp_dual(model, 0);
  const double loss = Clp_objectiveValue(model);
  Clp_deleteModel(model);
  return loss;
}

CrewProblem problemOf(const benchmark::State& state, int days = 56) {
  return orchardProblem({static_cast<int>(state.range(0)), days, 1.2, 1});
}

LabourFlow flowOf(const CrewProblem& problem) {
  return solveLabourFlow(problem, dayRanges(problem.days));
}

void flow(benchmark::State& state) {
  const CrewProblem problem = problemOf(state);
  for ([[maybe_unused]] auto round : state) benchmark::DoNotOptimize(flowOf(problem));
}

void flowByClp(benchmark::State& state) {
  const CrewProblem problem = problemOf(state);
  const auto network = labourNetwork(problem, dayRanges(problem.days));
  for ([[maybe_unused]] auto round : state)
    benchmark::DoNotOptimize(solveWithClp(network, problem));
}

void dispatchBy(benchmark::State& state, const DispatchRule& rule) {
  const CrewProblem problem = problemOf(state);
  const LabourFlow prices = flowOf(problem);
  for ([[maybe_unused]] auto round : state)
    benchmark::DoNotOptimize(dispatch(problem, prices, rule));
}

/// Three rows of a job that is open on the first day.
void afterATick(benchmark::State& state) {
  const CrewProblem problem = problemOf(state);
  const LabourFlow prices = flowOf(problem);
  const CrewSchedule plan = findPlan(problem, prices, {0, 1});
  CrewProblem ticked = problem;
  const auto isOpen = [](const CrewJob& job) {
    return job.opens <= 0 && job.rows.size() > 3;
  };
  auto& rows = std::ranges::find_if(ticked.jobs, isOpen)->rows;
  rows.erase(rows.begin(), rows.begin() + 3);
  std::vector<int> same(problem.jobs.size());
  std::iota(same.begin(), same.end(), 0);
  const EarlierPlan earlier{problem, plan, same};
  for ([[maybe_unused]] auto round : state)
    benchmark::DoNotOptimize(redoFirstDays(ticked, prices, earlier, 7));
}

void planAfresh(benchmark::State& state, int evaluations) {
  const CrewProblem problem = problemOf(state);
  for ([[maybe_unused]] auto round : state)
    benchmark::DoNotOptimize(findPlan(problem, flowOf(problem), {evaluations, 1}));
}

void planSeason(benchmark::State& state) {
  const CrewProblem problem = problemOf(state, 200);
  for ([[maybe_unused]] auto round : state)
    benchmark::DoNotOptimize(dispatch(problem, flowOf(problem), byPrice));
}

void registerAll() {
  const auto add = [](const char* name, auto run, std::vector<int> blocks) {
    auto* one = benchmark::RegisterBenchmark(name, run)->Unit(benchmark::kMillisecond);
    for (const int count : blocks) one->Arg(count);
  };
  const auto by = [](const DispatchRule& rule) {
    return [rule](benchmark::State& state) { dispatchBy(state, rule); };
  };
  const auto afresh = [](int evaluations) {
    return [evaluations](benchmark::State& state) { planAfresh(state, evaluations); };
  };
  add("bound and prices", flow, {10, 60, 500, 2000});
  add("the same by CLP", flowByClp, {10, 60, 500});
  add("earliest due date", by(byDueDate), {10, 60, 500, 2000});
  add("dispatch by price", by(byPrice), {10, 60, 500, 2000});
  add("after a tick, a week at once", afterATick, {10, 60, 500, 2000});
  add("plan without search", afresh(0), {10, 60, 500, 2000});
  add("plan with search", afresh(SearchLimits{}.evaluations), {10, 60});
  add("season of 200 days", planSeason, {10, 60, 500, 2000});
}

class Excess {
public:
  explicit Excess(const CrewInstance& instance)
      : problem_{orchardProblem(instance)}, flow_{flowOf(problem_)} {}

  double of(const CrewSchedule& plan) const {
    return 100.0 * static_cast<double>(plan.loss - flow_.bound)
           / static_cast<double>(problem_.stake());
  }

  double by(const DispatchRule& rule) const {
    return of(dispatch(problem_, flow_, rule));
  }

  CrewSchedule unsearched() const { return findPlan(problem_, flow_, {0, 1}); }

  CrewSchedule searched() const {
    return findPlan(problem_, flow_, searchLimits(problem_));
  }

  /// What the bound would lose if as much time were gone on the way as in this plan.
  double onTheWay(const CrewSchedule& plan) const {
    Seconds all = 0;
    for (int day = 0; day < problem_.days; ++day) all += problem_.capacity(day);
    CrewProblem less = problem_;
    for (Seconds& length : less.dayLength) length -= length * plan.moving / all;
    return 100.0 * static_cast<double>(flowOf(less).bound - flow_.bound)
           / static_cast<double>(problem_.stake());
  }

private:
  CrewProblem problem_;
  LabourFlow flow_;
};

double median(std::vector<double> values) {
  std::ranges::sort(values);
  return values[values.size() / 2];
}

void printRow(int blocks, double load, int seeds) {
  std::array<std::vector<double>, 5> columns;
  for (int seed = 1; seed <= seeds; ++seed) {
    const Excess excess{{blocks, 56, load, static_cast<std::uint64_t>(seed)}};
    columns[0].push_back(excess.by(byDueDate));
    columns[1].push_back(excess.by(byPrice));
    columns[2].push_back(excess.of(excess.unsearched()));
    const CrewSchedule plan = excess.searched();
    columns[3].push_back(excess.of(plan));
    columns[4].push_back(excess.onTheWay(plan));
  }
  std::printf("%7d %5.1f", blocks, load);
  for (const auto& column : columns) std::printf(" %9.2f", median(column));
  std::printf("\n");
}

void printTable(const std::vector<std::pair<int, int>>& sizes) {
  std::printf(
      "Loss above the bound in %% of the stake, 56 days, medians\n"
      "%7s %5s %9s %9s %9s %9s %9s\n",
      "blocks",
      "load",
      "due date",
      "price",
      "best rule",
      "searched",
      "its moves");
  for (const auto& [blocks, seeds] : sizes)
    for (const double load : {0.6, 0.8, 1.0, 1.2, 1.4}) printRow(blocks, load, seeds);
}

int run(int count, char** words) {
  if (count > 1 && std::string{words[1]} == "table") {
    if (count > 3)
      printTable({{std::stoi(words[2]), std::stoi(words[3])}});
    else
      printTable({{10, 9}, {60, 9}, {500, 3}, {2000, 1}});
    return 0;
  }
  registerAll();
  benchmark::Initialize(&count, words);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}

}  // namespace

}  // namespace topwire::testing

int main(int count, char** words) {
  return topwire::testing::run(count, words);
}
