#pragma once

#include "core/planning/planner.h"

#include <string>

namespace topwire {

/// The programme of a planting for which none was named: the commonest tree form, where
/// it is at hand.
inline std::string usualProgramme(const Programmes& programmes) {
  const std::string usual = "tall-spindle-apple";
  if (programmes.contains(usual)) return usual;
  return programmes.empty() ? std::string{} : programmes.begin()->first;
}

}  // namespace topwire
