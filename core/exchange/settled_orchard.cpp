#include "core/exchange/settled_orchard.h"

#include "core/edit/crew_deeds.h"
#include "core/edit/deeds.h"
#include "core/exchange/nearest.h"
#include "core/planning/explain.h"
#include "core/planning/reconcile.h"

#include <algorithm>

namespace topwire {

namespace {

using WantedTick = DescribedOrchard::WantedTick;

/// The seasons kept planned, and before them those the ticks lie in.
SeasonSpan seasonsFor(const DescribedOrchard& described, Day today) {
  const Orchard& orchard = described.orchard;
  SeasonSpan span = plannedSeasons(orchard, today);
  for (const WantedTick& tick : described.ticks)
    span.first = std::min(span.first, seasonOf(tick.day, orchard.settings.hemisphere()));
  return span;
}

Checked<Change> changeFor(const Orchard& orchard,
                          const Trade& trade,
                          const Plan& plan,
                          const WantedTick& wanted,
                          IdSource& ids) {
  const auto task = taskNamed(orchard, plan, wanted.task);
  if (!task) return tl::unexpected{Problems{task.error()}};
  Tick tick;
  tick.id = ids.next<TickId>();
  tick.task = task->key;
  tick.rows = wanted.rows.empty() ? task->rows : parseRows(wanted.rows).rows;
  tick.percent = wanted.percent;
  tick.minutes = wanted.minutes;
  tick.by = wanted.by;
  tick.day = wanted.day;
  const Operation* operation = operationOf(orchard, trade.programmes, task->key);
  return tickRows(orchard, *task, titleOf(*task, operation), tick);
}

Checked<Change> changeFor(const Orchard& orchard,
                          const Trade& trade,
                          const Plan& plan,
                          const WantedPin& wanted,
                          IdSource& ids) {
  const auto task = taskNamed(orchard, plan, wanted.task);
  if (!task) return tl::unexpected{Problems{task.error()}};
  Pin pin = wanted.pin;
  pin.id = ids.next<PinId>();
  pin.task = task->key;
  const Operation* operation = operationOf(orchard, trade.programmes, task->key);
  return addPin(orchard, pin, operation ? operation->skill : std::string{});
}

Problem placed(Problem problem, const std::string& file, int line) {
  problem.place = file + ':' + std::to_string(line);
  return problem;
}

}  // namespace

Result<Task> taskNamed(const Orchard& orchard, const Plan& plan, std::string_view text) {
  const auto key = parseTask(orchard, text);
  const Task* task = key ? plan.find(*key) : nullptr;
  if (task != nullptr) return *task;
  std::vector<std::string> names;
  names.reserve(plan.tasks.size());
  for (const Task& one : plan.tasks) names.push_back(taskText(orchard, one.key));
  const std::string nearest = nearestName(text, names);
  return refuse(
      {nearest.empty() ? phrase("Task",
                                "There is no task \"%1\"; a task is written as planting, "
                                "operation, season and pass, with colons between.")
                       : phrase("Task", R"(There is no task "%1"; the nearest is "%2".)"),
       {std::string{text}, nearest}},
      "task");
}

Checked<Orchard> settledOrchard(const DescribedOrchard& described,
                                const std::string& file,
                                const Trade& trade,
                                Day today,
                                IdSource& ids) {
  Orchard orchard = described.orchard;
  const SeasonSpan span = seasonsFor(described, today);
  const Plan plan = planTasks(orchard, trade, span, today);
  Problems problems;
  const auto perform = [&](const auto& wanted) {
    const auto change = changeFor(orchard, trade, plan, wanted, ids);
    if (change) return apply(orchard, *change);
    for (const Problem& problem : change.error())
      problems.push_back(placed(problem, file, wanted.line));
  };
  std::ranges::for_each(described.ticks, perform);
  std::ranges::for_each(described.pins, perform);
  if (!problems.empty()) return tl::unexpected{problems};
  // The ticks have moved what waits for their tasks.
  const Plan settled = planTasks(orchard, trade, span, today);
  orchard.tasks = reconcile(orchard, settled, span).tasks;
  return orchard;
}

}  // namespace topwire
