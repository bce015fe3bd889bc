#include "core/crews/labour_ahead.h"

#include "core/calendar/iso_week.h"
#include "core/crews/hours.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr int daysOfWeek = 7;

Day mondayOf(Day day) {
  return daysOf(isoWeekOf(day)).first;
}

/// Days counted from the plan's first one, told by their weeks.
class Weeks {
public:
  explicit Weeks(const CrewQuestion& question)
      : offset_(daysBetween(mondayOf(question.first), question.first)) {
    const int count = (offset_ + question.problem.days - 1) / daysOfWeek + 1;
    for (int week = 0; week < count; ++week) {
      WeekOfLabour one;
      one.monday = plusDays(mondayOf(question.first), daysOfWeek * week);
      weeks_.push_back(one);
    }
  }

  WeekOfLabour& of(int day) {
    return weeks_[static_cast<std::size_t>((offset_ + day) / daysOfWeek)];
  }

  /// The first day of the week after that of `day`.
  int nextWeek(int day) const {
    return ((offset_ + day) / daysOfWeek + 1) * daysOfWeek - offset_;
  }

  std::vector<WeekOfLabour> take() { return std::move(weeks_); }

private:
  int offset_;
  std::vector<WeekOfLabour> weeks_;
};

/// The working days of the job's window still to come; where there are none, the first
/// working day on which it may be done at all.
std::vector<int> daysFor(const CrewProblem& problem, const CrewJob& job) {
  std::vector<int> days;
  const int end = std::min(job.last, problem.days - 1);
  for (int day = std::max(0, job.opens); day <= end; ++day) {
    if (day > job.closes && !days.empty()) break;
    if (problem.dayLength[static_cast<std::size_t>(day)] > 0) days.push_back(day);
  }
  return days;
}

void addWanted(Weeks& weeks, const CrewProblem& problem, const CrewJob& job) {
  const std::vector<int> days = daysFor(problem, job);
  for (const int day : days)
    weeks.of(day).wanted += hoursOf(job.work()) / static_cast<double>(days.size());
}

/// What is left of the job at the end of each week past its closing.
void addOverdue(Weeks& weeks,
                const CrewProblem& problem,
                const CrewJob& job,
                const std::vector<Seconds>& doneByDay) {
  Seconds left = job.work();
  for (int day = 0; day < problem.days; ++day) {
    left -= doneByDay[static_cast<std::size_t>(day)];
    const bool ends = weeks.nextWeek(day) == day + 1 || day + 1 == problem.days;
    if (ends && day > job.closes && day <= job.last && left > 0)
      weeks.of(day).overdue += hoursOf(left);
  }
}

std::vector<std::vector<Seconds>> doneByJob(const CrewPlan& plan) {
  const CrewProblem& problem = plan.question.problem;
  std::vector<std::vector<Seconds>> done(
      problem.jobs.size(), std::vector<Seconds>(static_cast<std::size_t>(problem.days)));
  for (const Stint& stint : plan.schedule.stints)
    done[static_cast<std::size_t>(stint.job)][static_cast<std::size_t>(stint.day)] +=
        stint.work;
  return done;
}

}  // namespace

std::vector<WeekOfLabour> labourByWeek(const CrewPlan& plan) {
  const CrewProblem& problem = plan.question.problem;
  Weeks weeks{plan.question};
  for (int day = 0; day < problem.days; ++day)
    weeks.of(day).there += hoursOf(problem.capacity(day));
  for (const Stint& stint : plan.schedule.stints)
    weeks.of(stint.day).planned += hoursOf(stint.work);
  const auto done = doneByJob(plan);
  for (std::size_t job = 0; job < problem.jobs.size(); ++job) {
    addWanted(weeks, problem, problem.jobs[job]);
    addOverdue(weeks, problem, problem.jobs[job], done[job]);
  }
  return weeks.take();
}

PlanSum sumOf(const CrewPlan& plan) {
  PlanSum sum;
  sum.loss = hoursOfLoss(plan.schedule.loss);
  sum.bound = hoursOfLoss(plan.flow.bound);
  const CrewProblem& problem = plan.question.problem;
  const std::vector<Seconds> late = lateWork(problem, plan.schedule);
  for (std::size_t job = 0; job < late.size(); ++job) {
    const bool over = problem.jobs[job].last < problem.days;
    const Seconds lost = over ? plan.schedule.undone[job] : 0;
    sum.hoursLost += hoursOf(lost);
    sum.hoursLate += hoursOf(late[job]);
    if (late[job] > 0 || lost > 0) ++sum.windowsMissed;
  }
  return sum;
}

}  // namespace topwire
