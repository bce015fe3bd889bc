#include "core/targets/fruit_target.h"

#include "core/orchard/measure_text.h"
#include "core/orchard/measurements.h"
#include "core/targets/tree_figures.h"
#include "core/targets/vigour_words.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr int firstLeafByTrunk = 2;
constexpr int lastLeafByTrunk = 7;
/// What a range is cut down to ends a fifth lower than it begins, as the table's do.
constexpr double narrowest = 0.8;

int rounded(double value) {
  return static_cast<int>(std::lround(value));
}

CropStrength strengthOf(const FruitTarget& target) {
  if (target.biennial || target.vigour == Vigour::weak)
    return CropStrength::weakOrBiennial;
  return target.vigour == Vigour::strong ? CropStrength::strong : CropStrength::moderate;
}

void heedTrunk(FruitTarget& target) {
  const double area = target.trunk->area;
  target.keep =
      fruitByTrunk(target.byLeaf, trunkAreaFromDiameter(target.usualTrunk), area);
  if (target.fruitPerCm2 <= 0) return;
  target.mostByTrunk = fruitOnTrunk(area, target.fruitPerCm2);
  if (target.keep.to <= *target.mostByTrunk) return;
  target.limited = true;
  target.keep.to = *target.mostByTrunk;
  target.keep.from = std::min(target.keep.from, rounded(target.keep.to * narrowest));
}

void heedGrower(FruitTarget& target, const Orchard& orchard, const Planting& planting) {
  const auto word = orchard.targets.find({planting.id, target.season});
  if (word == orchard.targets.end()) return;
  target.note = word->second.note;
  if (!word->second.fruitFrom && !word->second.fruitTo) return;
  target.byGrower = true;
  target.keep.from = word->second.fruitFrom.value_or(0);
  target.keep.to = word->second.fruitTo.value_or(target.keep.from);
}

class Reasons {
public:
  Reasons(const FruitTarget& target, const Planting& planting, UnitSystem units)
      : target_(&target), planting_(&planting), units_(units) {}

  std::vector<Sentence> tell() && {
    if (target_->byGrower)
      say(phrase("Targets", "Your own figure for this season goes before all others."));
    if (!target_->note.empty()) say(phrase("Targets", "Your note: %1"), {target_->note});
    tellLeaf();
    tellTrunk();
    tellSources();
    return std::move(told_);
  }

private:
  void say(Phrase phrase, std::vector<Value> values = {}) {
    told_.emplace_back(phrase, std::move(values));
  }

  std::string inUnits(Length trunk) const {
    return measuredText(
        static_cast<double>(trunk.inMicrometres()), Measure::trunkDiameter, units_);
  }

  void tellLeaf() {
    if (target_->leaf == 1)
      return say(phrase("Targets",
                        "No fruit in the first leaf: it would take from the leader what "
                        "the leader needs to reach the wire."));
    if (target_->byLeaf.to == 0)
      say(phrase("Targets",
                 "In leaf %1 such trees lose their flower buds before they open."),
          {std::int64_t{target_->leaf}});
    else
      say(phrase("Targets",
                 "Leaf %1, %2 trees: %3 to %4 fruit on a trunk of %5, as is usual then."),
          {std::int64_t{target_->leaf},
           wordsOf(target_->vigour),
           std::int64_t{target_->byLeaf.from},
           std::int64_t{target_->byLeaf.to},
           inUnits(target_->usualTrunk)});
    if (target_->biennial)
      say(phrase("Targets", "%1 is prone to crop every other year, so it keeps fewer."),
          {planting_->cultivar});
    else if (target_->vigour == Vigour::weak)
      say(phrase("Targets", "Weak trees keep fewer, so that they grow."));
    tellPlace();
  }

  void tellPlace() {
    if (target_->byLeaf.to == 0) return;
    if (target_->leaf == 2)
      say(phrase("Targets", "On the lower branches only."));
    else if (target_->leaf == 3)
      say(phrase("Targets", "None that competes with the leader."));
  }

