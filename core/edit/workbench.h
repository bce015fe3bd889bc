#pragma once

#include "core/base/notifier.h"
#include "core/edit/journal.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace topwire {

/// Seconds since 1970, UTC; the only clock the workbench sees.
using Clock = std::function<std::int64_t()>;

/// The one place an open orchard is changed. Write, apply, tell, in that order: a refused
/// write has touched neither memory nor screen.
class Workbench {
public:
  /// Takes up the undo history from the journal, so that undo survives a restart.
  Workbench(Orchard orchard, Journal& journal, Clock clock, IdSource ids);

  const Orchard& orchard() const { return orchard_; }

  IdSource& ids() { return ids_; }

  /// Written beside each entry from now on.
  void setUser(std::string name) { user_ = std::move(name); }

  /// An empty change is no step and does nothing.
  Done perform(const Change& change);
  /// Each answers the change it performed; a problem where there is none to take.
  Result<Change> undo();
  Result<Change> redo();
  /// The name of the change undo or redo would take; nothing where there is none.
  const Sentence* undoName() const;
  const Sentence* redoName() const;

  /// Stores the reconciled tasks. No undo step of its own; tells `onReplan`.
  Done replan(std::map<TaskKey, StoredTask> tasks);

  /// Told after each change, with the change as performed.
  Subscription onChange(std::function<void(const Change&)> listener);
  Subscription onReplan(std::function<void()> listener);

private:
  Done write(EntryKind kind, const Change& change);
  void restoreHistory();

  Orchard orchard_;
  Journal* journal_;
  Clock clock_;
  IdSource ids_;
  std::string user_;
  std::vector<Change> undoable_;
  std::vector<Change> redoable_;
  Notifier<Change> changed_;
  Notifier<> replanned_;
};

}  // namespace topwire
