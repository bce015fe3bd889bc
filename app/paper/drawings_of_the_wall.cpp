#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"
#include "app/paper/tool_parts.h"

namespace topwire {

namespace {

constexpr QPointF fork{24, 92};  ///< where the arms begin, on the lowest wire

void scene(Pen& pen, const TreeForm& tree, QPointF where) {
  pen.scene(tree, where);
}

/// An arm laid along its wire, through the lens.
void flatArm(Pen& pen, double y, double thick = 13) {
  pen.line({50, y}, {164, y}, 2.2);
  pen.wood({{48, y}, {80, y + 1}, {130, y - 1}, {166, y}}, thick, thick, weight::trunk);
}

/// A tie that holds wood to the wire it lies on.
void strap(Pen& pen, QPointF at, double half, double lean = 90) {
  pen.line(polar(at, lean, -half), polar(at, lean, half), weight::tie);
  pen.line(polar(at + QPointF{4, 0}, lean, -half),
           polar(at + QPointF{4, 0}, lean, half),
           weight::tie);
}

void longShoot(Pen& pen, QPointF foot, double height, Part part) {
  shoot(pen, upright(foot, foot - QPointF{0, height}), part, 3, 11);
}

/// A headed trunk with its top at `top`.
void headedTrunk(Pen& pen, double top) {
  pen.wood(upright({107, 124}, {107, top}), 15, 13.5, weight::trunk, Wood::closed);
}

Drawing orderWhips(const TreeForm&) {
  Pen pen;
  pen.ground();
  pen.off("M10 112L10 52M24 112L24 52M38 112L38 52", weight::limb);
  pen.lens({24, 82});
  roots(pen, {86, 80}, 13);
  pen.wood(upright({86, 80}, {86, 22}), 10, 7, weight::trunk);
  pen.tick({87, 99}, 7);
  pen.off("M112 88L112 34", weight::trunk);
  pen.off("M134 88L134 64L128 36M134 64L141 38", 3.4);
  pen.cross({112, 99}, 5);
  pen.cross({134, 96}, 5);
  return pen.finished();
}

Drawing headCut(const TreeForm&) {
  Pen pen;
  pen.trellis(5);
  pen.wood(upright({24, 112}, {24, 95}), 2.4, 2, weight::twig);
  pen.off("M24 92L24 46", weight::trunk);
  pen.lens({24, 95});
  pen.line({50, 36}, {164, 36}, 2.4);
  pen.wood(upright({107, 56}, {107, -2}), 13, 12, weight::limb, Wood::off);
  headedTrunk(pen, 58);
  pen.cut({107, 57}, 12, 15);
  pen.bud({113, 68}, 24, 20);
  pen.bud({101, 72}, 156, 20);
  pen.dimension({140, 37}, {140, 57});
  return pen.finished();
}

Drawing firstTie(const TreeForm&) {
  Pen pen;
  pen.trellis(5);
  pen.wood(upright({24, 112}, {24, 88}), 2.4, 2, weight::twig);
  pen.lens({24, 94});
  pen.line({50, 68}, {170, 68}, 2.2);
  pen.loopBehind({107, 68}, 25);
  headedTrunk(pen, 26);
  pen.bud({113, 36}, 24, 18);
  pen.bud({101, 40}, 156, 18);
  pen.loopInFront({107, 68}, 25);
  pen.dimension({82.5, 92}, {99, 92});
  return pen.finished();
}

Drawing chooseArms(const TreeForm& tree) {
  Pen pen;
  scene(pen, tree, fork);
  pen.line({50, 34}, {164, 34}, 2.2);
  shoot(pen, {{104, 56}, {94, 52}, {82, 44}, {72, 34}}, Part::kept, 3, 13);
  shoot(pen, {{110, 56}, {120, 52}, {132, 44}, {142, 34}}, Part::kept, 3, 13);
  headedTrunk(pen, 50);
  // Those to the alley, and those below.
  shoot(pen, {{106, 66}, {104, 72}, {101, 78}, {100, 84}}, Part::off, 1, 13);
  shoot(pen, {{113, 90}, {120, 86}, {126, 80}, {130, 72}}, Part::off, 1, 12);
  pen.cross({87, 84}, 5);
  pen.cross({141, 84}, 5);
  return pen.finished();
}

Drawing armTie(const TreeForm& tree) {
  Pen pen;
  scene(pen, tree, fork - QPointF{0, 5});
  pen.line({50, 84}, {164, 84}, 2.2);
  pen.line({50, 50}, {164, 50}, 2.2);
  for (const double side : {-1.0, 1.0}) {
    const auto at = [side](double x, double y) { return QPointF{107 + side * x, y}; };
    shoot(pen, straight(at(26, 58), at(44, 36)), Part::kept, 2, 12);
    pen.wood({at(3, 92), at(10, 80), at(20, 66), at(28, 56)}, 10, 6, weight::trunk);
    strap(pen, at(32, 51) - QPointF{2, 0}, 8, side > 0 ? -45 : 225);
  }
  headedTrunk(pen, 86);
  return pen.finished();
}

Drawing bendArms(const TreeForm& tree) {
  Pen pen;
  scene(pen, tree, fork);
  pen.line({50, 78}, {164, 78}, 2.2);
  for (const double side : {-1.0, 1.0}) {
    const auto at = [side](double x, double y) { return QPointF{107 + side * x, y}; };
    pen.wood(straight(at(4, 76), at(36, 30)), 9, 5, weight::limb, Wood::off);
    pen.wood({at(2, 84), at(10, 78), at(30, 79), at(52, 74)}, 10, 6, weight::trunk);
    strap(pen, at(18, 78) - QPointF{2, 0}, 9);
    strap(pen, at(36, 78) - QPointF{2, 0}, 8);
    pen.sweep(at(34, 42), at(44, 50), at(43, 66), 9);
  }
  pen.wood(upright({107, 124}, {107, 80}), 15, 13, weight::trunk, Wood::closed);
  return pen.finished();
}

Drawing setStakes(const TreeForm& tree) {
  Pen pen;
  pen.trellis(5);
  pen.tree(tree);
  for (const double x : {6.0, 13.0, 20.0, 28.0, 35.0, 42.0})
    pen.line({x, 92}, {x, 26}, weight::trunk);
  pen.lens({34, 90});
  pen.line({50, 34}, {164, 34}, 2.2);
  flatArm(pen, 84);
  for (const double x : {77.0, 107.0, 137.0}) {
    pen.wood(straight({x, 94}, {x, 8}), 5, 5, weight::trunk, Wood::closed);
    pen.stroke(pathOf("M-6 34L6 34").translated(x, 0), weight::tie);
  }
  pen.dimension({77, 102}, {107, 102});
  pen.dimension({107, 102}, {137, 102});
  pen.arrow({92, 46}, {92, 70}, 2.6, 8);
  return pen.finished();
}

Drawing rubUnder(const TreeForm& tree) {
  Pen pen;
  scene(pen, tree, fork + QPointF{11, 0});
  flatArm(pen, 60, 20);
  for (const double x : {78.0, 107.0, 136.0}) pen.bud({x, 50}, 90, 20);
  for (const double x : {78.0, 107.0, 136.0}) {
    pen.bud({x, 70}, -90, 16, Part::off);
    pen.cross({x, 94}, 4.6);
  }
  pen.bud({92, 60}, -62, 12, Part::off);
  pen.bud({122, 60}, -118, 12, Part::off);
  return pen.finished();
}

Drawing chooseUprights(const TreeForm& tree) {
  Pen pen;
  scene(pen, tree, fork + QPointF{11, -4});
  for (const double x : {82.0, 132.0}) longShoot(pen, {x, 76}, 42, Part::kept);
  for (const double x : {66.0, 98.0, 116.0, 148.0}) {
    const double height = x > 90 && x < 120 ? 34 : 22;
    longShoot(pen, {x, 76}, height, Part::off);
  }
  pen.cross({107, 34}, 5);
  flatArm(pen, 82);
  pen.dimension({82, 99}, {132, 99});
  return pen.finished();
}

Drawing uprightTie(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.leader);
  pen.line({50, 66}, {164, 66}, 2.2);
  pen.line({118, 124}, {118, 2}, weight::cut);
  pen.wood({{104, 124}, {106, 90}, {106, 60}, {107, 22}}, 10, 5, weight::trunk);
  pen.leaf({109, 40}, 30, 12);
  pen.leaf({104, 32}, 150, 12);
  pen.leaf({107, 22}, 90, 15);
  for (const double y : {58.0, 96.0}) {
    QPainterPath loop;
    loop.addEllipse(QPointF{112, y}, 15, 6);
    pen.stroke(loop, weight::tie);
  }
  pen.dimension({80, 22}, {80, 57});
  return pen.finished();
}

Drawing balance(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.top + QPointF{0, 3});
  for (const double x : {74.0, 140.0}) longShoot(pen, {x, 90}, 36, Part::kept);
  pen.wood(upright({107, 40}, {107, 4}), 8, 5, weight::limb, Wood::off);
  shoot(pen, straight({111, 64}, {124, 56}), Part::off, 0, 11);
  shoot(pen, straight({103, 74}, {90, 66}), Part::off, 0, 11);
  pen.wood({{107, 92}, {106, 60}, {108, 36}, {138, 36}}, 11, 5, weight::trunk);
  pen.leaf({138, 36}, -10, 13);
  pen.cut({112, 63}, 90, 6);
  pen.cut({102, 73}, 90, 6);
  pen.sweep({112, 14}, {128, 12}, {134, 27}, 8);
  pen.line({128, 36}, {128, 88}, weight::limb);
  pen.stroke("M128 30L128 42", weight::tie);
  flatArm(pen, 96);
  return pen.finished();
}

