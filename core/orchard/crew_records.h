#pragma once

#include "core/orchard/task_records.h"

#include <compare>
#include <optional>
#include <string>
#include <vector>

namespace topwire {

struct Crew {
  CrewId id;
  std::string name;
  int workers = 1;  ///< as a rule; what turned out on a day is a Turnout
  double hoursPerDay = 8;
  /// What it can do beside general work, as the programmes' operations ask for it, in
  /// small letters. Empty: whatever is asked, an all-round crew.
  std::vector<std::string> skills = {};
  std::vector<std::string> members =
      {};                             ///< names; may be fewer than the workers, or none
  std::vector<DaySpan> daysOff = {};  ///< both ends included
  /// Worker-minutes a day kept for trees in first and second leaf while fruit is picked.
  int youngMinutes = 0;

  friend bool operator==(const Crew&, const Crew&) = default;
};

/// How much of the usual hours can be worked on a day that is not like others of its
/// kind: 0 percent on a holiday or a day lost to weather, 100 to work on a day of rest.
struct WorkDay {
  Day day{};
  int percent = 0;  ///< 0 to 100
  std::string reason = {};

  friend bool operator==(const WorkDay&, const WorkDay&) = default;
};

struct CrewDay {
  CrewId crew;
  Day day{};

  friend auto operator<=>(const CrewDay&, const CrewDay&) = default;
};

/// How many of a crew turned out, where that is not its usual number.
struct Turnout {
  CrewDay of;
  int workers = 0;

  friend bool operator==(const Turnout&, const Turnout&) = default;
};

/// `crewToJob`: that crew does that task on that day. `notBefore`: the task is not begun
/// before that day.
enum class PinKind { crewToJob, notBefore };

/// The grower's hand on the crew plan, around which the rest is planned.
struct Pin {
  PinId id;
  PinKind kind = PinKind::crewToJob;
  TaskKey task;
  std::optional<CrewId> crew = {};  ///< of crewToJob only
  Day day{};
  std::string reason = {};

  friend bool operator==(const Pin&, const Pin&) = default;
};

/// Nobody works in a block: re-entry after a spray, say, as its label and local law have
/// it, entered by the grower.
struct BlockClosure {
  ClosureId id;
  BlockId block;
  Day from{};  ///< closed from this day's beginning
  Day until{};
  int untilMinute = 0;  ///< of the day `until`, from midnight: the block opens then
  std::string reason = {};

  friend bool operator==(const BlockClosure&, const BlockClosure&) = default;
};

/// What names a job of an accepted plan: a crew's first on a day is its order 1.
struct PlannedPlace {
  Day day{};
  CrewId crew;
  int order = 1;

  friend auto operator<=>(const PlannedPlace&, const PlannedPlace&) = default;
};

/// One job of a morning's plan as it was accepted, for comparing plan and done.
struct PlannedJob {
  PlannedPlace of;
  TaskKey task;
  RowSet rows = {};
  int startMinute = 0;  ///< from midnight
  int workerMinutes = 0;
  int workers = 0;

  friend bool operator==(const PlannedJob&, const PlannedJob&) = default;
};

}  // namespace topwire
