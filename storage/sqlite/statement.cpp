#include "storage/sqlite/statement.h"

#include <sqlite3.h>

namespace topwire {

void Statement::Finisher::operator()(sqlite3_stmt* handle) const {
  sqlite3_finalize(handle);
}

Statement::Statement(Connection& connection, std::string_view sql)
    : connection_(&connection) {
  sqlite3_stmt* prepared = nullptr;
  const int code = sqlite3_prepare_v2(
      connection.handle(), sql.data(), static_cast<int>(sql.size()), &prepared, nullptr);
  handle_.reset(prepared);
  if (code != SQLITE_OK)
    throw SqliteError{code, sqlite3_errmsg(connection.handle()), std::string{sql}};
}

void Statement::bind(int parameter, std::int64_t number) {
  check(sqlite3_bind_int64(handle_.get(), parameter, number));
}

void Statement::bind(int parameter, double number) {
  check(sqlite3_bind_double(handle_.get(), parameter, number));
}

void Statement::bind(int parameter, std::string_view text) {
  // Without a byte to point at, SQLite would bind NULL.
  const char* bytes = text.empty() ? "" : text.data();
  check(sqlite3_bind_text(
      handle_.get(), parameter, bytes, static_cast<int>(text.size()), SQLITE_TRANSIENT));
}

void Statement::bindNothing(int parameter) {
  check(sqlite3_bind_null(handle_.get(), parameter));
}

bool Statement::step() {
  const int code = sqlite3_step(handle_.get());
  if (code == SQLITE_ROW) return true;
  if (code == SQLITE_DONE) return false;
  check(code);
  return false;
}

void Statement::run() {
  while (step()) {
  }
  reset();
}

void Statement::reset() {
  check(sqlite3_reset(handle_.get()));
}

bool Statement::isNothing(int column) const {
  return sqlite3_column_type(handle_.get(), column) == SQLITE_NULL;
}

std::int64_t Statement::number(int column) const {
  return sqlite3_column_int64(handle_.get(), column);
}

double Statement::real(int column) const {
  return sqlite3_column_double(handle_.get(), column);
}

std::string Statement::text(int column) const {
  const void* bytes = sqlite3_column_text(handle_.get(), column);
  const auto size = static_cast<std::size_t>(sqlite3_column_bytes(handle_.get(), column));
  return bytes == nullptr ? std::string{}
                          : std::string{static_cast<const char*>(bytes), size};
}

void Statement::check(int code) const {
  if (code == SQLITE_OK) return;
  throw SqliteError{
      code, sqlite3_errmsg(connection_->handle()), sqlite3_sql(handle_.get())};
}

}  // namespace topwire
