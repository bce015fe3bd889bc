#include "core/labour/learned_paces.h"

#include <algorithm>
#include <set>

namespace topwire {

namespace {

/// Leaves at which trees of this programme stand in the season.
std::set<int> leavesOf(const Orchard& orchard,
                       const std::string& programme,
                       Season season) {
  std::set<int> leaves;
  for (const auto& [id, planting] : orchard.plantings)
    if (planting.programme == programme) leaves.insert(leafOf(orchard, planting, season));
  return leaves;
}

bool isAskedAt(const Operation& operation, int leaf) {
  if (operation.oncePerPlanting()) return leaf <= 1;
  return std::ranges::any_of(
      operation.leaves, [leaf](const LeafRange& range) { return range.contains(leaf); });
}

class PaceLister {
public:
  PaceLister(const LearnedRates& rates, const Programme& programme, std::set<int> leaves)
      : rates_(&rates), programme_(&programme), leaves_(std::move(leaves)) {}

  void listFor(const Operation& operation, std::vector<LearnedPace>& into) const {
    const auto& figures = operation.secondsPerTree;
    for (auto figure = figures.begin(); figure != figures.end(); ++figure) {
      if (figure->second <= 0) continue;
      const auto next = std::next(figure);
      LearnedPace pace;
      pace.firstLeaf = figure->first;
      if (next != figures.end()) pace.lastLeaf = next->first - 1;
      describe(pace, operation);
      if (pace.isLearned() || isAsked(operation, pace, figure == figures.begin()))
        into.push_back(std::move(pace));
    }
  }

private:
  void describe(LearnedPace& pace, const Operation& operation) const {
    pace.programme = programme_->id;
    pace.operation = operation.id;
    pace.name = operation.name;
    pace.rate = rates_->of(programme_->id, operation, pace.firstLeaf);
    for (const std::string& crew :
         rates_->crewsSeen(programme_->id, operation, pace.firstLeaf))
      pace.crews.push_back(
          {crew, rates_->ofCrew(programme_->id, operation, pace.firstLeaf, crew)});
  }

  /// The lowest figure holds before its leaf, too.
  bool isAsked(const Operation& operation, const LearnedPace& pace, bool lowest) const {
    return std::ranges::any_of(leaves_, [&](int leaf) {
      const bool alike =
          (lowest || leaf >= pace.firstLeaf) && leaf <= pace.lastLeaf.value_or(leaf);
      return alike && isAskedAt(operation, leaf);
    });
  }

  const LearnedRates* rates_;
  const Programme* programme_;
  std::set<int> leaves_;
};

}  // namespace

std::vector<LearnedPace> learnedPaces(const Orchard& orchard,
                                      const std::map<std::string, Programme>& programmes,
                                      Season season) {
  const LearnedRates rates{orchard, programmes};
  std::vector<LearnedPace> paces;
  for (const auto& [id, programme] : programmes) {
    const PaceLister lister{rates, programme, leavesOf(orchard, id, season)};
    for (const Operation& operation : programme.operations)
      lister.listFor(operation, paces);
  }
  return paces;
}

}  // namespace topwire
