#include "core/edit/deed_checks.h"
#include "core/edit/deeds.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace topwire {

namespace {

const std::array<Words, 12>& monthNames() {
  static const std::array<Words, 12> names{{{"January", "enero"},
                                            {"February", "febrero"},
                                            {"March", "marzo"},
                                            {"April", "abril"},
                                            {"May", "mayo"},
                                            {"June", "junio"},
                                            {"July", "julio"},
                                            {"August", "agosto"},
                                            {"September", "septiembre"},
                                            {"October", "octubre"},
                                            {"November", "noviembre"},
                                            {"December", "diciembre"}}};
  return names;
}

/// Wider than any monthly normal measured where people live.
bool isTemperature(double degrees) {
  return std::isfinite(degrees) && degrees >= -60 && degrees <= 60;
}

void checkNormals(Faults& faults, const MonthlyNormals& normals) {
  if (normals == MonthlyNormals{})
    faults.add("normals",
               phrase("Deed",
                      "The monthly temperatures are missing; choose a station or type "
                      "them in."));
  for (std::size_t month = 0; month < 12; ++month) {
    const double low = normals.minimum[month];
    const double high = normals.maximum[month];
    if (!isTemperature(low) || !isTemperature(high))
      faults.add("normals",
                 phrase("Deed",
                        "A temperature of %1 is not between -60 and 60 degrees Celsius; "
                        "check it."),
                 {monthNames()[month]});
    else if (low > high)
      faults.add("normals",
                 phrase("Deed",
                        "In %1 the minimum (%2) is above the maximum (%3); swap or "
                        "correct them."),
                 {monthNames()[month], Figure{low, 1}, Figure{high, 1}});
  }
}

void checkPlace(Faults& faults, const Settings& settings) {
  if (!(std::abs(settings.latitude) <= 66))
    faults.add("latitude",
               phrase("Deed",
                      "A latitude for apples lies between -66 and 66 degrees; south of "
                      "the equator is negative."));
  checkElevation(faults, "elevation", settings.elevation);
  checkElevation(faults, "stationElevation", settings.stationElevation);
}

void checkSameHemisphere(Faults& faults,
                         const Orchard& orchard,
                         const Settings& settings) {
  if (orchard.ticks.empty() || settings.hemisphere() == orchard.settings.hemisphere())
    return;
  faults.add("latitude",
             phrase("Deed",
                    "Work is ticked already, and its seasons would change across the "
                    "equator; keep the sign of the latitude."));
}

void checkRecordsFrom(Faults& faults, Day day) {
  if (yearOf(day) < 1900 || yearOf(day) > 2200)
    faults.add(
        "recordsFrom",
        phrase("Deed", "Records can't begin on %1; choose a day between 1900 and 2200."),
        {day});
}

void checkSpacing(Faults& faults, Length spacing) {
  if (spacing < Length::millimetres(500) || spacing > Length::metres(20))
    faults.add("rowSpacing",
               phrase("Deed",
                      "Rows stand between 0.5 and 20 m apart (1.7 and 65 ft); check the "
                      "row spacing."));
}

void checkRowLength(Faults& faults, const Block& block) {
  if (!block.rowLength) return;
  if (*block.rowLength < Length::metres(1) || *block.rowLength > Length::metres(3000))
    faults.add("rowLength",
               phrase("Deed",
                      "A row is between 1 and 3,000 m long (3 and 9,800 ft); check the "
                      "row length."));
}

void checkCorrection(Faults& faults, const std::string& place, double degrees) {
  if (!(std::abs(degrees) <= 10))
    faults.add(place,
               phrase("Deed",
                      "A correction is 10 degrees Celsius (18 Fahrenheit) at most, up or "
                      "down; check it."));
}

void checkFirstLeafDelay(Faults& faults, int days) {
  if (days < 0 || days > 60)
    faults.add("firstLeafDelay",
               phrase("Deed",
                      "Trees in their first leaf bloom 0 to 60 days after the others; "
                      "check the days."));
}

void checkBetween(Faults& faults,
                  const std::string& place,
                  int value,
                  int least,
                  int most,
                  Phrase said) {
  if (value < least || value > most)
    faults.add(place, said, {std::int64_t{least}, std::int64_t{most}});
}

void checkWorkingDay(Faults& faults, const Settings& settings) {
  if (std::ranges::find(settings.workdays, true) == settings.workdays.end())
    faults.add(
        "workdays",
        phrase("Deed", "Work is done on one day of the week at least; choose it."));
  constexpr int lastStart = 23 * 60 + 59;
  if (settings.startMinute < 0 || settings.startMinute > lastStart)
    faults.add("start", phrase("Deed", "Work begins between 00:00 and 23:59."));
  const Phrase moving =
      phrase("Deed", "Going to another block takes %1 to %2 minutes; check it.");
  checkBetween(faults, "moveMinutes", settings.moveMinutes, 0, 240, moving);
  checkBetween(faults,
               "moveMinutesPerKm",
               settings.moveMinutesPerKm,
               0,
               60,
               phrase("Deed", "A kilometre takes %1 to %2 minutes; check it."));
  checkBetween(faults,
               "keepTogether",
               settings.keepTogether,
               0,
               100,
               phrase("Deed", "How much crews are kept together is %1 to %2 percent."));
  checkBetween(faults,
               "gangAtMost",
               settings.gangAtMost,
               1,
               200,
               phrase("Deed", "People who move together are %1 to %2; check it."));
}

/// Both coordinates or neither; their latitude near the orchard's, which finds a sign or
/// a swap gone wrong.
void checkCoordinates(Faults& faults, const Orchard& orchard, const Block& block) {
  if (block.latitude.has_value() != block.longitude.has_value())
    return faults.add(
        block.latitude ? "longitude" : "latitude",
        phrase("Deed",
               "A place on the map takes latitude and longitude; give both or neither."));
  if (!block.latitude) return;
  if (!(std::abs(*block.latitude - orchard.settings.latitude) <= 1))
    faults.add("latitude",
               phrase("Deed",
                      "A block lies within one degree of the orchard's latitude, %1; "
                      "check it, and its sign."),
               {Figure{orchard.settings.latitude, 2}});
  if (!(std::abs(*block.longitude) <= 180))
    faults.add("longitude",
               phrase("Deed",
                      "A longitude lies between -180 and 180 degrees; west of Greenwich "
                      "is negative."));
}

void checkBlockName(Faults& faults, const Orchard& orchard, const Block& block) {
  checkName(faults, "name", block.name);
  for (const auto& [id, other] : orchard.blocks)
    if (id != block.id && folded(other.name) == folded(block.name))
      faults.add(
          "name",
          phrase("Deed", "There is a block called %1 already; choose another name."),
          {other.name});
}

void checkPlantingsInside(Faults& faults, const Orchard& orchard, const Block& block) {
  for (const auto& [id, planting] : orchard.plantings) {
    if (planting.block != block.id) continue;
    const RowSet left = planting.rows.without(block.rows);
    if (left.empty()) continue;
    faults.add("rows",
               counted(left.count(),
                       phrase("Deed",
                              "Row %1 holds trees of planting %2; keep it, or change the "
                              "planting first."),
                       phrase("Deed",
                              "Rows %1 hold trees of planting %2; keep them, or change "
                              "the planting first.")),
               {rowsText(left), planting.code});
  }
}

Faults checkBlock(const Orchard& orchard, const Block& block) {
  Faults faults;
  checkBlockName(faults, orchard, block);
  if (block.rows.empty())
    faults.add(
        "rows",
        phrase("Deed", "A block needs at least one row; type them like 1-12, 15."));
  checkSpacing(faults, block.rowSpacing);
  checkRowLength(faults, block);
  if (block.elevation) checkElevation(faults, "elevation", *block.elevation);
  checkCorrection(faults, "minimumCorrection", block.minimumCorrection);
  checkCorrection(faults, "maximumCorrection", block.maximumCorrection);
  checkBetween(faults,
               "workersAtMost",
               block.workersAtMost.value_or(1),
               1,
               999,
               phrase("Deed", "Between %1 and %2 people can work in a block at a time."));
  checkCoordinates(faults, orchard, block);
  checkNotes(faults, "notes", block.notes);
  return faults;
}

Block tidied(Block block) {
  block.name = withoutBlanks(block.name);
  return block;
}

constexpr Phrase blockIsGone = phrase("Deed", "That block is no longer in the orchard.");

/// What is known of a planting goes with it.
void removePlanting(Change& change, const Orchard& orchard, const Planting& planting) {
  for (const auto& [key, mark] : orchard.marks)
    if (key.planting == planting.id)
      change.edits.emplace_back(Edit<TaskMark>{mark, std::nullopt});
  for (const auto& [id, seen] : orchard.observations)
    if (seen.planting == planting.id)
      change.edits.emplace_back(Edit<Observation>{seen, std::nullopt});
  for (const auto& [id, measurement] : orchard.measurements)
    if (measurement.planting == planting.id)
      change.edits.emplace_back(Edit<Measurement>{measurement, std::nullopt});
  for (const auto& [of, target] : orchard.targets)
    if (of.planting == planting.id)
      change.edits.emplace_back(Edit<SeasonTarget>{target, std::nullopt});
  for (const auto& [id, pin] : orchard.pins)
    if (pin.task.planting == planting.id)
      change.edits.emplace_back(Edit<Pin>{pin, std::nullopt});
  for (const auto& [place, job] : orchard.plannedJobs)
    if (job.task.planting == planting.id)
      change.edits.emplace_back(Edit<PlannedJob>{job, std::nullopt});
  change.edits.emplace_back(Edit<Planting>{planting, std::nullopt});
}

void checkUnticked(Faults& faults, const Orchard& orchard, const Planting& planting) {
  if (!hasTicks(orchard, planting.id)) return;
  faults.add({},
             phrase("Deed",
                    "%1 has ticks on record and stays, so that they keep their place. "
                    "Set its open tasks aside instead."),
             {calledName(orchard, planting)});
}

void checkNoReplantsIn(Faults& faults, const Orchard& orchard, const Planting& host) {
  if (host.kind == PlantingKind::replant) return;
  for (const auto& [id, other] : orchard.plantings) {
    if (other.block != host.block || other.kind != PlantingKind::replant) continue;
    if (other.rows.inCommonWith(host.rows).empty()) continue;
    faults.add({},
               phrase("Deed", "Planting %1 is a replant in these rows; delete it first."),
               {other.code});
  }
}

}  // namespace

