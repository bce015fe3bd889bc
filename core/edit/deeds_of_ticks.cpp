#include "core/base/contract.h"
#include "core/edit/crew_deeds.h"
#include "core/edit/deed_checks.h"
#include "core/edit/deeds.h"
#include "core/planning/progress.h"

#include <algorithm>
#include <iterator>
#include <map>

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

/// Takes back what was ticked of these rows on that day; answers the percent ticked then,
/// by row, the most of each.
std::map<int, int> takeDayBack(Change& change,
                               const Orchard& orchard,
                               const NotedHours& noted,
                               Day day,
                               IdSource& ids) {
  std::map<int, int> percentByRow;
  for (const Tick* tick : touching(orchard, noted.task.key, noted.rows)) {
    if (tick->day != day) continue;
    change.edits.emplace_back(
        Edit<Tick>{std::nullopt, takingBack(*tick, ids.next<TickId>(), day)});
    const RowSet kept = tick->rows.without(noted.rows);
    if (!kept.empty())
      change.edits.emplace_back(
          Edit<Tick>{std::nullopt, rest(*tick, kept, ids.next<TickId>())});
    for (const int row : tick->rows.inCommonWith(noted.rows).rows())
      percentByRow[row] = std::max(percentByRow[row], tick->percent);
  }
  return percentByRow;
}

/// The noted rows with their minutes: one tick for each percent that rows are done to,
/// the minutes shared out by rows.
std::vector<Tick> ticksFor(const NotedHours& noted,
                           const std::map<int, int>& percentByRow,
                           Day day,
                           IdSource& ids) {
  std::map<int, RowSet> rowsByPercent;
  for (const int row : noted.rows.rows()) {
    const auto ticked = percentByRow.find(row);
    RowSet& rows =
        rowsByPercent[ticked == percentByRow.end() ? noted.percent : ticked->second];
    rows = rows.with(RowSet::range(row, row));
  }
  std::vector<Tick> ticks;
  int rowsLeft = noted.rows.count();
  std::int64_t minutesLeft = noted.minutes;
  for (const auto& [percent, rows] : rowsByPercent) {
    Tick tick{ids.next<TickId>(), noted.task.key, rows, percent, 0, noted.by, day, {}};
    tick.minutes = static_cast<int>(minutesLeft * rows.count() / rowsLeft);
    minutesLeft -= tick.minutes;
    rowsLeft -= rows.count();
    ticks.push_back(tick);
  }
  return ticks;
}

/// Of the same task in an entry before it.
RowSet notedBefore(const std::vector<NotedHours>& noted, std::size_t at) {
  RowSet rows;
  for (std::size_t i = 0; i < at; ++i)
    if (noted[i].task.key == noted[at].task.key) rows = rows.with(noted[i].rows);
  return rows.inCommonWith(noted[at].rows);
}

Faults checkNoted(const Orchard& orchard, const std::vector<NotedHours>& noted, Day day) {
  Faults faults;
  if (noted.empty())
    faults.add({}, phrase("Deed", "No work is named to note hours for."));
  for (std::size_t i = 0; i < noted.size(); ++i) {
    const NotedHours& entry = noted[i];
    const std::string place = std::to_string(i + 1) + '.';
    const Tick whole{
        {}, entry.task.key, entry.rows, entry.percent, entry.minutes, entry.by, day, {}};
    const auto checked = tickRows(orchard, entry.task, entry.title, whole);
    for (Problem problem : checked ? Problems{} : checked.error()) {
      problem.place = place + problem.place;
      faults.add(std::move(problem));
    }
    const RowSet twice = notedBefore(noted, i);
    if (!twice.empty())
      faults.add(place + "rows",
                 phrase("Deed", "Rows %1 of this work are noted twice; note them once."),
                 {rowsText(twice)});
  }
  return faults;
}

/// What noting one entry changes.
Change changeFor(const Orchard& orchard,
                 const NotedHours& noted,
                 Day day,
                 IdSource& ids) {
  Change change;
  const auto percentByRow = takeDayBack(change, orchard, noted, day, ids);
  for (const Tick& tick : ticksFor(noted, percentByRow, day, ids)) {
    const auto ticked = tickRows(orchard, noted.task, noted.title, tick);
    TOPWIRE_REQUIRE(ticked.has_value());
    std::ranges::copy(ticked->edits, std::back_inserter(change.edits));
  }
  return change;
}

}  // namespace

Checked<Change> noteHours(const Orchard& orchard,
                          const std::vector<NotedHours>& noted,
                          Day day,
                          IdSource& ids) {
  Faults faults = checkNoted(orchard, noted, day);
  if (faults.any()) return std::move(faults).asRefusal();
  const auto count = static_cast<std::int64_t>(noted.size());
  Change change{Sentence{counted(count,
                                 phrase("Deed", "Hours of %1 noted: %2 job"),
                                 phrase("Deed", "Hours of %1 noted: %2 jobs")),
                         {day, count}},
                {}};
  // Two entries may share a tick, which only the first of them takes back.
  Orchard ahead = orchard;
  for (const NotedHours& entry : noted) {
    const Change one = changeFor(ahead, entry, day, ids);
    apply(ahead, one);
    std::ranges::copy(one.edits, std::back_inserter(change.edits));
  }
  return change;
}

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
