#pragma once

#include "core/crews/crew_plan.h"

#include <vector>

namespace topwire {

/// Labour of one week, in worker-hours.
struct WeekOfLabour {
  Day monday{};
  double there = 0;    ///< what the crews can work
  double wanted = 0;   ///< each job's hours spread evenly over the days of its window
  double planned = 0;  ///< what the plan has done in this week
  double overdue = 0;  ///< past its closing and undone at the week's end, in the plan

  friend bool operator==(const WeekOfLabour&, const WeekOfLabour&) = default;
};

/// Week by week, the one of the plan's first day first; days gone by count nothing.
std::vector<WeekOfLabour> labourByWeek(const CrewPlan& plan);

/// What a plan comes to, to hold two plans against each other.
struct PlanSum {
  double loss = 0;       ///< in hours of work
  double bound = 0;      ///< no plan loses less
  double hoursLost = 0;  ///< of work left undone while it was of use
  double hoursLate = 0;  ///< of work done past its closing
  int windowsMissed = 0;

  friend bool operator==(const PlanSum&, const PlanSum&) = default;
};

PlanSum sumOf(const CrewPlan& plan);

/// How often a window is missed, over the years the station has rain on record for.
struct MissedWindow {
  TaskKey task;
  int missed = 0;
  int years = 0;
};

/// Each of the last thirty years' rain laid over the days beyond the forecast, the plan
/// made again at its prices: windows that close within its daily part and were not met in
/// one year at least, the most often missed first. Empty with fewer than five years of
/// rain on record.
std::vector<MissedWindow> missedInPastYears(const Orchard& orchard,
                                            const Trade& trade,
                                            const CrewPlan& plan);

}  // namespace topwire
