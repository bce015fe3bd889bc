#include "core/edit/deed_checks.h"
#include "core/edit/target_deeds.h"
#include "core/orchard/measure_text.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr Phrase plantingIsGone =
    phrase("Deed", "That planting is no longer in the orchard.");
constexpr std::size_t mostValues = 500;
constexpr int mostFruit = 1000;
constexpr int mostLeaf = 60;

/// What a value may plausibly be, wide enough for a whip and for a tree left to itself;
/// it is the slip of a decimal point that is to be caught.
struct Plausible {
  std::int64_t least;
  std::int64_t most;
};

Plausible plausible(Measure measure) {
  constexpr std::int64_t millimetre = 1'000;
  switch (measure) {
    case Measure::trunkDiameter:
      return {4 * millimetre, 250 * millimetre};
    case Measure::trunkGirth:
      return {12 * millimetre, 785 * millimetre};
    case Measure::leaderHeight:
      return {300 * millimetre, 8'000 * millimetre};
    case Measure::leaderGrowth:
    case Measure::shootGrowth:
      return {0, 2'500 * millimetre};
    case Measure::fruitPerTree:
      return {0, mostFruit};
    case Measure::spaceFilled:
      return {0, 150};
    case Measure::missingTrees:
      break;
  }
  return {0, 100'000};
}

void checkValues(Faults& faults, const Orchard& orchard, const Measurement& taken) {
  if (taken.values.empty())
    return faults.add(
        "values", phrase("Deed", "No value is typed; type one for each sample tree."));
  if (taken.values.size() > mostValues)
    faults.add("values",
               phrase("Deed", "That is more than %1 values; type them in parts."),
               {static_cast<std::int64_t>(mostValues)});
  if (taken.measure == Measure::missingTrees && taken.values.size() > 1)
    faults.add("values",
               phrase("Deed",
                      "Missing trees are counted over the whole planting; type one "
                      "number."));
  const Plausible span = plausible(taken.measure);
  const UnitSystem units = orchard.settings.units;
  const auto text = [&](std::int64_t value) {
    return measuredText(static_cast<double>(value), taken.measure, units);
  };
  for (const std::int64_t value : taken.values) {
    if (span.least <= value && value <= span.most) continue;
    return faults.add(
        "values",
        phrase("Deed",
               "%2 is not likely for %1, which lies between %3 and %4; check it and its "
               "unit."),
        {nameOf(taken.measure), text(value), text(span.least), text(span.most)});
  }
}

void checkMissing(Faults& faults,
                  const Orchard& orchard,
                  const Planting& planting,
                  const Measurement& taken) {
  if (taken.measure != Measure::missingTrees || taken.values.empty()) return;
  const int trees = treesIn(orchard, planting);
  if (trees == 0 || taken.values.front() <= trees) return;
  faults.add("values",
             phrase("Deed", "The planting has %1 trees, and more are missing; check it."),
             {std::int64_t{trees}});
}

void checkDay(Faults& faults, const Planting& planting, Day day) {
  if (day < planting.planted)
    faults.add("day",
               phrase("Deed", "These trees were planted on %1, after %2; check the day."),
               {planting.planted, day});
  else if (yearOf(day) > yearOf(planting.planted) + mostLeaf)
    faults.add("day",
               phrase("Deed",
                      "On %2 these trees, planted on %1, would be older than any such "
                      "planting; check the day."),
               {planting.planted, day});
}

void checkFirstOfDay(Faults& faults, const Orchard& orchard, const Measurement& taken) {
  for (const auto& [id, other] : orchard.measurements) {
    if (id == taken.id || other.planting != taken.planting) continue;
    if (other.measure != taken.measure || other.day != taken.day) continue;
    return faults.add("day",
                      phrase("Deed",
                             "For %2 there is %1 on record already; remove that first, "
                             "and type all trees of the day together."),
                      {nameOf(taken.measure), taken.day});
  }
}

/// A target without a word in it.
bool saysNothing(const SeasonTarget& target) {
  return !target.vigour && !target.fruitFrom && !target.fruitTo && target.note.empty();
}

void checkFruit(Faults& faults, const SeasonTarget& target) {
  if (target.fruitFrom.has_value() != target.fruitTo.has_value())
    return faults.add(
        "fruit",
        phrase("Deed", "Fruit to keep is a range; give its lower and its upper end."));
  if (!target.fruitFrom) return;
  if (*target.fruitFrom < 0 || *target.fruitTo > mostFruit)
    faults.add("fruit",
               phrase("Deed", "Fruit to keep lies between 0 and %1 a tree; check it."),
               {std::int64_t{mostFruit}});
  else if (*target.fruitFrom > *target.fruitTo)
    faults.add("fruit",
               phrase("Deed", "The range runs from %1 down to %2; swap the two."),
               {std::int64_t{*target.fruitFrom}, std::int64_t{*target.fruitTo}});
}

void checkClass(Faults& faults, const SeasonTarget& target) {
  if (target.vigour && target.vigourReason.empty())
    faults.add(
        "vigourReason",
        phrase("Deed", "Say why the class is set by hand, for whoever looks next."));
  checkText(faults, "vigourReason", target.vigourReason);
}

void checkSeason(Faults& faults,
                 const Orchard& orchard,
                 const Planting& planting,
                 Season season) {
  const int leaf = leafOf(orchard, planting, season);
  if (leaf >= 1 && leaf <= mostLeaf) return;
  faults.add(
      "season",
      phrase("Deed", "In season %1 these trees are not standing; choose one from %2 on."),
      {nameOf(season, orchard.settings.hemisphere()),
       nameOf(firstLeafSeason(planting.planted, orchard.settings.hemisphere()),
              orchard.settings.hemisphere())});
}

}  // namespace

Checked<Change> addMeasurement(const Orchard& orchard, const Measurement& measurement) {
  const Planting* planting = lookUp(orchard.plantings, measurement.planting);
  if (!planting) return refusal("planting", plantingIsGone);
  Measurement tidy = measurement;
  tidy.by = withoutBlanks(measurement.by);
  tidy.note = withoutBlanks(measurement.note);
  Faults faults;
  checkDay(faults, *planting, tidy.day);
  checkFirstOfDay(faults, orchard, tidy);
  checkValues(faults, orchard, tidy);
  checkMissing(faults, orchard, *planting, tidy);
  checkText(faults, "by", tidy.by);
  checkNotes(faults, "note", tidy.note);
  return std::move(faults).orElse(
      {Sentence{phrase("Deed", "Measured in %3 on %2: %1"),
                {nameOf(tidy.measure), tidy.day, calledName(orchard, *planting)}},
       {Edit<Measurement>{std::nullopt, tidy}}});
}

Checked<Change> removeMeasurement(const Orchard& orchard, MeasurementId measurement) {
  const Measurement* before = lookUp(orchard.measurements, measurement);
  if (!before) return refusal({}, phrase("Deed", "That measurement is no longer there."));
  const Planting* planting = lookUp(orchard.plantings, before->planting);
  return Change{Sentence{phrase("Deed", "Measurement of %2 removed in %3: %1"),
                         {nameOf(before->measure),
                          before->day,
                          planting ? calledName(orchard, *planting) : std::string{}}},
                {Edit<Measurement>{*before, std::nullopt}}};
}

Checked<Change> setSeasonTarget(const Orchard& orchard, const SeasonTarget& target) {
  const Planting* planting = lookUp(orchard.plantings, target.of.planting);
  if (!planting) return refusal("planting", plantingIsGone);
  SeasonTarget tidy = target;
  tidy.vigourReason = withoutBlanks(target.vigourReason);
  tidy.note = withoutBlanks(target.note);
  if (!tidy.vigour) tidy.vigourReason.clear();
  Faults faults;
  checkSeason(faults, orchard, *planting, tidy.of.season);
  checkClass(faults, tidy);
  checkFruit(faults, tidy);
  checkNotes(faults, "note", tidy.note);
  const SeasonTarget* held = lookUp(orchard.targets, tidy.of);
  const bool goes = saysNothing(tidy);
  Change change{Sentence{goes ? phrase("Deed", "Targets of season %1 taken away in %2")
                              : phrase("Deed", "Targets of season %1 settled in %2"),
                         {nameOf(tidy.of.season, orchard.settings.hemisphere()),
                          calledName(orchard, *planting)}},
                {}};
  const bool same = goes ? held == nullptr : held != nullptr && *held == tidy;
  if (!same)
    change.edits.emplace_back(
        Edit<SeasonTarget>{held ? std::optional{*held} : std::nullopt,
                           goes ? std::nullopt : std::optional{tidy}});
  return std::move(faults).orElse(std::move(change));
}

}  // namespace topwire
