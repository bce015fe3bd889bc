#include "core/crews/labour_flow.h"

#include "core/base/contract.h"
#include "core/crews/labour_network.h"

#include <queue>

#include <lemon/network_simplex.h>
#include <lemon/static_graph.h>

#include <algorithm>
#include <limits>

namespace topwire {

namespace {

using Graph = lemon::StaticDigraph;
using Simplex = lemon::NetworkSimplex<Graph, Seconds, Loss>;
constexpr Loss unreached = std::numeric_limits<Loss>::max();

struct Solved {
  std::vector<Seconds> flow;    ///< by arc
  std::vector<Loss> potential;  ///< by node
  Loss cost = 0;
};

Graph graphOf(const LabourNetwork& network) {
  std::vector<std::pair<int, int>> ends;
  ends.reserve(network.arcs.size());
  for (const auto& arc : network.arcs) ends.emplace_back(arc.from, arc.to);
  Graph graph;
  graph.build(network.nodes, ends.begin(), ends.end());
  return graph;
}

Solved solve(const LabourNetwork& network, const std::vector<Seconds>& supply) {
  const Graph graph = graphOf(network);
  Graph::ArcMap<Seconds> room{graph};
  Graph::ArcMap<Loss> cost{graph};
  for (std::size_t arc = 0; arc < network.arcs.size(); ++arc) {
    room[graph.arc(static_cast<int>(arc))] = network.arcs[arc].room;
    cost[graph.arc(static_cast<int>(arc))] = network.arcs[arc].cost;
  }
  Graph::NodeMap<Seconds> supplied{graph, 0};
  for (std::size_t node = 0; node < supply.size(); ++node)
    supplied[graph.node(static_cast<int>(node))] = supply[node];
  Simplex simplex{graph};
  simplex.upperMap(room).costMap(cost).supplyMap(supplied);
  // Everything may be left undone, so there always is a flow, and a cheapest one.
  TOPWIRE_REQUIRE(simplex.run() == Simplex::OPTIMAL);
  Solved solved;
  for (std::size_t arc = 0; arc < network.arcs.size(); ++arc)
    solved.flow.push_back(simplex.flow(graph.arc(static_cast<int>(arc))));
  for (int node = 0; node < network.nodes; ++node)
    solved.potential.push_back(simplex.potential(graph.node(node)));
  solved.cost = simplex.totalCost<Loss>();
  return solved;
}

/// Cheapest ways from the sink through what a flow leaves open: what one more second
/// anywhere changes, which a flow's potentials only bound where there are several.
class NextSecond {
public:
  NextSecond(const LabourNetwork& network, const Solved& solved);
  /// What one more second of labour at this node saves.
  Loss savedAt(int node) const;

private:
  void reachAll();
  void pass(int from, std::size_t arc, bool forward);

  Loss potential(int node) const {
    return solved_.potential[static_cast<std::size_t>(node)];
  }

