#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"
#include "app/paper/tool_parts.h"

namespace topwire {

namespace {

Drawing leafSample(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.limbTip(0.6));
  // The leaves from the middle of the shoot; those of its ends stay.
  pen.leaf({64, 76}, 130, 15);
  pen.leaf({66, 70}, 20, 15);
  pen.leaf({80, 50}, 152, 17, Part::off);
  pen.leaf({84, 44}, 14, 17, Part::off);
  pen.leaf({98, 24}, 140, 14);
  pen.leaf({99, 22}, 30, 14);
  pen.leaf({101, 20}, 76, 14);
  pen.stroke("M58 90Q76 60 101 20", weight::trunk);
  pen.sweep({104, 46}, {122, 42}, {126, 60}, 9);
  bag(pen, {108, 66}, 34, 36);
  pen.leaf({116, 90}, 40, 18);
  return pen.finished();
}

/// What lies on the ground under the tree at the left once the leaves fall.
void fallenLeaves(Pen& pen) {
  pen.leaf({12, 109}, 20, 6);
  pen.leaf({32, 110}, 160, 6);
}

Drawing leafFallRound(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  fallenLeaves(pen);
  pen.lens({24, 106}, 10);
  standingTrunk(pen, {84, 90}, 15, 12);
  pen.wood({{79, 40}, {72, 32}, {66, 30}, {54, 34}}, 6, 4, weight::limb);
  pen.leaf({100, 26}, -110, 16);
  pen.arrow({99, 50}, {99, 68}, 2, 7);
  for (const double x : {60.0, 94.0, 112.0, 132.0}) pen.leaf({x, 90}, 12, 14);
  pen.stroke("M74 102L80 97M92 102L98 97M110 102L116 97M126 99L131 94", weight::trunk);
  notebook(pen, {112, 34}, 3);
  return pen.finished();
}

/// A rabbit that sits at `foot`, looking left.
void rabbit(Pen& pen, QPointF foot) {
  const auto at = [&](std::string_view shape) { return pathOf(shape).translated(foot); };
  pen.solid(at("M-8 0Q-12 -14 0 -16Q14 -16 14 -2Q14 0 12 0Z"));
  pen.solid(circle(foot + QPointF{-8, -17}, 5.4));
  pen.solid(
      at("M-8 -20Q-11 -33 -7 -34Q-4 -32 -5 -20ZM-5 -20Q-4 -32 0 -32Q2 -29 -2 -19Z"));
}

Drawing fenceWalk(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires, false);
  pen.tree(tree);
  for (const double x : {4.0, 44.0}) pen.line({x, 112}, {x, 72}, weight::trunk);
  pen.stroke("M4 78L44 98M4 98L44 78M4 98L30 112M4 88L44 108M44 88L4 108M44 98L18 112",
             weight::wire);
  pen.lens({40, 104});
  lensGround(pen, 92);
  for (const double x : {66.0, 132.0})
    pen.wood(straight({x, 92}, {x, 10}), 5, 5, weight::limb, Wood::closed);
  for (int i = 0; i < 4; ++i) {
    pen.line({69, 36.0 + i * 16}, {129, 36.0 + i * 16}, weight::twig);
    pen.line({78.0 + i * 14, 28}, {78.0 + i * 14, 92}, weight::twig);
  }
  pen.blank("M90 60L112 58L116 76L108 91L92 91L86 74Z");
  pen.off("M90 60L112 58L116 76L108 91L92 91L86 74Z", weight::trunk);
  pen.stroke(
      "M83 66L119 66M83 74L119 74M83 82L119 82M94 56L94 91M101 56L101 91M108 56L108 91",
      weight::trunk);
  rabbit(pen, {147, 92});
  pen.arrow({74, 20}, {122, 20}, 2.6, 9);
  return pen.finished();
}

/// A post through the lens with its wire at `y`, stapled.
void postWithWire(Pen& pen, double y) {
  pen.wood(straight({107, 130}, {107, 12}), 20, 20, weight::trunk, Wood::closed);
  pen.line({50, y}, {164, y}, weight::trunk);
  pen.stroke(pathOf("M101 7L101 -6Q107 -12 113 -6L113 7").translated(0, y), weight::tie);
}

