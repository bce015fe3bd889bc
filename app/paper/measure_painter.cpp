#include "app/paper/measure_chart.h"

#include <QPainter>

namespace topwire {

namespace {

class MeasurePainter {
public:
  MeasurePainter(QPainter& painter, const HeatType& type, const HeatColours& colours)
      : painter_(painter), type_(type), colours_(colours) {}

  void paint(const MeasureChart& chart) {
    painter_.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    for (const MeasurePanel& panel : chart.panels) paintPanel(panel);
    for (const MeasureKey& key : chart.keys) paintKey(key);
    for (const ChartWords& words : chart.words) paintWords(words);
  }

private:
  double px(double count) const { return count * type_.unit; }

  QPen pen(const QColor& colour, double width, QVector<qreal> dashes = {}) const {
    QPen made{colour, px(width), Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin};
    if (!dashes.empty()) made.setDashPattern(dashes);
    return made;
  }

  void paintPanel(const MeasurePanel& panel) {
    if (panel.isBand)
      for (const QPolygonF& band : panel.wanted) paintBand(band);
    painter_.setPen(pen(colours_.hairline, 1));
    for (const QLineF& line : panel.grid) painter_.drawLine(line);
    painter_.setPen(pen(colours_.hairline, 1, {2, 3}));
    for (const QLineF& line : panel.seasons) painter_.drawLine(line);
    painter_.setPen(pen(colours_.outline, 1));
    painter_.drawLine(panel.plot.bottomLeft(), panel.plot.bottomRight());
    if (!panel.isBand) {
      painter_.setPen(wantedPen());
      for (const QPolygonF& line : panel.wanted) painter_.drawPolyline(line);
    }
    if (panel.today) {
      painter_.setPen(pen(colours_.text, 2));
      painter_.drawLine(*panel.today);
    }
    paintMeasured(panel.measured);
    for (const ChartWords& words : panel.words) {
      // No line runs through a figure.
      if (words.font == ChartFont::smallStrong)
        painter_.fillRect(words.box, colours_.ground);
      paintWords(words);
    }
  }

  QPen wantedPen() const { return pen(colours_.muted, 1.6, {4, 2.5}); }

  void paintBand(const QPolygonF& band) {
    painter_.setPen(pen(colours_.bandEdge, 1));
    painter_.setBrush(colours_.eightInTen);
    painter_.drawPolygon(band);
    painter_.setBrush(Qt::NoBrush);
  }

  void paintMeasured(const QPolygonF& points) {
    painter_.setPen(pen(colours_.text, 2));
    painter_.drawPolyline(points);
    for (const QPointF& point : points) paintDot(point);
  }

  /// With the ground around it, so that it stands out from the lines it lies on.
  void paintDot(QPointF at) {
    painter_.setPen(pen(colours_.ground, 1.5));
    painter_.setBrush(colours_.text);
    painter_.drawEllipse(at, px(4.5), px(4.5));
    painter_.setBrush(Qt::NoBrush);
  }

  void paintKey(const MeasureKey& key) {
    const double middle = key.sample.center().y();
    const QLineF line{key.sample.left(), middle, key.sample.right(), middle};
    switch (key.kind) {
      case MeasureKey::Kind::measured:
        painter_.setPen(pen(colours_.text, 2));
        painter_.drawLine(line);
        return paintDot(key.sample.center());
      case MeasureKey::Kind::wanted:
        painter_.setPen(wantedPen());
        return painter_.drawLine(line);
      case MeasureKey::Kind::wantedBand:
        return paintBand(
            QRectF{key.sample.left(), middle - px(5), key.sample.width(), px(10)});
    }
  }

  void paintWords(const ChartWords& words) {
    QFont font = type_.small;
    font.setBold(words.font == ChartFont::smallStrong);
    painter_.setFont(font);
    painter_.setPen(words.ink == ChartInk::muted ? colours_.muted : colours_.text);
    painter_.drawText(
        words.box, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, words.text);
  }

  QPainter& painter_;
  const HeatType& type_;
  const HeatColours& colours_;
};

}  // namespace

void paint(QPainter& painter,
           const MeasureChart& chart,
           const HeatType& type,
           const HeatColours& colours) {
  MeasurePainter{painter, type, colours}.paint(chart);
}

}  // namespace topwire