Drawing sidePinch(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.limbTip(0.7));
  for (const double side : {-1.0, 1.0}) {
    const double y = side < 0 ? 94 : 66;
    const QPointF pinch{107 + side * 22, y - 10};
    shoot(pen, straight({107 + side * 5, y}, pinch), Part::kept, 2, 11);
    shoot(pen, straight(pinch, pinch + QPointF{side * 20, -12}), Part::off, 1, 11);
    pen.cut(pinch, side < 0 ? 60 : -60, 9);
  }
  pen.wood(upright({107, 124}, {107, 26}), 12, 7, weight::trunk);
  pen.leaf({109, 44}, 40, 13);
  pen.leaf({105, 36}, 140, 13);
  pen.leaf({107, 26}, 90, 16);
  return pen.finished();
}

Drawing sideShoots(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.limbTip(0.7));
  pen.wood({{128, 50}, {138, 44}, {146, 36}, {154, 26}}, 8, 6, weight::limb, Wood::off);
  pen.wood({{84, 80}, {76, 74}, {68, 66}, {58, 58}}, 8, 6, weight::limb, Wood::off);
  pen.wood(
      {{110, 62}, {116, 58}, {120, 55}, {126, 51}}, 10, 8, weight::limb, Wood::closed);
  pen.wood({{104, 92}, {98, 88}, {94, 86}, {87, 82}}, 10, 8, weight::limb, Wood::closed);
  pen.bud({116, 54}, 100, 11);
  pen.bud({122, 58}, -20, 11);
  pen.bud({98, 84}, 90, 11);
  pen.bud({92, 89}, -130, 11);
  pen.cut({128, 49}, -52, 10);
  pen.cut({84, 80}, 52, 10);
  pen.wood(straight({104, 42}, {92, 36}), 6, 5, weight::limb, Wood::closed);
  pen.bud({93, 37}, 155, 13);
  pen.wood(upright({107, 124}, {107, -2}), 14, 12, weight::trunk);
  return pen.finished();
}

