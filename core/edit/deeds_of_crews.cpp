#include "core/edit/crew_deeds.h"
#include "core/edit/deed_checks.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr int mostWorkers = 200;
constexpr int mostTurnedOut = 999;

constexpr Phrase crewIsGone = phrase("Deed", "That crew is no longer in the orchard.");

void checkNameOfCrew(Faults& faults, const Orchard& orchard, const Crew& crew) {
  checkName(faults, "name", crew.name);
  for (const auto& [id, other] : orchard.crews)
    if (id != crew.id && folded(other.name) == folded(crew.name))
      faults.add(
          "name",
          phrase("Deed", "There is a crew called %1 already; choose another name."),
          {other.name});
}

void checkWorkers(Faults& faults, const Crew& crew) {
  if (crew.workers < 1 || crew.workers > mostWorkers)
    faults.add("workers", phrase("Deed", "A crew has between 1 and 200 workers."));
  else if (std::ssize(crew.members) > crew.workers)
    faults.add(
        "members",
        phrase("Deed",
               "%1 people are named, and the crew has %2 workers; correct one of "
               "the two."),
        {static_cast<std::int64_t>(crew.members.size()), std::int64_t{crew.workers}});
}

void checkHours(Faults& faults, const Crew& crew) {
  if (!(crew.hoursPerDay >= 0.5 && crew.hoursPerDay <= 24))
    return faults.add(
        "hoursPerDay",
        phrase("Deed", "A working day has between half an hour and 24 hours."));
  const double inAll = crew.workers * crew.hoursPerDay * 60;
  if (crew.youngMinutes < 0 || crew.youngMinutes > std::max(inAll, 0.0))
    faults.add("youngMinutes",
               phrase("Deed",
                      "Hours kept for young trees lie between none and the crew's %1 "
                      "worker-hours of a day."),
               {Figure{std::max(inAll, 0.0) / 60, 1}});
}

/// Each is a name on one line, and stands there once.
void checkEach(Faults& faults,
               const std::string& place,
               const std::vector<std::string>& names) {
  for (auto name = names.begin(); name != names.end(); ++name) {
    checkName(faults, place, *name);
    if (name->find(',') != std::string::npos)
      faults.add(
          place,
          phrase("Deed", "Write one name between commas; %1 holds a comma itself."),
          {*name});
    if (std::find(names.begin(), name, *name) != name)
      faults.add(place, phrase("Deed", "%1 is named twice; name it once."), {*name});
  }
}

void checkDaysOff(Faults& faults, const Crew& crew) {
  for (const DaySpan& span : crew.daysOff)
    if (span.last < span.first)
      faults.add("daysOff",
                 phrase("Deed", "The days off run from %1 back to %2; swap the two."),
                 {span.first, span.last});
    else
      checkLikelyDay(faults, "daysOff", span.first);
}

Faults checkCrew(const Orchard& orchard, const Crew& crew) {
  Faults faults;
  checkNameOfCrew(faults, orchard, crew);
  checkWorkers(faults, crew);
  checkHours(faults, crew);
  checkEach(faults, "skills", crew.skills);
  checkEach(faults, "members", crew.members);
  checkDaysOff(faults, crew);
  return faults;
}

Crew tidied(Crew crew) {
  crew.name = withoutBlanks(crew.name);
  for (std::string& skill : crew.skills) skill = folded(withoutBlanks(skill));
  for (std::string& member : crew.members) member = withoutBlanks(member);
  std::ranges::sort(crew.daysOff, {}, &DaySpan::first);
  return crew;
}

/// Which of a map's records go when a crew does.
template <class Record, class Map, class IsOf>
void removeFrom(Change& change, const Map& records, IsOf isOf) {
  for (const auto& [key, record] : records)
    if (isOf(record)) change.edits.emplace_back(Edit<Record>{record, std::nullopt});
}

const WorkDay* saidOf(const Orchard& orchard, Day day) {
  return lookUp(orchard.workDays, day);
}

