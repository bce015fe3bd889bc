#pragma once

#include "core/orchard/orchard.h"
#include "core/planning/task.h"

#include <map>
#include <vector>

namespace topwire {

/// How far a task is: percent done by row. The most any standing tick says of a row
/// holds, so that ticks from two machines add up in either order.
struct Progress {
  std::map<int, int> percentByRow;  ///< rows with any work done
  std::optional<Day> lastTick;
  int minutes = 0;

  double rowsDone() const;
  RowSet wholeRows() const;
  RowSet partRows() const;
};

/// Ticks that stand: not taken back, or taken back by one that is itself taken back.
std::vector<const Tick*> standingTicks(const Orchard& orchard);

using ProgressByTask = std::map<TaskKey, Progress>;
ProgressByTask progressOf(const Orchard& orchard);

/// Every row of the task is ticked off.
bool isFinished(const ProgressByTask& progress, const Task& task);
/// The last day a task is still worth doing.
Day lapsesAfter(const Orchard& orchard, const Task& task);

/// `closing`: three days or less are left. `late`: past its closing, still worth doing.
/// `lapsed`: past its cut-off (without one, past its season), undone.
enum class TaskState { waiting, open, closing, late, lapsed, done, setAside };

/// A task with all a screen, a sheet or a script wants to show of it today.
struct TaskView {
  const Task* task;
  TaskState state;
  Progress progress;
  double hoursLeft;  ///< worker-hours for the rows, and parts of rows, still to do

  RowSet rowsLeft() const { return task->rows.without(progress.wholeRows()); }
};

/// Open on some of these days and not done, or late and still worth doing on one of them.
bool isDueIn(const TaskView& view, DaySpan days);

/// 0 for what presses most: late, closing, open, waiting, set aside, done, lapsed.
int urgency(TaskState state);

/// In order of urgency; inside a state by closing, then opening, then key. `plan` must
/// outlive the views.
std::vector<TaskView> viewsOf(const Orchard& orchard, const Plan& plan, Day today);

}  // namespace topwire
