#pragma once

#include "app/models/lane_layout.h"
#include "app/models/session.h"
#include "core/crews/crew_plan.h"

#include <optional>
#include <vector>

namespace topwire {

/// Whether a day's plan was accepted, and still is what was accepted. Once rows are
/// ticked that day, work done makes room for more: that alone is no change.
enum class Acceptance { none, asPlanned, changedSince };

Acceptance acceptanceOf(const Orchard& orchard,
                        const std::vector<CrewLane>& lanes,
                        Day day);

/// The pin that puts this crew to this task on that day; nullptr where there is none.
const Pin* crewPinOf(const Orchard& orchard, const TaskKey& task, CrewId crew, Day day);
/// Whatever holds the task back from that day; nullptr where nothing does.
const Pin* waitPinOf(const Orchard& orchard, const TaskKey& task, Day day);

/// Whether anybody works that day, as far as the plan looks.
bool isWorked(const CrewPlan& plan, Day day);
/// The next day after it, or before it, that is worked; nothing beyond the plan.
std::optional<Day> workedAfter(const CrewPlan& plan, Day day);
std::optional<Day> workedBefore(const CrewPlan& plan, Day day);

/// The hours of that day, the usual ones where nobody works.
DayAxis axisOf(const CrewPlan& plan, const std::vector<CrewLane>& lanes, Day day);

/// The crew's lane beside it, `steps` further down; nothing past either end.
std::optional<CrewId> crewBeside(const std::vector<CrewLane>& lanes,
                                 CrewId crew,
                                 int steps);

/// The rows of a task that the day's lanes hold.
RowSet plannedRows(const std::vector<CrewLane>& lanes, const TaskKey& task);

/// Closures that keep anybody out at some time of the day, in the order of their blocks.
std::vector<const BlockClosure*> closuresOn(const Orchard& orchard, Day day);

}  // namespace topwire
