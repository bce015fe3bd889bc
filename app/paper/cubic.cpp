#include "app/paper/cubic.h"

#include <cmath>

namespace topwire {

QPointF Cubic::at(double t) const {
  const double u = 1 - t;
  return u * u * u * start + 3 * u * u * t * towards + 3 * u * t * t * from
         + t * t * t * end;
}

QPointF Cubic::sideways(double t) const {
  const double u = 1 - t;
  const QPointF along = (3 * u * u * (towards - start) + 6 * u * t * (from - towards)
                         + 3 * t * t * (end - from));
  const double length = std::hypot(along.x(), along.y());
  return length > 0 ? QPointF{-along.y(), along.x()} / length : QPointF{0, 1};
}

Cubic straight(QPointF from, QPointF to) {
  return {from, from + (to - from) / 3, from + (to - from) * 2 / 3, to};
}

Cubic upright(QPointF foot, QPointF top) {
  Cubic along = straight(foot, top);
  along.towards.rx() += 0.5;
  along.from.rx() -= 0.5;
  return along;
}

}  // namespace topwire
