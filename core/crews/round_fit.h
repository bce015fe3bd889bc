#pragma once

#include "core/crews/flat_problem.h"
#include "core/crews/rounds.h"

#include <vector>

namespace topwire {

/// What fits into one day of one gang. The gang begins the day wherever it likes, so the
/// day is known by the rows done in it and the ways between their blocks.
class RoundFit {
public:
  using Round = std::vector<Stretch>;

  /// It has to outlive this.
  explicit RoundFit(const FlatProblem& problem) : problem_{problem} {}

  int of(int gang, int day) const { return gang * problem_.days() + day; }

  int gangOf(int which) const { return which / problem_.days(); }

  int dayOf(int which) const { return which % problem_.days(); }

  const GangDay& hoursOf(int which) const {
    return problem_.gangDay(gangOf(which), dayOf(which));
  }

  int workersAt(int which, const FlatJob& job) const;
  /// As far as skills, windows and closed blocks say.
  bool mayHold(int which, const FlatJob& job) const;
  Seconds workOf(const Stretch& stretch) const;
  Seconds timeOf(int which, const Stretch& stretch) const;
  /// What a round leaves of the day, less than 0 where it does not fit; of a day of which
  /// some is kept for young trees, what is left for all others, once that is less than 0.
  Seconds freeAfter(int which, const Round& round) const;
  /// Of the stretch, from its first row on, in addition to a round that leaves `free`.
  int rowsThatFit(int which,
                  const Round& round,
                  Seconds free,
                  const Stretch& stretch) const;

private:
  const FlatProblem& problem_;
};

}  // namespace topwire
