#include "core/edit/workbench.h"

#include <utility>

namespace topwire {

namespace {

constexpr int stepsRemembered = 500;

bool standsStill(const AnyEdit& any) {
  return std::visit([](const auto& edit) { return edit.before == edit.after; }, any);
}

Change withoutStandstill(Change change) {
  std::erase_if(change.edits, standsStill);
  return change;
}

}  // namespace

Workbench::Workbench(Orchard orchard, Journal& journal, Clock clock, IdSource ids)
    : orchard_(std::move(orchard))
    , journal_(&journal)
    , clock_(std::move(clock))
    , ids_(std::move(ids)) {
  restoreHistory();
}

Done Workbench::perform(const Change& change) {
  const Change step = withoutStandstill(change);
  if (step.empty()) return {};
  if (Done written = write(EntryKind::did, step); !written) return written;
  redoable_.clear();
  undoable_.push_back(step);
  changed_.tell(step);
  return {};
}

Result<Change> Workbench::undo() {
  if (undoable_.empty())
    return refuse(Sentence{phrase("Deed", "There is nothing to undo.")});
  Change inverse = inverted(undoable_.back(), ids_);
  if (Done written = write(EntryKind::undid, inverse); !written)
    return tl::unexpected{written.error()};
  undoable_.pop_back();
  redoable_.push_back(inverse);
  changed_.tell(inverse);
  return inverse;
}

Result<Change> Workbench::redo() {
  if (redoable_.empty())
    return refuse(Sentence{phrase("Deed", "There is nothing to redo.")});
  Change again = inverted(redoable_.back(), ids_);
  if (Done written = write(EntryKind::redid, again); !written)
    return tl::unexpected{written.error()};
  redoable_.pop_back();
  undoable_.push_back(again);
  changed_.tell(again);
  return again;
}

const Sentence* Workbench::undoName() const {
  return undoable_.empty() ? nullptr : &undoable_.back().name;
}

const Sentence* Workbench::redoName() const {
  return redoable_.empty() ? nullptr : &redoable_.back().name;
}

Done Workbench::replan(std::map<TaskKey, StoredTask> tasks) {
  if (tasks == orchard_.tasks) return {};
  if (Done written = journal_->writeTasks(tasks); !written) return written;
  orchard_.tasks = std::move(tasks);
  replanned_.tell();
  return {};
}

Subscription Workbench::onChange(std::function<void(const Change&)> listener) {
  return changed_.subscribe(std::move(listener));
}

Subscription Workbench::onReplan(std::function<void()> listener) {
  return replanned_.subscribe(std::move(listener));
}

/// Writes, then applies. A change that was made from another state of the orchard, such
/// as a form left open, is refused here before anything is written.
Done Workbench::write(EntryKind kind, const Change& change) {
  if (Done fit = fits(orchard_, change); !fit) return fit;
  if (Done written = journal_->write({kind, clock_(), user_, change}); !written)
    return written;
  apply(orchard_, change);
  return {};
}

/// Replays the kinds of the entries, not the entries. Where the stretch read begins in
/// the middle, a step undone or redone may lack its partner; only the oldest end of the
/// history is then missing.
void Workbench::restoreHistory() {
  const auto entries = journal_->recent(stepsRemembered);
  if (!entries) return;
  for (const JournalEntry& entry : *entries) {
    if (entry.kind == EntryKind::did) redoable_.clear();
    auto& from = entry.kind == EntryKind::undid ? undoable_ : redoable_;
    auto& to = entry.kind == EntryKind::undid ? redoable_ : undoable_;
    if (entry.kind != EntryKind::did && !from.empty()) from.pop_back();
    to.push_back(entry.change);
  }
}

}  // namespace topwire
