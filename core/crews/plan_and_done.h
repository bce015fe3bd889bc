#pragma once

#include "core/crews/crew_plan.h"

#include <optional>
#include <vector>

namespace topwire {

/// What the last morning's plan had and what was ticked since.
struct PlanAndDone {
  PlannedJob planned;
  RowSet done;                ///< of its rows
  int minutes = 0;            ///< noted with those ticks
  bool hoursMissing = false;  ///< rows are ticked that day and no hours noted
};

/// By the crews' names, then in the plan's order.
std::vector<PlanAndDone> planAndDone(const Orchard& orchard, Day planned);
/// The last day before `today` with an accepted plan.
std::optional<Day> lastPlanned(const Orchard& orchard, Day today);

/// What `lanes` would put on record, for accepting them.
std::vector<PlannedJob> plannedJobs(const std::vector<CrewLane>& lanes, Day day);

}  // namespace topwire
