#pragma once

#include "app/paper/drawing.h"

#include <span>

namespace topwire {

/// How the drawing of that name is made, with the tree as it stands in a leaf.
struct NamedDrawing {
  std::string_view name;
  Drawing (*draw)(int leaf);
};

// One file each.
std::span<const NamedDrawing> drawingsOfTheSite();
std::span<const NamedDrawing> drawingsBeforePlanting();
std::span<const NamedDrawing> drawingsOfPlanting();
std::span<const NamedDrawing> drawingsOfTheLeader();
std::span<const NamedDrawing> drawingsOfTies();
std::span<const NamedDrawing> drawingsOfLimbs();
std::span<const NamedDrawing> drawingsOfPruning();
std::span<const NamedDrawing> drawingsOfFruit();
std::span<const NamedDrawing> drawingsOfTheGround();
std::span<const NamedDrawing> drawingsOfTheTrunk();
std::span<const NamedDrawing> drawingsOfRounds();
std::span<const NamedDrawing> drawingsOfTheWall();

}  // namespace topwire
