#pragma once

#include "core/crews/crew_problem.h"

#include <vector>

namespace topwire {

/// Days planned as one: single days at first, weeks further out.
struct DayRange {
  int first = 0;
  int last = 0;  ///< inclusive
};

/// The best that could be done if work could be split at will and nobody lost time on the
/// way: a bound no plan can beat, and what an hour is worth on each day.
struct LabourFlow {
  Loss bound = 0;  ///< no plan loses less
  std::vector<DayRange> ranges;
  /// By skill and range: what one more worker-second of that skill would save, in
  /// thousandths of a worker-second.
  std::vector<std::vector<Loss>> price;
  std::vector<Seconds> undone;  ///< by job, in the bound's plan
  /// By job and range: worker-seconds done in the bound's plan.
  std::vector<std::vector<Seconds>> done;

  int rangeOf(int day) const;
  Loss priceOn(int skill, int day) const;
};

/// Single days up to `daily`, then runs of seven.
std::vector<DayRange> dayRanges(int days, int daily = 56);

/// A min-cost flow: job -> skill-day -> gangs of equal skills on that day. Moves, whole
/// rows, and needs between jobs are left out, which can only make it better.
LabourFlow solveLabourFlow(const CrewProblem& problem,
                           const std::vector<DayRange>& ranges);

}  // namespace topwire
