#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"

namespace topwire {

namespace {

/// The top of the leader in the lens, ending below its top bud.
void leaderTop(Pen& pen, double top = 36) {
  pen.wood({{107, 124}, {107.6, 85}, {106.4, 55}, {107, top}}, 11, 7.5, weight::trunk);
}

}  // namespace

Drawing firstTie() {
  Pen pen;
  pen.scene(1, {24, 66}, 9);
  pen.line({50, 56}, {170, 56}, 2.2);
  pen.loopBehind({107, 56}, 25);
  for (const double side : {-1.0, 1.0}) {
    const double y = side < 0 ? 94 : 102;
    pen.wood({{107 + side * 4, y},
              {107 + side * 16, y - 10},
              {107 + side * 26, y - 13},
              {107 + side * 42, y - 11}},
             7,
             4,
             weight::limb);
  }
  lensTrunk(pen, 16, 13);
  pen.loopInFront({107, 56}, 25);
  pen.dimension({82.5, 32}, {99, 32});
  return pen.finished();
}

Drawing rubRivals() {
  Pen pen;
  pen.scene(3, {24, 24}, 8);
  leaderTop(pen);
  pen.bud({107, 37}, 90, 21);
  pen.bud({112.5, 53}, 36, 18, Part::off);
  pen.bud({101.5, 66}, 144, 18, Part::off);
  pen.cross({133, 37.5});
  pen.cross({81, 50.5});
  pen.arrow({134, 47}, {134, 67});
  pen.arrow({80, 60}, {80, 80});
  pen.bud({113, 84}, 44, 14);
  pen.bud({101, 98}, 136, 14);
  return pen.finished();
}

Drawing secondRub() {
  Pen pen;
  pen.scene(3, {24, 24}, 8);
  shoot(pen, {{107, 60}, {107.5, 50}, {106.5, 42}, {107, 34}}, Part::kept, 2, 15);
  shoot(pen, {{111, 74}, {121, 70}, {128, 62}, {130, 46}}, Part::off, 1, 16);
  shoot(pen, {{103, 86}, {93, 82}, {86, 72}, {84, 56}}, Part::off, 1, 16);
  pen.wood({{107, 124}, {107.6, 95}, {106.4, 75}, {107, 56}}, 13, 9, weight::trunk);
  pen.cross({144, 58}, 5.4);
  pen.cross({70, 68}, 5.4);
  pen.arrow({129, 76}, {129, 96});
  pen.arrow({85, 84}, {85, 102});
  return pen.finished();
}

Drawing leaderTie() {
  Pen pen;
  pen.trellis();
  pen.tree(2);
  pen.off("M24 50Q26 38 36 28", 2.2);
  pen.lens({24, 42}, 9);
  pen.line({50, 80}, {170, 80}, 2.2);
  pen.off("M118 68Q126 50 138 32", 2.2);
  pen.off("M125 70Q132 54 144 38", 2.2);
  pen.leaf({140, 34}, 56, 15, Part::off);
  pen.loopBehind({107, 80}, 23);
  pen.wood({{107, 124}, {107.6, 90}, {106.4, 66}, {107, 36}}, 12, 8, weight::trunk);
  pen.leaf({110, 62}, 32, 15);
  pen.leaf({104, 52}, 148, 15);
  pen.leaf({107, 37}, 90, 18);
  pen.loopInFront({107, 80}, 23);
  pen.arrow({133, 30}, {117, 30});
  return pen.finished();
}

Drawing pinchLaterals() {
  Pen pen;
  pen.scene(3, {24, 34}, 10);
  for (const double side : {-1.0, 1.0}) {
    const double y = side < 0 ? 80 : 66;
    const QPointF pinch{107 + side * 27, y - 22};
    shoot(
        pen,
        {{107 + side * 4, y}, {107 + side * 14, y - 4}, {107 + side * 22, y - 12}, pinch},
        Part::kept,
        2,
        10);
    shoot(pen,
          {pinch,
           pinch + QPointF{side * 4, -4},
           pinch + QPointF{side * 6, -8},
           pinch + QPointF{side * 8, -13}},
          Part::off,
          0,
          10);
    pen.cut(pinch, side < 0 ? 36 : -36, 9);
  }
  pen.wood({{107, 124}, {107.6, 85}, {106.4, 50}, {107, 30}}, 11, 6, weight::trunk);
  pen.leaf({109, 42}, 50, 12);
  pen.leaf({105, 46}, 130, 12);
  pen.leaf({107, 30}, 90, 15);
  return pen.finished();
}

Drawing notchBareWood() {
  Pen pen;
  pen.trellis();
  pen.wood({{24, 112}, {24.3, 90}, {23.7, 60}, {24, 30}}, 3, 1.2, weight::twig);
  pen.stroke("M25 92Q32 86 36 91", weight::twig);
  pen.stroke("M23 88Q16 83 12 88", weight::twig);
  pen.stroke("M25 42Q30 36 33 40", weight::twig);
  pen.lens({24, 62}, 9);
  lensTrunk(pen, 30, 27);
  pen.cut({100, 34}, 8, 13);
  pen.cut({114, 72}, -8, 13);
  pen.bud({94.5, 58}, 122, 19);
  pen.bud({119.5, 96}, 58, 19);
  pen.off("M80 46Q72 44 68 36", weight::limb);
  pen.off("M134 84Q142 82 146 74", weight::limb);
  pen.arrowHead({66, 31}, {-2, -6}, 8);
  pen.arrowHead({148, 69}, {2, -6}, 8);
  return pen.finished();
}

Drawing heightCut() {
  Pen pen;
  pen.trellis();
  pen.tree(4);
  pen.off("M24 26Q25 16 30 6", 2.2);
  pen.lens({24, 26}, 8);
  pen.wood({{104, 74}, {92, 62}, {84, 56}, {62, 55}}, 8, 4, weight::limb);
  pen.bud({88, 57}, 60, 9);
  pen.bud({74, 55}, 60, 9);
  pen.bud({64, 55}, 180, 10);
  pen.wood({{107, 124}, {107.6, 95}, {106.4, 75}, {108, 58}}, 16, 12.5, weight::trunk);
  pen.blank("M98 61L120 49L120 40L98 40Z");
  pen.wood(
      {{110.2, 46}, {111, 38}, {114, 22}, {122, -2}}, 11, 9, weight::limb, Wood::off);
  pen.cut({108, 55}, 28, 17);
  return pen.finished();
}

Drawing tieCheck() {
  Pen pen;
  pen.scene(4, {24, 48}, 9);
  pen.line({50, 78}, {170, 78}, 2.2);
  pen.loopBehind({107, 78}, 25);
  // The strangled place: bark swells above and below the old tie.
  pen.stroke(
      "M99 124L99 52Q94 44 98.5 36Q101 32 98.5 28Q94 22 99 14L99 0L115 0L115 14"
      "Q120 22 115.5 28Q113 32 115.5 36Q120 44 115 52L115 124Z",
      weight::trunk,
      Shade::paper);
  pen.loopInFront({107, 78}, 25);
  pen.off("M96 32L118 32", 4.6);
  pen.cross({134, 32}, 5.4);
  pen.dimension({82.5, 54}, {98, 54});
  return pen.finished();
}

}  // namespace topwire
