#pragma once

#include "app/paper/drawing.h"
#include "app/paper/tree_form.h"

#include <span>

namespace topwire {

/// How the drawing of that name is made, with the tree as it then stands.
struct NamedDrawing {
  std::string_view name;
  Drawing (*draw)(const TreeForm& tree);
  bool atPlanting = false;  ///< shows the tree as it came from the nursery
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
