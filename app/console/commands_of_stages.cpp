#include "app/console/on_file.h"
#include "core/edit/deeds.h"
#include "core/exchange/nearest.h"
#include "core/phenology/stage.h"
#include "core/planning/day_cautions.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <array>

namespace topwire {

namespace {

void declareStages(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeToday(command, arguments);
  command.add_option("--planting", arguments.planting, "Only this planting, by its code")
      ->type_name("CODE");
  takeFormat(command, arguments);
}

void declareObserve(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takePlanting(command, arguments);
  takeStage(command, arguments);
  takeSeenDay(command, arguments);
  takeBy(command, arguments, false);
  takeToday(command, arguments);
}

std::vector<const Planting*> plantingsInOrder(const Orchard& orchard) {
  std::vector<const Planting*> all;
  for (const Block* block : blocksInOrder(orchard))
    for (const Planting* planting : plantingsOf(orchard, block->id))
      all.push_back(planting);
  return all;
}

void addStages(Table& table,
               const Orchard& orchard,
               const Planting& planting,
               const Outlook& outlook,
               Language language) {
  for (const StageEstimate& estimate : outlook.stages) {
    const Stage* stage = stageByCode(estimate.bbch);
    table.rows.push_back({planting.code,
                          blockOf(orchard, planting).name,
                          planting.cultivar,
                          std::int64_t{estimate.bbch},
                          stage != nullptr ? stage->name.in(language) : std::string{},
                          codeOf(estimate.kind),
                          estimate.date,
                          estimate.early,
                          estimate.late});
  }
}

Sentence ladderNote(const Orchard& orchard) {
  return {phrase("Console",
                 "Winters at %1 are too warm for the published heat sums. Give your own "
                 "dates of three past seasons, which take their place, and enter the "
                 "stages you see, which move the later ones."),
          {orchard.settings.station}};
}

/// Trees that are not in the ground yet have no stages.
Outcome stagesOf(const Orchard& orchard,
                 const Trade& trade,
                 const std::vector<const Planting*>& plantings,
                 const Arguments& arguments) {
  const Season season = seasonOf(arguments.today, orchard.settings.hemisphere());
  Table table{
      {"planting", "block", "cultivar", "bbch", "stage", "kind", "date", "early", "late"},
      {}};
  const auto forecast = trade.forecaster.over(orchard, arguments.today);
  bool ladderHolds = true;
  for (const Planting* planting : plantings) {
    if (leafOf(orchard, *planting, season) < 1) continue;
    const Outlook outlook = forecast->outlook(*planting, season);
    ladderHolds = ladderHolds && outlook.ladderHolds;
    addStages(table, orchard, *planting, outlook, arguments.language);
  }
  Outcome outcome{tableIn(arguments.format, table), {}};
  if (!ladderHolds) outcome.notes.push_back(ladderNote(orchard));
  return outcome;
}

Answer runStages(Surroundings& surroundings, const Arguments& arguments) {
  return askFile(surroundings, arguments, [&](const OpenedOrchard& opened) -> Answer {
    auto plantings = plantingsInOrder(opened.orchard);
    if (!arguments.planting.empty()) {
      const auto planting = findPlanting(opened.orchard, arguments.planting);
      if (!planting) return problemsOf(planting);
      plantings = {*planting};
    }
    return stagesOf(opened.orchard, surroundings.trade, plantings, arguments);
  });
}

Result<int> findStage(const std::string& text) {
  std::vector<std::string> names;
  for (const Stage& stage : allStages()) {
    if (text == std::to_string(stage.bbch) || text == stage.name.en) return stage.bbch;
    names.push_back(stage.name.en);
    names.push_back(std::to_string(stage.bbch));
  }
  const std::string nearest = nearestName(text, names);
  return refuse(
      {nearest.empty()
           ? phrase("Console",
                    "There is no stage \"%1\"; `topwire-cli stages` lists those dated.")
           : phrase("Console", R"(There is no stage "%1"; the nearest is "%2".)"),
       {text, nearest}});
}

Answer runObserve(Surroundings& surroundings, const Arguments& arguments) {
  const auto stage = findStage(arguments.stage);
  if (!stage) return problemsOf(stage);
  const auto day = dayOfRecord(arguments);
  if (!day) return problemsOf(day);
  return changeFile(surroundings, arguments, [&](Workbench& bench) -> Checked<Sentence> {
    const auto planting = findPlanting(bench.orchard(), arguments.planting);
    if (!planting) return problemsOf(planting);
    const Observation seen{
        bench.ids().next<ObservationId>(), (*planting)->id, *stage, *day, arguments.by};
    return perform(bench, observeStage(bench.orchard(), seen));
  });
}

void declareCautions(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeToday(command, arguments);
  takeFormat(command, arguments);
}

std::string codeOf(CautionKind kind) {
  static constexpr std::array codes{
      "frost", "freezing", "hard-cold", "blight-weather", "wet", "damp", "heat"};
  return codes.at(static_cast<std::size_t>(kind));
}

std::string codeOf(Severity severity) {
  static constexpr std::array codes{"low", "serious", "grave"};
  return codes.at(static_cast<std::size_t>(severity));
}

/// How many of the tasks due that day had better wait for this reason.
int waitingFor(const SharedCaution& shared,
               const CautionsByPlanting& cautions,
               const Orchard& orchard,
               const Trade& trade,
               const std::vector<TaskView>& views) {
  const Day day = shared.caution.day;
  return static_cast<int>(std::ranges::count_if(views, [&](const TaskView& view) {
    const Operation* operation = operationOf(orchard, trade.programmes, view.task->key);
    const auto own = cautions.find(view.task->key.planting);
    if (operation == nullptr || own == cautions.end()) return false;
    if (!isDueIn(view, {day, day})) return false;
    const DayCaution* caution = shouldWait(*operation, own->second);
    return caution != nullptr && alike(*caution, shared.caution);
  }));
}

Answer runCautions(Surroundings& surroundings, const Arguments& arguments) {
  return askFile(surroundings, arguments, [&](const OpenedOrchard& opened) -> Answer {
    const Orchard& orchard = opened.orchard;
    const Trade& trade = surroundings.trade;
    const Day today = arguments.today;
    const Outlooks outlooks = outlooksOf(orchard, trade, today);
    const Plan plan = planTasks(orchard, trade, plannedSeasons(orchard, today), today);
    const auto views = viewsOf(orchard, plan, today);
    Table table{{"day", "blocks", "kind", "severity", "source", "waiting", "caution"},
                {}};
    for (const SharedCaution& shared :
         cautionsAhead(orchard, trade.tables, outlooks, today)) {
      const DayCaution& caution = shared.caution;
      const auto all = cautionsOn(orchard, trade.tables, outlooks, caution.day);
      const int waiting = waitingFor(shared, all, orchard, trade, views);
      table.rows.push_back({caution.day,
                            placesOf(orchard, shared),
                            codeOf(caution.kind),
                            codeOf(caution.severity),
                            codeOf(caution.source),
                            std::int64_t{waiting},
                            spoken(caution.sentence, arguments.language) + ' '
                                + spoken(caution.advice, arguments.language)});
    }
    Outcome outcome{tableIn(arguments.format, table), {}};
    if (!table.rows.empty()) outcome.notes.push_back(cautionAdvice());
    return outcome;
  });
}

}  // namespace

std::span<const Command> commandsOfStages() {
  static constexpr Command commands[] = {
      {"stages",
       "List the growth stages of this season: seen, expected, or set by offset, with "
       "the span that holds eight cases in ten",
       "stages alder.topwire --today 2027-04-06 --csv",
       declareStages,
       runStages},
      {"observe",
       "Record the day a stage was reached, and plan anew",
       "observe alder.topwire creek-1-gala 53 2027-04-05 --by Kestrel",
       declareObserve,
       runObserve},
      {"cautions",
       "List what the weather known of the next ten days gives reason to think of, and "
       "how many tasks had better wait",
       "cautions alder.topwire --today 2027-04-06",
       declareCautions,
       runCautions},
  };
  return commands;
}

}  // namespace topwire
