#include "core/planning/needs.h"

#include <algorithm>

namespace topwire {

namespace {

DateReason handReason(Day day) {
  DateReason reason;
  reason.byHand = true;
  reason.day = reason.anchorDay = day;
  return reason;
}

bool wasBeforeRecords(const Orchard& orchard,
                      const ProgressByTask& progress,
                      const Task& task) {
  return task.cutOff.value_or(task.closes) < orchard.settings.recordsFrom
         && !progress.contains(task.key) && !orchard.marks.contains(task.key);
}

bool isSetAside(const Orchard& orchard, const TaskKey& key) {
  const auto mark = orchard.marks.find(key);
  return mark != orchard.marks.end() && !mark->second.setAsideReason.empty();
}

}  // namespace

void moveByHand(Task& task, DaySpan window) {
  task.opens = window.first;
  task.closes = window.last;
  task.opensWhy = handReason(window.first);
  task.closesWhy = handReason(window.last);
  if (task.cutOff) task.cutOff = std::max(*task.cutOff, window.last);
}

void obeyMark(const Orchard& orchard, Task& task) {
  const auto mark = orchard.marks.find(task.key);
  if (mark != orchard.marks.end() && mark->second.moved)
    moveByHand(task, *mark->second.moved);
}

bool isWaitedFor(const Orchard& orchard,
                 const ProgressByTask& progress,
                 const Task& task) {
  return !isFinished(progress, task) && !isSetAside(orchard, task.key)
         && !wasBeforeRecords(orchard, progress, task);
}

RowSet rowsReady(const ProgressByTask& progress, const Task& task) {
  RowSet ready = task.rows;
  for (const TaskKey& key : task.waitsFor) {
    const auto found = progress.find(key);
    if (found == progress.end()) return {};
    ready = ready.inCommonWith(found->second.wholeRows());
  }
  return ready;
}

const Task& visitBy(const std::vector<Task>& visits, Day day) {
  const auto later = std::ranges::find_if(
      visits, [day](const Task& visit) { return visit.opens > day; });
  return later == visits.begin() ? visits.front() : *std::prev(later);
}

}  // namespace topwire
