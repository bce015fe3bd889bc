#include "core/calendar/clock_time.h"
#include "core/edit/crew_deeds.h"
#include "core/edit/deed_checks.h"
#include "core/orchard/skill_words.h"
#include "core/orchard/working_days.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr int minutesOfDay = 24 * 60;
constexpr int longestClosure = 366;

std::string blockNameOf(const Orchard& orchard, BlockId id) {
  const Block* block = lookUp(orchard.blocks, id);
  return block ? block->name : std::string{};
}

BlockId blockOfTask(const Orchard& orchard, const TaskKey& task) {
  const Planting* planting = lookUp(orchard.plantings, task.planting);
  return planting ? planting->block : BlockId{};
}

/// From midnight, of the hours the crew works on any day.
int endOfWork(const Orchard& orchard, const Crew& crew) {
  const int length = static_cast<int>(std::lround(crew.hoursPerDay * 60));
  return std::min(orchard.settings.startMinute + length, minutesOfDay);
}

/// Nobody works on that day.
void checkWorked(Faults& faults, const Orchard& orchard, Day day) {
  if (workablePercent(orchard, day) > 0) return;
  const WorkDay* said = lookUp(orchard.workDays, day);
  if (said && !said->reason.empty())
    faults.add("day",
               phrase("Deed",
                      "No work is done on %1 (%2); choose another day, or say that it is "
                      "worked."),
               {day, said->reason});
  else
    faults.add(
        "day",
        phrase("Deed",
               "No work is done on %1; choose another day, or say that it is worked."),
        {day});
}

void checkCrewFree(Faults& faults,
                   const Orchard& orchard,
                   const Crew& crew,
                   const Pin& pin,
                   const std::string& skill) {
  if (isOff(crew, pin.day))
    faults.add("day",
               phrase("Deed", "%1 is off on %2; choose another crew or day."),
               {crew.name, pin.day});
  const Turnout* turnout = lookUp(orchard.turnouts, CrewDay{crew.id, pin.day});
  if (turnout && turnout->workers == 0)
    faults.add("day",
               phrase("Deed", "Nobody of %1 turned out on %2; choose another crew."),
               {crew.name, pin.day});
  if (!canDo(crew, skill))
    faults.add("crew",
               phrase("Deed",
                      "The work asks for %2, which %1 is not down for; choose another "
                      "crew, or add the skill to this one."),
               {crew.name, skillInWords(skill)});
}

void checkBlockOpen(Faults& faults,
                    const Orchard& orchard,
                    const Crew& crew,
                    const Pin& pin) {
  const BlockId block = blockOfTask(orchard, pin.task);
  const int end = endOfWork(orchard, crew);
  const BlockClosure* closure = closedAllDay(orchard, block, pin.day, end);
  if (!closure) return;
  faults.add(
      "day",
      phrase("Deed", "%1 is closed until %3 on %2; choose a later day."),
      {blockNameOf(orchard, block), closure->until, clockText(closure->untilMinute)});
}

void checkOtherPins(Faults& faults, const Orchard& orchard, const Pin& pin) {
  const bool toCrew = pin.kind == PinKind::crewToJob;
  for (const auto& [id, other] : orchard.pins) {
    if (other.task != pin.task || id == pin.id) continue;
    const bool otherToCrew = other.kind == PinKind::crewToJob;
    if (toCrew && otherToCrew && other.day == pin.day && other.crew == pin.crew)
      faults.add({},
                 phrase("Deed", "The crew is pinned to this work on %1 already."),
                 {pin.day});
    else if (toCrew && !otherToCrew && pin.day < other.day)
      faults.add("day",
                 phrase("Deed",
                        "This work is not to be begun before %1; choose a later day, or "
                        "take that pin away."),
                 {other.day});
    else if (!toCrew && otherToCrew && other.day < pin.day)
      faults.add("day",
                 phrase("Deed",
                        "A crew is pinned to this work on %1, before %2; take that pin "
                        "away, or choose an earlier day."),
                 {other.day, pin.day});
  }
}

