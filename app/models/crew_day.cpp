#include "app/models/crew_day.h"

#include "core/crews/plan_and_done.h"
#include "core/planning/progress.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr int secondsPerMinute = 60;
constexpr int minutesPerHour = 60;
constexpr int usualMinutes = 8 * minutesPerHour;

std::vector<PlannedJob> acceptedOn(const Orchard& orchard, Day day) {
  std::vector<PlannedJob> jobs;
  for (const auto& [place, job] : orchard.plannedJobs)
    if (place.day == day) jobs.push_back(job);
  return jobs;
}

bool isTickedOn(const Orchard& orchard, Day day) {
  return std::ranges::any_of(standingTicks(orchard),
                             [day](const Tick* tick) { return tick->day == day; });
}

/// Each crew has what is left of the rows it was given.
bool keepsTo(const Orchard& orchard,
             const std::vector<PlannedJob>& accepted,
             const std::vector<PlannedJob>& planned) {
  const ProgressByTask progress = progressOf(orchard);
  return std::ranges::all_of(accepted, [&](const PlannedJob& job) {
    const auto known = progress.find(job.task);
    RowSet left = job.rows;
    if (known != progress.end()) left = left.without(known->second.wholeRows());
    for (const PlannedJob& now : planned)
      if (now.of.crew == job.of.crew && now.task == job.task)
        left = left.without(now.rows);
    return left.empty();
  });
}

template <class Matches>
const Pin* findPin(const Orchard& orchard, Matches matches) {
  for (const auto& [id, pin] : orchard.pins)
    if (matches(pin)) return &pin;
  return nullptr;
}

std::optional<Day> worked(const CrewPlan& plan, Day from, int step) {
  for (int index = plan.question.indexOf(from) + step;
       index >= 0 && index < plan.question.problem.days;
       index += step)
    if (const Day day = plan.question.dayOf(index); isWorked(plan, day)) return day;
  return std::nullopt;
}

}  // namespace

Acceptance acceptanceOf(const Orchard& orchard,
                        const std::vector<CrewLane>& lanes,
                        Day day) {
  std::vector<PlannedJob> accepted = acceptedOn(orchard, day);
  if (accepted.empty()) return Acceptance::none;
  std::vector<PlannedJob> planned = plannedJobs(lanes, day);
  std::ranges::sort(planned, {}, &PlannedJob::of);
  const bool same = planned == accepted
                    || (isTickedOn(orchard, day) && keepsTo(orchard, accepted, planned));
  return same ? Acceptance::asPlanned : Acceptance::changedSince;
}

const Pin* crewPinOf(const Orchard& orchard, const TaskKey& task, CrewId crew, Day day) {
  return findPin(orchard, [&](const Pin& pin) {
    return pin.kind == PinKind::crewToJob && pin.task == task && pin.crew == crew
           && pin.day == day;
  });
}

const Pin* waitPinOf(const Orchard& orchard, const TaskKey& task, Day day) {
  return findPin(orchard, [&](const Pin& pin) {
    return pin.kind == PinKind::notBefore && pin.task == task && pin.day > day;
  });
}

bool isWorked(const CrewPlan& plan, Day day) {
  const int index = plan.question.indexOf(day);
  const std::vector<Seconds>& lengths = plan.question.problem.dayLength;
  return index >= 0 && index < static_cast<int>(lengths.size())
         && lengths[static_cast<std::size_t>(index)] > 0;
}

std::optional<Day> workedAfter(const CrewPlan& plan, Day day) {
  return worked(plan, day, 1);
}

std::optional<Day> workedBefore(const CrewPlan& plan, Day day) {
  return worked(plan, day, -1);
}

DayAxis axisOf(const CrewPlan& plan, const std::vector<CrewLane>& lanes, Day day) {
  DayAxis axis{plan.question.startMinute, plan.question.startMinute + usualMinutes};
  if (isWorked(plan, day)) {
    const auto index = static_cast<std::size_t>(plan.question.indexOf(day));
    axis.to =
        axis.from
        + static_cast<int>(plan.question.problem.dayLength[index] / secondsPerMinute);
  }
  for (const CrewLane& lane : lanes)
    for (const LaneJob& job : lane.jobs) axis.to = std::max(axis.to, job.endMinute);
  return axis;
}

std::optional<CrewId> crewBeside(const std::vector<CrewLane>& lanes,
                                 CrewId crew,
                                 int steps) {
  const auto found = std::ranges::find(lanes, crew, &CrewLane::crew);
  if (found == lanes.end()) return std::nullopt;
  const auto wanted = static_cast<int>(found - lanes.begin()) + steps;
  if (wanted < 0 || wanted >= static_cast<int>(lanes.size())) return std::nullopt;
  return lanes[static_cast<std::size_t>(wanted)].crew;
}

RowSet plannedRows(const std::vector<CrewLane>& lanes, const TaskKey& task) {
  RowSet rows;
  for (const CrewLane& lane : lanes)
    for (const LaneJob& job : lane.jobs)
      if (job.task == task) rows = rows.with(job.rows);
  return rows;
}

std::vector<const BlockClosure*> closuresOn(const Orchard& orchard, Day day) {
  std::vector<const BlockClosure*> closures;
  for (const Block* block : blocksInOrder(orchard))
    for (const auto& [id, closure] : orchard.closures) {
      if (closure.block != block->id || day < closure.from || day > closure.until)
        continue;
      if (day < closure.until || closure.untilMinute > 0) closures.push_back(&closure);
    }
  return closures;
}

}  // namespace topwire
