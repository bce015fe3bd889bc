#include "core/crews/first_days.h"

#include "core/crews/dispatcher.h"
#include "core/crews/flat_problem.h"
#include "core/crews/index.h"
#include "core/crews/job_values.h"
#include "core/crews/rounds.h"

#include <algorithm>
#include <tuple>

namespace topwire {

namespace {

constexpr int gone = -1;

class Terms {
public:
  Terms(const CrewProblem& problem, const EarlierPlan& earlier)
      : now_{problem}, was_{earlier.problem}, jobNow_{earlier.jobNow} {}

  /// All but the rows left of jobs, and what was agreed, which a tick takes rows out of.
  bool areTheSame() const {
    return now_.days == was_.days && now_.skills == was_.skills
           && now_.dayLength == was_.dayLength && now_.blocks == was_.blocks
           && now_.gangs == was_.gangs && now_.move == was_.move
           && now_.moveBetween == was_.moveBetween
           && now_.keepTogether == was_.keepTogether && areJobsTheSame()
           && arePinsTheSame();
  }

private:
  bool areJobsTheSame() const;
  bool isSame(const CrewJob& was, const CrewJob& now) const;
  bool arePinsTheSame() const;

  const CrewProblem& now_;
  const CrewProblem& was_;
  const std::vector<int>& jobNow_;
};

bool Terms::areJobsTheSame() const {
  std::size_t known = 0;
  for (std::size_t old = 0; old < was_.jobs.size(); ++old) {
    if (jobNow_[old] == gone) continue;
    if (known == now_.jobs.size() || at(jobNow_[old]) != known
        || !isSame(was_.jobs[old], now_.jobs[known]))
      return false;
    ++known;
  }
  return known == now_.jobs.size();
}

bool Terms::isSame(const CrewJob& was, const CrewJob& now) const {
  std::vector<int> needs;
  for (const int needed : was.needs)
    if (jobNow_[at(needed)] != gone) needs.push_back(jobNow_[at(needed)]);
  const auto terms = [](const CrewJob& job) {
    return std::tie(job.block,
                    job.skill,
                    job.opens,
                    job.closes,
                    job.last,
                    job.perDayLate,
                    job.leftUndone,
                    job.young,
                    job.shut,
                    job.pace);
  };
  return terms(was) == terms(now) && needs == now.needs;
}

bool Terms::arePinsTheSame() const {
  std::vector<GangPin> pins;
  for (GangPin pin : was_.pins) {
    pin.job = jobNow_[at(pin.job)];
    if (pin.job != gone) pins.push_back(pin);
  }
  return pins == now_.pins;
}

/// Where the rows of an earlier plan's jobs are now.
class RowsNow {
public:
  RowsNow(const CrewProblem& problem, const EarlierPlan& earlier);

  /// `gone` where it is done. Both by their place in the job.
  int at(int oldJob, int row) const;

  bool areSameIn(int oldJob) const { return changed_[topwire::at(oldJob)].empty(); }

  bool areAsTheyWere() const { return asTheyWere_; }

private:
  std::vector<std::vector<int>> changed_;  ///< by old job; empty: the same rows
  bool asTheyWere_ = true;                 ///< but for those that are done
};

RowsNow::RowsNow(const CrewProblem& problem, const EarlierPlan& earlier)
    : changed_(earlier.problem.jobs.size()) {
  for (std::size_t old = 0; old < changed_.size(); ++old) {
    if (earlier.jobNow[old] == gone) continue;
    const auto& was = earlier.problem.jobs[old].rows;
    const auto& is = problem.jobs[topwire::at(earlier.jobNow[old])].rows;
    if (was == is) continue;
    std::size_t next = 0;
    for (const RowOfWork& row : was)
      changed_[old].push_back(
          next < is.size() && is[next] == row ? static_cast<int>(next++) : gone);
    asTheyWere_ = asTheyWere_ && next == is.size();
  }
}

int RowsNow::at(int oldJob, int row) const {
  const auto& changed = changed_[topwire::at(oldJob)];
  return changed.empty() ? row : changed[topwire::at(row)];
}

/// Puts the later days of an earlier plan behind the first ones done anew.
class LaterDays {
public:
  LaterDays(const CrewProblem& problem, const EarlierPlan& earlier, const RowsNow& rows)
      : problem_{problem}
      , earlier_{earlier}
      , rows_{rows}
      , linked_(problem.jobs.size())
      , doneAt_(problem.jobs.size()) {
    for (std::size_t job = 0; job < linked_.size(); ++job)
      for (const int needed : problem.jobs[job].needs)
        linked_[job] = linked_[at(needed)] = 1;
  }

  void append(CrewSchedule& plan, int from);

private:
  using Moment = std::int64_t;
  static constexpr Moment never = -1;

  static Moment moment(int day, Seconds time) { return Moment{day} << 20 | time; }

  std::vector<Moment>& doneAt(int job);
  void note(const Stint& stint);
  bool mayBegin(const Stint& stint, int row);
  bool standsAlone(int job) const;
  Stint rest(const Stint& was);
  void shorten(Stint& stint) const;
  void count(CrewSchedule& plan) const;

