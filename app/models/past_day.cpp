#include "app/models/past_day.h"

#include "core/planning/progress.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace topwire {

namespace {

std::set<Day> recordedDays(const Orchard& orchard) {
  std::set<Day> days;
  for (const auto& [place, job] : orchard.plannedJobs) days.insert(place.day);
  for (const Tick* tick : standingTicks(orchard)) days.insert(tick->day);
  return days;
}

RowSet plannedFor(const Orchard& orchard, const TaskKey& task, Day day) {
  RowSet rows;
  for (const auto& [place, job] : orchard.plannedJobs)
    if (place.day == day && job.task == task) rows = rows.with(job.rows);
  return rows;
}

}  // namespace

std::optional<Day> recordedBefore(const Orchard& orchard, Day day) {
  const std::set<Day> days = recordedDays(orchard);
  const auto next = days.lower_bound(day);
  return next == days.begin() ? std::nullopt : std::optional{*std::prev(next)};
}

std::optional<Day> recordedAfter(const Orchard& orchard, Day day, Day today) {
  const std::set<Day> days = recordedDays(orchard);
  const auto next = days.upper_bound(day);
  return next == days.end() || *next >= today ? std::nullopt : std::optional{*next};
}

std::vector<DoneBesides> doneBesides(const Orchard& orchard, Day day) {
  std::map<std::tuple<TaskKey, std::string>, DoneBesides> besides;
  for (const Tick* tick : standingTicks(orchard)) {
    if (tick->day != day) continue;
    const RowSet planned = plannedFor(orchard, tick->task, day);
    const RowSet rows = tick->rows.without(planned);
    if (rows.empty()) continue;
    DoneBesides& done = besides[{tick->task, tick->by}];
    done.task = tick->task;
    done.by = tick->by;
    done.rows = done.rows.with(rows);
    if (rows == tick->rows) done.minutes += tick->minutes;
  }
  std::vector<DoneBesides> list;
  for (auto& [key, done] : besides) list.push_back(std::move(done));
  return list;
}

}  // namespace topwire
