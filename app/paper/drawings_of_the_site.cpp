#include "app/paper/drawings_of_operations.h"
#include "app/paper/plant_parts.h"
#include "app/paper/tool_parts.h"

namespace topwire {

namespace {

/// The bare site at the left, where nothing stands yet.
void site(Pen& pen, QPointF where) {
  pen.ground();
  pen.off("M10 111L10 99M24 111L24 99M38 111L38 99", weight::twig);
  pen.lens(where);
}

Drawing siteChoice(const TreeForm&) {
  Pen pen;
  pen.stroke("M2 84Q20 84 30 97Q40 110 52 110", weight::ground);
  pen.off("M10 84L10 70M18 86L18 72", weight::limb);
  pen.lens({22, 86}, 10);
  pen.stroke("M50 54Q82 54 98 76Q112 96 164 94", 2.4);
  smallTree(pen, {77, 60}, 38, Part::kept);
  pen.tick({97, 34});
  smallTree(pen, {130, 94}, 36, Part::off);
  pen.cross({148, 74}, 5);
  snowflake(pen, {119, 46}, 6);
  snowflake(pen, {137, 42}, 6);
  pen.sweep({96, 58}, {104, 72}, {116, 82}, 7);
  return pen.finished();
}

Drawing soilTest(const TreeForm&) {
  Pen pen;
  pen.line({2, 100}, {52, 100}, weight::ground);
  pen.line({24, 74}, {24, 110}, weight::trunk);
  pen.line({18, 74}, {30, 74}, weight::trunk);
  pen.lens({24, 100}, 10);
  lensGround(pen, 46);
  grassTuft(pen, {70, 45}, Part::kept);
  grassTuft(pen, {146, 45}, Part::kept);
  soil(pen, 46, 92, 126);
  pen.stroke("M98 16L116 16", weight::cut);
  pen.line({107, 16}, {107, 40}, weight::cut);
  pen.stroke("M100 40L114 40L114 92L107 100L100 92Z", weight::trunk, Shade::paper);
  pen.stroke("M100 58L114 54M100 70L114 66M100 82L114 78", weight::limb);
  pen.solid("M100 82L114 78L114 92L107 100L100 92Z");
  pen.dimension({132, 47}, {132, 99});
  pen.arrow({84, 18}, {84, 40});
  return pen.finished();
}

Drawing nematodeSample(const TreeForm&) {
  Pen pen;
  site(pen, {24, 109});
  lensGround(pen, 36);
  pen.dimension({68, 46}, {68, 84});
  pen.stroke("M77 36L77 82L87 82L87 36", weight::trunk, Shade::paper);
  pen.off("M75 30L89 30L89 40L75 40Z", weight::limb, Shade::paper);
  pen.cross({99, 27}, 4.6);
  pen.solid("M78 62L86 62L86 81L78 81Z");
  pen.arrow({93, 68}, {109, 68});
  bag(pen, {112, 56}, 34, 40);
  pen.stroke("M121 72Q125 66 129 72Q133 78 137 72M122 84Q126 78 130 84Q134 90 138 84",
             weight::trunk);
  snowflake(pen, {130, 24}, 7);
  return pen.finished();
}

Drawing drainage(const TreeForm&) {
  Pen pen;
  pen.ground();
  pen.stroke("M6 106Q14 110 22 106Q30 110 38 106Q44 109 48 106", weight::limb);
  pen.lens({24, 110});
  pen.off("M70 34Q79 28 88 34Q97 39 107 34Q116 28 125 34Q134 39 146 33", weight::trunk);
  drop(pen, {88, 14}, 6);
  drop(pen, {126, 14}, 6);
  pen.cross({107, 19}, 5);
  lensGround(pen, 38);
  soil(pen, 38, 84, 130);
  pen.off("M88 40L92 92M126 40L122 92", weight::limb);
  pen.arrow({107, 44}, {107, 64});
  pen.stroke(circle({107, 82}, 14), weight::tie, Shade::paper);
  pen.solid("M95.5 85Q101 82 107 85Q113 88 118.5 85Q117 94 107 94Q97 94 95.5 85Z");
  drop(pen, {97, 52}, 5);
  drop(pen, {117, 52}, 5);
  return pen.finished();
}

/// A knee-high plant of the cover crop.
void coverPlant(Pen& pen, double x, double soilY, Part part) {
  const Cubic stem = upright({x, soilY}, {x, soilY - 38});
  shoot(pen, stem, part, 3, 12);
}

Drawing coverCrop(const TreeForm&) {
  Pen pen;
  pen.ground();
  for (double x = 8; x < 48; x += 5)
    pen.stroke(pathOf("M0 0L-2 -9M0 0L2 -9").translated(x, 111), weight::twig);
  pen.lens({24, 106});
  lensGround(pen, 74);
  for (const double x : {68.0, 80.0, 92.0}) coverPlant(pen, x, 74, Part::kept);
  pen.off("M106 73Q108 54 122 44", 3.2);
  pen.off("M118 73Q122 60 136 54", 3.2);
  pen.sweep({132, 40}, {158, 58}, {136, 92}, 9);
  for (const QPointF& at : {QPointF{104, 88}, QPointF{118, 86}, QPointF{112, 96}})
    pen.leaf(at, 20, 12);
  soil(pen, 74, 98, 150);
  return pen.finished();
}

Drawing deepRip(const TreeForm&) {
  Pen pen;
  pen.ground();
  pen.stroke("M20 96L26 96L26 110Q26 118 18 118", weight::limb);
  pen.lens({24, 110});
  lensGround(pen, 34);
  pen.stroke("M50 66L88 66M124 66L164 66M50 71L86 71M126 71L164 71", 2.4);
  pen.stroke("M96 86L84 74L90 62L78 52L84 38M112 84L124 76L117 60L128 50L122 38",
             weight::limb);
  pen.stroke("M101 6L112 6L114 68Q114 94 88 98L86 92Q102 86 103 66Z",
             weight::trunk,
             Shade::paper);
  pen.arrow({94, 20}, {70, 20}, 3, 10);
  pen.dimension({140, 36}, {140, 90});
  return pen.finished();
}

Drawing perennialWeeds(const TreeForm&) {
  Pen pen;
  site(pen, {38, 106});
  lensGround(pen, 58);
  pen.off("M107 58Q104 76 108 88Q110 96 107 106M106 72Q94 78 88 88M108 82Q120 88 126 96",
          2.6);
  pen.off("M107 58L107 30", 2.6);
  for (const double side : {-1.0, 1.0})
    for (const double y : {54.0, 43.0}) {
      QPainterPath thorny{QPointF{107 + side, y}};
      thorny.lineTo(107 + side * 8, y - 9);
      thorny.lineTo(107 + side * 13, y - 3);
      thorny.lineTo(107 + side * 19, y - 12);
      thorny.lineTo(107 + side * 24, y - 5);
      pen.off(thorny, weight::limb);
    }
  pen.off("M101 30Q100 22 107 20Q114 22 113 30Z", weight::limb, Shade::paper);
  pen.off("M102 20L98 13M107 19L107 12M112 20L116 13", weight::limb);
  pen.cross({139, 80}, 6);
  flag(pen, {76, 58}, 34);
  return pen.finished();
}

Drawing lime(const TreeForm&) {
  Pen pen;
  pen.ground();
  for (double x = 8; x < 46; x += 4) pen.solid(circle({x, 108}, 1));
  pen.lens({24, 110});
  lensGround(pen, 62);
  tippedSack(pen, {96, 30});
  for (const QPointF& at : {QPointF{82, 57},
                            QPointF{89, 58},
                            QPointF{96, 57},
                            QPointF{103, 58},
                            QPointF{110, 57},
                            QPointF{117, 58}})
    grain(pen, at);
  pen.sweep({74, 46}, {56, 70}, {82, 84}, 9);
  pen.off("M58 98L156 98", weight::limb);
  for (const QPointF& at : {QPointF{92, 76},
                            QPointF{104, 86},
                            QPointF{116, 74},
                            QPointF{128, 84},
                            QPointF{94, 91},
                            QPointF{140, 75},
                            QPointF{117, 92}})
    grain(pen, at);
  return pen.finished();
}

Drawing alleys(const TreeForm&) {
  Pen pen;
  pen.ground();
  pen.off("M6 111L6 84M46 111L46 84", weight::limb);
  for (double x = 14; x < 40; x += 4) pen.line({x, 111}, {x + 1.5, 104}, weight::twig);
  pen.lens({26, 106});
  lensGround(pen, 82);
  smallTree(pen, {69, 82}, 46, Part::off);
  smallTree(pen, {145, 82}, 46, Part::off);
  for (double x = 88; x < 130; x += 9) grassTuft(pen, {x, 81}, Part::kept);
  for (const QPointF& at : {QPointF{94, 40},
                            QPointF{104, 34},
                            QPointF{112, 42},
                            QPointF{120, 35},
                            QPointF{99, 50},
                            QPointF{116, 52}})
    grain(pen, at);
  pen.arrow({107, 40}, {107, 60});
  pen.dimension({83, 95}, {131, 95});
  return pen.finished();
}

}  // namespace

std::span<const NamedDrawing> drawingsOfTheSite() {
  static constexpr NamedDrawing drawn[] = {{"site-choice", siteChoice},
                                           {"soil-test", soilTest},
                                           {"nematode-sample", nematodeSample},
                                           {"drainage", drainage},
                                           {"cover-crop", coverCrop},
                                           {"deep-rip", deepRip},
                                           {"perennial-weeds", perennialWeeds},
                                           {"lime", lime},
                                           {"alleys", alleys}};
  return drawn;
}

}  // namespace topwire
