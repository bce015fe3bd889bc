#include "app/paper/drawings_of_operations.h"

namespace topwire {

namespace {

const std::vector<NamedDrawing>& allDrawn() {
  static const std::vector<NamedDrawing> all = [] {
    std::vector<NamedDrawing> drawn;
    for (const auto some : {drawingsOfTheSite(),
                            drawingsBeforePlanting(),
                            drawingsOfPlanting(),
                            drawingsOfTheLeader(),
                            drawingsOfTies(),
                            drawingsOfLimbs(),
                            drawingsOfPruning(),
                            drawingsOfFruit(),
                            drawingsOfTheGround(),
                            drawingsOfTheTrunk(),
                            drawingsOfRounds(),
                            drawingsOfTheWall()})
      drawn.insert(drawn.end(), some.begin(), some.end());
    return drawn;
  }();
  return all;
}

}  // namespace

std::vector<std::string_view> drawingNames() {
  std::vector<std::string_view> names;
  names.reserve(allDrawn().size());
  for (const NamedDrawing& named : allDrawn()) names.push_back(named.name);
  return names;
}

std::optional<Drawing> drawingFor(std::string_view name, int leaf) {
  for (const NamedDrawing& named : allDrawn())
    if (named.name == name) return named.draw(leaf);
  return std::nullopt;
}

}  // namespace topwire
