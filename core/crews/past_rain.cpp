#include "core/crews/labour_ahead.h"
#include "core/planning/day_cautions.h"

#include <algorithm>
#include <utility>

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

/// By job: not wholly done by its closing, and that lies in the plan's daily part.
std::vector<bool> missedBy(const CrewProblem& problem, const CrewSchedule& schedule) {
  const std::vector<Seconds> late = lateWork(problem, schedule);
  std::vector<bool> missed(late.size(), false);
  for (std::size_t job = 0; job < late.size(); ++job) {
    const int closes = problem.jobs[job].closes;
    const bool told = closes >= 0 && closes < crewPlanDaily;
    missed[job] = told && (late[job] > 0 || schedule.undone[job] > 0);
  }
  return missed;
}

/// Jobs the plan has in time though the same dispatching, in dry weather, has not: a
/// year's plan of them would say more of the search that was left out than of the year.
std::vector<bool> needSearch(const CrewPlan& plan) {
  const CrewProblem& problem = plan.question.problem;
  const std::vector<bool> planned = missedBy(problem, plan.schedule);
  std::vector<bool> need = missedBy(problem, dispatch(problem, plan.flow, {}));
  for (std::size_t job = 0; job < need.size(); ++job)
    need[job] = need[job] && !planned[job];
  return need;
}

}  // namespace

PastRain pastRain(const Orchard& orchard,
                  const Trade& trade,
                  const CrewQuestion& question) {
  PastRain rain{mindRain(orchard, trade, question), {}};
  const int from = firstUnknown(orchard, question);
  for (int back = 1; back <= mostYears; ++back)
    if (auto wet = wetDays(orchard, question, from, back))
      rain.years.push_back(std::move(*wet));
  return rain;
}

std::vector<MissedWindow> missedInPastYears(const PastRain& rain,
                                            const CrewPlan& plan,
                                            const std::function<bool()>& isWanted) {
  const CrewQuestion& question = plan.question;
  const int years = static_cast<int>(rain.years.size());
  if (years < fewestYears) return {};
  const std::vector<bool> leftOut = needSearch(plan);
  std::vector<int> times(question.tasks.size(), 0);
  for (const std::vector<bool>& wet : rain.years) {
    if (isWanted && !isWanted()) return {};
    const CrewProblem rained = rainedOn(question.problem, rain.minds, wet);
    const auto missed = missedBy(rained, dispatch(rained, plan.flow, {}));
    for (std::size_t job = 0; job < missed.size(); ++job)
      if (missed[job] && !leftOut[job]) ++times[job];
  }
  std::vector<MissedWindow> windows;
  for (std::size_t job = 0; job < times.size(); ++job)
    if (times[job] > 0) windows.push_back({question.tasks[job], times[job], years});
  std::ranges::stable_sort(windows, std::greater{}, &MissedWindow::missed);
  return windows;
}

}  // namespace topwire
