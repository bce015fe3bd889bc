#include "core/crews/flat_problem.h"

#include "core/base/contract.h"
#include "core/crews/index.h"

#include <algorithm>
#include <numeric>

namespace topwire {

namespace {

template <class Of>
std::span<const Of> part(const std::vector<Of>& whole,
                         const std::vector<int>& starts,
                         int of) {
  const int first = starts[at(of)];
  return std::span{whole}.subspan(at(first), at(starts[at(of) + 1] - first));
}

/// By job: it opens on that day or later, and nothing needs it before.
std::vector<char> opensFrom(const CrewProblem& problem, int day) {
  std::vector<char> later;
  for (const CrewJob& job : problem.jobs) later.push_back(job.opens >= day);
  for (const CrewJob& job : problem.jobs)
    if (job.opens < day)
      for (const int needed : job.needs) later[at(needed)] = 0;
  return later;
}

}  // namespace

FlatProblem::FlatProblem(const CrewProblem& problem, int until) : asked_{&problem} {
  TOPWIRE_REQUIRE(problem.skills <= 64);
  findShortestDays();
  const std::vector<char> later = opensFrom(problem, until);
  std::size_t rows = problem.jobs.size();
  for (std::size_t job = 0; job < problem.jobs.size(); ++job)
    if (later[job] == 0) rows += problem.jobs[job].rows.size();
  sums_.reserve(rows);
  jobs.reserve(problem.jobs.size());
  for (std::size_t job = 0; job < problem.jobs.size(); ++job)
    if (later[job] == 0)
      addJob(problem.jobs[job]);
    else
      addLaterJob(problem.jobs[job]);
  addGangs();
  addNeeds();
  addBlocks();
  addPins();
  for (std::size_t job = 0; job < jobs.size(); ++job)
    if (jobs[job].firstDay <= jobs[job].lastDay && jobs[job].rows > 0)
      byFirstDay.push_back(static_cast<int>(job));
  std::ranges::stable_sort(byFirstDay, {}, [this](int one) { return job(one).firstDay; });
}

void FlatProblem::findShortestDays() {
  shortest_.assign(at(days()), 0);
  for (const Gang& gang : asked_->gangs)
    for (int day = 0; day < days(); ++day) {
      const Seconds length = asked_->lengthOf(gang, day);
      Seconds& shortest = shortest_[at(day)];
      if (gang.workersOn(day) <= 0 || length == 0) continue;
      shortest = shortest == 0 ? length : std::min(shortest, length);
    }
}

/// The longest row keeps one worker for less than half of the shortest day, so that a
/// gang that passes it over today loses little.
bool FlatProblem::rowsAreShort(const CrewJob& job) const {
  Seconds shortest = 0;
  for (int day = std::max(0, job.opens); day <= std::min(job.last, days() - 1); ++day)
    if (const Seconds length = shortest_[at(day)]; length > 0)
      shortest = shortest == 0 ? length : std::min(shortest, length);
  Seconds longest = 0;
  for (const RowOfWork& row : job.rows) longest = std::max(longest, row.work);
  return longest <= shortest / 2;
}

void FlatProblem::addJob(const CrewJob& asked) {
  FlatJob job;
  job.block = asked.block;
  job.skill = asked.skill;
  job.rows = static_cast<int>(asked.rows.size());
  job.firstSum = static_cast<int>(sums_.size());
  job.closes = asked.closes;
  job.young = asked.young;
  job.perDayLate = asked.perDayLate;
  job.leftUndone = asked.leftUndone;
  sums_.push_back(0);
  for (const RowOfWork& row : asked.rows) sums_.push_back(sums_.back() + row.work);
  job.work = sums_.back();
  if (std::ranges::any_of(asked.pace, [](int pace) { return pace != 1000; })) {
    job.firstPace = static_cast<int>(paces_.size());
    paces_.insert(paces_.end(), asked.pace.begin(), asked.pace.end());
  }
  job.anyRowMayFit = !rowsAreShort(asked);
  job.rowByRow = job.anyRowMayFit || !asked.needs.empty();
  addDays(asked, job);
  jobs.push_back(job);
}

void FlatProblem::addLaterJob(const CrewJob& asked) {
  FlatJob job;
  job.block = asked.block;
  job.skill = asked.skill;
  job.firstSum = static_cast<int>(sums_.size());
  sums_.push_back(0);
  jobs.push_back(job);
}

void FlatProblem::addDays(const CrewJob& asked, FlatJob& job) {
  job.firstDay = std::max(0, asked.opens);
  job.lastDay = std::min(days() - 1, asked.last);
  if (asked.perDayLate > 0) {
    const Loss worthDays = asked.leftUndone / asked.perDayLate;
    job.lastDay = static_cast<int>(
        std::min<Loss>(job.lastDay, std::max<Loss>(-1, asked.closes + worthDays)));
  }
  job.firstSlot = openSlots;
  for (int day = job.firstDay; day <= job.lastDay; ++day) {
    const Seconds room = asked_->roomFor(asked, day);
    job.dayRoom = std::max(job.dayRoom, room);
    openOn_.push_back(room > 0);
  }
  openSlots = static_cast<int>(openOn_.size());
}

void FlatProblem::addGangs() {
  for (const Gang& asked : asked_->gangs) {
    FlatGang gang;
    gang.crew = asked.crew;
    for (int skill = 0; skill < asked_->skills; ++skill)
      if (asked.hasSkill(skill)) {
        gang.skills |= std::uint64_t{1} << skill;
        ++gang.skillCount;
      }
    gangs.push_back(gang);
    for (int day = 0; day < days(); ++day) {
      GangDay& of = gangDays_.emplace_back();
      of.length = asked_->lengthOf(asked, day);
      if (of.length == 0 || asked.workersOn(day) <= 0) continue;
      of.workers = asked.workersOn(day);
      const Seconds kept = std::max<Seconds>(0, asked.keptOn(day));
      of.forAll = std::max<Seconds>(0, of.length - (kept + of.workers - 1) / of.workers);
    }
  }
}

void FlatProblem::addNeeds() {
  for (std::size_t job = 0; job < jobs.size(); ++job)
    for (const int needed : asked_->jobs[job].needs) {
      waiting_.emplace_back(needed, static_cast<int>(job));
      if (jobs[at(needed)].firstDone >= 0) continue;
      jobs[at(needed)].firstDone = doneSlots;
      doneSlots += jobs[at(needed)].rows;
      slotLasts_.resize(at(doneSlots), asked_->jobs[at(needed)].last);
    }
  for (std::size_t job = 0; job < jobs.size(); ++job)
    if (!asked_->jobs[job].needs.empty() && jobs[job].rows > 0) addNeedsOf(job);
  std::ranges::sort(waiting_);
  waitingStarts_.assign(jobs.size() + 1, 0);
  for (const auto& [needed, needing] : waiting_) {
    waitingJobs_.push_back(needing);
    ++waitingStarts_[at(needed) + 1];
  }
  std::partial_sum(waitingStarts_.begin(), waitingStarts_.end(), waitingStarts_.begin());
}

void FlatProblem::addNeedsOf(std::size_t of) {
  std::vector<std::pair<int, int>> slotByNumber;
  for (const int needed : asked_->jobs[of].needs)
    for (int row = 0; row < jobs[at(needed)].rows; ++row)
      slotByNumber.emplace_back(asked_->jobs[at(needed)].rows[at(row)].row,
                                jobs[at(needed)].firstDone + row);
  std::ranges::sort(slotByNumber);
  jobs[of].firstNeed = static_cast<int>(needStarts_.size());
  for (const RowOfWork& row : asked_->jobs[of].rows) {
    needStarts_.push_back(static_cast<int>(needs_.size()));
    auto slot = std::ranges::lower_bound(slotByNumber, std::pair{row.row, 0});
    for (; slot != slotByNumber.end() && slot->first == row.row; ++slot)
      needs_.push_back(slot->second);
  }
  needStarts_.push_back(static_cast<int>(needs_.size()));
}

void FlatProblem::addBlocks() {
  blockStarts_.assign(asked_->blocks.size() + 1, 0);
  for (const FlatJob& job : jobs) ++blockStarts_[at(job.block) + 1];
  std::partial_sum(blockStarts_.begin(), blockStarts_.end(), blockStarts_.begin());
  blockJobs_.resize(jobs.size());
  std::vector<int> next = blockStarts_;
  for (std::size_t job = 0; job < jobs.size(); ++job)
    blockJobs_[at(next[at(jobs[job].block)]++)] = static_cast<int>(job);
  for (const CrewBlock& block : asked_->blocks) {
    blockShuts.push_back(!block.shut.empty());
    blockMost.push_back(block.workersAtMost);
  }
}

void FlatProblem::addPins() {
  for (const GangPin& pin : asked_->pins) {
    if (pin.day < 0 || pin.day >= days()) continue;
    const auto skills = gangs[at(pin.gang)].skills;
    const bool able = (skills >> job(pin.job).skill & 1U) != 0;
    if (!able || asked_->roomFor(asked_->jobs[at(pin.job)], pin.day) == 0) continue;
    pins_.push_back(pin);
    // A gang held to it does any row that fits its day before it leaves.
    jobs[at(pin.job)].rowByRow = true;
    jobs[at(pin.job)].anyRowMayFit = true;
  }
  std::ranges::stable_sort(pins_, {}, [](const GangPin& pin) {
    return std::pair{pin.gang, pin.day};
  });
}

std::span<const int> FlatProblem::needsOf(const FlatJob& job, int row) const {
  const auto start = at(job.firstNeed + row);
  const int first = needStarts_[start];
  return std::span{needs_}.subspan(at(first), at(needStarts_[start + 1] - first));
}

std::span<const int> FlatProblem::jobsOfBlock(int block) const {
  return part(blockJobs_, blockStarts_, block);
}

std::span<const int> FlatProblem::waitingFor(int job) const {
  return part(waitingJobs_, waitingStarts_, job);
}

std::span<const GangPin> FlatProblem::pinsOf(int gang, int day) const {
  if (pins_.empty()) return {};
  const auto found =
      std::ranges::equal_range(pins_, std::pair{gang, day}, {}, [](const GangPin& pin) {
        return std::pair{pin.gang, pin.day};
      });
  return {found.begin(), found.end()};
}

}  // namespace topwire
