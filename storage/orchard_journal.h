#pragma once

#include "core/edit/journal.h"
#include "storage/file_lock.h"
#include "storage/sqlite/connection.h"

#include <map>
#include <optional>
#include <string>

namespace topwire {

/// The journal of one open orchard file; keeps the file open and, where it holds the
/// lock, the writing place. Without the lock every write is refused.
class OrchardJournal final : public Journal {
public:
  OrchardJournal(std::string path, std::optional<FileLock> lock, Connection connection);
  ~OrchardJournal() override;
  OrchardJournal(const OrchardJournal&) = delete;
  OrchardJournal& operator=(const OrchardJournal&) = delete;

  Done write(const JournalEntry& entry) override;
  Done writeTasks(const std::map<TaskKey, StoredTask>& tasks) override;
  /// Reaches back only as far as entries can be read.
  Result<std::vector<JournalEntry>> recent(int count) const override;

private:
  std::string path_;
  std::optional<FileLock> lock_;   // taken before SQLite opens the file, so let go after
  mutable Connection connection_;  // reading an entry steps a statement
};

}  // namespace topwire
