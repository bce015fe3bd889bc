#include "core/crews/coming_jobs.h"

#include "core/crews/hours.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace topwire {

namespace {

/// By job: worker-hours of ticks behind its pace.
std::vector<double> hoursKnown(const CrewQuestion& question,
                               const std::vector<TaskView>& views) {
  std::map<TaskKey, double> known;
  for (const TaskView& view : views)
    known.emplace(view.task->key, view.task->labour.hours);
  std::vector<double> byJob;
  for (const TaskKey& task : question.tasks) {
    const auto found = known.find(task);
    byJob.push_back(found == known.end() ? 0 : found->second);
  }
  return byJob;
}

Finish finishOf(const ComingJob& job, Day end) {
  if (!job.forecast.done) return job.lastUse <= end ? Finish::lost : Finish::beyond;
  if (*job.forecast.done > job.closes) return Finish::late;
  return job.forecast.span->last > job.closes ? Finish::maybeLate : Finish::inTime;
}

}  // namespace

std::vector<ComingJob> comingJobs(const CrewPlan& plan,
                                  const std::vector<TaskView>& views,
                                  int days) {
  const CrewQuestion& question = plan.question;
  const Day until = question.dayOf(days - 1);
  const Day end = question.dayOf(question.problem.days - 1);
  const std::vector<TaskForecast> forecasts =
      forecastsOf(plan, hoursKnown(question, views));
  std::vector<ComingJob> jobs;
  for (std::size_t index = 0; index < question.tasks.size(); ++index) {
    const CrewJob& asked = question.problem.jobs[index];
    ComingJob job{question.tasks[index],
                  hoursOf(asked.work()),
                  hoursOf(plan.schedule.undone[index]),
                  question.dayOf(asked.opens),
                  question.dayOf(asked.closes),
                  question.cutOffs[index],
                  forecasts[index],
                  Finish::inTime};
    if (job.forecast.begins.value_or(job.closes) > until) continue;
    job.finish = finishOf(job, end);
    jobs.push_back(std::move(job));
  }
  std::ranges::stable_sort(jobs, {}, [](const ComingJob& job) {
    return std::tuple{job.finish, job.closes, job.forecast.done.value_or(job.lastUse)};
  });
  return jobs;
}

}  // namespace topwire
