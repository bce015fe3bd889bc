#include "core/closing/season_review.h"

#include "core/planning/explain.h"

#include <algorithm>
#include <tuple>

namespace topwire {

namespace {

TaskOutcome outcomeOf(const TaskView& view) {
  switch (view.state) {
    case TaskState::done:
      return TaskOutcome::done;
    case TaskState::setAside:
      return TaskOutcome::setAside;
    case TaskState::late:
    case TaskState::lapsed:
      return view.progress.percentByRow.empty() ? TaskOutcome::missed
                                                : TaskOutcome::partDone;
    default:
      return TaskOutcome::ahead;
  }
}

/// Work nobody asks for any more, with nothing done of it, was never missed.
bool isTold(const TaskView& view) {
  return !view.task->noLongerAsked || !view.progress.percentByRow.empty();
}

ReviewedTask reviewed(const Orchard& orchard, const Trade& trade, const TaskView& view) {
  const Task& task = *view.task;
  ReviewedTask made;
  made.task = task.key;
  made.title = titleOf(task, operationOf(orchard, trade.programmes, task.key));
  made.outcome = outcomeOf(view);
  made.state = view.state;
  made.rows = task.rows;
  made.rowsLeft = view.rowsLeft();
  made.closes = task.closes;
  const auto mark = orchard.marks.find(task.key);
  if (mark != orchard.marks.end()) made.reason = mark->second.setAsideReason;
  made.hoursPlanned = static_cast<double>(task.trees) * task.secondsPerTree / 3600;
  made.hoursDone = std::max(0.0, made.hoursPlanned - view.hoursLeft);
  made.hoursNoted = view.progress.minutes / 60.0;
  return made;
}

const Measurement* lastOf(const Orchard& orchard,
                          PlantingId planting,
                          std::initializer_list<Measure> measures,
                          DaySpan within) {
  const Measurement* last = nullptr;
  for (const auto& [id, measurement] : orchard.measurements) {
    const bool meant = std::ranges::find(measures, measurement.measure) != measures.end();
    if (!meant || measurement.planting != planting || measurement.values.empty())
      continue;
    if (!within.contains(measurement.day)) continue;
    if (last == nullptr || last->day <= measurement.day) last = &measurement;
  }
  return last;
}

/// The leader is measured until it is at the top wire, by the fourth leaf at the latest.
constexpr int lastLeafOfLeader = 4;

class Reviewer {
public:
  Reviewer(const Orchard& orchard, const Trade& trade, Season season, Day today)
      : orchard_(&orchard)
      , trade_(&trade)
      , season_(season)
      , measuredDays_(measuredDaysOf(season, orchard.settings.hemisphere())) {
    measuredDays_.last = std::min(measuredDays_.last, today);
  }

  PlantingReview review(const Planting& planting,
                        const std::vector<TaskView>& views) const {
    PlantingReview made;
    made.planting = planting.id;
    made.leaf = leafOf(*orchard_, planting, season_);
    for (const TaskView& view : views)
      if (view.task->key.planting == planting.id && view.task->key.season == season_
          && isTold(view))
        made.tasks.push_back(reviewed(*orchard_, *trade_, view));
    std::ranges::stable_sort(made.tasks, {}, [](const ReviewedTask& task) {
      return std::tuple{task.outcome, task.closes};
    });
    if (made.leaf >= 1) addMeasures(made);
    return made;
  }

private:
  void addMeasures(PlantingReview& made) const {
    want(made, Measure::trunkDiameter, {Measure::trunkDiameter, Measure::trunkGirth});
    if (made.leaf <= lastLeafOfLeader)
      want(made, Measure::leaderHeight, {Measure::leaderHeight});
    want(made, Measure::shootGrowth, {Measure::shootGrowth});
    const Measurement* missing =
        want(made, Measure::missingTrees, {Measure::missingTrees});
    if (missing != nullptr)
      made.missingTrees = static_cast<int>(
          std::clamp<std::int64_t>(missing->values.front(), 0, 1'000'000));
  }

  const Measurement* want(PlantingReview& made,
                          Measure measure,
                          std::initializer_list<Measure> anyOf) const {
    const Measurement* found = lastOf(*orchard_, made.planting, anyOf, measuredDays_);
    made.measures.push_back(
        {measure, found != nullptr ? std::optional{found->day} : std::nullopt});
    return found;
  }

  const Orchard* orchard_;
  const Trade* trade_;
  Season season_;
  DaySpan measuredDays_;
};

double summed(const std::vector<ReviewedTask>& tasks, double ReviewedTask::*hours) {
  double sum = 0;
  for (const ReviewedTask& task : tasks)
    if (task.outcome != TaskOutcome::setAside) sum += task.*hours;
  return sum;
}

}  // namespace

int PlantingReview::count(TaskOutcome outcome) const {
  return static_cast<int>(std::ranges::count(tasks, outcome, &ReviewedTask::outcome));
}

double PlantingReview::hoursPlanned() const {
  return summed(tasks, &ReviewedTask::hoursPlanned);
}

double PlantingReview::hoursDone() const {
  return summed(tasks, &ReviewedTask::hoursDone);
}

double PlantingReview::hoursNoted() const {
  return summed(tasks, &ReviewedTask::hoursNoted);
}

int SeasonReview::count(TaskOutcome outcome) const {
  int counted = 0;
  for (const PlantingReview& planting : plantings) counted += planting.count(outcome);
  return counted;
}

SeasonReview reviewOf(const Orchard& orchard,
                      const Plan& plan,
                      const Trade& trade,
                      Season season,
                      Day today) {
  const Reviewer reviewer{orchard, trade, season, today};
  const auto views = viewsOf(orchard, plan, today);
  SeasonReview review{season, {}};
  for (const Block* block : blocksInOrder(orchard))
    for (const Planting* planting : plantingsOf(orchard, block->id)) {
      PlantingReview made = reviewer.review(*planting, views);
      if (made.leaf >= 1 || !made.tasks.empty())
        review.plantings.push_back(std::move(made));
    }
  return review;
}

std::vector<ReviewedWork> byWork(const PlantingReview& review) {
  std::vector<ReviewedWork> works;
  for (const ReviewedTask& task : review.tasks) {
    const auto same = std::ranges::find_if(works, [&task](const ReviewedWork& work) {
      return work.last.outcome == task.outcome && work.last.title == task.title
             && work.last.reason == task.reason;
    });
    if (same == works.end()) {
      works.push_back({task, 1});
      continue;
    }
    const RowSet left = same->last.rowsLeft.with(task.rowsLeft);
    same->last = task;
    same->last.rowsLeft = left;
    ++same->visits;
  }
  return works;
}

DaySpan measuredDaysOf(Season season, Hemisphere hemisphere) {
  const auto spring = [hemisphere](Season of) {
    return localSeasonDay(of, hemisphere, 4, 15);
  };
  return {spring(season), plusDays(spring(season.plus(1)), -1)};
}

}  // namespace topwire