template <class Record>
Edit<Record> replacing(const Record* held, std::optional<Record> after) {
  return {held ? std::optional{*held} : std::nullopt, std::move(after)};
}

}  // namespace

Checked<Change> addCrew(const Orchard& orchard, const Crew& crew) {
  const Crew tidy = tidied(crew);
  return checkCrew(orchard, tidy)
      .orElse({Sentence{phrase("Deed", "Crew %1 added"), {tidy.name}},
               {Edit<Crew>{std::nullopt, tidy}}});
}

Checked<Change> editCrew(const Orchard& orchard, const Crew& crew) {
  const Crew* before = lookUp(orchard.crews, crew.id);
  if (!before) return refusal({}, crewIsGone);
  const Crew tidy = tidied(crew);
  return checkCrew(orchard, tidy)
      .orElse({Sentence{phrase("Deed", "Crew %1 changed"), {tidy.name}},
               {Edit<Crew>{*before, tidy}}});
}

Checked<Change> deleteCrew(const Orchard& orchard, CrewId crew) {
  const Crew* before = lookUp(orchard.crews, crew);
  if (!before) return refusal({}, crewIsGone);
  Change change{Sentence{phrase("Deed", "Crew %1 deleted"), {before->name}}, {}};
  const auto isOfCrew = [crew](const auto& record) { return record.of.crew == crew; };
  removeFrom<Turnout>(change, orchard.turnouts, isOfCrew);
  removeFrom<PlannedJob>(change, orchard.plannedJobs, isOfCrew);
  removeFrom<Pin>(
      change, orchard.pins, [crew](const Pin& pin) { return pin.crew == crew; });
  change.edits.emplace_back(Edit<Crew>{*before, std::nullopt});
  return change;
}

Checked<Change> setWorkDay(const Orchard& orchard, const WorkDay& work) {
  WorkDay tidy = work;
  tidy.reason = withoutBlanks(work.reason);
  Faults faults;
  checkLikelyDay(faults, "day", tidy.day);
  checkText(faults, "reason", tidy.reason);
  if (tidy.percent < 0 || tidy.percent > 100)
    faults.add("percent",
               phrase("Deed",
                      "How much of a day can be worked lies between 0 and 100 percent."));
  return std::move(faults).orElse(
      {Sentence{phrase("Deed", "%1: %2 % of the usual hours can be worked"),
                {tidy.day, std::int64_t{tidy.percent}}},
       {replacing<WorkDay>(saidOf(orchard, tidy.day), tidy)}});
}

Checked<Change> clearWorkDay(const Orchard& orchard, Day day) {
  const WorkDay* held = saidOf(orchard, day);
  if (!held)
    return refusal(
        "day",
        phrase("Deed", "Nothing is said of %1; it is worked as its weekday is."),
        {day});
  return Change{Sentence{phrase("Deed", "%1: worked as its weekday is again"), {day}},
                {Edit<WorkDay>{*held, std::nullopt}}};
}

Checked<Change> setTurnout(const Orchard& orchard, const Turnout& turnout) {
  const Crew* crew = lookUp(orchard.crews, turnout.of.crew);
  if (!crew) return refusal("crew", crewIsGone);
  Faults faults;
  checkLikelyDay(faults, "day", turnout.of.day);
  if (turnout.workers < 0 || turnout.workers > mostTurnedOut)
    faults.add("workers",
               phrase("Deed", "Between 0 and %1 workers can turn out; check the number."),
               {std::int64_t{mostTurnedOut}});
  const bool usual = turnout.workers == crew->workers;
  return std::move(faults).orElse(
      {Sentence{phrase("Deed", "%1: %2 of %3 turned out on %4"),
                {crew->name,
                 std::int64_t{turnout.workers},
                 std::int64_t{crew->workers},
                 turnout.of.day}},
       usual && !orchard.turnouts.contains(turnout.of)
           ? std::vector<AnyEdit>{}
           : std::vector<AnyEdit>{
               replacing<Turnout>(lookUp(orchard.turnouts, turnout.of),
                                  usual ? std::nullopt : std::optional{turnout})}});
}

}  // namespace topwire