Checked<Change> changeSettings(const Orchard& orchard, const Settings& settings) {
  Faults faults;
  Settings tidy = settings;
  tidy.name = withoutBlanks(settings.name);
  tidy.station = withoutBlanks(settings.station);
  checkName(faults, "name", tidy.name);
  checkName(faults, "station", tidy.station);
  checkPlace(faults, tidy);
  checkSameHemisphere(faults, orchard, tidy);
  checkNormals(faults, tidy.normals);
  checkRecordsFrom(faults, tidy.recordsFrom);
  checkFirstLeafDelay(faults, tidy.firstLeafDelayDays);
  checkWorkingDay(faults, tidy);
  return std::move(faults).orElse({Sentence{phrase("Deed", "Orchard settings changed")},
                                   {Edit<Settings>{orchard.settings, tidy}}});
}

Checked<Change> addBlock(const Orchard& orchard, const Block& block) {
  const Block tidy = tidied(block);
  return checkBlock(orchard, tidy)
      .orElse({Sentence{phrase("Deed", "Block %1 added"), {tidy.name}},
               {Edit<Block>{std::nullopt, tidy}}});
}

Checked<Change> editBlock(const Orchard& orchard, const Block& block) {
  const Block* before = lookUp(orchard.blocks, block.id);
  if (!before) return refusal({}, blockIsGone);
  const Block tidy = tidied(block);
  Faults faults = checkBlock(orchard, tidy);
  if (!tidy.rows.empty()) checkPlantingsInside(faults, orchard, tidy);
  return std::move(faults).orElse(
      {Sentence{phrase("Deed", "Block %1 changed"), {tidy.name}},
       {Edit<Block>{*before, tidy}}});
}

