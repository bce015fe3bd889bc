#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace topwire {

struct RankedJob {
  std::int64_t worth = 0;
  int job = 0;

  /// Best first; of equals the one of the lower number.
  bool before(const RankedJob& other) const {
    return worth != other.worth ? worth > other.worth : job < other.job;
  }
};

/// The jobs of one skill on one day, the best first, passing over those that are dropped
/// without going over them again. Only as many are put in order as are looked at.
class RankedJobs {
public:
  void clear() { jobs_.clear(); }

  void add(int job) { jobs_.push_back({0, job}); }
  /// A new day: `worthOf(job)` says what it is worth now; jobs below 0 are forgotten.
  /// `front`: how many will surely be looked at.
  template <class WorthOf>
  void rankBy(WorthOf worthOf, std::size_t front);
  /// The first at `position` or after it whose worth in `today` is not 0; the size, if
  /// there is none.
  std::size_t next(std::size_t position, const std::vector<std::int64_t>& today);

  std::size_t size() const { return jobs_.size(); }

  const RankedJob& operator[](std::size_t position) const { return jobs_[position]; }

private:
  void order(std::size_t front);
  void orderRest();

  std::vector<RankedJob> jobs_;
  std::vector<std::size_t> skip_;  ///< the position itself, or one after it
  std::size_t ordered_ = 0;
};

template <class WorthOf>
void RankedJobs::rankBy(WorthOf worthOf, std::size_t front) {
  std::size_t kept = 0;
  for (RankedJob& ranked : jobs_) {
    const std::int64_t worth = worthOf(ranked.job);
    if (worth >= 0) jobs_[kept++] = {worth, ranked.job};
  }
  jobs_.resize(kept);
  order(front);
}

}  // namespace topwire
