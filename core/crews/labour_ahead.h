#pragma once

#include "core/crews/crew_plan.h"

#include <functional>
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

/// What earlier years' rain would keep from being done, on the days of a plan beyond the
/// forecast.
struct PastRain {
  std::vector<bool> minds;               ///< by job: rain is a reason to let it wait
  std::vector<std::vector<bool>> years;  ///< by year and day of the plan: wet
};

/// Of the last thirty years, those with rain on record for every such day.
PastRain pastRain(const Orchard& orchard,
                  const Trade& trade,
                  const CrewQuestion& question);

/// Each year's rain laid over the plan's days, the plan made again at its prices: windows
/// that close within its daily part and were not met in one year at least, the most often
/// missed first. Empty with fewer than five years, and where `isWanted`, asked before
/// each year, says no.
std::vector<MissedWindow> missedInPastYears(const PastRain& rain,
                                            const CrewPlan& plan,
                                            const std::function<bool()>& isWanted = {});

}  // namespace topwire