Checked<Change> deleteBlock(const Orchard& orchard, BlockId block) {
  const Block* before = lookUp(orchard.blocks, block);
  if (!before) return refusal({}, blockIsGone);
  Faults faults;
  Change change{Sentence{phrase("Deed", "Block %1 deleted"), {before->name}}, {}};
  for (const auto& [id, planting] : orchard.plantings) {
    if (planting.block != block) continue;
    checkUnticked(faults, orchard, planting);
    removePlanting(change, orchard, planting);
  }
  for (const auto& [id, closure] : orchard.closures)
    if (closure.block == block)
      change.edits.emplace_back(Edit<BlockClosure>{closure, std::nullopt});
  change.edits.emplace_back(Edit<Block>{*before, std::nullopt});
  return std::move(faults).orElse(std::move(change));
}

Checked<Change> deletePlanting(const Orchard& orchard, PlantingId planting) {
  const Planting* before = lookUp(orchard.plantings, planting);
  if (!before)
    return refusal({}, phrase("Deed", "That planting is no longer in the orchard."));
  Faults faults;
  checkUnticked(faults, orchard, *before);
  checkNoReplantsIn(faults, orchard, *before);
  Change change{
      Sentence{phrase("Deed", "Planting %1 deleted"), {calledName(orchard, *before)}},
      {}};
  removePlanting(change, orchard, *before);
  return std::move(faults).orElse(std::move(change));
}

}  // namespace topwire
