#include "app/windows/month_painter.h"

#include "app/look/look.h"
#include "app/look/state_shape.h"
#include "app/look/tokens.h"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainterPath>

namespace topwire {

namespace {

constexpr int daysInWeek = 7;
constexpr double tooth = 5;
constexpr double radius = 3;
constexpr double openingEdge = 4;
constexpr double shapeSide = 11;
constexpr double stageLine = 26;
constexpr double stageDrop = 4;

const BaseColours& base() {
  return baseColours(currentTheme());
}

QString placeText(const std::string& name, const std::string& place) {
  const QString words = QString::fromStdString(place);
  return name.empty() || place.empty() ? words : QStringLiteral(", ") + words;
}

void zigzag(QPainterPath& path, double x, double depth, double fromY, double toY) {
  const double quarter = (toY - fromY) / 4;
  path.lineTo(x + depth, fromY + quarter);
  path.lineTo(x, fromY + 2 * quarter);
  path.lineTo(x + depth, fromY + 3 * quarter);
  path.lineTo(x, toY);
}

/// A bar's outline: torn where the window goes on, rounded where it truly ends.
QPainterPath outlineOf(const QRectF& box, bool tornLeft, bool tornRight) {
  const double r = radius;
  QPainterPath path;
  path.moveTo(box.left() + (tornLeft ? 0 : r), box.top());
  if (tornRight) {
    path.lineTo(box.topRight());
    zigzag(path, box.right(), -tooth, box.top(), box.bottom());
  } else {
    path.lineTo(box.right() - r, box.top());
    path.quadTo(box.topRight(), box.topRight() + QPointF{0, r});
    path.lineTo(box.bottomRight() - QPointF{0, r});
    path.quadTo(box.bottomRight(), box.bottomRight() - QPointF{r, 0});
  }
  if (tornLeft) {
    path.lineTo(box.bottomLeft());
    zigzag(path, box.left(), tooth, box.bottom(), box.top());
  } else {
    path.lineTo(box.left() + r, box.bottom());
    path.quadTo(box.bottomLeft(), box.bottomLeft() - QPointF{0, r});
    path.lineTo(box.topLeft() + QPointF{0, r});
    path.quadTo(box.topLeft(), box.topLeft() + QPointF{r, 0});
  }
  path.closeSubpath();
  return path;
}

QString dayNumber(Day day) {
  const unsigned number = static_cast<unsigned>(civil(day).day());
  if (number != 1) return QString::number(number);
  const int month = static_cast<int>(static_cast<unsigned>(civil(day).month()));
  return QStringLiteral("1 ") + QLocale{}.monthName(month, QLocale::ShortFormat);
}

int monthNumber(Day day) {
  return static_cast<int>(static_cast<unsigned>(civil(day).month()));
}

}  // namespace

double barTextWidth(const std::string& name, const std::string& place) {
  static const QString none;
  const QFontMetricsF bold{fontOf(TypeSize::small, true)};
  const QFontMetricsF plain{fontOf(TypeSize::small)};
  return bold.horizontalAdvance(QString::fromStdString(name))
         + plain.horizontalAdvance(placeText(name, place)) + 1;
}

QRectF MonthGeometry::dayBox(int week, int day) const {
  return {dayLeft(day), weekTop(week), columnWidth, rowHeight};
}

QRectF MonthGeometry::laneBox(int week, int lane, WeekSpan days) const {
  return {dayLeft(days.first),
          weekTop(week) + laneTop + lane * pitch,
          (days.last - days.first + 1) * columnWidth,
          barHeight};
}

QRectF MonthGeometry::moreBox(int week) const {
  return {0, weekTop(week) + 24, left - 4, 36};
}

MonthPainter::MonthPainter(QPainter& painter,
                           const MonthLayout& layout,
                           const MonthGeometry& geometry,
                           const MonthMarks& marks)
    : painter_(&painter)
    , layout_(&layout)
    , geometry_(geometry)
    , marks_(marks)
    , name_(fontOf(TypeSize::small, true))
    , place_(fontOf(TypeSize::small)) {}

void MonthPainter::paint() {
  painter_->setRenderHint(QPainter::Antialiasing);
  paintGround();
  paintGrid();
  paintWeekdayNames();
  const int weeks = static_cast<int>(layout_->weeks.size());
  for (int week = 0; week < weeks; ++week) {
    paintDayNumbers(week);
    paintWeekNumber(week);
    paintStages(week);
    for (const auto& segment : layout_->weeks[static_cast<std::size_t>(week)].segments)
      paintSegment(week, segment);
  }
  for (int week = 0; week < weeks; ++week) paintFrames(week);
}

void MonthPainter::paintGround() {
  const auto weeks = static_cast<double>(layout_->weeks.size());
  const QRectF all{geometry_.left,
                   geometry_.top,
                   geometry_.columnWidth * daysInWeek,
                   geometry_.rowHeight * weeks};
  QPainterPath sheet;
  sheet.addRoundedRect(all, measure::cardRadius, measure::cardRadius);
  painter_->fillPath(sheet, base().surface);
  QPainterPath sunday;
  sunday.addRect(geometry_.dayLeft(daysInWeek - 1),
                 geometry_.top,
                 geometry_.columnWidth,
                 all.height());
  painter_->fillPath(sheet.intersected(sunday), base().window);
}

void MonthPainter::paintGrid() {
  const int weeks = static_cast<int>(layout_->weeks.size());
  const double bottom = geometry_.weekTop(weeks);
  const double right = geometry_.dayLeft(daysInWeek);
  painter_->setPen(QPen{base().hairline, 1});
  painter_->setBrush(Qt::NoBrush);
  for (int week = 1; week < weeks; ++week)
    painter_->drawLine(QPointF{geometry_.left, geometry_.weekTop(week) + 0.5},
                       QPointF{right, geometry_.weekTop(week) + 0.5});
  for (int day = 1; day < daysInWeek; ++day)
    painter_->drawLine(QPointF{geometry_.dayLeft(day) + 0.5, geometry_.top},
                       QPointF{geometry_.dayLeft(day) + 0.5, bottom});
  painter_->drawRoundedRect(QRectF{QPointF{geometry_.left + 0.5, geometry_.top + 0.5},
                                   QPointF{right - 0.5, bottom - 0.5}},
                            measure::cardRadius,
                            measure::cardRadius);
}

void MonthPainter::paintWeekdayNames() {
  const QLocale locale;
  for (int day = 0; day < daysInWeek; ++day) {
    const bool chosen = isoWeekday(marks_.chosen) == day + 1;
    painter_->setFont(chosen ? name_ : place_);
    painter_->setPen(chosen ? base().text : base().muted);
    painter_->drawText(
        QRectF{geometry_.dayLeft(day) + 8, 0, geometry_.columnWidth - 8, geometry_.top},
        Qt::AlignVCenter | Qt::AlignLeft,
        locale.dayName(day + 1, QLocale::ShortFormat));
  }
}

void MonthPainter::paintDayNumbers(int week) {
  const Day monday = layout_->weeks[static_cast<std::size_t>(week)].monday;
  for (int day = 0; day < daysInWeek; ++day) {
    const Day shown = plusDays(monday, day);
    const QString words = dayNumber(shown);
    const bool isToday = shown == marks_.today;
    painter_->setFont(fontOf(TypeSize::body, isToday));
    const double wide = painter_->fontMetrics().horizontalAdvance(words);
    QRectF box{geometry_.dayLeft(day) + 8, geometry_.weekTop(week) + 3, wide + 1, 20};
    if (isToday) {
      painter_->setPen(Qt::NoPen);
      painter_->setBrush(base().text);
      painter_->drawRoundedRect(box.adjusted(-4, 0, 5, 0), 4, 4);
    }
    const bool quiet =
        shown < marks_.today || (marks_.month != 0 && monthNumber(shown) != marks_.month);
    painter_->setPen(isToday ? base().surface : quiet ? base().muted : base().text);
    painter_->drawText(box, Qt::AlignVCenter | Qt::AlignLeft, words);
  }
}

void MonthPainter::paintWeekNumber(int week) {
  const MonthWeek& shown = layout_->weeks[static_cast<std::size_t>(week)];
  const bool current = isoWeekOf(marks_.today) == shown.week;
  painter_->setFont(current ? name_ : place_);
  painter_->setPen(current ? base().text : base().muted);
  painter_->drawText(QRectF{0, geometry_.weekTop(week) + 3, geometry_.left - 8, 20},
                     Qt::AlignVCenter | Qt::AlignRight,
                     QString::number(shown.week.number));
}

void MonthPainter::paintStages(int week) {
  const auto& marks = layout_->weeks[static_cast<std::size_t>(week)].stages;
  for (const StageMark& mark : marks) paintWhisker(week, mark);
  for (const StageMark& mark : marks) paintStageName(week, mark);
  for (const StageMark& mark : marks)
    if (layout_->stages[mark.stage].observed) paintStageName(week, mark);
}

double MonthPainter::stageX(const StageMark& mark) const {
  return mark.diamond ? geometry_.dayLeft(*mark.diamond) + 15
                      : geometry_.dayLeft(mark.span.first) + 8;
}

double MonthPainter::stageY(int week, const StageMark& mark) const {
  return geometry_.weekTop(week) + stageLine + (mark.lowered ? stageDrop : 0);
}

void MonthPainter::paintWhisker(int week, const StageMark& mark) {
  if (!mark.whisker) return;
  const double y = stageY(week, mark);
  const double from = geometry_.dayLeft(mark.span.first) + (mark.startsHere ? 8 : 0);
  const double to = geometry_.dayLeft(mark.span.last + 1) - (mark.endsHere ? 10 : 0);
  painter_->setPen(QPen{base().muted, 1.5});
  painter_->drawLine(QPointF{from, y}, QPointF{to, y});
  if (mark.startsHere) painter_->drawLine(QPointF{from, y - 4}, QPointF{from, y + 4});
  if (mark.endsHere) painter_->drawLine(QPointF{to, y - 4}, QPointF{to, y + 4});
}

void MonthPainter::paintStageName(int week, const StageMark& mark) {
  const MonthStage& stage = layout_->stages[mark.stage];
  const double y = stageY(week, mark);
  const double at = stageX(mark);
  if (mark.name != StageMark::Name::none) {
    const QString words = QString::fromStdString(stage.name);
    painter_->setFont(place_);
    const double wide = QFontMetricsF{place_}.horizontalAdvance(words);
    const bool before = mark.name == StageMark::Name::before;
    const QRectF box{before ? at - wide - 15 : at + 7, y - 7.5, wide + 8, 15};
    const bool onSunday = !before && mark.diamond == daysInWeek - 1;
    painter_->fillRect(box, onSunday ? base().window : base().surface);
    painter_->setPen(base().text);
    painter_->drawText(box, Qt::AlignCenter, words);
  }
  if (!mark.diamond) return;
  painter_->setPen(QPen{base().text, 1.6});
  painter_->setBrush(stage.observed ? base().text : base().surface);
  painter_->drawPolygon(QPolygonF{{at, y - 5}, {at + 5, y}, {at, y + 5}, {at - 5, y}});
}

void MonthPainter::paintSegment(int week, const MonthSegment& segment) {
  const MonthBar& bar = layout_->bars[segment.bar];
  const Day sunday =
      plusDays(layout_->weeks[static_cast<std::size_t>(week)].monday, daysInWeek - 1);
  if (segment.tail) {
    QRectF box = geometry_.laneBox(week, segment.lane, *segment.tail);
    if (segment.body) box.setLeft(box.left() - 4);
    if (!segment.tornRight) box.setRight(box.right() - 4);
    paintTail(box, bar);
  }
  if (segment.body) {
    const bool tornRight = bar.closes > sunday;
    QRectF box = geometry_.laneBox(week, segment.lane, *segment.body);
    if (!segment.tornLeft) box.setLeft(box.left() + 3);
    if (!tornRight) box.setRight(box.right() - 4);
    paintBody(box, bar, segment.tornLeft, tornRight);
  }
  paintShapeOf(week, segment);
  paintLabel(week, segment);
  if (segment.bracket)
    paintBracket(
        geometry_.laneBox(week, segment.lane, {*segment.bracket, *segment.bracket}));
}

void MonthPainter::paintBody(const QRectF& box,
                             const MonthBar& bar,
                             bool tornLeft,
                             bool tornRight) {
  const QRectF inner = box.adjusted(0.5, 0.5, -0.5, -0.5);
  const QPainterPath outline = outlineOf(inner, tornLeft, tornRight);
  paintStateFill(*painter_, outline, bar.state);
  if (!tornLeft) {
    QPainterPath edge;
    edge.addRect(QRectF{box.left(), box.top(), openingEdge, box.height()});
    painter_->fillPath(outline.intersected(edge),
                       stateColours(currentTheme(), bar.state).mark);
  }
  painter_->setPen(edgePen(bar.state, 1.1));
  painter_->setBrush(Qt::NoBrush);
  painter_->drawPath(outline);
}

void MonthPainter::paintTail(const QRectF& box, const MonthBar& bar) {
  if (bar.state == TaskState::late) {
    const double slim = box.height() / 4;
    QPainterPath path;
    path.addRect(box.adjusted(0, slim, 0, -slim));
    paintStateFill(*painter_, path, bar.state);
    painter_->setPen(edgePen(bar.state));
    painter_->setBrush(Qt::NoBrush);
    painter_->drawPath(path);
    return;
  }
  QPen dotted{base().muted, 2, Qt::CustomDashLine, Qt::RoundCap};
  dotted.setDashPattern({0.1, 2.4});
  painter_->setPen(dotted);
  painter_->drawLine(QPointF{box.left() + 4, box.center().y()},
                     QPointF{box.right(), box.center().y()});
}

void MonthPainter::paintBracket(const QRectF& lane) {
  const double x = lane.right() - 3;
  const double top = lane.top() - 2;
  const double bottom = lane.bottom() + 2;
  painter_->setPen(QPen{base().text, 3.5, Qt::SolidLine, Qt::FlatCap});
  painter_->drawLine(QPointF{x, top}, QPointF{x, bottom});
  painter_->setPen(QPen{base().text, 2.5, Qt::SolidLine, Qt::FlatCap});
  for (const double y : {top + 1.2, bottom - 1.2})
    painter_->drawLine(QPointF{x - 5, y}, QPointF{x + 1.7, y});
}

void MonthPainter::paintShapeOf(int week, const MonthSegment& segment) {
  const MonthBar& bar = layout_->bars[segment.bar];
  const bool onTail = !segment.body && segment.label.at == LabelAt::onTail;
  if (!segment.body && !onTail) return;
  const QRectF box =
      geometry_.laneBox(week, segment.lane, segment.body.value_or(segment.span()));
  const QRectF shape{box.left() + (onTail ? 6 : 9),
                     box.center().y() - shapeSide / 2,
                     shapeSide,
                     shapeSide};
  if (box.width() < 22) return;
  if (onTail) painter_->fillRect(shape.adjusted(-4, -2, 4, 2), base().surface);
  paintShape(*painter_, shape, bar.state);
}

void MonthPainter::paintLabel(int week, const MonthSegment& segment) {
  const BarLabel& label = segment.label;
  if (label.at == LabelAt::nowhere) return;
  const QRectF lane = geometry_.laneBox(week, segment.lane, segment.span());
  QRectF box{geometry_.left + label.left, lane.top(), label.width + 2, lane.height()};
  if (label.at != LabelAt::inside) {
    const bool onSunday = box.left() >= geometry_.dayLeft(daysInWeek - 1);
    painter_->fillRect(box.adjusted(-3, 0, 4, 0),
                       onSunday ? base().window : base().surface);
  }
  painter_->setPen(base().text);
  painter_->setFont(name_);
  const QString name = QString::fromStdString(label.name);
  painter_->drawText(box, Qt::AlignVCenter | Qt::AlignLeft, name);
  box.setLeft(box.left() + QFontMetricsF{name_}.horizontalAdvance(name));
  painter_->setFont(place_);
  painter_->drawText(
      box, Qt::AlignVCenter | Qt::AlignLeft, placeText(label.name, label.place));
}

void MonthPainter::paintFrames(int week) {
  const MonthWeek& shown = layout_->weeks[static_cast<std::size_t>(week)];
  painter_->setBrush(Qt::NoBrush);
  for (int day = 0; day < daysInWeek; ++day) {
    const Day here = plusDays(shown.monday, day);
    const QRectF box = geometry_.dayBox(week, day);
    if (here == marks_.chosen) {
      painter_->setPen(QPen{base().text, 2});
      painter_->drawRoundedRect(box.adjusted(1.5, 1.5, -0.5, -0.5), 2, 2);
    }
    if (here == marks_.cursor && marks_.hasFocus && !marks_.bar) {
      painter_->setPen(QPen{base().focus, 2});
      painter_->drawRoundedRect(box.adjusted(4.5, 4.5, -3.5, -3.5), 4, 4);
    }
  }
  if (!marks_.bar || !marks_.hasFocus) return;
  painter_->setPen(QPen{base().focus, 2});
  for (const MonthSegment& segment : shown.segments)
    if (segment.bar == *marks_.bar)
      painter_->drawRoundedRect(
          geometry_.laneBox(week, segment.lane, segment.span()).adjusted(0, -1, 0, 1),
          4,
          4);
}

}  // namespace topwire
