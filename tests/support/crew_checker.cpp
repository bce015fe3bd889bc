#include "tests/support/crew_checker.h"

#include <algorithm>
#include <map>
#include <sstream>
#include <tuple>

namespace topwire::testing {

namespace {

std::size_t at(int index) {
  return static_cast<std::size_t>(index);
}

struct Place {
  int job;
  int row;  ///< index in the job
  auto operator<=>(const Place&) const = default;
};

class Checker {
public:
  Checker(const CrewProblem& problem, const CrewSchedule& schedule);
  std::vector<std::string> found();

private:
  template <class... Parts>
  void fault(const Stint& stint, const Parts&... parts);

  const CrewJob& jobOf(const Stint& stint) const { return problem_.jobs[at(stint.job)]; }

  int paceOf(const Stint& stint) const;
  Seconds dayOf(int gang, int day) const;
  Seconds wholeDay(const Stint& stint) const;
  void checkOrder();
  void checkStint(const Stint& stint);
  void checkLength(const Stint& stint);
  void checkGangDay(const std::vector<const Stint*>& stints);
  void checkPins(const std::vector<const Stint*>& stints);
  void checkPin(const GangPin& pin, const std::vector<const Stint*>& stints);
  bool couldTake(
      const GangPin& pin, int row, Seconds now, Seconds begin, Seconds budget) const;
  void checkBlocks();
  void checkRows();
  void checkNeeds(const Stint& stint);
  void checkSplit(const Place& place, const std::vector<const Stint*>& stints);
  void checkTotals();

