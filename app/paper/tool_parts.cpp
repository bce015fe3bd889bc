#include "app/paper/tool_parts.h"

#include "app/paper/plant_parts.h"

namespace topwire {

void magnifier(Pen& pen, QPointF centre, double radius) {
  pen.line(polar(centre, -45, radius), polar(centre, -45, radius * 2.2), weight::cut);
  pen.stroke(circle(centre, radius), weight::trunk);
}

void notebook(Pen& pen, QPointF corner, int lines) {
  QPainterPath sheet;
  sheet.addRoundedRect(QRectF{corner, QSizeF{34, 14.0 + lines * 9}}, 2, 2);
  pen.stroke(sheet, weight::trunk, Shade::paper);
  QPainterPath clip;
  clip.addRect(QRectF{corner + QPointF{11, -3}, QSizeF{12, 6}});
  pen.solid(clip);
  for (int i = 0; i < lines; ++i) {
    const QPointF from = corner + QPointF{6, 12.0 + i * 9};
    pen.line(from, from + QPointF{i + 1 < lines ? 22.0 : 10.0, 0}, weight::limb);
  }
  const QPointF tip = corner + QPointF{17, 12.0 + (lines - 1) * 9};
  pen.line(polar(tip, 48, 4), polar(tip, 48, 24), weight::cut);
  pen.line(tip, polar(tip, 48, 4), weight::limb);
}

void tally(Pen& pen, QPointF corner, double height) {
  for (int i = 0; i < 4; ++i) {
    const QPointF top = corner + QPointF{height * 0.3 * i, 0};
    pen.line(top, top + QPointF{0, height}, weight::trunk);
  }
  pen.line(corner + QPointF{-height * 0.25, height * 0.85},
           corner + QPointF{height * 1.15, height * 0.15},
           weight::trunk);
}

void bag(Pen& pen, QPointF corner, double width, double height) {
  QPainterPath path{corner};
  path.lineTo(corner + QPointF{width * 0.12, height});
  path.lineTo(corner + QPointF{width * 0.88, height});
  path.lineTo(corner + QPointF{width, 0});
  path.closeSubpath();
  pen.stroke(path, weight::trunk, Shade::paper);
  QPainterPath mouth;
  mouth.addEllipse(corner + QPointF{width / 2, 0}, width / 2, width * 0.13);
  pen.stroke(mouth, weight::limb, Shade::paper);
}

void tippedSack(Pen& pen, QPointF mouth) {
  QPainterPath sack{mouth + QPointF{0, -8}};
  sack.lineTo(mouth + QPointF{28, -16});
  sack.lineTo(mouth + QPointF{32, 0});
  sack.lineTo(mouth + QPointF{6, 6});
  sack.closeSubpath();
  pen.stroke(sack, weight::trunk, Shade::paper);
  for (const QPointF& fall :
       {QPointF{4, 11}, QPointF{10, 14}, QPointF{7, 20}, QPointF{14, 22}})
    grain(pen, mouth + fall);
}

void grain(Pen& pen, QPointF at) {
  pen.solid(circle(at, 1.9));
}

void dripHose(Pen& pen, double y, double dripperX) {
  QPainterPath hose;
  hose.addRect(50, y - 3, 120, 6);
  pen.stroke(hose, weight::limb, Shade::paper);
  QPainterPath dripper{QPointF{dripperX - 6, y + 1}};
  dripper.lineTo(dripperX + 6, y + 1);
  dripper.lineTo(dripperX + 4, y + 9);
  dripper.lineTo(dripperX - 4, y + 9);
  dripper.closeSubpath();
  pen.solid(dripper);
}

void label(Pen& pen, QPointF knot) {
  QPainterPath string{knot};
  string.quadTo(knot + QPointF{6, 1}, knot + QPointF{9, -5});
  pen.stroke(string, weight::limb);
  QPainterPath card{knot + QPointF{9, -15}};
  card.lineTo(knot + QPointF{32, -9});
  card.lineTo(knot + QPointF{28, 7});
  card.lineTo(knot + QPointF{5, 1});
  card.closeSubpath();
  pen.stroke(card, weight::trunk, Shade::paper);
}

void snowflake(Pen& pen, QPointF centre, double radius) {
  for (const double angle : {30.0, 90.0, 150.0})
    pen.line(polar(centre, angle, -radius), polar(centre, angle, radius), weight::limb);
}

void clothesPin(Pen& pen, QPointF jaws, Part part) {
  const auto at = [&](std::string_view shape) { return pathOf(shape).translated(jaws); };
  const QPainterPath upper = at("M0 -8L30 -6L58 -21L60 -15L32 1L0 0Z");
  const QPainterPath lower = at("M0 0L32 1L60 11L58 17L28 9L0 8Z");
  const QPainterPath spring = circle(jaws + QPointF{30, 0.5}, 4.6);
  if (part == Part::off) {
    pen.off(upper, weight::limb, Shade::paper);
    pen.off(lower, weight::limb, Shade::paper);
    pen.off(spring, weight::limb);
    return;
  }
  pen.stroke(upper, weight::trunk, Shade::paper);
  pen.stroke(lower, weight::trunk, Shade::paper);
  pen.stroke(spring, weight::trunk, Shade::ink);
}

void flag(Pen& pen, QPointF foot, double height) {
  const QPointF top = foot - QPointF{0, height};
  pen.line(foot, top, weight::limb);
  QPainterPath cloth{top};
  cloth.lineTo(top + QPointF{16, 6});
  cloth.lineTo(top + QPointF{0, 12});
  cloth.closeSubpath();
  pen.solid(cloth);
}

}  // namespace topwire
