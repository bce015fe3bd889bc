#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace topwire {

/// Who can do how much of what, and what it costs to leave it: the crew plan's question,
/// stripped of orchard and trade to whole numbers, so that the answer is the same on any
/// machine.
///
/// Days count from 0, the first day planned; times of day are seconds from the start of
/// work. Work is in worker-seconds: one worker for one second, at the pace of the fastest
/// crew for that job. Loss is in thousandths of a worker-second.
using Seconds = std::int64_t;
using Loss = std::int64_t;

struct RowOfWork {
  int row = 0;       ///< its number in the block
  Seconds work = 0;  ///< still to do in it, at least 1

  friend bool operator==(const RowOfWork&, const RowOfWork&) = default;
};

/// One operation on one planting: rows that can be done by different gangs on different
/// days, each row whole.
struct CrewJob {
  int block = 0;
  int skill = 0;                ///< what it asks for; an index below CrewProblem::skills
  std::vector<RowOfWork> rows;  ///< in the order of work
  int opens = 0;                ///< the first day; may lie before day 0
  int closes = 0;  ///< the last day without loss; may lie before day 0 or past the end
  int last = 0;    ///< the last day on which it may be done; not before `closes`
  Loss perDayLate = 0;  ///< for each worker-second, for each day past `closes`
  Loss leftUndone = 0;  ///< for each worker-second not done by the plan's end
  /// Jobs whose row of the same number has to be done before this one's is begun. A row
  /// that such a job does not hold is done, or never asked for; one that is not done by
  /// that job's last day is waited for no longer.
  std::vector<int> needs;
  bool young = false;      ///< trees in their first or second leaf
  std::vector<bool> shut;  ///< by day: weather or a person forbids it; empty: never
  /// By crew, in thousandths of `work`, 1000 or more: how long that crew takes. Empty:
  /// all take 1000.
  std::vector<int> pace;

  Seconds work() const;
  /// What a worker-second of it costs at worst: seven days late or left undone, whichever
  /// is less; left undone where it cannot be late.
  Loss weight() const;
  /// What a worker-second of it costs if done on `day`.
  Loss lateOn(int day) const;
  /// In thousandths of `work`.
  int paceOf(int crew) const;
  /// May be worked on that day, as far as its own window and `shut` say.
  bool isOpenOn(int day) const;
};

/// A block is closed on `day` until `from`; the length of the day or more: all day.
struct BlockShut {
  int day = 0;
  Seconds from = 0;

  friend bool operator==(const BlockShut&, const BlockShut&) = default;
};

struct CrewBlock {
  int workersAtMost = 1;  ///< at any one time
  std::vector<BlockShut> shut;

  /// From the start of work; 0 on a day it is not shut.
  Seconds closedUntil(int day) const;

  friend bool operator==(const CrewBlock&, const CrewBlock&) = default;
};

/// People who work together and move together: a crew, or part of one.
struct Gang {
  int crew = 0;
  std::vector<bool> skills;  ///< by skill
  std::vector<int> workers;  ///< by day; 0 on a day off
  /// By day: how long it works, at most CrewProblem::dayLength; empty: just that.
  std::vector<Seconds> length;
  /// By day: worker-seconds kept for young trees and used for nothing else.
  std::vector<Seconds> keptForYoung;

  bool hasSkill(int skill) const;
  /// 0 past the end of `workers`, and so the next for `keptForYoung`.
  int workersOn(int day) const;
  Seconds keptOn(int day) const;

  friend bool operator==(const Gang&, const Gang&) = default;
};

/// A gang does nothing but this job on this day.
struct GangPin {
  int gang = 0;
  int job = 0;
  int day = 0;

  friend bool operator==(const GangPin&, const GangPin&) = default;
};

/// Some rows of one job, one after the other, for one gang on one day.
struct Stretch {
  int job = 0;
  int first = 0;  ///< index into CrewJob::rows
  int rows = 0;

  int end() const { return first + rows; }

  friend bool operator==(const Stretch&, const Stretch&) = default;
};

struct CrewProblem {
  int days = 0;
  int skills = 1;
  std::vector<Seconds> dayLength;  ///< by day; 0 where nobody works
  std::vector<CrewBlock> blocks;
  std::vector<CrewJob> jobs;
  std::vector<Gang> gangs;
  std::vector<GangPin> pins;
  /// By gang, for day 0: what was agreed on, in its order. A gang keeps to it as far as
  /// that can still be done. Empty: nothing was.
  std::vector<std::vector<Stretch>> agreed;
  Seconds move = 20 * 60;  ///< of a gang's day, to go to another block and set up there
  /// Block times block, instead of `move`, where not empty.
  std::vector<std::vector<Seconds>> moveBetween;
  /// 0: each gang goes where it is worth most. 1: a gang finishes what it began, and
  /// keeps it to itself, unless much is lost by that.
  double keepTogether = 0.5;

  /// 0 past the end of `dayLength`.
  Seconds lengthOf(int day) const;
  /// How long this gang works on a day.
  Seconds lengthOf(const Gang& gang, int day) const;
  /// 0 inside a block.
  Seconds moveFrom(int block, int other) const;
  /// Of all gangs, in worker-seconds: workers times how long they work.
  Seconds capacity(int day) const;
  /// Worker-seconds of the job that its block has room for on `day`, were nobody else
  /// in it; 0 where job or block is shut.
  Seconds roomFor(const CrewJob& job, int day) const;
  /// What is lost at worst: each job's work times its weight. Shares of loss are of this.
  Loss stake() const;
};

/// One gang at one job for part of one day. Rows of a job are done in one stint each,
/// except for a row longer than a gang's whole day, which goes on in that gang's next
/// stint at this job.
struct Stint {
  int gang = 0;
  int day = 0;
  int job = 0;
  Seconds begin = 0;  ///< after the move to the block
  Seconds end = 0;
  int workers = 0;        ///< of the gang, at work in the block
  std::vector<int> rows;  ///< indices into CrewJob::rows, finished or carried on
  Seconds work = 0;       ///< worker-seconds at the pace of the fastest crew

  friend bool operator==(const Stint&, const Stint&) = default;
};

/// Whether a person put that gang there.
bool isPinned(const CrewProblem& problem, const Stint& stint);

struct CrewSchedule {
  std::vector<Stint> stints;    ///< by day, gang, begin
  std::vector<Seconds> undone;  ///< by job
  Loss loss = 0;
  Seconds moving = 0;  ///< worker-seconds spent on the way

  friend bool operator==(const CrewSchedule&, const CrewSchedule&) = default;
};

/// How long so many workers take, at a pace in thousandths.
Seconds timeFor(Seconds work, int workers, int pace);

/// Worker-seconds on the way between these, which are by day, gang, begin.
Seconds movingIn(const CrewProblem& problem, const std::vector<Stint>& stints);

/// By job: worker-seconds done on days past its closing.
std::vector<Seconds> lateWork(const CrewProblem& problem, const CrewSchedule& schedule);

}  // namespace topwire
