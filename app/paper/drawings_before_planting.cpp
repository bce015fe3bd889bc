#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"

namespace topwire {

namespace {

/// The place in the row where a tree will stand.
void comingTree(Pen& pen, double x) {
  QPainterPath stem{QPointF{x, 112}};
  stem.lineTo(x, 52);
  pen.off(stem, weight::limb);
}

/// A nursery tree with bare roots and feathers, its union at `foot`.
void nurseryTree(Pen& pen, QPointF foot, double lean) {
  roots(pen, foot, 16);
  for (const double side : {-1.0, 1.0})
    for (const double up : {34.0, 46.0}) {
      const QPointF from = foot + QPointF{lean * up / 80, -up - (side > 0 ? 5 : 0)};
      QPainterPath feather{from};
      feather.quadTo(from + QPointF{side * 6, -5}, from + QPointF{side * 13, -12});
      pen.stroke(feather, weight::limb);
    }
  pen.wood({foot,
            foot + QPointF{lean * 0.2, -25},
            foot + QPointF{lean * 0.6, -50},
            foot + QPointF{lean, -78}},
           6,
           2.4,
           weight::limb);
}

}  // namespace

Drawing orderTrees() {
  Pen pen;
  pen.line({2, 112}, {52, 112}, weight::ground);
  for (const double x : {10.0, 24.0, 38.0}) comingTree(pen, x);
  pen.lens({24, 82}, 9);
  nurseryTree(pen, {101, 92}, -12);
  nurseryTree(pen, {113, 92}, 12);
  nurseryTree(pen, {107, 92}, 0);
  pen.stroke("M96 76Q107 82 118 76", weight::tie);
  pen.stroke("M96 76Q107 71 118 76", weight::tie);
  pen.stroke("M118 77Q124 78 127 72", weight::limb);
  pen.stroke("M127 62L150 68L146 84L123 78Z", weight::trunk, Shade::paper);
  pen.stroke("M130 72L135 78L143 68", weight::trunk);
  return pen.finished();
}

Drawing soilTest() {
  Pen pen;
  pen.line({2, 100}, {52, 100}, weight::ground);
  pen.line({24, 74}, {24, 110}, weight::trunk);
  pen.line({18, 74}, {30, 74}, weight::trunk);
  pen.lens({24, 100}, 10);
  lensGround(pen, 46);
  grassTuft(pen, {70, 45}, Part::kept);
  grassTuft(pen, {146, 45}, Part::kept);
  soil(pen, 46, 92, 126);
  pen.stroke("M98 16L116 16", weight::cut);
  pen.line({107, 16}, {107, 40}, weight::cut);
  pen.stroke("M100 40L114 40L114 92L107 100L100 92Z", weight::trunk, Shade::paper);
  pen.stroke("M100 58L114 54M100 70L114 66M100 82L114 78", weight::limb);
  pen.solid("M100 82L114 78L114 92L107 100L100 92Z");
  pen.dimension({132, 47}, {132, 99});
  pen.arrow({84, 18}, {84, 40});
  return pen.finished();
}

Drawing orderTrellis() {
  Pen pen;
  pen.line({2, 112}, {52, 112}, weight::ground);
  pen.off("M8 112L8 20M46 112L46 20", weight::trunk);
  pen.off("M2 92L52 92M2 70L52 70M2 48L52 48M2 26L52 26", weight::twig);
  pen.lens({27, 48}, 10);
  for (const double y : {94.0, 84.0})
    for (const double x : {70.0, 81.0, 92.0}) {
      if (y < 90 && x > 85) continue;
      pen.stroke(circle({x + (y < 90 ? 5.5 : 0), y}, 5.2), weight::limb, Shade::paper);
    }
  pen.stroke("M66 79L66 22L76 22L76 79", weight::trunk, Shade::paper);
  pen.stroke("M82 79L82 22L92 22L92 79", weight::trunk, Shade::paper);
  pen.stroke(circle({124, 58}, 24), weight::tie);
  pen.stroke(circle({124, 58}, 18), weight::limb);
  pen.stroke(circle({124, 58}, 13), weight::limb);
  pen.stroke("M100 58L112 58M136 58L148 58", weight::cut);
  pen.stroke("M112 94L119 102L132 86", weight::cut);
  return pen.finished();
}

Drawing raiseTrellis() {
  Pen pen;
  pen.trellis(4, false);
  pen.wood({{8, 112}, {8, 80}, {8, 40}, {8, 14}}, 3, 3, weight::post, Wood::closed);
  pen.wood({{44, 112}, {44, 80}, {44, 40}, {44, 14}}, 3, 3, weight::post, Wood::closed);
  pen.lens({44, 108}, 9);
  soil(pen, 66, 92, 122);
  pen.wood(
      {{107, 102}, {107, 70}, {107, 30}, {107, 14}}, 18, 18, weight::trunk, Wood::closed);
  pen.line({55, 66}, {98, 66}, 2.4);
  pen.line({116, 66}, {160, 66}, 2.4);
  pen.line({55, 34}, {160, 34}, weight::trunk);
  pen.stroke("M101 40L101 29Q107 23 113 29L113 40", weight::tie);
  pen.arrow({80, 50}, {62, 50});
  pen.dimension({131, 67}, {131, 101});
  pen.arrow({84, 78}, {84, 98});
  return pen.finished();
}

Drawing plantTrees() {
  Pen pen;
  pen.trellis();
  pen.tree(1);
  pen.stroke("M24 112L20 117M24 112L28 117M24 112L24 118", weight::twig);
  pen.lens({24, 108}, 9);
  soil(pen, 70, 72, 140);
  roots(pen, {107, 74}, 36);
  lensGround(pen, 70);
  // The union: a bend and a swelling above the soil.
  pen.stroke(
      "M101 76L101 60Q97 54 98.5 47Q99.5 41 101 34L101 -2L114 -2L114 36Q117 42 116 49"
      "Q115 56 113 62L113 76",
      weight::trunk,
      Shade::paper);
  pen.stroke("M98.5 51Q107 44 116 46", weight::trunk);
  pen.dimension({134, 47}, {134, 69});
  pen.line({118, 46.5}, {140, 46.5}, weight::wire);
  return pen.finished();
}

Drawing replantGaps() {
  Pen pen;
  pen.trellis(4, false);
  for (const double x : {8.0, 42.0})
    pen.wood({{x, 112}, {x + 0.3, 90}, {x - 0.3, 60}, {x, 30}}, 3, 1.2, weight::twig);
  comingTree(pen, 25);
  pen.lens({25, 104}, 10);
  lensGround(pen, 74);
  pen.wood({{71, 74}, {71.4, 50}, {70.6, 24}, {71, -2}}, 13, 11, weight::trunk);
  pen.wood({{143, 74}, {143.4, 50}, {142.6, 24}, {143, -2}}, 13, 11, weight::trunk);
  pen.blank("M88 72L126 72L126 76L88 76Z");
  pen.stroke("M88 74Q92 100 107 101Q122 100 126 74", weight::trunk);
  nurseryTree(pen, {107, 78}, 0);
  pen.arrow({89, 26}, {89, 56}, 2.6, 9);
  return pen.finished();
}

}  // namespace topwire
