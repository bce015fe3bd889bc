#include "storage/record_rows.h"

#include "storage/column_values.h"
#include "storage/record_columns.h"
#include "storage/sqlite/statement.h"
#include "storage/weather_rows.h"

#include <optional>

namespace topwire {

namespace {

template <class Record>
constexpr TableOf table = tableOf(static_cast<const Record*>(nullptr));

struct ColumnNames {
  std::vector<std::string> names;

  void operator()(const char* name, const auto&) { names.emplace_back(name); }

  void span(const char* first, const char* last, const std::optional<DaySpan>&) {
    names.insert(names.end(), {first, last});
  }
};

struct Binding {
  Statement& statement;
  int parameter = 0;

  void operator()(const char*, const auto& field) {
    bindValue(statement, ++parameter, field);
  }

  void span(const char*, const char*, const std::optional<DaySpan>& span) {
    bindValue(statement, ++parameter, span ? std::optional{span->first} : std::nullopt);
    bindValue(statement, ++parameter, span ? std::optional{span->last} : std::nullopt);
  }
};

struct Reading {
  const Statement& statement;
  const char* tableName;
  int column = 0;

  void operator()(const char* name, auto& field) {
    try {
      readValue(statement, column++, field);
    } catch (const UnreadableValue& value) {
      throw UnreadableRow{tableName, statement.text(0), name, value.what()};
    }
  }

  void span(const char* first, const char* last, std::optional<DaySpan>& span) {
    std::optional<Day> begin;
    std::optional<Day> end;
    (*this)(first, begin);
    (*this)(last, end);
    span.reset();
    if (begin && end) span = DaySpan{*begin, *end};
  }
};

template <class Record>
const std::vector<std::string>& columnsOf() {
  static const std::vector<std::string> names = [] {
    ColumnNames collected;
    const Record record{};
    columns(record, collected);
    return std::move(collected.names);
  }();
  return names;
}

/// "a = ?1, b = ?2" for the columns from `first` to before `last`.
std::string assignments(const std::vector<std::string>& names,
                        std::size_t first,
                        std::size_t last,
                        const char* between) {
  std::string sql;
  for (std::size_t i = first; i < last; ++i) {
    if (i > first) sql += between;
    sql += names[i] + " = ?" + std::to_string(i + 1);
  }
  return sql;
}

template <class Record>
std::string whereKey() {
  if (table<Record>.keyColumns == 0) return {};
  return " WHERE "
         + assignments(columnsOf<Record>(), 0, table<Record>.keyColumns, " AND ");
}

template <class Record>
std::string selectSql() {
  std::string sql = "SELECT ";
  for (const std::string& name : columnsOf<Record>()) {
    if (sql.back() != ' ') sql += ", ";
    sql += name;
  }
  return sql + " FROM " + table<Record>.name;
}

template <class Record>
std::string insertSql() {
  std::string names;
  std::string marks;
  for (const std::string& name : columnsOf<Record>()) {
    names += (names.empty() ? "" : ", ") + name;
    marks += marks.empty() ? "?" : ", ?";
  }
  return std::string{"INSERT INTO "} + table<Record>.name + " (" + names + ") VALUES ("
         + marks + ")";
}

template <class Record>
std::string updateSql() {
  const auto& names = columnsOf<Record>();
  return std::string{"UPDATE "} + table<Record>.name + " SET "
         + assignments(names, table<Record>.keyColumns, names.size(), ", ")
         + whereKey<Record>();
}

template <class Record>
void bindAll(Statement& statement, const Record& record) {
  Binding binding{statement};
  columns(record, binding);
}

struct KeyBinding : Binding {
  int keyColumns;

  void operator()(const char* name, const auto& field) {
    if (parameter < keyColumns) Binding::operator()(name, field);
  }

  void span(const char*, const char*, const std::optional<DaySpan>&) {}
};

template <class Record>
void bindKey(Statement& statement, const Record& record) {
  KeyBinding binding{{statement}, table<Record>.keyColumns};
  columns(record, binding);
}

template <class Record>
Record readRow(const Statement& statement) {
  Record record{};
  Reading reading{statement, table<Record>.name};
  columns(record, reading);
  return record;
}

MonthlyNormals readNormals(Connection& connection) {
  MonthlyNormals normals;
  Statement statement{connection, "SELECT minimum, maximum FROM normal ORDER BY month"};
  std::size_t months = 0;
  for (; statement.step() && months < 12; ++months) {
    normals.minimum[months] = statement.real(0);
    normals.maximum[months] = statement.real(1);
  }
  if (months < 12)
    throw UnreadableRow{"normal", std::to_string(months + 1), "month", "missing"};
  return normals;
}

void writeNormals(Connection& connection, const MonthlyNormals& normals) {
  connection.execute("DELETE FROM normal");
  Statement statement{connection, "INSERT INTO normal VALUES (?, ?, ?)"};
  for (std::size_t month = 0; month < 12; ++month) {
    statement.bind(1, static_cast<std::int64_t>(month + 1));
    statement.bind(2, normals.minimum[month]);
    statement.bind(3, normals.maximum[month]);
    statement.run();
  }
}

void readBeside(Connection& connection, Settings& settings) {
  settings.normals = readNormals(connection);
}

void writeBeside(Connection& connection, const Settings& settings) {
  writeNormals(connection, settings.normals);
}

void readBeside(Connection&, auto&) {}

void writeBeside(Connection&, const auto&) {}

template <class Record>
std::optional<Record> readLike(Connection& connection, const Record& wanted) {
  Statement statement{connection, selectSql<Record>() + whereKey<Record>()};
  bindKey(statement, wanted);
  if (!statement.step()) return std::nullopt;
  auto record = readRow<Record>(statement);
  readBeside(connection, record);
  return record;
}

template <class Record>
void insert(Connection& connection, const Record& record) {
  Statement statement{connection, insertSql<Record>()};
  bindAll(statement, record);
  statement.run();
  writeBeside(connection, record);
}

template <class Record>
void update(Connection& connection, const Record& record) {
  Statement statement{connection, updateSql<Record>()};
  bindAll(statement, record);
  statement.run();
  writeBeside(connection, record);
}

template <class Record>
void remove(Connection& connection, const Record& record) {
  Statement statement{
      connection, std::string{"DELETE FROM "} + table<Record>.name + whereKey<Record>()};
  bindKey(statement, record);
  statement.run();
}

struct EditWriter {
  Connection& connection;
  std::optional<WeatherRows> weather;