  void tellTrunk() {
    if (target_->leaf < firstLeafByTrunk) return;
    if (target_->leaf > lastLeafByTrunk)
      return say(phrase("Targets",
                        "From the eighth leaf on the space is full, and the yield aimed "
                        "at decides, not the trunk."));
    if (!target_->trunk)
      return say(phrase("Targets",
                        "No trunk was measured in this season or the last; measure ten "
                        "to twenty trees just below the first laterals."));
    const bool thinner = target_->trunk->diameter < target_->usualTrunk;
    say(thinner ? phrase("Targets",
                         "The trunk was %1 across on %2, %3 cm² of wood: thinner than "
                         "usual, so the range goes down with it.")
                : phrase("Targets",
                         "The trunk was %1 across on %2, %3 cm² of wood: as thick as is "
                         "usual or thicker."),
        {inUnits(target_->trunk->diameter),
         target_->trunk->day,
         Figure{target_->trunk->area, 1}});
    if (target_->mostByTrunk)
      say(target_->limited
              ? phrase("Targets",
                       "At %1 fruit for each cm² it carries %2 at most, which limits the "
                       "range.")
              : phrase("Targets", "At %1 fruit for each cm² it carries %2 at most."),
          {Figure{target_->fruitPerCm2, 0}, std::int64_t{*target_->mostByTrunk}});
  }

  void tellSources() {
    say(phrase("Targets", "Source: %1"), {target_->source});
    if (target_->mostByTrunk) say(phrase("Targets", "Source: %1"), {target_->loadSource});
  }

  const FruitTarget* target_;
  const Planting* planting_;
  UnitSystem units_;
  std::vector<Sentence> told_;
};

}  // namespace

std::optional<TrunkReading> trunkReading(const Orchard& orchard,
                                         const Planting& planting,
                                         Season season,
                                         Day upTo) {
  const Day from = firstDayOf(season.plus(-1), orchard.settings.hemisphere());
  const auto mean = lastMean(
      measurementsOf(orchard, planting.id), Measure::trunkDiameter, {from, upTo});
  if (!mean) return std::nullopt;
  const Length diameter = Length::micrometres(std::llround(mean->value));
  return TrunkReading{diameter, trunkAreaFromDiameter(diameter), mean->day};
}

std::optional<FruitTarget> fruitTarget(const Orchard& orchard,
                                       const TradeTables& tables,
                                       const Planting& planting,
                                       Season season,
                                       Day upTo) {
  FruitTarget target;
  target.season = season;
  target.leaf = leafOf(orchard, planting, season);
  target.vigour = vigourIn(season, orchard, tables, planting).vigour;
  const Cultivar* cultivar = tables.cultivar(planting.cultivar);
  target.biennial = cultivar != nullptr && cultivar->biennial;
  const FruitByLeaf* row =
      target.leaf < 1 ? nullptr : tables.targets.fruit(target.leaf, strengthOf(target));
  if (row == nullptr) return std::nullopt;
  target.keep = target.byLeaf = {row->from, row->to};
  target.usualTrunk = row->trunk;
  target.source = row->source;
  if (const CropLoad* load = tables.targets.cropLoad(target.biennial)) {
    target.fruitPerCm2 = load->fruitPerCm2;
    target.loadSource = load->source;
  }
  if (firstLeafByTrunk <= target.leaf && target.leaf <= lastLeafByTrunk)
    target.trunk = trunkReading(orchard, planting, season, upTo);
  if (target.trunk) heedTrunk(target);
  heedGrower(target, orchard, planting);
  return target;
}

FruitRange fruitByTrunk(FruitRange byLeaf, double usualArea, double area) {
  const double share = usualArea > 0 ? area / usualArea : 1;
  if (share < 1) return {rounded(byLeaf.from * share), rounded(byLeaf.to * share)};
  const int middle = rounded((byLeaf.from + byLeaf.to) / 2.0);
  return {std::min(rounded(byLeaf.from * share), middle), byLeaf.to};
}

int fruitOnTrunk(double area, double fruitPerCm2) {
  return rounded(area * fruitPerCm2);
}

std::vector<Sentence> reasonsOf(const FruitTarget& target,
                                const Planting& planting,
                                UnitSystem units) {
  return Reasons{target, planting, units}.tell();
}

}  // namespace topwire
