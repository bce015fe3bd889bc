#include "app/console/on_file.h"
#include "core/edit/deeds.h"
#include "core/labour/hours_figure.h"
#include "core/planning/explain.h"

#include <CLI/CLI.hpp>

#include <algorithm>

namespace topwire {

namespace {

void declareTasks(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeToday(command, arguments);
  takeDaySpan(command, arguments);
  takeBlock(command, arguments);
  takeState(command, arguments);
  takeFormat(command, arguments);
}

void declareWhy(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeTask(command, arguments);
  takeToday(command, arguments);
}

void declareTick(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeTask(command, arguments);
  takeRows(command, arguments);
  takeWork(command, arguments);
  takeBy(command, arguments, true);
  takeDay(command, arguments);
  takeToday(command, arguments);
}

void declareUntick(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeTask(command, arguments);
  takeRows(command, arguments);
  takeBy(command, arguments, false);
  takeToday(command, arguments);
}

void declareSetAside(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeTask(command, arguments);
  takeReason(command, arguments, true);
  takeBy(command, arguments, false);
  takeToday(command, arguments);
}

/// The days asked for decide which seasons are planned; today's and the next otherwise.
SeasonSpan seasonsAskedFor(const Orchard& orchard, const Arguments& arguments) {
  if (arguments.from && arguments.to)
    return seasonsTouching(orchard, {*arguments.from, *arguments.to});
  return plannedSeasons(orchard, arguments.today);
}

bool isAskedFor(const Orchard& orchard,
                const Arguments& arguments,
                const TaskView& view) {
  const Task& task = *view.task;
  if (arguments.state && *arguments.state != view.state) return false;
  const Planting& planting = orchard.plantings.at(task.key.planting);
  if (!arguments.block.empty() && blockOf(orchard, planting).name != arguments.block)
    return false;
  return !arguments.from
         || DaySpan{task.opens, task.closes}.overlaps({*arguments.from, *arguments.to});
}

/// Every column, for scripts; their names and order are relied on.
std::vector<Cell> fullRow(const Orchard& orchard,
                          const Words& title,
                          Language language,
                          const TaskView& view) {
  const Task& task = *view.task;
  const Planting& planting = orchard.plantings.at(task.key.planting);
  return {taskText(orchard, task.key),
          blockOf(orchard, planting).name,
          planting.code,
          planting.cultivar,
          task.key.operation,
          title.in(language),
          std::int64_t{task.leaf},
          codeOf(task.vigour),
          task.opens,
          task.closes,
          task.cutOff ? Cell{*task.cutOff} : Cell{},
          codeOf(view.state),
          rowsText(task.rows),
          Figure{view.progress.rowsDone(), 2},
          std::int64_t{task.trees},
          hoursFigure(view.hoursLeft),
          std::int64_t{task.key.pass},
          std::int64_t{task.key.season.year}};
}

std::vector<std::string> fullColumns() {
  return {"task",
          "block",
          "planting",
          "cultivar",
          "operation",
          "name",
          "leaf",
          "vigour",
          "opens",
          "closes",
          "cut_off",
          "state",
          "rows",
          "rows_done",
          "trees",
          "hours_left",
          "pass",
          "season"};
}

/// What fits across a screen, for reading.
Table narrowed(const Table& table) {
  static constexpr std::size_t kept[] = {0, 5, 11, 8, 9, 10, 12, 13, 15};
  Table narrow;
  for (const std::size_t column : kept) narrow.columns.push_back(table.columns[column]);
  for (const auto& row : table.rows) {
    narrow.rows.emplace_back();
    for (const std::size_t column : kept) narrow.rows.back().push_back(row[column]);
  }
  return narrow;
}

Answer runTasks(Surroundings& surroundings, const Arguments& arguments) {
  return askFile(surroundings, arguments, [&](const OpenedOrchard& opened) -> Answer {
    const Orchard& orchard = opened.orchard;
    if (!arguments.block.empty())
      if (const auto known = findBlock(orchard, arguments.block); !known)
        return problemsOf(known);
    const Trade& trade = surroundings.trade;
    const SeasonSpan seasons = seasonsAskedFor(orchard, arguments);
    const Plan plan = planTasks(orchard, trade, seasons, arguments.today);
    Table table{fullColumns(), {}};
    for (const TaskView& view : viewsOf(orchard, plan, arguments.today))
      if (isAskedFor(orchard, arguments, view))
        table.rows.push_back(fullRow(
            orchard, titleIn(orchard, trade, *view.task), arguments.language, view));
    const bool wide = arguments.format != Format::text;
    return Outcome{tableIn(arguments.format, wide ? table : narrowed(table)), plan.notes};
  });
}

Answer runWhy(Surroundings& surroundings, const Arguments& arguments) {
  return askFile(surroundings, arguments, [&](const OpenedOrchard& opened) -> Answer {
    const Orchard& orchard = opened.orchard;
    const Trade& trade = surroundings.trade;
    const auto task = findTask(orchard, trade, arguments.task, arguments.today);
    if (!task) return problemsOf(task);
    const Planting& planting = orchard.plantings.at(task->key.planting);
    const Sentence head{phrase("Console", "%1, %2: %3 to %4."),
                        {titleIn(orchard, trade, *task),
                         blockOf(orchard, planting).name,
                         task->opens,
                         task->closes}};
    std::string text = spoken(head, arguments.language) + '\n';
    for (const Sentence& sentence : explain(orchard, trade, *task))
      text += spoken(sentence, arguments.language) + '\n';
    return Outcome{text, {}};
  });
}

Tick tickOf(const Arguments& arguments, const Task& task, TickId id, Day day) {
  Tick tick;
  tick.id = id;
  tick.task = task.key;
  tick.rows = arguments.rows.value_or(task.rows);
  tick.percent = arguments.percent;
  tick.minutes = arguments.minutes;
  tick.by = arguments.by;
  tick.day = day;
  return tick;
}

/// The task named is looked up in the orchard as opened, then handed to `deed`.
Answer changeTask(
    Surroundings& surroundings,
    const Arguments& arguments,
    const std::function<Checked<Change>(Workbench&, const Task&, const Words&)>& deed) {
  const Trade& trade = surroundings.trade;
  return changeFile(surroundings, arguments, [&](Workbench& bench) -> Checked<Sentence> {
    const Orchard& orchard = bench.orchard();
    const auto task = findTask(orchard, trade, arguments.task, arguments.today);
    if (!task) return problemsOf(task);
    return perform(bench, deed(bench, *task, titleIn(orchard, trade, *task)));
  });
}

Answer runTick(Surroundings& surroundings, const Arguments& arguments) {
  const auto day = dayOfRecord(arguments);
  if (!day) return problemsOf(day);
  return changeTask(surroundings,
                    arguments,
                    [&](Workbench& bench, const Task& task, const Words& title) {
                      const Tick tick =
                          tickOf(arguments, task, bench.ids().next<TickId>(), *day);
                      return tickRows(bench.orchard(), task, title, tick);
                    });
}

Answer runUntick(Surroundings& surroundings, const Arguments& arguments) {
  return changeTask(surroundings,
                    arguments,
                    [&](Workbench& bench, const Task& task, const Words& title) {
                      return untickRows(bench.orchard(),
                                        task,
                                        title,
                                        arguments.rows.value_or(task.rows),
                                        bench.ids(),
                                        arguments.today);
                    });
}

Answer runSetAside(Surroundings& surroundings, const Arguments& arguments) {
  return changeTask(surroundings,
                    arguments,
                    [&](Workbench& bench, const Task& task, const Words& title) {
                      return setTaskAside(bench.orchard(), task, title, arguments.reason);
                    });
}

}  // namespace

std::span<const Command> commandsOfTasks() {
  static constexpr Command commands[] = {
      {"tasks",
       "List dated tasks, the most urgent first: this season's and the next one's, or "
       "those with a window in the days given",
       "tasks alder.topwire --today 2027-04-06 --state open --csv",
       declareTasks,
       runTasks},
      {"why",
       "Tell why a task stands where it does",
       "why alder.topwire creek-1-gala:rub-rivals:2027:1 --today 2027-04-06",
       declareWhy,
       runWhy},
      {"tick",
       "Record rows of a task as done, and plan anew",
       "tick alder.topwire creek-1-gala:rub-rivals:2027:1 --rows 1-4 --minutes 90 --by "
       "Heron",
       declareTick,
       runTick},
      {"untick",
       "Take back what was ticked for rows of a task; the record of both stays",
       "untick alder.topwire creek-1-gala:rub-rivals:2027:1 --rows 4",
       declareUntick,
       runUntick},
      {"set-aside",
       "Leave a task undone for a reason",
       "set-aside alder.topwire creek-1-gala:notching:2027:1 --reason \"well feathered\"",
       declareSetAside,
       runSetAside},
  };
  return commands;
}

}  // namespace topwire
