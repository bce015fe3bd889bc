#pragma once

#include <algorithm>
#include <cmath>

namespace topwire {

/// Where a task's seconds per tree come from.
struct LabourRate {
  int programme = 0;  ///< the programme's figure
  double own = 0;     ///< what the crew's ticks alone say
  double hours = 0;   ///< worker-hours of ticks behind `own`; 0 where there are none
  double weight = 0;  ///< of `own` against the programme's, from 0 to below 1

  /// What to plan with: 0 only for work that is not counted by the tree.
  int seconds() const {
    if (programme <= 0) return 0;
    return std::max(
        1, static_cast<int>(std::lround(programme + weight * (own - programme))));
  }

  friend bool operator==(const LabourRate&, const LabourRate&) = default;
};

}  // namespace topwire
