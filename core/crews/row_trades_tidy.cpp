#include "core/crews/index.h"
#include "core/crews/row_trades.h"

#include <algorithm>
#include <tuple>

namespace topwire {

namespace {

/// As few visits as the rows, which ascend, allow.
std::vector<Visit> visitsOf(int job, const int* first, const int* end) {
  std::vector<Visit> visits;
  for (const int* row = first; row != end; ++row)
    if (!visits.empty() && visits.back().end() == *row)
      ++visits.back().rows;
    else
      visits.push_back({job, *row, 1});
  return visits;
}

void addRows(const Visit& visit, std::vector<int>& rows) {
  for (int row = visit.first; row < visit.end(); ++row) rows.push_back(row);
}

}  // namespace

void RowTrades::tidy() {
  std::vector<std::vector<int>> heldBy(problem_.jobs.size());
  for (int which = 0; which < static_cast<int>(rounds_.size()); ++which)
    for (const Visit& visit : rounds_[at(which)]) {
      auto& known = heldBy[at(visit.job)];
      if (known.empty() || known.back() != which) known.push_back(which);
    }
  for (int job = 0; job < static_cast<int>(heldBy.size()); ++job) {
    auto& held = heldBy[at(job)];
    const auto isFrozen = [this](int which) { return frozen_[at(which)] != 0; };
    if (std::ranges::any_of(held, isFrozen)) continue;
    std::ranges::sort(held, {}, [this](int which) {
      return std::tuple{days_.dayOf(which), which};
    });
    tidyJob(job, held);
  }
}

/// `held`: the gang's days that hold rows of it, the earliest first.
void RowTrades::tidyJob(int job, const std::vector<int>& held) {
  std::vector<int> rows;
  std::vector<std::size_t> ends;
  for (const int which : held) {
    for (const Visit& visit : rounds_[at(which)])
      if (visit.job == job) addRows(visit, rows);
    ends.push_back(rows.size());
  }
  if (std::ranges::is_sorted(rows)) return;
  std::ranges::sort(rows);
  std::vector<Round> tidied;
  std::size_t first = 0;
  for (std::size_t place = 0; place < held.size(); ++place) {
    tidied.push_back(rounds_[at(held[place])]);
    const auto visits = visitsOf(job, rows.data() + first, rows.data() + ends[place]);
    const auto isOfJob = [job](const Visit& visit) { return visit.job == job; };
    const auto old = std::ranges::find_if(tidied.back(), isOfJob);
    const auto begin = old - tidied.back().begin();
    std::erase_if(tidied.back(), isOfJob);
    tidied.back().insert(tidied.back().begin() + begin, visits.begin(), visits.end());
    if (days_.freeAfter(held[place], tidied.back()) < 0) return;
    first = ends[place];
  }
  takeIfInOrder(job, held, tidied);
}

void RowTrades::takeIfInOrder(int job,
                              const std::vector<int>& held,
                              std::vector<Round>& tidied) {
  const auto setDays = [&](const std::vector<int>& which, auto roundOf) {
    for (std::size_t place = 0; place < which.size(); ++place)
      for (const Visit& visit : roundOf(place))
        if (visit.job == job) order_.set(visit, days_.dayOf(which[place]));
  };
  const auto isKept = [&](const Round& round) {
    return std::ranges::all_of(round, [&](const Visit& visit) {
      return visit.job != job || order_.isKept(visit);
    });
  };
  setDays(held, [&](std::size_t place) -> const Round& { return tidied[place]; });
  if (!std::ranges::all_of(tidied, isKept)) {
    setDays(held,
            [&](std::size_t place) -> const Round& { return rounds_[at(held[place])]; });
    return;
  }
  for (std::size_t place = 0; place < held.size(); ++place)
    std::swap(rounds_[at(held[place])], tidied[place]);
}

}  // namespace topwire
