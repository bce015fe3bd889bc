#pragma once

#include "core/crews/plan_and_done.h"

#include <optional>
#include <string>
#include <vector>

namespace topwire {

/// The last day before `day` of which there is something to show: an accepted plan, or
/// rows ticked.
std::optional<Day> recordedBefore(const Orchard& orchard, Day day);
/// The first one after `day` and before `today`.
std::optional<Day> recordedAfter(const Orchard& orchard, Day day, Day today);

/// Rows ticked on a day that no plan accepted for it had.
struct DoneBesides {
  TaskKey task;
  std::string by;
  RowSet rows;
  int minutes = 0;  ///< 0 where none were noted

  friend bool operator==(const DoneBesides&, const DoneBesides&) = default;
};

std::vector<DoneBesides> doneBesides(const Orchard& orchard, Day day);

}  // namespace topwire