  void operator()(const Edit<WeatherMonth>& edit) {
    if (!weather) weather.emplace(connection);
    weather->write(edit);
  }

  template <class Record>
  void operator()(const Edit<Record>& edit) {
    const Record& named = edit.before ? *edit.before : *edit.after;
    if (readLike(connection, named) != edit.before) throw StaleRecord{table<Record>.name};
    if (!edit.after)
      remove(connection, named);
    else if (edit.before)
      update(connection, *edit.after);
    else
      insert(connection, *edit.after);
  }
};

const auto& keyOf(const StoredTask& task) {
  return task.key;
}

const auto& keyOf(const TaskMark& mark) {
  return mark.task;
}

const auto& keyOf(const SeasonTarget& target) {
  return target.of;
}

const auto& keyOf(const SeasonClose& close) {
  return close.season;
}

const auto& keyOf(const WorkDay& work) {
  return work.day;
}

const auto& keyOf(const Turnout& turnout) {
  return turnout.of;
}

const auto& keyOf(const PlannedJob& job) {
  return job.of;
}

const auto& keyOf(const auto& record) {
  return record.id;
}

template <class Key, class Record>
void readAll(Connection& connection, std::map<Key, Record>& records) {
  Statement statement{connection, selectSql<Record>()};
  while (statement.step()) {
    auto record = readRow<Record>(statement);
    const Key key = keyOf(record);
    records.emplace(key, std::move(record));
  }
}

template <class Key, class Record>
void writeAll(Connection& connection, const std::map<Key, Record>& records) {
  Statement statement{connection, insertSql<Record>()};
  for (const auto& [key, record] : records) {
    bindAll(statement, record);
    statement.run();
  }
}

}  // namespace

Orchard readOrchard(Connection& connection) {
  Orchard orchard;
  const auto settings = readLike(connection, Settings{});
  if (!settings) throw UnreadableRow{"settings", "1", "name", "missing"};
  orchard.settings = *settings;
  readAll(connection, orchard.blocks);
  readAll(connection, orchard.plantings);
  readAll(connection, orchard.crews);
  readAll(connection, orchard.observations);
  readAll(connection, orchard.ticks);
  readAll(connection, orchard.marks);
  readAll(connection, orchard.pastStages);
  readAll(connection, orchard.measurements);
  readAll(connection, orchard.targets);
  readAll(connection, orchard.closes);
  readAll(connection, orchard.programmes);
  readAll(connection, orchard.workDays);
  readAll(connection, orchard.turnouts);
  readAll(connection, orchard.pins);
  readAll(connection, orchard.closures);
  readAll(connection, orchard.plannedJobs);
  readAll(connection, orchard.tasks);
  orchard.weather = readWeather(connection);
  return orchard;
}

void writeOrchard(Connection& connection, const Orchard& orchard) {
  // Ticks come by id, so that one may come before the tick it takes back.
  connection.execute("PRAGMA defer_foreign_keys = ON");
  insert(connection, orchard.settings);
  writeAll(connection, orchard.blocks);
  writeAll(connection, orchard.plantings);
  writeAll(connection, orchard.crews);
  writeAll(connection, orchard.observations);
  writeAll(connection, orchard.ticks);
  writeAll(connection, orchard.marks);
  writeAll(connection, orchard.pastStages);
  writeAll(connection, orchard.measurements);
  writeAll(connection, orchard.targets);
  writeAll(connection, orchard.closes);
  writeAll(connection, orchard.programmes);
  writeAll(connection, orchard.workDays);
  writeAll(connection, orchard.turnouts);
  writeAll(connection, orchard.pins);
  writeAll(connection, orchard.closures);
  writeAll(connection, orchard.plannedJobs);
  writeAll(connection, orchard.tasks);
  WeatherRows weather{connection};
  for (const auto& [key, month] : orchard.weather) weather.write({std::nullopt, month});
}

void writeEdits(Connection& connection, const std::vector<AnyEdit>& edits) {
  EditWriter writer{connection, std::nullopt};
  for (const AnyEdit& edit : edits) std::visit(writer, edit);
}

void replaceTasks(Connection& connection, const std::map<TaskKey, StoredTask>& tasks) {
  connection.execute("DELETE FROM task");
  writeAll(connection, tasks);
}

}  // namespace topwire
