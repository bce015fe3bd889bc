#include "app/paper/drawing.h"

#include <QPainter>

#include <algorithm>

namespace topwire {

namespace {

QColor colourOf(Shade shade, const QColor& ink, const QColor& paper) {
  return shade == Shade::ink ? ink : paper;
}

QPen penFor(const Stroke& stroke, const QColor& colour) {
  if (stroke.width <= 0) return QPen{Qt::NoPen};
  QPen pen{colour, stroke.width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
  if (stroke.dash > 0) {
    // Qt counts dashes in widths of the pen.
    pen.setDashPattern({stroke.dash / stroke.width, stroke.gap / stroke.width});
    pen.setCapStyle(Qt::FlatCap);
  }
  return pen;
}

QPainterPath ellipse(const QRectF& area) {
  QPainterPath path;
  path.addEllipse(area);
  return path;
}

void paintStroke(QPainter& painter,
                 const Stroke& stroke,
                 const QColor& ink,
                 const QColor& paper) {
  painter.setPen(penFor(stroke, colourOf(stroke.line, ink, paper)));
  painter.setBrush(stroke.fill == Shade::none
                       ? QBrush{Qt::NoBrush}
                       : QBrush{colourOf(stroke.fill, ink, paper)});
  painter.drawPath(stroke.path);
}

/// The widest rectangle of the drawing's shape in the middle of `area`.
QRectF fitted(const QRectF& area) {
  const double scale =
      std::min(area.width() / Drawing::width, area.height() / Drawing::height);
  QRectF fit{0, 0, Drawing::width * scale, Drawing::height * scale};
  fit.moveCenter(area.center());
  return fit;
}

}  // namespace

void paint(QPainter& painter,
           const Drawing& drawing,
           const QRectF& area,
           const QColor& ink,
           const QColor& paper) {
  const QRectF fit = fitted(area);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.translate(fit.topLeft());
  painter.scale(fit.width() / Drawing::width, fit.height() / Drawing::height);
  bool clipped = false;
  for (const Stroke& stroke : drawing.strokes) {
    if (stroke.inLens != clipped) {
      clipped = stroke.inLens;
      if (clipped) {
        painter.save();
        painter.setClipPath(ellipse(*drawing.lens), Qt::IntersectClip);
      } else {
        painter.restore();
      }
    }
    paintStroke(painter, stroke, ink, paper);
  }
  if (clipped) painter.restore();
  painter.restore();
}

}  // namespace topwire
