#pragma once

#include "core/base/result.h"
#include "core/edit/change.h"
#include "core/planning/task.h"

#include <string>
#include <vector>

namespace topwire {

/// Deeds of crews, their days and the plans made for them; see deeds.h.
///
/// Fields of a crew: name, workers, hoursPerDay, skills, members, daysOff, youngMinutes.
/// Of a day: day, percent, reason. Of a turnout: crew, day, workers. Of a pin: task,
/// crew, day, reason. Of a closing: block, from, until, untilMinute, reason.

Checked<Change> addCrew(const Orchard& orchard, const Crew& crew);
Checked<Change> editCrew(const Orchard& orchard, const Crew& crew);
/// With its turnouts, pins and planned jobs; what it ticked stays.
Checked<Change> deleteCrew(const Orchard& orchard, CrewId crew);

/// In the place of what was said of that day before.
Checked<Change> setWorkDay(const Orchard& orchard, const WorkDay& work);
/// Works as on any other day of its weekday.
Checked<Change> clearWorkDay(const Orchard& orchard, Day day);

/// 0 to 999 workers; the crew's usual number takes the record away.
Checked<Change> setTurnout(const Orchard& orchard, const Turnout& turnout);

/// `skill` is what the pinned task asks for, empty where anyone can do it. Refused where
/// anything stands against the pin: the crew is off or lacks the skill, nobody works that
/// day, the block is closed all through it, or other pins say otherwise. A crew may be
/// pinned to several tasks of a day. A second `notBefore` of a task replaces the first.
Checked<Change> addPin(const Orchard& orchard,
                       const Pin& pin,
                       const std::string& skill = {});
Checked<Change> removePin(const Orchard& orchard, PinId pin);

Checked<Change> closeBlock(const Orchard& orchard, const BlockClosure& closure);
Checked<Change> reopenBlock(const Orchard& orchard, ClosureId closure);

/// Replaces what was accepted for that day.
Checked<Change> acceptPlan(const Orchard& orchard,
                           Day day,
                           const std::vector<PlannedJob>& jobs);

/// One job of an evening's entry: the rows done and the worker-minutes they took.
struct NotedHours {
  Task task;
  Words title;  ///< what the task is called
  RowSet rows;
  int minutes = 0;
  std::string by;
  int percent = 100;  ///< of rows not ticked on the day yet
};

/// Ticks the rows with their minutes, all in one change. Rows that are ticked on that day
/// already keep their percent, and what was noted of their minutes is replaced. A problem
/// is placed at "2.rows" for the second entry's rows.
Checked<Change> noteHours(const Orchard& orchard,
                          const std::vector<NotedHours>& noted,
                          Day day,
                          IdSource& ids);

}  // namespace topwire
