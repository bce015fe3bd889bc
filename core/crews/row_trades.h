#pragma once

#include "core/crews/labour_flow.h"
#include "core/crews/round_fit.h"
#include "core/crews/row_order.h"
#include "core/crews/search_numbers.h"

#include <array>
#include <cstddef>
#include <vector>

namespace topwire {

/// Trades rows between the gangs' days, millions of times a second, and keeps what loses
/// less: rows go to another day or gang, change places, come in from those left undone.
/// Time left over in a day counts as much as labour is worth on it, a further gang at a
/// job as `keepTogether` says, and of equal days the earlier is better.
///
/// What was agreed on, days with pins, and days with part of a row longer than a day,
/// stay as they are.
class RowTrades {
public:
  /// `problem` has to outlive it.
  RowTrades(const FlatProblem& problem, const LabourFlow& flow);

  /// Begins again from a plan.
  void start(const CrewSchedule& plan);
  /// Tries so many trades. At the first, one may lose as much as a small part of a move,
  /// at the last nothing; `heat`, from 1024 down to 0, says how far along they are.
  void trade(int times, int heat, SearchNumbers& numbers);

  /// From now on no trade may lose anything, whatever time it saves.
  void loseNothing() { mayNotLose_ = true; }

  /// Gives each job's rows in the order of days, where they fit so. No more can be traded
  /// after it.
  void tidy();

  const Rounds& rounds() const { return rounds_; }

private:
  using Round = RoundFit::Round;
  static constexpr int nowhere = -1;  ///< in place of a gang's day

  /// What a trade makes of one gang's day.
  struct Change {
    int which = 0;
    Round round;
    Seconds free = 0;
  };

  struct Step {
    Stretch stretch;
    int from = nowhere;
    int to = nowhere;
  };

  struct Place {
    int which = nowhere;
    std::size_t stretch = 0;
  };

  void findPrices(const LabourFlow& flow);
  void freeze(const CrewSchedule& plan);
  void gatherUndone();
  void note(int which);

  bool mayHold(int which, int job) const;
  const Stretch& stretchAt(const Place& place) const;
  Place anyPlace(SearchNumbers& numbers) const;
  int anyDayFor(int job, SearchNumbers& numbers) const;
  int anyDayInBlock(int block, SearchNumbers& numbers);

  bool propose(SearchNumbers& numbers);
  bool shift(const Place& place, int to);
  bool swap(const Place& one, const Place& other);
  bool join(const Place& place, SearchNumbers& numbers);
  bool bringIn(bool inPlaceOfOther, SearchNumbers& numbers);

  Change& beginChange(int which);
  Stretch take(Change& from, std::size_t stretch);
  void leave(Change& in, const Stretch& rest, std::size_t stretch);
  void put(Change& into, const Stretch& stretch);
  int moveWhatFits(Change& from, std::size_t stretch, Change& into);

  Loss lossOf(const Step& step) const;
  Loss delayOf(const Step& step) const;
  int gangsMore();
  Loss worsening();
  bool accept();
  int crowd(int which, const Round& round, int sign);
  int crowdChanges(bool back);
  bool keepOrder();
  void share(const Step& step, int sign);
  void settleUndone();
  void tidyJob(int job, const std::vector<int>& held);
  void setOrder(int job, const std::vector<int>& held, const std::vector<Round>& rounds);

  const FlatProblem& problem_;
  RoundFit days_;
  RowOrder order_;
  Loss usual_ = 0;            ///< what jobs weigh, the mean over their work
  Loss apart_ = 0;            ///< what a further gang at a job counts
  std::vector<Loss> price_;   ///< by gang's day: of one second of the gang
  std::vector<char> frozen_;  ///< by gang's day
  Rounds rounds_;
  std::vector<Seconds> free_;              ///< by gang's day
  std::vector<int> mayChange_;             ///< days that may change
  std::vector<int> inBlock_;               ///< by block and day: workers
  std::vector<std::vector<int>> holders_;  ///< by block: gang's days, some out of date
  std::vector<int> shares_;                ///< by job and gang: rows
  std::vector<Stretch> undone_;
  std::array<Change, 2> changes_;
  std::size_t changed_ = 0;
  std::vector<Step> steps_;
  bool mayNotLose_ = false;
  int broughtIn_ = -1;   ///< of what is undone
  Stretch stillUndone_;  ///< what is left of it
};

}  // namespace topwire
