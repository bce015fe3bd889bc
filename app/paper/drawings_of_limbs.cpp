#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"

namespace topwire {

Drawing featherRemoval() {
  Pen pen;
  pen.trellis();
  pen.wood({{24, 112}, {24.3, 90}, {23.7, 60}, {24, 40}}, 2.6, 1.2, weight::twig);
  pen.stroke("M25 78Q31 72 36 74", weight::twig);
  pen.stroke("M23 72Q17 66 12 68", weight::twig);
  pen.stroke("M25 64Q30 58 34 60", weight::twig);
  pen.off("M23 98Q17 94 12 96", 2.2);
  pen.off("M25 92Q31 87 37 89", 2.2);
  pen.lens({24, 92}, 10);
  pen.wood({{102, 96}, {90, 88}, {78, 82}, {52, 80}}, 6, 4, weight::limb, Wood::off);
  pen.wood({{112, 62}, {126, 50}, {136, 40}, {150, 18}}, 12, 10, weight::limb, Wood::off);
  pen.wood({{103, 40}, {92, 30}, {80, 26}, {56, 25}}, 5.5, 3, weight::limb);
  lensTrunk(pen, 16, 14);
  pen.cut({92, 89.4}, 62, 11);
  pen.cut({122, 53.4}, -48, 13);
  return pen.finished();
}

Drawing clothesPins() {
  Pen pen;
  pen.scene(1, {24, 80}, 9);
  pen.off("M112 84Q126 66 131 34", 2.6);
  pen.leaf({131, 34}, 80, 14, Part::off);
  shoot(pen, {{105, 86}, {116, 82}, {128, 83}, {136, 83}}, Part::kept, 0, 17);
  pen.leaf({124, 83}, -48, 14);
  pen.wood({{95, 124}, {95.8, 85}, {94.4, 45}, {95, -2}}, 20, 17, weight::trunk);
  // The pin's jaws grip the trunk; its lower leg holds the shoot down.
  pen.stroke("M80 57L110 59L138 44L140 50L112 66L80 65Z", weight::trunk, Shade::paper);
  pen.stroke("M80 65L112 66L140 76L138 82L108 74L80 73Z", weight::trunk, Shade::paper);
  pen.stroke(circle({110, 65.5}, 4.6), weight::trunk, Shade::ink);
  pen.stroke("M136 40Q150 52 149 66", 2.4);
  pen.arrowHead({148, 75}, {-1, 9}, 8);
  return pen.finished();
}

Drawing limbBending() {
  Pen pen;
  pen.scene(2, {28, 68}, 10);
  pen.off("M89 60Q104 50 110 20", 2.2);
  pen.off("M92 68Q112 58 119 22", 2.2);
  pen.leaf({115, 20}, 82, 14, Part::off);
  pen.line({127, 70}, {84, 100}, weight::tie);
  pen.wood({{84, 62}, {102, 50}, {124, 56}, {142, 78}}, 9, 5, weight::trunk);
  pen.bud({140, 76}, -50, 13);
  pen.wood({{77, 124}, {77.8, 85}, {76.4, 45}, {77, -2}}, 19, 16, weight::trunk);
  pen.stroke("M127 70Q120 66 125 58Q131 52 134 58Q136 64 127 70", weight::tie);
  pen.stroke("M86 98Q78 108 67 104", weight::tie);
  pen.stroke("M126 26Q142 34 146 52", 2.4);
  pen.arrowHead({147.5, 62}, {1, 9}, 9);
  return pen.finished();
}

Drawing dormantPruning() {
  Pen pen;
  pen.trellis();
  pen.tree(5);
  pen.off("M25.5 50Q33 44 40 35", 2.6);
  pen.lens({26, 50}, 8);
  pen.wood({{150, 4}, {139, 24}, {126, 44}, {108, 66}}, 14, 17, weight::limb, Wood::off);
  pen.wood({{100, 92}, {88, 82}, {78, 79}, {56, 84}}, 7.5, 4.5, weight::limb);
  pen.wood({{103, 124}, {104.6, 90}, {103.4, 45}, {104, -2}}, 20, 15, weight::trunk);
  pen.stroke("M111.4 54.4L117.4 46.6L130.6 62.2L112.4 77.6", weight::trunk, Shade::paper);
  pen.erase("M111.7 57.2L112.3 74.6", 3.4);
  pen.line({112.8, 40.6}, {136.4, 68.6}, weight::cut);
  return pen.finished();
}

Drawing renewalCuts() {
  Pen pen;
  pen.scene(5, {28, 60}, 9);
  pen.wood({{104, 56}, {120, 52}, {140, 44}, {166, 26}}, 24, 24, weight::limb, Wood::off);
  pen.wood({{76, 124}, {77, 90}, {75.5, 45}, {76, -2}}, 30, 25, weight::trunk);
  pen.blank("M90 40L102 38L122 72L90 82Z");
  // Short above, long below: light reaches the under side, where the new limb starts.
  pen.stroke("M89 42L103 38.6L123 66.4Q108 72 90.5 83", weight::trunk);
  pen.line({97, 29}, {129, 75}, weight::cut);
  pen.bud({113, 71}, -28, 15);
  pen.off("M129 80Q140 86 158 86", weight::limb);
  pen.arrowHead({150, 86}, {9, 0.4}, 9);
  return pen.finished();
}

Drawing summerPruning() {
  Pen pen;
  pen.scene(4, {32, 58}, 9);
  for (const double x : {94.0, 130.0}) {
    const double y = x < 110 ? 62 : 70;
    shoot(pen, {{x, y}, {x - 1, y - 12}, {x + 1, y - 22}, {x, y - 30}}, Part::off, 2, 15);
    pen.cut({x, y - 8}, 0, 10);
  }
  pen.wood({{66, 68}, {92, 60}, {118, 68}, {154, 80}}, 10, 5, weight::trunk);
  pen.leaf({142, 77}, -60, 14);
  pen.leaf({82, 68}, -120, 14);
  apple(pen, {110, 70}, 12, Part::kept);
  pen.wood({{63, 124}, {63.8, 85}, {62.4, 45}, {63, -2}}, 20, 17, weight::trunk);
  return pen.finished();
}

Drawing limbClips() {
  Pen pen;
  pen.scene(4, {34, 70}, 9);
  pen.line({50, 56}, {170, 56}, 2.4);
  pen.wood({{70, 84}, {94, 68}, {124, 58}, {156, 54}}, 10, 6, weight::trunk);
  apple(pen, {138, 60}, 11, Part::kept);
  apple(pen, {90, 76}, 11, Part::kept);
  pen.wood({{66, 124}, {66.8, 85}, {65.4, 45}, {66, -2}}, 19, 16, weight::trunk);
  pen.stroke("M110 56Q110 46 115 46Q120 46 120 56L120 64Q120 74 115 74Q110 74 110 64Z",
             weight::tie);
  return pen.finished();
}

Drawing brushSweep() {
  Pen pen;
  pen.trellis();
  pen.tree(4);
  pen.off("M8 111L20 106", 2.2);
  pen.off("M28 111L42 105", 2.2);
  pen.lens({24, 107}, 10);
  pen.wood({{73, 90}, {73.4, 60}, {72.6, 24}, {73, -2}}, 16, 14, weight::trunk);
  lensGround(pen, 90);
  pen.erase("M68 90L78 90", 4);
  pen.wood({{86, 66}, {91, 60}, {95, 54}, {98, 46}}, 5, 4, weight::limb, Wood::off);
  pen.wood({{74, 86}, {86, 78}, {98, 68}, {112, 64}}, 8, 5, weight::limb, Wood::off);
  pen.wood(
      {{112, 88}, {126, 84}, {138, 76}, {150, 64}}, 7, 4, weight::limb, Wood::closed);
  pen.wood(
      {{116, 66}, {128, 74}, {140, 80}, {156, 84}}, 7, 4, weight::limb, Wood::closed);
  pen.wood(
      {{124, 89}, {132, 86}, {142, 86}, {156, 88}}, 6, 4, weight::limb, Wood::closed);
  pen.arrow({104, 34}, {138, 42}, 3, 11);
  return pen.finished();
}

}  // namespace topwire
