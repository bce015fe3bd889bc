#pragma once

#include "core/crews/flat_problem.h"
#include "core/crews/rounds.h"

#include <utility>
#include <vector>

namespace topwire {

/// On which days rows are done that need others or are needed, so as to keep each after
/// those it needs, or after the last day on which these could be done.
class RowOrder {
public:
  /// It has to outlive this.
  explicit RowOrder(const FlatProblem& problem);

  static constexpr int never = -1;

  void clear();
  void set(const Stretch& stretch, int day);
  /// Its rows, and those that need them, come at least a day after all they need.
  bool isKept(const Stretch& stretch) const;

private:
  bool asksOrIsAsked(int job) const {
    return linked_[static_cast<std::size_t>(job)] != 0;
  }

  int& dayOf(int job, int row);
  int dayOf(int job, int row) const;
  bool isAfterNeeds(const FlatJob& job, int row, int day) const;
  bool isBeforeNeeding(int job, int row, int day) const;

  using JobRow = std::pair<int, int>;

  const FlatProblem& problem_;
  std::vector<char> linked_;                  ///< by job
  std::vector<int> days_;                     ///< by row of all jobs
  std::vector<JobRow> rowOf_;                 ///< by slot of the times rows are done
  std::vector<std::vector<JobRow>> needing_;  ///< by slot
};

}  // namespace topwire
