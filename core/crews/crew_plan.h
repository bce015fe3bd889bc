#pragma once

#include "core/crews/crew_dispatch.h"
#include "core/crews/crew_question.h"
#include "core/crews/shortage.h"

#include <vector>

namespace topwire {

/// Days planned one by one; weeks after them.
inline constexpr int crewPlanDaily = 56;
/// How far the plan looks: half a year, to the end of the 26th week.
int crewPlanDays(Day first);

struct CrewPlan {
  CrewQuestion question;
  LabourFlow flow;
  CrewSchedule schedule;
  Loss withoutMoves = 0;       ///< what the plan would lose if nobody had to go anywhere
  std::vector<Shortage> late;  ///< work that cannot all be done before it closes
  std::vector<Shortage> lost;  ///< work that cannot all be done while it is of use
};

CrewPlan planCrews(CrewQuestion question, const SearchLimits& limits);
/// At once, with the prices and warnings of an earlier plan from the same day on, which
/// need not ask of the same jobs; after a tick only the first days are gone through, and
/// the crews keep to what they were to do. Until the whole plan is made again.
CrewPlan replanCrews(CrewQuestion question, const CrewPlan& earlier);

/// One job of a lane.
struct LaneJob {
  TaskKey task;
  int gang = 0;         ///< of the crew, counted from 0; more than one where it is split
  int startMinute = 0;  ///< from midnight
  int endMinute = 0;
  int workers = 0;
  RowSet rows;
  double hours = 0;  ///< worker-hours
  bool pinned = false;

  friend bool operator==(const LaneJob&, const LaneJob&) = default;
};

/// One crew's day.
struct CrewLane {
  CrewId crew;
  int workers = 0;  ///< who turned out, or are expected
  int usual = 0;
  double hours = 0;  ///< worker-hours of the day
  double idle = 0;   ///< of them, without a job or a move
  int gangs = 1;
  std::vector<LaneJob> jobs;  ///< by gang, then start

  friend bool operator==(const CrewLane&, const CrewLane&) = default;
};

/// A lane for each crew, in the order of their names; without jobs on a day off.
std::vector<CrewLane> lanesOn(const Orchard& orchard, const CrewPlan& plan, Day day);

/// A window that cannot be met, or not wholly: tasks that compete for the same days.
struct WindowAtRisk {
  std::vector<TaskKey> tasks;  ///< the one that loses most first
  bool lost = false;           ///< past its use; else only late
  Day by{};                    ///< the earliest closing, or last useful day, among them
  double hoursMissing = 0;
  Day firstDay{};
  Day lastDay{};
  int workingDays = 0;
  int workersMore = 0;  ///< who would save all but `beyondHelp`; 0: nobody can
  double beyondHelp = 0;

  friend bool operator==(const WindowAtRisk&, const WindowAtRisk&) = default;
};

/// Lost ones first, then by day.
std::vector<WindowAtRisk> windowsAtRisk(const CrewPlan& plan);

/// When the plan has a task done: the days of its first and last stint.
struct TaskForecast {
  std::optional<Day> begins;
  std::optional<Day> done;  ///< nothing where rows are left at the plan's end
  /// Done on a day of this span in eight cases of ten, as far as the pace is known; from
  /// the crew's own ticks where there are enough.
  std::optional<DaySpan> span;
};

TaskForecast forecastOf(const CrewPlan& plan, const Task& task);
/// Of every job at once. `hoursOfTicks`, by job: what its pace is known from.
std::vector<TaskForecast> forecastsOf(const CrewPlan& plan,
                                      const std::vector<double>& hoursOfTicks);

/// What a day is worth.
struct DayWorth {
  Day day{};
  double hours = 0;  ///< worker-hours there are
  /// Worker-hours of loss that one more worker-hour, of the skill that is shortest, would
  /// save; 0 where there is time in hand.
  double saves = 0;

  friend bool operator==(const DayWorth&, const DayWorth&) = default;
};

std::vector<DayWorth> worthOfDays(const CrewPlan& plan, int days);

}  // namespace topwire
