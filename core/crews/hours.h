#pragma once

#include "core/crews/crew_problem.h"

namespace topwire {

/// Worker-seconds as people read them.
inline double hoursOf(Seconds seconds) {
  constexpr double secondsPerHour = 3600;
  return static_cast<double>(seconds) / secondsPerHour;
}

/// Of a loss or a price: as many whole ones as there are thousandths.
inline double wholeOf(Loss thousandths) {
  return static_cast<double>(thousandths) / 1000;
}

/// A loss as hours of work.
inline double hoursOfLoss(Loss loss) {
  constexpr double secondsPerHour = 3600;
  return wholeOf(loss) / secondsPerHour;
}

}  // namespace topwire
