#include "core/closing/next_season.h"
#include "core/targets/class_suggestion.h"
#include "core/targets/fruit_target.h"

namespace topwire {

namespace {

/// Proposes leaf by leaf, on an orchard that has the classes proposed already, so that
/// the fruit is that of the class the tree will have.
class Proposer {
public:
  Proposer(const Orchard& orchard, const Trade& trade, Season next, Day today)
      : orchard_(orchard), trade_(&trade), next_(next), today_(today) {}

  NextLeaf propose(const Planting& planting) {
    NextLeaf made;
    made.planting = planting.id;
    made.leaf = leafOf(orchard_, planting, next_);
    made.held = made.vigour = vigourIn(next_, orchard_, trade_->tables, planting).vigour;
    proposeClass(planting, made);
    proposeFruit(planting, made);
    return made;
  }

private:
  void proposeClass(const Planting& planting, NextLeaf& leaf) {
    const ClassSuggestion suggestion =
        suggestClass(orchard_, trade_->tables, planting, today_);
    if (suggestion.from != next_) return;
    const Settings& settings = orchard_.settings;
    leaf.vigourReasons = reasonsOf(suggestion, settings.hemisphere(), settings.units);
    if (!suggestion.changes() || suggestion.current != leaf.held) return;
    leaf.vigour = suggestion.suggested;
    SeasonTarget& target = orchard_.targets[{planting.id, next_}];
    target.of = {planting.id, next_};
    target.vigour = leaf.vigour;
  }

  void proposeFruit(const Planting& planting, NextLeaf& leaf) const {
    const auto target = fruitTarget(orchard_, trade_->tables, planting, next_, today_);
    if (!target) return;
    leaf.fruitFrom = target->keep.from;
    leaf.fruitTo = target->keep.to;
    leaf.fruitReasons = reasonsOf(*target, planting, orchard_.settings.units);
  }

  Orchard orchard_;
  const Trade* trade_;
  Season next_;
  Day today_;
};

}  // namespace

std::vector<NextLeaf> nextLeaves(const Orchard& orchard,
                                 const Trade& trade,
                                 Season season,
                                 Day today) {
  const Season next = season.plus(1);
  Proposer proposer{orchard, trade, next, today};
  std::vector<NextLeaf> leaves;
  for (const Block* block : blocksInOrder(orchard))
    for (const Planting* planting : plantingsOf(orchard, block->id))
      if (leafOf(orchard, *planting, next) >= 1)
        leaves.push_back(proposer.propose(*planting));
  return leaves;
}

}  // namespace topwire
