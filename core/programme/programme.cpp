#include "core/programme/programme.h"

#include <algorithm>
#include <iterator>

namespace topwire {

bool Operation::appliesTo(int leaf, Vigour vigour, PlantingKind kind) const {
  const bool inLeaf =
      oncePerPlanting() || std::ranges::any_of(leaves, [leaf](const LeafRange& range) {
        return range.contains(leaf);
      });
  return inLeaf && vigours.contains(vigour) && kinds.contains(kind);
}

int Operation::secondsPerTreeAt(int leaf) const {
  if (secondsPerTree.empty()) return 0;
  const auto above = secondsPerTree.upper_bound(leaf);
  return above == secondsPerTree.begin() ? above->second : std::prev(above)->second;
}

const Operation* Programme::find(std::string_view wantedId) const {
  const auto found = std::ranges::find(operations, wantedId, &Operation::id);
  return found == operations.end() ? nullptr : &*found;
}

}  // namespace topwire
