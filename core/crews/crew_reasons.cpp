#include "core/crews/crew_words.h"
#include "core/crews/hours.h"
#include "core/crews/task_names.h"

#include <algorithm>

namespace topwire {

namespace {

using Stints = std::vector<const Stint*>;

/// A plan as it stands on the morning of a day, its stints by job.
struct Morning {
  Morning(const CrewPlan& of, Day on)
      : plan(of), day(of.question.indexOf(on)), stints(of.question.tasks.size()) {
    for (const Stint& stint : of.schedule.stints)
      stints[static_cast<std::size_t>(stint.job)].push_back(&stint);
  }

  const CrewPlan& plan;
  int day;
  std::vector<Stints> stints;
};

/// One of its jobs.
class JobOnDay {
public:
  JobOnDay(const Morning& morning, int job)
      : plan_(&morning.plan), index_(job), day_(morning.day), left_(this->job().work()) {
    for (const Stint* stint : morning.stints[static_cast<std::size_t>(job)]) {
      if (stint->day < day_) left_ -= stint->work;
      if (stint->day == day_) today_.push_back(stint);
      if (stint->day > day_ && next_ < 0) next_ = stint->day;
    }
  }

  const CrewJob& job() const { return problem().jobs[static_cast<std::size_t>(index_)]; }

  const CrewProblem& problem() const { return plan_->question.problem; }

  Seconds left() const { return left_; }

  bool isToday() const { return !today_.empty(); }

  const Stints& stints() const { return today_; }

  std::optional<int> nextDay() const {
    return next_ < 0 ? std::nullopt : std::optional{next_};
  }

  int workingDaysTo(int last) const {
    int count = 0;
    for (int day = day_; day <= std::min(last, problem().days - 1); ++day)
      if (problem().lengthOf(day) > 0 && job().isOpenOn(day)) ++count;
    return count;
  }

  /// The first later day, up to the job's last in time, on which an hour is worth less.
  std::optional<int> cheaperDay() const {
    const Loss here = plan_->flow.priceOn(job().skill, day_);
    const int last = std::min(job().closes, problem().days - 1);
    for (int day = day_ + 1; day <= last; ++day) {
      if (problem().lengthOf(day) == 0) continue;
      if (job().isOpenOn(day) && plan_->flow.priceOn(job().skill, day) < here) return day;
    }
    return std::nullopt;
  }

  double price() const { return wholeOf(plan_->flow.priceOn(job().skill, day_)); }

private:
  const CrewPlan* plan_;
  int index_;
  int day_;
  Seconds left_;
  Stints today_;
  int next_ = -1;
};

Sentence whyUrgent(const CrewQuestion& question, const JobOnDay& here, int day) {
  const CrewJob& job = here.job();
  if (job.closes < day)
    return {phrase("Crew plan",
                   "It closed on %1; each further day costs %2 hours for every hour of "
                   "it."),
            {question.dayOf(job.closes), Figure{wholeOf(job.perDayLate), 2}}};
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
  const CrewBlock& block = problem.blocks[static_cast<std::size_t>(job.block)];
  return block.closedUntil(day) >= problem.lengthOf(day);
}

bool isWeatherShut(const CrewJob& job, int day) {
  return !job.shut.empty() && job.shut[static_cast<std::size_t>(day)];
}

/// Work that has to go before it and is not done by the evening before.
std::vector<TaskKey> undoneNeeds(const Morning& morning, const CrewJob& job) {
  std::vector<TaskKey> undone;
  for (const int need : job.needs)
    if (JobOnDay{morning, need}.left() > 0)
      undone.push_back(morning.plan.question.tasks[static_cast<std::size_t>(need)]);
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
  const std::int64_t late = *next - here.job().closes;
  return {counted(late,
                  phrase("Crew plan", "Planned for %1, %2 day past its closing."),
                  phrase("Crew plan", "Planned for %1, %2 days past its closing.")),
          {question.dayOf(*next), late}};
}

Sentence whyWaiting(const Orchard& orchard,
                    const Trade& trade,
                    const Morning& morning,
                    const JobOnDay& here) {
  const CrewJob& job = here.job();
  if (isWeatherShut(job, morning.day))
    return {phrase("Crew plan", "The day's weather is a reason to let it wait.")};
  if (isBlockShut(here.problem(), job, morning.day))
    return {phrase("Crew plan", "Its block is closed on this day.")};
  const std::vector<TaskKey> needs = undoneNeeds(morning, job);
  if (!needs.empty() && !here.isToday())
    return {phrase("Crew plan", "It waits for %1."), {namesOf(orchard, trade, needs, 1)}};
  return whenItsTurnComes(morning.plan, here);
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
  const Morning morning{plan, day};
  const JobOnDay here{morning, *job};
  if (!here.isToday()) return {whyWaiting(orchard, trade, morning, here)};
  const Stint& first = *here.stints().front();
  std::vector<Sentence> why;
  if (isPinned(question.problem, first))
    why.push_back({phrase("Crew plan", "It is pinned to this crew on this day.")});
  why.push_back(whyUrgent(question, here, morning.day));
  if (auto later = whyNotLater(question, here, morning.day))
    why.push_back(std::move(*later));
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
  const Morning morning{plan, day};
  std::vector<std::pair<int, WaitingTask>> byClosing;
  if (morning.day < 0 || morning.day >= question.problem.days) return {};
  for (std::size_t i = 0; i < question.tasks.size(); ++i) {
    const CrewJob& job = question.problem.jobs[i];
    if (job.opens > morning.day || job.last < morning.day) continue;
    const JobOnDay here{morning, static_cast<int>(i)};
    if (here.left() <= 0 || here.isToday()) continue;
    byClosing.push_back({job.closes,
                         {question.tasks[i],
                          hoursOf(here.left()),
                          whyWaiting(orchard, trade, morning, here)}});
  }
  std::ranges::stable_sort(byClosing, {}, [](const auto& one) { return one.first; });
  std::vector<WaitingTask> waiting;
  for (auto& [closes, task] : byClosing) waiting.push_back(std::move(task));
  return waiting;
}

}  // namespace topwire
