#pragma once

#include "core/edit/change.h"
#include "storage/sqlite/statement.h"

#include <map>
#include <optional>

namespace topwire {

/// Writes months into the table of weather, which has a row a day. Its statements are
/// prepared once, so that a century goes in quickly. Throws as record_rows.h says.
class WeatherRows {
public:
  /// `connection` must outlive it.
  explicit WeatherRows(Connection& connection);

  /// Inside the caller's transaction. Touches only the days that differ.
  void write(const Edit<WeatherMonth>& edit);

private:
  std::optional<WeatherMonth> read(MonthOfYear month);
  static void writeDay(Statement& statement, Day day, const WeatherDay& weather);
  void removeDay(Day day);

  Statement select_;
  Statement insert_;
  Statement update_;
  Statement remove_;
};

std::map<MonthOfYear, WeatherMonth> readWeather(Connection& connection);

}  // namespace topwire
