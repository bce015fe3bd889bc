#pragma once

#include "core/planning/planner.h"
#include "core/planning/progress.h"

#include <optional>
#include <string>
#include <vector>

namespace topwire {

/// What became of a task by the day its season is looked back on. `ahead` can still be
/// done; `partDone` is over or late with rows left, `missed` without any done.
enum class TaskOutcome { done, partDone, missed, setAside, ahead };

struct ReviewedTask {
  TaskKey task;
  Words title;
  TaskOutcome outcome = TaskOutcome::done;
  TaskState state = TaskState::done;
  RowSet rows;      ///< of the task
  RowSet rowsLeft;  ///< not wholly done
  Day closes{};
  std::string reason;       ///< why it was set aside
  double hoursPlanned = 0;  ///< worker-hours for all its rows, by the programme
  double hoursDone = 0;     ///< of those, for what was done
  double hoursNoted = 0;    ///< worker-hours noted with its ticks

  friend bool operator==(const ReviewedTask&, const ReviewedTask&) = default;
};

/// A measure that tells what the leaf made of the trees.
struct WantedMeasure {
  Measure measure = Measure::trunkDiameter;
  std::optional<Day> measured;  ///< for this season; absent while it is still wanted

  friend bool operator==(const WantedMeasure&, const WantedMeasure&) = default;
};

/// One planting's season. Plantings that were not in the ground yet are looked back on,
/// too, where work was planned for them; they have nothing to measure.
struct PlantingReview {
  PlantingId planting;
  int leaf = 0;
  std::vector<ReviewedTask> tasks;  ///< by outcome, then closing
  std::vector<WantedMeasure> measures;
  std::optional<int> missingTrees;  ///< as last counted for this season

  int count(TaskOutcome outcome) const;
  /// Work set aside is left out of all three.
  double hoursPlanned() const;
  double hoursDone() const;
  double hoursNoted() const;

  friend bool operator==(const PlantingReview&, const PlantingReview&) = default;
};

/// Visits of one operation that came to the same, as one line.
struct ReviewedWork {
  ReviewedTask last;  ///< its rows left are those of any of the visits
  int visits = 1;

  friend bool operator==(const ReviewedWork&, const ReviewedWork&) = default;
};

/// In the order of the first visits.
std::vector<ReviewedWork> byWork(const PlantingReview& review);

struct SeasonReview {
  Season season{};
  std::vector<PlantingReview> plantings;  ///< in the order of their blocks

  int count(TaskOutcome outcome) const;

  friend bool operator==(const SeasonReview&, const SeasonReview&) = default;
};

/// `plan` must hold the season.
SeasonReview reviewOf(const Orchard& orchard,
                      const Plan& plan,
                      const Trade& trade,
                      Season season,
                      Day today);

/// The days whose measurements speak of a season's growth: from its spring to the end of
/// the dormancy after it, 15 April to 14 April (15 October to 14 October in the south),
/// as for grownSeason: trunks measured in winter count for the summer before.
DaySpan measuredDaysOf(Season season, Hemisphere hemisphere);

}  // namespace topwire
