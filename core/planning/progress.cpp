#include "core/planning/progress.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

namespace topwire {

namespace {

constexpr int closingDays = 3;

/// Whether a tick stands, by the chain of those that take it back.
class Standing {
public:
  explicit Standing(const Orchard& orchard) {
    for (const auto& [id, tick] : orchard.ticks)
      if (tick.takesBack) takers_[*tick.takesBack].push_back(id);
  }

  bool stands(TickId id) const {
    const auto takers = takers_.find(id);
    if (takers == takers_.end()) return true;
    return std::ranges::none_of(takers->second,
                                [this](TickId taker) { return stands(taker); });
  }

private:
  std::map<TickId, std::vector<TickId>> takers_;
};

void addTick(Progress& progress, const Tick& tick) {
  for (const int row : tick.rows.rows()) {
    int& percent = progress.percentByRow[row];
    percent = std::max(percent, tick.percent);
  }
  progress.lastTick = std::max(progress.lastTick.value_or(tick.day), tick.day);
  progress.minutes += tick.minutes;
}

RowSet rowsWhere(const std::map<int, int>& percentByRow, bool whole) {
  RowSet rows;
  for (const auto& [row, percent] : percentByRow)
    if ((percent >= 100) == whole) rows = rows.with(RowSet::range(row, row));
  return rows;
}

TaskState stateOf(const Orchard& orchard,
                  const Task& task,
                  const Progress& progress,
                  Day today) {
  if (progress.wholeRows().contains(task.rows)) return TaskState::done;
  const auto mark = orchard.marks.find(task.key);
  if (mark != orchard.marks.end() && !mark->second.setAsideReason.empty())
    return TaskState::setAside;
  if (today < task.opens) return TaskState::waiting;
  if (today <= task.closes)
    return daysBetween(today, task.closes) <= closingDays ? TaskState::closing
                                                          : TaskState::open;
  return today <= lapsesAfter(orchard, task) ? TaskState::late : TaskState::lapsed;
}

double hoursLeftOf(const Orchard& orchard, const Task& task, const Progress& progress) {
  const double rows = task.rows.count() - progress.rowsDone();
  const Planting& planting = orchard.plantings.at(task.key.planting);
  return rows * treesPerRow(orchard, planting) * task.secondsPerTree / 3600;
}

}  // namespace

bool isFinished(const ProgressByTask& progress, const Task& task) {
  const auto found = progress.find(task.key);
  return found != progress.end() && found->second.lastTick
         && found->second.wholeRows().contains(task.rows);
}

Day lapsesAfter(const Orchard& orchard, const Task& task) {
  if (task.cutOff) return *task.cutOff;
  return std::max(task.closes, lastDayOf(task.key.season, orchard.settings.hemisphere()));
}

bool isDueIn(const TaskView& view, DaySpan days) {
  const Task& task = *view.task;
  switch (view.state) {
    case TaskState::done:
    case TaskState::setAside:
    case TaskState::lapsed:
      return false;
    case TaskState::late:
      return task.opens <= days.last && task.cutOff.value_or(days.first) >= days.first;
    default:
      break;
  }
  return DaySpan{task.opens, task.closes}.overlaps(days);
}

int urgency(TaskState state) {
  switch (state) {
    case TaskState::late:
      return 0;
    case TaskState::closing:
      return 1;
    case TaskState::open:
      return 2;
    case TaskState::waiting:
      return 3;
    case TaskState::setAside:
      return 4;
    case TaskState::done:
      return 5;
    case TaskState::lapsed:
      return 6;
  }
  return 7;
}

double Progress::rowsDone() const {
  double done = 0;
  for (const auto& [row, percent] : percentByRow) done += percent / 100.0;
  return done;
}

RowSet Progress::wholeRows() const {
  return rowsWhere(percentByRow, true);
}

RowSet Progress::partRows() const {
  return rowsWhere(percentByRow, false);
}

std::vector<const Tick*> standingTicks(const Orchard& orchard) {
  const Standing standing{orchard};
  std::vector<const Tick*> ticks;
  for (const auto& [id, tick] : orchard.ticks)
    if (!tick.takesBack && standing.stands(id)) ticks.push_back(&tick);
  return ticks;
}

ProgressByTask progressOf(const Orchard& orchard) {
  ProgressByTask progress;
  for (const Tick* tick : standingTicks(orchard)) addTick(progress[tick->task], *tick);
  return progress;
}

std::vector<TaskView> viewsOf(const Orchard& orchard, const Plan& plan, Day today) {
  const ProgressByTask progress = progressOf(orchard);
  std::vector<TaskView> views;
  for (const Task& task : plan.tasks) {
    const auto found = progress.find(task.key);
    Progress own = found == progress.end() ? Progress{} : found->second;
    // Rows that have left the planting since are history, not progress.
    std::erase_if(own.percentByRow,
                  [&task](const auto& row) { return !task.rows.contains(row.first); });
    const TaskState state = stateOf(orchard, task, own, today);
    const double hours = hoursLeftOf(orchard, task, own);
    views.push_back({&task, state, std::move(own), hours});
  }
  std::ranges::stable_sort(views, [](const TaskView& a, const TaskView& b) {
    return std::tuple{urgency(a.state), a.task->closes, a.task->opens, a.task->key}
           < std::tuple{urgency(b.state), b.task->closes, b.task->opens, b.task->key};
  });
  return views;
}

}  // namespace topwire
