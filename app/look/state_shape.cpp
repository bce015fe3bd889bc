#include "app/look/state_shape.h"

#include "app/look/tokens.h"

#include <cmath>

namespace topwire {

namespace {

constexpr double grid = 16;

QPen stroke(const QColor& colour, double width) {
  return QPen{colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin};
}

void paintLate(QPainter& painter, const QColor& mark, const QColor& paper) {
  painter.setBrush(mark);
  painter.drawPolygon(QPolygonF{{8, 0.2}, {15.8, 8}, {8, 15.8}, {0.2, 8}});
  painter.setPen(stroke(paper, 2));
  painter.drawLine(QPointF{8, 4}, QPointF{8, 9});
  painter.setPen(Qt::NoPen);
  painter.setBrush(paper);
  painter.drawEllipse(QPointF{8, 11.4}, 1.2, 1.2);
}

void paintLapsed(QPainter& painter, const QColor& mark, const QColor& paper) {
  painter.setBrush(paper);
  painter.setPen(stroke(mark, 2));
  painter.drawRect(QRectF{1.6, 1.6, 12.8, 12.8});
  painter.setPen(stroke(mark, 2.2));
  painter.drawLine(QPointF{4.6, 4.6}, QPointF{11.4, 11.4});
  painter.drawLine(QPointF{11.4, 4.6}, QPointF{4.6, 11.4});
}

void paintDone(QPainter& painter, const QColor& mark, const QColor& paper) {
  painter.setBrush(mark);
  painter.drawRoundedRect(QRectF{0.6, 0.6, 14.8, 14.8}, 2, 2);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(stroke(paper, 2.3));
  painter.drawPolyline(QPolygonF{{3.8, 8.4}, {6.8, 11.4}, {12.4, 4.8}});
}

void paintSetAside(QPainter& painter, const QColor& mark) {
  painter.setPen(stroke(mark, 2));
  painter.drawRoundedRect(QRectF{1.6, 1.6, 12.8, 12.8}, 1, 1);
  painter.setPen(stroke(mark, 2.2));
  painter.drawLine(QPointF{4.6, 8}, QPointF{11.4, 8});
}

void paintOnGrid(QPainter& painter, TaskState state) {
  const QColor mark = stateColours(currentTheme(), state).mark;
  const QColor paper = baseColours(currentTheme()).raised;
  switch (state) {
    case TaskState::waiting:
      painter.setPen(stroke(mark, 2.2));
      painter.drawEllipse(QPointF{8, 8}, 5.6, 5.6);
      return;
    case TaskState::open:
      painter.setBrush(mark);
      painter.drawEllipse(QPointF{8, 8}, 6.6, 6.6);
      return;
    case TaskState::closing:
      painter.setBrush(mark);
      painter.drawPolygon(QPolygonF{{8, 1.2}, {15.4, 14.4}, {0.6, 14.4}});
      return;
    case TaskState::late:
      return paintLate(painter, mark, paper);
    case TaskState::lapsed:
      return paintLapsed(painter, mark, paper);
    case TaskState::done:
      return paintDone(painter, mark, paper);
    case TaskState::setAside:
      return paintSetAside(painter, mark);
  }
}

/// Lines of a hatch: how far apart they stand, measured across them, how wide they are,
/// and which way they lean.
struct Hatch {
  enum class Lean { rising, falling, upright, flat } lean;
  double pitch;
  double width;
};

std::optional<Hatch> hatchOf(TaskState state) {
  switch (state) {
    case TaskState::closing:
      return Hatch{Hatch::Lean::rising, 11, 4};
    case TaskState::late:
      return Hatch{Hatch::Lean::falling, 7, 3};
    case TaskState::lapsed:
      return Hatch{Hatch::Lean::upright, 5, 2};
    case TaskState::setAside:
      return Hatch{Hatch::Lean::flat, 5, 2};
    case TaskState::waiting:
    case TaskState::open:
    case TaskState::done:
      return std::nullopt;
  }
  return std::nullopt;
}

double onPitch(double from, double pitch) {
  return std::floor(from / pitch) * pitch;
}

void drawStraight(QPainter& painter, const QRectF& box, const Hatch& hatch) {
  if (hatch.lean == Hatch::Lean::flat) {
    for (double y = onPitch(box.top(), hatch.pitch); y <= box.bottom(); y += hatch.pitch)
      painter.drawLine(QPointF{box.left(), y}, QPointF{box.right(), y});
    return;
  }
  for (double x = onPitch(box.left(), hatch.pitch); x <= box.right(); x += hatch.pitch)
    painter.drawLine(QPointF{x, box.top()}, QPointF{x, box.bottom()});
}

void drawLeaning(QPainter& painter, const QRectF& box, const Hatch& hatch) {
  const double step = hatch.pitch * std::sqrt(2.0);
  const double height = box.height() + 2 * hatch.width;
  const double top = box.top() - hatch.width;
  const bool rising = hatch.lean == Hatch::Lean::rising;
  for (double x = onPitch(box.left() - height, step); x <= box.right() + height;
       x += step)
    painter.drawLine(QPointF{rising ? x + height : x, top},
                     QPointF{rising ? x : x + height, top + height});
}

}  // namespace

void paintShape(QPainter& painter, const QRectF& where, TaskState state) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.translate(where.topLeft());
  painter.scale(where.width() / grid, where.height() / grid);
  painter.setPen(Qt::NoPen);
  painter.setBrush(Qt::NoBrush);
  paintOnGrid(painter, state);
  painter.restore();
}

void paintStateFill(QPainter& painter, const QPainterPath& area, TaskState state) {
  const StateColours& colours = stateColours(currentTheme(), state);
  painter.fillPath(area, colours.tint);
  const auto hatch = hatchOf(state);
  if (!hatch) return;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setClipPath(area, Qt::IntersectClip);
  painter.setPen(stroke(colours.hatch, hatch->width));
  const bool leans =
      hatch->lean == Hatch::Lean::rising || hatch->lean == Hatch::Lean::falling;
  if (leans)
    drawLeaning(painter, area.boundingRect(), *hatch);
  else
    drawStraight(painter, area.boundingRect(), *hatch);
  painter.restore();
}

QPen edgePen(TaskState state, double width) {
  QPen pen{stateColours(currentTheme(), state).mark, width};
  if (state == TaskState::waiting) pen.setDashPattern({3, 2});
  pen.setCapStyle(Qt::FlatCap);
  return pen;
}

}  // namespace topwire
