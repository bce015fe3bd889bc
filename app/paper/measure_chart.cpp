#include "app/paper/measure_chart.h"

#include "core/orchard/measure_text.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr double leastPanel = 210;
constexpr double panelGap = 20;
constexpr double plotHeight = 104;
constexpr double keySample = 22;
constexpr int mostSteps = 4;

/// The step of an axis that reaches `most` in a few of them: 1, 2, 2.5 or 5 times a
/// power of ten.
double axisStep(double most) {
  const double rough = most / mostSteps;
  const double power = std::pow(10, std::floor(std::log10(rough)));
  for (const double step : {1.0, 2.0, 2.5, 5.0})
    if (step * power >= rough) return step * power;
  return 10 * power;
}

QString plainNumber(double value) {
  return QLocale::c().toString(value, 'g', 4);
}

/// One attempt at laying the chart out in a width.
class Layout {
public:
  Layout(const MeasureScene& scene,
         double width,
         const HeatType& type,
         const Voice& voice)
      : scene_(scene)
      , width_(width)
      , unit_(type.unit)
      , small_(type.small)
      , strong_(boldOf(type.small))
      , voice_(voice) {}

  MeasureChart made() {
    const auto count = static_cast<double>(scene_.plots.size());
    const bool beside = width_ >= count * px(leastPanel) + (count - 1) * px(panelGap);
    const double panel = beside ? (width_ - (count - 1) * px(panelGap)) / count : width_;
    const double pitch = panelHeight() + px(12);
    double x = 0;
    double y = 0;
    for (const MeasurePlot& plot : scene_.plots) {
      chart_.panels.push_back(panelOf(plot, {x, y, panel, panelHeight()}));
      (beside ? x : y) += beside ? panel + px(panelGap) : pitch;
    }
    putKeys(beside ? pitch : y);
    chart_.size = {width_, (beside ? pitch : y) + small_.height()};
    return std::move(chart_);
  }

private:
  static QFontMetricsF boldOf(QFont font) {
    font.setBold(true);
    return QFontMetricsF{font};
  }

  double px(double count) const { return count * unit_; }

  double panelHeight() const {
    return strong_.height() + px(6) + px(plotHeight) + px(4) + small_.height();
  }

  MeasurePanel panelOf(const MeasurePlot& plot, const QRectF& room) {
    MeasurePanel panel;
    panel.isBand = plot.isBand;
    const double step = axisStep(highest(plot));
    top_ = step * std::ceil(highest(plot) / step);
    const double axis = axisWidth(step);
    panel.plot = {room.left() + axis,
                  room.top() + strong_.height() + px(6),
                  room.width() - axis - px(4),
                  px(plotHeight)};
    putTitle(panel, plot, room);
    putAxis(panel, step);
    putLeaves(panel);
    for (const auto& stretch : plot.wanted)
      panel.wanted.push_back(wantedIn(panel, plot, stretch));
    for (const MeasuredPoint& point : plot.measured)
      panel.measured << at(panel, point.drawnAt, shown(plot, point.value));
    if (scene_.days().contains(scene_.today)) {
      const double x = at(panel, scene_.today, 0).x();
      panel.today = QLineF{x, panel.plot.top(), x, panel.plot.bottom()};
    }
    putLast(panel, plot);
    return panel;
  }

  double shown(const MeasurePlot& plot, double value) const {
    return shownValue(value, plot.measure, scene_.units);
  }

  double highest(const MeasurePlot& plot) const {
    double most = 0;
    for (const MeasuredPoint& point : plot.measured)
      most = std::max(most, shown(plot, point.value));
    for (const auto& stretch : plot.wanted)
      for (const WantedPoint& point : stretch)
        most = std::max(most, shown(plot, point.high));
    return most > 0 ? most * 1.04 : 1;
  }

  double axisWidth(double step) const {
    double widest = 0;
    for (double value = 0; value <= top_ + step / 2; value += step)
      widest = std::max(widest, small_.horizontalAdvance(plainNumber(value)));
    return widest + px(8);
  }

  QPointF at(const MeasurePanel& panel, Day day, double value) const {
    const DaySpan days = scene_.days();
    const Day within = std::clamp(day, days.first, days.last);
    const double share =
        daysBetween(days.first, within) / static_cast<double>(days.length());
    return {panel.plot.left() + share * panel.plot.width(),
            panel.plot.bottom() - value / top_ * panel.plot.height()};
  }

  void putTitle(MeasurePanel& panel, const MeasurePlot& plot, const QRectF& room) {
    QString title = voice_.say(nameOf(plot.measure));
    title[0] = title[0].toUpper();
    const QString unit = QString::fromStdString(unitText(plot.measure, scene_.units));
    if (!unit.isEmpty()) title += QStringLiteral(", ") + unit;
    panel.words.push_back({{room.left(), room.top(), room.width(), strong_.height()},
                           title,
                           ChartFont::smallStrong,
                           ChartInk::text});
  }

