#pragma once

#include "core/base/result.h"
#include "core/edit/change.h"

#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace topwire {

/// How an entry came about; undoing and redoing are entries like any other.
enum class EntryKind { did, undid, redid };

struct JournalEntry {
  EntryKind kind = EntryKind::did;
  std::int64_t at = 0;  ///< seconds since 1970, UTC, as the caller's clock says
  std::string by;
  Change change;  ///< as performed: for `undid`, the inverse
};

/// Where changes are kept. Storage implements it over the orchard file; core knows no
/// more than this.
class Journal {
public:
  virtual ~Journal() = default;

  /// The change's records and the entry in one transaction; on a problem nothing of it
  /// is kept.
  virtual Done write(const JournalEntry& entry) = 0;
  /// Replaces the stored tasks in one transaction, outside the journal: they are derived.
  virtual Done writeTasks(const std::map<TaskKey, StoredTask>& tasks) = 0;
  /// The newest entries, oldest first.
  virtual Result<std::vector<JournalEntry>> recent(int count) const = 0;
};

}  // namespace topwire
