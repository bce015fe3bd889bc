#include "app/console/on_file.h"

#include "core/exchange/nearest.h"
#include "core/exchange/settled_orchard.h"
#include "core/planning/explain.h"
#include "core/planning/reconcile.h"
#include "core/planning/stage_shifts.h"

#include <algorithm>
#include <fstream>
#include <sstream>
#include <utility>

namespace topwire {

namespace {

/// "3 windows moved, 1 job appeared."
std::string lineOf(const std::vector<PlanDifference>& differences, Language language) {
  std::string line;
  for (const Sentence& part : summaryOf(differences))
    line += (line.empty() ? "" : ", ") + spoken(part, language);
  return line.empty() ? line : line + ".\n";
}

/// Which stages moved windows, a line each.
std::string whyMoved(const Orchard& before,
                     const Orchard& after,
                     const Trade& trade,
                     const Plan& plan,
                     const std::vector<PlanDifference>& differences,
                     const Arguments& arguments) {
  std::string lines;
  if (differences.empty() || before.tasks.empty()) return lines;
  const auto shifts = stageShifts(outlooksOf(before, trade, arguments.today),
                                  outlooksOf(after, trade, arguments.today),
                                  seasonOf(arguments.today, after.settings.hemisphere()),
                                  plan,
                                  differences);
  for (const Sentence& sentence : sentencesOf(after, shifts))
    lines += spoken(sentence, arguments.language) + '\n';
  return lines;
}

Result<std::string> replan(Workbench& bench,
                           const Orchard& before,
                           const Trade& trade,
                           const Arguments& arguments) {
  const Orchard& orchard = bench.orchard();
  const SeasonSpan seasons = plannedSeasons(orchard, arguments.today);
  const Plan plan = planTasks(orchard, trade, seasons, arguments.today);
  const Reconciled reconciled = reconcile(orchard, plan, seasons);
  if (const Done stored = bench.replan(reconciled.tasks); !stored)
    return tl::unexpected{stored.error()};
  return lineOf(reconciled.differences, arguments.language)
         + whyMoved(before, orchard, trade, plan, reconciled.differences, arguments);
}

/// A sentence of its own, whether or not the deed's name ends with a stop.
std::string asLine(std::string text) {
  if (!text.ends_with('.')) text += '.';
  return text + '\n';
}

}  // namespace

Answer askFile(Surroundings& surroundings,
               const Arguments& arguments,
               const std::function<Answer(const OpenedOrchard&)>& ask) {
  const auto opened = surroundings.files.open(arguments.file, Access::look);
  if (!opened) return problemsOf(opened);
  surroundings.programmes.take(opened->orchard);
  Answer answer = ask(*opened);
  if (!answer) return answer;
  const auto& left = surroundings.programmes.notes();
  answer->notes.insert(answer->notes.begin(), left.begin(), left.end());
  answer->notes.insert(answer->notes.begin(), opened->notes.begin(), opened->notes.end());
  return answer;
}

Answer changeFile(Surroundings& surroundings,
                  const Arguments& arguments,
                  const std::function<Checked<Sentence>(Workbench&)>& deed) {
  auto opened = surroundings.files.open(arguments.file, Access::write);
  if (!opened) return problemsOf(opened);
  Workbench bench{
      std::move(opened->orchard), *opened->journal, surroundings.clock, surroundings.ids};
  bench.setUser(arguments.by);
  const Orchard before = bench.orchard();
  surroundings.programmes.take(before);
  const auto said = deed(bench);
  if (!said) return tl::unexpected{said.error()};
  surroundings.programmes.take(bench.orchard());
  const auto moved = replan(bench, before, surroundings.trade, arguments);
  if (!moved) return problemsOf(moved);
  return Outcome{asLine(spoken(*said, arguments.language)) + *moved, opened->notes};
}

Checked<Sentence> perform(Workbench& bench, const Checked<Change>& change) {
  if (!change) return tl::unexpected{change.error()};
  if (const Done done = bench.perform(*change); !done) return problemsOf(done);
  if (change->empty())
    return Sentence{phrase("Console", "It stands so already; nothing was changed.")};
  return change->name;
}

Result<Task> findTask(const Orchard& orchard,
                      const Trade& trade,
                      const std::string& text,
                      Day today) {
  SeasonSpan seasons = plannedSeasons(orchard, today);
  if (const auto key = parseTask(orchard, text)) {
    // A year far off is a slip of the finger, not a wish to plan centuries.
    const bool near = std::abs(key->season.year - seasons.first.year) <= 10;
    if (near) seasons.first = std::min(seasons.first, key->season);
    if (near) seasons.last = std::max(seasons.last, key->season);
  }
  return taskNamed(orchard, planTasks(orchard, trade, seasons, today), text);
}

Words titleIn(const Orchard& orchard, const Trade& trade, const Task& task) {
  return titleOf(task, operationOf(orchard, trade.programmes, task.key));
}

Result<const Block*> findBlock(const Orchard& orchard, const std::string& name) {
  if (const Block* block = blockByName(orchard, name)) return block;
  std::string names;
  for (const Block* block : blocksInOrder(orchard))
    names += (names.empty() ? "" : ", ") + block->name;
  return refuse(
      {phrase("Console", "There is no block \"%1\"; there are: %2."), {name, names}});
}

Result<const Planting*> findPlanting(const Orchard& orchard, const std::string& code) {
  if (const Planting* planting = plantingByCode(orchard, code)) return planting;
  std::vector<std::string> codes;
  codes.reserve(orchard.plantings.size());
  for (const auto& [id, planting] : orchard.plantings) codes.push_back(planting.code);
  const std::string nearest = nearestName(code, codes);
  return refuse(
      {nearest.empty()
           ? phrase("Console",
                    "There is no planting \"%1\"; `topwire-cli blocks` lists them.")
           : phrase("Console", R"(There is no planting "%1"; the nearest is "%2".)"),
       {code, nearest}},
      "planting");
}

Result<Day> dayOfRecord(const Arguments& arguments) {
  const Day day = arguments.day.value_or(arguments.today);
  if (day <= arguments.today) return day;
  return refuse(
      {phrase("Console", "%1 is still to come on %2; give the day it was done or seen."),
       {day, arguments.today}},
      "day");
}

Result<std::string> textOfFile(const std::string& path) {
  std::ifstream file{path, std::ios::binary};
  // Putting in nothing would count as a failure.
  const bool empty = file.good() && file.peek() == std::ifstream::traits_type::eof();
  if (empty && !file.bad()) return std::string{};
  std::ostringstream text;
  if (file.good()) text << file.rdbuf();
  if (!file.fail() && !text.fail()) return text.str();
  return refuse({phrase("Console",
                        "The file \"%1\" cannot be read; look at its name and who may "
                        "read it."),
                 {path}});
}

}  // namespace topwire