  void putAxis(MeasurePanel& panel, double step) {
    for (double value = 0; value <= top_ + step / 2; value += step) {
      const double y = panel.plot.bottom() - value / top_ * panel.plot.height();
      panel.grid.emplace_back(panel.plot.left(), y, panel.plot.right(), y);
      const QString text = plainNumber(value);
      const double wide = small_.horizontalAdvance(text);
      panel.words.push_back({{panel.plot.left() - px(6) - wide,
                              y - small_.height() / 2,
                              wide + px(1),
                              small_.height()},
                             text,
                             ChartFont::small,
                             ChartInk::muted});
    }
  }

  /// Leaves are numbered; the first one says what the numbers are, where it has room.
  void putLeaves(MeasurePanel& panel) {
    for (const LeafMark& mark : scene_.leaves) {
      const double left = at(panel, mark.days.first, 0).x();
      const double right = at(panel, mark.days.last, 0).x();
      if (mark.days.first != scene_.days().first)
        panel.seasons.emplace_back(left, panel.plot.top(), left, panel.plot.bottom());
      const QString number = QString::number(mark.leaf);
      const QString whole = voice_.say(
          Sentence{phrase("MeasureChart", "leaf %1"), {std::int64_t{mark.leaf}}});
      const bool fits = small_.horizontalAdvance(whole) + px(6) < right - left;
      const QString text = fits ? whole : number;
      const double wide = small_.horizontalAdvance(text);
      panel.words.push_back({{(left + right - wide) / 2,
                              panel.plot.bottom() + px(4),
                              wide + px(1),
                              small_.height()},
                             text,
                             ChartFont::small,
                             ChartInk::muted});
    }
  }

  QPolygonF wantedIn(const MeasurePanel& panel,
                     const MeasurePlot& plot,
                     const std::vector<WantedPoint>& stretch) const {
    QPolygonF outline;
    for (const WantedPoint& point : stretch)
      outline << at(panel, point.day, shown(plot, point.high));
    if (!panel.isBand) return outline;
    for (auto point = stretch.rbegin(); point != stretch.rend(); ++point)
      outline << at(panel, point->day, shown(plot, point->low));
    return outline;
  }

  /// The last figure stands beside its dot, on the side that has room.
  void putLast(MeasurePanel& panel, const MeasurePlot& plot) {
    if (plot.measured.empty()) return;
    const QString text = QString::fromStdString(
        measuredText(plot.measured.back().value, plot.measure, scene_.units));
    const double wide = strong_.horizontalAdvance(text);
    const QPointF dot = panel.measured.back();
    const bool left = dot.x() + px(8) + wide > panel.plot.right();
    const bool under = dot.y() - px(6) - strong_.height() < panel.plot.top();
    panel.words.push_back({{left ? dot.x() - px(6) - wide : dot.x() + px(6),
                            under ? dot.y() + px(5) : dot.y() - px(5) - strong_.height(),
                            wide + px(1),
                            strong_.height()},
                           text,
                           ChartFont::smallStrong,
                           ChartInk::text});
  }

  void putKeys(double y) {
    const bool bands = std::ranges::any_of(scene_.plots, &MeasurePlot::isBand);
    double x = 0;
    x = putKey(MeasureKey::Kind::measured, phrase("MeasureChart", "measured"), {x, y});
    x = putKey(MeasureKey::Kind::wanted, phrase("MeasureChart", "wanted"), {x, y});
    if (bands)
      putKey(MeasureKey::Kind::wantedBand, phrase("MeasureChart", "wanted span"), {x, y});
  }

  double putKey(MeasureKey::Kind kind, Phrase words, QPointF where) {
    const QString text = voice_.say(Sentence{words});
    const double wide = small_.horizontalAdvance(text);
    chart_.keys.push_back({kind, {where.x(), where.y(), px(keySample), small_.height()}});
    chart_.words.push_back(
        {{where.x() + px(keySample + 6), where.y(), wide + px(1), small_.height()},
         text,
         ChartFont::small,
         ChartInk::muted});
    return where.x() + px(keySample + 6 + 18) + wide;
  }

  const MeasureScene& scene_;
  double width_;
  double unit_;
  QFontMetricsF small_, strong_;
  const Voice& voice_;
  MeasureChart chart_;
  double top_ = 1;
};

Sentence sentenceOf(const MeasurePlot& plot, UnitSystem units) {
  const Words name = nameOf(plot.measure);
  if (plot.measured.empty())
    return {phrase("MeasureChart", "No %1 measured yet."), {name}};
  const MeasuredPoint& last = plot.measured.back();
  return {counted(static_cast<std::int64_t>(plot.measured.size()),
                  phrase("MeasureChart", "Measured once: %2 %3 on %4."),
                  phrase("MeasureChart", "Measured %1 times: %2, last %3 on %4.")),
          {static_cast<std::int64_t>(plot.measured.size()),
           name,
           measuredText(last.value, plot.measure, units),
           last.day}};
}

}  // namespace

MeasureChart layOut(const MeasureScene& scene,
                    double width,
                    const HeatType& type,
                    const Voice& voice) {
  return Layout{scene, width, type, voice}.made();
}

QString describe(const MeasureScene& scene, const Voice& voice) {
  QStringList told;
  for (const MeasurePlot& plot : scene.plots)
    told << voice.say(sentenceOf(plot, scene.units));
  return told.join(QLatin1Char(' '));
}

}  // namespace topwire
