#include "core/edit/weather_json.h"

#include <array>
#include <cstddef>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>

namespace topwire {

namespace {

using Json = nlohmann::json;

/// Letters by the enumerators' places.
constexpr std::string_view sourceLetters = "ftm";
constexpr char nothingKnown = '-';

std::string sourcesOf(const WeatherMonth& month) {
  std::string letters;
  for (const auto& day : month.days)
    letters += day ? sourceLetters[static_cast<std::size_t>(day->source)] : nothingKnown;
  return letters;
}

void readSources(const std::string& letters, WeatherMonth& month) {
  if (letters.size() != month.days.size()) throw std::runtime_error{letters};
  for (std::size_t i = 0; i < letters.size(); ++i) {
    if (letters[i] == nothingKnown) continue;
    const std::size_t place = sourceLetters.find(letters[i]);
    if (place == std::string_view::npos) throw std::runtime_error{letters};
    month.days[i].emplace().source = static_cast<WeatherSource>(place);
  }
}

using WeatherFigure = std::optional<double> WeatherDay::*;

struct WeatherColumn {
  const char* name;
  WeatherFigure figure;
};

constexpr std::array<WeatherColumn, 3> weatherColumns{{{"minimum", &WeatherDay::minimum},
                                                       {"maximum", &WeatherDay::maximum},
                                                       {"rain", &WeatherDay::rain}}};

Json columnOf(const WeatherMonth& month, WeatherFigure figure) {
  Json column = Json::array();
  for (const auto& day : month.days)
    column.push_back(day && (*day).*figure ? Json(*((*day).*figure)) : Json{});
  return column;
}

void readColumn(const Json& column, WeatherMonth& month, WeatherFigure figure) {
  for (std::size_t i = 0; i < month.days.size(); ++i)
    if (!column.at(i).is_null() && month.days[i])
      (*month.days[i]).*figure = column.at(i).get<double>();
}

}  // namespace

Json toJson(const WeatherMonth& month) {
  Json json{{"year", month.month.year},
            {"month", month.month.month},
            {"sources", sourcesOf(month)}};
  for (const auto& [name, figure] : weatherColumns) json[name] = columnOf(month, figure);
  return json;
}

void read(const Json& json, WeatherMonth& month) {
  month.month = {json.at("year").get<int>(), json.at("month").get<unsigned>()};
  readSources(json.at("sources").get<std::string>(), month);
  for (const auto& [name, figure] : weatherColumns)
    readColumn(json.at(name), month, figure);
  if (!isSound(month)) throw std::runtime_error{"a month of weather that can't be"};
}

}  // namespace topwire
