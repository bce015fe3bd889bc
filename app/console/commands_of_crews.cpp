#include "app/console/crew_book.h"
#include "app/console/on_file.h"
#include "core/calendar/clock_time.h"
#include "core/crews/crew_words.h"
#include "core/crews/labour_ahead.h"
#include "core/crews/task_names.h"
#include "core/labour/hours_figure.h"

#include <CLI/CLI.hpp>

#include <algorithm>

namespace topwire {

namespace {

void declareCrews(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  command
      .add_option_function<std::string>(
          "--task",
          [&arguments](const std::string& typed) { arguments.task = typed; },
          "Why this task stands where it does in the plan, or waits")
      ->type_name("TASK");
  command.add_flag("--weeks",
                   arguments.crews.weeks,
                   "Labour wanted against labour there is, week by week");
  takeSupposition(command, arguments);
  command
      .add_option("--evaluations",
                  arguments.crews.evaluations,
                  "How many changes to try for a better plan")
      ->check(CLI::Range(0, 100'000'000));
  takeToday(command, arguments);
  takeFormat(command, arguments);
}

Supposition supposedBy(const Arguments& arguments) {
  Supposition supposed;
  supposed.workersMore = arguments.crews.workersMore;
  supposed.springLaterBy = arguments.crews.springLaterBy;
  if (arguments.from) supposed.lost.push_back({*arguments.from, *arguments.to});
  return supposed;
}

std::vector<std::string> fullColumns() {
  return {"crew",
          "start",
          "end",
          "block",
          "name",
          "rows",
          "workers",
          "hours",
          "task",
          "gang",
          "pinned",
          "done_by",
          "span_from",
          "span_to"};
}

Table dayTable(const Orchard& orchard,
               const Trade& trade,
               const CrewBook& book,
               const CrewPlan& plan,
               const Arguments& arguments) {
  Table table{fullColumns(), {}};
  for (const CrewLane& lane : lanesOn(orchard, plan, arguments.today))
    for (const LaneJob& job : lane.jobs) {
      const Planting& planting = orchard.plantings.at(job.task.planting);
      const TaskForecast forecast = forecastOf(plan, *book.task(job.task));
      table.rows.push_back({orchard.crews.at(lane.crew).name,
                            clockText(job.startMinute),
                            clockText(job.endMinute),
                            blockOf(orchard, planting).name,
                            titleOfTask(orchard, trade, job.task).in(arguments.language),
                            rowsText(job.rows),
                            std::int64_t{job.workers},
                            hoursFigure(job.hours),
                            taskText(orchard, job.task),
                            std::int64_t{job.gang + 1},
                            std::string{job.pinned ? "yes" : "no"},
                            forecast.done ? Cell{*forecast.done} : Cell{},
                            forecast.span ? Cell{forecast.span->first} : Cell{},
                            forecast.span ? Cell{forecast.span->last} : Cell{}});
    }
  return table;
}

/// What fits across a screen, for reading.
Table narrowed(const Table& table) {
  constexpr std::size_t kept = 8;
  Table narrow;
  narrow.columns.assign(table.columns.begin(), table.columns.begin() + kept);
  for (const auto& row : table.rows)
    narrow.rows.emplace_back(row.begin(), row.begin() + kept);
  return narrow;
}

/// Sentences, a line each, behind an empty line; nothing where there are none.
std::string paragraph(const std::vector<Sentence>& sentences, Language language) {
  std::string text;
  for (const Sentence& sentence : sentences) text += spoken(sentence, language) + '\n';
  return text.empty() ? text : '\n' + text;
}

std::string headText(const Orchard& orchard,
                     const CrewPlan& plan,
                     const Arguments& asked) {
  const DayHeadline head = headlineOf(orchard, plan, asked.today);
  std::string text = spoken(head.turnout, asked.language);
  text += ' ' + spoken(head.hours, asked.language);
  if (head.shortBy) text += ' ' + spoken(*head.shortBy, asked.language);
  return text + '\n';
}

std::vector<Sentence> waitingWords(const Orchard& orchard,
                                   const Trade& trade,
                                   const CrewPlan& plan,
                                   Day today) {
  constexpr std::size_t most = 8;
  std::vector<Sentence> words;
  for (const WaitingTask& one : waitingOn(orchard, trade, plan, today)) {
    if (words.size() == most) break;
    words.push_back({phrase("Crew plan", "Waits: %1, %2 hours."),
                     {nameWithBlock(orchard, trade, one.task), hoursFigure(one.hours)}});
    words.push_back(one.why);
  }
  return words;
}

std::vector<Sentence> missedWords(const Orchard& orchard,
                                  const Trade& trade,
                                  const CrewPlan& plan) {
  constexpr std::size_t most = 5;
  std::vector<Sentence> words;
  for (const MissedWindow& window :
       missedInPastYears(pastRain(orchard, trade, plan.question), plan)) {
    if (words.size() == most) break;
    words.push_back(
        {phrase("Crew plan", "%1: not done in time in %2 of the last %3 years' weather."),
         {nameWithBlock(orchard, trade, window.task),
          std::int64_t{window.missed},
          std::int64_t{window.years}}});
  }
  return words;
}

std::string dayText(const Orchard& orchard,
                    const Trade& trade,
                    const CrewBook& book,
                    const CrewPlan& plan,
                    const Arguments& asked) {
  const Language language = asked.language;
  std::string text = headText(orchard, plan, asked) + '\n';
  text += toText(narrowed(dayTable(orchard, trade, book, plan, asked)));
  for (const WindowAtRisk& risk : windowsAtRisk(plan))
    text += paragraph(wordsOf(orchard, trade, risk), language);
  text += paragraph(keptOut(orchard, asked.today), language);
  text += paragraph(waitingWords(orchard, trade, plan, asked.today), language);
  text += paragraph(missedWords(orchard, trade, plan), language);
  return text + paragraph(wordsOfWhole(plan), language);
}

Table weekTable(const CrewPlan& plan) {
  Table table{{"monday", "there", "wanted", "planned", "overdue"}, {}};
  for (const WeekOfLabour& week : labourByWeek(plan))
    table.rows.push_back({week.monday,
                          Figure{week.there, 0},
                          Figure{week.wanted, 0},
                          Figure{week.planned, 0},
                          Figure{week.overdue, 0}});
  return table;
}

Table comparedTable(const PlanSum& now, const PlanSum& supposed) {
  const auto row = [](const char* what, double one, double other) {
    return std::vector<Cell>{std::string{what}, Figure{one, 0}, Figure{other, 0}};
  };
  return {{"hours", "as_known", "supposed"},
          {row("lost", now.loss, supposed.loss),
           row("lost_at_least", now.bound, supposed.bound),
           row("never_done", now.hoursLost, supposed.hoursLost),
           row("done_late", now.hoursLate, supposed.hoursLate),
           row("windows_missed", now.windowsMissed, supposed.windowsMissed)}};
}

Answer whyOfTask(const Orchard& orchard,
                 const Trade& trade,
                 const CrewPlan& plan,
                 const Arguments& arguments) {
  const auto task = findTask(orchard, trade, arguments.task, arguments.today);
  if (!task) return problemsOf(task);
  std::string text;
  for (const Sentence& why : whyOn(orchard, trade, plan, task->key, arguments.today))
    text += spoken(why, arguments.language) + '\n';
  if (text.empty())
    text = spoken({phrase("Crew plan", "It is in no plan: done, over, or not open yet.")},
                  arguments.language)
           + '\n';
  return Outcome{text, {}};
}

Answer tellPlan(const Orchard& orchard,
                const Trade& trade,
                const CrewBook& book,
                const CrewPlan& plan,
                const Arguments& arguments) {
  if (!arguments.task.empty()) return whyOfTask(orchard, trade, plan, arguments);
  const std::vector<Sentence>& notes = plan.question.notes;
  if (arguments.crews.weeks)
    return Outcome{tableIn(arguments.format, weekTable(plan)), notes};
  if (arguments.format != Format::text)
    return Outcome{
        tableIn(arguments.format, dayTable(orchard, trade, book, plan, arguments)),
        notes};
  return Outcome{dayText(orchard, trade, book, plan, arguments), notes};
}

Answer runCrews(Surroundings& surroundings, const Arguments& arguments) {
  return askFile(surroundings, arguments, [&](const OpenedOrchard& opened) -> Answer {
    const Orchard& orchard = opened.orchard;
    const Trade& trade = surroundings.trade;
    const CrewBook book{orchard, trade, arguments.today};
    const std::optional<int> evaluations = arguments.crews.evaluations;
    const Supposition supposed = supposedBy(arguments);
    const CrewPlan plan = book.planned(supposed, evaluations);
    if (supposed == Supposition{} || arguments.crews.weeks || !arguments.task.empty())
      return tellPlan(orchard, trade, book, plan, arguments);
    const CrewPlan known = book.planned({}, evaluations);
    return Outcome{tableIn(arguments.format, comparedTable(sumOf(known), sumOf(plan))),
                   plan.question.notes};
  });
}

}  // namespace

std::span<const Command> commandsOfCrews() {
  static constexpr Command commands[] = {
      {"crews",
       "Who goes where today, what will be missed, and why",
       "crews alder.topwire --today 2027-04-06",
       declareCrews,
       runCrews},
  };
  return commands;
}

}  // namespace topwire
