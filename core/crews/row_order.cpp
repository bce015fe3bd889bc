#include "core/crews/row_order.h"

#include "core/crews/index.h"

#include <algorithm>

namespace topwire {

RowOrder::RowOrder(const FlatProblem& problem) : problem_{problem} {
  rowOf_.resize(at(problem.doneSlots));
  needing_.resize(at(problem.doneSlots));
  std::size_t rows = 0;
  for (int number = 0; number < static_cast<int>(problem.jobs.size()); ++number) {
    const FlatJob& job = problem.job(number);
    rows += at(job.rows) + 1;
    linked_.push_back(job.firstDone >= 0 || job.firstNeed >= 0);
    for (int row = 0; row < job.rows; ++row) {
      if (job.firstDone >= 0) rowOf_[at(job.firstDone + row)] = {number, row};
      if (job.firstNeed < 0) continue;
      for (const int slot : problem.needsOf(job, row))
        needing_[at(slot)].emplace_back(number, row);
    }
  }
  days_.assign(rows, never);
}

void RowOrder::clear() {
  std::ranges::fill(days_, never);
}

int& RowOrder::dayOf(int job, int row) {
  return days_[at(problem_.job(job).firstSum + row)];
}

int RowOrder::dayOf(int job, int row) const {
  return days_[at(problem_.job(job).firstSum + row)];
}

void RowOrder::set(const Stretch& stretch, int day) {
  if (!asksOrIsAsked(stretch.job)) return;
  for (int row = stretch.first; row < stretch.end(); ++row) dayOf(stretch.job, row) = day;
}

bool RowOrder::isAfterNeeds(const FlatJob& job, int row, int day) const {
  if (job.firstNeed < 0 || day == never) return true;
  return std::ranges::all_of(problem_.needsOf(job, row), [&](int slot) {
    const auto [needed, other] = rowOf_[at(slot)];
    const int done = dayOf(needed, other);
    return done == never ? problem_.asked().jobs[at(needed)].last < day : done < day;
  });
}

bool RowOrder::isBeforeNeeding(int number, int row, int day) const {
  const FlatJob& job = problem_.job(number);
  if (job.firstDone < 0) return true;
  const int by = day == never ? problem_.asked().jobs[at(number)].last : day;
  return std::ranges::all_of(needing_[at(job.firstDone + row)], [&](const JobRow& asks) {
    const int then = dayOf(asks.first, asks.second);
    return then == never || by < then;
  });
}

bool RowOrder::isKept(const Stretch& stretch) const {
  if (!asksOrIsAsked(stretch.job)) return true;
  const FlatJob& job = problem_.job(stretch.job);
  for (int row = stretch.first; row < stretch.end(); ++row) {
    const int day = dayOf(stretch.job, row);
    if (!isAfterNeeds(job, row, day) || !isBeforeNeeding(stretch.job, row, day))
      return false;
  }
  return true;
}

}  // namespace topwire
