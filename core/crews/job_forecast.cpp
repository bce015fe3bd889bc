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

/// Days of the first and the last stint; -1 where there is none.
struct Worked {
  int first = -1;
  int last = -1;
};

std::vector<Worked> workedDays(const CrewPlan& plan) {
  std::vector<Worked> days(plan.question.problem.jobs.size());
  for (const Stint& stint : plan.schedule.stints) {
    Worked& of = days[static_cast<std::size_t>(stint.job)];
    if (of.first < 0) of.first = stint.day;
    of.last = stint.day;
  }
  return days;
}

TaskForecast forecastFor(const CrewPlan& plan,
                         const Worked& worked,
                         Seconds undone,
                         double hoursOfTicks) {
  TaskForecast forecast;
  if (worked.first < 0) return forecast;
  const CrewQuestion& question = plan.question;
  forecast.begins = question.dayOf(worked.first);
  if (undone > 0) return forecast;
  forecast.done = question.dayOf(worked.last);
  forecast.span = spanAround(question, worked.first, worked.last, spreadOf(hoursOfTicks));
  return forecast;
}

}  // namespace

std::vector<TaskForecast> forecastsOf(const CrewPlan& plan,
                                      const std::vector<double>& hoursOfTicks) {
  const std::vector<Worked> worked = workedDays(plan);
  std::vector<TaskForecast> forecasts;
  for (std::size_t job = 0; job < worked.size(); ++job)
    forecasts.push_back(
        forecastFor(plan, worked[job], plan.schedule.undone[job], hoursOfTicks.at(job)));
  return forecasts;
}

TaskForecast forecastOf(const CrewPlan& plan, const Task& task) {
  const auto job = plan.question.jobOf(task.key);
  if (!job) return {};
  const auto at = static_cast<std::size_t>(*job);
  return forecastFor(
      plan, workedDays(plan)[at], plan.schedule.undone[at], task.labour.hours);
}

}  // namespace topwire
