#include "app/paper/drawing.h"

namespace topwire {

namespace {

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
  if (shade == Shade::none) return QStringLiteral("none");
  return (shade == Shade::ink ? ink : paper).name();
}

QString svgElement(const Stroke& stroke,
                   const QColor& ink,
                   const QColor& paper,
                   const QString& clip) {
  QString text = QStringLiteral("<path d=\"%1\" fill=\"%2\"")
                     .arg(svgPath(stroke.path), svgColour(stroke.fill, ink, paper));
  if (stroke.width > 0)
    text += QStringLiteral(" stroke=\"%1\" stroke-width=\"%2\"")
                .arg(svgColour(stroke.line, ink, paper), number(stroke.width));
  if (stroke.dash > 0)
    text += QStringLiteral(" stroke-dasharray=\"%1 %2\" stroke-linecap=\"butt\"")
                .arg(number(stroke.dash), number(stroke.gap));
  if (stroke.inLens) text += QStringLiteral(" clip-path=\"url(#%1)\"").arg(clip);
  return text + QStringLiteral("/>\n");
}

QString svgBody(const Drawing& drawing,
                const QColor& ink,
                const QColor& paper,
                const QString& clip) {
  QString text;
  if (drawing.lens) {
    QPainterPath round;
    round.addEllipse(*drawing.lens);
    text += QStringLiteral("<clipPath id=\"%1\"><path d=\"%2\"/></clipPath>\n")
                .arg(clip, svgPath(round));
  }
  for (const Stroke& stroke : drawing.strokes)
    text += svgElement(stroke, ink, paper, clip);
  return text;
}

QString openingTag(const QString& attributes) {
  return QStringLiteral(
             "<svg xmlns=\"http://www.w3.org/2000/svg\" %1viewBox=\"0 0 %2 %3\" "
             "stroke-linecap=\"round\" stroke-linejoin=\"round\">\n")
      .arg(attributes)
      .arg(Drawing::width)
      .arg(Drawing::height);
}

}  // namespace

QString toSvg(const Drawing& drawing, const QColor& ink, const QColor& paper) {
  return openingTag({}) + svgBody(drawing, ink, paper, QStringLiteral("lens"))
         + QStringLiteral("</svg>\n");
}

QString toSvgElement(const Drawing& drawing,
                     const QColor& ink,
                     const QColor& paper,
                     const QRectF& area,
                     const QString& id) {
  const QString place =
      QStringLiteral("id=\"%1\" x=\"%2\" y=\"%3\" width=\"%4\" height=\"%5\" ")
          .arg(id,
               number(area.x()),
               number(area.y()),
               number(area.width()),
               number(area.height()));
  return openingTag(place) + svgBody(drawing, ink, paper, id + QStringLiteral("-lens"))
         + QStringLiteral("</svg>\n");
}

}  // namespace topwire
