#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"

#include <array>

namespace topwire {

namespace {

/// A fruiting spur on a limb through the lens, with its rosette of leaves.
void spur(Pen& pen, QPointF foot, double height) {
  pen.leaf(foot + QPointF{2, -height}, 8, 24);
  pen.leaf(foot + QPointF{-2, -height}, 172, 24);
  pen.wood({foot,
            foot + QPointF{0.5, -height * 0.3},
            foot + QPointF{-0.5, -height * 0.6},
            foot + QPointF{0, -height}},
           8,
           7,
           weight::limb);
}

void spray(Pen& pen, QPointF nozzle) {
  for (int ray = 0; ray < 5; ++ray) {
    const double angle = 24 - ray * 12;
    QPainterPath jet{polar(nozzle, angle, 8)};
    jet.lineTo(polar(nozzle, angle, 36));
    pen.off(jet, weight::limb);
  }
}

}  // namespace

Drawing flowerRemoval() {
  Pen pen;
  pen.scene(1, {24, 78}, 9);
  constexpr std::array<QPointF, 3> heads{
      QPointF{83, 42}, QPointF{107, 29}, QPointF{131, 42}};
  for (const QPointF& head : heads) {
    QPainterPath stalk{QPointF{107, 78}};
    stalk.quadTo(QPointF{107, 62}, head + QPointF{0, 8});
    pen.off(stalk, weight::limb);
  }
  for (const QPointF& head : heads) flower(pen, head, 14.5, Part::off);
  spur(pen, {107, 98}, 18);
  pen.wood({{52, 98}, {80, 104}, {124, 104}, {164, 98}}, 11, 9, weight::trunk);
  pen.cut({107, 68}, 0, 15);
  pen.cross({140, 66}, 5.4);
  return pen.finished();
}

Drawing handThinning() {
  Pen pen;
  pen.scene(3, {34, 58}, 9);
  for (const double x : {76.0, 134.0}) {
    pen.leaf({x - 1, 40}, 150, 15);
    apple(pen, {x, 44}, 12.5, Part::kept);
  }
  apple(pen, {92.5, 46}, 7, Part::off);
  apple(pen, {117.5, 46}, 7, Part::off);
  apple(pen, {105, 47}, 6.4, Part::off);
  pen.cross({92.5, 76}, 4.4);
  pen.cross({117.5, 76}, 4.4);
  pen.cross({105, 76}, 4.4);
  pen.wood({{48, 40}, {80, 34}, {124, 34}, {166, 42}}, 9, 7, weight::trunk);
  pen.dimension({76, 92}, {134, 92});
  return pen.finished();
}

Drawing chemicalThinning() {
  Pen pen;
  pen.scene(4, {34, 60}, 9);
  pen.stroke(
      "M50 56L72 56L72 51L82 51L82 69L72 69L72 64L50 64", weight::trunk, Shade::paper);
  pen.solid("M82 55L87 57L87 63L82 65Z");
  spray(pen, {84, 60});
  pen.wood({{140, 6}, {138, 40}, {138, 80}, {142, 114}}, 9, 8, weight::trunk);
  apple(pen, {128, 34}, 7, Part::kept);
  apple(pen, {130, 62}, 7, Part::kept);
  apple(pen, {126, 82}, 7, Part::kept);
  pen.line({137, 30}, {128, 34}, weight::limb);
  pen.line({137, 58}, {130, 62}, weight::limb);
  pen.line({137, 80}, {126, 82}, weight::limb);
  pen.leaf({142, 46}, 30, 14);
  pen.leaf({142, 74}, 30, 14);
  return pen.finished();
}

Drawing blightPatrol() {
  Pen pen;
  pen.scene(4, {34, 46}, 9);
  // The shoot's tip hangs over like a crook, its leaves limp.
  pen.off("M97 66Q98 42 108 30Q118 20 126 28Q131 34 127 44", 3.4);
  pen.leaf({127, 44}, -98, 17, Part::off);
  pen.leaf({113, 25}, -82, 17, Part::off);
  pen.leaf({98, 52}, -118, 17, Part::off);
  pen.wood({{92, 116}, {92, 100}, {94, 84}, {97, 68}}, 11, 7, weight::trunk);
  pen.leaf({88, 102}, 150, 16);
  pen.leaf({97, 98}, 25, 16);
  pen.cut({95.4, 80}, -12, 15);
  pen.dimension({137, 80}, {137, 56});
  pen.cross({82, 30}, 5.4);
  return pen.finished();
}

Drawing leafFallRound() {
  Pen pen;
  pen.trellis();
  pen.tree(5);
  pen.leaf({14, 108}, 20, 6);
  pen.leaf({32, 110}, 160, 6);
  pen.lens({24, 106}, 10);
  lensTrunk(pen, 16, 14);
  pen.wood({{102, 34}, {90, 26}, {78, 24}, {60, 27}}, 7, 4, weight::limb);
  lensGround(pen, 92);
  pen.leaf({74, 40}, -70, 17);
  pen.arrow({74, 62}, {74, 78}, 2, 7);
  pen.leaf({130, 22}, -110, 17);
  for (const double x : {64.0, 82.0, 120.0, 138.0}) pen.leaf({x, 92}, 12, 15);
  pen.stroke("M127 66L134 74L146 54", weight::cut);
  return pen.finished();
}

}  // namespace topwire
