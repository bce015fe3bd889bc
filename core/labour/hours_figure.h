#pragma once

#include "core/base/phrase.h"

#include <algorithm>

namespace topwire {

/// Hours with one decimal; with two where one would make nothing of some work.
inline Figure hoursFigure(double hours) {
  constexpr double readsAsNothing = 0.05;
  constexpr double least = 0.01;
  if (hours <= 0 || hours >= readsAsNothing) return {hours, 1};
  return {std::max(least, hours), 2};
}

}  // namespace topwire
