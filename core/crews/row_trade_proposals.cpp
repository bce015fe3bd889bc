#include "core/crews/index.h"
#include "core/crews/row_trades.h"

#include <algorithm>

namespace topwire {

namespace {

/// Work that may be late is not sought a place for on days later than this.
constexpr int daysLate = 7;

/// How often each kind of trade is tried, out of the sum of them: as they were found to
/// pay.
constexpr int shifts = 4;
constexpr int swaps = 3;
constexpr int fillings = 2;
constexpr int replacements = 3;
constexpr int joins = 5;

std::ptrdiff_t offset(std::size_t place) {
  return static_cast<std::ptrdiff_t>(place);
}

}  // namespace

const Stretch& RowTrades::stretchAt(const Place& place) const {
  return rounds_[at(place.which)][place.stretch];
}

RowTrades::Place RowTrades::anyPlace(SearchNumbers& numbers) const {
  const int which = mayChange_[at(numbers.below(static_cast<int>(mayChange_.size())))];
  const Round& round = rounds_[at(which)];
  if (round.empty()) return {};
  return {which, at(numbers.below(static_cast<int>(round.size())))};
}

int RowTrades::anyDayFor(int number, SearchNumbers& numbers) const {
  const FlatJob& job = problem_.job(number);
  int last = job.lastDay;
  if (job.perDayLate > 0)
    last = std::min(last, std::max(job.closes, job.firstDay) + daysLate);
  const int day = job.firstDay + numbers.below(last - job.firstDay + 1);
  const int gang = numbers.below(static_cast<int>(problem_.gangs.size()));
  const int which = days_.of(gang, day);
  return mayHold(which, number) ? which : nowhere;
}

/// A gang's day that has work in the block.
int RowTrades::anyDayInBlock(int block, SearchNumbers& numbers) {
  auto& known = holders_[at(block)];
  if (known.empty()) return nowhere;
  int& which = known[at(numbers.below(static_cast<int>(known.size())))];
  const auto isThere = [&](const Stretch& stretch) {
    return problem_.job(stretch.job).block == block;
  };
  if (std::ranges::any_of(rounds_[at(which)], isThere)) return which;
  which = known.back();
  known.pop_back();
  return nowhere;
}

RowTrades::Change& RowTrades::beginChange(int which) {
  Change& change = changes_[changed_++];
  change.which = which;
  change.round = rounds_[at(which)];
  change.free = free_[at(which)];
  return change;
}

Stretch RowTrades::take(Change& from, std::size_t stretch) {
  const Stretch taken = from.round[stretch];
  from.round.erase(from.round.begin() + offset(stretch));
  from.free = days_.freeAfter(from.which, from.round);
  return taken;
}

/// Rows of a stretch that were not to be had elsewhere stay in its place.
void RowTrades::leave(Change& in, const Stretch& rest, std::size_t stretch) {
  in.round.insert(in.round.begin() + offset(stretch), rest);
  in.free = days_.freeAfter(in.which, in.round);
}

/// Beside work in the same block, if there is any.
void RowTrades::put(Change& into, const Stretch& stretch) {
  const int block = problem_.job(stretch.job).block;
  auto beside = into.round.end();
  for (auto known = into.round.begin(); known != into.round.end(); ++known) {
    if (problem_.job(known->job).block == block) beside = known + 1;
    if (known->job != stretch.job) continue;
    if (known->end() != stretch.first && stretch.end() != known->first) continue;
    known->first = std::min(known->first, stretch.first);
    known->rows += stretch.rows;
    into.free = days_.freeAfter(into.which, into.round);
    return;
  }
  into.round.insert(beside, stretch);
  into.free = days_.freeAfter(into.which, into.round);
}

/// Rows moved from one day to the other: as many of the stretch as fit there.
int RowTrades::moveWhatFits(Change& from, std::size_t stretch, Change& into) {
  const Stretch whole = from.round[stretch];
  const int rows = days_.rowsThatFit(into.which, into.round, into.free, whole);
  if (rows == 0) return 0;
  take(from, stretch);
  if (rows < whole.rows)
    leave(from, {whole.job, whole.first + rows, whole.rows - rows}, stretch);
  const Stretch moved{whole.job, whole.first, rows};
  put(into, moved);
  steps_.push_back({moved, from.which, into.which});
  return rows;
}

bool RowTrades::shift(const Place& place, int to) {
  if (to == nowhere || to == place.which || !mayHold(to, stretchAt(place).job))
    return false;
  Change& from = beginChange(place.which);
  Change& into = beginChange(to);
  return moveWhatFits(from, place.stretch, into) > 0 && into.free >= 0 && from.free >= 0;
}

/// Each takes as much of the other's as fits; what then fits nowhere is left undone.
bool RowTrades::swap(const Place& one, const Place& other) {
  const Stretch first = stretchAt(one);
  const Stretch second = stretchAt(other);
  if (first.job == second.job || !mayHold(one.which, second.job)
      || !mayHold(other.which, first.job))
    return false;
  Change& from = beginChange(one.which);
  Change& into = beginChange(other.which);
  take(into, other.stretch);
  if (moveWhatFits(from, one.stretch, into) == 0) return false;
  const int back = days_.rowsThatFit(from.which, from.round, from.free, second);
  if (back == 0) return false;
  const Stretch moved{second.job, second.first, back};
  put(from, moved);
  steps_.push_back({moved, into.which, from.which});
  if (const Stretch rest{second.job, second.first + back, second.rows - back};
      rest.rows > 0) {
    if (days_.rowsThatFit(into.which, into.round, into.free, rest) == rest.rows)
      put(into, rest);
    else
      steps_.push_back({rest, into.which, nowhere});
  }
  return into.free >= 0 && from.free >= 0;
}

/// To a day that has work in the same block: into its free time, or in place of work in
/// another.
bool RowTrades::join(const Place& place, SearchNumbers& numbers) {
  const int block = problem_.job(stretchAt(place).job).block;
  const int to = anyDayInBlock(block, numbers);
  if (to == nowhere || to == place.which) return false;
  if (numbers.below(2) == 0) return shift(place, to);
  const Round& round = rounds_[at(to)];
  const Place other{to, at(numbers.below(static_cast<int>(round.size())))};
  return problem_.job(stretchAt(other).job).block != block && swap(place, other);
}

bool RowTrades::bringIn(bool inPlaceOfOther, SearchNumbers& numbers) {
  if (undone_.empty()) return false;
  broughtIn_ = numbers.below(static_cast<int>(undone_.size()));
  const Stretch wanted = undone_[at(broughtIn_)];
  const int to = anyDayFor(wanted.job, numbers);
  if (to == nowhere) return false;
  Change& into = beginChange(to);
  if (inPlaceOfOther) {
    if (into.round.empty()) return false;
    const int stretches = static_cast<int>(into.round.size());
    const Stretch old = take(into, at(numbers.below(stretches)));
    if (old.job == wanted.job) return false;
    steps_.push_back({old, to, nowhere});
  }
  const int rows = days_.rowsThatFit(to, into.round, into.free, wanted);
  if (rows == 0) return false;
  const Stretch moved{wanted.job, wanted.first, rows};
  put(into, moved);
  steps_.push_back({moved, nowhere, to});
  stillUndone_ = {wanted.job, wanted.first + rows, wanted.rows - rows};
  return into.free >= 0;
}

bool RowTrades::propose(SearchNumbers& numbers) {
  int kind = numbers.below(shifts + swaps + fillings + replacements + joins);
  if ((kind -= fillings) < 0) return bringIn(false, numbers);
  if ((kind -= replacements) < 0) return bringIn(true, numbers);
  const Place place = anyPlace(numbers);
  if (place.which == nowhere) return false;
  if ((kind -= joins) < 0) return join(place, numbers);
  const int to = anyDayFor(stretchAt(place).job, numbers);
  if (to == nowhere || to == place.which) return false;
  if ((kind -= shifts) < 0) return shift(place, to);
  const Round& round = rounds_[at(to)];
  if (round.empty()) return false;
  return swap(place, {to, at(numbers.below(static_cast<int>(round.size())))});
}

}  // namespace topwire
