#pragma once

#include "core/crews/crew_plan.h"
#include "core/planning/outlooks.h"
#include "tests/support/builders.h"
#include "tests/support/operations.h"

#include <string>
#include <vector>

namespace topwire::testing {

/// An orchard of blocks of ten rows with a hundred trees each, in which a row of any work
/// is one worker-hour, and what its crews are asked. Monday 5 April 2027.
struct CrewOrchard {
  Orchard orchard;
  TradeTables tables = shippedTables();
  Programmes programmes;
  FixedForecaster forecaster;
  Day today = dayOf(2027, 4, 5);
  int days = 28;

  explicit CrewOrchard(std::vector<Operation> operations)
      : programmes(programmesOf(std::move(operations))) {
    orchard.settings = northernSettings();
  }

  Block& addBlock(std::uint64_t id,
                  const std::string& name,
                  Day planted = dayOf(2024, 4, 10)) {
    Block& made = orchard.blocks[{0, id}] = block(id, name, "1-10");
    Planting trees = planting(id + 100, made, planted);
    trees.code = "p" + std::to_string(id);
    orchard.plantings[trees.id] = trees;
    return made;
  }

  Crew& addCrew(std::uint64_t id, const std::string& name, int workers) {
    Crew& crew = orchard.crews[{0, id}];
    crew.id = {0, id};
    crew.name = name;
    crew.workers = workers;
    return crew;
  }

  static TaskKey key(std::uint64_t block, const std::string& operation) {
    return {{0, block + 100}, operation, Season{2027}, 1};
  }

  Tick& tick(const TaskKey& task,
             const RowSet& rows,
             int percent = 100,
             int minutes = 0) {
    Tick tick;
    tick.id = {1, orchard.ticks.size() + 1};
    tick.task = task;
    tick.rows = rows;
    tick.percent = percent;
    tick.minutes = minutes;
    tick.day = today;
    return orchard.ticks[tick.id] = tick;
  }

  Trade trade() const { return {tables, programmes, forecaster}; }

  Plan plan() const {
    return planTasks(orchard, trade(), plannedSeasons(orchard, today), today);
  }

  CrewQuestion question(const Supposition& supposed = {}) const {
    const Plan tasks = plan();
    return crewQuestion(orchard,
                        trade(),
                        viewsOf(orchard, tasks, today),
                        outlooksOf(orchard, trade(), today),
                        today,
                        days,
                        supposed);
  }

  CrewPlan planned(int evaluations = 50) const {
    return planCrews(question(), {evaluations, 1});
  }

  Task task(const TaskKey& key) const {
    const Plan tasks = plan();
    const Task* found = tasks.find(key);
    return found == nullptr ? Task{} : *found;
  }
};

inline const CrewJob& jobOf(const CrewQuestion& question, const TaskKey& key) {
  return question.problem.jobs.at(static_cast<std::size_t>(question.jobOf(key).value()));
}

}  // namespace topwire::testing
