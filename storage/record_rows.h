#pragma once

#include "core/edit/change.h"
#include "storage/sqlite/connection.h"

#include <map>
#include <stdexcept>
#include <string>
#include <vector>

namespace topwire {

/// A row that can't be read, by table, key and column. Thrown inside storage only.
struct UnreadableRow : std::runtime_error {
  UnreadableRow(std::string inTable,
                std::string withKey,
                std::string inColumn,
                const std::string& value)
      : std::runtime_error(value)
      , table(std::move(inTable))
      , key(std::move(withKey))
      , column(std::move(inColumn)) {}

  std::string table;
  std::string key;
  std::string column;
};

/// The file no longer holds what a change was made from, told by the table's name. Thrown
/// inside storage only.
struct StaleRecord : std::runtime_error {
  using std::runtime_error::runtime_error;
};

/// All records of the file. Throws SqliteError and UnreadableRow, as do those below.
Orchard readOrchard(Connection& connection);
/// Into empty tables, inside the caller's transaction.
void writeOrchard(Connection& connection, const Orchard& orchard);
/// Inside the caller's transaction; throws StaleRecord where a row is not as its edit's
/// `before` says.
void writeEdits(Connection& connection, const std::vector<AnyEdit>& edits);
/// In place of the tasks there are, inside the caller's transaction.
void replaceTasks(Connection& connection, const std::map<TaskKey, StoredTask>& tasks);

}  // namespace topwire
