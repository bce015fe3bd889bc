#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"
#include "app/paper/tool_parts.h"

namespace topwire {

namespace {

/// A piece of the row with a gap in it, its trees as high as in that leaf.
void gapInRow(Pen& pen, const TreeForm& tree) {
  const double height = 112 - tree.top.y();
  pen.trellis(tree.wires, false);
  for (const double x : {8.0, 44.0})
    pen.wood(upright({x, 112}, {x, 112 - height}), 3, 1.2, weight::twig);
  for (const double x : {8.0, 44.0})
    for (double up = 20; up < height - 6; up += 12)
      pen.stroke(pathOf("M-6 -2Q-3 -4 0 0Q3 -4 6 -2").translated(x, 112 - up),
                 weight::twig);
  pen.off("M26 112L26 52", weight::limb);
}

Drawing plant(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.stroke("M24 112L20 117M24 112L28 117M24 112L24 118", weight::twig);
  pen.lens({24, 108});
  soil(pen, 70, 72, 140);
  roots(pen, {107, 74}, 36);
  lensGround(pen, 70);
  graftedTrunk(pen, 76);
  pen.dimension({134, 47}, {134, 69});
  pen.line({118, 46.5}, {140, 46.5}, weight::wire);
  return pen.finished();
}

Drawing unionCheck(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.foot);
  soil(pen, 84, 72, 142);
  pen.off("M114 50Q132 52 142 70Q148 80 154 84", 2.6);
  lensGround(pen, 84);
  graftedTrunk(pen, 86);
  pen.erase("M102.4 84L111.6 84", 4);
  pen.stroke("M72 48L86 48L86 84L72 84Z", weight::trunk, Shade::paper);
  pen.stroke("M72 57L79 57M72 66L82 66M72 75L79 75", weight::limb);
  pen.line({72, 48}, {98, 48}, weight::trunk);
  pen.sweep({124, 66}, {138, 56}, {152, 66}, 8);
  return pen.finished();
}

Drawing featherRemoval(const TreeForm&) {
  Pen pen;
  pen.trellis();
  pen.wood(upright({24, 112}, {24, 40}), 2.6, 1.2, weight::twig);
  pen.stroke("M25 78Q31 72 36 74M23 72Q17 66 12 68M25 64Q30 58 34 60", weight::twig);
  pen.off("M23 98Q17 94 12 96M25 92Q31 87 37 89", 2.2);
  pen.lens({24, 92}, 10);
  pen.wood({{102, 96}, {90, 88}, {78, 82}, {52, 80}}, 6, 4, weight::limb, Wood::off);
  pen.wood({{112, 62}, {126, 50}, {136, 40}, {150, 18}}, 12, 10, weight::limb, Wood::off);
  pen.wood({{103, 40}, {92, 30}, {80, 26}, {56, 25}}, 5.5, 3, weight::limb);
  lensTrunk(pen, 16, 14);
  pen.cut({98, 92.8}, 62, 10);
  pen.cut({122, 53.4}, -48, 13);
  return pen.finished();
}

Drawing guardsFirst(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.stroke("M20.5 111L20.5 92L27.5 92L27.5 111", weight::limb);
  pen.lens({24, 103});
  lensGround(pen, 96);
  pen.wood({{110, 30}, {122, 24}, {134, 20}, {150, 20}}, 7, 4, weight::limb);
  pen.wood(upright({107, 100}, {107, -2}), 13, 11, weight::trunk);
  pen.stroke("M89 44Q107 52 125 44L125 100Q107 108 89 100Z", weight::trunk, Shade::paper);
  pen.stroke("M89 44Q107 36 125 44", weight::trunk);
  pen.stroke("M89 58Q107 66 125 58M89 72Q107 80 125 72M89 86Q107 94 125 86",
             weight::twig);
  pen.stroke("M76 70Q78 84 96 86", 2.4);
  pen.sweep({138, 62}, {140, 82}, {112, 84}, 9);
  pen.dimension({114, 34}, {125, 34});
  return pen.finished();
}

Drawing settleWater(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.foot);
  pen.wood(upright({107, 64}, {142, -2}), 12, 11, weight::limb, Wood::off);
  standingTrunk(pen, {107, 64}, 13, 11);
  roots(pen, {107, 66}, 30);
  pen.off("M68 65Q70 104 107 106Q144 104 146 65", weight::trunk);
  for (const QPointF& tip :
       {QPointF{72, 28}, QPointF{82, 38}, QPointF{70, 48}, QPointF{80, 76}})
    drop(pen, tip, 5.6);
  drop(pen, {89, 88}, 5);
  drop(pen, {124, 88}, 5);
  drop(pen, {134, 70}, 5);
  pen.sweep({144, 36}, {136, 22}, {119, 22}, 8);
  pen.arrow({94, 44}, {94, 61}, 3, 8);
  return pen.finished();
}

Drawing countGaps(const TreeForm& tree) {
  Pen pen;
  gapInRow(pen, tree);
  pen.lens({26, 88}, 10);
  lensGround(pen, 56);
  smallTree(pen, {75, 56}, 34, Part::kept);
  smallTree(pen, {107, 56}, 34, Part::off);
  smallTree(pen, {139, 56}, 34, Part::kept);
  pen.cross({107, 22}, 4.6);
  pen.arrow({84, 66}, {130, 66}, 2.4, 8);
  notebook(pen, {88, 74}, 2);
  return pen.finished();
}

Drawing replant(const TreeForm& tree) {
  Pen pen;
  gapInRow(pen, tree);
  pen.lens({26, 104}, 10);
  lensGround(pen, 74);
  pen.wood(upright({71, 74}, {71, -2}), 13, 11, weight::trunk);
  pen.wood(upright({143, 74}, {143, -2}), 13, 11, weight::trunk);
  pen.blank("M88 72L126 72L126 76L88 76Z");
  pen.stroke("M88 74Q92 100 107 101Q122 100 126 74", weight::trunk);
  nurseryTree(pen, {107, 78}, 0);
  label(pen, {109, 52});
  pen.arrow({89, 26}, {89, 56}, 2.6, 9);
  return pen.finished();
}

}  // namespace

std::span<const NamedDrawing> drawingsOfPlanting() {
  static constexpr NamedDrawing drawn[] = {{"plant", plant, true},
                                           {"union-check", unionCheck, true},
                                           {"feather-removal", featherRemoval},
                                           {"guards-first", guardsFirst, true},
                                           {"settle-water", settleWater, true},
                                           {"count-gaps", countGaps},
                                           {"replant", replant}};
  return drawn;
}

}  // namespace topwire
