#include "core/planning/planner.h"

#include "core/planning/dating.h"
#include "core/planning/needs.h"

#include <algorithm>
#include <tuple>

namespace topwire {

namespace {

bool hasWord(const Orchard& orchard, const ProgressByTask& progress, const TaskKey& key) {
  return progress.contains(key) || orchard.marks.contains(key);
}

/// A task known only by its key and dates: work added by hand, or stored work the rules
/// no longer ask for.
Task bareTask(const Orchard& orchard, const Trade& trade, const TaskKey& key) {
  const Planting& planting = orchard.plantings.at(key.planting);
  Task task;
  task.key = key;
  task.leaf = leafOf(orchard, planting, key.season);
  task.vigour = vigourIn(key.season, orchard, trade.tables, planting).vigour;
  task.rows = planting.rows;
  task.trees = treesIn(orchard, planting);
  return task;
}

class Planner {
public:
  Planner(const Orchard& orchard,
          const Trade& trade,
          StageForecast& forecast,
          SeasonSpan seasons)
      : orchard_(&orchard)
      , trade_(&trade)
      , forecast_(&forecast)
      , seasons_(seasons)
      , progress_(progressOf(orchard))
      , rates_(orchard, trade.programmes) {}

  Plan make() && {
    for (const auto& [id, planting] : orchard_->plantings) planPlanting(planting);
    for (Task& task : plan_.tasks) obeyMark(*orchard_, task);
    dropBeforeRecords();
    addWorkByHand();
    keepTouchedTasks();
    std::ranges::sort(plan_.tasks, [](const Task& a, const Task& b) {
      return std::tie(a.opens, a.key) < std::tie(b.opens, b.key);
    });
    return std::move(plan_);
  }

private:
  bool inSeasons(const TaskKey& key) const {
    return seasons_.first <= key.season && key.season <= seasons_.last;
  }

  void planPlanting(const Planting& planting) {
    const auto programme = trade_->programmes.find(planting.programme);
    if (programme == trade_->programmes.end()) {
      plan_.notes.emplace_back(
          phrase("Plan",
                 "%1 asks for the programme %2, which is not here. Choose another one "
                 "for it."),
          std::vector<Value>{planting.code, planting.programme});
      return;
    }
    PlantingDates dates{
        *orchard_, *trade_, *forecast_, planting, programme->second, progress_, rates_};
    for (Season season = seasons_.first; season <= seasons_.last; season = season.plus(1))
      for (const Operation& operation : programme->second.operations)
        append(plan_.tasks, dates.tasksOf(operation, season));
    append(plan_.notes, dates.takeNotes());
  }

  template <class T>
  static void append(std::vector<T>& to, const std::vector<T>& more) {
    to.insert(to.end(), more.begin(), more.end());
  }

  void dropBeforeRecords() {
    std::erase_if(plan_.tasks, [this](const Task& task) {
      return task.cutOff.value_or(task.closes) < orchard_->settings.recordsFrom
             && !hasWord(*orchard_, progress_, task.key);
    });
  }

  void addWorkByHand() {
    for (const auto& [key, mark] : orchard_->marks) {
      if (mark.handTitle.empty() || !mark.moved || !inSeasons(key)) continue;
      Task task = bareTask(*orchard_, *trade_, key);
      task.handTitle = mark.handTitle;
      task.secondsPerTree = mark.handSecondsPerTree;
      moveByHand(task, *mark.moved);
      plan_.tasks.push_back(std::move(task));
    }
  }

  void keepTouchedTasks() {
    std::set<TaskKey> planned;
    for (const Task& task : plan_.tasks) planned.insert(task.key);
    for (const auto& [key, stored] : orchard_->tasks) {
      if (!inSeasons(key) || planned.contains(key)) continue;
      if (!orchard_->plantings.contains(key.planting)) continue;
      if (!hasWord(*orchard_, progress_, key)) continue;
      plan_.tasks.push_back(kept(stored));
    }
  }

  Task kept(const StoredTask& stored) const {
    Task task = bareTask(*orchard_, *trade_, stored.key);
    task.noLongerAsked = true;
    task.opens = stored.opens;
    task.closes = stored.closes;
    task.cutOff = stored.cutOff;
    task.opensWhy.day = stored.opens;
    task.closesWhy.day = stored.closes;
    const Operation* operation = operationOf(*orchard_, trade_->programmes, stored.key);
    if (operation) {
      const Planting& planting = orchard_->plantings.at(stored.key.planting);
      task.labour = rates_.of(planting.programme, *operation, task.leaf);
      task.secondsPerTree = task.labour.seconds();
    }
    return task;
  }

  const Orchard* orchard_;
  const Trade* trade_;
  StageForecast* forecast_;
  SeasonSpan seasons_;
  ProgressByTask progress_;
  LearnedRates rates_;
  Plan plan_;
};

}  // namespace

SeasonSpan plannedSeasons(const Orchard& orchard, Day today) {
  const Season current = seasonOf(today, orchard.settings.hemisphere());
  return {current.plus(-1), current.plus(1)};
}

SeasonSpan seasonsTouching(const Orchard& orchard, DaySpan days) {
  const Hemisphere hemisphere = orchard.settings.hemisphere();
  return {seasonOf(days.first, hemisphere).plus(-1),
          seasonOf(days.last, hemisphere).plus(1)};
}

Plan planTasks(const Orchard& orchard,
               const Trade& trade,
               SeasonSpan seasons,
               Day today) {
  return planTasks(orchard, trade, *trade.forecaster.over(orchard, today), seasons);
}

Plan planTasks(const Orchard& orchard,
               const Trade& trade,
               StageForecast& forecast,
               SeasonSpan seasons) {
  return Planner{orchard, trade, forecast, seasons}.make();
}

const Operation* operationOf(const Orchard& orchard,
                             const Programmes& programmes,
                             const TaskKey& key) {
  const auto planting = orchard.plantings.find(key.planting);
  if (planting == orchard.plantings.end()) return nullptr;
  const auto programme = programmes.find(planting->second.programme);
  return programme == programmes.end() ? nullptr : programme->second.find(key.operation);
}

}  // namespace topwire
