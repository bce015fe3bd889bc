#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"
#include "app/paper/tool_parts.h"

namespace topwire {

namespace {

void atFoot(Pen& pen, const TreeForm& tree) {
  pen.scene(tree, tree.foot);
}

Drawing suckers(const TreeForm& tree) {
  Pen pen;
  pen.trellis(tree.wires);
  pen.tree(tree);
  pen.off("M22 112Q18 106 17 99M26 112Q30 106 31 100", 1.8);
  pen.lens({24, 104}, 10);
  shoot(pen, {{98, 90}, {88, 84}, {82, 74}, {80, 62}}, Part::off, 1, 15);
  shoot(pen, {{112, 58}, {122, 54}, {130, 46}, {132, 34}}, Part::off, 1, 15);
  standingTrunk(pen, {107, 90}, 18, 14);
  roots(pen, {107, 92}, 30);
  pen.cross({66, 58}, 5);
  pen.cross({146, 38}, 5);
  pen.sweep({78, 76}, {68, 90}, {62, 94}, 7);
  pen.sweep({126, 58}, {136, 62}, {140, 76}, 8);
  return pen.finished();
}

void guardedTrunk(Pen& pen) {
  lensGround(pen, 98);
  pen.wood(upright({107, 98}, {107, -2}), 17, 14, weight::trunk);
  pen.stroke("M100 98L98 84M114.5 98L117 92", weight::trunk);
}

Drawing guardsOn(const TreeForm& tree) {
  Pen pen;
  atFoot(pen, tree);
  guardedTrunk(pen);
  pen.stroke("M93 104L95 36L119 36L121 104Z", weight::trunk, Shade::paper);
  pen.stroke("M94.6 58L119.6 50M94.2 72L120 64M93.8 86L120.4 78M93.4 99L120.8 92",
             weight::twig);
  pen.line({55, 98}, {93, 98}, 2.4);
  pen.line({121, 98}, {160, 98}, 2.4);
  pen.arrow({70, 62}, {90, 62});
  pen.arrow({144, 62}, {124, 62});
  pen.arrow({131, 74}, {131, 96}, 2.6, 8);
  snowflake(pen, {76, 34}, 6);
  snowflake(pen, {139, 34}, 6);
  return pen.finished();
}

Drawing guardsOff(const TreeForm& tree) {
  Pen pen;
  atFoot(pen, tree);
  guardedTrunk(pen);
  pen.off("M93 96L95 38L119 38L121 96Z", weight::limb);
  for (const double y : {52.0, 66.0, 80.0})
    pen.off(pathOf("M94.4 4L120 -4").translated(0, y), weight::twig);
  pen.arrow({128, 86}, {146, 86});
  pen.arrow({86, 86}, {68, 86});
  pen.cross({107, 66}, 5.4);
  return pen.finished();
}

/// A vole at work, its head at the right, its feet on `foot`.
void vole(Pen& pen, QPointF foot) {
  const auto at = [&](std::string_view shape) { return pathOf(shape).translated(foot); };
  pen.solid(at("M-17 0Q-21 -14 -6 -15Q5 -16 16 -4Q17 -1 14 0Z"));
  pen.solid(circle(foot + QPointF{1, -15}, 3.4));
  pen.stroke(at("M-16 -1Q-24 2 -27 -5"), weight::limb);
  pen.erase(at("M8 -7.6L8.4 -7.2"), 2.2);
}

Drawing voleCheck(const TreeForm& tree) {
  Pen pen;
  atFoot(pen, tree);
  standingTrunk(pen, {121, 82}, 26, 20);
  // Gnawed to the wood, with the marks of teeth.
  pen.stroke(
      pathOf("M97.4 88L102 86L106 89L112 85L115 80L111 75L114 69L107 66L103 69L98 67")
          .translated(11, -10),
      weight::limb,
      Shade::paper);
  pen.stroke(pathOf("M100 72L104 76M106 71L110 74M101 80L105 83M107 78L111 82")
                 .translated(11, -10),
             weight::limb);
  vole(pen, {88, 82});
  magnifier(pen, {118, 34}, 12);
  pen.off("M56 60Q76 52 96 58M138 58Q146 54 158 58", weight::limb);
  return pen.finished();
}

Drawing whitePaint(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.knee, 10);
  pen.wood({{102, 24}, {92, 16}, {82, 14}, {64, 17}}, 7, 4, weight::limb);
  lensTrunk(pen, 24, 20);
  // Bare bark above, smooth paint below.
  pen.stroke(
      "M101 6L101 14M107 10L107 22M112 4L112 13M102 22L102 30M112 22L112 31"
      "M107 30L107 38M101 37L101 42M112 38L112 43",
      weight::twig);
  lensGround(pen, 100);
  pen.erase("M98 100L116 100", 3);
  pen.stroke("M95.8 47Q101 52 106 48Q112 44 117.6 49", weight::trunk);
  pen.stroke("M118 58L118 84L132 79L132 63Z", weight::limb, Shade::paper);
  pen.stroke("M119 63L131 66.5M119 69L131 70M119 75L131 73.6", weight::wire);
  pen.solid("M132 62L137 64L137 78L132 80Z");
  pen.stroke("M137 67L158 60L160 67L137 75Z", weight::limb, Shade::paper);
  pen.arrow({84, 72}, {84, 94}, 2.6, 9);
  pen.arrow({84, 72}, {84, 50}, 2.6, 9);
  return pen.finished();
}

Drawing measureTrunks(const TreeForm& tree) {
  Pen pen;
  pen.scene(tree, tree.knee);
  standingTrunk(pen, {104, 96}, 24, 20);
  pen.wood({{112, 26}, {122, 18}, {134, 16}, {150, 20}}, 7, 4, weight::limb);
  // A tape round the trunk, its end hanging.
  pen.stroke("M91 46Q104 54 117 46L117 55Q104 63 91 55Z", weight::trunk, Shade::paper);
  pen.stroke("M96 49L96 54M101 51L101 58M106 51L106 56M111 50L111 57", weight::limb);
  pen.stroke("M117 46L128 44L132 72L123 73L121 54L117 55", weight::trunk, Shade::paper);
  pen.stroke("M122 52L126 51M124 59L130 58M124 66L127 66", weight::limb);
  pen.dimension({76, 52}, {76, 95});
  return pen.finished();
}

}  // namespace

std::span<const NamedDrawing> drawingsOfTheTrunk() {
  static constexpr NamedDrawing drawn[] = {{"suckers", suckers},
                                           {"guards-on", guardsOn},
                                           {"guards-off", guardsOff},
                                           {"vole-check", voleCheck},
                                           {"white-paint", whitePaint},
                                           {"measure-trunks", measureTrunks}};
  return drawn;
}

}  // namespace topwire
