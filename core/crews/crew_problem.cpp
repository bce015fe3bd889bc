#include "core/crews/crew_problem.h"

#include <algorithm>

namespace topwire {

Seconds CrewJob::work() const {
  Seconds sum = 0;
  for (const RowOfWork& row : rows) sum += row.work;
  return sum;
}

Loss CrewJob::weight() const {
  const bool canBeLate = last > closes && perDayLate > 0;
  return canBeLate ? std::min(7 * perDayLate, leftUndone) : leftUndone;
}

Loss CrewJob::lateOn(int day) const {
  return day > closes ? (day - closes) * perDayLate : 0;
}

int CrewJob::paceOf(int crew) const {
  const auto at = static_cast<std::size_t>(crew);
  return at < pace.size() ? pace[at] : 1000;
}

bool CrewJob::isOpenOn(int day) const {
  if (day < opens || day > last) return false;
  const auto at = static_cast<std::size_t>(day);
  return at >= shut.size() || !shut[at];
}

Seconds CrewBlock::closedUntil(int day) const {
  Seconds until = 0;
  for (const BlockShut& closing : shut)
    if (closing.day == day) until = std::max(until, closing.from);
  return until;
}

bool Gang::hasSkill(int skill) const {
  const auto at = static_cast<std::size_t>(skill);
  return at < skills.size() && skills[at];
}

int Gang::workersOn(int day) const {
  const auto at = static_cast<std::size_t>(day);
  return at < workers.size() ? workers[at] : 0;
}

Seconds Gang::keptOn(int day) const {
  const auto at = static_cast<std::size_t>(day);
  return at < keptForYoung.size() ? keptForYoung[at] : 0;
}

Seconds CrewProblem::lengthOf(int day) const {
  const auto at = static_cast<std::size_t>(day);
  return at < dayLength.size() ? dayLength[at] : 0;
}

Seconds CrewProblem::lengthOf(const Gang& gang, int day) const {
  const auto at = static_cast<std::size_t>(day);
  return at < gang.length.size() ? std::min(gang.length[at], lengthOf(day))
                                 : lengthOf(day);
}

Seconds CrewProblem::moveFrom(int block, int other) const {
  if (block == other) return 0;
  const auto from = static_cast<std::size_t>(block);
  const auto to = static_cast<std::size_t>(other);
  return moveBetween.empty() ? move : moveBetween[from][to];
}

Seconds CrewProblem::capacity(int day) const {
  Seconds sum = 0;
  for (const Gang& gang : gangs) sum += gang.workersOn(day) * lengthOf(gang, day);
  return sum;
}

Seconds CrewProblem::roomFor(const CrewJob& job, int day) const {
  if (!job.isOpenOn(day)) return 0;
  const CrewBlock& block = blocks[static_cast<std::size_t>(job.block)];
  return block.workersAtMost
         * std::max<Seconds>(0, lengthOf(day) - block.closedUntil(day));
}

Loss CrewProblem::stake() const {
  Loss sum = 0;
  for (const CrewJob& job : jobs) sum += job.work() * job.weight();
  return sum;
}

bool isPinned(const CrewProblem& problem, const Stint& stint) {
  return std::ranges::any_of(problem.pins, [&stint](const GangPin& pin) {
    return pin.gang == stint.gang && pin.job == stint.job && pin.day == stint.day;
  });
}

Seconds timeFor(Seconds work, int workers, int pace) {
  const Seconds each = 1000 * Seconds{workers};
  return (work * pace + each - 1) / each;
}

Seconds movingIn(const CrewProblem& problem, const std::vector<Stint>& stints) {
  const auto blockOf = [&problem](const Stint& stint) {
    return problem.jobs[static_cast<std::size_t>(stint.job)].block;
  };
  Seconds moving = 0;
  for (std::size_t next = 1; next < stints.size(); ++next) {
    const Stint& from = stints[next - 1];
    const Stint& to = stints[next];
    if (from.gang != to.gang || from.day != to.day) continue;
    const Gang& gang = problem.gangs[static_cast<std::size_t>(to.gang)];
    moving += gang.workersOn(to.day) * problem.moveFrom(blockOf(from), blockOf(to));
  }
  return moving;
}

std::vector<Seconds> lateWork(const CrewProblem& problem, const CrewSchedule& schedule) {
  std::vector<Seconds> late(problem.jobs.size());
  for (const Stint& stint : schedule.stints) {
    const auto job = static_cast<std::size_t>(stint.job);
    if (stint.day > problem.jobs[job].closes) late[job] += stint.work;
  }
  return late;
}

}  // namespace topwire
