#pragma once

#include "app/models/month_layout.h"
#include "app/models/session.h"

#include <array>
#include <map>
#include <optional>
#include <set>
#include <vector>

namespace topwire {

/// What the calendar leaves out.
struct WorkFilter {
  std::set<TaskState> hidden;
  std::optional<BlockId> block;  ///< all of them where absent

  bool shows(const Orchard& orchard, const TaskView& view) const;

  bool showsAll() const { return hidden.empty() && !block; }
};

/// The windows, and late tails, that touch these days.
std::vector<TaskView> workIn(Session& session, DaySpan days, const WorkFilter& filter);

std::vector<MonthBar> barsOf(const Session& session, const std::vector<TaskView>& views);
/// Stages of the plantings that stand in the ground, merged over them.
std::vector<MonthStage> stagesIn(const Session& session,
                                 DaySpan days,
                                 const WorkFilter& filter);

/// One planting's work on a day, most urgent first.
struct DayGroup {
  PlantingId planting;
  std::vector<TaskView> views;
};

/// What stands in the list of one day. Counts and hours leave out what is done, lapsed or
/// set aside.
struct DayWork {
  Day day{};
  std::vector<DayGroup> groups;  ///< in the order of their most urgent task
  int jobs = 0;
  int blocks = 0;
  double hoursLeft = 0;
  std::map<TaskKey, DayCaution> waits;  ///< tasks that the weather advises against
  std::vector<SharedCaution> cautions;  ///< the reasons behind `waits`
};

/// Tasks whose window or late tail covers the day, and those last ticked on it. The views
/// hold until the session changes.
DayWork workOn(Session& session, Day day, const WorkFilter& filter);

/// The task as it is today, in whichever season it lies; holds until the session changes.
std::optional<TaskView> findView(Session& session, const TaskKey& task);

/// Whom a tick is put down to where nobody is asked: who ticked last, else the first
/// crew. Empty where neither is known.
std::string usualWorker(const Orchard& orchard);

/// Tasks of each state, in the order of TaskState.
std::array<int, 7> countByState(const std::vector<TaskView>& views);

/// Done, lapsed or set aside: nobody waits for it.
bool isSettled(TaskState state);

/// The last day the task is shown on; see the same for MonthBar.
Day lastShown(const TaskView& view, Day today);

}  // namespace topwire
