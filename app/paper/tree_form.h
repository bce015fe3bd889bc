#pragma once

#include "app/paper/cubic.h"

#include <vector>

namespace topwire {

/// The whole tree at a drawing's left, as it stands in one leaf, with the places on it
/// that work is shown at.
struct TreeForm {
  struct Stem {
    Cubic along;
    double base;
    double tip;
  };

  struct Limb {
    QPointF foot;
    QPointF bow;
    QPointF tip;
    double width;
  };

  std::vector<Limb> limbs;  ///< from the lowest up
  std::vector<Stem> stems;
  int wires = 4;
  QPointF top;     ///< the leader's tip
  QPointF leader;  ///< where its last tie is
  QPointF knee;    ///< the trunk below the lowest limbs
  QPointF foot;    ///< the trunk at the soil

  /// The tip of a limb, 0 the lowest and 1 the highest on the trunk; on the trunk where
  /// there are no limbs.
  QPointF limbTip(double height) const;
};

/// A slender cone. Leaf 0 and less: as it came from the nursery; from 7 on it has grown
/// up.
TreeForm spindle(int leaf);
/// A wall of six uprights from two arms along the lowest of five wires. Leaf 0 and less:
/// the bare whip; 1: the arms at a slant; from 6 on it has grown up.
TreeForm wallTree(int leaf);

}  // namespace topwire
