#include "core/crews/index.h"
#include "core/crews/row_trades.h"

#include <algorithm>
#include <cstddef>
#include <tuple>
#include <utility>

namespace topwire {

namespace {

int rowsOf(const std::vector<Stretch>& round, int job) {
  int rows = 0;
  for (const Stretch& stretch : round)
    if (stretch.job == job) rows += stretch.rows;
  return rows;
}

/// All the job's stretches as one, in place of the first.
void makeOne(std::vector<Stretch>& round, const Stretch& whole) {
  const auto isOfJob = [&whole](const Stretch& stretch) {
    return stretch.job == whole.job;
  };
  auto first = std::ranges::find_if(round, isOfJob);
  *first = whole;
  round.erase(std::remove_if(first + 1, round.end(), isOfJob), round.end());
}

/// The stretches of each job one after the other, by its rows, and as few as can be.
std::vector<Stretch> gathered(std::vector<Stretch> round) {
  std::vector<Stretch> whole;
  for (std::size_t first = 0; first < round.size(); ++first) {
    const auto begin = round.begin() + static_cast<std::ptrdiff_t>(first);
    const int job = begin->job;
    const auto end = std::stable_partition(
        begin, round.end(), [job](const Stretch& stretch) { return stretch.job == job; });
    std::sort(begin, end, [](const Stretch& one, const Stretch& other) {
      return one.first < other.first;
    });
    if (!whole.empty() && whole.back().job == job && whole.back().end() == begin->first)
      whole.back().rows += begin->rows;
    else
      whole.push_back(*begin);
  }
  return whole;
}

}  // namespace

void RowTrades::tidy() {
  std::vector<std::vector<int>> heldBy(problem_.jobs.size());
  for (int which = 0; which < static_cast<int>(rounds_.size()); ++which)
    for (const Stretch& stretch : rounds_[at(which)]) {
      auto& known = heldBy[at(stretch.job)];
      if (known.empty() || known.back() != which) known.push_back(which);
    }
  for (int job = 0; job < static_cast<int>(heldBy.size()); ++job) {
    auto& held = heldBy[at(job)];
    const auto isFrozen = [this](int which) { return frozen_[at(which)] != 0; };
    if (held.empty() || std::ranges::any_of(held, isFrozen)) continue;
    std::ranges::sort(held, {}, [this](int which) {
      return std::tuple{days_.dayOf(which), which};
    });
    tidyJob(job, held);
  }
  for (int which = 0; which < static_cast<int>(rounds_.size()); ++which)
    if (frozen_[at(which)] == 0) rounds_[at(which)] = gathered(rounds_[at(which)]);
}

/// `held`: the gang's days that hold rows of it, the earliest first. What is left undone
/// comes last.
void RowTrades::tidyJob(int job, const std::vector<int>& held) {
  std::vector<Round> tidied;
  int first = 0;
  for (const int which : held) {
    tidied.push_back(rounds_[at(which)]);
    const int rows = rowsOf(tidied.back(), job);
    makeOne(tidied.back(), {job, first, rows});
    if (days_.freeAfter(which, tidied.back()) < 0) return;
    first += rows;
  }
  setOrder(job, held, tidied);
  if (order_.isKept({job, 0, problem_.job(job).rows})) {
    for (std::size_t place = 0; place < held.size(); ++place)
      std::swap(rounds_[at(held[place])], tidied[place]);
    return;
  }
  for (std::size_t place = 0; place < held.size(); ++place)
    tidied[place] = rounds_[at(held[place])];
  setOrder(job, held, tidied);
}

void RowTrades::setOrder(int job,
                         const std::vector<int>& held,
                         const std::vector<Round>& rounds) {
  order_.set({job, 0, problem_.job(job).rows}, RowOrder::never);
  for (std::size_t place = 0; place < held.size(); ++place)
    for (const Stretch& stretch : rounds[place])
      if (stretch.job == job) order_.set(stretch, days_.dayOf(held[place]));
}

}  // namespace topwire
