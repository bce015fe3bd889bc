#include "core/edit/sentence_json.h"

#include <stdexcept>
#include <string>

namespace topwire {

namespace {

using Json = nlohmann::json;

struct ValueWriter {
  Json operator()(const std::string& text) const { return text; }

  Json operator()(std::int64_t number) const { return number; }

  Json operator()(Figure figure) const {
    return {{"figure", figure.value}, {"decimals", figure.decimals}};
  }

  Json operator()(Day day) const { return {{"day", isoText(day)}}; }

  Json operator()(const Words& words) const {
    return {{"en", words.en}, {"es", words.es}};
  }
};

Value readValue(const Json& json) {
  if (json.is_string()) return json.get<std::string>();
  if (json.is_number_integer()) return json.get<std::int64_t>();
  if (json.contains("figure"))
    return Figure{json.at("figure").get<double>(), json.at("decimals").get<int>()};
  if (json.contains("en"))
    return Words{json.at("en").get<std::string>(), json.at("es").get<std::string>()};
  const auto text = json.at("day").get<std::string>();
  const auto day = parseDay(text);
  if (!day) throw std::runtime_error{text};
  return *day;
}

}  // namespace

Json toJson(const Sentence& sentence) {
  Json values = Json::array();
  for (const Value& value : sentence.values)
    values.push_back(std::visit(ValueWriter{}, value));
  return {{"context", sentence.context}, {"text", sentence.text}, {"values", values}};
}

void read(const Json& json, Sentence& sentence) {
  sentence.context = json.at("context").get<std::string>();
  sentence.text = json.at("text").get<std::string>();
  for (const Json& value : json.at("values")) sentence.values.push_back(readValue(value));
}

}  // namespace topwire
