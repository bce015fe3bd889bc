#pragma once

#include "core/crews/crew_plan.h"

#include <vector>

namespace topwire {

/// The day in a line: "15 of 16 turned out.", "120 worker-hours, all placed.", and where
/// there is one "30 hours short by Saturday".
struct DayHeadline {
  Sentence turnout;
  Sentence hours;
  std::optional<Sentence> shortBy;
};

DayHeadline headlineOf(const Orchard& orchard, const CrewPlan& plan, Day day);

/// The window in plain sentences with the figures: what will be missed, the days that are
/// too few, what more workers would save, what nobody can save.
std::vector<Sentence> wordsOf(const Orchard& orchard,
                              const Trade& trade,
                              const WindowAtRisk& risk);

/// Why the plan has this task on that day.
std::vector<Sentence> whyOn(const Orchard& orchard,
                            const Trade& trade,
                            const CrewPlan& plan,
                            const TaskKey& task,
                            Day day);

/// A task that is open and not in the day's plan, with how long it can wait.
struct WaitingTask {
  TaskKey task;
  double hours = 0;
  Sentence why;
};

std::vector<WaitingTask> waitingOn(const Orchard& orchard,
                                   const Trade& trade,
                                   const CrewPlan& plan,
                                   Day day);

/// "No plan can lose less than 12 hours of work; this one loses 14, of which 2 are
/// moves."
std::vector<Sentence> wordsOfWhole(const CrewPlan& plan);

/// "One more worker-hour on 8 April saves 3.1 hours."
Sentence wordsOfWorth(const DayWorth& worth);

/// Blocks that are closed at some time of the day: "Long Acre until 06:00 on Friday:
/// spray".
std::vector<Sentence> keptOut(const Orchard& orchard, Day day);

}  // namespace topwire
