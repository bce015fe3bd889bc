#include "app/paper/pen.h"

#include "core/base/contract.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <numbers>

namespace topwire {

namespace {

double radians(double degrees) {
  return degrees * std::numbers::pi / 180;
}

double lengthOf(QPointF vector) {
  return std::hypot(vector.x(), vector.y());
}

QPointF unit(QPointF vector) {
  const double length = lengthOf(vector);
  return length > 0 ? vector / length : QPointF{1, 0};
}

double takeNumber(std::string_view& text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == ','))
    text.remove_prefix(1);
  double value = 0;
  const auto [end, fault] =
      std::from_chars(text.data(), text.data() + text.size(), value);
  TOPWIRE_REQUIRE(fault == std::errc{});
  text.remove_prefix(static_cast<std::size_t>(end - text.data()));
  return value;
}

QPointF takePoint(std::string_view& text) {
  const double x = takeNumber(text);
  return {x, takeNumber(text)};
}

void addPiece(QPainterPath& path, char piece, std::string_view& text) {
  switch (piece) {
    case 'M':
      return path.moveTo(takePoint(text));
    case 'L':
      return path.lineTo(takePoint(text));
    case 'Q': {
      const QPointF handle = takePoint(text);
      return path.quadTo(handle, takePoint(text));
    }
    case 'C': {
      const QPointF towards = takePoint(text);
      const QPointF from = takePoint(text);
      return path.cubicTo(towards, from, takePoint(text));
    }
    default:
      TOPWIRE_REQUIRE(piece == 'Z');
      path.closeSubpath();
  }
}

/// An almond of that length with its base in the origin, lying to the right.
QPainterPath almond(double length, double bulge) {
  QPainterPath path;
  path.quadTo(length * 0.45, -bulge, length, 0);
  path.quadTo(length * 0.45, bulge, 0, 0);
  path.closeSubpath();
  return path;
}

QPainterPath placed(const QPainterPath& path, QPointF at, double angle) {
  QTransform transform;
  transform.translate(at.x(), at.y());
  transform.rotate(-angle);
  return transform.map(path);
}

}  // namespace

QPainterPath pathOf(std::string_view text) {
  QPainterPath path;
  while (!text.empty()) {
    const char piece = text.front();
    text.remove_prefix(1);
    addPiece(path, piece, text);
  }
  return path;
}

QPointF polar(QPointF from, double angle, double distance) {
  return from
         + QPointF{std::cos(radians(angle)) * distance,
                   -std::sin(radians(angle)) * distance};
}

QPainterPath circle(QPointF centre, double radius) {
  QPainterPath path;
  path.addEllipse(centre, radius, radius);
  return path;
}

Stroke& Pen::add(const QPainterPath& path, double width) {
  Stroke stroke;
  stroke.path = path;
  stroke.width = width;
  stroke.inLens = drawing_.lens.has_value();
  return drawing_.strokes.emplace_back(std::move(stroke));
}

void Pen::line(QPointF from, QPointF to, double width) {
  QPainterPath path{from};
  path.lineTo(to);
  add(path, width);
}

void Pen::stroke(const QPainterPath& path, double width, Shade fill) {
  add(path, width).fill = fill;
}

void Pen::stroke(std::string_view path, double width, Shade fill) {
  stroke(pathOf(path), width, fill);
}

void Pen::off(const QPainterPath& path, double width, Shade fill) {
  Stroke& stroke = add(path, width);
  stroke.fill = fill;
  stroke.dash = 3.2;
  stroke.gap = 2.6;
}

void Pen::off(std::string_view path, double width, Shade fill) {
  off(pathOf(path), width, fill);
}

void Pen::solid(const QPainterPath& path) {
  add(path, 0.6).fill = Shade::ink;
}

void Pen::solid(std::string_view path) {
  solid(pathOf(path));
}

void Pen::blank(std::string_view path) {
  add(pathOf(path), 0).fill = Shade::paper;
}

void Pen::erase(const QPainterPath& path, double width) {
  add(path, width).line = Shade::paper;
}

void Pen::erase(std::string_view path, double width) {
  erase(pathOf(path), width);
}

void Pen::wood(const Cubic& along, double base, double tip, double line, Wood how) {
  constexpr int steps = 16;
  QPainterPath outline;
  const auto edge = [&](int step, double side) {
    const double t = static_cast<double>(step) / steps;
    return along.at(t) + along.sideways(t) * (side * (base + (tip - base) * t) / 2);
  };
  outline.moveTo(edge(0, 1));
  for (int step = 1; step <= steps; ++step) outline.lineTo(edge(step, 1));
  for (int step = steps; step >= 0; --step) outline.lineTo(edge(step, -1));
  if (how == Wood::closed) outline.closeSubpath();
  if (how == Wood::off)
    off(outline, line);
  else
    stroke(outline, line, Shade::paper);
}

