#pragma once

#include "core/crews/crew_plan.h"

#include <optional>
#include <utility>

namespace topwire {

/// An orchard as of today, with what its crew plan is made from.
class CrewBook {
public:
  CrewBook(const Orchard& orchard, const Trade& trade, Day today)
      : orchard_(&orchard)
      , trade_(&trade)
      , today_(today)
      , plan_(planTasks(orchard, trade, plannedSeasons(orchard, today), today))
      , views_(viewsOf(orchard, plan_, today))
      , outlooks_(outlooksOf(orchard, trade, today)) {}

  /// `evaluations`: as usual for an orchard of this size, where none are given.
  CrewPlan planned(const Supposition& supposed = {},
                   std::optional<int> evaluations = {}) const {
    CrewQuestion question = crewQuestion(
        *orchard_, *trade_, views_, outlooks_, today_, crewPlanDays(today_), supposed);
    SearchLimits limits = searchLimits(question.problem);
    limits.evaluations = evaluations.value_or(limits.evaluations);
    return planCrews(std::move(question), limits);
  }

  const Task* task(const TaskKey& key) const { return plan_.find(key); }

private:
  const Orchard* orchard_;
  const Trade* trade_;
  Day today_;
  Plan plan_;
  std::vector<TaskView> views_;
  Outlooks outlooks_;
};

}  // namespace topwire
