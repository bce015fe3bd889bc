#include "core/edit/deed_checks.h"
#include "core/edit/deeds.h"
#include "core/exchange/nearest.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr int mostYearsAhead = 60;

template <class Entry>
void checkInTable(Faults& faults,
                  const std::string& place,
                  const std::string& name,
                  const std::vector<Entry>& table) {
  std::vector<std::string> names;
  names.reserve(table.size());
  for (const Entry& entry : table) names.push_back(entry.name);
  if (std::ranges::find(names, name) != names.end()) return;
  if (name.empty())
    return faults.add(place, phrase("Deed", "Nothing is chosen here; choose a name."));
  const std::string nearest = nearestName(name, names);
  if (nearest.empty())
    faults.add(place,
               phrase("Deed", "%1 is not in the table; choose a name from the list."),
               {name});
  else
    faults.add(
        place, phrase("Deed", "%1 is not in the table. Is it %2?"), {name, nearest});
}

bool isCodeLetter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
}

void checkCode(Faults& faults, const Orchard& orchard, const Planting& planting) {
  if (planting.code.empty())
    return faults.add("code",
                      phrase("Deed", "A short code is missing, such as creek-1-gala."));
  checkText(faults, "code", planting.code);
  if (!std::ranges::all_of(planting.code, isCodeLetter))
    faults.add(
        "code",
        phrase("Deed", "A code has lower-case letters a to z, digits and hyphens only."));
  for (const auto& [id, other] : orchard.plantings)
    if (id != planting.id && folded(other.code) == folded(planting.code))
      faults.add(
          "code", phrase("Deed", "The code %1 is taken; choose another."), {other.code});
}

void checkPlanted(Faults& faults, const Orchard& orchard, Day planted) {
  const int last = yearOf(orchard.settings.recordsFrom) + mostYearsAhead;
  if (yearOf(planted) >= 1900 && yearOf(planted) <= last) return;
  faults.add(
      "planted",
      phrase("Deed", "Planted on %1 can't be right; choose a day from 1900 to %2."),
      {planted, std::int64_t{last}});
}

void checkOverlap(Faults& faults, const Planting& planting, const Planting& other) {
  const RowSet shared = planting.rows.inCommonWith(other.rows);
  if (shared.empty()) return;
  faults.add(
      "rows",
      counted(shared.count(),
              phrase("Deed",
                     "Row %1 belongs to planting %2 already; choose other rows, or "
                     "enter this as a replant."),
              phrase("Deed",
                     "Rows %1 belong to planting %2 already; choose other rows, "
                     "or enter this as a replant.")),
      {rowsText(shared), other.code});
}

bool isReplant(const Planting& planting) {
  return planting.kind == PlantingKind::replant;
}

/// Rows of the block's plantings that are no replants, with `planting` as it would be.
RowSet hostRows(const Orchard& orchard, BlockId block, const Planting& planting) {
  RowSet rows;
  for (const auto& [id, other] : orchard.plantings)
    if (other.block == block && id != planting.id && !isReplant(other))
      rows = rows.with(other.rows);
  if (planting.block == block && !isReplant(planting)) rows = rows.with(planting.rows);
  return rows;
}

void checkAgainstOthers(Faults& faults,
                        const Orchard& orchard,
                        const Planting& planting) {
  if (isReplant(planting)) {
    checkRowsWithin(faults,
                    planting.rows,
                    hostRows(orchard, planting.block, planting),
                    phrase("Deed",
                           "Row %1 holds no older planting, which a replant fills up; "
                           "rows that do: %2."),
                    phrase("Deed",
                           "Rows %1 hold no older planting, which a replant fills up; "
                           "rows that do: %2."));
    return;
  }
  for (const auto& [id, other] : orchard.plantings)
    if (other.block == planting.block && id != planting.id && !isReplant(other))
      checkOverlap(faults, planting, other);
}

void checkRows(Faults& faults, const Orchard& orchard, const Planting& planting) {
  const Block* block = lookUp(orchard.blocks, planting.block);
  if (!block)
    return faults.add("rows", phrase("Deed", "Its block is no longer in the orchard."));
  if (planting.rows.empty())
    return faults.add(
        "rows",
        phrase("Deed", "A planting needs at least one row; type them like 1-12, 15."));
  checkRowsWithin(faults,
                  planting.rows,
                  block->rows,
                  phrase("Deed", "Row %1 is not in this block. It has rows %2."),
                  phrase("Deed", "Rows %1 are not in this block. It has rows %2."));
  checkAgainstOthers(faults, orchard, planting);
}

void checkCount(Faults& faults, std::optional<int> count, int most) {
  if (count && (*count < 1 || *count > most))
    faults.add("trees",
               phrase("Deed", "A count of trees lies between 1 and %1; check it."),
               {std::int64_t{most}});
}

