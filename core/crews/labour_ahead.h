#pragma once

#include "core/crews/crew_plan.h"

#include <vector>

namespace topwire {

/// Labour of one week, in worker-hours.
struct WeekOfLabour {
  Day monday{};
  double there = 0;  ///< what the crews can work
  double wanted =
      0;            ///< work placed in this week where each job is done at its best time
  double done = 0;  ///< of that, with the hands there are
  double overdue = 0;  ///< what is carried past its closing at the week's end

  friend bool operator==(const WeekOfLabour&, const WeekOfLabour&) = default;
};

/// Week by week from the plan's first day to its end, from the flow without moves.
std::vector<WeekOfLabour> labourByWeek(const CrewPlan& plan);

/// A plan under other circumstances, beside today's.
struct WhatIf {
  Supposition supposed;
  double loss = 0;       ///< worker-hours of loss
  double bound = 0;      ///< no plan loses less
  double hoursLost = 0;  ///< of work that will not be done while it is of use
  double hoursLate = 0;  ///< of work done past its closing
  int windowsMissed = 0;
  std::vector<WeekOfLabour> weeks;
};

WhatIf whatIf(const Supposition& supposed, const CrewPlan& plan);

/// How often a window is missed, over the years the station has rain on record for.
struct MissedWindow {
  TaskKey task;
  int missed = 0;
  int years = 0;
};

/// Each past year's rain laid over the days to come beyond the forecast; tasks missed in
/// at least one year, the most often missed first. Empty with fewer than five years.
std::vector<MissedWindow> missedInPastYears(const Orchard& orchard,
                                            const Trade& trade,
                                            const CrewQuestion& question);

}  // namespace topwire
