#pragma once

#include "core/planning/progress.h"
#include "core/planning/task.h"

namespace topwire {

/// Puts a task where a person moved it.
void moveByHand(Task& task, DaySpan window);
/// Heeds a person's word on the task's window, where there is one.
void obeyMark(const Orchard& orchard, Task& task);

/// Whether work that needs this task still waits for it: not where it is finished or set
/// aside, or was over before the records began and nobody spoke of it.
bool isWaitedFor(const Orchard& orchard,
                 const ProgressByTask& progress,
                 const Task& task);

/// The rows of a task on which everything it waits for is done: where work may begin.
RowSet rowsReady(const ProgressByTask& progress, const Task& task);

/// The visit of needed work that counts for work opening on `day`: the last one that has
/// opened by then, else the first.
const Task& visitBy(const std::vector<Task>& visits, Day day);

}  // namespace topwire