void checkTrees(Faults& faults, const Orchard& orchard, const Planting& planting) {
  const bool spaced = planting.treeSpacing >= Length::millimetres(100)
                      && planting.treeSpacing <= Length::metres(20);
  if (!spaced)
    faults.add("treeSpacing",
               phrase("Deed",
                      "Trees stand between 0.1 and 20 m apart (0.3 and 65 ft); check the "
                      "tree spacing."));
  checkCount(faults, planting.trees, 1'000'000);
  checkCount(faults, planting.treesPerRow, 10'000);
  if (planting.trees || planting.treesPerRow) return;
  const Block* block = lookUp(orchard.blocks, planting.block);
  if (!block || !block->rowLength)
    faults.add("trees",
               phrase("Deed",
                      "Its trees can't be counted; give the trees in a row, or the row "
                      "length of the block."));
  else if (*block->rowLength < planting.treeSpacing)
    faults.add("trees",
               phrase("Deed",
                      "A row is shorter than the tree spacing, which leaves no tree; "
                      "check both."));
}

Faults checkPlanting(const Orchard& orchard,
                     const TradeTables& tables,
                     const Planting& planting) {
  Faults faults;
  checkCode(faults, orchard, planting);
  checkInTable(faults, "cultivar", planting.cultivar, tables.cultivars);
  checkInTable(faults, "rootstock", planting.rootstock, tables.rootstocks);
  checkPlanted(faults, orchard, planting.planted);
  checkRows(faults, orchard, planting);
  checkTrees(faults, orchard, planting);
  checkNotes(faults, "vigour", planting.vigourReason);
  checkName(faults, "programme", planting.programme);
  return faults;
}

void checkTicksKept(Faults& faults, const Orchard& orchard, const Planting& planting) {
  const RowSet lost = tickedRows(orchard, planting.id).without(planting.rows);
  if (lost.empty()) return;
  faults.add("rows",
             counted(lost.count(),
                     phrase("Deed", "Row %1 has ticks of this planting; keep it."),
                     phrase("Deed", "Rows %1 have ticks of this planting; keep them.")),
             {rowsText(lost)});
}

/// Replants must still lie in older plantings' rows once this one has changed.
void checkReplantsHosted(Faults& faults,
                         const Orchard& orchard,
                         const Planting& before,
                         const Planting& planting) {
  const RowSet hosts = hostRows(orchard, before.block, planting);
  for (const auto& [id, other] : orchard.plantings) {
    if (other.block != before.block || id == planting.id || !isReplant(other)) continue;
    const RowSet lost = other.rows.without(hosts);
    if (lost.empty()) continue;
    faults.add("rows",
               phrase("Deed", "Planting %1 is a replant in rows %2; keep those here."),
               {other.code, rowsText(lost)});
  }
}

void checkStaysInBlock(Faults& faults,
                       const Orchard& orchard,
                       const Planting& before,
                       const Planting& planting) {
  if (planting.block == before.block || !hasTicks(orchard, planting.id)) return;
  faults.add({},
             phrase("Deed", "%1 has ticks on record and can't move to another block."),
             {calledName(orchard, before)});
}

Planting tidied(Planting planting) {
  planting.code = withoutBlanks(planting.code);
  planting.cultivar = withoutBlanks(planting.cultivar);
  planting.rootstock = withoutBlanks(planting.rootstock);
  planting.vigourReason = withoutBlanks(planting.vigourReason);
  return planting;
}

}  // namespace

Checked<Change> addPlanting(const Orchard& orchard,
                            const TradeTables& tables,
                            const Planting& planting) {
  const Planting tidy = tidied(planting);
  return checkPlanting(orchard, tables, tidy)
      .orElse({Sentence{phrase("Deed", "Planting %1 added"), {calledName(orchard, tidy)}},
               {Edit<Planting>{std::nullopt, tidy}}});
}

Checked<Change> editPlanting(const Orchard& orchard,
                             const TradeTables& tables,
                             const Planting& planting) {
  const Planting* before = lookUp(orchard.plantings, planting.id);
  if (!before)
    return refusal({}, phrase("Deed", "That planting is no longer in the orchard."));
  const Planting tidy = tidied(planting);
  Faults faults = checkPlanting(orchard, tables, tidy);
  checkStaysInBlock(faults, orchard, *before, tidy);
  checkTicksKept(faults, orchard, tidy);
  checkReplantsHosted(faults, orchard, *before, tidy);
  return std::move(faults).orElse(
      {Sentence{phrase("Deed", "Planting %1 changed"), {calledName(orchard, tidy)}},
       {Edit<Planting>{*before, tidy}}});
}

}  // namespace topwire
