#include "core/programme/condition_reader.h"

#include <algorithm>
#include <array>

namespace topwire {

namespace {

using Side = Condition::Side;

constexpr std::string_view topWireText = "top wire";
constexpr int mostFruit = 2000;
constexpr int mostPercent = 200;  ///< limbs that reach into the next tree

/// In the order of Measure. Missing trees are a count of the whole planting and hold work
/// neither back nor up.
const std::vector<std::string>& measureNames() {
  static const std::vector<std::string> names{"trunk diameter",
                                              "trunk girth",
                                              "leader height",
                                              "leader growth",
                                              "shoot growth",
                                              "fruit per tree",
                                              "space filled"};
  return names;
}

std::optional<Measure> readMeasure(ProgrammeFields& fields) {
  if (!fields.has("measure")) fields.missing("measure", "measure = \"trunk diameter\"");
  const auto name = fields.text("measure");
  if (!name) return std::nullopt;
  const auto found = std::ranges::find(measureNames(), lowerCase(*name));
  if (found != measureNames().end())
    return static_cast<Measure>(found - measureNames().begin());
  fields.notAmong("measure", *name, measureNames());
  return std::nullopt;
}

bool isTopWire(ProgrammeFields& fields, std::string_view key) {
  const auto written = fields.node(key)->value_exact<std::string>();
  return written && lowerCase(*written) == topWireText;
}

/// Fills in what the measure is held against; false where it is not as it should be.
bool readBound(ProgrammeFields& fields, std::string_view key, Condition& condition) {
  if (condition.measure == Measure::leaderHeight && isTopWire(fields, key)) {
    condition.topWire = true;
    return true;
  }
  const bool fruit = condition.measure == Measure::fruitPerTree;
  if (fruit || condition.measure == Measure::spaceFilled) {
    const auto number = fields.whole(key, 1, fruit ? mostFruit : mostPercent);
    condition.value = number.value_or(0);
    return number.has_value();
  }
  const auto length = fields.length(key);
  condition.value = length.value_or(Length{}).inMicrometres();
  return length.has_value();
}

void notOneSide(ProgrammeFields& fields, bool none) {
  const Phrase said = none ? phrase("Programme",
                                    "In %1, %2 names no bound; add at-least or below, "
                                    "such as: at-least = \"1.5 in\"")
                           : phrase("Programme",
                                    "In %1, %2 has both at-least and below; write two "
                                    "conditions, one with each.");
  fields.faults().add(fields.line(), Sentence{said, {fields.owner(), fields.path()}});
}

std::optional<Condition> readCondition(ProgrammeFields& fields) {
  const auto measure = readMeasure(fields);
  const bool atLeast = fields.node("at-least") != nullptr;
  const bool below = fields.node("below") != nullptr;
  fields.refuseOthers();
  if (atLeast == below) notOneSide(fields, !atLeast);
  if (!measure || atLeast == below) return std::nullopt;
  Condition condition{*measure, atLeast ? Side::atLeast : Side::below, 0, false};
  if (!readBound(fields, atLeast ? "at-least" : "below", condition)) return std::nullopt;
  return condition;
}

/// Whether no tree can be both: at least 2 in and below 1.5 in.
bool shutOut(const Condition& one, const Condition& other) {
  if (one.measure != other.measure || one.side == other.side) return false;
  if (one.topWire != other.topWire) return false;
  const bool oneIsLeast = one.side == Side::atLeast;
  const Condition& least = oneIsLeast ? one : other;
  const Condition& below = oneIsLeast ? other : one;
  return least.value >= below.value;
}

bool contradicts(const std::vector<Condition>& conditions) {
  for (const Condition& one : conditions)
    for (const Condition& other : conditions)
      if (shutOut(one, other)) return true;
  return false;
}

constexpr int longestInterval = 366;

std::array<int, 3> readDays(ProgrammeFields& byVigour) {
  static constexpr std::array<std::string_view, 3> names{"weak", "moderate", "strong"};
  std::array<int, 3> days{};
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (!byVigour.has(names.at(i)))
      byVigour.missing(names.at(i), std::string{names.at(i)} + " = 21");
    days.at(i) = byVigour.whole(names.at(i), 1, longestInterval).value_or(0);
  }
  return days;
}

/// Trees only grow: a bound from above would end the visits before the first one. Fruit
/// grows fewer by thinning.
void checkUntil(ProgrammeFields& until, const Condition& condition) {
  if (condition.side == Side::atLeast || condition.measure == Measure::fruitPerTree)
    return;
  until.fault("below",
              phrase("Programme",
                     "In %1, %2 would end the visits before the first one, since trees "
                     "only grow; write at-least."));
}

std::optional<Condition> readUntil(ProgrammeFields& byVigour) {
  auto until = byVigour.table("until");
  if (!until) return std::nullopt;
  const auto condition = readCondition(*until);
  if (condition) checkUntil(*until, *condition);
  return condition;
}

}  // namespace

std::vector<Condition> readConditions(ProgrammeFields& fields, std::string_view key) {
  std::vector<Condition> conditions;
  for (ProgrammeFields& entry : fields.tables(key))
    if (const auto condition = readCondition(entry)) conditions.push_back(*condition);
  if (contradicts(conditions))
    fields.fault(key,
                 phrase("Programme",
                        "In %1, %2 holds two conditions that no tree can meet at once; "
                        "change one of them."));
  return conditions;
}

std::optional<Repeat> readRepeat(ProgrammeFields& fields) {
  const toml::node* node = fields.node("repeat");
  if (node == nullptr) return std::nullopt;
  Repeat repeat;
  if (auto byVigour = node->is_table() ? fields.table("repeat") : std::nullopt) {
    repeat.everyDays = readDays(*byVigour);
    repeat.everyGrowth = byVigour->length("growth");
    repeat.until = readUntil(*byVigour);
    byVigour->refuseOthers();
  } else if (const auto days = fields.whole("repeat", 1, longestInterval)) {
    repeat.everyDays.fill(*days);
  }
  return repeat;
}

}  // namespace topwire
