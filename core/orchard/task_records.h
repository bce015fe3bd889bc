#pragma once

#include "core/calendar/day.h"
#include "core/calendar/season.h"
#include "core/orchard/record_ids.h"
#include "core/orchard/row_set.h"

#include <compare>
#include <optional>
#include <string>

namespace topwire {

/// What names a task for good: a new plan finds the old one's ticks by it.
struct TaskKey {
  PlantingId planting;
  std::string operation;
  Season season{};
  int pass = 1;  ///< counted from 1 within the season

  friend auto operator<=>(const TaskKey&, const TaskKey&) = default;
};

/// A record that rows of a task were done. Only ever added; taking one back is a further
/// tick that names it, and may be taken back in its turn.
struct Tick {
  TickId id;
  TaskKey task;
  RowSet rows;
  int percent = 100;  ///< how much of each row is done by now, 1 to 100
  int minutes = 0;    ///< worker-minutes it took; 0 where not noted
  std::string by;
  Day day{};
  std::optional<TickId> takesBack;

  friend bool operator==(const Tick&, const Tick&) = default;
};

/// A person's word on one task, which replanning respects: another window, set aside with
/// a reason, or work added by hand that no operation asks for.
struct TaskMark {
  TaskKey task;
  std::optional<DaySpan> moved;
  std::string setAsideReason;  ///< set aside where not empty
  std::string handTitle;  ///< work added by hand where not empty; `moved` is its window
  int handSecondsPerTree = 0;

  friend bool operator==(const TaskMark&, const TaskMark&) = default;
};

/// A task's dates as the plan last reconciled, kept so that ticks have something to stand
/// on and a shift can be told.
struct StoredTask {
  TaskKey key;
  Day opens{};
  Day closes{};
  std::optional<Day> cutOff;
  /// The rules no longer ask for it; kept because it has ticks or a person's word.
  bool noLongerAsked = false;

  friend bool operator==(const StoredTask&, const StoredTask&) = default;
};

}  // namespace topwire
