#include "storage/sqlite/connection.h"

#include "storage/sqlite/statement.h"

#include <sqlite3.h>

#include <string_view>

namespace topwire {

namespace {

constexpr int busyMilliseconds = 2000;

/// As the path of a file: URI, where ?, # and % have meanings of their own.
std::string uriOf(const std::string& path) {
  std::string uri = "file:";
  for (const char c : path) {
    if (std::string_view{"%?#"}.find(c) == std::string_view::npos) {
      uri += c;
      continue;
    }
    static constexpr char digits[] = "0123456789abcdef";
    uri += {'%', digits[(c >> 4) & 0xF], digits[c & 0xF]};
  }
  return uri;
}

int flagsOf(Connection::Mode mode) {
  const int common = SQLITE_OPEN_URI | SQLITE_OPEN_EXRESCODE;
  switch (mode) {
    case Connection::Mode::create:
      return common | SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE;
    case Connection::Mode::write:
      return common | SQLITE_OPEN_READWRITE;
    default:
      return common | SQLITE_OPEN_READONLY;
  }
}

[[noreturn]] void fail(sqlite3* handle, const std::string& sql) {
  throw SqliteError{sqlite3_extended_errcode(handle), sqlite3_errmsg(handle), sql};
}

/// A file someone else may have made is not trusted to run functions from its schema,
/// nor to have its internals rewritten through us.
void guard(sqlite3* handle) {
  sqlite3_busy_timeout(handle, busyMilliseconds);
  sqlite3_db_config(handle, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
  sqlite3_db_config(handle, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr);
  sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_FKEY, 1, nullptr);
}

}  // namespace

void Connection::Closer::operator()(sqlite3* handle) const {
  sqlite3_close_v2(handle);
}

Connection::Connection(const std::string& path, Mode mode) {
  std::string uri = uriOf(path);
  if (mode == Mode::readUnchanging) uri += "?immutable=1";
  sqlite3* opened = nullptr;
  const int code = sqlite3_open_v2(uri.c_str(), &opened, flagsOf(mode), nullptr);
  handle_.reset(opened);
  if (code != SQLITE_OK) fail(opened, "open " + path);
  guard(opened);
}

void Connection::execute(const std::string& sql) {
  if (sqlite3_exec(handle(), sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK)
    fail(handle(), sql);
}

std::int64_t Connection::number(const std::string& sql) {
  Statement statement{*this, sql};
  if (!statement.step()) throw SqliteError{SQLITE_ERROR, "no row", sql};
  return statement.number(0);
}

std::string Connection::text(const std::string& sql) {
  Statement statement{*this, sql};
  if (!statement.step()) throw SqliteError{SQLITE_ERROR, "no row", sql};
  return statement.text(0);
}

int Connection::changes() const {
  return sqlite3_changes(handle_.get());
}

bool Connection::inTransaction() const {
  return sqlite3_get_autocommit(handle_.get()) == 0;
}

void Connection::copyTo(const std::string& path) {
  Connection copy{path, Mode::create};
  sqlite3_backup* backup = sqlite3_backup_init(copy.handle(), "main", handle(), "main");
  if (backup == nullptr) fail(copy.handle(), "copy to " + path);
  sqlite3_backup_step(backup, -1);
  // Finishing answers what went wrong on the way.
  if (sqlite3_backup_finish(backup) != SQLITE_OK) fail(copy.handle(), "copy to " + path);
}

}  // namespace topwire
