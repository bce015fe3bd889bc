#pragma once

#include "core/weather/weather_file.h"

#include <cstddef>

namespace topwire {

/// Tells the progress of a reading often enough for a bar to move smoothly and a press of
/// "stop" to be felt at once, and seldom enough to cost nothing.
class ReadingPace {
public:
  /// `progress` must outlive this.
  ReadingPace(const ReadingProgress& progress, std::size_t bytes)
      : progress_(&progress), bytes_(bytes) {}

  /// From here on the text is gone through twice, to begin with for the first time.
  void twice() { passes_ = 2; }

  void secondPass() {
    pass_ = 1;
    next_ = 0;
  }

  /// Whether to go on after the first `offset` bytes of this pass.
  bool goesOn(std::size_t offset) {
    if (offset < next_ || !*progress_) return true;
    next_ = offset + bytesBetween;
    const double share = static_cast<double>(offset) / static_cast<double>(bytes_);
    return (*progress_)((pass_ + share) / passes_);
  }

private:
  static constexpr std::size_t bytesBetween = std::size_t{64} * 1024;

  const ReadingProgress* progress_;
  std::size_t bytes_;  ///< more than 0: of an empty text nothing is read
  std::size_t next_ = 0;
  double pass_ = 0;
  double passes_ = 1;
};

}  // namespace topwire
