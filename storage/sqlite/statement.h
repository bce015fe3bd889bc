#pragma once

#include "storage/sqlite/connection.h"

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

struct sqlite3_stmt;

namespace topwire {

/// One prepared statement. Parameters are counted from 1 and columns from 0, as SQLite
/// does. Every member throws SqliteError.
class Statement {
public:
  /// `connection` must outlive the statement.
  Statement(Connection& connection, std::string_view sql);

  void bind(int parameter, std::int64_t number);
  void bind(int parameter, double number);
  void bind(int parameter, std::string_view text);
  void bindNothing(int parameter);

  /// True while there is a row.
  bool step();
  /// Runs a statement that answers no rows, and makes it ready to run again.
  void run();
  /// Ready to be bound and stepped again; what is bound stays.
  void reset();

  bool isNothing(int column) const;
  std::int64_t number(int column) const;
  double real(int column) const;
  std::string text(int column) const;

private:
  struct Finisher {
    void operator()(sqlite3_stmt* handle) const;
  };

  void check(int code) const;

  Connection* connection_;
  std::unique_ptr<sqlite3_stmt, Finisher> handle_;
};

}  // namespace topwire
