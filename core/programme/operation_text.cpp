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

Written repeat(const std::optional<Repeat>& repeat) {
  if (!repeat) return std::nullopt;
  const auto& days = repeat->everyDays;
  if (days[0] == days[1] && days[1] == days[2]) return plain(std::to_string(days[0]));
  Fields fields;
  for (std::size_t i = 0; i < days.size(); ++i)
    fields.emplace_back(vigours.at(i), plain(std::to_string(days.at(i))));
  return tableOf(std::move(fields));
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
    values.push_back(tableOf({{"item", tomlText(material.item)},
                              {"en", tomlText(material.name.en)},
                              {"es", tomlText(material.name.es)},
                              {"per-tree", tomlNumber(material.amount)}}));
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
      {"seconds-per-tree", seconds(o.secondsPerTree)},
      {"how", lists(o.how)},
      {"done-when", unlessEmpty(o.doneWhen)},
      {"tools", lists(o.tools)},
      {"materials", materials(o.materials)},
      {"avoid", o.avoid.empty() ? Written{} : choices(o.avoid, dangers)},
      {"cuts", o.cuts ? Written{plain("true")} : Written{}},
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
