#pragma once

#include "app/models/crew_day.h"
#include "core/crews/crew_words.h"
#include "core/crews/plan_and_done.h"

#include <QString>

namespace topwire {

/// What the Today page says, in the reader's language.

/// At the left of the lanes and of what stands on the same hours.
inline constexpr int crewHeadWidth = 136;
inline constexpr int crewHeadGap = 16;

/// "of 7, 48 hours", "all 4, 32 hours", "day off".
QString turnoutText(const CrewLane& lane);
/// "row 4", "rows 9–24", or "all 28 rows" where the task has no others.
QString rowsText(const RowSet& rows, const RowSet& ofTask);
/// "48 h" or "under 0.1 h", never parted at the end of a line.
QString hoursInOne(double hours);
QString crewName(const Orchard& orchard, CrewId crew);
/// "Kestrel: 5.5 rows ticked, hours not entered" of a planned job.
QString doneText(const Session& session, const PlanAndDone& job);
/// With days as they are said of days near by: "Sat 10 April".
QString sayNear(const Session& session, Sentence sentence);
QString sayNear(const Session& session, const std::vector<Sentence>& sentences);
/// The task's name and block, or its key's name where it is planned no more.
QString nameOfTask(Session& session, const TaskKey& task);

/// A job of a lane in words.
struct JobWords {
  QString name;
  QString shortName;  ///< where the name is too long for a narrow card
  QString where;      ///< "North Ridge, rows 9–24"
  QString hours;      ///< "48 h"
  QString when;       ///< "06:30–14:30", with the workers where the crew is split
  QString from;       ///< "06:30"
  QString state;      ///< "closes Sat 10 April"
  QString brief;      ///< "closes Sat"
  QString full;       ///< all of it in one line
};

JobWords jobWords(Session& session,
                  const TaskView& view,
                  const CrewLane& lane,
                  const LaneJob& job);

}  // namespace topwire