void Pen::bud(QPointF base, double angle, double size, Part part) {
  const QPainterPath shape = placed(almond(size, size * 0.42), base, angle);
  if (part == Part::kept) return stroke(shape, weight::twig, Shade::ink);
  Stroke& stroke = add(shape, weight::limb);
  stroke.fill = Shade::paper;
  stroke.dash = 1.8;
  stroke.gap = 1.6;
}

void Pen::leaf(QPointF base, double angle, double size, Part part) {
  const QPainterPath shape = placed(almond(size, size * 0.5), base, angle);
  if (part == Part::off) {
    Stroke& stroke = add(shape, weight::limb);
    stroke.fill = Shade::paper;
    stroke.dash = 2.2;
    stroke.gap = 1.9;
    return;
  }
  stroke(shape, weight::limb, Shade::paper);
  line(polar(base, angle, size * 0.12), polar(base, angle, size * 0.72), weight::wire);
}

void Pen::cross(QPointF centre, double arm) {
  line(centre + QPointF{-arm, -arm}, centre + QPointF{arm, arm}, 2.6);
  line(centre + QPointF{-arm, arm}, centre + QPointF{arm, -arm}, 2.6);
}

void Pen::tick(QPointF centre, double size) {
  QPainterPath path{centre + QPointF{-size * 0.7, 0}};
  path.lineTo(centre + QPointF{-size * 0.15, size * 0.6});
  path.lineTo(centre + QPointF{size * 0.85, -size * 0.75});
  stroke(path, weight::cut);
}

void Pen::cut(QPointF centre, double angle, double half) {
  line(polar(centre, angle, -half), polar(centre, angle, half), weight::cut);
}

void Pen::arrowHead(QPointF tip, QPointF direction, double length) {
  const QPointF along = unit(direction);
  const QPointF across{-along.y(), along.x()};
  QPainterPath head{tip};
  head.lineTo(tip - along * length * 0.9 + across * length * 0.43);
  head.lineTo(tip - along * length * 0.9 - across * length * 0.43);
  head.closeSubpath();
  solid(head);
}

void Pen::arrow(QPointF from, QPointF to, double width, double head) {
  line(from, to - unit(to - from) * head * 0.6, width);
  arrowHead(to, to - from, head);
}

void Pen::sweep(QPointF from, QPointF bend, QPointF to, double head) {
  const QPointF along = unit(to - bend);
  QPainterPath path{from};
  path.quadTo(bend, to - along * head * 0.6);
  stroke(path, 2.4);
  arrowHead(to, along, head);
}

void Pen::dimension(QPointF from, QPointF to) {
  const QPointF along = unit(to - from);
  const QPointF tick = QPointF{-along.y(), along.x()} * 5;
  line(from - tick, from + tick, weight::limb);
  line(to - tick, to + tick, weight::limb);
  line(from + along * 3, to - along * 3, weight::limb);
  arrowHead(from + along * 0.8, from - to, 5.4);
  arrowHead(to - along * 0.8, to - from, 5.4);
}

void Pen::loopBehind(QPointF centre, double reach) {
  QPainterPath half{centre + QPointF{-reach, 0}};
  half.cubicTo(centre + QPointF{-reach, -15},
               centre + QPointF{reach * 0.7, -15},
               centre + QPointF{reach * 0.96, -3});
  add(half, weight::tie);
}

void Pen::loopInFront(QPointF centre, double reach) {
  QPainterPath half{centre + QPointF{-reach, 0}};
  half.cubicTo(centre + QPointF{-reach, 15},
               centre + QPointF{reach * 0.7, 15},
               centre + QPointF{reach * 0.96, 3});
  const QPointF eye = centre + QPointF{reach * 1.44, 0};
  half.cubicTo(eye + QPointF{-6, -5}, eye + QPointF{-4, -6.5}, eye + QPointF{0, -6.5});
  half.cubicTo(eye + QPointF{8, -6.5}, eye + QPointF{8, 6.5}, eye + QPointF{0, 6.5});
  half.cubicTo(
      eye + QPointF{-4, 6.5}, eye + QPointF{-6, 5}, centre + QPointF{reach * 0.96, -3});
  add(half, weight::tie);
}

}  // namespace topwire
