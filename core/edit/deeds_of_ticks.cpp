#include "core/edit/deed_checks.h"
#include "core/edit/deeds.h"
#include "core/planning/progress.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr int mostMinutes = 24 * 60 * 200;
constexpr int daysAroundWindow = 366;

std::string blockName(const Orchard& orchard, PlantingId id) {
  const Planting* planting = lookUp(orchard.plantings, id);
  const Block* block = planting ? lookUp(orchard.blocks, planting->block) : nullptr;
  return block ? block->name : std::string{};
}

Sentence nameOfTick(const Orchard& orchard, const Tick& tick, const Words& title) {
  const int rows = tick.rows.count();
  std::vector<Value> values{
      std::int64_t{rows}, blockName(orchard, tick.task.planting), title};
  if (tick.percent == 100)
    return {counted(rows,
                    phrase("Deed", "%1 row ticked in %2: %3"),
                    phrase("Deed", "%1 rows ticked in %2: %3")),
            std::move(values)};
  values.emplace_back(std::int64_t{tick.percent});
  return {counted(rows,
                  phrase("Deed", "%1 row ticked to %4 % in %2: %3"),
                  phrase("Deed", "%1 rows ticked to %4 % in %2: %3")),
          std::move(values)};
}

void checkTickRows(Faults& faults, const Task& task, const Tick& tick) {
  if (tick.rows.empty())
    return faults.add("rows",
                      phrase("Deed", "No rows are named; type them like 1-4, 7."));
  checkRowsWithin(faults,
                  tick.rows,
                  task.rows,
                  phrase("Deed", "Row %1 is not in this task. It has rows %2."),
                  phrase("Deed", "Rows %1 are not in this task. It has rows %2."));
}

void checkTickDay(Faults& faults, const Task& task, Day day) {
  if (day < plusDays(task.opens, -daysAroundWindow)
      || day > plusDays(task.closes, daysAroundWindow))
    faults.add("day",
               phrase("Deed",
                      "%1 lies more than a year from this task's window, %2 to %3; check "
                      "the day."),
               {day, task.opens, task.closes});
}

void checkFigures(Faults& faults, const Tick& tick) {
  if (tick.percent < 1 || tick.percent > 100)
    faults.add("percent",
               phrase("Deed", "How much is done lies between 1 and 100 percent."));
  if (tick.minutes < 0 || tick.minutes > mostMinutes)
    faults.add("minutes",
               phrase("Deed",
                      "Worker-minutes lie between 0 and %1, a day's work of 200 people "
                      "round the clock; check them."),
               {std::int64_t{mostMinutes}});
}

void checkWho(Faults& faults, const std::string& by) {
  if (by.empty())
    faults.add("by", phrase("Deed", "Say who did the work, a crew or a person."));
  else
    checkText(faults, "by", by);
}

Tick takingBack(const Tick& tick, TickId newId, Day day) {
  Tick back = tick;
  back.id = newId;
  back.minutes = 0;
  back.day = day;
  back.takesBack = tick.id;
  return back;
}

/// What the tick said of the rows that stay, with their share of its minutes.
Tick rest(const Tick& tick, const RowSet& rows, TickId newId) {
  Tick kept = tick;
  kept.id = newId;
  kept.rows = rows;
  kept.minutes = tick.minutes * rows.count() / tick.rows.count();
  return kept;
}

/// By a further tick that is not taken back itself.
bool isTakenBack(const Orchard& orchard, TickId tick) {
  return std::ranges::any_of(orchard.ticks, [&](const auto& item) {
    return item.second.takesBack == tick && !isTakenBack(orchard, item.first);
  });
}

/// Ticks of the task that stand and say anything of these rows.
std::vector<const Tick*> touching(const Orchard& orchard,
                                  const TaskKey& task,
                                  const RowSet& rows) {
  std::vector<const Tick*> ticks = standingTicks(orchard);
  std::erase_if(ticks, [&](const Tick* tick) {
    return tick->takesBack || tick->task != task || tick->rows.inCommonWith(rows).empty();
  });
  return ticks;
}

}  // namespace

Checked<Change> tickRows(const Orchard& orchard,
                         const Task& task,
                         const Words& title,
                         const Tick& tick) {
  if (!orchard.plantings.contains(task.key.planting))
    return refusal({}, phrase("Deed", "That planting is no longer in the orchard."));
  Tick tidy = tick;
  tidy.task = task.key;
  tidy.by = withoutBlanks(tick.by);
  tidy.takesBack.reset();
  Faults faults;
  checkTickRows(faults, task, tidy);
  checkFigures(faults, tidy);
  checkWho(faults, tidy.by);
  checkTickDay(faults, task, tidy.day);
  return std::move(faults).orElse(
      {nameOfTick(orchard, tidy, title), {Edit<Tick>{std::nullopt, tidy}}});
}

Checked<Change> takeBackTick(const Orchard& orchard, TickId tick, TickId newId, Day day) {
  const Tick* before = lookUp(orchard.ticks, tick);
  if (!before) return refusal({}, phrase("Deed", "There is no such tick on record."));
  if (isTakenBack(orchard, tick))
    return refusal({}, phrase("Deed", "That tick is taken back already."));
  return Change{
      Sentence{phrase("Deed", "Tick of rows %1 in %2 taken back"),
               {rowsText(before->rows), blockName(orchard, before->task.planting)}},
      {Edit<Tick>{std::nullopt, takingBack(*before, newId, day)}}};
}

Checked<Change> untickRows(const Orchard& orchard,
                           const Task& task,
                           const Words& title,
                           const RowSet& rows,
                           IdSource& ids,
                           Day day) {
  const auto ticks = touching(orchard, task.key, rows);
  if (ticks.empty())
    return refusal(
        "rows",
        phrase("Deed", "Nothing is ticked in rows %1, so there is nothing to take back."),
        {rowsText(rows)});
  RowSet unticked;
  Change change;
  for (const Tick* tick : ticks) {
    unticked = unticked.with(tick->rows.inCommonWith(rows));
    change.edits.emplace_back(
        Edit<Tick>{std::nullopt, takingBack(*tick, ids.next<TickId>(), day)});
    const RowSet kept = tick->rows.without(rows);
    if (!kept.empty())
      change.edits.emplace_back(
          Edit<Tick>{std::nullopt, rest(*tick, kept, ids.next<TickId>())});
  }
  change.name = Sentence{
      counted(unticked.count(),
              phrase("Deed", "%1 row unticked in %2: %3"),
              phrase("Deed", "%1 rows unticked in %2: %3")),
      {std::int64_t{unticked.count()}, blockName(orchard, task.key.planting), title}};
  return change;
}

}  // namespace topwire
