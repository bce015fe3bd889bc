#include "app/paper/heat_chart_pieces.h"

#include <algorithm>
#include <cmath>

namespace topwire {

using namespace heat_style;

namespace {

QFont strong(QFont font) {
  font.setBold(true);
  return font;
}

}  // namespace

ChartType::ChartType(const HeatType& type)
    : unit_(type.unit)
    , small_(type.small)
    , smallStrong_(strong(type.small))
    , body_(type.body)
    , strong_(type.strong)
    , figure_(type.figure) {}

double ChartType::width(const QString& text, ChartFont font) const {
  return std::ceil(metrics(font).horizontalAdvance(text)) + unit_;
}

double ChartType::height(ChartFont font) const {
  return metrics(font).height();
}

const QFontMetricsF& ChartType::metrics(ChartFont font) const {
  switch (font) {
    case ChartFont::small:
      return small_;
    case ChartFont::smallStrong:
      return smallStrong_;
    case ChartFont::body:
      return body_;
    case ChartFont::strong:
      return strong_;
    case ChartFont::figure:
      break;
  }
  return figure_;
}

QSizeF ChartBlock::size(const ChartType& type) const {
  QSizeF size;
  for (const Line& line : lines) {
    size.setWidth(std::max(size.width(), type.width(line.text, line.font)));
    size.rheight() += type.height(line.font);
  }
  return size;
}

double narrowestPitch(const ChartType& type) {
  return type.small() + type.px(1);
}

double rowsHeight(const HeatScene& scene, const ChartType& type, double pitch) {
  const auto count = static_cast<double>(scene.stages.size());
  const double heading = type.height(ChartFont::strong) + 2 * type.small();
  return std::max(count * pitch, heading) + type.px(inset);
}

double monthsHeight(const ChartType& type) {
  return type.small() + type.px(monthTick + gap);
}

std::vector<LegendEntry> legendOf(const SeasonHeat& heat, const Voice& voice) {
  const std::int64_t years = heat.pastYears;
  const bool averages = years == 0;
  std::vector<LegendEntry> keys;
  const auto add = [&](HeatKey key, Phrase words, std::vector<Value> values = {}) {
    keys.push_back({key, voice.say(Sentence{words, std::move(values)})});
  };
  if (!heat.measured.empty()) add(HeatKey::measured, phrase("HeatChart", "measured"));
  if (heat.forecast.size() > 1) {
    const auto days = static_cast<std::int64_t>(heat.forecast.size()) - 1;
    add(HeatKey::forecast,
        counted(days,
                phrase("HeatChart", "forecast, %1 day"),
                phrase("HeatChart", "forecast, %1 days")),
        {days});
  }
  if (!heat.likely.empty())
    add(HeatKey::likely,
        !hasWeather(heat) ? phrase("HeatChart", "an average year")
        : averages        ? phrase("HeatChart", "then as on average")
                          : phrase("HeatChart", "then as past years"));
  if (heat.past.empty()) return keys;
  if (hasWeather(heat) || !averages)
    add(HeatKey::middle,
        averages ? phrase("HeatChart", "an average year")
                 : phrase("HeatChart", "middle of %1 past years"),
        {years});
  add(HeatKey::half,
      averages ? phrase("HeatChart", "half of all years, estimated")
               : phrase("HeatChart", "half of the years"));
  add(HeatKey::eightInTen, phrase("HeatChart", "eight in ten"));
  return keys;
}

}  // namespace topwire
