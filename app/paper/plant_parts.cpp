#include "app/paper/plant_parts.h"

#include <array>

namespace topwire {

namespace {

constexpr double lensLeft = 55;
constexpr double lensRight = 160;

double angleOf(QPointF from, QPointF to) {
  return QLineF{from, to}.angle();
}

}  // namespace

void shoot(Pen& pen, const Cubic& along, Part part, int leaves, double leafSize) {
  for (int i = 0; i < leaves; ++i) {
    const double t = 0.3 + 0.6 * i / leaves;
    const double course = angleOf(along.at(t), along.at(t + 0.05));
    pen.leaf(along.at(t), course + (i % 2 == 0 ? 55 : -55), leafSize, part);
  }
  pen.leaf(along.end, angleOf(along.at(0.9), along.end), leafSize, part);
  QPainterPath stem{along.start};
  stem.cubicTo(along.towards, along.from, along.end);
  if (part == Part::kept)
    pen.stroke(stem, weight::trunk);
  else
    pen.off(stem, weight::trunk);
}

void flower(Pen& pen, QPointF centre, double radius, Part part) {
  QPainterPath petals;
  for (int petal = 0; petal < 5; ++petal)
    petals = petals.united(
        circle(polar(centre, 90 + petal * 72.0, radius * 0.58), radius * 0.42));
  if (part == Part::kept)
    pen.stroke(petals, weight::limb, Shade::paper);
  else
    pen.off(petals, weight::limb, Shade::paper);
  pen.solid(circle(centre, radius * 0.2));
}

void apple(Pen& pen, QPointF stalk, double radius, Part part) {
  const QPointF top = stalk + QPointF{0, radius * 0.55};
  QPainterPath body{top};
  const auto side = [&](double s) {
    body.cubicTo(top + QPointF{s * radius * 0.5, -radius * 0.4},
                 top + QPointF{s * radius * 1.15, -radius * 0.1},
                 top + QPointF{s * radius, radius * 0.85});
    body.cubicTo(top + QPointF{s * radius * 0.9, radius * 1.5},
                 top + QPointF{s * radius * 0.45, radius * 1.85},
                 top + QPointF{0, radius * 1.65});
  };
  side(1);
  body.moveTo(top);
  side(-1);
  if (part == Part::kept) {
    pen.stroke(body, weight::limb, Shade::paper);
    pen.line(stalk, top, weight::limb);
  } else {
    pen.off(body, weight::limb, Shade::paper);
    QPainterPath stem{stalk};
    stem.lineTo(top);
    pen.off(stem, weight::limb);
  }
}

void lensTrunk(Pen& pen, double base, double tip) {
  pen.wood({{107, 124}, {107.8, 85}, {106.4, 45}, {107, -2}}, base, tip, weight::trunk);
}

void lensGround(Pen& pen, double y) {
  pen.line({lensLeft, y}, {lensRight, y}, 2.4);
}

void grassTuft(Pen& pen, QPointF foot, Part part) {
  constexpr std::array<double, 5> lean{-9, -5, 0, 5, 9};
  for (const double x : lean) {
    const double rise = 17 - std::abs(x);
    QPainterPath blade{foot + QPointF{x * 0.3, 0}};
    blade.quadTo(foot + QPointF{x * 0.5, -rise * 0.6}, foot + QPointF{x, -rise});
    if (part == Part::kept)
      pen.stroke(blade, weight::limb);
    else
      pen.off(blade, weight::limb);
  }
}

void roots(Pen& pen, QPointF foot, double reach) {
  for (const double side : {-1.0, 1.0}) {
    const auto root = [&](double x, double y, double width) {
      const QPointF end = foot + QPointF{side * reach * x, reach * y};
      pen.wood({foot + QPointF{side * 3, -2},
                foot + QPointF{side * reach * x * 0.3, reach * y * 0.3},
                foot + QPointF{side * reach * x * 0.7, reach * y * 0.6},
                end},
               width,
               1.2,
               weight::twig);
    };
    root(0.35, 0.75, 4);
    root(0.75, 0.55, 4.5);
    root(1, 0.22, 5);
  }
}

void drop(Pen& pen, QPointF tip, double size) {
  QPainterPath path{tip};
  path.cubicTo(tip + QPointF{size * 0.2, size * 0.5},
               tip + QPointF{size * 0.55, size * 0.7},
               tip + QPointF{size * 0.5, size * 1.1});
  path.cubicTo(tip + QPointF{size * 0.45, size * 1.6},
               tip + QPointF{-size * 0.45, size * 1.6},
               tip + QPointF{-size * 0.5, size * 1.1});
  path.cubicTo(tip + QPointF{-size * 0.55, size * 0.7},
               tip + QPointF{-size * 0.2, size * 0.5},
               tip);
  pen.solid(path);
}

void soil(Pen& pen, double top, double clearFrom, double clearTo) {
  constexpr double dash = 6;
  for (int line = 0; top + 9 + line * 11 < 112; ++line)
    for (int i = 0; i < 5; ++i) {
      const QPointF left{62.0 + (line % 2) * 9 + i * 18, top + 9 + line * 11};
      if (left.x() + dash < clearFrom || left.x() > clearTo)
        pen.line(left, left + QPointF{dash, 0}, weight::twig);
    }
}

void standingTrunk(Pen& pen, QPointF foot, double base, double tip) {
  lensGround(pen, foot.y());
  const double x = foot.x();
  pen.wood({foot, {x + 0.4, foot.y() * 0.7}, {x - 0.4, foot.y() * 0.35}, {x, -2}},
           base,
           tip,
           weight::trunk);
  QPainterPath buried{foot + QPointF{-base / 2 + 1.3, 0}};
  buried.lineTo(foot + QPointF{base / 2 - 1.3, 0});
  pen.erase(buried, 4);
}

void graftedTrunk(Pen& pen, double foot) {
  QPainterPath outline{QPointF{101, foot}};
  outline.lineTo(101, 60);
  outline.connectPath(
      pathOf("M101 60Q97 54 98.5 47Q99.5 41 101 34L101 -2L114 -2L114 36"
             "Q117 42 116 49Q115 56 113 62"));
  outline.lineTo(113, foot);
  pen.stroke(outline, weight::trunk, Shade::paper);
  pen.stroke("M98.5 51Q107 44 116 46", weight::trunk);
}

void nurseryTree(Pen& pen, QPointF foot, double lean) {
  roots(pen, foot, 16);
  for (const double side : {-1.0, 1.0})
    for (const double up : {34.0, 46.0}) {
      const QPointF from = foot + QPointF{lean * up / 80, -up - (side > 0 ? 5 : 0)};
      QPainterPath feather{from};
      feather.quadTo(from + QPointF{side * 6, -5}, from + QPointF{side * 13, -12});
      pen.stroke(feather, weight::limb);
    }
  pen.wood({foot,
            foot + QPointF{lean * 0.2, -25},
            foot + QPointF{lean * 0.6, -50},
            foot + QPointF{lean, -78}},
           6,
           2.4,
           weight::limb);
}

void smallTree(Pen& pen, QPointF foot, double height, Part part) {
  QPainterPath path{foot};
  path.lineTo(foot - QPointF{0, height});
  for (int tier = 0; tier < 3; ++tier)
    for (const double side : {-1.0, 1.0}) {
      const QPointF from = foot - QPointF{0, height * (0.3 + 0.2 * tier)};
      path.moveTo(from);
      path.quadTo(from + QPointF{side * height * 0.12, -height * 0.1},
                  from + QPointF{side * height * (0.28 - 0.06 * tier), -height * 0.08});
    }
  if (part == Part::kept)
    pen.stroke(path, weight::trunk);
  else
    pen.off(path, weight::limb);
}

void spur(Pen& pen, QPointF foot, double height) {
  pen.leaf(foot + QPointF{2, -height}, 8, 24);
  pen.leaf(foot + QPointF{-2, -height}, 172, 24);
  pen.wood(upright(foot, foot - QPointF{0, height}), 8, 7, weight::limb);
}

void flowerCluster(Pen& pen, QPointF bud, double size, double angle, Part part) {
  for (const double turn : {42.0, -42.0, 0.0}) {
    const QPointF head = polar(bud, angle + turn, size);
    QPainterPath stalk{bud};
    stalk.quadTo(polar(bud, angle, size * 0.4),
                 polar(head, angle + turn + 180, size * 0.3));
    if (part == Part::kept)
      pen.stroke(stalk, weight::limb);
    else
      pen.off(stalk, weight::limb);
    flower(pen, head, size * 0.36, part);
  }
}

}  // namespace topwire
