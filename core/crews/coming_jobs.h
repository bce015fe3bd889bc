#pragma once

#include "core/crews/crew_plan.h"

#include <vector>

namespace topwire {

/// How the end of a job stands to its window.
enum class Finish {
  lost,       ///< rows are left when it is of use no more
  late,       ///< planned to be done past its closing
  maybeLate,  ///< planned to be in time, but the span goes past its closing
  inTime,
  beyond,  ///< rows are left at the end of the plan, and still of use
};

/// A job of the plan with the day it will be done.
struct ComingJob {
  TaskKey task;
  double hours = 0;   ///< worker-hours to do, at the pace of the fastest crew
  double undone = 0;  ///< of them, by no one in this plan
  Day opens{};        ///< as it is planned with
  Day closes{};       ///< the last day without loss
  Day lastUse{};      ///< the last day on which it may be done
  TaskForecast forecast;
  Finish finish = Finish::inTime;
};

/// Jobs that begin, or close undone, within `days` of the plan: what is lost first, then
/// what is late, what may be, and the rest, each by closing. `views` tell how well the
/// pace of each is known; those of a task that is in no plan are passed over.
std::vector<ComingJob> comingJobs(const CrewPlan& plan,
                                  const std::vector<TaskView>& views,
                                  int days);

}  // namespace topwire