  const CrewProblem& problem_;
  const EarlierPlan& earlier_;
  const RowsNow& rows_;
  std::vector<char> linked_;                 ///< by job
  std::vector<std::vector<Moment>> doneAt_;  ///< by job and row
};

std::vector<LaterDays::Moment>& LaterDays::doneAt(int job) {
  auto& known = doneAt_[at(job)];
  if (known.empty()) known.assign(problem_.jobs[at(job)].rows.size(), never);
  return known;
}

void LaterDays::note(const Stint& stint) {
  for (const int row : stint.rows)
    doneAt(stint.job)[at(row)] = moment(stint.day, stint.end);
}

/// The place of a row in a job, mostly the one it has in another job of the block; past
/// the last where the job does not hold it.
std::size_t placeOf(int number, const std::vector<RowOfWork>& rows, int guess) {
  if (at(guess) < rows.size() && rows[at(guess)].row == number) return at(guess);
  return static_cast<std::size_t>(std::ranges::find(rows, number, &RowOfWork::row)
                                  - rows.begin());
}

/// Not done yet, and all that it needs is.
bool LaterDays::mayBegin(const Stint& stint, int row) {
  if (doneAt(stint.job)[at(row)] != never) return false;
  const CrewJob& job = problem_.jobs[at(stint.job)];
  return std::ranges::all_of(job.needs, [&](int needed) {
    const auto& rows = problem_.jobs[at(needed)].rows;
    const std::size_t asked = placeOf(job.rows[at(row)].row, rows, row);
    if (asked == rows.size()) return true;
    const Moment done = doneAt(needed)[asked];
    if (done == never) return problem_.jobs[at(needed)].last < stint.day;
    return done <= moment(stint.day, stint.begin);
  });
}

/// Nothing of the job was done in the first days, it needs nothing, and nothing needs it.
bool LaterDays::standsAlone(int job) const {
  return doneAt_[at(job)].empty() && linked_[at(job)] == 0;
}

/// What is left of a stint, from its beginning on; where others between two are gone, the
/// straight way is no longer than theirs was.
Stint LaterDays::rest(const Stint& was) {
  Stint stint = was;
  stint.job = earlier_.jobNow[at(was.job)];
  if (stint.job != gone && rows_.areSameIn(was.job) && standsAlone(stint.job))
    return stint;
  stint.rows.clear();
  if (stint.job == gone) return stint;
  for (const int row : was.rows)
    if (const int now = rows_.at(was.job, row); now != gone && mayBegin(stint, now))
      stint.rows.push_back(now);
  if (stint.rows.size() < was.rows.size()) shorten(stint);
  note(stint);
  return stint;
}

void LaterDays::shorten(Stint& stint) const {
  const CrewJob& job = problem_.jobs[at(stint.job)];
  stint.work = 0;
  for (const int row : stint.rows) stint.work += job.rows[at(row)].work;
  const int crew = problem_.gangs[at(stint.gang)].crew;
  stint.end = stint.begin + timeFor(stint.work, stint.workers, job.paceOf(crew));
}

void LaterDays::append(CrewSchedule& plan, int from) {
  for (const Stint& stint : plan.stints) note(stint);
  std::vector<const Stint*> later;
  for (const Stint& stint : earlier_.schedule.stints)
    if (stint.day >= from) later.push_back(&stint);
  std::ranges::stable_sort(
      later, {}, [](const Stint* stint) { return moment(stint->day, stint->begin); });
  for (const Stint* was : later) {
    Stint stint = rest(*was);
    if (!stint.rows.empty()) plan.stints.push_back(std::move(stint));
  }
  std::ranges::sort(plan.stints, {}, [](const Stint& stint) {
    return std::tuple{stint.day, stint.gang, stint.begin};
  });
  count(plan);
}

void LaterDays::count(CrewSchedule& plan) const {
  plan.loss = 0;
  plan.undone.clear();
  for (const CrewJob& job : problem_.jobs) plan.undone.push_back(job.work());
  for (const Stint& stint : plan.stints) {
    plan.undone[at(stint.job)] -= stint.work;
    plan.loss += stint.work * problem_.jobs[at(stint.job)].lateOn(stint.day);
  }
  for (std::size_t job = 0; job < plan.undone.size(); ++job)
    plan.loss += plan.undone[job] * problem_.jobs[job].leftUndone;
  plan.moving = movingIn(problem_, plan.stints);
}

bool hasWholeRows(const CrewProblem& problem, const std::vector<Stint>& stints) {
  return std::ranges::all_of(
      stints, [&problem](const Stint& stint) { return isWhole(problem, stint); });
}

Rounds roundsNow(const CrewProblem& problem,
                 const EarlierPlan& earlier,
                 const RowsNow& rows,
                 int days) {
  Rounds rounds(problem.gangs.size() * at(problem.days));
  for (const Stint& stint : earlier.schedule.stints) {
    if (stint.day >= days) break;
    const int job = earlier.jobNow[at(stint.job)];
    if (job == gone) continue;
    auto& round = rounds[at(stint.gang * problem.days + stint.day)];
    for (const int row : stint.rows)
      if (const int now = rows.at(stint.job, row); now != gone) addRow(round, job, now);
  }
  return rounds;
}

}  // namespace

std::optional<CrewSchedule> redoFirstDays(const CrewProblem& problem,
                                          const LabourFlow& flow,
                                          const EarlierPlan& earlier,
                                          int days) {
  if (!Terms{problem, earlier}.areTheSame()
      || !hasWholeRows(earlier.problem, earlier.schedule.stints))
    return std::nullopt;
  const RowsNow rows{problem, earlier};
  if (!rows.areAsTheyWere()) return std::nullopt;
  const FlatProblem flat{problem, days};
  const JobValues values{flat, flow, {}};
  Dispatcher dispatcher{flat, values};
  dispatcher.follow(roundsNow(problem, earlier, rows, days), days);
  CrewSchedule plan = dispatcher.schedule();
  if (!hasWholeRows(problem, plan.stints)) return std::nullopt;
  LaterDays{problem, earlier, rows}.append(plan, days);
  return plan;
}

}  // namespace topwire
