#pragma once

#include <QPointF>

namespace topwire {

/// A cubic's start, two handles and end.
struct Cubic {
  QPointF start, towards, from, end;

  QPointF at(double t) const;
  /// Unit vector to the left of the direction of travel.
  QPointF sideways(double t) const;
};

/// The straight line as a cubic.
Cubic straight(QPointF from, QPointF to);
/// A stem that rises from `foot` to `top` with the slight sway of wood.
Cubic upright(QPointF foot, QPointF top);

}  // namespace topwire
