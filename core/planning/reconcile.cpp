#include "core/planning/reconcile.h"

#include <algorithm>
#include <array>

namespace topwire {

namespace {

using Kind = PlanDifference::Kind;

StoredTask stored(const Task& task) {
  return {task.key, task.opens, task.closes, task.cutOff, task.noLongerAsked};
}

/// What telling the two apart is worth; nothing where they are the same.
std::optional<PlanDifference> difference(const StoredTask* before,
                                         const StoredTask& now) {
  if (!before) return PlanDifference{Kind::appeared, now.key};
  if (now.noLongerAsked && !before->noLongerAsked)
    return PlanDifference{Kind::keptUnasked, now.key};
  const int opens = daysBetween(before->opens, now.opens);
  const int closes = daysBetween(before->closes, now.closes);
  if (opens == 0 && closes == 0) return std::nullopt;
  return PlanDifference{Kind::moved, now.key, opens, closes};
}

Sentence countSentence(Kind kind, std::int64_t count) {
  const auto say = [count](Phrase one, Phrase many) {
    return Sentence{counted(count, one, many), {count}};
  };
  switch (kind) {
    case Kind::moved:
      return say(phrase("Plan", "%1 window moved"), phrase("Plan", "%1 windows moved"));
    case Kind::appeared:
      return say(phrase("Plan", "%1 job appeared"), phrase("Plan", "%1 jobs appeared"));
    case Kind::dropped:
      return say(phrase("Plan", "%1 job is no longer asked for"),
                 phrase("Plan", "%1 jobs are no longer asked for"));
    case Kind::keptUnasked:
      break;
  }
  return say(phrase("Plan", "%1 job is no longer asked for but kept for its ticks"),
             phrase("Plan", "%1 jobs are no longer asked for but kept for their ticks"));
}

}  // namespace

Reconciled reconcile(const Orchard& orchard, const Plan& plan, SeasonSpan planned) {
  Reconciled result;
  for (const Task& task : plan.tasks) {
    const StoredTask now = stored(task);
    const auto before = orchard.tasks.find(task.key);
    const auto told =
        difference(before == orchard.tasks.end() ? nullptr : &before->second, now);
    if (told) result.differences.push_back(*told);
    result.tasks.emplace(now.key, now);
  }
  for (const auto& [key, before] : orchard.tasks) {
    const bool inSpan = planned.first <= key.season && key.season <= planned.last;
    if (!inSpan && orchard.plantings.contains(key.planting))
      result.tasks.emplace(key, before);
    else if (!result.tasks.contains(key))
      result.differences.push_back({Kind::dropped, key});
  }
  return result;
}

std::vector<Sentence> summaryOf(const std::vector<PlanDifference>& differences) {
  std::vector<Sentence> sentences;
  for (const Kind kind :
       {Kind::moved, Kind::appeared, Kind::dropped, Kind::keptUnasked}) {
    const auto count = std::ranges::count(differences, kind, &PlanDifference::kind);
    if (count > 0) sentences.push_back(countSentence(kind, count));
  }
  return sentences;
}

}  // namespace topwire
