#pragma once

#include "core/crews/crew_problem.h"

#include <cstdint>
#include <limits>
#include <span>
#include <utility>
#include <vector>

namespace topwire {

/// A job as the dispatcher goes over it thousands of times; what it looks at most comes
/// first, in one line of the cache.
struct alignas(64) FlatJob {
  int block = 0;
  int skill = 0;
  int rows = 0;
  int firstSum = 0;  ///< into FlatProblem::sums, of `rows` + 1
  int closes = 0;
  int firstPace = -1;  ///< by crew, into FlatProblem::paces; -1: 1000 for all
  int firstDone = -1;  ///< by row, into the times rows are done; -1: nobody asks
  int firstNeed = -1;  ///< by row, into FlatProblem::needStarts; -1: needs nothing
  Loss perDayLate = 0;
  Loss leftUndone = 0;
  bool young = false;
  bool rowByRow = false;      ///< rows may have to be passed over
  bool anyRowMayFit = false;  ///< also where one before it does not
  int firstDay = 0;           ///< on which it may be done, and is not better left
  int lastDay = -1;           ///< inclusive; before `firstDay`: never
  int firstSlot = 0;          ///< of its days, into FlatProblem::openOn
  Seconds work = 0;
  Seconds dayRoom = 0;  ///< worker-seconds that its block has room for in a day
};

struct FlatGang {
  std::uint64_t skills = 0;  ///< a bit each
  int skillCount = 0;
  int crew = 0;
};

/// Of one gang on one day.
struct GangDay {
  int workers = 0;
  Seconds length = 0;
  Seconds forAll = 0;  ///< of its length, what is not kept for young trees
};

/// A crew problem in few, flat arrays: what no dispatch changes.
class FlatProblem {
public:
  /// Jobs that open on day `until` or later are left out, but for those that others wait
  /// for.
  explicit FlatProblem(const CrewProblem& problem,
                       int until = std::numeric_limits<int>::max());

  const CrewProblem& asked() const { return *asked_; }

  int days() const { return asked_->days; }

  const FlatJob& job(int at) const { return jobs[static_cast<std::size_t>(at)]; }

  int pace(const FlatJob& job, int gang) const;
  const GangDay& gangDay(int gang, int day) const;
  bool openOn(const FlatJob& job, int day) const;
  /// Of the job's first `count` rows.
  Seconds workOfFirst(const FlatJob& job, int count) const;
  Seconds workOfRow(const FlatJob& job, int row) const;

  /// The last day on which the row of this slot is waited for.
  int lastDayOfSlot(int slot) const { return slotLasts_[static_cast<std::size_t>(slot)]; }

  /// Slots of the times at which what this row needs is done.
  std::span<const int> needsOf(const FlatJob& job, int row) const;
  std::span<const int> jobsOfBlock(int block) const;
  std::span<const int> waitingFor(int job) const;
  /// The jobs this gang is pinned to that day and could do, in the order they are told.
  std::span<const GangPin> pinsOf(int gang, int day) const;

  std::vector<FlatJob> jobs;
  std::vector<FlatGang> gangs;
  std::vector<int> byFirstDay;   ///< jobs that can be done at all, the earliest first
  std::vector<char> blockShuts;  ///< by block: on any day
  std::vector<int> blockMost;    ///< by block: workers at any one time
  int doneSlots = 0;
  int openSlots = 0;

private:
  void findShortestDays();
  bool rowsAreShort(const CrewJob& job) const;
  void addJob(const CrewJob& asked);
  void addLaterJob(const CrewJob& asked);
  void addDays(const CrewJob& asked, FlatJob& job);
  void addGangs();
  void addNeeds();
  void addNeedsOf(std::size_t at);
  void addBlocks();
  void addPins();

  const CrewProblem* asked_;
  std::vector<Seconds> shortest_;  ///< by day: of the gangs at work; 0: none
  std::vector<Seconds> sums_;
  std::vector<char> openOn_;
  std::vector<int> paces_;
  std::vector<GangDay> gangDays_;
  std::vector<int> slotLasts_;
  std::vector<int> needStarts_;
  std::vector<int> needs_;
  std::vector<int> blockStarts_;
  std::vector<int> blockJobs_;
  std::vector<std::pair<int, int>> waiting_;  ///< needed, needing
  std::vector<int> waitingJobs_;
  std::vector<int> waitingStarts_;
  std::vector<GangPin> pins_;
};

inline int FlatProblem::pace(const FlatJob& job, int gang) const {
  if (job.firstPace < 0) return 1000;
  const int crew = gangs[static_cast<std::size_t>(gang)].crew;
  return paces_[static_cast<std::size_t>(job.firstPace + crew)];
}

inline const GangDay& FlatProblem::gangDay(int gang, int day) const {
  return gangDays_[static_cast<std::size_t>(gang * days() + day)];
}

inline bool FlatProblem::openOn(const FlatJob& job, int day) const {
  return day >= job.firstDay && day <= job.lastDay
         && openOn_[static_cast<std::size_t>(job.firstSlot + day - job.firstDay)] != 0;
}

inline Seconds FlatProblem::workOfFirst(const FlatJob& job, int count) const {
  return sums_[static_cast<std::size_t>(job.firstSum + count)];
}

inline Seconds FlatProblem::workOfRow(const FlatJob& job, int row) const {
  return workOfFirst(job, row + 1) - workOfFirst(job, row);
}

}  // namespace topwire
