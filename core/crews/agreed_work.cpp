#include "core/crews/agreed_work.h"

#include "core/crews/rounds.h"

#include <algorithm>
#include <span>

namespace topwire {

namespace {

using Jobs = std::vector<const PlannedJob*>;

/// In their order.
Jobs acceptedFor(const Orchard& orchard, CrewId crew, Day day) {
  Jobs jobs;
  for (const auto& [place, job] : orchard.plannedJobs)
    if (place.day == day && place.crew == crew) jobs.push_back(&job);
  return jobs;
}

/// A crew's jobs are by gang, then by their beginning: a gang ends where the next job
/// does not begin later.
std::vector<std::span<const PlannedJob* const>> byGang(const Jobs& jobs) {
  std::vector<std::span<const PlannedJob* const>> gangs;
  std::size_t first = 0;
  for (std::size_t next = 1; next <= jobs.size(); ++next) {
    if (next < jobs.size() && jobs[next]->startMinute > jobs[next - 1]->startMinute)
      continue;
    gangs.push_back(std::span{jobs}.subspan(first, next - first));
    first = next;
  }
  return gangs;
}

/// The rows that are still to be done.
void addRows(std::vector<Stretch>& round,
             int number,
             const CrewJob& job,
             const RowSet& rows) {
  for (int index = 0; index < static_cast<int>(job.rows.size()); ++index)
    if (rows.contains(job.rows[static_cast<std::size_t>(index)].row))
      addRow(round, number, index);
}

class Agreement {
public:
  Agreement(CrewQuestion& question, const Orchard& orchard)
      : question_(&question), orchard_(&orchard) {}

  void add() {
    CrewProblem& problem = question_->problem;
    problem.agreed.assign(problem.gangs.size(), {});
    for (int crew = 0; crew < static_cast<int>(question_->crews.size()); ++crew)
      addCrew(crew);
    const auto isEmpty = [](const auto& round) { return round.empty(); };
    if (std::ranges::all_of(problem.agreed, isEmpty)) problem.agreed.clear();
  }

private:
  void addCrew(int crew) {
    const CrewId id = question_->crews[static_cast<std::size_t>(crew)];
    const Jobs jobs = acceptedFor(*orchard_, id, question_->first);
    const auto parts = byGang(jobs);
    const std::vector<std::size_t> gangs = atWork(crew);
    // Else it is not known whose jobs they were.
    if (parts.size() != gangs.size()) return;
    CrewProblem& problem = question_->problem;
    for (std::size_t part = 0; part < parts.size(); ++part)
      if (isAsMany(problem.gangs[gangs[part]], parts[part]))
        problem.agreed[gangs[part]] = roundOf(parts[part]);
  }

  std::vector<std::size_t> atWork(int crew) const {
    const CrewProblem& problem = question_->problem;
    std::vector<std::size_t> found;
    for (std::size_t gang = 0; gang < problem.gangs.size(); ++gang) {
      const Gang& one = problem.gangs[gang];
      if (one.crew == crew && one.workersOn(0) > 0 && problem.lengthOf(one, 0) > 0)
        found.push_back(gang);
    }
    return found;
  }

  /// Somebody who stayed away, or came after all, puts the day in question.
  bool isAsMany(const Gang& gang, std::span<const PlannedJob* const> jobs) const {
    const int there = gang.workersOn(0);
    int most = 0;
    bool blockIsFull = false;
    for (const PlannedJob* planned : jobs) {
      most = std::max(most, planned->workers);
      const auto number = question_->jobOf(planned->task);
      if (!number) continue;
      const CrewProblem& problem = question_->problem;
      const CrewJob& job = problem.jobs[static_cast<std::size_t>(*number)];
      const int room = problem.blocks[static_cast<std::size_t>(job.block)].workersAtMost;
      blockIsFull = blockIsFull || planned->workers == room;
    }
    return most == there || (most < there && blockIsFull);
  }

  std::vector<Stretch> roundOf(std::span<const PlannedJob* const> jobs) const {
    std::vector<Stretch> round;
    for (const PlannedJob* planned : jobs)
      if (const auto number = question_->jobOf(planned->task))
        addRows(round,
                *number,
                question_->problem.jobs[static_cast<std::size_t>(*number)],
                planned->rows);
    return round;
  }

  CrewQuestion* question_;
  const Orchard* orchard_;
};

}  // namespace

void addAgreed(CrewQuestion& question, const Orchard& orchard) {
  Agreement{question, orchard}.add();
}

}  // namespace topwire
