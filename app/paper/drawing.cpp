#include "app/paper/drawing.h"

#include <QPainter>

#include <algorithm>
#include <array>

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

QString number(double value) {
  return QString::number(value, 'f', 1);
}

QString point(const QPainterPath::Element& element) {
  return number(element.x) + u' ' + number(element.y);
}

QString svgPath(const QPainterPath& path) {
  QString text;
  for (int i = 0; i < path.elementCount(); ++i) {
    const QPainterPath::Element element = path.elementAt(i);
    switch (element.type) {
      case QPainterPath::MoveToElement:
        text += u'M' + point(element);
        break;
      case QPainterPath::LineToElement:
        text += u'L' + point(element);
        break;
      case QPainterPath::CurveToElement:
        text += u'C' + point(element);
        break;
      case QPainterPath::CurveToDataElement:
        text += u' ' + point(element);
        break;
    }
  }
  return text;
}

QString svgColour(Shade shade, const QColor& ink, const QColor& paper) {
  return shade == Shade::none ? QStringLiteral("none")
                              : colourOf(shade, ink, paper).name();
}

QString svgElement(const Stroke& stroke, const QColor& ink, const QColor& paper) {
  QString text = QStringLiteral("<path d=\"%1\" fill=\"%2\"")
                     .arg(svgPath(stroke.path), svgColour(stroke.fill, ink, paper));
  if (stroke.width > 0)
    text += QStringLiteral(" stroke=\"%1\" stroke-width=\"%2\"")
                .arg(svgColour(stroke.line, ink, paper), number(stroke.width));
  if (stroke.dash > 0)
    text += QStringLiteral(" stroke-dasharray=\"%1 %2\" stroke-linecap=\"butt\"")
                .arg(number(stroke.dash), number(stroke.gap));
  if (stroke.inLens) text += QStringLiteral(" clip-path=\"url(#lens)\"");
  return text + QStringLiteral("/>\n");
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

QString toSvg(const Drawing& drawing, const QColor& ink, const QColor& paper) {
  QString text = QStringLiteral(
                     "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %1 %2\" "
                     "stroke-linecap=\"round\" stroke-linejoin=\"round\">\n")
                     .arg(Drawing::width)
                     .arg(Drawing::height);
  if (drawing.lens)
    text += QStringLiteral("<clipPath id=\"lens\"><path d=\"%1\"/></clipPath>\n")
                .arg(svgPath(ellipse(*drawing.lens)));
  for (const Stroke& stroke : drawing.strokes) text += svgElement(stroke, ink, paper);
  return text + QStringLiteral("</svg>\n");
}

}  // namespace topwire
