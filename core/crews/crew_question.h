#pragma once

#include "core/crews/crew_problem.h"
#include "core/planning/outlooks.h"
#include "core/planning/planner.h"
#include "core/planning/progress.h"

#include <optional>
#include <vector>

namespace topwire {

/// The crew plan's question for one orchard from one day on, with what its numbers stand
/// for.
struct CrewQuestion {
  Day first{};          ///< day 0
  int startMinute = 0;  ///< of the working day, from midnight
  CrewProblem problem;
  std::vector<TaskKey> tasks;       ///< by job
  std::vector<Day> cutOffs;         ///< by job: the last day it is of use
  std::vector<BlockId> blocks;      ///< by block
  std::vector<CrewId> crews;        ///< by crew
  std::vector<std::string> skills;  ///< by skill; "" is work for anyone
  /// Due, but not counted in hours: an order, machine work on the bare site.
  std::vector<TaskKey> uncounted;
  std::vector<Sentence> notes;  ///< what could not be asked, and why

  Day dayOf(int index) const { return plusDays(first, index); }

  int indexOf(Day day) const { return daysBetween(first, day); }

  std::optional<int> jobOf(const TaskKey& task) const;
};

/// What is supposed instead of what is known.
struct Supposition {
  int workersMore = 0;        ///< all-round people, in one more gang, every working day
  std::vector<DaySpan> lost;  ///< days on which nobody works
  int springLaterBy = 0;      ///< days by which every window that hangs on a stage moves

  friend bool operator==(const Supposition&, const Supposition&) = default;
};

/// Asks of everything that is open, or opens, in `days` days from `today` on. `views` are
/// those of `today`.
CrewQuestion crewQuestion(const Orchard& orchard,
                          const Trade& trade,
                          const std::vector<TaskView>& views,
                          const Outlooks& outlooks,
                          Day today,
                          int days,
                          const Supposition& supposed = {});

}  // namespace topwire
