#include "core/edit/value_json.h"

#include <optional>
#include <utility>

namespace topwire {

namespace {

using Json = nlohmann::json;

template <class T>
T orThrow(std::optional<T> value, const std::string& text) {
  if (!value) throw UnreadableJson{text};
  return *value;
}

/// Enumerators by their place in the list.
template <class Enum, std::size_t Count>
struct EnumWords {
  std::array<const char*, Count> words;

  Json write(Enum value) const { return words[static_cast<std::size_t>(value)]; }

  Enum read(const Json& json) const {
    const auto text = json.get<std::string>();
    for (std::size_t i = 0; i < Count; ++i)
      if (text == words[i]) return static_cast<Enum>(i);
    throw UnreadableJson{text};
  }
};

constexpr EnumWords<UnitSystem, 2> unitWords{{"metric", "us"}};
constexpr EnumWords<PlantingKind, 3> kindWords{{"main", "pollinizer", "replant"}};
constexpr EnumWords<Vigour, 3> vigourWords{{"weak", "moderate", "strong"}};
constexpr EnumWords<PinKind, 2> pinWords{{"crew to job", "not before"}};
constexpr EnumWords<Measure, 8> measureWords{{"trunk diameter",
                                              "trunk girth",
                                              "leader height",
                                              "leader growth",
                                              "shoot growth",
                                              "fruit per tree",
                                              "space filled",
                                              "missing trees"}};

}  // namespace

Json toJson(Day day) {
  return isoText(day);
}

Json toJson(Length length) {
  return length.inMicrometres();
}

Json toJson(const RowSet& rows) {
  return rowsText(rows);
}

Json toJson(UnitSystem units) {
  return unitWords.write(units);
}

Json toJson(PlantingKind kind) {
  return kindWords.write(kind);
}

Json toJson(Vigour vigour) {
  return vigourWords.write(vigour);
}

Json toJson(Measure measure) {
  return measureWords.write(measure);
}

Json toJson(const std::vector<std::int64_t>& numbers) {
  return numbers;
}

Json toJson(const std::vector<Length>& lengths) {
  Json json = Json::array();
  for (const Length length : lengths) json.push_back(toJson(length));
  return json;
}

Json toJson(const std::string& text) {
  return text;
}

Json toJson(double number) {
  return number;
}

Json toJson(const std::array<double, 12>& months) {
  return months;
}

Json toJson(int number) {
  return number;
}

Json toJson(const DaySpan& span) {
  return Json::array({isoText(span.first), isoText(span.last)});
}

Json toJson(PinKind kind) {
  return pinWords.write(kind);
}

Json toJson(const std::vector<std::string>& names) {
  return names;
}

Json toJson(const std::vector<DaySpan>& spans) {
  Json json = Json::array();
  for (const DaySpan& span : spans) json.push_back(toJson(span));
  return json;
}

Json toJson(const std::array<bool, 7>& weekdays) {
  return weekdays;
}

void read(const Json& json, std::string& text) {
  text = json.get<std::string>();
}

void read(const Json& json, int& number) {
  number = json.get<int>();
}

void read(const Json& json, double& number) {
  number = json.get<double>();
}

void read(const Json& json, Day& day) {
  const auto text = json.get<std::string>();
  day = orThrow(parseDay(text), text);
}

void read(const Json& json, Length& length) {
  length = Length::micrometres(json.get<std::int64_t>());
}

void read(const Json& json, RowSet& rows) {
  const auto text = json.get<std::string>();
  ParsedRows parsed = parseRows(text);
  if (parsed.fault) throw UnreadableJson{text};
  rows = std::move(parsed.rows);
}

void read(const Json& json, UnitSystem& units) {
  units = unitWords.read(json);
}

void read(const Json& json, PlantingKind& kind) {
  kind = kindWords.read(json);
}

void read(const Json& json, Vigour& vigour) {
  vigour = vigourWords.read(json);
}

void read(const Json& json, Measure& measure) {
  measure = measureWords.read(json);
}

void read(const Json& json, std::vector<std::int64_t>& numbers) {
  numbers = json.get<std::vector<std::int64_t>>();
}

void read(const Json& json, std::vector<Length>& lengths) {
  for (const Json& length : json) read(length, lengths.emplace_back());
}

void read(const Json& json, DaySpan& span) {
  read(json.at(0), span.first);
  read(json.at(1), span.last);
}

void read(const Json& json, std::array<double, 12>& months) {
  months = json.get<std::array<double, 12>>();
}

void read(const Json& json, PinKind& kind) {
  kind = pinWords.read(json);
}

void read(const Json& json, std::vector<std::string>& names) {
  names = json.get<std::vector<std::string>>();
}

void read(const Json& json, std::vector<DaySpan>& spans) {
  spans.clear();
  for (const Json& span : json) read(span, spans.emplace_back());
}

void read(const Json& json, std::array<bool, 7>& weekdays) {
  weekdays = json.get<std::array<bool, 7>>();
}

}  // namespace topwire
