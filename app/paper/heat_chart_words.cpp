// What a chart of heat says, and where there is room to say it.

#include "app/paper/heat_chart_pieces.h"

#include <algorithm>
#include <cmath>

namespace topwire {

using namespace heat_style;

/// A stage's name and the sum it comes at.
struct StageName {
  StageName(const ChartType& type,
            const Voice& voice,
            const HeatStage& stage,
            const std::optional<HeatReading>& reading)
      : words(stage.name)
      , figure(voice.count(std::llround(reading ? reading->sum : 0)))
      , size(type.width(words, ChartFont::body) + type.px(gap)
                 + type.width(figure, ChartFont::small),
             type.height(ChartFont::body)) {}

  QRectF box(QPointF middleLeft) const {
    return {{middleLeft.x(), middleLeft.y() - size.height() / 2}, size};
  }

  QString words;
  QString figure;
  QSizeF size;
};

namespace {

/// Where a name stands: so far above its diamond, over today's line or not.
struct NamePlace {
  double up;
  bool overToday;
};

/// The best first. Crossing today's line is as bad as standing two lines further up.
const std::vector<NamePlace>& namePlaces() {
  static const std::vector<NamePlace> places = [] {
    constexpr double step = 4;
    constexpr double farthest = 75;
    constexpr double crossing = 22;
    std::vector<NamePlace> made;
    for (double up = nearestName; up <= farthest; up += step)
      for (const bool overToday : {false, true}) made.push_back({up, overToday});
    std::ranges::stable_sort(made, {}, [](const NamePlace& place) {
      return place.up + (place.overToday ? crossing : 0);
    });
    return made;
  }();
  return places;
}

}  // namespace

/// To the left of its diamond and a little above; further up, or across today's line,
/// where others stand there; else to the right below. A lesser stage keeps close or is
/// not named.
void ChartLayout::nameStage(const HeatStage& stage, StagePoint& point) {
  const StageName name{type_, voice_, stage, readHeat(scene_.heat, stage.date)};
  const double right = point.at.x() - px(besidePoint);
  for (const NamePlace& place : namePlaces()) {
    if (stage.lesser && place.up > nearestName) continue;
    const double middle = point.at.y() - px(place.up);
    const QRectF box = name.box({right - name.size.width(), middle});
    if (!canName(box) || crossesToday(box) != place.overToday) continue;
    putName(name, box);
    constexpr double near = 18;
    if (place.up > near)
      point.leader =
          QLineF{QPointF{right + px(2), middle}, point.at - QPointF{px(gap), px(gap)}};
    return;
  }
  const QRectF below =
      name.box({point.at.x() + px(besidePoint), point.at.y() + px(nearestName)});
  if (!stage.lesser && canName(below) && !crossesToday(below)) putName(name, below);
}

bool ChartLayout::canName(const QRectF& box) const {
  return box.left() >= chart_.plot.left() && box.right() <= chart_.plot.right()
         && box.top() >= chart_.plot.top() && !isTaken(box.adjusted(0, px(2), 0, -px(2)));
}

void ChartLayout::putName(const StageName& name, const QRectF& box) {
  clear(box);
  taken_.push_back(box);
  const double wide = type_.width(name.words, ChartFont::body);
  const double low = type_.small();
  add({box.left(), box.top(), wide, box.height()},
      name.words,
      ChartFont::body,
      ChartInk::text);
  add({box.left() + wide + px(gap),
       box.center().y() - low / 2,
       type_.width(name.figure, ChartFont::small),
       low},
      name.figure,
      ChartFont::small,
      ChartInk::muted);
}

void ChartLayout::layOutRows() {
  if (chart_.rows.isEmpty()) return;
  taken_.clear();
  double middle = chart_.rows.top() + px(inset) - px(2) + pitch_ / 2 - px(6);
  for (std::size_t i = 0; i < scene_.stages.size(); ++i) {
    layOutRow(i, middle);
    middle += pitch_;
  }
  explainRows();
}

/// Its name stands after the whisker, or before it where today's line or the edge is in
/// the way.
void ChartLayout::layOutRow(std::size_t index, double middle) {
  const HeatStage& stage = scene_.stages[index];
  const auto within = [this](Day day) {
    return std::clamp(chart_.x(day), chart_.plot.left(), chart_.plot.right());
  };
  const double early = within(stage.seen ? stage.date : stage.span.first);
  const double late = within(stage.seen ? stage.date : stage.span.last);
  const QPointF at{within(stage.date), middle};
  chart_.spans.push_back(
      {index, stage.seen, at, QLineF{early, middle, std::max(early, late), middle}});
  const double start = std::min(early, at.x() - px(rowHalf));
  const double end = std::max(late, at.x() + px(rowHalf));
  const double wide = type_.width(stage.name, ChartFont::small);
  const double high = type_.small();
  const QRectF after{end + px(10), middle - high / 2, wide, high};
  const QRectF before{start - px(10) - wide, middle - high / 2, wide, high};
  const bool fitsAfter = after.right() <= chart_.size.width() && !crossesToday(after);
  const bool fitsBefore = before.left() >= chart_.plot.left() && !crossesToday(before);
  const QRectF box =
      fitsAfter || (!fitsBefore && after.right() <= chart_.size.width()) ? after : before;
  if (crossesToday(box)) clear(box);
  add(box, stage.name, ChartFont::small, ChartInk::text);
  taken_.push_back(box.united({start, middle - high / 2, end - start, high}));
}

void ChartLayout::explainRows() {
  ChartBlock block;
  const auto line = [&](Phrase words, ChartFont font, ChartInk ink) {
    block.lines.push_back({voice_.say(Sentence{words}), font, ink});
  };
  line(phrase("HeatChart", "When each stage comes"), ChartFont::strong, ChartInk::text);
  line(phrase("HeatChart", "diamond: likeliest day, filled once seen"),
       ChartFont::small,
       ChartInk::muted);
  line(
      phrase("HeatChart", "line: eight years in ten"), ChartFont::small, ChartInk::muted);
  const QSizeF size = block.size(type_);
  const double top = chart_.rows.top() + px(gap);
  const double bottom = chart_.rows.bottom() - size.height();
  for (double left = chart_.rows.left() + px(inset);
       left + size.width() <= chart_.rows.right();
       left += px(keyGap))
    for (const QPointF at : {QPointF{left, top}, QPointF{left, bottom}}) {
      const QRectF box{at, size};
      if (isTaken(box.adjusted(-px(inset), 0, px(inset), 0)) || crossesToday(box))
        continue;
      return putBlock(block, at, false);
    }
}

namespace {

/// Of a season of which some day is known.
Day lastKnown(const SeasonHeat& heat) {
  return heat.forecast.empty() ? heat.measured.back().day : heat.forecast.back().day;
}

}  // namespace

ChartBlock ChartLayout::todayBlock() const {
  const SeasonHeat& heat = scene_.heat;
  ChartBlock block;
  if (!hasWeather(heat)) {
    const auto line = [&](Phrase words, ChartFont font) {
      block.lines.push_back({voice_.say(Sentence{words}), font});
    };
    line(phrase("HeatChart", "No weather yet"), ChartFont::strong);
    line(phrase("HeatChart", "The line is an average year."), ChartFont::small);
    line(phrase("HeatChart", "Bring in a file, or type daily figures."),
         ChartFont::small);
    return block;
  }
  block.lines.push_back({voice_.count(std::llround(heat.today)), ChartFont::figure});
  block.lines.push_back(
      {voice_.say(Sentence{phrase("HeatChart", "%1 so far,"), {nameOf(heat.measure)}}),
       ChartFont::small});
  block.lines.push_back({toTheMiddleText(heat, voice_), ChartFont::small});
  constexpr int longUnknown = 2;
  const Day known = lastKnown(heat);
  if (daysBetween(known, scene_.today) > longUnknown)
    block.lines.push_back({voice_.say(Sentence{phrase("HeatChart", "weather known to %1"),
                                               {voice_.dayOfYear(known).toStdString()}}),
                           ChartFont::small,
                           ChartInk::muted});
  if (heat.missingDays > 0) {
    const std::int64_t days = heat.missingDays;
    block.lines.push_back(
        {voice_.say(Sentence{counted(days,
                                     phrase("HeatChart", "%1 day missing"),
                                     phrase("HeatChart", "%1 days missing")),
                             {days}}),
         ChartFont::small,
         ChartInk::muted});
  }
  return block;
}

void ChartLayout::putBlock(const ChartBlock& block, QPointF at, bool rightAligned) {
  const QSizeF size = block.size(type_);
  double top = at.y();
  for (const ChartBlock::Line& line : block.lines) {
    const double wide = type_.width(line.text, line.font);
    const double left = at.x() + (rightAligned ? size.width() - wide : 0);
    const QRectF box{left, top, wide, type_.height(line.font)};
    clear(box);
    add(box, line.text, line.font, line.ink);
    top += box.height();
  }
  taken_.emplace_back(at, size);
}

/// Beside today's line, else as near to the upper left as there is room.
void ChartLayout::tellToday() {
  taken_.push_back(chart_.todayTag);
  for (const ChartWords& words : chart_.words) taken_.push_back(words.box);
  const ChartBlock block = todayBlock();
  const QSizeF size = block.size(type_);
  const double top =
      std::max(chart_.plot.top(), chart_.todayTag.bottom()) + px(inset - 2);
  if (chart_.today) {
    const double x = chart_.today->x1();
    const QRectF before{{x - px(12) - size.width(), top}, size};
    const QRectF after{{x + px(12), top}, size};
    if (isFree(before, false)) return putBlock(block, before.topLeft(), true);
    if (isFree(after, false)) return putBlock(block, after.topLeft(), false);
  }
  for (const bool overBand : {false, true})
    for (double left = chart_.plot.left() + px(inset);
         left + size.width() < chart_.plot.right();
         left += px(keyGap))
      if (isFree({{left, top}, size}, overBand))
        return putBlock(block, {left, top}, false);
}

QSizeF ChartLayout::legendSize() const {
  double wide = 0;
  for (const LegendEntry& key : keys_)
    wide = std::max(wide, type_.width(key.words, ChartFont::small));
  return {wide + px(keyWidth + keyGap),
          static_cast<double>(keys_.size()) * (type_.small() + px(gap - 1))};
}

void ChartLayout::putKey(const LegendEntry& key, QPointF at) {
  const double high = type_.small();
  const bool isBand = key.key == HeatKey::half || key.key == HeatKey::eightInTen;
  const double tall = isBand ? high * 0.7 : px(3);
  chart_.legend.push_back(
      {key.key, {at.x(), at.y() + (high - tall) / 2, px(keyWidth), tall}});
  const QRectF words{at.x() + px(keyWidth + keyGap),
                     at.y(),
                     type_.width(key.words, ChartFont::small),
                     high};
  clear(words.united({at, words.bottomRight()}));
  add(words, key.words, ChartFont::small, ChartInk::muted);
}

/// In the plot where that has room, else among the rows below it.
std::optional<QPointF> ChartLayout::legendPlace(QSizeF size) const {
  const double top = chart_.plot.top() + px(inset + gap);
  for (double left = chart_.plot.left() + px(inset);
       left + size.width() < chart_.plot.right();
       left += px(keyGap))
    if (isFree({{left, top}, size}, false)) return QPointF{left, top};
  for (double left = chart_.rows.left() + px(inset);
       left + size.width() < chart_.rows.right();
       left += px(keyGap))
    for (double y = chart_.rows.bottom() - size.height(); y > chart_.rows.top();
         y -= px(gap)) {
      const QRectF box{{left, y}, size};
      const QRectF wide = box.adjusted(-px(inset), -px(keyGap), px(inset), 0);
      if (!isTaken(wide) && !crossesToday(box)) return box.topLeft();
    }
  return std::nullopt;
}

void ChartLayout::putLegendInside() {
  const QSizeF size = legendSize();
  const auto at = legendPlace(size);
  if (!at) return;
  double y = at->y();
  for (const LegendEntry& key : keys_) {
    putKey(key, {at->x(), y});
    y += type_.small() + px(gap - 1);
  }
}

/// Side by side on as many lines as it takes; answers their height.
double ChartLayout::putLegendAbove(double left, double width) {
  double x = left;
  double y = 0;
  for (const LegendEntry& key : keys_) {
    const double wide = px(keyWidth + keyGap) + type_.width(key.words, ChartFont::small);
    if (x > left && x + wide > left + width) {
      x = left;
      y += type_.small() + px(gap);
    }
    putKey(key, {x, y});
    x += wide + px(inset);
  }
  return y + type_.small() + px(gap);
}

}  // namespace topwire
