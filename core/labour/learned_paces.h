#pragma once

#include "core/labour/learned_rates.h"

#include <optional>
#include <string>
#include <vector>

namespace topwire {

struct CrewRate {
  std::string crew;  ///< the name its ticks are noted by; empty where none was noted
  LabourRate rate;   ///< `programme` in it is the pace of all crews
};

/// What is known of the pace of one kind of work: an operation on trees of the leaves for
/// which its programme gives one figure.
struct LearnedPace {
  std::string programme;
  std::string operation;
  Words name;
  int firstLeaf = 1;
  std::optional<int> lastLeaf;  ///< nothing: and all that follow
  LabourRate rate;
  std::vector<CrewRate> crews;  ///< those with hours noted, by name

  bool isLearned() const { return rate.hours > 0; }
};

/// Every kind of work that the orchard's plantings ask for at their leaf in `season`, and
/// every other one that was learned: by programme, in its order, then leaf. Work that is
/// not counted by the tree has no pace and is left out.
std::vector<LearnedPace> learnedPaces(const Orchard& orchard,
                                      const std::map<std::string, Programme>& programmes,
                                      Season season);

}  // namespace topwire
