#include "core/crews/shortage.h"

#include "core/crews/index.h"
#include "core/crews/labour_network.h"
#include "core/crews/most_work.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>
#include <tuple>

namespace topwire {

namespace {

/// The jobs numbered, each to be done by its deadline or not at all.
CrewProblem askedBy(const CrewProblem& problem,
                    const std::vector<int>& jobs,
                    const std::function<int(const CrewJob&)>& deadlineOf) {
  CrewProblem asked;
  asked.days = problem.days;
  asked.skills = problem.skills;
  asked.dayLength = problem.dayLength;
  asked.blocks = problem.blocks;
  asked.gangs = problem.gangs;
  for (const int number : jobs) {
    CrewJob job = problem.jobs[at(number)];
    job.last = std::min(job.last, deadlineOf(job));
    job.closes = job.last;
    job.perDayLate = 0;
    job.leftUndone = 1;
    job.needs.clear();
    asked.jobs.push_back(std::move(job));
  }
  return asked;
}

Gang workersOf(const CrewProblem& problem, const Shortage& shortage, int workers) {
  Gang gang;
  gang.skills.resize(at(problem.skills));
  gang.skills[at(shortage.skill)] = true;
  gang.workers.resize(at(problem.days));
  for (int day = shortage.firstDay; day <= shortage.lastDay; ++day)
    gang.workers[at(day)] = workers;
  return gang;
}

/// Worker-seconds that find no place with further workers on the short days.
class WithMore {
public:
  WithMore(CrewProblem asked, const Shortage& shortage)
      : asked_{std::move(asked)}, shortage_{shortage} {
    asked_.gangs.emplace_back();
  }

  Seconds missing(int workers) {
    asked_.gangs.back() = workersOf(asked_, shortage_, workers);
    const MostWork most{asked_};
    return std::reduce(most.undone().begin(), most.undone().end());
  }

  /// Nobody could place more than these.
  int all() const {
    int workers = 0;
    for (const CrewJob& job : asked_.jobs)
      workers += asked_.blocks[at(job.block)].workersAtMost;
    return workers;
  }

private:
  CrewProblem asked_;
  const Shortage& shortage_;
};

/// The fewest with whom no more is missing than `least`.
int fewest(WithMore& more, Seconds least) {
  int enough = 1;
  while (more.missing(enough) > least) enough *= 2;
  int tooFew = enough / 2;
  while (enough - tooFew > 1) {
    const int middle = tooFew + (enough - tooFew) / 2;
    (more.missing(middle) > least ? tooFew : enough) = middle;
  }
  return enough;
}

class Finder {
public:
  Finder(const CrewProblem& problem,
         const std::function<int(const CrewJob&)>& deadlineOf);
  std::vector<Shortage> found();

private:
  void add(const Bottleneck& bottleneck);
  Shortage shortageOf(const Bottleneck& bottleneck, int skill) const;
  void spanDays(const Bottleneck& bottleneck, Shortage& shortage) const;
  void addHelp(const std::vector<int>& competing, Shortage& shortage) const;
  std::vector<int> numbersOf(const std::vector<int>& jobs) const;

  const CrewProblem& problem_;
  const std::function<int(const CrewJob&)>& deadlineOf_;
  std::vector<int> numbers_;  ///< in the problem, of the jobs asked
  CrewProblem asked_;
  MostWork most_;
  std::vector<Shortage> found_;
};

std::vector<int> jobsDueInside(const CrewProblem& problem,
                               const std::function<int(const CrewJob&)>& deadlineOf) {
  std::vector<int> jobs;
  for (std::size_t job = 0; job < problem.jobs.size(); ++job)
    if (deadlineOf(problem.jobs[job]) < problem.days)
      jobs.push_back(static_cast<int>(job));
  return jobs;
}

Finder::Finder(const CrewProblem& problem,
               const std::function<int(const CrewJob&)>& deadlineOf)
    : problem_{problem}
    , deadlineOf_{deadlineOf}
    , numbers_{jobsDueInside(problem, deadlineOf)}
    , asked_{askedBy(problem, numbers_, deadlineOf)}
    , most_{asked_} {}

std::vector<int> Finder::numbersOf(const std::vector<int>& jobs) const {
  std::vector<int> numbers;
  for (const int job : jobs) numbers.push_back(numbers_[at(job)]);
  return numbers;
}

void Finder::spanDays(const Bottleneck& bottleneck, Shortage& shortage) const {
  std::set<int> days;
  for (const auto& [skill, day] : bottleneck.skillDays)
    if (skill == shortage.skill) days.insert(day);
  if (days.empty())  // Not labour is short, but room or time in the window.
    for (const int number : shortage.jobs) {
      const CrewJob& job = problem_.jobs[at(number)];
      const int last = std::min(job.last, deadlineOf_(job));
      for (int day = std::max(0, job.opens); day <= last; ++day) days.insert(day);
    }
  if (days.empty()) return;
  shortage.firstDay = *days.begin();
  shortage.lastDay = *days.rbegin();
  for (int day = shortage.firstDay; day <= shortage.lastDay; ++day)
    shortage.workingDays += problem_.lengthOf(day) > 0 ? 1 : 0;
}

Shortage Finder::shortageOf(const Bottleneck& bottleneck, int skill) const {
  Shortage shortage;
  shortage.skill = skill;
  for (const int job : bottleneck.jobs) {
    if (asked_.jobs[at(job)].skill != skill) continue;
    shortage.jobs.push_back(numbers_[at(job)]);
    shortage.missing += most_.undone()[at(job)];
  }
  spanDays(bottleneck, shortage);
  return shortage;
}

/// Jobs that compete for other days than these take none of what is added here, so they
/// can be left out.
void Finder::addHelp(const std::vector<int>& competing, Shortage& shortage) const {
  WithMore more{askedBy(problem_, competing, deadlineOf_), shortage};
  const Seconds before = more.missing(0);
  const Seconds least = more.missing(more.all());
  shortage.beyondHelp =
      std::clamp<Seconds>(shortage.missing - (before - least), 0, shortage.missing);
  if (least < before) shortage.workersMore = fewest(more, least);
}

void Finder::add(const Bottleneck& bottleneck) {
  std::set<int> skills;
  for (const int job : bottleneck.jobs)
    if (most_.undone()[at(job)] > 0) skills.insert(asked_.jobs[at(job)].skill);
  for (const int skill : skills) {
    Shortage shortage = shortageOf(bottleneck, skill);
    if (bottleneck.skillDays.empty())
      shortage.beyondHelp = shortage.missing;
    else
      addHelp(numbersOf(bottleneck.jobs), shortage);
    found_.push_back(std::move(shortage));
  }
}

std::vector<Shortage> Finder::found() {
  for (const Bottleneck& bottleneck : most_.bottlenecks()) add(bottleneck);
  std::ranges::stable_sort(found_, {}, [](const Shortage& shortage) {
    return std::tuple{shortage.firstDay, shortage.lastDay, shortage.skill};
  });
  return std::move(found_);
}

}  // namespace

std::vector<Shortage> findShortages(
    const CrewProblem& problem, const std::function<int(const CrewJob&)>& deadlineOf) {
  return Finder{problem, deadlineOf}.found();
}

}  // namespace topwire
