#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"
#include "app/paper/tool_parts.h"

namespace topwire {

namespace {

void atLimb(Pen& pen, const TreeForm& tree, double height) {
  pen.scene(tree, (tree.limbTip(height) + QPointF{24, tree.limbTip(height).y()}) / 2);
}

Drawing clothesPins(const TreeForm& tree) {
  Pen pen;
  atLimb(pen, tree, 0.6);
  pen.off("M112 84Q126 66 131 34", 2.6);
  pen.leaf({131, 34}, 80, 14, Part::off);
  shoot(pen, {{105, 86}, {116, 82}, {128, 83}, {136, 83}}, Part::kept, 0, 17);
  pen.leaf({124, 83}, -48, 14);
  pen.wood(upright({95, 124}, {95, -2}), 20, 17, weight::trunk);
  // The jaws grip the trunk; the lower leg holds the shoot down.
  clothesPin(pen, {80, 65}, Part::kept);
  pen.stroke("M136 40Q150 52 149 66", 2.4);
  pen.arrowHead({148, 75}, {-1, 9}, 8);
  return pen.finished();
}

Drawing pinsOff(const TreeForm& tree) {
  Pen pen;
  atLimb(pen, tree, 0.6);
  shoot(pen, {{105, 88}, {116, 84}, {128, 85}, {138, 85}}, Part::kept, 0, 17);
  pen.leaf({122, 85}, -48, 14);
  pen.leaf({112, 85}, 50, 14);
  pen.wood(upright({95, 124}, {95, -2}), 20, 17, weight::trunk);
  clothesPin(pen, {80, 65}, Part::off);
  pen.arrow({110, 40}, {142, 24}, 3, 10);
  return pen.finished();
}

Drawing limbBending(const TreeForm& tree) {
  Pen pen;
  atLimb(pen, tree, 0.4);
  pen.off("M89 60Q104 50 110 20M92 68Q112 58 119 22", 2.2);
  pen.leaf({115, 20}, 82, 14, Part::off);
  pen.line({127, 70}, {84, 100}, weight::tie);
  pen.wood({{84, 62}, {102, 50}, {124, 56}, {142, 78}}, 9, 5, weight::trunk);
  pen.bud({140, 76}, -50, 13);
  pen.wood(upright({77, 124}, {77, -2}), 19, 16, weight::trunk);
  pen.stroke("M127 70Q120 66 125 58Q131 52 134 58Q136 64 127 70", weight::tie);
  pen.stroke("M86 98Q78 108 67 104", weight::tie);
  pen.stroke("M126 26Q142 34 146 52", 2.4);
  pen.arrowHead({147.5, 62}, {1, 9}, 9);
  return pen.finished();
}

Drawing summerPruning(const TreeForm& tree) {
  Pen pen;
  atLimb(pen, tree, 0.6);
  for (const double x : {94.0, 130.0}) {
    const double y = x < 110 ? 62 : 70;
    shoot(pen, {{x, y}, {x - 1, y - 12}, {x + 1, y - 22}, {x, y - 30}}, Part::off, 2, 15);
    pen.cut({x, y - 8}, 0, 10);
  }
  pen.wood({{66, 68}, {92, 60}, {118, 68}, {154, 80}}, 10, 5, weight::trunk);
  pen.leaf({142, 77}, -60, 14);
  pen.leaf({82, 68}, -120, 14);
  apple(pen, {110, 70}, 12, Part::kept);
  pen.wood(upright({63, 124}, {63, -2}), 20, 17, weight::trunk);
  return pen.finished();
}

}  // namespace

std::span<const NamedDrawing> drawingsOfLimbs() {
  static constexpr NamedDrawing drawn[] = {{"clothes-pins", clothesPins},
                                           {"pins-off", pinsOff},
                                           {"limb-bending", limbBending},
                                           {"summer-pruning", summerPruning}};
  return drawn;
}

}  // namespace topwire
