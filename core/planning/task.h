#pragma once

#include "core/labour/labour_rate.h"
#include "core/orchard/records.h"
#include "core/phenology/outlook.h"
#include "core/planning/conditions.h"
#include "core/programme/programme.h"

#include <optional>
#include <string>
#include <vector>

namespace topwire {

/// Where an `after` anchor found its day.
struct CompletionBasis {
  TaskKey task;
  bool done = false;  ///< else it is that task's closing that was taken
  Day day{};

  friend bool operator==(const CompletionBasis&, const CompletionBasis&) = default;
};

/// Work that must be over before flowers open hangs on the early edge of bloom's span and
/// not on its middle, until bloom is seen. Where that edge lies before the middle of the
/// window as expected, the middle holds: half a window is left to work in.
enum class EarlyEdge { none, taken, heldToMiddle };

/// Why a window's edge lies where it does, as data: the anchor, the day it stood on and
/// where that came from, and the day that resulted.
struct DateReason {
  Anchor anchor;
  Day anchorDay{};  ///< the stage's date, or its early edge where that was looked to
  EarlyEdge earlyEdge = EarlyEdge::none;
  Day day{};  ///< after offset, and for a pass of a repeat, after its interval
  std::optional<StageEstimate> stage;
  std::optional<CompletionBasis> completion;
  int repeatEvery = 0;                 ///< days, where a repeat placed this pass
  std::optional<GrowthPace> growth;    ///< where it made `repeatEvery` shorter
  std::optional<TaskKey> heldForWork;  ///< what has to be done first opens no earlier
  bool heldForPlanting = false;  ///< the trees are not in the ground before this day
  bool byHand = false;           ///< a person moved it here

  friend bool operator==(const DateReason&, const DateReason&) = default;
};

/// One operation on one planting in one season, pass n.
struct Task {
  TaskKey key;
  int leaf = 0;
  Vigour vigour = Vigour::moderate;
  Day opens{};
  Day closes{};  ///< the last day, inclusive
  /// The last day on which doing it still helps; never before `closes`.
  std::optional<Day> cutOff;
  RowSet rows;
  int trees = 0;
  int secondsPerTree = 0;
  LabourRate labour;  ///< where those come from; nothing for work added by hand
  DateReason opensWhy;
  DateReason closesWhy;
  std::optional<DateReason> cutOffWhy;
  std::vector<ConditionReason> conditions;  ///< all hold, or were not measured
  std::optional<ConditionReason> until;     ///< what ends the visits of a repeat
  /// Unfinished work of this planting that has to be done first, row by row.
  std::vector<TaskKey> waitsFor;
  std::string handTitle;  ///< work a person added
  bool noLongerAsked = false;

  friend bool operator==(const Task&, const Task&) = default;
};

struct Plan {
  std::vector<Task> tasks;  ///< by opening, then key
  /// What could not be dated, and why.
  std::vector<Sentence> notes;

  const Task* find(const TaskKey& key) const;
};

/// "creek-1-gala:leader-tie:2027:2", as the command line takes and prints it.
std::string taskText(const Orchard& orchard, const TaskKey& key);
std::optional<TaskKey> parseTask(const Orchard& orchard, std::string_view text);

}  // namespace topwire