Drawing trellisCheck(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, {47, 26}, 8);
  pen.off("M50 52Q78 82 107 52Q136 82 164 52", weight::limb);
  pen.off("M120 110L138 14M140 110L156 24", weight::limb);
  postWithWire(pen, 48);
  pen.arrow({78, 68}, {78, 52});
  pen.sweep({146, 24}, {138, 16}, {122, 22}, 8);
  return pen.finished();
}

Drawing trellisCheckSummer(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.crop(tree, 0, 1);
  pen.lens({47, 48}, 8);
  pen.off("M50 46Q78 92 107 46Q136 92 164 46", weight::limb);
  postWithWire(pen, 40);
  for (const QPointF& at :
       {QPointF{68, 66}, QPointF{84, 68}, QPointF{132, 68}, QPointF{146, 65}})
    apple(pen, at, 9, Part::kept);
  pen.arrow({78, 62}, {78, 44});
  pen.arrow({136, 62}, {136, 44});
  return pen.finished();
}

Drawing leanCheck(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.off(pathOf("M0 0L15 -86").translated(24, 112), 2.4);
  pen.tree(tree);
  pen.crop(tree, 0, 1);
  pen.lens({30, 86});
  pen.wood(upright({92, 92}, {142, 8}), 14, 11, weight::limb, Wood::off);
  apple(pen, {134, 36}, 7, Part::off);
  apple(pen, {122, 58}, 7, Part::off);
  standingTrunk(pen, {88, 92}, 15, 13);
  pen.wood(straight({140, 94}, {95, 40}), 6, 6, weight::trunk, Wood::closed);
  pen.stroke("M80 42Q88 48 98 40Q88 34 80 42", weight::tie);
  pen.sweep({132, 20}, {116, 8}, {100, 18}, 9);
  return pen.finished();
}

/// Trees marked at planting, to be looked at again and again.
Drawing protectFirst(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.leader);
  lensGround(pen, 66);
  smallTree(pen, {72, 66}, 40, Part::kept);
  smallTree(pen, {104, 66}, 40, Part::kept);
  smallTree(pen, {136, 66}, 40, Part::kept);
  flag(pen, {110, 66}, 46);
  pen.stroke("M99 58L109 58", weight::tie);
  magnifier(pen, {79, 80}, 8);
  notebook(pen, {99, 71}, 2);
  return pen.finished();
}

/// An aphid on the under side of a leaf.
void aphid(Pen& pen, QPointF at) {
  QPainterPath body;
  body.addEllipse(at, 3.4, 2.2);
  pen.solid(body);
  pen.line(at + QPointF{-2, 2}, at + QPointF{-4, 4.4}, weight::wire);
  pen.line(at + QPointF{2, 2}, at + QPointF{4, 4.4}, weight::wire);
}

Drawing pestWatch(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.limbTip(0.9));
  pen.stroke("M70 104Q78 78 92 62", weight::trunk);
  pen.leaf({74, 90}, 150, 18);
  pen.leaf({80, 78}, 30, 20);
  // A chewed edge.
  pen.blank("M92 64L100 62L97 70L90 71Z");
  pen.leaf({88, 66}, 120, 20);
  pen.stroke(circle({116, 46}, 27), weight::tie, Shade::paper);
  pen.line({135, 65}, {152, 84}, 5);
  pen.stroke("M97 64Q104 32 134 34Q132 62 97 64ZM97 64Q114 54 126 42", weight::limb);
  for (const QPointF& at : {QPointF{110, 60}, QPointF{120, 56}, QPointF{112, 47}})
    aphid(pen, at);
  return pen.finished();
}

}  // namespace

std::span<const NamedDrawing> drawingsOfRounds() {
  static constexpr NamedDrawing drawn[] = {{"leaf-sample", leafSample},
                                           {"leaf-fall-round", leafFallRound},
                                           {"fence-walk", fenceWalk},
                                           {"trellis-check", trellisCheck},
                                           {"trellis-check-summer", trellisCheckSummer},
                                           {"lean-check", leanCheck},
                                           {"protect-first", protectFirst, true},
                                           {"pest-watch", pestWatch}};
  return drawn;
}

}  // namespace topwire