void checkCrewOf(Faults& faults,
                 const Orchard& orchard,
                 const Pin& pin,
                 const std::string& skill) {
  const Crew* crew = pin.crew ? lookUp(orchard.crews, *pin.crew) : nullptr;
  if (!crew) return faults.add("crew", phrase("Deed", "Choose a crew for this work."));
  checkWorked(faults, orchard, pin.day);
  checkCrewFree(faults, orchard, *crew, pin, skill);
  checkBlockOpen(faults, orchard, *crew, pin);
}

Sentence nameOfPin(const Orchard& orchard, const Pin& pin) {
  const std::string block = blockNameOf(orchard, blockOfTask(orchard, pin.task));
  const Crew* crew = pin.crew ? lookUp(orchard.crews, *pin.crew) : nullptr;
  if (pin.kind == PinKind::notBefore)
    return {phrase("Deed", "Work in %1 not before %2"), {block, pin.day}};
  return {phrase("Deed", "%3 pinned to work in %1 on %2"),
          {block, pin.day, crew ? crew->name : std::string{}}};
}

/// The task's earlier `notBefore`, which a new one takes the place of.
const Pin* replacedBy(const Orchard& orchard, const Pin& pin) {
  if (pin.kind != PinKind::notBefore) return nullptr;
  for (const auto& [id, other] : orchard.pins)
    if (other.kind == pin.kind && other.task == pin.task) return &other;
  return nullptr;
}

void checkSpan(Faults& faults, const BlockClosure& closure) {
  checkLikelyDay(faults, "from", closure.from);
  if (closure.until < closure.from)
    faults.add("until",
               phrase("Deed", "The block is closed from %1 back to %2; swap the two."),
               {closure.from, closure.until});
  else if (daysBetween(closure.from, closure.until) > longestClosure)
    faults.add("until",
               phrase("Deed", "A block is closed for a year at most; check the days."));
}

void checkOpening(Faults& faults, const BlockClosure& closure) {
  if (closure.untilMinute < 0 || closure.untilMinute > minutesOfDay)
    faults.add("untilMinute",
               phrase("Deed", "A time of day lies between 00:00 and 24:00."));
  else if (closure.untilMinute == 0 && closure.until == closure.from)
    faults.add("untilMinute",
               phrase("Deed",
                      "The block would open as soon as it is closed; give a later hour "
                      "or day."));
}

bool byPlace(const PlannedJob& one, const PlannedJob& other) {
  return one.of < other.of;
}

void checkPlannedJob(Faults& faults,
                     const Orchard& orchard,
                     Day day,
                     const PlannedJob& job) {
  const Planting* planting = lookUp(orchard.plantings, job.task.planting);
  if (!planting)
    return faults.add("task",
                      phrase("Deed", "That planting is no longer in the orchard."));
  if (!orchard.crews.contains(job.of.crew))
    faults.add("crew", phrase("Deed", "That crew is no longer in the orchard."));
  if (job.of.day != day)
    faults.add("day",
               phrase("Deed", "A job of %2 stands in the plan of %1; plan again."),
               {day, job.of.day});
  if (job.rows.empty() || !job.rows.without(planting->rows).empty())
    faults.add("rows",
               phrase("Deed", "The rows %1 are not all in %2; plan again."),
               {rowsText(job.rows), calledName(orchard, *planting)});
  const bool timed = job.startMinute >= 0 && job.startMinute <= minutesOfDay;
  if (job.of.order < 1 || !timed || job.workerMinutes < 0 || job.workers < 1)
    faults.add("hours",
               phrase("Deed",
                      "A job of the plan has no start, workers or hours that can be; "
                      "plan again."));
}

void checkOncePerPlace(Faults& faults, const std::vector<PlannedJob>& sorted) {
  const auto twice = std::ranges::adjacent_find(
      sorted, [](const auto& one, const auto& other) { return one.of == other.of; });
  if (twice != sorted.end())
    faults.add("order",
               phrase("Deed", "Two jobs of the plan stand in one place; plan again."));
}

