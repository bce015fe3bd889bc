#pragma once

#include "core/crews/flat_problem.h"
#include "core/crews/job_values.h"
#include "core/crews/ranked_jobs.h"
#include "core/crews/rounds.h"

#include <cstdint>
#include <limits>
#include <utility>
#include <vector>

namespace topwire {

/// Goes through the days of a problem again and again without asking for memory anew.
/// Within a day the gang that is free first chooses first.
class Dispatcher {
public:
  static constexpr int everyDay = std::numeric_limits<int>::max();

  /// Both have to outlive it.
  Dispatcher(const FlatProblem& problem, const JobValues& values);

  /// The loss of the plan made, of the first `days`.
  Loss run(int days = everyDay);
  /// The same, but gangs go their rounds of the day, and choose for themselves where
  /// these hold nothing more that can be done.
  Loss follow(const Rounds& rounds, int days = everyDay);
  /// Of the last run; what is `undone` is so by its last day.
  CrewSchedule schedule() const;

private:
  /// A day and a second of it, comparable.
  using Moment = std::int64_t;
  static constexpr Moment never = std::numeric_limits<Moment>::max();

  struct JobState {
    Seconds left = 0;      ///< in rows not yet begun
    Seconds nextWork = 0;  ///< of its next row
    int nextRow = 0;
    int owner = -1;       ///< the gang that was at it last
    int taken = 0;        ///< rows
    int carried = 0;      ///< rows begun and not done
    Moment waits = 0;     ///< nothing it needs is done before
    Moment needed = 0;    ///< when the last was done of what it needs
    Moment free = never;  ///< when all that it needs is done
  };

  struct GangState {
    int workers = 0;
    Seconds dayEnd = 0;
    int block = -1;   ///< where it stands today
    int ownJob = -1;  ///< that it was at last, today or before
    Seconds forAll = 0;
    int carriedJob = -1;
    int carriedRow = 0;
    Seconds carriedLeft = 0;
  };

  /// All that one day hands on to the next.
  struct Progress {
    std::vector<JobState> jobs;
    std::vector<GangState> gangs;
    std::vector<char> taken;         ///< by row of jobs gone through row by row
    std::vector<Moment> doneAt;      ///< by slot
    std::vector<RankedJobs> ranked;  ///< by skill
    std::size_t opened = 0;
    Loss late = 0;
  };

  struct Turn {
    Seconds now = 0;
    int order = 0;
    int gang = 0;
    bool after(const Turn& other) const;
  };

  struct Offer {
    int job = -1;
    int row = -1;  ///< the one that is carried on, if any
    bool rowByRow = false;
    int first = 0;  ///< row of a stretch, and how many; 0: the job's next
    int rows = 0;
    int workers = 0;
    Seconds begin = 0;
    Seconds time = 0;      ///< until the gang has to stop
    Seconds capacity = 0;  ///< worker-seconds of the job that fit into it
    Seconds work = 0;      ///< that will be done
    std::int64_t score = -1;
  };

  struct Placed {
    int gang = 0;
    int day = 0;
    int job = 0;
    int workers = 0;
    Seconds begin = 0;
    Seconds end = 0;
    Seconds work = 0;
    int firstRow = 0;  ///< or where its rows are listed
    int rows = 0;
    bool listed = false;
    int nextInBlock = -1;
  };

  void reset();
  bool goesRowByRow(const FlatJob& job, const Offer& offer) const;
  Loss leftBehind() const;
  void planDay(int day);
  bool waitsInVain(int job) const;
  void rankJobs();
  void queueGangs();
  void push(Turn turn);
  void take(const Turn& turn);
  bool takePinned(const Turn& turn);
  const std::vector<Stretch>& roundOf(int gang) const;
  bool takeStretch(const Turn& turn);
  bool isTaken(int job, int row) const;
  bool fitStretch(const Turn& turn, const Stretch& stretch, int row, Offer& offer);
  void offerInBlock(const Turn& turn, Offer& best);
  void offerRanked(const Turn& turn, Offer& best);
  void offerAny(const Turn& turn, const std::vector<int>& jobs, Offer& best);
  std::int64_t mostShareAway(const Turn& turn) const;
  /// Whether it could be done by the whole gang, more or less.
  bool compare(const Turn& turn, int job, Offer& best);
  bool fit(const Turn& turn, int job, Offer& offer);
  bool fitTime(const Turn& turn, const FlatJob& job, Offer& offer);
  bool fitRows(const Turn& turn, const FlatJob& job, Offer& offer);
  bool fitRowByRow(const Turn& turn, const FlatJob& job, Offer& offer);
  bool takeOffered(const Turn& turn, int job);
  Seconds startOf(const FlatJob& job, const Turn& turn) const;
  int roomFrom(const FlatJob& job, Seconds& begin) const;
  Moment readyAt(const FlatJob& job, int row) const;
  bool isLongerThanDay(const FlatJob& job, int gang, Seconds work) const;
  bool isOver(int job) const;
  std::int64_t score(const Turn& turn, const Offer& offer) const;
  Seconds otherWorkInBlock(const Turn& turn, const Offer& offer) const;
  std::int64_t togetherness(const Turn& turn, int job) const;
  void place(const Turn& turn, const Offer& offer);
  void placeRows(const FlatJob& job, const Offer& offer, Placed& placed);
  bool fitLongRow(const Turn& turn, int row, Offer& offer);
  void placeStretch(const FlatJob& job, const Offer& offer, Placed& placed);
  void placeRowByRow(const FlatJob& job, const Offer& offer, Placed& placed);
  void placeCarried(const FlatJob& job, const Offer& offer, int gang, Seconds end);
  void markDone(const FlatJob& job, int row, Seconds end);
  void stepOver(const FlatJob& job, JobState& state) const;
  void stepTo(const FlatJob& job, int row, JobState& state) const;
  bool isAllDone(const std::vector<int>& jobs) const;
  void wakeWaiting(const Offer& offer, Seconds end);

  Moment moment(Seconds time) const { return Moment{day_} << 20 | time; }

  const FlatProblem& problem_;
  const JobValues& values_;
  std::int64_t stay_ = 1024;   ///< what a gang's own job counts for it
  std::int64_t leave_ = 1024;  ///< what another gang's counts
  int fewWorkers_ = 0;  ///< less room than this is left to those who find nothing else
  Seconds leastMove_ = 0;
  int day_ = 0;
  Seconds dayLength_ = 0;
  Progress now_;
  const Rounds* rounds_ = nullptr;   ///< that are followed
  std::vector<std::int64_t> today_;  ///< by job: worth, 0 where not to be had today
  std::vector<std::int64_t> worth_;  ///< by job: the same, also while it waits
  std::vector<Turn> turns_;          ///< a heap
  std::vector<int> idle_;
  std::vector<int> cramped_;      ///< jobs with little room left today
  std::vector<int> woken_;        ///< jobs that something was done for today
  std::vector<int> blockStints_;  ///< by block: its last stint today; -1: none
  std::vector<int> blocksUsed_;
  std::vector<Placed> placed_;
  std::vector<int> listedRows_;
  std::vector<std::pair<int, std::size_t>> heads_;  ///< skill and position, while ranking
};

}  // namespace topwire
