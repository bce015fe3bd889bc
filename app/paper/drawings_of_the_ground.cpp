#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"
#include "app/paper/tool_parts.h"

namespace topwire {

namespace {

void atFoot(Pen& pen, const TreeForm& tree) {
  pen.scene(tree, tree.foot);
}

Drawing rootPruning(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.line({12, 104}, {12, 118}, weight::trunk);
  pen.line({36, 104}, {36, 118}, weight::trunk);
  pen.lens({24, 110}, 8);
  pen.wood(upright({107, 52}, {107, -2}), 15, 13, weight::trunk);
  pen.off(
      "M77 62Q66 64 52 63M79 75Q70 82 60 84M137 62Q148 64 162 63M135 75Q144 82 154 84",
      2.6);
  for (const double side : {-1.0, 1.0}) {
    const auto x = [side](double reach) { return 107 + side * reach; };
    pen.wood({{x(3), 50}, {x(12), 56}, {x(20), 61}, {x(30), 62}}, 6, 3.4, weight::limb);
    pen.wood({{x(3), 52}, {x(8), 62}, {x(18), 70}, {x(28), 75}}, 5, 3, weight::limb);
    pen.wood({{x(1), 54}, {x(4), 70}, {x(8), 84}, {x(12), 96}}, 4, 2, weight::limb);
    pen.line({x(31), 44}, {x(31), 88}, weight::cut);
    pen.solid(pathOf("M-3 0L3 0L0 12Z").translated(x(31), 86));
  }
  lensGround(pen, 52);
  pen.erase("M102 52L112 52", 4);
  pen.dimension({77, 32}, {99, 32});
  return pen.finished();
}

Drawing weedStrip(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.off("M14 111L12 105M18 111L18 104M30 111L30 104M34 111L36 105", 1.8);
  pen.lens({24, 105}, 10);
  standingTrunk(pen, {107, 78}, 13, 11);
  for (const double x : {84.0, 128.0}) {
    grassTuft(pen, {x, 77}, Part::off);
    pen.cross({x, 46}, 5);
  }
  grassTuft(pen, {63, 77}, Part::kept);
  grassTuft(pen, {151, 77}, Part::kept);
  pen.dimension({73, 92}, {141, 92});
  return pen.finished();
}

Drawing weedStripFirst(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.off("M14 111L12 105M18 111L18 104M30 111L30 104M34 111L36 105", 1.8);
  pen.lens({24, 105}, 10);
  standingTrunk(pen, {98, 78}, 9, 7);
  pen.wood(straight({94, 30}, {80, 18}), 5, 3, weight::limb);
  grassTuft(pen, {80, 77}, Part::off);
  pen.cross({80, 48}, 5);
  pen.stroke("M112 78L130 71L134 77Z", weight::limb, Shade::ink);
  pen.line({131, 73}, {158, 34}, weight::cut);
  pen.arrow({132, 85}, {112, 85}, 2.4, 7);
  grassTuft(pen, {62, 77}, Part::kept);
  grassTuft(pen, {150, 77}, Part::kept);
  pen.dimension({80, 95}, {136, 95});
  return pen.finished();
}

Drawing weedStripBearing(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.crop(tree, 0, 1);
  pen.off("M12 111L10 105M17 111L17 104M31 111L31 104M36 111L38 105", 1.8);
  pen.lens({24, 105}, 10);
  standingTrunk(pen, {107, 88}, 22, 18);
  pen.off("M50 70L95 70M119 70L164 70", weight::trunk);
  dripHose(pen, 42, 84);
  for (const double x : {72.0, 136.0}) pen.arrow({x, 66}, {x, 50}, 2.4, 7);
  grassTuft(pen, {76, 87}, Part::off);
  grassTuft(pen, {88, 87}, Part::off);
  pen.cross({88, 99}, 4.4);
  pen.stroke("M119 88L143 80L146 87Z", weight::limb, Shade::ink);
  pen.line({130, 84}, {162, 62}, weight::cut);
  return pen.finished();
}

Drawing alleyGrass(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  for (const double x : {6.0, 10.0, 14.0, 34.0, 38.0, 42.0})
    pen.line({x, 111}, {x + 1, 105}, weight::twig);
  pen.lens({38, 106});
  lensGround(pen, 80);
  smallTree(pen, {70, 80}, 48, Part::kept);
  smallTree(pen, {144, 80}, 48, Part::kept);
  for (const double x : {87.0, 95.0, 119.0, 127.0}) grassTuft(pen, {x, 79}, Part::kept);
  grassTuft(pen, {107, 79}, Part::off);
  for (const QPointF& at : {QPointF{101, 34},
                            QPointF{112, 32},
                            QPointF{106, 40},
                            QPointF{115, 42},
                            QPointF{99, 44}})
    grain(pen, at);
  pen.arrow({107, 46}, {107, 60}, 2.4, 7);
  pen.dimension({82, 94}, {132, 94});
  return pen.finished();
}

Drawing nitrogen(const TreeForm& tree) {
  Pen pen;
  atFoot(pen, tree);
  standingTrunk(pen, {107, 84}, 14, 12);
  roots(pen, {107, 86}, 30);
  for (const double side : {-1.0, 1.0})
    for (const double reach : {26.0, 32.0, 38.0, 29.0, 35.0}) {
      const bool upper = reach == 29.0 || reach == 35.0;
      grain(pen, {107 + side * reach, upper ? 76.0 : 81.0});
    }
  tippedSack(pen, {124, 42});
  pen.dimension({77, 60}, {100, 60});
  return pen.finished();
}

Drawing calciumNitrate(const TreeForm& tree) {
  Pen pen;
  atFoot(pen, tree);
  pen.wood(upright({107, 78}, {107, -2}), 13, 11, weight::trunk, Wood::closed);
  for (int i = 0; i < 20; ++i) {
    const QPointF round = polar({0, 0}, i * 18.0, 1);
    grain(pen, {107 + round.x() * 40, 78 + round.y() * 19});
  }
  for (const double x : {95.0, 98.0, 116.0, 119.0})
    pen.stroke(circle({x, 81}, 1.9), weight::wire, Shade::paper);
  pen.cross({92, 66}, 4.4);
  pen.cross({122, 66}, 4.4);
  pen.dimension({70, 50}, {100, 50});
  return pen.finished();
}

Drawing waterCheck(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.line({2, 106}, {46, 106}, weight::limb);
  pen.lens({24, 106});
  standingTrunk(pen, {86, 66}, 13, 11);
  roots(pen, {86, 68}, 30);
  dripHose(pen, 39, 125);
  drop(pen, {125, 49}, 5);
  drop(pen, {125, 57}, 5);
  pen.off("M104 67Q104 98 125 100Q146 98 146 67", weight::limb);
  drop(pen, {118, 72}, 4.4);
  drop(pen, {132, 72}, 4.4);
  drop(pen, {125, 83}, 4.4);
  return pen.finished();
}

Drawing waterCheckBearing(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.crop(tree, 0, 1);
  pen.line({2, 106}, {46, 106}, weight::limb);
  pen.lens({44, 106}, 8);
  standingTrunk(pen, {76, 92}, 20, 17);
  pen.stroke("M50 47L118 47L118 57L50 57", weight::trunk, Shade::paper);
  pen.solid("M94 56L108 56L106 64L96 64Z");
  drop(pen, {101, 66}, 5);
  drop(pen, {101, 76}, 5);
  // The end stands open and the water runs free.
  pen.off("M126 36L138 36L138 45L126 45Z", weight::limb, Shade::paper);
  pen.sweep({122, 43}, {120, 34}, {126, 28}, 6);
  pen.stroke("M119 50Q136 50 140 84M119 54Q130 56 132 86", weight::trunk);
  drop(pen, {146, 64}, 5);
  drop(pen, {146, 78}, 5);
  drop(pen, {124, 74}, 5);
  return pen.finished();
}

Drawing dripLine(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.line({2, 107}, {46, 107}, weight::limb);
  pen.lens({24, 106});
  lensGround(pen, 86);
  smallTree(pen, {78, 86}, 62, Part::kept);
  smallTree(pen, {132, 86}, 62, Part::kept);
  dripHose(pen, 72, 88);
  pen.solid("M136 73L148 73L146 81L138 81Z");
  for (const double x : {88.0, 142.0}) {
    drop(pen, {x, 88}, 5);
    pen.off(pathOf("M-12 86Q-10 104 0 104Q10 104 12 86").translated(x, 0), weight::limb);
  }
  pen.arrow({92, 58}, {118, 58}, 2.4, 8);
  return pen.finished();
}

}  // namespace

std::span<const NamedDrawing> drawingsOfTheGround() {
  static constexpr NamedDrawing drawn[] = {{"root-pruning", rootPruning},
                                           {"weed-strip", weedStrip},
                                           {"weed-strip-first", weedStripFirst, true},
                                           {"weed-strip-bearing", weedStripBearing},
                                           {"alley-grass", alleyGrass},
                                           {"nitrogen", nitrogen},
                                           {"calcium-nitrate", calciumNitrate},
                                           {"water-check", waterCheck},
                                           {"water-check-bearing", waterCheckBearing},
                                           {"drip-line", dripLine, true}};
  return drawn;
}

}  // namespace topwire
