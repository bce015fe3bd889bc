#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"
#include "app/paper/tool_parts.h"

namespace topwire {

namespace {

/// The tree with something on its limbs, and the lens on the limb at that height.
void bearing(Pen& pen, const TreeForm& tree, double lensAt, Part part = Part::kept) {
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.crop(tree, 0, 1.1, part);
  pen.lens(tree.limbTip(lensAt));
}

Drawing flowerRemoval(const TreeForm& tree) {
  Pen pen;
  bearing(pen, tree, 0.6, Part::off);
  flowerCluster(pen, {107, 78}, 40, 90, Part::off);
  spur(pen, {107, 98}, 18);
  pen.wood({{52, 98}, {80, 104}, {124, 104}, {164, 98}}, 11, 9, weight::trunk);
  pen.cut({107, 69}, 0, 15);
  pen.cross({140, 72}, 5.4);
  return pen.finished();
}

/// A tree's two lower limbs and its leader, with a cluster at each tip.
void clusters(Pen& pen, Part below, Part above) {
  flowerCluster(pen, {107, 44}, 20, 90, above);
  flowerCluster(pen, {84, 74}, 17, 118, below);
  flowerCluster(pen, {130, 74}, 17, 62, below);
  pen.wood({{103, 102}, {98, 90}, {92, 80}, {84, 75}}, 7, 4, weight::limb);
  pen.wood({{111, 102}, {116, 90}, {122, 80}, {130, 75}}, 7, 4, weight::limb);
  pen.wood(upright({107, 124}, {107, 45}), 14, 8, weight::trunk);
  pen.cross({137, 34}, 5);
}

Drawing flowerRemovalWeak(const TreeForm& tree) {
  Pen pen;
  bearing(pen, tree, 0.8, Part::off);
  clusters(pen, Part::off, Part::off);
  pen.cross({80, 92}, 5);
  pen.cross({134, 92}, 5);
  return pen.finished();
}

Drawing flowerRemovalStrong(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.crop(tree, 0, 0.45);
  pen.crop(tree, 0.45, 1.1, Part::off);
  pen.lens({26, (tree.top.y() + 112) / 2});
  clusters(pen, Part::kept, Part::off);
  pen.tick({80, 91}, 8);
  pen.tick({133, 91}, 8);
  return pen.finished();
}

Drawing lateBloom(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.limbTip(1));
  flowerCluster(pen, {112, 44}, 22, 76, Part::off);
  shoot(pen, {{96, 116}, {100, 92}, {104, 70}, {110, 54}}, Part::kept, 4, 20);
  pen.leaf({110, 54}, 150, 18);
  pen.leaf({110, 54}, 20, 18);
  pen.cut({111, 49}, -10, 9);
  pen.cross({78, 34}, 5.4);
  pen.sweep({138, 30}, {150, 52}, {142, 86}, 9);
  return pen.finished();
}

Drawing handThinning(const TreeForm& tree) {
  Pen pen;
  bearing(pen, tree, 0.5);
  for (const double x : {76.0, 134.0}) {
    pen.leaf({x - 1, 40}, 150, 15);
    apple(pen, {x, 44}, 12.5, Part::kept);
  }
  apple(pen, {92.5, 46}, 7, Part::off);
  apple(pen, {117.5, 46}, 7, Part::off);
  apple(pen, {105, 47}, 6.4, Part::off);
  pen.cross({92.5, 76}, 4.4);
  pen.cross({117.5, 76}, 4.4);
  pen.cross({105, 76}, 4.4);
  pen.wood({{48, 40}, {80, 34}, {124, 34}, {166, 42}}, 9, 7, weight::trunk);
  pen.dimension({76, 92}, {134, 92});
  return pen.finished();
}

Drawing clearLeaderFruit(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.crop(tree, 0, 0.45);
  pen.stroke(circle(tree.top + QPointF{3.4, 10}, 1.7), weight::wire, Shade::paper);
  pen.stroke(circle(tree.top + QPointF{-3.4, 16}, 1.7), weight::wire, Shade::paper);
  pen.lens(tree.top + QPointF{0, 12}, 10);
  apple(pen, {118, 28}, 9, Part::off);
  apple(pen, {95, 48}, 9, Part::off);
  pen.off("M107 26L118 28M107 46L95 48", weight::limb);
  pen.cross({138, 36}, 5.4);
  pen.cross({76, 56}, 5.4);
  pen.wood({{110, 92}, {120, 84}, {132, 80}, {150, 82}}, 7, 4, weight::limb);
  apple(pen, {134, 82}, 9.5, Part::kept);
  pen.line({50, 74}, {164, 74}, 2.2);
  pen.wood(upright({107, 124}, {107, 14}), 12, 7, weight::trunk);
  pen.leaf({107, 18}, 40, 14);
  return pen.finished();
}

Drawing chemicalThinning(const TreeForm& tree) {
  Pen pen;
  bearing(pen, tree, 0.5);
  pen.stroke(
      "M50 56L72 56L72 51L82 51L82 69L72 69L72 64L50 64", weight::trunk, Shade::paper);
  pen.solid("M82 55L87 57L87 63L82 65Z");
  for (int ray = 0; ray < 5; ++ray) {
    const double angle = 24 - ray * 12;
    QPainterPath jet{polar({84, 60}, angle, 8)};
    jet.lineTo(polar({84, 60}, angle, 30));
    pen.off(jet, weight::limb);
  }
  pen.wood({{140, 6}, {138, 40}, {138, 80}, {142, 114}}, 9, 8, weight::trunk);
  pen.leaf({141, 38}, 35, 14);
  pen.leaf({141, 92}, 35, 12);
  pen.line({137, 27}, {125, 30}, weight::limb);
  pen.line({137, 79}, {125, 80}, weight::limb);
  pen.off("M137 53L123 54", weight::limb);
  apple(pen, {125, 30}, 8, Part::kept);
  apple(pen, {123, 54}, 6, Part::off);
  apple(pen, {125, 80}, 8, Part::kept);
  pen.cross({148, 62}, 4.4);
  return pen.finished();
}

Drawing blightPatrol(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.limbTip(0.7));
  // The shoot's tip hangs over like a crook, its leaves limp.
  pen.off("M97 66Q98 42 108 30Q118 20 126 28Q131 34 127 44", 3.4);
  pen.leaf({127, 44}, -98, 17, Part::off);
  pen.leaf({113, 25}, -82, 17, Part::off);
  pen.leaf({98, 52}, -118, 17, Part::off);
  pen.wood({{92, 116}, {92, 100}, {94, 84}, {97, 68}}, 11, 7, weight::trunk);
  pen.leaf({88, 102}, 150, 16);
  pen.leaf({97, 98}, 25, 16);
  pen.cut({95.4, 80}, -12, 15);
  pen.dimension({137, 80}, {137, 56});
  pen.cross({82, 30}, 5.4);
  return pen.finished();
}

