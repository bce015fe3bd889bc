#pragma once

#include "storage/sqlite/sqlite_error.h"

#include <cstdint>
#include <memory>
#include <string>

struct sqlite3;

namespace topwire {

/// An open database; closed by the destructor. Every member throws SqliteError.
class Connection {
public:
  /// `create` makes the file where there is none. `readUnchanging` takes the file as one
  /// that nobody writes, so that it can be read where no side file can be made.
  enum class Mode { create, write, read, readUnchanging };

  Connection(const std::string& path, Mode mode);

  /// Runs statements that answer nothing, separated by semicolons.
  void execute(const std::string& sql);
  /// The first column of the first row; throws where there is no row.
  std::int64_t number(const std::string& sql);
  std::string text(const std::string& sql);
  /// Rows the last statement touched.
  int changes() const;
  bool inTransaction() const;

  /// Writes a whole copy, even while others write; `path` must be a new or empty file.
  void copyTo(const std::string& path);

  sqlite3* handle() { return handle_.get(); }

private:
  struct Closer {
    void operator()(sqlite3* handle) const;
  };

  std::unique_ptr<sqlite3, Closer> handle_;
};

}  // namespace topwire
