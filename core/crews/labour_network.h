#pragma once

#include "core/crews/crew_problem.h"
#include "core/crews/labour_flow.h"

#include <cstdint>
#include <utility>
#include <vector>

namespace topwire {

/// Gangs of equal skills, as one.
struct GangClass {
  std::vector<bool> skills;
  std::vector<Seconds> capacity;  ///< by range
  std::vector<Seconds> kept;      ///< of it, for young trees; by range
};

/// In the order of their skills, those of the same skills together.
std::vector<GangClass> gangClasses(const CrewProblem& problem,
                                   const std::vector<DayRange>& ranges);

/// The arcs of a min-cost flow from jobs to a sink, sorted by where they start.
struct LabourNetwork {
  struct Arc {
    int from;
    int to;
    Seconds room;
    Loss cost;
  };

  /// Where a job's work on a range of days flows.
  struct JobArc {
    int arc;
    int job;
    int range;
  };

  std::vector<Arc> arcs;
  std::vector<JobArc> jobArcs;
  std::vector<int> undoneArc;  ///< by job
  int nodes = 0;
  int sink = 0;
  int ranges = 0;

  /// Jobs are the first nodes; then, by skill and range, what they ask for.
  int skillNode(int skill, int range, bool young) const;

private:
  friend LabourNetwork labourNetwork(const CrewProblem&, const std::vector<DayRange>&);
  int firstSkill_ = 0;
  int firstYoung_ = 0;
};

/// job -> skill and range -> gangs of equal skills in that range -> sink, and from each
/// job straight to the sink what is left undone. Where time is kept for young trees,
/// their jobs pass by the arc that holds all others to the rest.
LabourNetwork labourNetwork(const CrewProblem& problem,
                            const std::vector<DayRange>& ranges);

}  // namespace topwire
