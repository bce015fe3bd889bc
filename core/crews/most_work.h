#pragma once

#include "core/crews/crew_problem.h"
#include "core/crews/labour_network.h"

#include <utility>
#include <vector>

namespace topwire {

/// Jobs that are short, with those that compete with them, and the skills and days that
/// are too few for them; no two share a job or a day of a skill.
struct Bottleneck {
  std::vector<int> jobs;
  std::vector<std::pair<int, int>>
      skillDays;  ///< skill and day; none: labour is not short
};

/// The most worker-seconds that can be done at all, each job until its `last` day: a
/// maximum flow, and the cut that limits it.
class MostWork {
public:
  explicit MostWork(const CrewProblem& problem);

  const std::vector<Seconds>& undone() const { return undone_; }  ///< by job

  Seconds done() const { return done_; }

  /// What the least cut lets through; equal to `done`.
  Seconds cut() const { return cut_; }

  std::vector<Bottleneck> bottlenecks() const;

private:
  int joined(std::vector<int>& part, int node) const;

  int jobs_ = 0;
  int skills_ = 0;
  LabourNetwork network_;
  std::vector<Seconds> undone_;
  std::vector<char>
      short_;  ///< by node: on the short side of the cut nearest to the jobs
  Seconds done_ = 0;
  Seconds cut_ = 0;
};

}  // namespace topwire
