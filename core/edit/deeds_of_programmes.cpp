#include "core/edit/deed_checks.h"
#include "core/edit/programme_deeds.h"
#include "core/planning/programmes_at_hand.h"
#include "core/programme/programme_reader.h"
#include "core/programme/programme_text.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr std::size_t longestId = 60;

bool isKebab(std::string_view id) {
  const bool plain = std::ranges::all_of(id, [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
  });
  return plain && !id.empty() && id.size() <= longestId && id.front() != '-'
         && id.back() != '-';
}

void checkId(Faults& faults,
             const Orchard& orchard,
             const Programmes& shipped,
             const std::string& id) {
  if (!isKebab(id))
    faults.add("id",
               phrase("Deed",
                      "A programme's id has small letters a to z, digits and hyphens "
                      "only, such as my-spindle."));
  else if (shipped.contains(id))
    faults.add("id",
               phrase("Deed",
                      "%1 is the id of a programme that came with Topwire; choose "
                      "another."),
               {id});
  else if (orchard.programmes.contains(id))
    faults.add("id",
               phrase("Deed", "There is a programme %1 already; choose another id."),
               {id});
}

/// One wording may stand for both languages, not none.
void checkNames(Faults& faults, const Words& name) {
  checkName(faults, "name", name.en);
  checkText(faults, "name", name.es);
}

Words inBoth(const Words& name) {
  const Words tidy{withoutBlanks(name.en), withoutBlanks(name.es)};
  return {tidy.en, tidy.es.empty() ? tidy.en : tidy.es};
}

tl::unexpected<Problems> gone() {
  return tl::unexpected{
      refusal({}, phrase("Deed", "That programme is no longer in the orchard.")).error()};
}

std::string codesOf(const std::vector<const Planting*>& plantings) {
  std::string codes;
  for (const Planting* planting : plantings)
    codes += (codes.empty() ? "" : ", ") + planting->code;
  return codes;
}

Words nameOf(const OwnProgramme& own) {
  const auto read = readProgramme(own.text, own.id);
  return read ? read->name : Words{own.id, own.id};
}

Change put(const Orchard& orchard, Phrase said, OwnProgramme own) {
  const OwnProgramme* before = lookUp(orchard.programmes, own.id);
  Change change{Sentence{said, {nameOf(own)}}, {}};
  if (before != nullptr && *before == own) return change;
  change.edits.emplace_back(
      Edit<OwnProgramme>{before ? std::optional{*before} : std::nullopt, std::move(own)});
  return change;
}

}  // namespace

Checked<Change> addProgramme(const Orchard& orchard,
                             const Programmes& shipped,
                             std::string_view text,
                             const std::string& id,
                             const Words& name) {
  Faults faults;
  checkId(faults, orchard, shipped, id);
  checkNames(faults, name);
  if (faults.any()) return std::move(faults).asRefusal();
  auto copy = copyOf(text, id, inBoth(name));
  if (!copy) return tl::unexpected{std::move(copy.error())};
  return put(orchard, phrase("Deed", "Programme %1 added"), {id, std::move(*copy)});
}

Checked<Change> editProgramme(const Orchard& orchard,
                              const std::string& id,
                              const std::string& text) {
  if (!orchard.programmes.contains(id)) return gone();
  const auto read = readProgramme(text, id);
  if (!read) return tl::unexpected{read.error()};
  if (read->id != id)
    return refusal("text",
                   phrase("Deed",
                          "The text names itself %1, and this programme is %2; its id "
                          "can't change, since ticks hang on it."),
                   {read->id, id});
  return put(orchard, phrase("Deed", "Programme %1 changed"), {id, text});
}

Checked<Change> removeProgramme(const Orchard& orchard, const std::string& id) {
  const OwnProgramme* own = lookUp(orchard.programmes, id);
  if (own == nullptr) return gone();
  const auto plantings = plantingsUsing(orchard, id);
  if (!plantings.empty())
    return refusal(
        "programme",
        phrase("Deed", "%1 is used by %2; choose another programme for them first."),
        {nameOf(*own), codesOf(plantings)});
  return Change{Sentence{phrase("Deed", "Programme %1 removed"), {nameOf(*own)}},
                {Edit<OwnProgramme>{*own, std::nullopt}}};
}

Checked<Change> bringInProgramme(const Orchard& orchard,
                                 const Programmes& shipped,
                                 const std::string& text,
                                 const std::string& file) {
  const auto read = readProgramme(text, file);
  if (!read) return tl::unexpected{read.error()};
  Faults faults;
  if (!orchard.programmes.contains(read->id)) checkId(faults, orchard, shipped, read->id);
  if (faults.any()) return std::move(faults).asRefusal();
  return put(orchard, phrase("Deed", "Programme %1 brought in"), {read->id, text});
}

Checked<Change> chooseProgramme(const Orchard& orchard,
                                const Programmes& programmes,
                                const std::vector<PlantingId>& plantings,
                                const std::string& programme) {
  const auto chosen = programmes.find(programme);
  if (chosen == programmes.end())
    return refusal("programme",
                   phrase("Deed", "There is no programme %1 here; choose another."),
                   {programme});
  Change change;
  std::vector<const Planting*> changed;
  for (const PlantingId id : plantings) {
    const Planting* before = lookUp(orchard.plantings, id);
    if (before == nullptr)
      return refusal({}, phrase("Deed", "That planting is no longer in the orchard."));
    if (before->programme == programme) continue;
    Planting after = *before;
    after.programme = programme;
    change.edits.emplace_back(Edit<Planting>{*before, std::move(after)});
    changed.push_back(before);
  }
  change.name = Sentence{phrase("Deed", "%1 goes by the programme %2 now"),
                         {codesOf(changed), chosen->second.name}};
  return change;
}

std::string freshProgrammeId(const Orchard& orchard,
                             const Programmes& shipped,
                             std::string_view wanted) {
  const std::string base{wanted};
  const auto taken = [&](const std::string& id) {
    return shipped.contains(id) || orchard.programmes.contains(id);
  };
  std::string id = base;
  for (int number = 2; taken(id); ++number) id = base + '-' + std::to_string(number);
  return id;
}

}  // namespace topwire
