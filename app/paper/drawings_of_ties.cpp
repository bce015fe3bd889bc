#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"
#include "app/paper/tool_parts.h"

namespace topwire {

namespace {

constexpr double reach = 25;  ///< of a loop from the trunk's middle

Drawing firstTie(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, {24, 69});
  pen.line({50, 56}, {170, 56}, 2.2);
  pen.loopBehind({107, 56}, reach);
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
  pen.loopInFront({107, 56}, reach);
  pen.dimension({82.5, 32}, {99, 32});
  return pen.finished();
}

/// The old soft tie that a wider one takes the place of.
void oldTie(Pen& pen, double y) {
  pen.off(pathOf("M-10 0L10 0").translated(107, y), 4.6);
  pen.cross({131, y}, 5);
}

Drawing wireTie(const TreeForm& tree) {
  Pen pen;
  // The wire that the leader has grown past.
  const double wire = tree.top.y() > 26 ? 48 : 26;
  pen.scene(tree, {24, wire});
  pen.line({50, 40}, {170, 40}, 2.2);
  pen.loopBehind({107, 40}, reach);
  lensTrunk(pen, 15, 12);
  pen.loopInFront({107, 40}, reach);
  pen.dimension({82.5, 18}, {99.5, 18});
  oldTie(pen, 78);
  pen.sweep({88, 92}, {74, 90}, {74, 62}, 9);
  return pen.finished();
}

Drawing leaderTie(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.off(pathOf("M0 8Q1 -1 9 -8").translated(tree.top), 2.2);
  pen.lens(tree.leader);
  pen.line({50, 80}, {170, 80}, 2.2);
  pen.off("M118 68Q126 50 138 32M125 70Q132 54 144 38", 2.2);
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

/// A finger put down between the trunk and its tie.
void finger(Pen& pen, double x, double tip) {
  QPainterPath path{QPointF{x - 7, -4}};
  path.lineTo(x - 7, tip - 8);
  path.cubicTo(x - 7, tip + 3, x + 7, tip + 3, x + 7, tip - 8);
  path.lineTo(x + 7, -4);
  pen.stroke(path, weight::trunk, Shade::paper);
  QPainterPath nail{QPointF{x - 4, tip - 14}};
  nail.cubicTo(x - 4, tip + 1, x + 4, tip + 1, x + 4, tip - 14);
  pen.stroke(nail, weight::twig);
}

Drawing tieCheck(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, {24, tree.top.y() > 40 ? 70.0 : 48.0});
  pen.line({50, 56}, {170, 56}, 2.2);
  pen.loopBehind({107, 56}, 28);
  pen.wood(upright({109, 124}, {109, -2}), 20, 17, weight::trunk);
  finger(pen, 90, 63);
  pen.loopInFront({107, 56}, 28);
  // The strangled place: bark swells above and below the tie that grips.
  pen.stroke("M98.6 98Q95 90 99 86Q95 82 98.6 74M119.4 98Q123 90 119 86Q123 82 119.4 74",
             weight::trunk);
  pen.off("M97 86L121 86", 4.6);
  pen.cross({135, 86}, 5.4);
  return pen.finished();
}

Drawing tieCheckAutumn(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.foot);
  lensGround(pen, 92);
  graftedTrunk(pen, 94);
  pen.erase("M102.4 92L111.6 92", 4);
  pen.off("M96 62L119 62", 4.6);
  pen.stroke("M119 62Q128 64 131 58", weight::limb);
  pen.off("M131 49L153 55L149 71L127 65Z", weight::limb, Shade::paper);
  pen.cross({140, 38}, 5);
  pen.off("M96 30L119 30", 4.6);
  pen.cross({82, 30}, 5);
  pen.cross({82, 62}, 5);
  return pen.finished();
}

Drawing limbClips(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.crop(tree, 0, 1);
  pen.lens({tree.limbTip(0.4).x(), 70});
  pen.line({50, 56}, {170, 56}, 2.4);
  pen.wood({{70, 84}, {94, 68}, {124, 58}, {156, 54}}, 10, 6, weight::trunk);
  apple(pen, {138, 60}, 11, Part::kept);
  apple(pen, {90, 76}, 11, Part::kept);
  pen.wood(upright({66, 124}, {66, -2}), 19, 16, weight::trunk);
  pen.stroke("M110 56Q110 46 115 46Q120 46 120 56L120 64Q120 74 115 74Q110 74 110 64Z",
             weight::tie);
  return pen.finished();
}

}  // namespace

std::span<const NamedDrawing> drawingsOfTies() {
  static constexpr NamedDrawing drawn[] = {{"first-tie", firstTie, true},
                                           {"wire-tie", wireTie},
                                           {"leader-tie", leaderTie},
                                           {"tie-check", tieCheck},
                                           {"tie-check-autumn", tieCheckAutumn},
                                           {"limb-clips", limbClips}};
  return drawn;
}

}  // namespace topwire
