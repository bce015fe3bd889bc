#include "core/edit/deed_checks.h"
#include "core/edit/deeds.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr Phrase plantingIsGone =
    phrase("Deed", "That planting is no longer in the orchard.");

std::string calledName(const Orchard& orchard, PlantingId id) {
  const Planting* planting = lookUp(orchard.plantings, id);
  return planting ? calledName(orchard, *planting) : std::string{};
}

/// Shoots set their terminal buds while fruit grows, earlier or later than the fruit's
/// stages, so its code says nothing about its order among those.
bool isOrdered(int earlier, int later) {
  const bool amongFruit = later == stages::terminalBud && earlier > stages::petalFall;
  return earlier < later && !amongFruit;
}

void checkPair(Faults& faults,
               const Observation& seen,
               const Stage& stage,
               const Observation& other,
               const Stage& otherStage) {
  const bool runsBack = (isOrdered(seen.bbch, other.bbch) && seen.day > other.day)
                        || (isOrdered(other.bbch, seen.bbch) && seen.day < other.day);
  if (!runsBack) return;
  const bool isEarlier = seen.bbch < other.bbch;
  faults.add("day",
             isEarlier ? phrase("Deed",
                                "%1 comes before %3, which was seen here on %4, so it "
                                "can't be seen on %2; correct one of the two.")
                       : phrase("Deed",
                                "%1 comes after %3, which was seen here on %4, so it "
                                "can't be seen on %2; correct one of the two."),
             {stage.name, seen.day, otherStage.name, other.day});
}

std::vector<const Observation*> sameSeason(const Orchard& orchard,
                                           const Observation& seen) {
  const Hemisphere hemisphere = orchard.settings.hemisphere();
  std::vector<const Observation*> found;
  for (const auto& [id, other] : orchard.observations)
    if (other.planting == seen.planting
        && seasonOf(other.day, hemisphere) == seasonOf(seen.day, hemisphere))
      found.push_back(&other);
  return found;
}

TaskMark markOf(const Orchard& orchard, const TaskKey& key) {
  const TaskMark* held = lookUp(orchard.marks, key);
  if (held) return *held;
  TaskMark fresh;
  fresh.task = key;
  return fresh;
}

AnyEdit markEdit(const Orchard& orchard, const TaskMark& after) {
  const TaskMark* held = lookUp(orchard.marks, after.task);
  return Edit<TaskMark>{held ? std::optional{*held} : std::nullopt, after};
}

void checkWindow(Faults& faults, DaySpan window) {
  if (window.last < window.first)
    faults.add("window",
               phrase("Deed", "The window ends on %1, before it opens on %2; swap them."),
               {window.last, window.first});
  else if (window.length() > 366)
    faults.add("window", phrase("Deed", "A window lasts a year at most; shorten it."));
}

Sentence aboutTask(Phrase phrase,
                   const Words& title,
                   const Orchard& orchard,
                   const TaskKey& key) {
  return Sentence{phrase, {title, calledName(orchard, key.planting)}};
}

bool isTicked(const Orchard& orchard, const TaskKey& key) {
  return std::ranges::any_of(orchard.ticks,
                             [&](const auto& item) { return item.second.task == key; });
}

constexpr const char* handOperation = "by-hand";

TaskKey freshHandKey(const Orchard& orchard, PlantingId planting, Day opens) {
  TaskKey key{planting, handOperation, seasonOf(opens, orchard.settings.hemisphere()), 1};
  // Work that is gone may still be named by ticks taken back.
  while (orchard.marks.contains(key) || isTicked(orchard, key)) ++key.pass;
  return key;
}

}  // namespace

