#pragma once

#include "core/base/result.h"
#include "core/orchard/orchard.h"

#include <optional>
#include <string>
#include <string_view>
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
                             Edit<TaskMark>,
                             Edit<PastStage>,
                             Edit<WeatherMonth>,
                             Edit<Measurement>,
                             Edit<SeasonTarget>,
                             Edit<SeasonClose>,
                             Edit<OwnProgramme>,
                             Edit<WorkDay>,
                             Edit<Turnout>,
                             Edit<Pin>,
                             Edit<BlockClosure>,
                             Edit<PlannedJob>>;

/// Every edit of the orchard is such a value: performing it is one transaction, one undo
/// step and one telling of the screens. Its name is the sentence history shows. A record
/// stands in it at most once.
struct Change {
  Sentence name;
  std::vector<AnyEdit> edits;

  bool empty() const { return edits.empty(); }

  friend bool operator==(const Change&, const Change&) = default;
};

/// The change that undoes this one. Ticks are only ever added, so the inverse of an added
/// tick is a further one that takes it back; `ids` gives that its id.
Change inverted(const Change& change, IdSource& ids);

/// Whether the change can be applied: each `before` is what the orchard holds, and no
/// planting goes that ticks stand on. The problem says which record is in the way. A
/// month of weather that is not sound is a broken contract.
Done fits(const Orchard& orchard, const Change& change);

/// Applies every edit of a change that fits; one that does not is a broken contract. A
/// planting's stored tasks go with it, since they are derived from it.
void apply(Orchard& orchard, const Change& change);

/// JSON text, for the journal and for handing changes between machines; reading one back
/// gives an equal change.
std::string toJson(const Change& change);
Result<Change> changeFromJson(std::string_view json);

}  // namespace topwire