Drawing renewUpright(const TreeForm& tree) {
  Pen pen;
  scene(pen, tree, fork + QPointF{11, -4});
  for (const double x : {70.0, 146.0})
    pen.wood(upright({x, 90}, {x, -2}), 8, 7, weight::trunk);
  pen.wood(upright({107, 64}, {109, -2}), 19, 18, weight::limb, Wood::off);
  pen.stroke("M97.5 88L97.5 58L116.5 74L116.5 88Z", weight::trunk, Shade::paper);
  pen.line({91, 52.5}, {123, 79.5}, weight::cut);
  pen.bud({117, 80}, 20, 13);
  pen.off("M126 74Q132 60 131 26", weight::trunk);
  pen.arrowHead({131, 18}, {0, -9}, 9);
  flatArm(pen, 94, 15);
  return pen.finished();
}

Drawing armEnds(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, {44, 91});
  pen.line({50, 70}, {164, 70}, 2.2);
  for (const double x : {72.0, 142.0})
    pen.wood(upright({x, 66}, {x, -2}), 9, 8, weight::trunk);
  pen.wood(straight({110, 66}, {136, 56}), 8, 5, weight::limb, Wood::off);
  pen.wood(straight({104, 76}, {80, 88}), 8, 5, weight::limb, Wood::off);
  pen.wood(straight({48, 70}, {103, 70}), 12, 9, weight::trunk, Wood::closed);
  pen.wood(straight({166, 70}, {111, 70}), 12, 9, weight::trunk, Wood::closed);
  pen.cut({103, 70}, 90, 13);
  pen.cut({111, 70}, 90, 13);
  pen.arrow({84, 40}, {102, 40}, 2.4, 7);
  pen.arrow({130, 40}, {112, 40}, 2.4, 7);
  return pen.finished();
}

Drawing top(const TreeForm& tree) {
  Pen pen;
  pen.trellis(5);
  pen.tree(tree);
  pen.off(pathOf("M0 -1L0 -12").translated(tree.top), 2.2);
  pen.lens(tree.top);
  pen.line({50, 66}, {164, 66}, weight::tie);
  pen.wood(upright({107, 48}, {110, -2}), 10, 8, weight::limb, Wood::off);
  pen.wood({{109, 64}, {120, 54}, {130, 50}, {146, 48}}, 6, 4, weight::limb);
  pen.bud({126, 51}, 70, 9);
  pen.bud({144, 48}, 0, 11);
  pen.wood(upright({107, 124}, {107, 56}), 13, 11, weight::trunk, Wood::closed);
  pen.cut({107, 52}, 26, 15);
  return pen.finished();
}

