#include "tests/support/crew_instances.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace topwire::testing {

std::uint64_t SeededNumbers::next() {
  state_ += 0x9e3779b97f4a7c15U;
  std::uint64_t z = state_;
  z = (z ^ z >> 30) * 0xbf58476d1ce4e5b9U;
  z = (z ^ z >> 27) * 0x94d049bb133111ebU;
  return z ^ z >> 31;
}

int SeededNumbers::between(int least, int most) {
  const auto count = static_cast<std::uint64_t>(most - least + 1);
  return least + static_cast<int>(next() % count);
}

double SeededNumbers::unit() {
  return static_cast<double>(next() >> 11) / 9007199254740992.0;
}

bool SeededNumbers::chance(double share) {
  return unit() < share;
}

double SeededNumbers::normal() {
  double sum = -6;
  for (int i = 0; i < 12; ++i) sum += unit();
  return sum;
}

namespace {

/// Days count from bloom; invented, with the spread that such work has.
struct SeasonWork {
  bool hard;  ///< useless after its window
  int opens;
  int length;
  int secondsPerTree;
  int skill;
  Loss weight;  ///< left undone; each day late, where not hard
  int needs = -1;
};

constexpr std::array seasonWork{
    SeasonWork{true, -60, 21, 45, 1, 1500},   SeasonWork{true, -40, 18, 50, 1, 2000, 0},
    SeasonWork{true, -20, 14, 25, 0, 4000},   SeasonWork{true, -5, 10, 20, 2, 8000},
    SeasonWork{true, 0, 9, 40, 2, 5000},      SeasonWork{true, 8, 12, 70, 0, 4000, 4},
    SeasonWork{true, 14, 14, 110, 0, 9000},   SeasonWork{true, 25, 16, 90, 1, 3000, 6},
    SeasonWork{true, 40, 15, 50, 2, 2500},    SeasonWork{true, 70, 21, 40, 0, 1800},
    SeasonWork{true, 100, 18, 120, 0, 15000}, SeasonWork{false, -80, 30, 90, 1, 40},
    SeasonWork{false, -50, 30, 35, 0, 30},    SeasonWork{false, -30, 20, 25, 0, 60},
    SeasonWork{false, 10, 20, 25, 2, 100},    SeasonWork{false, 20, 25, 35, 0, 50, 5},
    SeasonWork{false, 35, 25, 45, 1, 40},     SeasonWork{false, 50, 30, 30, 0, 30},
    SeasonWork{false, 60, 30, 20, 0, 20},     SeasonWork{false, 90, 40, 25, 0, 30},
};

constexpr int seasonDays = 200;
constexpr int bloomDay = 80;
constexpr Seconds fullDay = Seconds{8} * 3600;

class OrchardMaker {
public:
  explicit OrchardMaker(const CrewInstance& instance)
      : instance_{instance}, numbers_{instance.seed} {}

  CrewProblem make();

private:
  struct Window {
    int opens;
    int closes;
  };

  void addBlock(int block);
  void addJob(int block, std::size_t operation, int trees, int rows, int shift);
  void addDays();
  void addGangs(int workers);
  void cutTo(int firstDay);
  bool cutJob(CrewJob& job, int firstDay) const;
  std::vector<double> hardWorkByDay() const;
  int peakDay(int width) const;
  int workersForLoad() const;

