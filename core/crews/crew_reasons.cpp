#include "core/crews/crew_words.h"
#include "core/crews/task_names.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr double thousandths = 1000;
constexpr double secondsPerHour = 3600;

/// One job of a plan as it stands on the morning of a day.
class JobOnDay {
public:
  JobOnDay(const CrewPlan& plan, int job, int day)
      : plan_(&plan), index_(job), day_(day), left_(this->job().work()) {
    for (const Stint& stint : plan.schedule.stints) {
      if (stint.job != job) continue;
      if (stint.day < day) left_ -= stint.work;
      if (stint.day == day) today_.push_back(&stint);
      if (stint.day > day && next_ < 0) next_ = stint.day;
    }
  }

  const CrewJob& job() const { return problem().jobs[static_cast<std::size_t>(index_)]; }

  const CrewProblem& problem() const { return plan_->question.problem; }

  Seconds left() const { return left_; }

  bool isToday() const { return !today_.empty(); }

  const std::vector<const Stint*>& stints() const { return today_; }

  std::optional<int> nextDay() const {
    return next_ < 0 ? std::nullopt : std::optional{next_};
  }

  int workingDaysTo(int last) const {
    int count = 0;
    for (int day = day_; day <= std::min(last, problem().days - 1); ++day)
      if (problem().dayLength[static_cast<std::size_t>(day)] > 0 && job().isOpenOn(day))
        ++count;
    return count;
  }

  /// The first later day, up to the job's last in time, on which an hour is worth less.
  std::optional<int> cheaperDay() const {
    const Loss here = plan_->flow.priceOn(job().skill, day_);
    const int last = std::min(job().closes, problem().days - 1);
    for (int day = day_ + 1; day <= last; ++day) {
      if (problem().dayLength[static_cast<std::size_t>(day)] == 0) continue;
      if (job().isOpenOn(day) && plan_->flow.priceOn(job().skill, day) < here) return day;
    }
    return std::nullopt;
  }

  double price() const {
    return static_cast<double>(plan_->flow.priceOn(job().skill, day_)) / thousandths;
  }

private:
  const CrewPlan* plan_;
  int index_;
  int day_;
  Seconds left_;
  std::vector<const Stint*> today_;
  int next_ = -1;
};

Sentence whyUrgent(const CrewQuestion& question, const JobOnDay& here, int day) {
  const CrewJob& job = here.job();
  if (job.closes < day)
    return {phrase("Crew plan",
                   "It closed on %1; each further day costs %2 hours for every hour of "
                   "it."),
            {question.dayOf(job.closes),
             Figure{static_cast<double>(job.perDayLate) / thousandths, 2}}};
  const std::int64_t days = here.workingDaysTo(job.closes);
  return {counted(days,
                  phrase("Crew plan", "It closes on %1; this is its last working day."),
                  phrase("Crew plan",
                         "It closes on %1; with this one it has %2 working days.")),
          {question.dayOf(job.closes), days}};
}

std::optional<Sentence> whyNotLater(const CrewQuestion& question,
                                    const JobOnDay& here,
                                    int day) {
  if (here.job().closes < day) return std::nullopt;
  constexpr double nothing = 0.005;
  if (here.price() < nothing)
    return Sentence{phrase("Crew plan", "There are hands for it on this day.")};
  if (const auto cheaper = here.cheaperDay())
    return Sentence{phrase("Crew plan",
                           "An hour is worth %1 on this day; it gets cheaper on %2, but "
                           "not all of it can wait until then."),
                    {Figure{here.price(), 2}, question.dayOf(*cheaper)}};
  return Sentence{phrase("Crew plan",
                         "No later day before its closing is cheaper: an hour is worth "
                         "%1 on this day."),
                  {Figure{here.price(), 2}}};
}

/// The stint the gang comes from on the day, in the same block.
const Stint* stintBefore(const CrewPlan& plan, const Stint& stint) {
  const CrewProblem& problem = plan.question.problem;
  const auto blockOf = [&problem](const Stint& one) {
    return problem.jobs[static_cast<std::size_t>(one.job)].block;
  };
  const Stint* before = nullptr;
  for (const Stint& other : plan.schedule.stints)
    if (other.gang == stint.gang && other.day == stint.day && other.end <= stint.begin)
      before = &other;
  const bool stays =
      before != nullptr && before->job != stint.job && blockOf(*before) == blockOf(stint);
  return stays ? before : nullptr;
}

bool isPinned(const CrewProblem& problem, const Stint& stint) {
  return std::ranges::any_of(problem.pins, [&stint](const GangPin& pin) {
    return pin.gang == stint.gang && pin.job == stint.job && pin.day == stint.day;
  });
}

