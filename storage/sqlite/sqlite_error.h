#pragma once

#include <stdexcept>
#include <string>

namespace topwire {

/// What SQLite answered when it refused. Thrown inside storage only; the public edge
/// turns it into a Problem.
class SqliteError : public std::runtime_error {
public:
  SqliteError(int extendedCode, const std::string& message, const std::string& sql)
      : std::runtime_error(message + " (" + std::to_string(extendedCode)
                           + ") in: " + sql.substr(0, 200))
      , extendedCode_(extendedCode) {}

  int extendedCode() const { return extendedCode_; }

  /// SQLITE_FULL, SQLITE_BUSY and the like.
  int code() const { return extendedCode_ & 0xFF; }

private:
  int extendedCode_;
};

}  // namespace topwire
