#include "core/crews/ranked_jobs.h"

#include <algorithm>
#include <numeric>

namespace topwire {

namespace {

bool isBefore(const RankedJob& one, const RankedJob& other) {
  return one.before(other);
}

/// Yesterday's order is nearly today's.
void orderNearlyOrdered(std::vector<RankedJob>& jobs) {
  for (std::size_t i = 1; i < jobs.size(); ++i) {
    const RankedJob job = jobs[i];
    std::size_t place = i;
    for (; place > 0 && job.before(jobs[place - 1]); --place)
      jobs[place] = jobs[place - 1];
    jobs[place] = job;
  }
}

}  // namespace

void RankedJobs::order(std::size_t front) {
  constexpr std::size_t few = 160;
  skip_.resize(jobs_.size());
  std::iota(skip_.begin(), skip_.end(), std::size_t{0});
  ordered_ = jobs_.size();
  if (jobs_.size() <= few) return orderNearlyOrdered(jobs_);
  ordered_ = std::min(front, jobs_.size());
  const auto middle = jobs_.begin() + static_cast<std::ptrdiff_t>(ordered_);
  if (middle != jobs_.end())
    std::nth_element(jobs_.begin(), middle, jobs_.end(), isBefore);
  std::sort(jobs_.begin(), middle, isBefore);
}

void RankedJobs::orderRest() {
  std::sort(jobs_.begin() + static_cast<std::ptrdiff_t>(ordered_), jobs_.end(), isBefore);
  ordered_ = jobs_.size();
}

std::size_t RankedJobs::next(std::size_t position,
                             const std::vector<std::int64_t>& today) {
  std::size_t found = position;
  while (found < jobs_.size()) {
    if (found >= ordered_) orderRest();
    if (skip_[found] != found)
      found = skip_[found];
    else if (today[static_cast<std::size_t>(jobs_[found].job)] == 0)
      ++found;
    else
      break;
  }
  while (position < found) {
    const std::size_t after =
        skip_[position] == position ? position + 1 : skip_[position];
    skip_[position] = found;
    position = after;
  }
  return found;
}

}  // namespace topwire