std::vector<TaskKey> waitingFor(const CrewQuestion& question, int job) {
  std::vector<TaskKey> waiting;
  for (std::size_t i = 0; i < question.problem.jobs.size(); ++i) {
    const std::vector<int>& needs = question.problem.jobs[i].needs;
    if (std::ranges::find(needs, job) != needs.end())
      waiting.push_back(question.tasks[i]);
  }
  return waiting;
}

bool isBlockShut(const CrewProblem& problem, const CrewJob& job, int day) {
  const auto& shut = problem.blocks[static_cast<std::size_t>(job.block)].shut;
  return std::ranges::any_of(shut, [&](const BlockShut& one) {
    return one.day == day && one.from >= problem.dayLength[static_cast<std::size_t>(day)];
  });
}

bool isWeatherShut(const CrewJob& job, int day) {
  return !job.shut.empty() && job.shut[static_cast<std::size_t>(day)];
}

/// Work that has to go before it and is not done by the evening before `day`.
std::vector<TaskKey> undoneNeeds(const CrewPlan& plan, const CrewJob& job, int day) {
  std::vector<TaskKey> undone;
  for (const int need : job.needs)
    if (JobOnDay{plan, need, day}.left() > 0)
      undone.push_back(plan.question.tasks[static_cast<std::size_t>(need)]);
  return undone;
}

Sentence whenItsTurnComes(const CrewPlan& plan, const JobOnDay& here) {
  const CrewQuestion& question = plan.question;
  const auto next = here.nextDay();
  const Day closes = question.dayOf(here.job().closes);
  if (!next)
    return {phrase("Crew plan", "No hands are left for it before it is over, on %1."),
            {question.dayOf(here.job().last)}};
  if (*next <= here.job().closes)
    return {phrase("Crew plan", "Planned for %1; it can wait, for it closes on %2."),
            {question.dayOf(*next), closes}};
  return {phrase("Crew plan", "Planned for %1, %2 days past its closing."),
          {question.dayOf(*next), std::int64_t{*next - here.job().closes}}};
}

Sentence whyWaiting(const Orchard& orchard,
                    const Trade& trade,
                    const CrewPlan& plan,
                    const JobOnDay& here,
                    int day) {
  const CrewJob& job = here.job();
  if (isWeatherShut(job, day))
    return {phrase("Crew plan", "The day's weather is a reason to let it wait.")};
  if (isBlockShut(here.problem(), job, day))
    return {phrase("Crew plan", "Its block is closed on this day.")};
  const std::vector<TaskKey> needs = undoneNeeds(plan, job, day);
  if (!needs.empty() && !here.isToday())
    return {phrase("Crew plan", "It waits for %1."), {namesOf(orchard, trade, needs, 1)}};
  return whenItsTurnComes(plan, here);
}

}  // namespace

std::vector<Sentence> whyOn(const Orchard& orchard,
                            const Trade& trade,
                            const CrewPlan& plan,
                            const TaskKey& task,
                            Day day) {
  const CrewQuestion& question = plan.question;
  const auto job = question.jobOf(task);
  if (!job) return {};
  const int index = question.indexOf(day);
  const JobOnDay here{plan, *job, index};
  if (!here.isToday()) return {whyWaiting(orchard, trade, plan, here, index)};
  const Stint& first = *here.stints().front();
  std::vector<Sentence> why;
  if (isPinned(question.problem, first))
    why.push_back({phrase("Crew plan", "It is pinned to this crew on this day.")});
  why.push_back(whyUrgent(question, here, index));
  if (auto later = whyNotLater(question, here, index)) why.push_back(std::move(*later));
  if (stintBefore(plan, first) != nullptr)
    why.push_back({phrase("Crew plan", "The crew stands in the block already.")});
  const std::vector<TaskKey> followers = waitingFor(question, *job);
  if (!followers.empty())
    why.push_back({phrase("Crew plan", "%1 waits for it."),
                   {namesOf(orchard, trade, followers, 2)}});
  return why;
}

std::vector<WaitingTask> waitingOn(const Orchard& orchard,
                                   const Trade& trade,
                                   const CrewPlan& plan,
                                   Day day) {
  const CrewQuestion& question = plan.question;
  const int index = question.indexOf(day);
  std::vector<WaitingTask> waiting;
  if (index < 0 || index >= question.problem.days) return waiting;
  for (std::size_t i = 0; i < question.tasks.size(); ++i) {
    const CrewJob& job = question.problem.jobs[i];
    if (job.opens > index || job.last < index) continue;
    const JobOnDay here{plan, static_cast<int>(i), index};
    if (here.left() <= 0 || here.isToday()) continue;
    waiting.push_back({question.tasks[i],
                       static_cast<double>(here.left()) / secondsPerHour,
                       whyWaiting(orchard, trade, plan, here, index)});
  }
  std::ranges::stable_sort(waiting, {}, [&](const WaitingTask& one) {
    return question.problem.jobs[static_cast<std::size_t>(*question.jobOf(one.task))]
        .closes;
  });
  return waiting;
}

}  // namespace topwire
