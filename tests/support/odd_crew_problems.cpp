#include "tests/support/crew_instances.h"

#include <algorithm>

namespace topwire::testing {

namespace {

class OddMaker {
public:
  explicit OddMaker(std::uint64_t seed) : numbers_{seed} {}

  CrewProblem make();

private:
  void addDays();
  void addBlocks();
  void addJob();
  void addWindow(CrewJob& job);
  void addGang();
  void addPin();
  void agree();

  int any(std::size_t count) { return numbers_.between(0, static_cast<int>(count) - 1); }

  SeededNumbers numbers_;
  CrewProblem problem_;
  int crews_ = 1;
};

void OddMaker::addDays() {
  problem_.days = numbers_.between(3, 21);
  for (int day = 0; day < problem_.days; ++day)
    problem_.dayLength.push_back(
        numbers_.chance(0.2) ? 0 : Seconds{1800} * numbers_.between(6, 18));
}

void OddMaker::addBlocks() {
  for (int block = numbers_.between(1, 8); block > 0; --block) {
    CrewBlock& added = problem_.blocks.emplace_back();
    added.workersAtMost = numbers_.between(1, 9);
    while (numbers_.chance(0.3))
      added.shut.push_back(
          {any(problem_.dayLength.size()), Seconds{1800} * numbers_.between(1, 18)});
  }
  if (!numbers_.chance(0.3)) return;
  for (std::size_t from = 0; from < problem_.blocks.size(); ++from) {
    auto& moves = problem_.moveBetween.emplace_back();
    for (std::size_t to = 0; to < problem_.blocks.size(); ++to)
      moves.push_back(from == to ? 0 : Seconds{60} * numbers_.between(1, 40));
  }
}

void OddMaker::addWindow(CrewJob& job) {
  job.opens = numbers_.between(-4, problem_.days - 1);
  job.closes = job.opens + numbers_.between(-1, 9);
  job.last = std::max(job.opens, job.closes);
  if (numbers_.chance(0.5)) {
    job.last += numbers_.between(1, 30);
    job.perDayLate = numbers_.between(1, 400);
  }
  job.leftUndone = numbers_.between(0, 9000);
  if (numbers_.chance(0.3))
    for (int day = 0; day < problem_.days; ++day)
      job.shut.push_back(numbers_.chance(0.3));
}

void OddMaker::addJob() {
  CrewJob job;
  job.block = any(problem_.blocks.size());
  job.skill = numbers_.between(0, problem_.skills - 1);
  job.young = numbers_.chance(0.3);
  addWindow(job);
  const int longest = numbers_.chance(0.2) ? 90000 : 6000;
  const int rows = numbers_.between(1, 14);
  for (int row = 0; row < rows; ++row)
    if (numbers_.chance(0.85))
      job.rows.push_back({row + 1, numbers_.between(1, longest)});
  if (numbers_.chance(0.3))
    for (int crew = 0; crew < crews_; ++crew)
      job.pace.push_back(numbers_.chance(0.5) ? 1000 : numbers_.between(1000, 2500));
  while (!problem_.jobs.empty() && numbers_.chance(0.3)) {
    const int needed = any(problem_.jobs.size());
    if (problem_.jobs[static_cast<std::size_t>(needed)].block == job.block
        && std::ranges::find(job.needs, needed) == job.needs.end())
      job.needs.push_back(needed);
  }
  problem_.jobs.push_back(std::move(job));
}

void OddMaker::addGang() {
  Gang gang;
  gang.crew = numbers_.between(0, crews_ - 1);
  for (int skill = 0; skill < problem_.skills; ++skill)
    gang.skills.push_back(numbers_.chance(0.7));
  const int size = numbers_.between(1, 6);
  const bool keeps = numbers_.chance(0.3);
  const bool shorter = numbers_.chance(0.3);
  for (int day = 0; day < problem_.days; ++day) {
    const int there =
        numbers_.chance(0.15) ? 0 : std::max(1, size - numbers_.between(0, 1));
    gang.workers.push_back(there);
    if (shorter) gang.length.push_back(Seconds{1800} * numbers_.between(0, 14));
    if (keeps)
      gang.keptForYoung.push_back(Seconds{600} * numbers_.between(0, 18) * there);
  }
  problem_.gangs.push_back(std::move(gang));
}

void OddMaker::addPin() {
  if (problem_.jobs.empty() || problem_.gangs.empty()) return;
  problem_.pins.push_back({any(problem_.gangs.size()),
                           any(problem_.jobs.size()),
                           any(problem_.dayLength.size())});
}

void OddMaker::agree() {
  problem_.agreed.resize(problem_.gangs.size());
  for (auto& round : problem_.agreed)
    while (!problem_.jobs.empty() && numbers_.chance(0.6)) {
      const int job = any(problem_.jobs.size());
      const auto rows = problem_.jobs[static_cast<std::size_t>(job)].rows.size();
      if (rows == 0) continue;
      const int first = any(rows);
      round.push_back({job, first, any(rows - static_cast<std::size_t>(first)) + 1});
    }
}

CrewProblem OddMaker::make() {
  problem_.skills = numbers_.between(1, 4);
  crews_ = numbers_.between(1, 3);
  problem_.move = Seconds{60} * numbers_.between(0, 40);
  problem_.keepTogether = numbers_.between(0, 4) / 4.0;
  addDays();
  addBlocks();
  for (int job = numbers_.between(0, 25); job > 0; --job) addJob();
  for (int gang = numbers_.between(0, 5); gang > 0; --gang) addGang();
  while (numbers_.chance(0.6)) addPin();
  if (numbers_.chance(0.4)) agree();
  return std::move(problem_);
}

}  // namespace

CrewProblem oddProblem(std::uint64_t seed) {
  return OddMaker{seed}.make();
}

}  // namespace topwire::testing
