#include "core/targets/tree_figures.h"

#include <numbers>

namespace topwire {

namespace {

double inCentimetres(Length length) {
  return length.inMetres() * 100;
}

}  // namespace

std::optional<Density> densityOf(const Block& block, const Planting& planting) {
  if (block.rowSpacing <= Length{} || planting.treeSpacing <= Length{})
    return std::nullopt;
  return Density{treesPerAcre(block.rowSpacing, planting.treeSpacing),
                 treesPerHectare(block.rowSpacing, planting.treeSpacing)};
}

LengthRange matureHeight(Length rowSpacing) {
  return {Length::micrometres(rowSpacing.inMicrometres() * 9 / 10), rowSpacing};
}

double trunkAreaFromDiameter(Length diameter) {
  const double across = inCentimetres(diameter);
  return std::numbers::pi * across * across / 4;
}

double trunkAreaFromGirth(Length girth) {
  const double around = inCentimetres(girth);
  return around * around / (4 * std::numbers::pi);
}

}  // namespace topwire
