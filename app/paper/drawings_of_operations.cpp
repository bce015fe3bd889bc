#include "app/paper/drawings_of_operations.h"

#include <algorithm>

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

const NamedDrawing* find(std::string_view name) {
  const auto found = std::ranges::find(allDrawn(), name, &NamedDrawing::name);
  return found == allDrawn().end() ? nullptr : &*found;
}

constexpr std::string_view onWall = "wall-";

}  // namespace

std::vector<std::string_view> drawingNames() {
  std::vector<std::string_view> names;
  names.reserve(allDrawn().size());
  for (const NamedDrawing& named : allDrawn()) names.push_back(named.name);
  return names;
}

std::optional<Drawing> drawingFor(std::string_view name, int leaf) {
  const bool wall = name.starts_with(onWall);
  const NamedDrawing* named = find(name);
  if (named == nullptr && wall) named = find(name.substr(onWall.size()));
  if (named == nullptr) return std::nullopt;
  const int age = named->atPlanting ? 0 : leaf;
  return named->draw(wall ? wallTree(age) : spindle(age));
}

}  // namespace topwire
