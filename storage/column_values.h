#pragma once

#include "core/orchard/records.h"
#include "storage/sqlite/statement.h"

#include <array>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

namespace topwire {

/// A value in a column that can't be what it should be: the file was written by other
/// hands or has decayed. Thrown inside storage only.
struct UnreadableValue : std::runtime_error {
  explicit UnreadableValue(const std::string& text) : std::runtime_error(text) {}
};

/// Each value as its column holds it; see schema.
void bindValue(Statement& statement, int parameter, const std::string& text);
void bindValue(Statement& statement, int parameter, int number);
void bindValue(Statement& statement, int parameter, bool truth);
void bindValue(Statement& statement, int parameter, double number);
void bindValue(Statement& statement, int parameter, Day day);
void bindValue(Statement& statement, int parameter, Length length);
void bindValue(Statement& statement, int parameter, const RowSet& rows);
void bindValue(Statement& statement, int parameter, UnitSystem units);
void bindValue(Statement& statement, int parameter, PlantingKind kind);
void bindValue(Statement& statement, int parameter, Vigour vigour);
void bindValue(Statement& statement, int parameter, WeatherSource source);
void bindValue(Statement& statement, int parameter, Measure measure);
/// Lists as whole numbers with a comma and a space between.
void bindValue(Statement& statement,
               int parameter,
               const std::vector<std::int64_t>& list);
void bindValue(Statement& statement, int parameter, const std::vector<Length>& list);
void bindValue(Statement& statement, int parameter, PinKind kind);
/// Names one a line, each line ended.
void bindValue(Statement& statement,
               int parameter,
               const std::vector<std::string>& names);
/// "2027-05-03 to 2027-05-09, 2027-06-01 to 2027-06-01".
void bindValue(Statement& statement, int parameter, const std::vector<DaySpan>& spans);
/// 1 for yes and 0 for no, Monday first.
void bindValue(Statement& statement, int parameter, const std::array<bool, 7>& weekdays);

void readValue(const Statement& statement, int column, std::string& text);
void readValue(const Statement& statement, int column, int& number);
void readValue(const Statement& statement, int column, bool& truth);
void readValue(const Statement& statement, int column, double& number);
void readValue(const Statement& statement, int column, Day& day);
void readValue(const Statement& statement, int column, Length& length);
void readValue(const Statement& statement, int column, RowSet& rows);
void readValue(const Statement& statement, int column, UnitSystem& units);
void readValue(const Statement& statement, int column, PlantingKind& kind);
void readValue(const Statement& statement, int column, Vigour& vigour);
void readValue(const Statement& statement, int column, WeatherSource& source);
void readValue(const Statement& statement, int column, Measure& measure);
void readValue(const Statement& statement, int column, std::vector<std::int64_t>& list);
void readValue(const Statement& statement, int column, std::vector<Length>& list);
void readValue(const Statement& statement, int column, PinKind& kind);
void readValue(const Statement& statement, int column, std::vector<std::string>& names);
void readValue(const Statement& statement, int column, std::vector<DaySpan>& spans);
void readValue(const Statement& statement, int column, std::array<bool, 7>& weekdays);

template <class Tag>
void bindValue(Statement& statement, int parameter, RecordId<Tag> id) {
  statement.bind(parameter, idText(id));
}

template <class Tag>
void readValue(const Statement& statement, int column, RecordId<Tag>& id) {
  const auto parsed = parseId<RecordId<Tag>>(statement.text(column));
  if (!parsed) throw UnreadableValue{statement.text(column)};
  id = *parsed;
}

template <class T>
void bindValue(Statement& statement, int parameter, const std::optional<T>& value) {
  if (value)
    bindValue(statement, parameter, *value);
  else
    statement.bindNothing(parameter);
}

template <class T>
void readValue(const Statement& statement, int column, std::optional<T>& value) {
  value.reset();
  if (!statement.isNothing(column)) readValue(statement, column, value.emplace());
}

}  // namespace topwire
