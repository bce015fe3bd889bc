#include "storage/column_values.h"

#include <array>
#include <limits>

namespace topwire {

namespace {

/// Words by the enumerators' places.
constexpr std::array unitWords{"metric", "us"};
constexpr std::array kindWords{"main", "pollinizer", "replant"};
constexpr std::array vigourWords{"weak", "moderate", "strong"};
constexpr std::array sourceWords{"forecast", "typed", "measured"};

template <class Enum, class Words>
void bindWord(Statement& statement, int parameter, Enum value, const Words& words) {
  statement.bind(parameter, std::string_view{words[static_cast<std::size_t>(value)]});
}

template <class Enum, class Words>
void readWord(const Statement& statement, int column, Enum& value, const Words& words) {
  const std::string text = statement.text(column);
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (text != words[i]) continue;
    value = static_cast<Enum>(i);
    return;
  }
  throw UnreadableValue{text};
}

}  // namespace

void bindValue(Statement& statement, int parameter, const std::string& text) {
  statement.bind(parameter, text);
}

void bindValue(Statement& statement, int parameter, int number) {
  statement.bind(parameter, std::int64_t{number});
}

void bindValue(Statement& statement, int parameter, bool truth) {
  statement.bind(parameter, std::int64_t{truth ? 1 : 0});
}

void bindValue(Statement& statement, int parameter, double number) {
  statement.bind(parameter, number);
}

void bindValue(Statement& statement, int parameter, Day day) {
  statement.bind(parameter, isoText(day));
}

void bindValue(Statement& statement, int parameter, Length length) {
  statement.bind(parameter, length.inMicrometres());
}

void bindValue(Statement& statement, int parameter, const RowSet& rows) {
  statement.bind(parameter, rowsText(rows));
}

void bindValue(Statement& statement, int parameter, UnitSystem units) {
  bindWord(statement, parameter, units, unitWords);
}

void bindValue(Statement& statement, int parameter, PlantingKind kind) {
  bindWord(statement, parameter, kind, kindWords);
}

void bindValue(Statement& statement, int parameter, Vigour vigour) {
  bindWord(statement, parameter, vigour, vigourWords);
}

void bindValue(Statement& statement, int parameter, WeatherSource source) {
  bindWord(statement, parameter, source, sourceWords);
}

void readValue(const Statement& statement, int column, std::string& text) {
  text = statement.text(column);
}

void readValue(const Statement& statement, int column, int& number) {
  const std::int64_t held = statement.number(column);
  if (held < std::numeric_limits<int>::min() || held > std::numeric_limits<int>::max())
    throw UnreadableValue{statement.text(column)};
  number = static_cast<int>(held);
}

void readValue(const Statement& statement, int column, bool& truth) {
  truth = statement.number(column) != 0;
}

void readValue(const Statement& statement, int column, double& number) {
  number = statement.real(column);
}

void readValue(const Statement& statement, int column, Day& day) {
  const auto parsed = parseDay(statement.text(column));
  if (!parsed) throw UnreadableValue{statement.text(column)};
  day = *parsed;
}

void readValue(const Statement& statement, int column, Length& length) {
  length = Length::micrometres(statement.number(column));
}

void readValue(const Statement& statement, int column, RowSet& rows) {
  ParsedRows parsed = parseRows(statement.text(column));
  if (parsed.fault) throw UnreadableValue{statement.text(column)};
  rows = std::move(parsed.rows);
}

void readValue(const Statement& statement, int column, UnitSystem& units) {
  readWord(statement, column, units, unitWords);
}

void readValue(const Statement& statement, int column, PlantingKind& kind) {
  readWord(statement, column, kind, kindWords);
}

void readValue(const Statement& statement, int column, Vigour& vigour) {
  readWord(statement, column, vigour, vigourWords);
}

void readValue(const Statement& statement, int column, WeatherSource& source) {
  readWord(statement, column, source, sourceWords);
}

}  // namespace topwire
