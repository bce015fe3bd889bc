#pragma once

#include "core/crews/crew_question.h"
#include "core/planning/day_cautions.h"

namespace topwire {

/// A job for each task that is open or opens in the plan's days and has rows left; what
/// cannot be asked of the crews is noted. `question` has its days, blocks, crews, skills.
void addJobs(CrewQuestion& question,
             const Orchard& orchard,
             const Trade& trade,
             const std::vector<TaskView>& views,
             const Outlooks& outlooks,
             const Supposition& supposed);

/// Days, from day 0 on, on which the weather known for them is a reason to let the
/// operation wait; empty where there is none. A frosty morning ends, so it does not
/// count.
std::vector<bool> daysToWait(const CrewQuestion& question,
                             const Operation& operation,
                             const std::vector<std::vector<DayCaution>>& cautions);

}  // namespace topwire
