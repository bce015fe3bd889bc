#pragma once

#include "core/orchard/orchard.h"

#include <optional>

namespace topwire {

struct Density {
  double perAcre;
  double perHectare;
};

/// By row and tree spacing; nothing where one of them is missing.
std::optional<Density> densityOf(const Block& block, const Planting& planting);

struct LengthRange {
  Length from;
  Length to;

  friend bool operator==(const LengthRange&, const LengthRange&) = default;
};

/// How high the trees may grow: 90 % of the row spacing is the aim (common practice), as
/// much as the row spacing the most that is published (Robinson 2020): higher trees shade
/// the next row.
LengthRange matureHeight(Length rowSpacing);

/// Cross-section of a trunk taken as round, in square centimetres.
double trunkAreaFromDiameter(Length diameter);
double trunkAreaFromGirth(Length girth);

}  // namespace topwire
