#include "app/console/on_file.h"
#include "app/words/resources.h"
#include "core/edit/programme_deeds.h"
#include "core/exchange/nearest.h"
#include "core/planning/plan_effect.h"
#include "core/programme/programme_reader.h"

#include <CLI/CLI.hpp>

namespace topwire {

namespace {

void declareProgrammes(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeFormat(command, arguments);
}

void declareProgramme(CLI::App& command, Arguments& arguments) {
  takeFile(command, arguments);
  takeProgramme(command, arguments);
  takeBy(command, arguments, false);
  takeToday(command, arguments);
  takeFormat(command, arguments);
}

std::string codesOf(const std::vector<const Planting*>& plantings) {
  std::string codes;
  for (const Planting* planting : plantings)
    codes += (codes.empty() ? "" : " ") + planting->code;
  return codes;
}

Answer runProgrammes(Surroundings& surroundings, const Arguments& arguments) {
  return askFile(surroundings, arguments, [&](const OpenedOrchard& opened) -> Answer {
    Table table{{"programme", "name", "from", "operations", "plantings"}, {}};
    for (const auto& [id, programme] : surroundings.programmes.all()) {
      const bool own = opened.orchard.programmes.contains(id);
      table.rows.push_back({id,
                            programme.name.in(arguments.language),
                            std::string{own ? "orchard" : "shipped"},
                            static_cast<std::int64_t>(programme.operations.size()),
                            codesOf(plantingsUsing(opened.orchard, id))});
    }
    return Outcome{tableIn(arguments.format, table), {}};
  });
}

Result<std::string> textOf(const Orchard& orchard,
                           const Programmes& programmes,
                           const std::string& id) {
  if (const auto own = orchard.programmes.find(id); own != orchard.programmes.end())
    return own->second.text;
  if (auto shipped = shippedProgrammeText(id)) return *shipped;
  std::vector<std::string> ids;
  for (const auto& [known, programme] : programmes) ids.push_back(known);
  const std::string nearest = nearestName(id, ids);
  return refuse(
      {nearest.empty()
           ? phrase("Console",
                    "There is no programme \"%1\"; `topwire-cli programmes` "
                    "lists them.")
           : phrase("Console", R"(There is no programme "%1"; the nearest is "%2".)"),
       {id, nearest}},
      "programme");
}

Answer runExport(Surroundings& surroundings, const Arguments& arguments) {
  return askFile(surroundings, arguments, [&](const OpenedOrchard& opened) -> Answer {
    const auto text = textOf(
        opened.orchard, surroundings.programmes.all(), arguments.programme.exported);
    if (!text) return problemsOf(text);
    return Outcome{*text, {}};
  });
}

std::vector<Cell> rowOf(const Orchard& orchard, const PlanDifference& difference) {
  const auto kind = [&]() -> std::string {
    switch (difference.kind) {
      case PlanDifference::Kind::appeared:
        return "comes";
      case PlanDifference::Kind::dropped:
        return "goes";
      case PlanDifference::Kind::keptUnasked:
        return "stays-for-ticks";
      case PlanDifference::Kind::moved:
        break;
    }
    return "moves";
  };
  return {taskText(orchard, difference.task),
          kind(),
          std::int64_t{difference.opensShift},
          std::int64_t{difference.closesShift}};
}

std::string lineOf(const PlanEffect& effect, Language language) {
  std::string line;
  for (const Sentence& part : summaryOf(effect))
    line += (line.empty() ? "" : ", ") + spoken(part, language);
  return line + ".\n";
}

Answer runTry(Surroundings& surroundings, const Arguments& arguments) {
  const std::string& path = arguments.programme.tried;
  const auto text = textOfFile(path);
  if (!text) return problemsOf(text);
  const auto programme = readProgramme(*text, path);
  if (!programme) return tl::unexpected{programme.error()};
  return askFile(surroundings, arguments, [&](const OpenedOrchard& opened) -> Answer {
    const Orchard& orchard = opened.orchard;
    const PlanEffect effect =
        effectOf(orchard, surroundings.trade, *programme, arguments.today);
    Table table{{"task", "change", "opens_later", "closes_later"}, {}};
    for (const PlanDifference& difference : effect.differences)
      table.rows.push_back(rowOf(orchard, difference));
    Outcome outcome;
    if (arguments.format == Format::text)
      outcome.text = lineOf(effect, arguments.language);
    if (arguments.format != Format::text || !table.rows.empty())
      outcome.text += tableIn(arguments.format, table);
    if (plantingsUsing(orchard, programme->id).empty())
      outcome.notes.emplace_back(
          phrase("Console", "No planting goes by the programme %1."),
          std::vector<Value>{programme->id});
    return outcome;
  });
}

Checked<Change> copied(const Orchard& orchard,
                       const ProgrammesAtHand& programmes,
                       const ProgrammeArguments& wanted) {
  const auto text = textOf(orchard, programmes.all(), wanted.copy);
  if (!text) return problemsOf(text);
  const std::string id = wanted.as.empty() ? freshProgrammeId(
                             orchard, programmes.shipped(), "my-" + wanted.copy)
                                           : wanted.as;
  return addProgramme(
      orchard, programmes.shipped(), *text, id, {wanted.name, wanted.nameInSpanish});
}

Checked<Change> chosen(const Orchard& orchard,
                       const ProgrammesAtHand& programmes,
                       const ProgrammeArguments& wanted) {
  std::vector<PlantingId> plantings;
  for (const std::string& code : wanted.plantings) {
    const auto planting = findPlanting(orchard, code);
    if (!planting) return problemsOf(planting);
    plantings.push_back((*planting)->id);
  }
  return chooseProgramme(orchard, programmes.all(), plantings, wanted.use);
}

Checked<Change> broughtIn(const Orchard& orchard,
                          const ProgrammesAtHand& programmes,
                          const std::string& path) {
  const auto text = textOfFile(path);
  if (!text) return problemsOf(text);
  return bringInProgramme(orchard, programmes.shipped(), *text, path);
}

Checked<Change> changeFor(const Orchard& orchard,
                          const ProgrammesAtHand& programmes,
                          const ProgrammeArguments& wanted) {
  if (!wanted.copy.empty()) return copied(orchard, programmes, wanted);
  if (!wanted.use.empty()) return chosen(orchard, programmes, wanted);
  if (!wanted.broughtIn.empty()) return broughtIn(orchard, programmes, wanted.broughtIn);
  return removeProgramme(orchard, wanted.removed);
}

Answer runProgramme(Surroundings& surroundings, const Arguments& arguments) {
  const ProgrammeArguments& wanted = arguments.programme;
  if (!wanted.exported.empty()) return runExport(surroundings, arguments);
  if (!wanted.tried.empty()) return runTry(surroundings, arguments);
  return changeFile(surroundings, arguments, [&](Workbench& bench) {
    return perform(bench, changeFor(bench.orchard(), surroundings.programmes, wanted));
  });
}

}  // namespace

std::span<const Command> commandsOfProgrammes() {
  static constexpr Command commands[] = {
      {"programmes",
       "List the programmes, shipped and the orchard's own, with their plantings",
       "programmes alder.topwire --csv",
       declareProgrammes,
       runProgrammes},
      {"programme",
       "Copy, print, bring in, choose, try or remove a programme",
       "programme alder.topwire --copy tall-spindle-apple --as my-spindle --name \"Our "
       "spindle\"",
       declareProgramme,
       runProgramme},
  };
  return commands;
}

}  // namespace topwire
