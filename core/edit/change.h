#pragma once

#include "core/base/result.h"
#include "core/orchard/orchard.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace topwire {

/// One record before and after: no `before` adds, no `after` removes, both edit.
template <class Record>
struct Edit {
  std::optional<Record> before;
  std::optional<Record> after;

  friend bool operator==(const Edit&, const Edit&) = default;
};

using AnyEdit = std::variant<Edit<Settings>,
                             Edit<Block>,
                             Edit<Planting>,
                             Edit<Crew>,
                             Edit<Observation>,
                             Edit<Tick>,
                             Edit<TaskMark>>;

/// Every edit of the orchard is such a value: performing it is one transaction, one undo
/// step and one telling of the screens. Its name is the sentence history shows.
struct Change {
  Sentence name;
  std::vector<AnyEdit> edits;

  bool empty() const { return edits.empty(); }

  friend bool operator==(const Change&, const Change&) = default;
};

/// The change that undoes this one. Ticks are only ever added, so the inverse of an added
/// tick is a further one that takes it back; `ids` gives that its id.
Change inverted(const Change& change, IdSource& ids);

/// Applies every edit. Each `before` must be what the orchard holds; else it is a broken
/// contract, since changes are made from that orchard.
void apply(Orchard& orchard, const Change& change);

/// JSON text, for the journal and for handing changes between machines; reading one back
/// gives an equal change.
std::string toJson(const Change& change);
Result<Change> changeFromJson(std::string_view json);

}  // namespace topwire
