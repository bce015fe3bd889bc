#include "core/crews/most_work.h"

#include "core/crews/index.h"

#include <lemon/preflow.h>
#include <lemon/static_graph.h>

#include <map>
#include <numeric>

namespace topwire {

namespace {

using Graph = lemon::StaticDigraph;
using Rooms = Graph::ArcMap<Seconds>;

/// The network with a source after its last node, and nothing left undone on purpose.
Graph graphOf(const LabourNetwork& network, int jobs) {
  std::vector<std::pair<int, int>> ends;
  for (const auto& arc : network.arcs) ends.emplace_back(arc.from, arc.to);
  for (int job = 0; job < jobs; ++job) ends.emplace_back(network.nodes, job);
  Graph graph;
  graph.build(network.nodes + 1, ends.begin(), ends.end());
  return graph;
}

std::vector<Seconds> roomsOf(const LabourNetwork& network, const CrewProblem& problem) {
  std::vector<Seconds> rooms;
  for (const auto& arc : network.arcs) rooms.push_back(arc.room);
  for (const int arc : network.undoneArc) rooms[at(arc)] = 0;
  for (const CrewJob& job : problem.jobs) rooms.push_back(job.work());
  return rooms;
}

/// Nodes to which more could flow.
std::vector<char> reachedFrom(int source,
                              const Graph& graph,
                              const std::vector<Seconds>& rooms,
                              const lemon::Preflow<Graph, Rooms>& flow) {
  std::vector<char> reached(at(graph.nodeNum()));
  std::vector<int> next{source};
  reached[at(source)] = 1;
  const auto reach = [&](Graph::Node node) {
    if (reached[at(Graph::id(node))] != 0) return;
    reached[at(Graph::id(node))] = 1;
    next.push_back(Graph::id(node));
  };
  while (!next.empty()) {
    const Graph::Node node = Graph::nodeFromId(next.back());
    next.pop_back();
    for (Graph::OutArcIt arc(graph, node); arc != lemon::INVALID; ++arc)
      if (flow.flow(arc) < rooms[at(Graph::id(arc))]) reach(graph.target(arc));
    for (Graph::InArcIt arc(graph, node); arc != lemon::INVALID; ++arc)
      if (flow.flow(arc) > 0) reach(graph.source(arc));
  }
  return reached;
}

std::vector<DayRange> everyDay(int days) {
  return dayRanges(days, days);
}

}  // namespace

MostWork::MostWork(const CrewProblem& problem)
    : jobs_{static_cast<int>(problem.jobs.size())}
    , skills_{problem.skills}
    , network_{labourNetwork(problem, everyDay(problem.days))} {
  const Graph graph = graphOf(network_, jobs_);
  const std::vector<Seconds> rooms = roomsOf(network_, problem);
  Rooms room{graph};
  for (std::size_t arc = 0; arc < rooms.size(); ++arc)
    room[Graph::arcFromId(static_cast<int>(arc))] = rooms[arc];
  const int source = network_.nodes;
  lemon::Preflow<Graph, Rooms> flow{
      graph, room, Graph::nodeFromId(source), Graph::nodeFromId(network_.sink)};
  flow.run();
  done_ = flow.flowValue();
  const std::size_t first = network_.arcs.size();
  for (std::size_t job = 0; job < problem.jobs.size(); ++job)
    undone_.push_back(rooms[first + job]
                      - flow.flow(Graph::arcFromId(static_cast<int>(first + job))));
  short_ = reachedFrom(source, graph, rooms, flow);
  for (std::size_t arc = 0; arc < rooms.size(); ++arc) {
    const Graph::Arc through = Graph::arcFromId(static_cast<int>(arc));
    if (short_[at(Graph::id(graph.source(through)))] != 0
        && short_[at(Graph::id(graph.target(through)))] == 0)
      cut_ += rooms[arc];
  }
}

int MostWork::joined(std::vector<int>& part, int node) const {
  while (part[at(node)] != node) node = part[at(node)] = part[at(part[at(node)])];
  return node;
}

/// Parts of the short side that no arc connects.
std::vector<Bottleneck> MostWork::bottlenecks() const {
  std::vector<int> part(at(network_.nodes));
  std::iota(part.begin(), part.end(), 0);
  for (const auto& arc : network_.arcs)
    if (short_[at(arc.from)] != 0 && short_[at(arc.to)] != 0) {
      const int from = joined(part, arc.from);
      part[at(from)] = joined(part, arc.to);
    }
  std::map<int, Bottleneck> found;
  std::map<int, bool> isShort;
  for (int job = 0; job < jobs_; ++job) {
    if (short_[at(job)] == 0) continue;
    const int of = joined(part, job);
    found[of].jobs.push_back(job);
    isShort[of] = isShort[of] || undone_[at(job)] > 0;
  }
  for (int skill = 0; skill < skills_; ++skill)
    for (int day = 0; day < network_.ranges; ++day)
      for (const bool young : {false, true}) {
        const int node = network_.skillNode(skill, day, young);
        const auto of = found.find(joined(part, node));
        if (short_[at(node)] == 0 || of == found.end()) continue;
        auto& skillDays = of->second.skillDays;
        if (skillDays.empty() || skillDays.back() != std::pair{skill, day})
          skillDays.emplace_back(skill, day);
      }
  std::vector<Bottleneck> bottlenecks;
  for (auto& [of, bottleneck] : found)
    if (isShort[of]) bottlenecks.push_back(std::move(bottleneck));
  return bottlenecks;
}

}  // namespace topwire
