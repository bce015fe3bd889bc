#include "core/programme/operation_text.h"

#include "core/phenology/stage.h"

#include <algorithm>
#include <array>

namespace topwire {

namespace {

using Fields = std::vector<std::pair<std::string, TomlValue>>;
using Written = std::optional<TomlValue>;

constexpr std::array<std::string_view, 12> months{"january",
                                                  "february",
                                                  "march",
                                                  "april",
                                                  "may",
                                                  "june",
                                                  "july",
                                                  "august",
                                                  "september",
                                                  "october",
                                                  "november",
                                                  "december"};
constexpr std::array<std::string_view, 3> vigours{"weak", "moderate", "strong"};
constexpr std::array<std::string_view, 3> kinds{"main", "pollinizer", "replant"};
constexpr std::array<std::string_view, 4> costs{"low", "medium", "high", "very high"};
constexpr std::array<std::string_view, 5> countings{
    "per-tree", "per-post", "per-row-end", "per-metre-of-row", "per-metre-of-wire"};
constexpr std::array<std::string_view, 8> measures{"trunk diameter",
                                                   "trunk girth",
                                                   "leader height",
                                                   "leader growth",
                                                   "shoot growth",
                                                   "fruit per tree",
                                                   "space filled",
                                                   "missing trees"};
constexpr std::array<std::string_view, 5> dangers{
    "wet", "frost", "heat", "wind", "spray"};

TomlValue tableOf(Fields fields) {
  return {{}, std::move(fields), false};
}

TomlValue plain(std::string written) {
  return {std::move(written), {}, false};
}

bool isEmpty(const Words& words) {
  return words.en.empty() && words.es.empty();
}

Written unlessEmpty(const Words& words) {
  return isEmpty(words) ? Written{} : tomlWords(words);
}

TomlValue texts(const std::vector<Words>& lines, Language language) {
  std::vector<TomlValue> values;
  values.reserve(lines.size());
  for (const Words& line : lines) values.push_back(tomlText(line.in(language)));
  return tomlList(values);
}

Written lists(const std::vector<Words>& lines) {
  if (lines.empty()) return std::nullopt;
  return TomlValue{
      {},
      {{"en", texts(lines, Language::english)}, {"es", texts(lines, Language::spanish)}},
      true};
}

TomlValue rangeOf(const LeafRange& range) {
  const std::string first = std::to_string(range.first);
  if (range.last == LeafRange::open) return tomlText(first + '+');
  if (range.first == range.last) return plain(first);
  const bool below = range.first < 0 || range.last < 0;
  return tomlText(first + (below ? " to " : "-") + std::to_string(range.last));
}

Written leaves(const std::vector<LeafRange>& ranges) {
  if (ranges.empty()) return std::nullopt;
  if (ranges.size() == 1) return rangeOf(ranges.front());
  std::vector<TomlValue> values;
  for (const LeafRange& range : ranges) values.push_back(rangeOf(range));
  return tomlList(values);
}

template <class Choice, std::size_t count>
TomlValue choices(const std::set<Choice>& chosen,
                  const std::array<std::string_view, count>& names) {
  std::vector<TomlValue> values;
  for (const Choice choice : chosen)
    values.push_back(tomlText(names.at(static_cast<std::size_t>(choice))));
  return tomlList(values);
}

/// All of them go without saying.
template <class Choice, std::size_t count>
Written unlessAll(const std::set<Choice>& chosen,
                  const std::array<std::string_view, count>& names) {
  return chosen.size() == count ? Written{} : choices(chosen, names);
}

void addPoint(Fields& fields, const AnchorPoint& point) {
  if (const auto* on = std::get_if<OnStage>(&point)) {
    const Stage* stage = stageByCode(on->bbch);
    fields.emplace_back(
        "stage", stage ? tomlText(stage->name.en) : plain(std::to_string(on->bbch)));
  } else if (const auto* month = std::get_if<OnMonth>(&point)) {
    fields.emplace_back("month", tomlText(months.at(month->month - 1)));
    fields.emplace_back("day", plain(std::to_string(month->day)));
    if (month->seasonsLater != 0)
      fields.emplace_back("season", plain(std::to_string(month->seasonsLater)));
  } else if (const auto* other = std::get_if<OnCompletion>(&point)) {
    fields.emplace_back("after", tomlText(other->operation));
  } else {
    fields.emplace_back("planting", plain("true"));
  }
}

TomlValue edge(const Anchor& anchor) {
  Fields fields;
  addPoint(fields, anchor.point);
  if (anchor.months != 0)
    fields.emplace_back("months", plain(std::to_string(anchor.months)));
  if (anchor.days != 0) fields.emplace_back("days", plain(std::to_string(anchor.days)));
  return tableOf(std::move(fields));
}

Written cutOff(const std::optional<CutOff>& cutOff) {
  if (!cutOff) return std::nullopt;
  TomlValue value = edge(cutOff->anchor);
  value.spread = true;
  value.fields.emplace_back("reason", tomlWords(cutOff->reason));
  return value;
}

/// To the micrometre, in the unit that says it shortest.
TomlValue exactly(Length length) {
  const std::int64_t micrometres = length.inMicrometres();
  const auto in = [micrometres](std::int64_t unit, const char* name) {
    const double count = static_cast<double>(micrometres) / static_cast<double>(unit);
    return tomlText(tomlNumber(count).written + name);
  };
  constexpr std::int64_t foot = 304'800;
  constexpr std::int64_t inch = 25'400;
  if (micrometres % foot == 0) return in(foot, " ft");
  if (micrometres % 10'000 == 0) return in(10'000, " cm");
  if (micrometres % (inch / 8) == 0) return in(inch, " in");
  return in(1'000, " mm");
}

bool isLength(Measure measure) {
  return measure != Measure::fruitPerTree && measure != Measure::spaceFilled
         && measure != Measure::missingTrees;
}

TomlValue bound(const Condition& condition) {
  if (condition.topWire) return tomlText("top wire");
  if (isLength(condition.measure)) return exactly(Length::micrometres(condition.value));
  return plain(std::to_string(condition.value));
}

TomlValue tableOf(const Condition& condition) {
  const bool least = condition.side == Condition::Side::atLeast;
  return tableOf(
      {{"measure", tomlText(measures.at(static_cast<std::size_t>(condition.measure)))},
       {least ? "at-least" : "below", bound(condition)}});
}

Written all(const std::vector<Condition>& conditions) {
  if (conditions.empty()) return std::nullopt;
  std::vector<TomlValue> values;
  for (const Condition& condition : conditions) values.push_back(tableOf(condition));
  return tomlList(values);
}

Written all(const std::vector<std::string>& ids) {
  if (ids.empty()) return std::nullopt;
  std::vector<TomlValue> values;
  for (const std::string& id : ids) values.push_back(tomlText(id));
  return tomlList(values);
}

Written repeat(const std::optional<Repeat>& repeat) {
  if (!repeat) return std::nullopt;
  const auto& days = repeat->everyDays;
  const bool alike = days[0] == days[1] && days[1] == days[2];
  if (alike && !repeat->everyGrowth && !repeat->until)
    return plain(std::to_string(days[0]));
  Fields fields;
  for (std::size_t i = 0; i < days.size(); ++i)
    fields.emplace_back(vigours.at(i), plain(std::to_string(days.at(i))));
  if (repeat->everyGrowth) fields.emplace_back("growth", exactly(*repeat->everyGrowth));
  if (repeat->until) fields.emplace_back("until", tableOf(*repeat->until));
  return tableOf(std::move(fields));
}

Written delay(DelayCost cost, const Words& reason) {
  if (cost == DelayCost::medium && isEmpty(reason)) return std::nullopt;
  Fields fields{{"cost", tomlText(costs.at(static_cast<std::size_t>(cost)))}};
  if (!isEmpty(reason)) {
    fields.emplace_back("en", tomlText(reason.en));
    fields.emplace_back("es", tomlText(reason.es));
  }
  return TomlValue{{}, std::move(fields), true};
}

Written seconds(const std::map<int, int>& byLeaf) {
  if (byLeaf.empty()) return std::nullopt;
  if (byLeaf.size() == 1 && byLeaf.begin()->first == 1)
    return plain(std::to_string(byLeaf.begin()->second));
  Fields fields;
  for (const auto& [leaf, count] : byLeaf)
    fields.emplace_back(std::to_string(leaf), plain(std::to_string(count)));
  return tableOf(std::move(fields));
}

Written materials(const std::vector<Material>& materials) {
  if (materials.empty()) return std::nullopt;
  std::vector<TomlValue> values;
  for (const Material& material : materials)
    values.push_back(
        tableOf({{"item", tomlText(material.item)},
                 {"en", tomlText(material.name.en)},
                 {"es", tomlText(material.name.es)},
                 {std::string{countings.at(static_cast<std::size_t>(material.per))},
                  tomlNumber(material.amount)}}));
  return tomlList(values);
}

Written textUnless(bool unsaid, const std::string& text) {
  return unsaid ? Written{} : tomlText(text);
}

}  // namespace

TomlValue tomlWords(const Words& words) {
  return {{}, {{"en", tomlText(words.en)}, {"es", tomlText(words.es)}}, true};
}

std::string tomlOf(const Anchor& anchor) {
  return inlineToml(edge(anchor));
}

std::vector<OperationField> fieldsOf(const Operation& operation) {
  const Operation& o = operation;
  return {
      {"id", tomlText(o.id)},
      {"name", tomlWords(o.name)},
      {"short", o.shortName == o.name ? Written{} : unlessEmpty(o.shortName)},
      {"leaves", leaves(o.leaves)},
      {"vigour", unlessAll(o.vigours, vigours)},
      {"plantings", unlessAll(o.kinds, kinds)},
      {"opens", edge(o.opens)},
      {"closes", edge(o.closes)},
      {"cut-off", cutOff(o.cutOff)},
      {"repeat", repeat(o.repeat)},
      {"needs", all(o.needs)},
      {"when", all(o.when)},
      {"if-late", delay(o.delayCost, o.delayReason)},
      {"seconds-per-tree", seconds(o.secondsPerTree)},
      {"how", lists(o.how)},
      {"done-when", unlessEmpty(o.doneWhen)},
      {"tools", lists(o.tools)},
      {"materials", materials(o.materials)},
      {"avoid", o.avoid.empty() ? Written{} : choices(o.avoid, dangers)},
      {"cuts", o.cuts ? Written{plain("true")} : Written{}},
      {"skill", textUnless(o.skill.empty(), o.skill)},
      {"caution", unlessEmpty(o.caution)},
      {"drawing", textUnless(o.drawing == o.id || o.drawing.empty(), o.drawing)},
      {"source", textUnless(o.source.empty(), o.source)},
  };
}

std::size_t rankOf(std::string_view field) {
  static const std::vector<OperationField> order = fieldsOf(Operation{});
  const auto found = std::ranges::find(order, field, &OperationField::key);
  return static_cast<std::size_t>(found - order.begin());
}

bool sameOperation(const Operation& one, const Operation& other) {
  const auto written = [](const OperationField& field) {
    return field.value ? inlineToml(*field.value) : std::string{};
  };
  return std::ranges::equal(fieldsOf(one), fieldsOf(other), {}, written, written);
}

}  // namespace topwire
