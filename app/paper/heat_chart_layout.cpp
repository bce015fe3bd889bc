#include "app/paper/heat_chart_pieces.h"

#include <algorithm>
#include <cmath>

namespace topwire {

using namespace heat_style;

namespace {

/// A round step (1, 2 or 5 and zeros) of which at most `count` fit below `top`.
double roundStep(double top, double count) {
  const double rough = top / std::max(1.0, count);
  const double power = std::pow(10, std::floor(std::log10(rough)));
  for (const double step : {1.0, 2.0, 5.0})
    if (step * power >= rough) return step * power;
  return 10 * power;
}

Day firstOfNextMonth(Day day) {
  const CivilDate c = civil(plusMonthsCapToMonthEnd(day, 1));
  return topwire::dayOf(static_cast<int>(c.year()), static_cast<unsigned>(c.month()), 1);
}

double highest(const HeatScene& scene) {
  double top = 1;
  if (const auto last = readHeat(scene.heat, scene.days.last))
    top = std::max(top, last->sum);
  for (const HeatBand& band : scene.heat.past)
    if (scene.days.contains(band.day)) top = std::max(top, band.upperQuarter);
  return top * 1.04;
}

}  // namespace

ChartLayout::ChartLayout(const HeatScene& scene,
                         QSizeF size,
                         const HeatType& type,
                         const Voice& voice)
    : scene_(scene), type_(type), voice_(voice), keys_(legendOf(scene.heat, voice)) {
  chart_.size = size;
  chart_.days = scene.days;
}

HeatChart ChartLayout::made(bool legendAbove) {
  divide(legendAbove);
  drawAxis();
  drawCurves();
  markToday();
  drawMonths();
  markStages();
  layOutRows();
  tellToday();
  if (!legendAbove) putLegendInside();
  return std::move(chart_);
}

void ChartLayout::add(const QRectF& box,
                      const QString& text,
                      ChartFont font,
                      ChartInk ink) {
  chart_.words.push_back({box, text, font, ink});
}

void ChartLayout::clear(const QRectF& box) {
  chart_.clearings.push_back(box.adjusted(-px(gap), 0, px(gap - 1), 0));
}

bool ChartLayout::isTaken(const QRectF& box) const {
  return std::ranges::any_of(
      taken_, [&box](const QRectF& other) { return other.intersects(box); });
}

bool ChartLayout::crossesToday(const QRectF& box) const {
  return chart_.today && box.left() - px(gap) < chart_.today->x1()
         && chart_.today->x1() < box.right() + px(gap);
}

void ChartLayout::divide(bool legendAbove) {
  const QSizeF size = chart_.size;
  chart_.top = highest(scene_);
  const double axis =
      type_.width(voice_.count(std::llround(chart_.top)), ChartFont::small);
  const double left = axis + px(keyGap);
  const double legend = legendAbove ? putLegendAbove(left, size.width() - left) : 0;
  const double above = legend + type_.small() / 2 + px(2);
  const double room = size.height() - above - monthsHeight(type_);
  const auto count = static_cast<double>(std::max<std::size_t>(1, scene_.stages.size()));
  const double narrowest = narrowestPitch(type_);
  pitch_ = std::clamp((room - px(roomyPlot + inset)) / count,
                      narrowest,
                      std::max(narrowest, px(rowPitch)));
  double rows = scene_.stages.empty() ? 0 : rowsHeight(scene_, type_, pitch_);
  if (room - rows < px(leastPlot)) rows = 0;
  const double bottom = size.height() - rows - monthsHeight(type_);
  chart_.plot = QRectF{QPointF{left, above},
                       QPointF{size.width() - px(2), std::max(bottom, above + px(40))}};
  if (rows > 0)
    chart_.rows = QRectF{QPointF{left, size.height() - rows},
                         QPointF{chart_.plot.right(), size.height() - px(2)}};
}

void ChartLayout::drawAxis() {
  step_ = roundStep(chart_.top, std::floor(chart_.plot.height() / px(gridPitch)));
  const double high = type_.small();
  for (double sum = 0; sum <= chart_.top; sum += step_) {
    const double y = chart_.y(sum);
    chart_.grid.emplace_back(chart_.plot.left(), y, chart_.plot.right(), y);
    const int decimals = step_ < 1 ? 1 : 0;
    const QString text = decimals == 0 ? voice_.count(std::llround(sum))
                                       : QLocale{}.toString(sum, 'f', decimals);
    const double wide = type_.width(text, ChartFont::small);
    add({chart_.plot.left() - px(keyGap - 2) - wide, y - high / 2, wide, high},
        text,
        ChartFont::small,
        ChartInk::muted);
  }
}

QString ChartLayout::monthText(Day month, double room) const {
  for (const auto length : {QLocale::LongFormat, QLocale::ShortFormat}) {
    QString name = voice_.monthName(month, length);
    if (type_.width(name, ChartFont::small) <= room) return name;
  }
  return {};
}

void ChartLayout::drawMonths() {
  const double y = chart_.plot.bottom();
  for (Day month = scene_.days.first; month <= scene_.days.last;) {
    const Day next = firstOfNextMonth(month);
    const double x = chart_.x(month);
    const double end =
        next <= scene_.days.last ? chart_.x(next) - px(gap) : chart_.size.width();
    chart_.ticks.emplace_back(x, y, x, y + px(monthTick));
    nameMonth(month, {x + px(gap), y + px(gap), end - x - px(gap), type_.small()});
    month = next;
  }
}

/// Right of today's line where that would run through the name.
void ChartLayout::nameMonth(Day month, const QRectF& room) {
  const QString text = monthText(month, room.width());
  if (text.isEmpty()) return;
  QRectF box = room;
  box.setWidth(type_.width(text, ChartFont::small));
  if (crossesToday(box)) {
    const double beside = chart_.today->x1() + px(2 * gap);
    if (beside + box.width() <= room.right())
      box.moveLeft(beside);
    else
      clear(box);
  }
  add(box, text, ChartFont::small, ChartInk::muted);
}

QPolygonF ChartLayout::curve(const std::vector<HeatSample>& samples) const {
  QPolygonF points;
  for (const HeatSample& sample : samples)
    if (scene_.days.contains(sample.day))
      points << QPointF{chart_.x(sample.day), chart_.y(sample.sum)};
  return points;
}

QPolygonF ChartLayout::band(double HeatBand::*low, double HeatBand::*high) const {
  QPolygonF points;
  QPolygonF back;
  for (const HeatBand& past : scene_.heat.past) {
    if (!scene_.days.contains(past.day)) continue;
    points << QPointF{chart_.x(past.day), chart_.y(past.*high)};
    back.prepend(QPointF{chart_.x(past.day), chart_.y(past.*low)});
  }
  return points + back;
}

void ChartLayout::drawCurves() {
  chart_.eightInTen = band(&HeatBand::low, &HeatBand::high);
  chart_.half = band(&HeatBand::lowerQuarter, &HeatBand::upperQuarter);
  if (hasWeather(scene_.heat) || scene_.heat.pastYears > 0)
    for (const HeatBand& past : scene_.heat.past)
      if (scene_.days.contains(past.day))
        chart_.middle << QPointF{chart_.x(past.day), chart_.y(past.middle)};
  chart_.measured = curve(scene_.heat.measured);
  chart_.forecast = curve(scene_.heat.forecast);
  chart_.likely = curve(scene_.heat.likely);
}

/// The height above which nothing is drawn at `x` and to its left: sums only rise.
double ChartLayout::ceilingAt(double x, bool ofLineAlone) const {
  const auto reading = readHeat(scene_.heat, chart_.dayAt(x));
  double sum = 0;
  if (reading) {
    sum = reading->sum;
    if (reading->past && !ofLineAlone) sum = std::max(sum, reading->past->high);
  }
  return std::max(chart_.plot.top(), chart_.y(sum));
}

bool ChartLayout::isFree(const QRectF& box, bool overBand) const {
  return box.left() >= chart_.plot.left() && box.right() <= chart_.plot.right()
         && box.bottom() + px(gap) <= ceilingAt(box.right() + px(gap), overBand)
         && !crossesToday(box) && !isTaken(box.adjusted(-px(inset), 0, px(inset), 0));
}

void ChartLayout::markToday() {
  if (!scene_.days.contains(scene_.today)) return;
  const double x = chart_.x(scene_.today);
  const double bottom =
      chart_.rows.isEmpty() ? chart_.plot.bottom() : chart_.rows.bottom();
  chart_.today = QLineF{x, chart_.plot.top(), x, bottom};
  const QString text = voice_.dayOfYear(scene_.today);
  const double wide = type_.width(text, ChartFont::smallStrong);
  const double high = type_.height(ChartFont::smallStrong);
  QRectF tag{0, chart_.plot.top(), wide + px(12), high + px(1)};
  const double outside = x - px(11) - tag.width();
  tag.moveLeft(outside >= chart_.plot.left() ? outside : x + px(11));
  chart_.todayTag = tag;
  taken_.push_back(tag);
  add({tag.left() + px(6), tag.top() + px(0.5), wide, high},
      text,
      ChartFont::smallStrong,
      ChartInk::onTag);
}

void ChartLayout::markStages() {
  for (std::size_t i = 0; i < scene_.stages.size(); ++i) {
    const HeatStage& stage = scene_.stages[i];
    const auto reading = readHeat(scene_.heat, stage.date);
    if (!reading || !scene_.days.contains(stage.date)) continue;
    const QPointF at{chart_.x(stage.date), chart_.y(reading->sum)};
    const QLineF drop{at, QPointF{at.x(), chart_.plot.bottom()}};
    chart_.points.push_back({i, stage.seen, at, drop, std::nullopt});
    const double half = px(pointHalf + 1);
    taken_.emplace_back(at.x() - half, at.y() - half, 2 * half, 2 * half);
  }
  for (const bool lesser : {false, true})
    for (StagePoint& point : chart_.points)
      if (const HeatStage& stage = scene_.stages[point.stage]; stage.lesser == lesser)
        nameStage(stage, point);
}

double leastHeight(const HeatScene& scene, const HeatType& type) {
  const ChartType measures{type};
  const double above = 3 * measures.small() + measures.px(12);
  return above + measures.px(leastPlot) + monthsHeight(measures)
         + rowsHeight(scene, measures, narrowestPitch(measures));
}

HeatChart layOut(const HeatScene& scene,
                 QSizeF size,
                 const HeatType& type,
                 const Voice& voice) {
  HeatChart chart = ChartLayout{scene, size, type, voice}.made(false);
  if (!chart.legend.empty()) return chart;
  return ChartLayout{scene, size, type, voice}.made(true);
}

}  // namespace topwire
