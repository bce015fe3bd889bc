#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"
#include "app/paper/tool_parts.h"

namespace topwire {

namespace {

/// The top of the leader in the lens, ending below its top bud.
void leaderTop(Pen& pen, double top = 36) {
  pen.wood({{107, 124}, {107.6, 85}, {106.4, 55}, {107, top}}, 11, 7.5, weight::trunk);
}

void atTop(Pen& pen, const TreeForm& tree) {
  pen.scene(tree, tree.top + QPointF{0, 4}, 8);
}

Drawing rubRivals(const TreeForm& tree) {
  Pen pen;
  atTop(pen, tree);
  leaderTop(pen);
  pen.bud({107, 37}, 90, 21);
  pen.bud({112.5, 50}, 36, 16, Part::off);
  pen.bud({101.5, 60}, 144, 16, Part::off);
  pen.bud({112.5, 71}, 36, 16, Part::off);
  pen.cross({132, 36});
  pen.cross({82, 46});
  pen.cross({132, 57});
  pen.arrow({81, 56}, {81, 78});
  pen.arrow({134, 67}, {134, 88});
  pen.bud({101, 90}, 136, 14);
  return pen.finished();
}

Drawing secondRub(const TreeForm& tree) {
  Pen pen;
  atTop(pen, tree);
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

Drawing rivalCheck(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.top + QPointF{0, 6}, 10);
  pen.dimension({72, 28}, {72, 92});
  shoot(pen, {{112, 88}, {124, 84}, {129, 64}, {130, 44}}, Part::off, 2, 14);
  pen.wood({{104, 102}, {95, 96}, {88, 95}, {78, 97}}, 6, 4, weight::limb);
  pen.wood({{107, 124}, {107.6, 90}, {106.4, 60}, {107, 34}}, 12, 6, weight::trunk);
  pen.leaf({109, 62}, 35, 13);
  pen.leaf({105, 52}, 145, 13);
  pen.leaf({107, 34}, 90, 17);
  pen.cut({115, 87}, -62, 10);
  magnifier(pen, {138, 80}, 7);
  return pen.finished();
}

Drawing pinchLaterals(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.leader, 10);
  for (const double side : {-1.0, 1.0}) {
    const double y = side < 0 ? 80 : 66;
    const QPointF pinch{107 + side * 27, y - 22};
    const QPointF stem{107 + side * 4, y};
    shoot(pen,
          {stem, {107 + side * 14, y - 4}, {107 + side * 22, y - 12}, pinch},
          Part::kept,
          2,
          10);
    shoot(pen, straight(pinch, pinch + QPointF{side * 8, -13}), Part::off, 0, 10);
    pen.cut(pinch, side < 0 ? 36 : -36, 9);
  }
  pen.wood({{107, 124}, {107.6, 85}, {106.4, 50}, {107, 30}}, 11, 6, weight::trunk);
  pen.leaf({109, 42}, 50, 12);
  pen.leaf({105, 46}, 130, 12);
  pen.leaf({107, 30}, 90, 15);
  return pen.finished();
}

Drawing notching(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.wood(upright({24, 112}, tree.top), 3, 1.2, weight::twig);
  pen.stroke("M25 92Q32 86 36 91M23 88Q16 83 12 88", weight::twig);
  pen.stroke(pathOf("M1 16Q6 10 9 14M-1 12Q-6 7 -9 11").translated(tree.top),
             weight::twig);
  pen.lens({24, (tree.top.y() + 96) / 2});
  lensTrunk(pen, 30, 27);
  pen.cut({100, 34}, 8, 13);
  pen.cut({114, 72}, -8, 13);
  pen.bud({94.5, 58}, 122, 19);
  pen.bud({119.5, 96}, 58, 19);
  pen.off("M80 46Q72 44 68 36M134 84Q142 82 146 74", weight::limb);
  pen.arrowHead({66, 31}, {-2, -6}, 8);
  pen.arrowHead({148, 69}, {2, -6}, 8);
  return pen.finished();
}

Drawing heightCut(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.off(pathOf("M0 4Q1 -3 8 -9").translated(tree.top), 2.2);
  pen.lens(tree.top + QPointF{0, 6}, 8);
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

}  // namespace

std::span<const NamedDrawing> drawingsOfTheLeader() {
  static constexpr NamedDrawing drawn[] = {{"rub-rivals", rubRivals},
                                           {"second-rub", secondRub},
                                           {"rival-check", rivalCheck},
                                           {"pinch-laterals", pinchLaterals},
                                           {"notching", notching},
                                           {"height-cut", heightCut}};
  return drawn;
}

}  // namespace topwire
