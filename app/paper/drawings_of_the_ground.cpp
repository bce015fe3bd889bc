#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"

namespace topwire {

namespace {

void guardedTrunk(Pen& pen) {
  lensGround(pen, 98);
  pen.wood({{107, 98}, {107.4, 70}, {106.8, 40}, {107, -2}}, 17, 14, weight::trunk);
  pen.stroke("M100 98L98 84", weight::trunk);
  pen.stroke("M114.5 98L117 92", weight::trunk);
}

}  // namespace

Drawing rootPruning() {
  Pen pen;
  pen.trellis();
  pen.tree(5);
  pen.line({12, 104}, {12, 118}, weight::trunk);
  pen.line({36, 104}, {36, 118}, weight::trunk);
  pen.lens({24, 110}, 8);
  pen.wood({{107, 52}, {107.4, 40}, {106.8, 20}, {107, -2}}, 15, 13, weight::trunk);
  pen.off("M77 62Q66 64 52 63M79 75Q70 82 60 84", 2.6);
  pen.off("M137 62Q148 64 162 63M135 75Q144 82 154 84", 2.6);
  for (const double side : {-1.0, 1.0}) {
    const auto x = [side](double reach) { return 107 + side * reach; };
    pen.wood({{x(3), 50}, {x(12), 56}, {x(20), 61}, {x(30), 62}}, 6, 3.4, weight::limb);
    pen.wood({{x(3), 52}, {x(8), 62}, {x(18), 70}, {x(28), 75}}, 5, 3, weight::limb);
    pen.wood({{x(1), 54}, {x(4), 70}, {x(8), 84}, {x(12), 96}}, 4, 2, weight::limb);
    pen.line({x(31), 44}, {x(31), 88}, weight::cut);
    pen.solid(pathOf(side < 0 ? "M73 86L79 86L76 98Z" : "M135 86L141 86L138 98Z"));
  }
  lensGround(pen, 52);
  pen.erase("M102 52L112 52", 4);
  pen.dimension({77, 32}, {99, 32});
  return pen.finished();
}

Drawing suckerRemoval() {
  Pen pen;
  pen.trellis();
  pen.tree(3);
  pen.off("M22 112Q18 106 17 99", 1.8);
  pen.off("M26 112Q30 106 31 100", 1.8);
  pen.lens({24, 104}, 10);
  shoot(pen, {{98, 90}, {90, 82}, {85, 72}, {83, 60}}, Part::off, 1, 15);
  shoot(pen, {{116, 90}, {124, 82}, {129, 74}, {131, 62}}, Part::off, 1, 15);
  lensGround(pen, 90);
  pen.wood({{107, 92}, {107.4, 70}, {106.8, 40}, {107, -2}}, 18, 14, weight::trunk);
  pen.erase("M99.5 90L114.5 90", 4);
  roots(pen, {107, 92}, 30);
  pen.cross({68, 70}, 5);
  pen.cross({146, 74}, 5);
  return pen.finished();
}

Drawing trellisCheck() {
  Pen pen;
  pen.scene(1, {47, 26}, 8);
  pen.off("M50 52Q78 82 107 52Q136 82 164 52", weight::limb);
  pen.wood(
      {{107, 130}, {107, 80}, {107, 40}, {107, 12}}, 20, 20, weight::trunk, Wood::closed);
  pen.line({50, 48}, {164, 48}, weight::trunk);
  pen.stroke("M101 55L101 42Q107 36 113 42L113 55", weight::tie);
  pen.arrow({78, 68}, {78, 52});
  pen.arrow({136, 68}, {136, 52});
  return pen.finished();
}

Drawing guardsOn() {
  Pen pen;
  pen.scene(3, {24, 104}, 9);
  guardedTrunk(pen);
  pen.stroke("M93 104L95 36L119 36L121 104Z", weight::trunk, Shade::paper);
  pen.stroke("M94.6 58L119.6 50M94.2 72L120 64M93.8 86L120.4 78M93.4 99L120.8 92",
             weight::twig);
  pen.line({55, 98}, {93, 98}, 2.4);
  pen.line({121, 98}, {160, 98}, 2.4);
  pen.arrow({68, 66}, {88, 66});
  pen.arrow({146, 66}, {126, 66});
  return pen.finished();
}

Drawing guardsOff() {
  Pen pen;
  pen.scene(3, {24, 104}, 9);
  guardedTrunk(pen);
  pen.off("M93 96L95 38L119 38L121 96Z", weight::limb);
  for (const double y : {52.0, 66.0, 80.0}) {
    QPainterPath band{QPointF{94.4, y + 4}};
    band.lineTo(120, y - 4);
    pen.off(band, weight::twig);
  }
  pen.arrow({128, 86}, {146, 86});
  pen.arrow({86, 86}, {68, 86});
  pen.cross({107, 66}, 5.4);
  return pen.finished();
}

Drawing whitePaint() {
  Pen pen;
  pen.scene(2, {24, 100}, 10);
  pen.wood({{102, 24}, {92, 16}, {82, 14}, {64, 17}}, 7, 4, weight::limb);
  lensTrunk(pen, 24, 20);
  // Bare bark above, smooth paint below.
  pen.stroke(
      "M101 6L101 14M107 10L107 22M112 4L112 13M102 22L102 30M112 22L112 31"
      "M107 30L107 38M101 37L101 42M112 38L112 43",
      weight::limb);
  lensGround(pen, 100);
  pen.erase("M98 100L116 100", 3);
  pen.stroke("M95.8 47Q101 52 106 48Q112 44 117.6 49", weight::trunk);
  pen.stroke("M118 58L118 84L132 79L132 63Z", weight::limb, Shade::paper);
  pen.stroke("M119 63L131 66.5M119 69L131 70M119 75L131 73.6", weight::wire);
  pen.solid("M132 62L137 64L137 78L132 80Z");
  pen.stroke("M137 67L158 60L160 67L137 75Z", weight::limb, Shade::paper);
  pen.arrow({84, 56}, {84, 92}, 2.6, 9);
  pen.arrow({84, 92}, {84, 52}, 2.6, 9);
  return pen.finished();
}

Drawing weedStrip() {
  Pen pen;
  pen.trellis();
  pen.tree(2);
  pen.off("M14 111L12 105M18 111L18 104M30 111L30 104M34 111L36 105", 1.8);
  pen.lens({24, 105}, 10);
  pen.wood({{107, 78}, {107.4, 60}, {106.8, 30}, {107, -2}}, 13, 11, weight::trunk);
  lensGround(pen, 78);
  pen.erase("M102 78L112 78", 4);
  for (const double x : {84.0, 128.0}) {
    grassTuft(pen, {x, 77}, Part::off);
    pen.cross({x, 46}, 5);
  }
  grassTuft(pen, {63, 77}, Part::kept);
  grassTuft(pen, {151, 77}, Part::kept);
  pen.dimension({73, 92}, {141, 92});
  return pen.finished();
}

Drawing nitrogenSplit() {
  Pen pen;
  pen.scene(2, {24, 104}, 9);
  pen.wood({{107, 84}, {107.4, 64}, {106.8, 34}, {107, -2}}, 14, 12, weight::trunk);
  lensGround(pen, 84);
  pen.erase("M101.5 84L112.5 84", 4);
  roots(pen, {107, 86}, 30);
  for (const double side : {-1.0, 1.0})
    for (const double reach : {26.0, 32.0, 38.0, 29.0, 35.0}) {
      const bool upper = reach == 29.0 || reach == 35.0;
      pen.solid(circle({107 + side * reach, upper ? 76.0 : 81.0}, 1.9));
    }
  pen.stroke("M124 34L152 26L156 42L130 48Z", weight::trunk, Shade::paper);
  for (const QPointF grain :
       {QPointF{128, 53}, QPointF{134, 56}, QPointF{131, 62}, QPointF{138, 64}})
    pen.solid(circle(grain, 1.9));
  pen.dimension({77, 60}, {100, 60});
  return pen.finished();
}

Drawing waterCheck() {
  Pen pen;
  pen.trellis();
  pen.tree(2);
  pen.line({2, 106}, {46, 106}, weight::limb);
  pen.lens({24, 106}, 9);
  pen.wood({{86, 66}, {86.4, 50}, {85.8, 24}, {86, -2}}, 13, 11, weight::trunk);
  lensGround(pen, 66);
  pen.erase("M80.5 66L91.5 66", 4);
  roots(pen, {86, 68}, 30);
  pen.stroke("M50 36L170 36L170 42L50 42Z", weight::limb, Shade::paper);
  pen.solid("M119 40L131 40L129 48L121 48Z");
  drop(pen, {125, 49}, 5);
  drop(pen, {125, 57}, 5);
  pen.off("M104 67Q104 98 125 100Q146 98 146 67", weight::limb);
  drop(pen, {118, 72}, 4.4);
  drop(pen, {132, 72}, 4.4);
  drop(pen, {125, 83}, 4.4);
  return pen.finished();
}

}  // namespace topwire
