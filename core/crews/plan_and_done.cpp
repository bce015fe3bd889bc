#include "core/crews/plan_and_done.h"

#include "core/planning/progress.h"

#include <algorithm>
#include <string_view>

namespace topwire {

namespace {

PlanAndDone compared(const PlannedJob& planned, const std::vector<const Tick*>& ticks) {
  PlanAndDone both{planned, {}, 0, false};
  for (const Tick* tick : ticks) {
    if (tick->task != planned.task || tick->day != planned.of.day) continue;
    const RowSet rows = tick->rows.inCommonWith(planned.rows);
    if (rows.empty()) continue;
    if (tick->percent == 100) both.done = both.done.with(rows);
    both.minutes += tick->minutes;
    both.hoursMissing = both.hoursMissing || tick->minutes == 0;
  }
  return both;
}

/// Empty where the crew is no more.
std::string_view nameOfCrew(const Orchard& orchard, CrewId crew) {
  const auto found = orchard.crews.find(crew);
  return found == orchard.crews.end() ? std::string_view{} : found->second.name;
}

}  // namespace

std::vector<PlanAndDone> planAndDone(const Orchard& orchard, Day planned) {
  const std::vector<const Tick*> ticks = standingTicks(orchard);
  std::vector<PlanAndDone> both;
  for (const auto& [place, job] : orchard.plannedJobs)
    if (place.day == planned) both.push_back(compared(job, ticks));
  std::ranges::stable_sort(both, {}, [&](const PlanAndDone& job) {
    return nameOfCrew(orchard, job.planned.of.crew);
  });
  return both;
}

std::optional<Day> lastPlanned(const Orchard& orchard, Day today) {
  std::optional<Day> last;
  for (const auto& [place, job] : orchard.plannedJobs)
    if (place.day < today) last = std::max(last.value_or(place.day), place.day);
  return last;
}

std::vector<PlannedJob> plannedJobs(const std::vector<CrewLane>& lanes, Day day) {
  constexpr double minutesPerHour = 60;
  std::vector<PlannedJob> planned;
  for (const CrewLane& lane : lanes) {
    int order = 0;
    for (const LaneJob& job : lane.jobs)
      planned.push_back({{day, lane.crew, ++order},
                         job.task,
                         job.rows,
                         job.startMinute,
                         static_cast<int>(job.hours * minutesPerHour + 0.5),
                         job.workers});
  }
  return planned;
}

}  // namespace topwire
