#include "storage/weather_rows.h"

#include "storage/column_values.h"
#include "storage/record_rows.h"

namespace topwire {

namespace {

constexpr const char* selectDays =
    "SELECT day, minimum, maximum, rain, source FROM weather";

template <class T>
void readColumn(const Statement& row, int column, const char* name, T& value) {
  try {
    readValue(row, column, value);
  } catch (const UnreadableValue& found) {
    throw UnreadableRow{"weather", row.text(0), name, found.what()};
  }
}

DatedWeather readRow(const Statement& row) {
  DatedWeather dated;
  readColumn(row, 0, "day", dated.day);
  readColumn(row, 1, "minimum", dated.weather.minimum);
  readColumn(row, 2, "maximum", dated.weather.maximum);
  readColumn(row, 3, "rain", dated.weather.rain);
  readColumn(row, 4, "source", dated.weather.source);
  return dated;
}

}  // namespace

WeatherRows::WeatherRows(Connection& connection)
    : select_(connection, std::string{selectDays} + " WHERE day BETWEEN ?1 AND ?2")
    , insert_(connection,
              "INSERT INTO weather (day, minimum, maximum, rain, source) "
              "VALUES (?1, ?2, ?3, ?4, ?5)")
    , update_(connection,
              "UPDATE weather SET minimum = ?2, maximum = ?3, rain = ?4, source = ?5 "
              "WHERE day = ?1")
    , remove_(connection, "DELETE FROM weather WHERE day = ?1") {}

void WeatherRows::write(const Edit<WeatherMonth>& edit) {
  const WeatherMonth& named = edit.before ? *edit.before : *edit.after;
  if (read(named.month) != edit.before) throw StaleRecord{"weather"};
  const WeatherMonth nothing{named.month, {}};
  const WeatherMonth& before = edit.before ? *edit.before : nothing;
  const WeatherMonth& after = edit.after ? *edit.after : nothing;
  const DaySpan span = spanOf(named.month);
  for (Day day = span.first; day <= span.last; day = plusDays(day, 1)) {
    if (before.on(day) == after.on(day)) continue;
    if (after.on(day))
      writeDay(before.on(day) ? update_ : insert_, day, *after.on(day));
    else
      removeDay(day);
  }
}

std::optional<WeatherMonth> WeatherRows::read(MonthOfYear month) {
  const DaySpan span = spanOf(month);
  bindValue(select_, 1, span.first);
  bindValue(select_, 2, span.last);
  std::optional<WeatherMonth> found;
  while (select_.step()) {
    if (!found) found = WeatherMonth{month, {}};
    const DatedWeather dated = readRow(select_);
    found->on(dated.day) = dated.weather;
  }
  select_.reset();
  return found;
}

void WeatherRows::writeDay(Statement& statement, Day day, const WeatherDay& weather) {
  bindValue(statement, 1, day);
  bindValue(statement, 2, weather.minimum);
  bindValue(statement, 3, weather.maximum);
  bindValue(statement, 4, weather.rain);
  bindValue(statement, 5, weather.source);
  statement.run();
}

void WeatherRows::removeDay(Day day) {
  bindValue(remove_, 1, day);
  remove_.run();
}

std::map<MonthOfYear, WeatherMonth> readWeather(Connection& connection) {
  std::map<MonthOfYear, WeatherMonth> weather;
  Statement statement{connection, selectDays};
  while (statement.step()) {
    const DatedWeather dated = readRow(statement);
    const MonthOfYear key = monthOf(dated.day);
    // The table lies in the order of its days.
    WeatherMonth& month =
        weather.try_emplace(weather.end(), key, WeatherMonth{key, {}})->second;
    month.on(dated.day) = dated.weather;
  }
  return weather;
}

}  // namespace topwire
