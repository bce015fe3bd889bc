#include "app/paper/heat_chart.h"

#include <QPainter>
#include <QPainterPath>

namespace topwire {

namespace {

class ChartPainter {
public:
  ChartPainter(QPainter& painter,
               const HeatChart& chart,
               const HeatType& type,
               const HeatColours& colours)
      : painter_(painter), chart_(chart), type_(type), colours_(colours) {}

  void paint() {
    painter_.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    paintCurves();
    paintToday();
    paintPoints();
    paintRows();
    for (const QRectF& box : chart_.clearings) painter_.fillRect(box, colours_.ground);
    paintLeaders();
    paintLegend();
    paintTag();
    for (const ChartWords& words : chart_.words) paintWords(words);
  }

private:
  double px(double count) const { return count * type_.unit; }

  QPen pen(const QColor& colour, double width, QVector<qreal> dashes = {}) const {
    QPen made{colour, px(width), Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin};
    if (!dashes.empty()) made.setDashPattern(dashes);
    return made;
  }

  QPen penOf(HeatKey key) const {
    switch (key) {
      case HeatKey::measured:
        return pen(colours_.text, 3);
      case HeatKey::forecast:
        return pen(colours_.text, 3, {2.4, 1.4});
      case HeatKey::likely:
        return pen(colours_.text, 2, {1, 2});
      case HeatKey::middle:
      case HeatKey::half:
      case HeatKey::eightInTen:
        break;
    }
    return pen(colours_.outline, 1);
  }

  void paintBand(const QPolygonF& band, const QColor& fill) {
    if (band.isEmpty()) return;
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(fill);
    painter_.drawPolygon(band);
    painter_.setBrush(Qt::NoBrush);
  }

  void paintCurves() {
    painter_.save();
    painter_.setClipRect(chart_.plot.adjusted(-px(2), 0, px(2), px(2)));
    paintBand(chart_.eightInTen, colours_.eightInTen);
    painter_.setPen(pen(colours_.bandEdge, 1));
    painter_.drawPolygon(chart_.eightInTen);
    paintBand(chart_.half, colours_.half);
    painter_.restore();
    painter_.setPen(pen(colours_.hairline, 1));
    for (const QLineF& line : chart_.grid) painter_.drawLine(line);
    painter_.setPen(pen(colours_.outline, 1));
    for (const QLineF& line : chart_.ticks) painter_.drawLine(line);
    painter_.drawLine(chart_.plot.bottomLeft(), chart_.plot.bottomRight());
    for (const StagePoint& point : chart_.points) {
      painter_.setPen(pen(colours_.muted, 1, {2, 3}));
      painter_.drawLine(point.drop);
    }
    painter_.save();
    painter_.setClipRect(chart_.plot.adjusted(-px(2), 0, px(2), px(2)));
    paintLine(HeatKey::middle, chart_.middle);
    paintLine(HeatKey::likely, chart_.likely);
    paintLine(HeatKey::forecast, chart_.forecast);
    paintLine(HeatKey::measured, chart_.measured);
    painter_.restore();
  }

  void paintLine(HeatKey key, const QPolygonF& points) {
    painter_.setPen(penOf(key));
    painter_.drawPolyline(points);
  }

  void paintToday() {
    if (!chart_.today) return;
    painter_.setPen(pen(colours_.text, 2));
    painter_.drawLine(*chart_.today);
  }

  void paintPoints() {
    for (const StagePoint& point : chart_.points)
      paintDiamond(painter_, point.at, px(6), point.seen, colours_);
  }

  void paintLeaders() {
    painter_.setPen(pen(colours_.muted, 1));
    for (const StagePoint& point : chart_.points)
      if (point.leader) painter_.drawLine(*point.leader);
  }

  void paintRows() {
    for (const StageSpan& row : chart_.spans) {
      painter_.setPen(pen(colours_.muted, 1.6));
      if (!row.seen) paintWhisker(row.whisker);
      paintDiamond(painter_, row.at, px(5), row.seen, colours_);
    }
  }

  void paintWhisker(const QLineF& whisker) {
    const QPointF end{0, px(4)};
    painter_.drawLine(whisker);
    painter_.drawLine(whisker.p1() - end, whisker.p1() + end);
    painter_.drawLine(whisker.p2() - end, whisker.p2() + end);
  }

  void paintLegend() {
    for (const LegendKey& key : chart_.legend) {
      const double middle = key.box.center().y();
      if (key.key == HeatKey::half) {
        painter_.fillRect(key.box, colours_.half);
      } else if (key.key == HeatKey::eightInTen) {
        painter_.setPen(pen(colours_.bandEdge, 1));
        painter_.setBrush(colours_.eightInTen);
        painter_.drawRect(key.box);
        painter_.setBrush(Qt::NoBrush);
      } else {
        paintLine(key.key,
                  {QPointF{key.box.left(), middle}, QPointF{key.box.right(), middle}});
      }
    }
  }

  void paintTag() {
    if (chart_.todayTag.isEmpty()) return;
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(colours_.text);
    painter_.drawRoundedRect(chart_.todayTag, px(3), px(3));
  }

  void paintWords(const ChartWords& words) {
    painter_.setFont(fontOf(words.font));
    painter_.setPen(words.ink == ChartInk::muted   ? colours_.muted
                    : words.ink == ChartInk::onTag ? colours_.ground
                                                   : colours_.text);
    painter_.drawText(
        words.box,
        Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine | Qt::TextDontClip,
        words.text);
  }

  QFont fontOf(ChartFont font) const {
    switch (font) {
      case ChartFont::small:
        return type_.small;
      case ChartFont::smallStrong: {
        QFont strong = type_.small;
        strong.setBold(true);
        return strong;
      }
      case ChartFont::body:
        return type_.body;
      case ChartFont::strong:
        return type_.strong;
      case ChartFont::figure:
        break;
    }
    return type_.figure;
  }

  QPainter& painter_;
  const HeatChart& chart_;
  const HeatType& type_;
  const HeatColours& colours_;
};

}  // namespace

void paintDiamond(
    QPainter& painter, QPointF at, double half, bool seen, const HeatColours& colours) {
  constexpr double edge = 0.3;
  painter.setPen(
      QPen{colours.text, half * edge, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin});
  painter.setBrush(seen ? colours.text : colours.ground);
  painter.drawPolygon(QPolygonF{{at.x(), at.y() - half},
                                {at.x() + half, at.y()},
                                {at.x(), at.y() + half},
                                {at.x() - half, at.y()}});
}

HeatColours heatColoursOnPaper() {
  HeatColours colours;
  colours.ground = Qt::white;
  colours.text = Qt::black;
  colours.muted = QColor{0x40, 0x40, 0x40};
  colours.hairline = QColor{0xC8, 0xC8, 0xC8};
  colours.outline = QColor{0x60, 0x60, 0x60};
  colours.half = QColor{0xBC, 0xBC, 0xBC};
  colours.eightInTen = QColor{0xE2, 0xE2, 0xE2};
  colours.bandEdge = QColor{0x90, 0x90, 0x90};
  return colours;
}

void paint(QPainter& painter,
           const HeatChart& chart,
           const HeatType& type,
           const HeatColours& colours) {
  painter.save();
  ChartPainter{painter, chart, type, colours}.paint();
  painter.restore();
}

}  // namespace topwire
