#include "core/edit/deed_checks.h"
#include "core/edit/weather_deeds.h"
#include "core/exchange/nearest.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace topwire {

namespace {

std::vector<std::string> knownCultivars(const Orchard& orchard,
                                        const TradeTables& tables) {
  std::vector<std::string> names;
  for (const Cultivar& cultivar : tables.cultivars) names.push_back(cultivar.name);
  for (const auto& [id, planting] : orchard.plantings) names.push_back(planting.cultivar);
  return names;
}

/// The known name as it is spelled in the tables; as typed where it is none.
std::string spelled(const std::string& typed, const std::vector<std::string>& known) {
  const std::string name = withoutBlanks(typed);
  if (std::ranges::find(known, name) != known.end()) return name;
  const auto found = std::ranges::find_if(
      known, [&](const std::string& other) { return folded(other) == folded(name); });
  return found == known.end() ? name : *found;
}

void checkCultivar(Faults& faults,
                   const std::string& name,
                   const std::vector<std::string>& known) {
  if (std::ranges::find(known, name) != known.end()) return;
  const std::string nearest = nearestName(name, known);
  if (name.empty())
    faults.add("cultivar", phrase("Deed", "Nothing is chosen here; choose a name."));
  else if (nearest.empty())
    faults.add("cultivar",
               phrase("Deed", "%1 is not in the table; choose a name from the list."),
               {name});
  else
    faults.add(
        "cultivar", phrase("Deed", "%1 is not in the table. Is it %2?"), {name, nearest});
}

void checkPastDay(Faults& faults,
                  const Orchard& orchard,
                  const PastStage& past,
                  Day today) {
  const Stage* stage = stageByCode(past.bbch);
  if (past.day > today)
    faults.add("day",
               phrase("Deed", "%1 is still to come; a past date is one that was seen."),
               {past.day});
  else if (yearOf(past.day) < 1700)
    faults.add("day",
               phrase("Deed", "A date in the year %1 can't be right; check it."),
               {std::int64_t{yearOf(past.day)}});
  else if (stage)
    checkSeasonOf(faults, orchard, *stage, past.day);
}

Faults checkPast(const Orchard& orchard,
                 const PastStage& past,
                 const std::vector<std::string>& known,
                 Day today) {
  Faults faults;
  checkCultivar(faults, past.cultivar, known);
  if (!stageByCode(past.bbch)) addUnknownStage(faults, "stage", past.bbch);
  checkPastDay(faults, orchard, past, today);
  return faults;
}

/// Of which an orchard has one date.
using Event = std::tuple<std::string, int, Season>;

Event eventOf(const Orchard& orchard, const PastStage& past) {
  return {past.cultivar, past.bbch, seasonOf(past.day, orchard.settings.hemisphere())};
}

Edit<PastStage> editFor(const Orchard& orchard, PastStage past) {
  const Event event = eventOf(orchard, past);
  for (const auto& [id, other] : orchard.pastStages) {
    if (eventOf(orchard, other) != event) continue;
    past.id = id;
    return {other, past};
  }
  return {std::nullopt, past};
}

Sentence about(Phrase phrase, const PastStage& past) {
  const Stage* stage = stageByCode(past.bbch);
  return {phrase, {stage ? stage->name : Words{}, past.cultivar, past.day}};
}

Sentence nameOfImport(std::int64_t count, const std::string& fileName) {
  if (count == 0) return {phrase("Deed", "No new dates in %1"), {fileName}};
  return {counted(count,
                  phrase("Deed", "%1 past date from %2 brought in"),
                  phrase("Deed", "%1 past dates from %2 brought in")),
          {count, fileName}};
}

}  // namespace

Checked<Change> addPastStage(const Orchard& orchard,
                             const TradeTables& tables,
                             const PastStage& past,
                             Day today) {
  const auto known = knownCultivars(orchard, tables);
  PastStage tidy = past;
  tidy.cultivar = spelled(past.cultivar, known);
  return checkPast(orchard, tidy, known, today)
      .orElse({about(phrase("Deed", "Past date noted: %1 of %2 on %3"), tidy),
               {editFor(orchard, tidy)}});
}

Checked<Change> removePastStage(const Orchard& orchard, PastStageId past) {
  const PastStage* held = lookUp(orchard.pastStages, past);
  if (!held) return refusal({}, phrase("Deed", "That date is no longer in the orchard."));
  return Change{about(phrase("Deed", "Past date removed: %1 of %2 on %3"), *held),
                {Edit<PastStage>{*held, std::nullopt}}};
}

Checked<Change> importPastStages(const Orchard& orchard,
                                 const TradeTables& tables,
                                 std::span<const PlacedPastStage> dates,
                                 const std::string& fileName,
                                 Day today) {
  if (dates.empty())
    return refusal(fileName, phrase("Deed", "There is no date in this file."));
  const auto known = knownCultivars(orchard, tables);
  Problems problems;
  std::map<Event, Edit<PastStage>> edits;
  for (const auto& [past, place] : dates) {
    PastStage tidy = past;
    tidy.cultivar = spelled(past.cultivar, known);
    for (Problem& problem : checkPast(orchard, tidy, known, today).take())
      problems.push_back({std::move(problem.sentence), place, {}});
    edits.insert_or_assign(eventOf(orchard, tidy), editFor(orchard, tidy));
  }
  if (!problems.empty()) return tl::unexpected{std::move(problems)};
  Change change;
  for (const auto& [event, edit] : edits)
    if (edit.before != edit.after) change.edits.emplace_back(edit);
  change.name = nameOfImport(static_cast<std::int64_t>(change.edits.size()), fileName);
  return change;
}

}  // namespace topwire
