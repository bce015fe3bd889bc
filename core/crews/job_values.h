#pragma once

#include "core/crews/crew_dispatch.h"
#include "core/crews/flat_problem.h"
#include "core/crews/labour_flow.h"

#include <array>
#include <cstdint>
#include <vector>

namespace topwire {

/// What a worker-second of each job is worth if done on a given day and not later, in
/// whole numbers so that no machine ranks jobs otherwise than another.
class JobValues {
public:
  JobValues(const FlatProblem& problem, const LabourFlow& flow, const DispatchRule& rule);

  /// In 2^14ths of a loss, at least 1; more is better. `left`: worker-seconds of it
  /// still to do.
  std::int64_t worth(const FlatJob& job, int day, Seconds left) const;

  bool isStrictOrder() const { return rule_.by == DispatchRule::By::dueDate; }

private:
  /// The cheapest further days to do it on, in rising order of loss and price.
  static constexpr std::size_t daysAhead = 3;
  using Ahead = std::array<Loss, daysAhead>;

  void addWaiting(int job);
  void lookAhead(int job);
  Loss saved(const FlatJob& job, int day, Seconds left) const;
  Loss leastPrice(const FlatJob& job) const;
  std::int64_t nearness(const FlatJob& job, int day, Seconds left) const;
  std::int64_t fading(std::int64_t weight, int daysInHand) const;

  const FlatProblem& problem_;
  DispatchRule rule_;
  Loss usual_ = 0;                  ///< what jobs weigh, the mean over their work
  std::int64_t mix_ = 0;            ///< of nearness, in 2^14ths
  std::vector<std::int64_t> fade_;  ///< by days in hand, in 2^14ths
  std::vector<Ahead> ahead_;        ///< by slot of job and day
  std::vector<Loss> lost_;          ///< by job: left undone, with what waits for it
  std::vector<std::vector<Loss>> prices_;  ///< by skill and day
};

}  // namespace topwire
