#include "core/crews/crew_plan.h"
#include "core/labour/learned_rates.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

/// Published paces of the same work differ by about half from place to place; taken as
/// what eight places in ten lie within. Ours, from memory.
constexpr double spreadUnseen = 0.5;
/// One crew's days still differ by this much, however well its pace is known. Ours.
constexpr double spreadOfDays = 0.15;

/// How far the hours a job takes may lie from those planned, as a share, in eight cases
/// of ten.
double spreadOf(double hoursOfTicks) {
  const double known = LearnedRates::hoursOfPrior;
  const double left = spreadUnseen * std::sqrt(known / (known + hoursOfTicks));
  return std::max(left, spreadOfDays);
}

/// The day `count` working days from `from` on, itself counted as the first.
int workingDayFrom(const CrewProblem& problem, int from, int count) {
  int day = from;
  for (int seen = 0; day < problem.days; ++day)
    if (problem.dayLength[static_cast<std::size_t>(day)] > 0 && ++seen >= count) break;
  return std::min(day, problem.days - 1);
}

int workingDays(const CrewProblem& problem, int first, int last) {
  int count = 0;
  for (int day = first; day <= last; ++day)
    if (problem.dayLength[static_cast<std::size_t>(day)] > 0) ++count;
  return count;
}

DaySpan spanAround(const CrewQuestion& question, int begins, int done, double spread) {
  const double days = workingDays(question.problem, begins, done);
  const auto at = [&](double share) {
    const int count = std::max(1, static_cast<int>(std::lround(days * share)));
    return question.dayOf(workingDayFrom(question.problem, begins, count));
  };
  return {at(1 - spread), at(1 + spread)};
}

}  // namespace

TaskForecast forecastOf(const CrewPlan& plan, const Task& task) {
  TaskForecast forecast;
  const CrewQuestion& question = plan.question;
  const auto job = question.jobOf(task.key);
  if (!job) return forecast;
  int first = -1;
  int last = -1;
  for (const Stint& stint : plan.schedule.stints) {
    if (stint.job != *job) continue;
    if (first < 0) first = stint.day;
    last = stint.day;
  }
  if (first < 0) return forecast;
  forecast.begins = question.dayOf(first);
  if (plan.schedule.undone[static_cast<std::size_t>(*job)] > 0) return forecast;
  forecast.done = question.dayOf(last);
  forecast.span = spanAround(question, first, last, spreadOf(task.labour.hours));
  return forecast;
}

}  // namespace topwire
