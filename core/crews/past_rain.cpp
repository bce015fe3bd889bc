#include "core/crews/labour_ahead.h"
#include "core/planning/day_cautions.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr int fewestYears = 5;
constexpr int mostYears = 30;

/// The same day of another year; 28 February for the 29th where there is none.
Day inYear(Day day, int year) {
  const CivilDate date = civil(day);
  const date::year_month_day there{date::year{year}, date.month(), date.day()};
  return there.ok() ? Day{there} : Day{date::year{year} / date.month() / date::last};
}

/// The first day of the plan of which the weather is not known or forecast.
int firstUnknown(const Orchard& orchard, const CrewQuestion& question) {
  int day = 0;
  while (day < question.problem.days
         && weatherOn(orchard, question.dayOf(day)) != nullptr)
    ++day;
  return day;
}

/// By day of the plan, wet or not in an earlier year; nothing where the rain of a day is
/// not on record.
std::optional<std::vector<bool>> wetDays(const Orchard& orchard,
                                         const CrewQuestion& question,
                                         int from,
                                         int yearsBack) {
  std::vector<bool> wet(static_cast<std::size_t>(question.problem.days), false);
  for (int day = from; day < question.problem.days; ++day) {
    const Day here = question.dayOf(day);
    const WeatherDay* then = weatherOn(orchard, inYear(here, yearOf(here) - yearsBack));
    if (then == nullptr || !then->rain) return std::nullopt;
    wet[static_cast<std::size_t>(day)] = isWetDay(*then);
  }
  return wet;
}

/// Jobs that rain is a reason to let wait.
std::vector<bool> mindRain(const Orchard& orchard,
                           const Trade& trade,
                           const CrewQuestion& question) {
  DayCaution rain;
  rain.kind = CautionKind::wet;
  std::vector<bool> mind;
  for (const TaskKey& task : question.tasks) {
    const Operation* operation = operationOf(orchard, trade.programmes, task);
    mind.push_back(operation != nullptr && shouldWait(*operation, {&rain, 1}) != nullptr);
  }
  return mind;
}

CrewProblem rainedOn(const CrewProblem& problem,
                     const std::vector<bool>& mind,
                     const std::vector<bool>& wet) {
  CrewProblem rained = problem;
  for (std::size_t job = 0; job < rained.jobs.size(); ++job) {
    if (!mind[job]) continue;
    std::vector<bool>& shut = rained.jobs[job].shut;
    shut.resize(wet.size(), false);
    for (std::size_t day = 0; day < wet.size(); ++day) shut[day] = shut[day] || wet[day];
  }
  return rained;
}

/// Not wholly done by its closing, of a job that closes in the plan's daily part.
bool isMissed(const CrewJob& job, Seconds late, Seconds undone) {
  const bool told = job.closes >= 0 && job.closes < crewPlanDaily;
  return told && (late > 0 || undone > 0);
}

}  // namespace

std::vector<MissedWindow> missedInPastYears(const Orchard& orchard,
                                            const Trade& trade,
                                            const CrewPlan& plan) {
  const CrewQuestion& question = plan.question;
  const std::vector<bool> mind = mindRain(orchard, trade, question);
  const int from = firstUnknown(orchard, question);
  std::vector<int> times(question.tasks.size(), 0);
  int years = 0;
  for (int back = 1; back <= mostYears; ++back) {
    const auto wet = wetDays(orchard, question, from, back);
    if (!wet) continue;
    ++years;
    const CrewProblem rained = rainedOn(question.problem, mind, *wet);
    const CrewSchedule schedule = dispatch(rained, plan.flow, {});
    const std::vector<Seconds> late = lateWork(rained, schedule);
    for (std::size_t job = 0; job < late.size(); ++job)
      if (isMissed(rained.jobs[job], late[job], schedule.undone[job])) ++times[job];
  }
  std::vector<MissedWindow> windows;
  if (years < fewestYears) return windows;
  for (std::size_t job = 0; job < times.size(); ++job)
    if (times[job] > 0) windows.push_back({question.tasks[job], times[job], years});
  std::ranges::stable_sort(windows, std::greater{}, &MissedWindow::missed);
  return windows;
}

}  // namespace topwire
