#include "core/material/material_counts.h"

#include <cmath>

namespace topwire {

namespace {

constexpr double endsOfRow = 2;

double postsPerRow(const Orchard& orchard,
                   const TradeTables& tables,
                   const Planting& planting) {
  const auto spacing = postSpacingOf(orchard, tables, planting);
  if (!spacing || *spacing <= Length{}) return 0;
  return rowLengthOf(orchard, planting).inMetres() / spacing->inMetres();
}

double countPerRow(Per per,
                   const Orchard& orchard,
                   const TradeTables& tables,
                   const Planting& planting) {
  switch (per) {
    case Per::tree:
      return treesPerRow(orchard, planting);
    case Per::post:
      return postsPerRow(orchard, tables, planting);
    case Per::rowEnd:
      return endsOfRow;
    case Per::metreOfRow:
      return rowLengthOf(orchard, planting).inMetres();
    case Per::metreOfWire:
      break;
  }
  return rowLengthOf(orchard, planting).inMetres()
         * static_cast<double>(wiresOf(orchard, tables, planting).size());
}

}  // namespace

std::vector<Length> wiresOf(const Orchard& orchard,
                            const TradeTables& tables,
                            const Planting& planting) {
  const Block& block = blockOf(orchard, planting);
  if (!block.wires.empty()) return block.wires;
  const TrellisPlan* trellis = tables.trellis(planting.programme);
  return trellis != nullptr ? trellis->wires : std::vector<Length>{};
}

std::optional<Length> postSpacingOf(const Orchard& orchard,
                                    const TradeTables& tables,
                                    const Planting& planting) {
  const Block& block = blockOf(orchard, planting);
  if (block.postSpacing) return block.postSpacing;
  const TrellisPlan* trellis = tables.trellis(planting.programme);
  return trellis != nullptr ? std::optional{trellis->postSpacing} : std::nullopt;
}

Length rowLengthOf(const Orchard& orchard, const Planting& planting) {
  if (const auto said = blockOf(orchard, planting).rowLength) return *said;
  const double places = placesPerRow(orchard, planting);
  const auto spacing = static_cast<double>(planting.treeSpacing.inMicrometres());
  return Length::micrometres(std::llround(places * spacing));
}

double countIn(double rows,
               Per per,
               const Orchard& orchard,
               const TradeTables& tables,
               const Planting& planting) {
  if (planting.kind == PlantingKind::replant && per != Per::tree) return 0;
  return rows * countPerRow(per, orchard, tables, planting);
}

}  // namespace topwire