  CrewInstance instance_;
  SeededNumbers numbers_;
  CrewProblem problem_;
};

void OrchardMaker::addJob(
    int block, std::size_t operation, int trees, int rows, int shift) {
  const SeasonWork& work = seasonWork[operation];
  const bool picked = work.opens == 100;
  const double worth = std::exp(0.4 * numbers_.normal());
  CrewJob job;
  job.block = block;
  job.skill = work.skill;
  job.opens = bloomDay + work.opens + shift
              + (picked ? static_cast<int>(9 * numbers_.normal()) : 0);
  job.closes = job.opens + work.length - 1 + numbers_.between(-1, 1);
  job.last = work.hard ? job.closes : 10 * seasonDays;
  const auto weight =
      std::max<Loss>(1, std::llround(static_cast<double>(work.weight) * worth));
  job.perDayLate = work.hard ? 0 : weight;
  job.leftUndone = weight;
  const double perTree = work.secondsPerTree * std::exp(0.3 * numbers_.normal());
  const double perRow = std::max(1.0, perTree * trees / rows);
  const int first = numbers_.chance(0.15) ? numbers_.between(0, rows - 1) : 0;
  for (int row = first; row < rows; ++row)
    job.rows.push_back(
        {row + 1, static_cast<Seconds>(perRow * (0.9 + 0.2 * numbers_.unit())) + 1});
  problem_.jobs.push_back(std::move(job));
}

void OrchardMaker::addBlock(int block) {
  const double hectares = std::clamp(std::exp(0.7 * numbers_.normal()), 0.1, 8.0);
  const int trees =
      std::max(20, static_cast<int>(hectares * numbers_.between(400, 2500)));
  const int rows = std::clamp(static_cast<int>(26 * hectares), 4, 200);
  const int shift = numbers_.between(0, 14);
  problem_.blocks.push_back({4 + static_cast<int>(3 * hectares), {}});
  std::map<int, int> jobOf;
  for (std::size_t operation = 0; operation < seasonWork.size(); ++operation) {
    if (!numbers_.chance(0.45)) continue;
    addJob(block, operation, trees, rows, shift);
    if (const auto needed = jobOf.find(seasonWork[operation].needs);
        needed != jobOf.end())
      problem_.jobs.back().needs.push_back(needed->second);
    jobOf[static_cast<int>(operation)] = static_cast<int>(problem_.jobs.size()) - 1;
  }
}

void OrchardMaker::addDays() {
  problem_.days = seasonDays;
  for (int day = 0; day < seasonDays; ++day) {
    const bool worked = day % 7 != 6 && !numbers_.chance(0.12);
    problem_.dayLength.push_back(worked ? fullDay : 0);
  }
}

std::vector<double> OrchardMaker::hardWorkByDay() const {
  std::vector<double> byDay(seasonDays);
  for (const CrewJob& job : problem_.jobs) {
    if (job.perDayLate > 0) continue;
    const int first = std::max(0, job.opens);
    const int last = std::min(seasonDays - 1, job.closes);
    for (int day = first; day <= last; ++day)
      byDay[static_cast<std::size_t>(day)] +=
          static_cast<double>(job.work()) / (job.closes - job.opens + 1);
  }
  return byDay;
}

/// The first of the `width` days with the most work that cannot be late.
int OrchardMaker::peakDay(int width) const {
  const auto byDay = hardWorkByDay();
  double most = -1;
  int found = 0;
  for (int first = 0; first + width <= seasonDays; ++first) {
    double sum = 0;
    for (int day = first; day < first + width; ++day)
      sum += byDay[static_cast<std::size_t>(day)];
    if (sum <= most) continue;
    most = sum;
    found = first;
  }
  return found;
}

int OrchardMaker::workersForLoad() const {
  constexpr int threeWeeks = 21;
  const auto byDay = hardWorkByDay();
  const int first = peakDay(threeWeeks);
  double work = 0;
  Seconds perWorker = 0;
  for (int day = first; day < first + threeWeeks; ++day) {
    work += byDay[static_cast<std::size_t>(day)];
    perWorker += problem_.dayLength[static_cast<std::size_t>(day)];
  }
  return std::max(3,
                  static_cast<int>(std::lround(work / instance_.load
                                               / static_cast<double>(perWorker))));
}

void OrchardMaker::addGangs(int workers) {
  const std::array skillSets{std::vector<bool>{true, true, true},
                             std::vector<bool>{true, true, false},
                             std::vector<bool>{true, false, false}};
  while (workers > 0) {
    int size = std::min(workers, numbers_.between(3, 5));
    if (workers - size < 3 && workers <= 5) size = workers;
    workers -= size;
    const std::size_t count = problem_.gangs.size();
    Gang gang;
    gang.crew = static_cast<int>(count);
    gang.skills = skillSets[count % skillSets.size()];
    gang.workers.assign(seasonDays, size);
    problem_.gangs.push_back(std::move(gang));
  }
}

/// Shifts a job into the days planned. What lies outside of them is left to other plans;
/// what ends there presses less.
bool OrchardMaker::cutJob(CrewJob& job, int firstDay) const {
  job.opens -= firstDay;
  job.closes -= firstDay;
  const bool hard = job.perDayLate == 0;
  if (hard) job.last = job.closes;
  if (job.opens >= instance_.days || job.closes < 0) return false;
  const int length = job.closes - job.opens + 1;
  const int inside =
      std::min(job.closes, instance_.days - 1) - std::max(job.opens, 0) + 1;
  const auto keep =
      std::max<std::size_t>(1,
                            job.rows.size() * static_cast<std::size_t>(inside)
                                / static_cast<std::size_t>(length));
  if (job.opens < 0)
    job.rows.erase(job.rows.begin(), job.rows.end() - static_cast<std::ptrdiff_t>(keep));
  else
    job.rows.resize(keep);
  if (!hard)
    job.leftUndone = job.perDayLate * std::max(0, instance_.days - job.closes);
  else if (job.closes >= instance_.days)
    job.leftUndone /= 5;
  return true;
}

void OrchardMaker::cutTo(int firstDay) {
  std::vector<int> numberNow(problem_.jobs.size(), -1);
  std::vector<CrewJob> kept;
  for (std::size_t job = 0; job < problem_.jobs.size(); ++job) {
    CrewJob cut = problem_.jobs[job];
    if (!cutJob(cut, firstDay)) continue;
    numberNow[job] = static_cast<int>(kept.size());
    for (int& needed : cut.needs) needed = numberNow[static_cast<std::size_t>(needed)];
    std::erase(cut.needs, -1);
    kept.push_back(std::move(cut));
  }
  problem_.jobs = std::move(kept);
  problem_.days = instance_.days;
  problem_.dayLength.erase(problem_.dayLength.begin(),
                           problem_.dayLength.begin() + firstDay);
  problem_.dayLength.resize(static_cast<std::size_t>(instance_.days));
}

CrewProblem OrchardMaker::make() {
  problem_.skills = 3;
  addDays();
  for (int block = 0; block < instance_.blocks; ++block) addBlock(block);
  addGangs(workersForLoad());
  const int before = (instance_.days - 21) / 2;
  cutTo(std::clamp(peakDay(21) - before, 0, seasonDays - instance_.days));
  return std::move(problem_);
}

}  // namespace

CrewProblem orchardProblem(const CrewInstance& instance) {
  return OrchardMaker{instance}.make();
}

}  // namespace topwire::testing
