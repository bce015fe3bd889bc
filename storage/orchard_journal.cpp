#include "storage/orchard_journal.h"

#include "storage/file_problems.h"
#include "storage/sqlite/statement.h"
#include "storage/sqlite/transaction.h"

#include <algorithm>
#include <array>

namespace topwire {

namespace {

/// By the enumerators' places.
constexpr std::array kindWords{"did", "undid", "redid"};

std::optional<EntryKind> parseKind(const std::string& word) {
  for (std::size_t i = 0; i < kindWords.size(); ++i)
    if (word == kindWords[i]) return static_cast<EntryKind>(i);
  return std::nullopt;
}

void insertEntry(Connection& connection, const JournalEntry& entry) {
  Statement statement{
      connection,
      "INSERT INTO journal (kind, at, who, name, change) VALUES (?, ?, ?, ?, ?)"};
  statement.bind(1, std::string_view{kindWords[static_cast<std::size_t>(entry.kind)]});
  statement.bind(2, entry.at);
  statement.bind(3, entry.by);
  statement.bind(4, inEnglish(entry.change.name));
  statement.bind(5, toJson(entry.change));
  statement.run();
}

std::optional<JournalEntry> readEntry(const Statement& statement) {
  const auto kind = parseKind(statement.text(0));
  auto change = changeFromJson(statement.text(3));
  if (!kind || !change) return std::nullopt;
  return JournalEntry{*kind, statement.number(1), statement.text(2), std::move(*change)};
}

Done lookOnly() {
  return refuse(Sentence{
      phrase("File", "The file was opened to look at only, so nothing was changed.")});
}

}  // namespace

OrchardJournal::OrchardJournal(std::string path,
                               std::optional<FileLock> lock,
                               Connection connection)
    : path_(std::move(path))
    , lock_(std::move(lock))
    , connection_(std::move(connection)) {}

OrchardJournal::~OrchardJournal() {
  if (!lock_) return;
  try {
    connection_.execute("PRAGMA wal_checkpoint(TRUNCATE)");
  } catch (const SqliteError&) {
    // The log stays beside the file, whole; the next one to open it reads it.
  }
}

Done OrchardJournal::write(const JournalEntry& entry) {
  if (!lock_) return lookOnly();
  return guarded(path_, [&]() -> Done {
    Transaction transaction{connection_};
    writeEdits(connection_, entry.change.edits);
    insertEntry(connection_, entry);
    transaction.commit();
    return {};
  });
}

Done OrchardJournal::writeTasks(const std::map<TaskKey, StoredTask>& tasks) {
  if (!lock_) return lookOnly();
  return guarded(path_, [&]() -> Done {
    Transaction transaction{connection_};
    replaceTasks(connection_, tasks);
    transaction.commit();
    return {};
  });
}

Result<std::vector<JournalEntry>> OrchardJournal::recent(int count) const {
  return guarded(path_, [&]() -> Result<std::vector<JournalEntry>> {
    Statement statement{
        connection_,
        "SELECT kind, at, who, change FROM journal ORDER BY number DESC LIMIT ?"};
    statement.bind(1, std::int64_t{count});
    std::vector<JournalEntry> entries;
    while (statement.step()) {
      auto entry = readEntry(statement);
      if (!entry) break;
      entries.push_back(std::move(*entry));
    }
    std::ranges::reverse(entries);
    return entries;
  });
}

}  // namespace topwire
