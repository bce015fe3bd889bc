#include "app/console/on_file.h"
#include "core/edit/target_deeds.h"
#include "core/exchange/nearest.h"
#include "core/orchard/measure_text.h"
#include "core/orchard/measurements.h"
#include "core/targets/planting_targets.h"

#include <CLI/CLI.hpp>

#include <algorithm>

namespace topwire {

namespace {

void declareTargets(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeToday(command, arguments);
  command
      .add_option("--planting",
                  arguments.planting,
                  "Only this planting, by its code; without --csv and --json with the "
                  "reasons")
      ->type_name("CODE");
  takeFormat(command, arguments);
}

void declareMeasure(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takePlanting(command, arguments);
  std::string codes;
  for (const Measure measure : allMeasures())
    codes += (codes.empty() ? "" : ", ") + codeOf(measure);
  command.add_option("MEASURE", arguments.measure, "What is measured: " + codes)
      ->required()
      ->type_name("");
  command
      .add_option(
          "VALUES",
          arguments.values,
          "One for each sample tree, such as \"38 36 41 mm\" or \"1.5, 1 5/8 in\"")
      ->type_name("");
  takeDay(command, arguments);
  takeBy(command, arguments, false);
  command.add_option("--note", arguments.note, "Where on the tree, which rows")
      ->type_name("TEXT");
  command.add_flag(
      "--remove", arguments.remove, "Take the measurement of that day off the record");
  takeToday(command, arguments);
}

Result<std::vector<const Planting*>> plantingsAskedFor(const Orchard& orchard,
                                                       const Arguments& arguments) {
  std::vector<const Planting*> asked;
  if (!arguments.planting.empty()) {
    const auto one = findPlanting(orchard, arguments.planting);
    if (!one) return tl::unexpected{one.error()};
    asked.push_back(*one);
    return asked;
  }
  for (const Block* block : blocksInOrder(orchard))
    for (const Planting* planting : plantingsOf(orchard, block->id))
      asked.push_back(planting);
  return asked;
}

Cell metres(Length length) {
  return Figure{length.inMetres(), 2};
}

std::string codeOf(Standing standing) {
  if (standing == Standing::behind) return "behind";
  return standing == Standing::ahead ? "ahead" : "as-wanted";
}

std::vector<std::string> fullColumns() {
  return {"planting",
          "leaf",
          "vigour",
          "trees_per_acre",
          "trees_per_hectare",
          "mature_height_m",
          "trunk_mm",
          "trunk_cm2",
          "fruit_from",
          "fruit_to",
          "leader_wanted_m",
          "leader_season_end_m",
          "leader_measured_m",
          "leader",
          "suggested",
          "nitrogen_from_g",
          "nitrogen_to_g"};
}

/// Every column, in metric units whatever the orchard's, for scripts.
std::vector<Cell> fullRow(const Planting& planting,
                          const PlantingTargets& aim,
                          Day today) {
  std::vector<Cell> row(fullColumns().size());
  row[0] = planting.code;
  row[1] = std::int64_t{aim.leaf};
  row[2] = codeOf(aim.vigour.vigour);
  if (aim.density) row[3] = Figure{aim.density->perAcre, 0};
  if (aim.density) row[4] = Figure{aim.density->perHectare, 0};
  if (aim.matureHeight) row[5] = metres(aim.matureHeight->from);
  if (aim.trunk) row[6] = Figure{1000 * aim.trunk->diameter.inMetres(), 1};
  if (aim.trunk) row[7] = Figure{aim.trunk->area, 1};
  if (aim.fruit) row[8] = std::int64_t{aim.fruit->keep.from};
  if (aim.fruit) row[9] = std::int64_t{aim.fruit->keep.to};
  if (aim.leader) row[10] = metres(aim.leader->wantedOn(today));
  if (aim.leader) row[11] = metres(aim.leader->end);
  if (aim.leaderStanding) row[12] = metres(aim.leaderStanding->measured);
  if (aim.leaderStanding) row[13] = codeOf(aim.leaderStanding->standing);
  if (aim.suggestion.changes()) row[14] = codeOf(aim.suggestion.suggested);
  if (aim.nitrogen) row[15] = Figure{aim.nitrogen->gramsFrom, 1};
  if (aim.nitrogen) row[16] = Figure{aim.nitrogen->gramsTo, 1};
  return row;
}

/// What fits across a screen, for reading.
Table narrowed(const Table& table) {
  static constexpr std::size_t kept[] = {0, 1, 2, 3, 6, 8, 9, 10, 12, 13, 14};
  Table narrow;
  for (const std::size_t column : kept) narrow.columns.push_back(table.columns[column]);
  for (const auto& row : table.rows) {
    narrow.rows.emplace_back();
    for (const std::size_t column : kept) narrow.rows.back().push_back(row[column]);
  }
  return narrow;
}

std::string allSpoken(const std::vector<Sentence>& sentences, Language language) {
  std::string text;
  for (const Sentence& sentence : sentences) text += spoken(sentence, language) + '\n';
  return text;
}

/// One planting's targets with where they come from.
std::string told(const Orchard& orchard,
                 const Planting& planting,
                 const PlantingTargets& aim,
                 const Arguments& arguments) {
  const UnitSystem units = orchard.settings.units;
  const Language language = arguments.language;
  std::string text;
  if (aim.fruit)
    text +=
        spoken({phrase("Targets", "Fruit to keep per tree: %1 to %2."),
                {std::int64_t{aim.fruit->keep.from}, std::int64_t{aim.fruit->keep.to}}},
               language)
        + '\n' + allSpoken(reasonsOf(*aim.fruit, planting, units), language) + '\n';
  if (aim.leader)
    text += allSpoken(reasonsOf(*aim.leader, arguments.today, units), language);
  if (aim.leaderStanding)
    text += spoken(sentenceOf(*aim.leaderStanding, units), language) + "\n\n";
  text += allSpoken(reasonsOf(aim.suggestion, orchard.settings.hemisphere(), units),
                    language);
  if (aim.nitrogen)
    text += '\n'
            + spoken({phrase("Targets", "Nitrogen per tree: %1."),
                      {amountText(*aim.nitrogen, units)}},
                     language)
            + '\n' + allSpoken(reasonsOf(*aim.nitrogen), language);
  return text;
}

Answer runTargets(Surroundings& surroundings, const Arguments& arguments) {
  return askFile(surroundings, arguments, [&](const OpenedOrchard& opened) -> Answer {
    const Orchard& orchard = opened.orchard;
    const Trade& trade = surroundings.trade;
    const auto plantings = plantingsAskedFor(orchard, arguments);
    if (!plantings) return problemsOf(plantings);
    const auto forecast = trade.forecaster.over(orchard, arguments.today);
    const auto aimOf = [&](const Planting& planting) {
      return targetsOf(orchard, trade.tables, *forecast, planting, arguments.today);
    };
    if (!arguments.planting.empty() && arguments.format == Format::text) {
      const Planting& planting = *plantings->front();
      return Outcome{told(orchard, planting, aimOf(planting), arguments), {}};
    }
    Table table{fullColumns(), {}};
    for (const Planting* planting : *plantings)
      table.rows.push_back(fullRow(*planting, aimOf(*planting), arguments.today));
    const bool wide = arguments.format != Format::text;
    return Outcome{tableIn(arguments.format, wide ? table : narrowed(table)), {}};
  });
}

Result<Measure> findMeasure(const std::string& code) {
  if (const auto measure = measureByCode(code)) return *measure;
  std::vector<std::string> codes;
  for (const Measure measure : allMeasures()) codes.push_back(codeOf(measure));
  const std::string nearest = nearestName(code, codes);
  return refuse(
      {nearest.empty()
           ? phrase(
               "Console",
               "There is no measure \"%1\"; `topwire-cli measure --help` lists them.")
           : phrase("Console", R"(There is no measure "%1"; the nearest is "%2".)"),
       {code, nearest}});
}

Checked<Change> removal(const Orchard& orchard,
                        PlantingId planting,
                        Measure measure,
                        Day day) {
  for (const auto& [id, taken] : orchard.measurements)
    if (taken.planting == planting && taken.measure == measure && taken.day == day)
      return removeMeasurement(orchard, id);
  return tl::unexpected{
      Problems{{Sentence{phrase("Console", "On %1 nothing of that is on record."), {day}},
                {},
                {}}}};
}

Checked<Change> change(Workbench& bench,
                       const Arguments& arguments,
                       PlantingId planting,
                       Measure measure,
                       Day day) {
  const Orchard& orchard = bench.orchard();
  if (arguments.remove) return removal(orchard, planting, measure, day);
  std::string typed;
  for (const std::string& word : arguments.values)
    typed += (typed.empty() ? "" : " ") + word;
  const auto values = readMeasured(typed, measure, orchard.settings.units);
  if (!values) return problemsOf(values);
  return addMeasurement(orchard,
                        {bench.ids().next<MeasurementId>(),
                         planting,
                         measure,
                         day,
                         *values,
                         arguments.by,
                         arguments.note});
}

Answer runMeasure(Surroundings& surroundings, const Arguments& arguments) {
  const auto measure = findMeasure(arguments.measure);
  if (!measure) return problemsOf(measure);
  const auto day = dayOfRecord(arguments);
  if (!day) return problemsOf(day);
  return changeFile(surroundings, arguments, [&](Workbench& bench) -> Checked<Sentence> {
    const auto planting = findPlanting(bench.orchard(), arguments.planting);
    if (!planting) return problemsOf(planting);
    return perform(bench, change(bench, arguments, (*planting)->id, *measure, *day));
  });
}

}  // namespace

std::span<const Command> commandsOfTargets() {
  static constexpr Command commands[] = {
      {"targets",
       "List what is aimed at in each planting this season: fruit to keep, leader, "
       "class, nitrogen as nutrient; figures in metric units",
       "targets alder.topwire --today 2027-04-06 --csv",
       declareTargets,
       runTargets},
      {"measure",
       "Record what was measured on sample trees of a planting, and plan anew",
       "measure alder.topwire creek-1-gala trunk-diameter \"1.5, 1 5/8, 1.4 in\" --day "
       "2027-04-05",
       declareMeasure,
       runMeasure},
  };
  return commands;
}

}  // namespace topwire
