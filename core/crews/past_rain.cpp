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

/// Jobs not wholly done by their closing, of those that close in the plan's daily part.
std::vector<bool> missed(const CrewProblem& problem, const CrewSchedule& schedule) {
  std::vector<bool> late(problem.jobs.size(), false);
  for (const Stint& stint : schedule.stints) {
    const auto job = static_cast<std::size_t>(stint.job);
    if (stint.day > problem.jobs[job].closes) late[job] = true;
  }
  for (std::size_t job = 0; job < late.size(); ++job) {
    if (schedule.undone[job] > 0) late[job] = true;
    if (problem.jobs[job].closes < 0 || problem.jobs[job].closes >= crewPlanDaily)
      late[job] = false;
  }
  return late;
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
    const std::vector<bool> late = missed(rained, dispatch(rained, plan.flow, {}));
    for (std::size_t job = 0; job < late.size(); ++job)
      if (late[job]) ++times[job];
  }
  std::vector<MissedWindow> windows;
  if (years < fewestYears) return windows;
  for (std::size_t job = 0; job < times.size(); ++job)
    if (times[job] > 0) windows.push_back({question.tasks[job], times[job], years});
  std::ranges::stable_sort(windows, std::greater{}, &MissedWindow::missed);
  return windows;
}

}  // namespace topwire