Drawing face(const TreeForm& tree) {
  Pen pen;
  scene(pen, tree, fork + QPointF{11, -30});
  // Seen along the row: a narrow wall, its wires as dots in the middle.
  pen.wood({{126, 44}, {134, 38}, {142, 34}, {154, 34}}, 4, 3, weight::limb, Wood::off);
  pen.wood({{88, 62}, {80, 56}, {70, 52}, {60, 54}}, 4, 3, weight::limb, Wood::off);
  for (const double y : {28.0, 46.0, 64.0, 82.0})
    for (const double side : {-1.0, 1.0})
      shoot(pen, straight({107, y + 6}, {107 + side * 13, y}), Part::kept, 0, 8);
  shoot(pen, straight({126, 44}, {148, 33}), Part::off, 1, 12);
  shoot(pen, straight({88, 64}, {66, 53}), Part::off, 1, 12);
  standingTrunk(pen, {107, 96}, 9, 7);
  pen.line({86, 12}, {86, 94}, 2.4);
  pen.line({128, 12}, {128, 94}, 2.4);
  pen.cut({128, 44}, 90, 9);
  pen.cut({86, 63}, 90, 9);
  pen.dimension({86, 103}, {128, 103});
  return pen.finished();
}

Drawing thin(const TreeForm& tree) {
  Pen pen;
  pen.trellis(5);
  pen.tree(tree);
  pen.crop(tree, 0, 1);
  pen.lens(tree.limbTip(0.5));
  pen.wood(upright({88, 124}, {88, -2}), 13, 11, weight::trunk);
  for (const double y : {24.0, 74.0}) {
    pen.line({93, y + 2}, {104, y - 2}, weight::limb);
    apple(pen, {104, y - 2}, 11.5, Part::kept);
    apple(pen, {120, y - 4}, 6, Part::off);
    pen.off(pathOf("M104 -2L120 -4").translated(0, y), weight::limb);
    pen.cross({136, y}, 4.4);
  }
  pen.line({82, 50}, {74, 46}, weight::limb);
  apple(pen, {72, 45}, 6, Part::off);
  pen.cross({72, 68}, 4.4);
  pen.dimension({124, 42}, {124, 84});
  return pen.finished();
}

Drawing wallTrellis(const TreeForm&) {
  Pen pen;
  pen.trellis(5, false);
  pen.wood(straight({44, 112}, {44, 14}), 3, 3, weight::post, Wood::closed);
  pen.wood(straight({14, 112}, {6, 18}), 3, 3, weight::post, Wood::closed);
  pen.lens({12, 92});
  soil(pen, 92, 70, 140);
  for (const double y : {20.0, 36.0, 52.0, 68.0})
    pen.line({92 + (y - 20) * 0.26, y}, {164, y}, weight::trunk);
  pen.wood(straight({112, 104}, {90, 8}), 12, 12, weight::trunk, Wood::closed);
  for (const double y : {20.0, 36.0, 52.0, 68.0})
    pen.line({85 + (y - 12) * 0.23, y}, {101 + (y - 12) * 0.23, y}, weight::tie);
  lensGround(pen, 88);
  pen.line({96, 20}, {68, 96}, weight::cut);
  pen.stroke("M62 94L74 98", weight::tie);
  pen.dimension({138, 69}, {138, 87});
  return pen.finished();
}

}  // namespace

std::span<const NamedDrawing> drawingsOfTheWall() {
  static constexpr NamedDrawing drawn[] = {{"wall-trellis", wallTrellis},
                                           {"wall-order-whips", orderWhips},
                                           {"wall-head-cut", headCut},
                                           {"wall-first-tie", firstTie},
                                           {"wall-choose-arms", chooseArms},
                                           {"wall-arm-tie", armTie},
                                           {"wall-bend-arms", bendArms},
                                           {"wall-set-stakes", setStakes},
                                           {"wall-rub-under", rubUnder},
                                           {"wall-choose-uprights", chooseUprights},
                                           {"wall-upright-tie", uprightTie},
                                           {"wall-balance", balance},
                                           {"wall-side-pinch", sidePinch},
                                           {"wall-side-shoots", sideShoots},
                                           {"wall-renew-upright", renewUpright},
                                           {"wall-arm-ends", armEnds},
                                           {"wall-top", top},
                                           {"wall-face", face},
                                           {"wall-thin", thin}};
  return drawn;
}

}  // namespace topwire