Checked<Change> observeStage(const Orchard& orchard, const Observation& observation) {
  const Planting* planting = lookUp(orchard.plantings, observation.planting);
  if (!planting) return refusal("planting", plantingIsGone);
  const Stage* stage = stageByCode(observation.bbch);
  Faults faults;
  if (!stage) {
    addUnknownStage(faults, "bbch", observation.bbch);
    return std::move(faults).asRefusal();
  }
  checkText(faults, "by", observation.by);
  if (observation.day < planting->planted)
    faults.add("day",
               phrase("Deed", "These trees were planted on %1, after %2; check the day."),
               {planting->planted, observation.day});
  checkSeasonOf(faults, orchard, *stage, observation.day);
  Edit<Observation> edit{std::nullopt, observation};
  for (const Observation* other : sameSeason(orchard, observation)) {
    const Stage* otherStage = stageByCode(other->bbch);
    if (other->bbch == observation.bbch)
      edit.before = *other;
    else if (otherStage)
      checkPair(faults, observation, *stage, *other, *otherStage);
  }
  if (edit.before) edit.after->id = edit.before->id;
  return std::move(faults).orElse(
      {Sentence{phrase("Deed", "Seen in %2: %1"),
                {stage->name, calledName(orchard, *planting)}},
       {edit}});
}

Checked<Change> setTaskAside(const Orchard& orchard,
                             const Task& task,
                             const Words& title,
                             const std::string& reason) {
  if (!orchard.plantings.contains(task.key.planting)) return refusal({}, plantingIsGone);
  TaskMark mark = markOf(orchard, task.key);
  mark.setAsideReason = withoutBlanks(reason);
  Faults faults;
  if (mark.setAsideReason.empty())
    faults.add("reason",
               phrase("Deed", "Say why it is set aside, for whoever looks next."));
  checkText(faults, "reason", mark.setAsideReason);
  return std::move(faults).orElse(
      {aboutTask(phrase("Deed", "%1 set aside in %2"), title, orchard, task.key),
       {markEdit(orchard, mark)}});
}

Checked<Change> moveTask(const Orchard& orchard,
                         const Task& task,
                         const Words& title,
                         DaySpan window) {
  if (!orchard.plantings.contains(task.key.planting)) return refusal({}, plantingIsGone);
  TaskMark mark = markOf(orchard, task.key);
  mark.moved = window;
  Faults faults;
  checkWindow(faults, window);
  if (std::abs(daysBetween(task.opens, window.first)) > 366)
    faults.add("window",
               phrase("Deed",
                      "%1 lies more than a year from where the task stands, %2; check "
                      "the day."),
               {window.first, task.opens});
  return std::move(faults).orElse(
      {aboutTask(phrase("Deed", "%1 moved in %2"), title, orchard, task.key),
       {markEdit(orchard, mark)}});
}

Checked<Change> restoreTask(const Orchard& orchard,
                            const Task& task,
                            const Words& title) {
  const TaskMark* mark = lookUp(orchard.marks, task.key);
  if (!mark)
    return refusal({},
                   phrase("Deed", "This task stands as planned; nothing to restore."));
  if (!mark->handTitle.empty() && isTicked(orchard, task.key))
    return refusal({},
                   phrase("Deed",
                          "This work has ticks on record and stays; set it aside "
                          "instead."));
  const Phrase name = mark->handTitle.empty() ? phrase("Deed", "%1 restored in %2")
                                              : phrase("Deed", "%1 deleted in %2");
  return Change{aboutTask(name, title, orchard, task.key),
                {Edit<TaskMark>{*mark, std::nullopt}}};
}

Checked<Change> addWork(const Orchard& orchard,
                        PlantingId planting,
                        const std::string& title,
                        DaySpan window,
                        int secondsPerTree) {
  if (!orchard.plantings.contains(planting)) return refusal("planting", plantingIsGone);
  TaskMark mark;
  mark.task = freshHandKey(orchard, planting, window.first);
  mark.moved = window;
  mark.handTitle = withoutBlanks(title);
  mark.handSecondsPerTree = secondsPerTree;
  Faults faults;
  checkName(faults, "title", mark.handTitle);
  checkWindow(faults, window);
  if (yearOf(window.first) < 1900 || yearOf(window.first) > 2200)
    faults.add("window",
               phrase("Deed", "Work on %1 can't be right; check the day."),
               {window.first});
  if (secondsPerTree < 0 || secondsPerTree > 36'000)
    faults.add("secondsPerTree",
               phrase("Deed", "Time per tree lies between 0 seconds and ten hours."));
  return std::move(faults).orElse(
      {Sentence{phrase("Deed", "%1 added in %2"),
                {mark.handTitle, calledName(orchard, planting)}},
       {Edit<TaskMark>{std::nullopt, mark}}});
}

}  // namespace topwire