  const LabourNetwork& network_;
  const Solved& solved_;
  std::vector<int> firstIn_;  ///< by node, into `in_`
  std::vector<int> firstOut_;
  std::vector<int> in_;
  std::vector<Loss> reduced_;  ///< by node: length of the way in reduced costs
  using Reached = std::pair<Loss, int>;
  std::priority_queue<Reached, std::vector<Reached>, std::greater<>> queue_;
};

NextSecond::NextSecond(const LabourNetwork& network, const Solved& solved)
    : network_{network}, solved_{solved} {
  const auto nodes = static_cast<std::size_t>(network.nodes);
  firstIn_.resize(nodes + 1);
  firstOut_.resize(nodes + 1);
  for (const auto& arc : network.arcs) {
    ++firstIn_[static_cast<std::size_t>(arc.to) + 1];
    ++firstOut_[static_cast<std::size_t>(arc.from) + 1];
  }
  for (std::size_t node = 0; node < nodes; ++node) {
    firstIn_[node + 1] += firstIn_[node];
    firstOut_[node + 1] += firstOut_[node];
  }
  in_.resize(network.arcs.size());
  std::vector<int> next = firstIn_;
  for (std::size_t arc = 0; arc < network.arcs.size(); ++arc)
    in_[static_cast<std::size_t>(
        next[static_cast<std::size_t>(network.arcs[arc].to)]++)] = static_cast<int>(arc);
  reduced_.assign(nodes, unreached);
  reachAll();
}

void NextSecond::pass(int from, std::size_t arc, bool forward) {
  const auto& along = network_.arcs[arc];
  const Seconds open = forward ? along.room - solved_.flow[arc] : solved_.flow[arc];
  if (open == 0) return;
  const int to = forward ? along.to : along.from;
  const Loss step =
      (forward ? along.cost : -along.cost) + potential(from) - potential(to);
  const Loss length = reduced_[static_cast<std::size_t>(from)] + step;
  Loss& known = reduced_[static_cast<std::size_t>(to)];
  if (length >= known) return;
  known = length;
  queue_.emplace(length, to);
}

void NextSecond::reachAll() {
  reduced_[static_cast<std::size_t>(network_.sink)] = 0;
  queue_.emplace(0, network_.sink);
  while (!queue_.empty()) {
    const auto [length, node] = queue_.top();
    queue_.pop();
    const auto at = static_cast<std::size_t>(node);
    if (length > reduced_[at]) continue;
    for (int out = firstOut_[at]; out < firstOut_[at + 1]; ++out)
      pass(node, static_cast<std::size_t>(out), true);
    for (int in = firstIn_[at]; in < firstIn_[at + 1]; ++in)
      pass(node, static_cast<std::size_t>(in_[static_cast<std::size_t>(in)]), false);
  }
}

Loss NextSecond::savedAt(int node) const {
  const Loss length = reduced_[static_cast<std::size_t>(node)];
  if (length == unreached) return 0;
  const Loss cost = length + potential(node) - potential(network_.sink);
  return std::max<Loss>(0, -cost);
}

std::vector<Seconds> supplyOf(const CrewProblem& problem, int nodes, int sink) {
  std::vector<Seconds> supply(static_cast<std::size_t>(nodes));
  for (std::size_t job = 0; job < problem.jobs.size(); ++job) {
    supply[job] = problem.jobs[job].work();
    supply[static_cast<std::size_t>(sink)] -= supply[job];
  }
  return supply;
}

}  // namespace

int LabourFlow::rangeOf(int day) const {
  const auto after = std::ranges::upper_bound(ranges, day, {}, &DayRange::first);
  return static_cast<int>(after - ranges.begin()) - 1;
}

Loss LabourFlow::priceOn(int skill, int day) const {
  const int range = rangeOf(day);
  if (range < 0) return 0;
  return price[static_cast<std::size_t>(skill)][static_cast<std::size_t>(range)];
}

std::vector<DayRange> dayRanges(int days, int daily) {
  std::vector<DayRange> ranges;
  for (int day = 0; day < days;) {
    const int last = day < daily ? day : std::min(day + 6, days - 1);
    ranges.push_back({day, last});
    day = last + 1;
  }
  return ranges;
}

LabourFlow solveLabourFlow(const CrewProblem& problem,
                           const std::vector<DayRange>& ranges) {
  const LabourNetwork network = labourNetwork(problem, ranges);
  const Solved solved = solve(network, supplyOf(problem, network.nodes, network.sink));
  LabourFlow flow;
  flow.bound = solved.cost;
  flow.ranges = ranges;
  for (const int arc : network.undoneArc)
    flow.undone.push_back(solved.flow[static_cast<std::size_t>(arc)]);
  flow.done.assign(problem.jobs.size(), std::vector<Seconds>(ranges.size()));
  for (const auto& [arc, job, range] : network.jobArcs)
    flow.done[static_cast<std::size_t>(job)][static_cast<std::size_t>(range)] =
        solved.flow[static_cast<std::size_t>(arc)];
  const NextSecond next{network, solved};
  for (int skill = 0; skill < problem.skills; ++skill) {
    auto& prices = flow.price.emplace_back();
    for (int range = 0; range < network.ranges; ++range)
      prices.push_back(std::max(next.savedAt(network.skillNode(skill, range, false)),
                                next.savedAt(network.skillNode(skill, range, true))));
  }
  return flow;
}

}  // namespace topwire
