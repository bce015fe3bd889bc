#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"
#include "app/paper/tool_parts.h"

namespace topwire {

namespace {

/// The places in the row where trees will stand.
void comingTrees(Pen& pen) {
  pen.ground();
  pen.off("M10 112L10 52M24 112L24 52M38 112L38 52", weight::limb);
}

/// Two posts of the coming trellis.
void comingPosts(Pen& pen) {
  for (const double x : {8.0, 44.0})
    pen.wood(straight({x, 112}, {x, 14}), 3, 3, weight::post, Wood::closed);
}

void orderForm(Pen& pen) {
  pen.stroke("M72 20L130 20L142 32L142 100L72 100Z", weight::trunk, Shade::paper);
  pen.stroke("M130 20L130 32L142 32", weight::limb);
}

Drawing orderTrees(const TreeForm&) {
  Pen pen;
  comingTrees(pen);
  pen.lens({24, 82});
  orderForm(pen);
  // Several thin laterals are wanted, one thick one is not.
  pen.line({92, 84}, {92, 34}, weight::trunk);
  pen.stroke("M92 66Q85 64 81 58M92 62Q99 60 103 54M92 54Q85 52 82 46M92 50Q99 48 102 42",
             weight::twig);
  pen.tick({91, 92}, 7);
  pen.off("M123 84L123 38", weight::trunk);
  pen.off("M124 70Q132 66 135 48", 4.4);
  pen.cross({124, 92}, 4.4);
  return pen.finished();
}

Drawing orderTrellis(const TreeForm&) {
  Pen pen;
  pen.ground();
  pen.off("M8 112L8 20M46 112L46 20", weight::trunk);
  pen.off("M2 92L52 92M2 70L52 70M2 48L52 48M2 26L52 26", weight::twig);
  pen.lens({27, 48}, 10);
  for (const QPointF& end : {QPointF{70, 94},
                             QPointF{81, 94},
                             QPointF{92, 94},
                             QPointF{75.5, 84},
                             QPointF{86.5, 84}})
    pen.stroke(circle(end, 5.2), weight::limb, Shade::paper);
  pen.stroke("M66 79L66 22L76 22L76 79", weight::trunk, Shade::paper);
  pen.stroke("M82 79L82 22L92 22L92 79", weight::trunk, Shade::paper);
  pen.stroke(circle({124, 58}, 24), weight::tie);
  pen.stroke(circle({124, 58}, 18), weight::limb);
  pen.stroke(circle({124, 58}, 13), weight::limb);
  pen.stroke("M100 58L112 58M136 58L148 58", weight::cut);
  pen.tick({120, 94}, 12);
  return pen.finished();
}

Drawing irrigationMains(const TreeForm&) {
  Pen pen;
  pen.ground();
  pen.off("M10 111L10 84M38 111L38 84", weight::limb);
  pen.line({2, 117}, {52, 117}, weight::trunk);
  pen.lens({24, 110});
  lensGround(pen, 50);
  pen.stroke("M50 72L164 72L164 84L50 84Z", weight::trunk, Shade::paper);
  // Valve, filter, pressure gauge.
  pen.stroke("M68 70L86 86L86 70L68 86Z", weight::trunk, Shade::paper);
  pen.line({77, 77}, {77, 40}, weight::trunk);
  pen.line({68, 39}, {86, 39}, weight::tie);
  pen.stroke(
      "M98 96L98 36Q98 28 107 28Q116 28 116 36L116 96Z", weight::trunk, Shade::paper);
  pen.stroke(
      "M99 44L115 58M99 60L115 74M99 76L115 90M115 44L99 58M115 60L99 74"
      "M115 76L99 90",
      weight::twig);
  pen.line({138, 72}, {138, 52}, weight::trunk);
  pen.stroke(circle({138, 41}, 12), weight::trunk, Shade::paper);
  pen.line({138, 41}, {145, 34}, weight::cut);
  pen.arrow({58, 97}, {86, 97});
  return pen.finished();
}

Drawing rowMarking(const TreeForm&) {
  Pen pen;
  pen.ground();
  for (const double x : {8.0, 17.0, 26.0, 35.0, 44.0})
    pen.line({x, 112}, {x, 102}, weight::limb);
  pen.line({8, 102}, {44, 102}, weight::wire);
  pen.lens({26, 107});
  lensGround(pen, 78);
  for (const double x : {84.0, 107.0, 130.0}) {
    pen.stroke(pathOf("M-3 -16L3 -16L3 10L0 17L-3 10Z").translated(x, 78),
               weight::trunk,
               Shade::paper);
  }
  pen.line({50, 56}, {164, 56}, weight::trunk);
  pen.solid("M64 46L69 46L69 84L64 84Z");
  pen.solid("M145 46L150 46L150 84L145 84Z");
  pen.stroke("M97 30L117 30L117 42L97 42Z", weight::trunk, Shade::ink);
  pen.line({117, 34}, {138, 24}, weight::cut);
  pen.arrow({107, 44}, {107, 60}, 2.4, 7);
  pen.dimension({84, 99}, {107, 99});
  pen.dimension({107, 99}, {130, 99});
  return pen.finished();
}

Drawing raiseTrellis(const TreeForm&) {
  Pen pen;
  pen.trellis(4, false);
  comingPosts(pen);
  pen.lens({44, 108});
  soil(pen, 66, 92, 122);
  pen.wood(straight({107, 102}, {107, 14}), 18, 18, weight::trunk, Wood::closed);
  pen.line({55, 66}, {98, 66}, 2.4);
  pen.line({116, 66}, {160, 66}, 2.4);
  pen.line({55, 34}, {160, 34}, weight::trunk);
  pen.stroke("M101 40L101 29Q107 23 113 29L113 40", weight::tie);
  pen.arrow({80, 50}, {62, 50});
  pen.dimension({131, 67}, {131, 101});
  pen.arrow({84, 78}, {84, 98});
  return pen.finished();
}

Drawing receiveTrees(const TreeForm&) {
  Pen pen;
  comingTrees(pen);
  pen.stroke("M12 112L36 112L33 98L15 98Z", weight::limb, Shade::paper);
  pen.lens({24, 105});
  nurseryTree(pen, {84, 84}, -9);
  nurseryTree(pen, {100, 84}, 7);
  nurseryTree(pen, {92, 84}, 0);
  pen.stroke("M81 62Q92 68 103 62M81 62Q92 57 103 62", weight::tie);
  label(pen, {104, 63});
  pen.stroke("M64 82L124 82L119 106L70 106Z", weight::trunk, Shade::paper);
  for (const double x : {78.0, 92.0, 106.0}) drop(pen, {x, 88}, 6);
  tally(pen, {122, 24}, 20);
  pen.tick({138, 86}, 9);
  return pen.finished();
}

}  // namespace

std::span<const NamedDrawing> drawingsBeforePlanting() {
  static constexpr NamedDrawing drawn[] = {{"order-trees", orderTrees},
                                           {"order-trellis", orderTrellis},
                                           {"irrigation-mains", irrigationMains},
                                           {"row-marking", rowMarking},
                                           {"raise-trellis", raiseTrellis},
                                           {"receive-trees", receiveTrees}};
  return drawn;
}

}  // namespace topwire