Drawing countFruit(const TreeForm& tree) {
  Pen pen;
  bearing(pen, tree, 0.6);
  pen.wood(upright({72, 124}, {72, -2}), 14, 12, weight::trunk);
  pen.wood({{76, 50}, {88, 38}, {104, 36}, {124, 42}}, 7, 4, weight::limb);
  pen.wood({{76, 96}, {86, 84}, {96, 82}, {112, 86}}, 7, 4, weight::limb);
  for (const QPointF& stalk : {QPointF{90, 40},
                               QPointF{104, 39},
                               QPointF{118, 42},
                               QPointF{90, 85},
                               QPointF{106, 86}})
    apple(pen, stalk, 6.2, Part::kept);
  tally(pen, {126, 62}, 24);
  return pen.finished();
}

}  // namespace

std::span<const NamedDrawing> drawingsOfFruit() {
  static constexpr NamedDrawing drawn[] = {{"flower-removal", flowerRemoval},
                                           {"flower-removal-weak", flowerRemovalWeak},
                                           {"flower-removal-strong", flowerRemovalStrong},
                                           {"late-bloom", lateBloom},
                                           {"hand-thinning", handThinning},
                                           {"clear-leader-fruit", clearLeaderFruit},
                                           {"chemical-thinning", chemicalThinning},
                                           {"blight-patrol", blightPatrol},
                                           {"count-fruit", countFruit}};
  return drawn;
}

}  // namespace topwire
