#pragma once

#include "app/models/session.h"
#include "core/crews/coming_jobs.h"
#include "core/crews/labour_ahead.h"
#include "core/labour/learned_paces.h"

#include <QString>

namespace topwire {

/// What the Labour page says, in the reader's language.

/// "1,240 h": whole, for sums of many jobs; what is less than an hour in minutes.
QString wholeHoursText(double hours);
/// "1,240 h of work and 2,600 h of hands in 26 weeks. Every window can be met."
QString summaryOf(const std::vector<WeekOfLabour>& weeks, const PlanSum& sum);

/// Its shape says the same as the word.
TaskState shapeOf(Finish finish);
/// "18–22 April", or "12 h of it undone".
QString doneText(const ComingJob& job);
/// "in time", "may be late", "3 days late".
QString finishText(const ComingJob& job);
/// "Leader tie, Creek 1: 12 h, done 18–22 April; window closes 24 April; in time".
QString wordsOf(const ComingJob& job, const QString& name);

/// "third leaf", "second to fourth leaf", "third leaf and older".
QString treesText(const LearnedPace& pace);
/// "38 s".
QString secondsText(double seconds);
/// "Heron 38 s"; of several crews a line each, with the hours: "Heron 38 s, from 12 h".
QString crewsText(const LearnedPace& pace);
QString wordsOf(const LearnedPace& pace);

}  // namespace topwire