  const CrewProblem& problem_;
  const CrewSchedule& schedule_;
  std::map<Place, std::vector<const Stint*>> stintsOf_;
  std::map<std::pair<int, int>, std::vector<const Stint*>> byGangDay_;
  std::vector<std::string> faults_;
};

Checker::Checker(const CrewProblem& problem, const CrewSchedule& schedule)
    : problem_{problem}, schedule_{schedule} {
  for (const Stint& stint : schedule.stints) {
    byGangDay_[{stint.gang, stint.day}].push_back(&stint);
    for (const int row : stint.rows) stintsOf_[{stint.job, row}].push_back(&stint);
  }
}

template <class... Parts>
void Checker::fault(const Stint& stint, const Parts&... parts) {
  std::ostringstream text;
  text << "gang " << stint.gang << " day " << stint.day << " job " << stint.job << " at "
       << stint.begin << ": ";
  (text << ... << parts);
  faults_.push_back(text.str());
}

int Checker::paceOf(const Stint& stint) const {
  const CrewJob& job = jobOf(stint);
  return job.pace.empty() ? 1000 : job.pace[at(problem_.gangs[at(stint.gang)].crew)];
}

/// How long the gang works that day.
Seconds Checker::dayOf(int gang, int day) const {
  const std::vector<Seconds>& own = problem_.gangs[at(gang)].length;
  const Seconds all = problem_.dayLength[at(day)];
  return own.empty() ? all : std::min(own[at(day)], all);
}

/// Worker-seconds of the gang's whole day that this job could have.
Seconds Checker::wholeDay(const Stint& stint) const {
  const CrewJob& job = jobOf(stint);
  const Gang& gang = problem_.gangs[at(stint.gang)];
  const int workers =
      std::min(gang.workers[at(stint.day)], problem_.blocks[at(job.block)].workersAtMost);
  const Seconds all = dayOf(stint.gang, stint.day);
  Seconds kept = 0;
  if (!job.young && !gang.keptForYoung.empty())
    kept = gang.keptForYoung[at(stint.day)] / gang.workers[at(stint.day)];
  return std::max<Seconds>(0, all - kept) * workers;
}

void Checker::checkOrder() {
  const auto key = [](const Stint& stint) {
    return std::tuple{stint.day, stint.gang, stint.begin};
  };
  if (!std::ranges::is_sorted(schedule_.stints, {}, key))
    faults_.emplace_back("stints are not by day, gang and beginning");
}

void Checker::checkLength(const Stint& stint) {
  const Seconds done = (stint.end - stint.begin) * stint.workers * 1000;
  const Seconds asked = stint.work * paceOf(stint);
  if (done < asked) fault(stint, "too short for its work");
  if (done - asked >= 1000 * stint.workers) fault(stint, "longer than its work");
}

void Checker::checkStint(const Stint& stint) {
  const CrewJob& job = jobOf(stint);
  const Gang& gang = problem_.gangs[at(stint.gang)];
  const CrewBlock& block = problem_.blocks[at(job.block)];
  if (stint.day < 0 || stint.day >= problem_.days) return fault(stint, "no such day");
  if (!gang.skills[at(job.skill)]) fault(stint, "lacks the skill");
  if (stint.day < job.opens || stint.day > job.last) fault(stint, "outside its window");
  if (at(stint.day) < job.shut.size() && job.shut[at(stint.day)]) fault(stint, "shut");
  if (stint.workers < 1 || stint.workers > gang.workers[at(stint.day)])
    fault(stint, "workers it has not got");
  if (stint.begin < 0 || stint.end > dayOf(stint.gang, stint.day))
    fault(stint, "beyond the day");
  for (const BlockShut& shut : block.shut)
    if (shut.day == stint.day && stint.begin < shut.from) fault(stint, "block is shut");
  if (stint.work < 1 || stint.rows.empty()) fault(stint, "does nothing");
  checkLength(stint);
  checkNeeds(stint);
}

/// Every row that a row needs has ended when its first stint begins, or can be done no
/// more.
void Checker::checkNeeds(const Stint& stint) {
  const CrewJob& job = jobOf(stint);
  for (const int needed : job.needs) {
    if (problem_.jobs[at(needed)].last < stint.day) continue;
    for (const int row : stint.rows) {
      const auto& rows = problem_.jobs[at(needed)].rows;
      for (std::size_t other = 0; other < rows.size(); ++other) {
        if (rows[other].row != job.rows[at(row)].row) continue;
        const auto done = stintsOf_.find({needed, static_cast<int>(other)});
        Seconds work = 0;
        bool ended = done != stintsOf_.end();
        if (ended)
          for (const Stint* part : done->second) {
            work += part->rows.size() == 1 ? part->work : rows[other].work;
            ended =
                ended
                && std::pair{part->day, part->end} <= std::pair{stint.day, stint.begin};
          }
        if (!ended || work < rows[other].work)
          fault(stint, "row ", job.rows[at(row)].row, " is not ready");
      }
    }
  }
}

void Checker::checkGangDay(const std::vector<const Stint*>& stints) {
  const Gang& gang = problem_.gangs[at(stints.front()->gang)];
  const int day = stints.front()->day;
  Seconds others = 0;
  for (std::size_t i = 0; i < stints.size(); ++i) {
    const Stint& stint = *stints[i];
    if (!jobOf(stint).young) others += (stint.end - stint.begin) * stint.workers;
    if (i == 0) continue;
    const Stint& before = *stints[i - 1];
    const int from = jobOf(before).block;
    const int to = jobOf(stint).block;
    Seconds move = 0;
    if (from != to)
      move = problem_.moveBetween.empty() ? problem_.move
                                          : problem_.moveBetween[at(from)][at(to)];
    if (stint.begin < before.end + move) fault(stint, "begins before it can be there");
  }
  if (gang.keptForYoung.empty()) return;
  const Seconds all = gang.workers[at(day)] * dayOf(stints.front()->gang, day);
  if (others > 0 && others > all - gang.keptForYoung[at(day)])
    fault(*stints.front(), "takes what is kept for young trees");
}

/// At any instant no more in a block than it has room for.
void Checker::checkBlocks() {
  std::map<std::pair<int, int>, std::vector<std::pair<Seconds, int>>> changes;
  for (const Stint& stint : schedule_.stints) {
    auto& of = changes[{jobOf(stint).block, stint.day}];
    of.emplace_back(stint.begin, stint.workers);
    of.emplace_back(stint.end, -stint.workers);
  }
  for (auto& [where, of] : changes) {
    std::ranges::sort(of);
    int there = 0;
    for (const auto& [time, change] : of) {
      there += change;
      if (there > problem_.blocks[at(where.first)].workersAtMost)
        faults_.push_back("block " + std::to_string(where.first) + " day "
                          + std::to_string(where.second) + ": too many workers");
    }
  }
}

void Checker::checkSplit(const Place& place, const std::vector<const Stint*>& stints) {
  const CrewJob& job = problem_.jobs[at(place.job)];
  const Stint& first = *stints.front();
  if (job.rows[at(place.row)].work * paceOf(first) <= 1000 * wholeDay(first))
    fault(first, "row index ", place.row, " is split, but not longer than a day");
  for (std::size_t i = 0; i < stints.size(); ++i) {
    const Stint& part = *stints[i];
    if (part.gang != first.gang) fault(part, "another gang goes on with a row");
    if (part.rows.size() != 1) fault(part, "a row carried on is not alone");
    if (i == 0) continue;
    // Its stint before, at this job, is the part before.
    for (const Stint& other : schedule_.stints)
      if (other.gang == part.gang && other.job == part.job
          && std::pair{other.day, other.begin}
                 > std::pair{stints[i - 1]->day, stints[i - 1]->begin}
          && std::pair{other.day, other.begin} < std::pair{part.day, part.begin})
        fault(part, "did other rows before it went on");
  }
}

void Checker::checkRows() {
  for (const auto& [place, stints] : stintsOf_)
    if (stints.size() > 1) checkSplit(place, stints);
  for (const Stint& stint : schedule_.stints) {
    const CrewJob& job = jobOf(stint);
    Seconds work = 0;
    for (const int row : stint.rows) work += job.rows[at(row)].work;
    const bool whole = work == stint.work;
    const bool part = stint.rows.size() == 1 && stint.work < work;
    if (!whole && !part) fault(stint, "work is not that of its rows");
    const Place place{stint.job, stint.rows.front()};
    if (part && stintsOf_[place].size() == 1
        && work * paceOf(stint) <= 1000 * wholeDay(stint))
      fault(stint, "leaves a row begun that fits a day");
  }
}

/// Whether a pinned gang that is free at `now` could have begun this row by `begin`.
bool Checker::couldTake(
    const GangPin& pin, int row, Seconds now, Seconds begin, Seconds budget) const {
  const CrewJob& job = problem_.jobs[at(pin.job)];
  const auto done = stintsOf_.find({pin.job, row});
  // Rows given to others before this moment are taken.
  if (done != stintsOf_.end()
      && std::pair{done->second.front()->day, done->second.front()->begin}
             <= std::pair{pin.day, std::max(now, begin)})
    return false;
  Stint trial;
  trial.gang = pin.gang;
  trial.day = pin.day;
  trial.job = pin.job;
  trial.begin = begin;
  trial.rows = {row};
  Checker alone{problem_, schedule_};
  alone.faults_.clear();
  alone.checkNeeds(trial);
  if (!alone.faults_.empty()) return false;
  int there = 0;
  for (const Stint& other : schedule_.stints)
    if (other.day == pin.day && jobOf(other).block == job.block && other.end > begin)
      there += other.workers;
  const int workers = std::min(problem_.gangs[at(pin.gang)].workers[at(pin.day)],
                               problem_.blocks[at(job.block)].workersAtMost - there);
  if (workers < 1) return false;
  Seconds time = dayOf(pin.gang, pin.day) - begin;
  if (!job.young) time = std::min(time, budget);
  return job.rows[at(row)].work * paceOf(trial) <= time * workers * 1000;
}

void Checker::checkPin(const GangPin& pin, const std::vector<const Stint*>& stints) {
  const CrewJob& job = problem_.jobs[at(pin.job)];
  const Gang& gang = problem_.gangs[at(pin.gang)];
  Seconds others = 0;
  for (std::size_t i = 0; i < stints.size(); ++i) {
    const Stint& stint = *stints[i];
    const Seconds now = i == 0 ? 0 : stints[i - 1]->end;
    Seconds begin = now;
    if (i > 0) begin += problem_.moveFrom(jobOf(*stints[i - 1]).block, job.block);
    for (const BlockShut& shut : problem_.blocks[at(job.block)].shut)
      if (shut.day == pin.day) begin = std::max(begin, shut.from);
    Seconds budget = dayOf(pin.gang, pin.day) - others - (begin - now);
    if (!gang.keptForYoung.empty()) {
      const int size = gang.workers[at(pin.day)];
      budget -= (gang.keptForYoung[at(pin.day)] + size - 1) / size;
    }
    if (!jobOf(stint).young) others += stint.end - now;
    if (stint.job == pin.job) continue;
    for (int row = 0; row < static_cast<int>(job.rows.size()); ++row)
      if (couldTake(pin, row, now, begin, budget)) {
        fault(stint, "is pinned to job ", pin.job, " and leaves row index ", row);
        break;
      }
  }
}

/// Where a gang has one pin that day; of several it can only follow one.
void Checker::checkPins(const std::vector<const Stint*>& stints) {
  const Stint& first = *stints.front();
  std::vector<GangPin> pins;
  for (const GangPin& pin : problem_.pins)
    if (pin.gang == first.gang && pin.day == first.day) pins.push_back(pin);
  if (pins.size() != 1) return;
  const CrewJob& job = problem_.jobs[at(pins[0].job)];
  const bool able = problem_.gangs[at(first.gang)].skills[at(job.skill)];
  if (able && job.isOpenOn(first.day)) checkPin(pins[0], stints);
}

void Checker::checkTotals() {
  std::vector<Seconds> left;
  for (const CrewJob& job : problem_.jobs) left.push_back(job.work());
  for (const Stint& stint : schedule_.stints) left[at(stint.job)] -= stint.work;
  if (std::ranges::any_of(left, [](Seconds one) { return one < 0; }))
    faults_.emplace_back("more is done than there is");
  if (left != schedule_.undone) faults_.emplace_back("undone is not what is left");
}

std::vector<std::string> Checker::found() {
  checkOrder();
  for (const Stint& stint : schedule_.stints) checkStint(stint);
  for (const auto& [key, stints] : byGangDay_) {
    checkGangDay(stints);
    checkPins(stints);
  }
  checkBlocks();
  checkRows();
  checkTotals();
  return faults_;
}

}  // namespace

std::vector<std::string> violations(const CrewProblem& problem,
                                    const CrewSchedule& schedule) {
  return Checker{problem, schedule}.found();
}

Loss lossOf(const CrewProblem& problem, const CrewSchedule& schedule) {
  Loss loss = 0;
  std::vector<Seconds> left;
  for (const CrewJob& job : problem.jobs) left.push_back(job.work());
  for (const Stint& stint : schedule.stints) {
    const CrewJob& job = problem.jobs[at(stint.job)];
    loss += stint.work * std::max(0, stint.day - job.closes) * job.perDayLate;
    left[at(stint.job)] -= stint.work;
  }
  for (std::size_t job = 0; job < left.size(); ++job)
    loss += left[job] * problem.jobs[job].leftUndone;
  return loss;
}

}  // namespace topwire::testing
