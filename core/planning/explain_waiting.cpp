#include "core/planning/explain_waiting.h"

#include "core/base/contract.h"
#include "core/planning/needs.h"

#include <array>
#include <cmath>

namespace topwire {

namespace {

Words nameOf(Measure measure) {
  static const std::array<Words, 8> names{{
      {"the trunk's diameter", "el diámetro del tronco"},
      {"the trunk's girth", "el perímetro del tronco"},
      {"the leader's height", "la altura de la guía"},
      {"the leader's growth", "el crecimiento de la guía"},
      {"the shoots' growth", "el crecimiento de los brotes"},
      {"the fruit per tree", "la fruta por árbol"},
      {"the space filled", "el espacio llenado"},
      {"the number of missing trees", "el número de fallas"},
  }};
  return names.at(static_cast<std::size_t>(measure));
}

/// A figure and its unit, as people speak of that measure.
struct Quantity {
  Figure figure;
  Words unit;
};

Quantity lengthOf(double micrometres, bool tall, UnitSystem units) {
  if (units == UnitSystem::metric)
    return tall ? Quantity{{micrometres / 1e6, 2}, {"m", "m"}}
                : Quantity{{micrometres / 1e4, 1}, {"cm", "cm"}};
  return tall ? Quantity{{micrometres / 304'800, 1}, {"ft", "pies"}}
              : Quantity{{micrometres / 25'400, 1}, {"in", "pulgadas"}};
}

Quantity quantityOf(Measure measure, double value, UnitSystem units) {
  switch (measure) {
    case Measure::fruitPerTree:
      return {{value, 0}, {"fruit", "frutos"}};
    case Measure::spaceFilled:
      return {{value, 0}, {"%", "%"}};
    case Measure::missingTrees:
      return {{value, 0}, {"trees", "árboles"}};
    default:
      return lengthOf(value, measure == Measure::leaderHeight, units);
  }
}

Phrase askedFor(const Condition& condition) {
  if (condition.side == Condition::Side::atLeast)
    return condition.topWire
               ? phrase("Why", "Asked for where %1 reaches the top wire, at %2 %3.")
               : phrase("Why", "Asked for where %1 is at least %2 %3.");
  return condition.topWire
             ? phrase("Why", "Asked for where %1 is below the top wire, at %2 %3.")
             : phrase("Why", "Asked for where %1 is below %2 %3.");
}

Phrase endsVisits(const Condition& condition) {
  if (condition.topWire)
    return phrase("Why", "The visits end once %1 reaches the top wire, at %2 %3.");
  return condition.side == Condition::Side::atLeast
             ? phrase("Why", "The visits end once %1 is at least %2 %3.")
             : phrase("Why", "The visits end once %1 is below %2 %3.");
}

class ConditionTale {
public:
  ConditionTale(const Orchard& orchard, PlantingId planting)
      : units_(orchard.settings.units)
      , wiresWritten_(!blockOf(orchard, orchard.plantings.at(planting)).wires.empty()) {}

  void tellAsked(const ConditionReason& reason) {
    tell(askedFor(reason.condition), reason);
    if (!reason.measured)
      told_.emplace_back(phrase("Why",
                                "It was not measured, so the job is asked for; measure "
                                "some trees to be sure."));
  }

  void tellUntil(const ConditionReason& reason) {
    tell(endsVisits(reason.condition), reason);
    if (!reason.measured)
      told_.emplace_back(
          phrase("Why", "It was not measured, so they go on to their closing."));
    else if (*reason.holds())
      told_.emplace_back(phrase("Why", "So no further visit follows."));
  }

  std::vector<Sentence> take() && { return std::move(told_); }

private:
  void tell(Phrase said, const ConditionReason& reason) {
    const Measure measure = reason.condition.measure;
    const auto bound = quantityOf(measure, static_cast<double>(reason.bound), units_);
    told_.emplace_back(said,
                       std::vector<Value>{nameOf(measure), bound.figure, bound.unit});
    if (reason.condition.topWire && !wiresWritten_)
      told_.emplace_back(phrase("Why",
                                "The block's wires are not written down; that height is "
                                "the usual one."));
    if (!reason.measured) return;
    const auto mean = quantityOf(measure, reason.measured->value, units_);
    told_.emplace_back(phrase("Why", "Measured on %1: %2 %3."),
                       std::vector<Value>{reason.measured->day, mean.figure, mean.unit});
  }

  UnitSystem units_;
  bool wiresWritten_;
  std::vector<Sentence> told_;
};

Words wordsFor(DelayCost cost) {
  switch (cost) {
    case DelayCost::low:
      return {"low", "bajo"};
    case DelayCost::medium:
      return {"medium", "medio"};
    case DelayCost::high:
      return {"high", "alto"};
    case DelayCost::veryHigh:
      break;
  }
  return {"very high", "muy alto"};
}

}  // namespace

std::vector<Sentence> aboutConditions(const Orchard& orchard, const Task& task) {
  ConditionTale tale{orchard, task.key.planting};
  for (const ConditionReason& reason : task.conditions) tale.tellAsked(reason);
  if (task.until) tale.tellUntil(*task.until);
  return std::move(tale).take();
}

std::vector<Sentence> aboutNeeds(const Orchard& orchard,
                                 const Programme* programme,
                                 const Task& task) {
  if (task.waitsFor.empty()) return {};
  const ProgressByTask progress = progressOf(orchard);
  std::vector<Sentence> told;
  for (const TaskKey& key : task.waitsFor) {
    const Operation* needed = programme ? programme->find(key.operation) : nullptr;
    const auto found = progress.find(key);
    const RowSet done = found == progress.end() ? RowSet{} : found->second.wholeRows();
    told.emplace_back(
        phrase("Why", "Waits for: %1, %2 of %3 rows done."),
        std::vector<Value>{needed ? needed->name : Words{key.operation, key.operation},
                           std::int64_t{task.rows.inCommonWith(done).count()},
                           std::int64_t{task.rows.count()}});
  }
  if (const RowSet ready = rowsReady(progress, task); !ready.empty())
    told.emplace_back(phrase("Why", "It may begin in rows %1."),
                      std::vector<Value>{rowsText(ready)});
  return told;
}

Sentence aboutGrowth(const GrowthPace& pace, Length wanted, int days, UnitSystem units) {
  const auto shown = [units](Length length) {
    return lengthOf(static_cast<double>(length.inMicrometres()), false, units);
  };
  const Quantity grown = shown(pace.grown);
  return {phrase("Why",
                 "From %1 to %2 the leader grew %3 %5; a visit is due every %4 %5, at "
                 "that pace and a week apart at the least, so this one comes after %6 "
                 "days."),
          {pace.from,
           pace.to,
           grown.figure,
           shown(wanted).figure,
           grown.unit,
           std::int64_t{days}}};
}

std::vector<Sentence> aboutDelay(const Operation& operation) {
  const Words cost = wordsFor(operation.delayCost);
  if (!operation.delayReason.en.empty())
    return {{phrase("Why", "If late: %1. %2."), {cost, operation.delayReason}}};
  if (operation.delayCost == DelayCost::medium) return {};
  return {{phrase("Why", "If late: %1."), {cost}}};
}

}  // namespace topwire