/// The edits that put `jobs`, sorted, in the place of what was accepted for the day.
std::vector<AnyEdit> replacingPlan(const Orchard& orchard,
                                   Day day,
                                   const std::vector<PlannedJob>& jobs) {
  std::vector<AnyEdit> edits;
  for (const auto& [place, held] : orchard.plannedJobs) {
    const bool stays = std::ranges::binary_search(jobs, held, byPlace);
    if (place.day == day && !stays)
      edits.emplace_back(Edit<PlannedJob>{held, std::nullopt});
  }
  for (const PlannedJob& job : jobs) {
    const PlannedJob* held = lookUp(orchard.plannedJobs, job.of);
    edits.emplace_back(Edit<PlannedJob>{held ? std::optional{*held} : std::nullopt, job});
  }
  return edits;
}

}  // namespace

Checked<Change> addPin(const Orchard& orchard, const Pin& pin, const std::string& skill) {
  if (!orchard.plantings.contains(pin.task.planting))
    return refusal("task", phrase("Deed", "That planting is no longer in the orchard."));
  Pin tidy = pin;
  tidy.reason = withoutBlanks(pin.reason);
  if (tidy.kind == PinKind::notBefore) tidy.crew.reset();
  Faults faults;
  checkLikelyDay(faults, "day", tidy.day);
  checkText(faults, "reason", tidy.reason);
  if (tidy.kind == PinKind::crewToJob) checkCrewOf(faults, orchard, tidy, skill);
  checkOtherPins(faults, orchard, tidy);
  Change change{nameOfPin(orchard, tidy), {}};
  if (const Pin* earlier = replacedBy(orchard, tidy))
    change.edits.emplace_back(Edit<Pin>{*earlier, std::nullopt});
  change.edits.emplace_back(Edit<Pin>{std::nullopt, tidy});
  return std::move(faults).orElse(std::move(change));
}

Checked<Change> removePin(const Orchard& orchard, PinId pin) {
  const Pin* before = lookUp(orchard.pins, pin);
  if (!before) return refusal({}, phrase("Deed", "That pin is no longer there."));
  const std::string block = blockNameOf(orchard, blockOfTask(orchard, before->task));
  return Change{Sentence{phrase("Deed", "Pin of work in %1 on %2 taken away"),
                         {block, before->day}},
                {Edit<Pin>{*before, std::nullopt}}};
}

Checked<Change> closeBlock(const Orchard& orchard, const BlockClosure& closure) {
  const Block* block = lookUp(orchard.blocks, closure.block);
  if (!block)
    return refusal("block", phrase("Deed", "That block is no longer in the orchard."));
  BlockClosure tidy = closure;
  tidy.reason = withoutBlanks(closure.reason);
  Faults faults;
  checkSpan(faults, tidy);
  checkOpening(faults, tidy);
  checkText(faults, "reason", tidy.reason);
  return std::move(faults).orElse(
      {Sentence{phrase("Deed", "%1 closed until %3 on %2"),
                {block->name, tidy.until, clockText(tidy.untilMinute)}},
       {Edit<BlockClosure>{std::nullopt, tidy}}});
}

Checked<Change> reopenBlock(const Orchard& orchard, ClosureId closure) {
  const BlockClosure* before = lookUp(orchard.closures, closure);
  if (!before) return refusal({}, phrase("Deed", "That closing is no longer there."));
  return Change{
      Sentence{phrase("Deed", "%1 opened again"), {blockNameOf(orchard, before->block)}},
      {Edit<BlockClosure>{*before, std::nullopt}}};
}

Checked<Change> acceptPlan(const Orchard& orchard,
                           Day day,
                           const std::vector<PlannedJob>& jobs) {
  if (jobs.empty())
    return refusal(
        {},
        phrase("Deed", "The plan of %1 has no job, so there is none to accept."),
        {day});
  std::vector<PlannedJob> sorted = jobs;
  std::ranges::stable_sort(sorted, byPlace);
  Faults faults;
  for (const PlannedJob& job : sorted) checkPlannedJob(faults, orchard, day, job);
  checkOncePerPlace(faults, sorted);
  const auto count = static_cast<std::int64_t>(jobs.size());
  return std::move(faults).orElse(
      {Sentence{counted(count,
                        phrase("Deed", "Plan of %1 accepted: %2 job"),
                        phrase("Deed", "Plan of %1 accepted: %2 jobs")),
                {day, count}},
       replacingPlan(orchard, day, sorted)});
}

}  // namespace topwire
