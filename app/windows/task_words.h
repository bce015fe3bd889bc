#pragma once

#include "app/models/calendar_work.h"

#include <QString>

namespace topwire {

/// What the calendar says of tasks, in the reader's language.

/// A task's state with the day that matters most: "3 days late", "closes Sat",
/// "to 24 Apr", "from 12 Apr".
QString urgencyText(const TaskView& view, Day today);
/// "5.5 of 28 rows · 27 h left".
QString progressText(const TaskView& view);
/// "Gala on M.9, first leaf, moderate", in the season of that day.
QString plantingText(const Session& session, const Planting& planting, Day day);
/// "Planting, Low Meadow".
QString taskText(const Session& session, const Task& task);
/// A bar's title, state and dates as lines.
QString barText(const MonthBar& bar, Day today);
/// "1 row", "4 rows".
QString rowsText(int count);
/// "8 jobs in 7 blocks · 242 hours left".
QString dayWorkText(const DayWork& work);
/// Why some of the day's tasks should wait, a line each: "Creek 1: Rain, 4.2 mm ..."
QString waitText(const Session& session, const DayWork& work);
/// A figure with at most one decimal, in the reader's locale.
QString figureText(double value);

}  // namespace topwire
