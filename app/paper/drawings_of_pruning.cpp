#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"
#include "app/paper/tool_parts.h"

namespace topwire {

namespace {

QPointF onTrunk(const TreeForm& tree, double height) {
  return {tree.foot.x() + 3, tree.limbTip(height).y()};
}

Drawing dormantPruning(const TreeForm& tree) {
  Pen pen;
  const QPointF where = onTrunk(tree, 0.6);
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.off(pathOf("M-1 0Q6 -6 13 -15").translated(where), 2.6);
  pen.lens(where, 8);
  pen.wood({{150, 4}, {139, 24}, {126, 44}, {108, 66}}, 14, 17, weight::limb, Wood::off);
  pen.wood({{100, 92}, {88, 82}, {78, 79}, {56, 84}}, 7.5, 4.5, weight::limb);
  pen.wood({{103, 124}, {104.6, 90}, {103.4, 45}, {104, -2}}, 20, 15, weight::trunk);
  pen.stroke("M111.4 54.4L117.4 46.6L130.6 62.2L112.4 77.6", weight::trunk, Shade::paper);
  pen.erase("M111.7 57.2L112.3 74.6", 3.4);
  pen.line({112.8, 40.6}, {136.4, 68.6}, weight::cut);
  return pen.finished();
}

Drawing renewalCuts(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, onTrunk(tree, 0.4));
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

Drawing singleAxis(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.limbTip(0.3) + QPointF{6, 0});
  pen.wood({{106, 60}, {120, 52}, {132, 38}, {138, 16}}, 7, 5, weight::limb, Wood::off);
  pen.wood({{88, 64}, {96, 76}, {108, 88}, {120, 100}}, 6, 4, weight::limb, Wood::off);
  pen.wood({{66, 66}, {90, 58}, {120, 62}, {160, 76}}, 9, 5, weight::trunk);
  pen.bud({126, 65}, 70, 10);
  pen.bud({138, 69}, -110, 10);
  pen.bud({148, 72}, 60, 10);
  pen.bud({80, 60}, 70, 10);
  pen.wood(upright({62, 124}, {62, -2}), 18, 15, weight::trunk);
  pen.cut({111, 57}, -52, 10);
  pen.cut({92, 70}, 26, 9);
  return pen.finished();
}

void pencil(Pen& pen, QPointF point) {
  const auto at = [&](std::string_view shape) { return pathOf(shape).translated(point); };
  pen.stroke(at("M0 0L9 -3.5L44 -3.5L44 3.5L9 3.5Z"), weight::limb, Shade::paper);
  pen.solid(at("M0 0L4.5 -1.7L4.5 1.7Z"));
  pen.stroke(at("M9 -3.5L9 3.5M38 -3.5L38 3.5"), weight::twig);
}

Drawing hangingWood(const TreeForm& tree) {
  Pen pen;
  const QPointF tip = tree.limbTip(0.3);
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.off(pathOf("M-1 0Q3 6 2 15").translated(tip), 2);
  pen.lens(tip + QPointF{0, 5});
  pen.off("M120 60Q132 70 133 106M124 64Q127 76 126 102", 2.2);
  pen.wood({{66, 58}, {84, 42}, {106, 42}, {122, 60}}, 10, 6.5, weight::trunk);
  pen.bud({113, 48}, 58, 15);
  pen.wood(upright({62, 124}, {62, -2}), 18, 15, weight::trunk);
  pen.cut({121, 59}, 40, 11);
  pencil(pen, {76, 84});
  return pen.finished();
}

Drawing lowLimbs(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.off("M23 101Q16 98 9 106M25 102Q32 99 39 107", 2.2);
  pen.lens({28, 101});
  pen.wood({{112, 74}, {126, 68}, {138, 72}, {156, 92}}, 9, 5, weight::limb, Wood::off);
  pen.wood({{104, 30}, {116, 20}, {130, 18}, {152, 24}}, 8, 5, weight::trunk);
  standingTrunk(pen, {104, 98}, 20, 16);
  pen.cut({115, 72}, 82, 12);
  pen.dimension({78, 34}, {78, 96});
  return pen.finished();
}

Drawing clickPruning(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.limbTip(0.5) + QPointF{5, 0});
  pen.wood({{97, 40}, {98, 28}, {101, 16}, {104, 2}}, 6, 5, weight::limb, Wood::off);
  pen.wood({{131, 48}, {132, 36}, {136, 24}, {140, 10}}, 6, 5, weight::limb, Wood::off);
  for (const QPointF& foot : {QPointF{96, 70}, QPointF{130, 78}}) {
    pen.wood(straight(foot, foot + QPointF{0.6, -28}), 7, 6, weight::limb);
    pen.bud(foot + QPointF{3, -8}, 40, 11);
    pen.bud(foot + QPointF{-3, -15}, 140, 11);
    pen.bud(foot + QPointF{3, -22}, 45, 11);
    pen.cut(foot + QPointF{0.6, -30}, 20, 10);
  }
  pen.wood({{56, 78}, {86, 70}, {120, 72}, {166, 90}}, 12, 7, weight::trunk);
  return pen.finished();
}

Drawing brushSweep(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.off("M8 111L20 106M28 111L42 105", 2.2);
  pen.lens({24, 107}, 10);
  pen.wood(upright({73, 90}, {73, -2}), 16, 14, weight::trunk);
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

}  // namespace

std::span<const NamedDrawing> drawingsOfPruning() {
  static constexpr NamedDrawing drawn[] = {{"dormant-pruning", dormantPruning},
                                           {"renewal-cuts", renewalCuts},
                                           {"single-axis", singleAxis},
                                           {"hanging-wood", hangingWood},
                                           {"low-limbs", lowLimbs},
                                           {"click-pruning", clickPruning},
                                           {"brush-sweep", brushSweep}};
  return drawn;
}

}  // namespace topwire
