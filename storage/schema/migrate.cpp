#include "storage/schema/migrate.h"

#include "storage/file_steps.h"
#include "storage/sqlite/statement.h"
#include "storage/sqlite/transaction.h"

#include <filesystem>

namespace topwire {

namespace {

constexpr int constraintViolated = 19;  // SQLITE_CONSTRAINT

/// A step may rebuild a table, during which references dangle; what counts is how it
/// leaves them.
void checkReferences(Connection& connection) {
  Statement statement{connection, "PRAGMA foreign_key_check"};
  if (statement.step())
    throw SqliteError{constraintViolated,
                      "a migration left a dangling reference in " + statement.text(0),
                      "PRAGMA foreign_key_check"};
}

void applyStep(Connection& connection, const std::string& sql, std::int64_t version) {
  Transaction transaction{connection};
  connection.execute(sql);
  connection.execute("PRAGMA user_version = " + std::to_string(version));
  checkReferences(connection);
  transaction.commit();
}

/// "creek.before-v2.topwire", numbered where that stands already.
std::string placeForCopy(const std::string& path, std::size_t version) {
  const std::filesystem::path file{path};
  for (int number = 1;; ++number) {
    std::string name = file.stem().string() + ".before-v" + std::to_string(version);
    if (number > 1) name += '-' + std::to_string(number);
    const auto place = file.parent_path() / (name + file.extension().string());
    if (!std::filesystem::exists(place)) return place.string();
  }
}

}  // namespace

void applySteps(Connection& connection, const std::vector<std::string>& steps) {
  connection.execute("PRAGMA foreign_keys = OFF");
  const auto seen = static_cast<std::size_t>(connection.number("PRAGMA user_version"));
  for (std::size_t step = seen; step < steps.size(); ++step)
    applyStep(connection, steps[step], static_cast<std::int64_t>(step + 1));
  connection.execute("PRAGMA foreign_keys = ON");
}

std::optional<Sentence> migrate(Connection& connection,
                                const std::string& path,
                                const std::vector<std::string>& steps) {
  const auto version = static_cast<std::size_t>(connection.number("PRAGMA user_version"));
  if (version >= steps.size()) return std::nullopt;
  const std::string copy = placeForCopy(path, steps.size());
  writeWhole(copy, [&](const std::string& temporary) { connection.copyTo(temporary); });
  applySteps(connection, steps);
  return Sentence{phrase("File",
                         "%1 came from an earlier version and was brought up to date. A "
                         "copy as it was is kept in %2."),
                  {path, copy}};
}

}  // namespace topwire
