#include "app/console/crew_book.h"
#include "app/console/on_file.h"
#include "core/calendar/clock_time.h"
#include "core/crews/plan_and_done.h"
#include "core/edit/crew_deeds.h"
#include "core/exchange/nearest.h"

#include <CLI/CLI.hpp>

#include <algorithm>

namespace topwire {

namespace {

void declareTurnout(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeCrew(command, arguments, true);
  command.add_option("--workers", arguments.crews.workers, "How many turned out")
      ->required()
      ->check(CLI::Range(0, 999));
  takeDay(command, arguments);
  takeToday(command, arguments);
}

void declarePin(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeTask(command, arguments);
  takeCrew(command, arguments, false);
  takeDay(command, arguments);
  takeReason(command, arguments, false);
  command.add_flag("--remove", arguments.remove, "Take the task's pins out instead");
  takeToday(command, arguments);
}

void declareKeepOut(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  command.add_option("BLOCK", arguments.block, "The block's name")->required();
  command
      .add_option("--until",
                  arguments.crews.until,
                  "When people may go in again, as its label and local law say: "
                  "\"2027-04-09 06:00\"")
      ->type_name("\"DAY HH:MM\"");
  takeDay(command, arguments);
  takeReason(command, arguments, false);
  command.add_flag("--remove", arguments.remove, "Open the block again instead");
  takeToday(command, arguments);
}

void declareWorkDay(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeDay(command, arguments);
  command
      .add_option("--percent",
                  arguments.crews.percent,
                  "Of the usual hours: 0 for a holiday or a day lost, 100 to work on a "
                  "day of rest")
      ->check(CLI::Range(0, 100));
  takeReason(command, arguments, false);
  command.add_flag("--remove", arguments.remove, "A day like any other instead");
  takeToday(command, arguments);
}

void declareAccept(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeToday(command, arguments);
}

Day dayMeant(const Arguments& arguments) {
  return arguments.day.value_or(arguments.today);
}

Result<CrewId> findCrew(const Orchard& orchard, const std::string& name) {
  std::vector<std::string> names;
  for (const Crew* crew : crewsInOrder(orchard)) {
    if (crew->name == name) return crew->id;
    names.push_back(crew->name);
  }
  const std::string nearest = nearestName(name, names);
  if (nearest.empty())
    return refuse({phrase("Console", "There is no crew \"%1\"."), {name}});
  return refuse({phrase("Console", "There is no crew \"%1\"; the nearest is \"%2\"."),
                 {name, nearest}});
}

Answer runTurnout(Surroundings& surroundings, const Arguments& arguments) {
  return changeFile(surroundings, arguments, [&](Workbench& bench) -> Checked<Sentence> {
    const auto crew = findCrew(bench.orchard(), arguments.crews.crew);
    if (!crew) return problemsOf(crew);
    const Turnout turnout{{*crew, dayMeant(arguments)}, arguments.crews.workers};
    return perform(bench, setTurnout(bench.orchard(), turnout));
  });
}

std::string skillOf(const Orchard& orchard, const Trade& trade, const TaskKey& task) {
  const Operation* operation = operationOf(orchard, trade.programmes, task);
  return operation == nullptr ? std::string{} : operation->skill;
}

/// All pins of a task, as one change.
Checked<Change> unpinned(const Orchard& orchard, const TaskKey& task) {
  Change all;
  for (const auto& [id, pin] : orchard.pins) {
    if (pin.task != task) continue;
    Checked<Change> one = removePin(orchard, id);
    if (!one) return one;
    all.name = one->name;
    std::ranges::move(one->edits, std::back_inserter(all.edits));
  }
  if (!all.empty()) return all;
  return problemsOf(Done{refuse({phrase("Console", "This task has no pin."), {}})});
}

Answer runPin(Surroundings& surroundings, const Arguments& arguments) {
  const Trade& trade = surroundings.trade;
  return changeFile(surroundings, arguments, [&](Workbench& bench) -> Checked<Sentence> {
    const Orchard& orchard = bench.orchard();
    const auto task = findTask(orchard, trade, arguments.task, arguments.today);
    if (!task) return problemsOf(task);
    if (arguments.remove) return perform(bench, unpinned(orchard, task->key));
    Pin pin;
    pin.id = bench.ids().next<PinId>();
    pin.task = task->key;
    pin.day = dayMeant(arguments);
    pin.reason = arguments.reason;
    pin.kind = PinKind::notBefore;
    if (!arguments.crews.crew.empty()) {
      const auto crew = findCrew(orchard, arguments.crews.crew);
      if (!crew) return problemsOf(crew);
      pin.kind = PinKind::crewToJob;
      pin.crew = *crew;
    }
    return perform(bench, addPin(orchard, pin, skillOf(orchard, trade, task->key)));
  });
}

struct Moment {
  Day day{};
  int minute = 0;
};

Result<Moment> readMoment(const std::string& typed) {
  const auto space = typed.find(' ');
  const auto day = parseDay(typed.substr(0, space));
  const auto minute =
      space == std::string::npos ? std::optional{0} : parseClock(typed.substr(space + 1));
  if (day && minute) return Moment{*day, *minute};
  return refuse(
      {phrase("Console", "\"%1\" is no day and time; write them like 2027-04-09 06:00."),
       {typed}},
      "until");
}

Checked<Change> reopened(const Orchard& orchard, BlockId block, Day day) {
  for (const auto& [id, closure] : orchard.closures)
    if (closure.block == block && closure.until >= day) return reopenBlock(orchard, id);
  return problemsOf(Done{
      refuse({phrase("Console", "This block is not closed on %1 or later."), {day}})});
}

Answer runKeepOut(Surroundings& surroundings, const Arguments& arguments) {
  return changeFile(surroundings, arguments, [&](Workbench& bench) -> Checked<Sentence> {
    const Orchard& orchard = bench.orchard();
    const auto found = findBlock(orchard, arguments.block);
    if (!found) return problemsOf(found);
    const BlockId block = (*found)->id;
    if (arguments.remove)
      return perform(bench, reopened(orchard, block, dayMeant(arguments)));
    const auto until = readMoment(arguments.crews.until);
    if (!until) return problemsOf(until);
    BlockClosure closure;
    closure.id = bench.ids().next<ClosureId>();
    closure.block = block;
    closure.from = dayMeant(arguments);
    closure.until = until->day;
    closure.untilMinute = until->minute;
    closure.reason = arguments.reason;
    return perform(bench, closeBlock(orchard, closure));
  });
}

Answer runWorkDay(Surroundings& surroundings, const Arguments& arguments) {
  return changeFile(surroundings, arguments, [&](Workbench& bench) -> Checked<Sentence> {
    const Day day = dayMeant(arguments);
    if (arguments.remove) return perform(bench, clearWorkDay(bench.orchard(), day));
    const WorkDay work{day, arguments.crews.percent, arguments.reason};
    return perform(bench, setWorkDay(bench.orchard(), work));
  });
}

Answer runAccept(Surroundings& surroundings, const Arguments& arguments) {
  const Trade& trade = surroundings.trade;
  return changeFile(surroundings, arguments, [&](Workbench& bench) -> Checked<Sentence> {
    const Orchard& orchard = bench.orchard();
    const Day today = arguments.today;
    const CrewBook book{orchard, trade, today};
    const CrewPlan plan = book.planned();
    const auto jobs = plannedJobs(lanesOn(orchard, plan, today), today);
    return perform(bench, acceptPlan(orchard, today, jobs));
  });
}

}  // namespace

std::span<const Command> commandsOfTurnout() {
  static constexpr Command commands[] = {
      {"turnout",
       "Note how many of a crew turned out",
       "turnout alder.topwire --crew Heron --workers 6 --today 2027-04-06",
       declareTurnout,
       runTurnout},
      {"pin",
       "Pin a crew to a task on a day; without a crew, hold the task until that day",
       "pin alder.topwire creek-1-gala:notching:2027:1 --crew Wren --day 2027-04-07",
       declarePin,
       runPin},
      {"keep-out",
       "Close a block to people until a day and time",
       "keep-out alder.topwire \"Long Acre\" --until \"2027-04-09 06:00\" --reason spray",
       declareKeepOut,
       runKeepOut},
      {"work-day",
       "Say how much of a day can be worked",
       "work-day alder.topwire --day 2027-05-03 --percent 0 --reason holiday",
       declareWorkDay,
       runWorkDay},
      {"accept-crews",
       "Put the day's crew plan on record, to hold it against what is done",
       "accept-crews alder.topwire --today 2027-04-06",
       declareAccept,
       runAccept},
  };
  return commands;
}

}  // namespace topwire
