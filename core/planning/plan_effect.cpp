#include "core/planning/plan_effect.h"

#include "core/planning/progress.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace topwire {

namespace {

using Kind = PlanDifference::Kind;
using TasksByKey = std::map<TaskKey, const Task*>;

TasksByKey byKey(const Plan& plan) {
  TasksByKey tasks;
  for (const Task& task : plan.tasks) tasks.emplace(task.key, &task);
  return tasks;
}

bool isOver(const Task* task, Day today) {
  return task == nullptr || task->cutOff.value_or(task->closes) < today;
}

/// What a task that one of the plans has becomes; nothing where it stays as it was.
std::optional<PlanDifference> difference(const TaskKey& key,
                                         const Task* before,
                                         const Task* after) {
  if (before == nullptr) return PlanDifference{Kind::appeared, key};
  if (after == nullptr) return PlanDifference{Kind::dropped, key};
  if (after->noLongerAsked && !before->noLongerAsked)
    return PlanDifference{Kind::keptUnasked, key};
  const int opens = daysBetween(before->opens, after->opens);
  const int closes = daysBetween(before->closes, after->closes);
  if (opens == 0 && closes == 0) return std::nullopt;
  return PlanDifference{Kind::moved, key, opens, closes};
}

double hoursLeft(const Orchard& orchard, const Plan& plan, Day today) {
  const Season season = seasonOf(today, orchard.settings.hemisphere());
  double hours = 0;
  for (const TaskView& view : viewsOf(orchard, plan, today)) {
    const bool wanted =
        view.state != TaskState::lapsed && view.state != TaskState::setAside;
    if (wanted && !view.task->noLongerAsked && view.task->key.season == season)
      hours += view.hoursLeft;
  }
  return hours;
}

Sentence countSentence(Kind kind, std::int64_t count) {
  const auto say = [count](Phrase one, Phrase many) {
    return Sentence{counted(count, one, many), {count}};
  };
  switch (kind) {
    case Kind::moved:
      return say(phrase("Plan", "%1 task moves"), phrase("Plan", "%1 tasks move"));
    case Kind::appeared:
      return say(phrase("Plan", "%1 task comes"), phrase("Plan", "%1 tasks come"));
    case Kind::dropped:
      return say(phrase("Plan", "%1 task goes"), phrase("Plan", "%1 tasks go"));
    case Kind::keptUnasked:
      break;
  }
  return say(phrase("Plan", "%1 task stays for its ticks alone"),
             phrase("Plan", "%1 tasks stay for their ticks alone"));
}

Sentence hoursSentence(double hours) {
  const auto whole = static_cast<std::int64_t>(std::llround(std::abs(hours)));
  if (hours > 0)
    return {counted(whole,
                    phrase("Plan", "%1 worker-hour more this season"),
                    phrase("Plan", "%1 worker-hours more this season")),
            {whole}};
  return {counted(whole,
                  phrase("Plan", "%1 worker-hour fewer this season"),
                  phrase("Plan", "%1 worker-hours fewer this season")),
          {whole}};
}

bool countsAsHours(double hours) {
  return std::llround(std::abs(hours)) > 0;
}

}  // namespace

bool PlanEffect::none() const {
  return differences.empty() && !countsAsHours(hours);
}

PlanEffect effectBetween(const Orchard& orchard,
                         const Plan& before,
                         const Plan& after,
                         Day today) {
  const TasksByKey was = byKey(before);
  TasksByKey becomes = byKey(after);
  PlanEffect effect;
  const auto compare = [&](const TaskKey& key, const Task* one, const Task* other) {
    if (isOver(one, today) && isOver(other, today)) return;
    if (const auto told = difference(key, one, other))
      effect.differences.push_back(*told);
  };
  for (const auto& [key, task] : was) {
    const auto found = becomes.find(key);
    compare(key, task, found == becomes.end() ? nullptr : found->second);
  }
  for (const auto& [key, task] : becomes)
    if (!was.contains(key)) compare(key, nullptr, task);
  std::ranges::sort(effect.differences, {}, &PlanDifference::task);
  effect.hours = hoursLeft(orchard, after, today) - hoursLeft(orchard, before, today);
  return effect;
}

PlanEffect effectOf(const Orchard& orchard,
                    const Trade& trade,
                    const Programme& instead,
                    Day today) {
  Programmes programmes = trade.programmes;
  programmes.insert_or_assign(instead.id, instead);
  const Trade changed{trade.tables, programmes, trade.forecaster};
  const SeasonSpan seasons = plannedSeasons(orchard, today);
  const auto forecast = trade.forecaster.over(orchard, today);
  return effectBetween(orchard,
                       planTasks(orchard, trade, *forecast, seasons),
                       planTasks(orchard, changed, *forecast, seasons),
                       today);
}

std::vector<Sentence> summaryOf(const PlanEffect& effect) {
  std::vector<Sentence> sentences;
  for (const Kind kind :
       {Kind::moved, Kind::appeared, Kind::dropped, Kind::keptUnasked}) {
    const auto count =
        std::ranges::count(effect.differences, kind, &PlanDifference::kind);
    if (count > 0) sentences.push_back(countSentence(kind, count));
  }
  if (countsAsHours(effect.hours)) sentences.push_back(hoursSentence(effect.hours));
  if (sentences.empty())
    sentences.emplace_back(phrase("Plan", "Nothing changes in the plan"));
  return sentences;
}

}  // namespace topwire
