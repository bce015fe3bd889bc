#include "app/console/on_file.h"
#include "core/exchange/settled_orchard.h"
#include "core/programme/programme_reader.h"

#include <CLI/CLI.hpp>

namespace topwire {

namespace {

void declareNew(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeDescription(command, arguments);
  takeToday(command, arguments);
}

void declareBlocks(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeToday(command, arguments);
  takeFormat(command, arguments);
}

void declareCopy(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeTarget(command, arguments, "The copy to make");
}

void declareHistory(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeBy(command, arguments, false);
  takeToday(command, arguments);
}

void declareJournal(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeLast(command, arguments);
  takeFormat(command, arguments);
}

void declareProgramme(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
}

/// Everything is settled in memory first, so that a fault leaves no file.
Answer runNew(Surroundings& surroundings, const Arguments& arguments) {
  const std::string& path = arguments.description;
  const auto text = textOfFile(path);
  if (!text) return problemsOf(text);
  const Trade& trade = surroundings.trade;
  const auto described =
      readOrchard(*text, path, trade.tables, trade.programmes, surroundings.ids);
  if (!described) return tl::unexpected{described.error()};
  const auto orchard =
      settledOrchard(*described, path, trade, arguments.today, surroundings.ids);
  if (!orchard) return tl::unexpected{orchard.error()};
  const auto made = surroundings.files.create(arguments.file, *orchard);
  if (!made) return problemsOf(made);
  const Sentence said{
      phrase("Console", "\"%1\" holds %2: blocks %3, plantings %4, tasks %5, ticks %6."),
      {arguments.file,
       orchard->settings.name,
       static_cast<std::int64_t>(orchard->blocks.size()),
       static_cast<std::int64_t>(orchard->plantings.size()),
       static_cast<std::int64_t>(orchard->tasks.size()),
       static_cast<std::int64_t>(orchard->ticks.size())}};
  return Outcome{spoken(said, arguments.language) + '\n', made->notes};
}

std::vector<Cell> plantingRow(const Orchard& orchard,
                              const TradeTables& tables,
                              const Block& block,
                              const Planting& planting,
                              Season season) {
  const UnitSystem units = orchard.settings.units;
  return {block.name,
          rowsText(block.rows),
          lengthText(block.rowSpacing, units),
          planting.code,
          planting.cultivar,
          planting.rootstock,
          codeOf(planting.kind),
          planting.planted,
          rowsText(planting.rows),
          lengthText(planting.treeSpacing, units),
          std::int64_t{treesIn(orchard, planting)},
          std::int64_t{leafOf(orchard, planting, season)},
          codeOf(vigourIn(season, orchard, tables, planting).vigour)};
}

Table blocksTable(const Orchard& orchard, const TradeTables& tables, Day today) {
  Table table{{"block",
               "block_rows",
               "row_spacing",
               "planting",
               "cultivar",
               "rootstock",
               "kind",
               "planted",
               "rows",
               "tree_spacing",
               "trees",
               "leaf",
               "vigour"},
              {}};
  const Season season = seasonOf(today, orchard.settings.hemisphere());
  for (const Block* block : blocksInOrder(orchard)) {
    const auto plantings = plantingsOf(orchard, block->id);
    for (const Planting* planting : plantings)
      table.rows.push_back(plantingRow(orchard, tables, *block, *planting, season));
    if (!plantings.empty()) continue;
    std::vector<Cell> bare(table.columns.size());
    bare[0] = block->name;
    bare[1] = rowsText(block->rows);
    bare[2] = lengthText(block->rowSpacing, orchard.settings.units);
    table.rows.push_back(std::move(bare));
  }
  return table;
}

Answer runBlocks(Surroundings& surroundings, const Arguments& arguments) {
  return askFile(surroundings, arguments, [&](const OpenedOrchard& opened) -> Answer {
    const Table table =
        blocksTable(opened.orchard, surroundings.trade.tables, arguments.today);
    return Outcome{tableIn(arguments.format, table), {}};
  });
}

Answer runCopy(Surroundings& surroundings, const Arguments& arguments) {
  const Done copied = surroundings.files.copyTo(arguments.file, arguments.target);
  if (!copied) return problemsOf(copied);
  const Sentence said{phrase("Console", R"("%1" is a whole copy of "%2".)"),
                      {arguments.target, arguments.file}};
  return Outcome{spoken(said, arguments.language) + '\n', {}};
}

Answer runUndo(Surroundings& surroundings, const Arguments& arguments) {
  return changeFile(surroundings, arguments, [&](Workbench& bench) -> Checked<Sentence> {
    const auto undone = bench.undo();
    if (!undone) return problemsOf(undone);
    return Sentence{phrase("Console", "Undone: %1"),
                    {spoken(undone->name, arguments.language)}};
  });
}

Answer runRedo(Surroundings& surroundings, const Arguments& arguments) {
  return changeFile(surroundings, arguments, [&](Workbench& bench) -> Checked<Sentence> {
    const auto redone = bench.redo();
    if (!redone) return problemsOf(redone);
    return Sentence{phrase("Console", "Done again: %1"),
                    {spoken(redone->name, arguments.language)}};
  });
}

std::string codeOf(EntryKind kind) {
  if (kind == EntryKind::did) return "did";
  return kind == EntryKind::undid ? "undid" : "redid";
}

/// ISO 8601 in UTC: 2027-04-06T17:30:00Z.
std::string momentText(std::int64_t secondsSince1970) {
  const date::sys_seconds moment{std::chrono::seconds{secondsSince1970}};
  const Day day = date::floor<Days>(moment);
  const auto ofDay = (moment - day).count();
  const auto twoDigits = [](std::int64_t number) {
    return (number < 10 ? "0" : "") + std::to_string(number);
  };
  return isoText(day) + 'T' + twoDigits(ofDay / 3600) + ':' + twoDigits(ofDay / 60 % 60)
         + ':' + twoDigits(ofDay % 60) + 'Z';
}

Answer runJournal(Surroundings& surroundings, const Arguments& arguments) {
  return askFile(surroundings, arguments, [&](const OpenedOrchard& opened) -> Answer {
    const auto entries = opened.journal->recent(arguments.last);
    if (!entries) return problemsOf(entries);
    Table table{{"at", "by", "kind", "change"}, {}};
    for (const JournalEntry& entry : *entries)
      table.rows.push_back({momentText(entry.at),
                            entry.by,
                            codeOf(entry.kind),
                            spoken(entry.change.name, arguments.language)});
    return Outcome{tableIn(arguments.format, table), {}};
  });
}

/// What it finds is its result, so that it goes to standard output.
Answer runCheckProgramme(Surroundings&, const Arguments& arguments) {
  const auto text = textOfFile(arguments.file);
  if (!text) return problemsOf(text);
  const auto programme = readProgramme(*text, arguments.file);
  if (programme) {
    const auto count = static_cast<std::int64_t>(programme->operations.size());
    const Sentence said{phrase("Console",
                               "\"%1\" holds the programme \"%2\" with %3 operations; "
                               "nothing is to be mended."),
                        {arguments.file, programme->id, count}};
    return Outcome{spoken(said, arguments.language) + '\n', {}};
  }
  Outcome found{{}, {}, ExitCode::findings};
  for (const Problem& problem : programme.error())
    found.text +=
        problem.place + ": " + spoken(problem.sentence, arguments.language) + '\n';
  return found;
}

}  // namespace

std::span<const Command> commandsOfFiles() {
  static constexpr Command commands[] = {
      {"new",
       "Make an orchard file from a description in TOML",
       "new alder.topwire --from demo/orchard.toml --today 2027-04-06",
       declareNew,
       runNew},
      {"blocks",
       "List blocks with their plantings, trees, leaf and vigour",
       "blocks alder.topwire --today 2027-04-06 --csv",
       declareBlocks,
       runBlocks},
      {"copy",
       "Copy an orchard file, whole even while it is open elsewhere",
       "copy alder.topwire alder-friday.topwire",
       declareCopy,
       runCopy},
      {"undo",
       "Take back the newest change, and plan anew",
       "undo alder.topwire",
       declareHistory,
       runUndo},
      {"redo",
       "Do again the change undone last, and plan anew",
       "redo alder.topwire",
       declareHistory,
       runRedo},
      {"journal",
       "List who changed what and when, oldest first",
       "journal alder.topwire --last 20 --csv",
       declareJournal,
       runJournal},
      {"check-programme",
       "Check a programme's TOML file; every fault with its line",
       "check-programme resources/programmes/tall-spindle-apple.toml",
       declareProgramme,
       runCheckProgramme},
  };
  return commands;
}

}  // namespace topwire
