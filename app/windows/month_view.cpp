#include "app/windows/month_view.h"

#include "app/look/look.h"
#include "app/words/say.h"

#include <QAccessible>
#include <QFontMetricsF>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr int daysInWeek = 7;
constexpr int fewestLanes = 3;
constexpr int lanesWithoutEnd = 1000;
constexpr double narrowestColumn = 64;
constexpr double roomBelow = 2;

std::vector<std::pair<std::size_t, const MonthSegment*>> segmentsInOrder(
    const MonthLayout& layout) {
  std::vector<std::pair<std::size_t, const MonthSegment*>> all;
  for (std::size_t week = 0; week < layout.weeks.size(); ++week)
    for (const MonthSegment& segment : layout.weeks[week].segments)
      all.emplace_back(week, &segment);
  return all;
}

}  // namespace

MonthView::MonthView(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAccessibleName(tr("Calendar"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void MonthView::setScene(MonthScene scene) {
  if (!scene.weeks.contains(cursor_) || scene.chosen != scene_.chosen)
    cursor_ = scene.weeks.contains(scene.chosen) ? scene.chosen : scene.weeks.first;
  scene_ = std::move(scene);
  segment_.reset();
  layOut();
  updateGeometry();
  update();
}

int MonthView::weekCount() const {
  return std::max(1, scene_.weeks.length() / daysInWeek);
}

double MonthView::shortestWeek() const {
  int lanes = fewestLanes;
  if (scene_.month == 0 && !layout_.weeks.empty())
    lanes = std::max(fewestLanes, layout_.weeks.front().lanesUsed);
  return geometry_.laneTop + lanes * geometry_.pitch + roomBelow;
}

QSize MonthView::sizeHint() const {
  return minimumSizeHint();
}

QSize MonthView::minimumSizeHint() const {
  return {static_cast<int>(geometry_.left + daysInWeek * narrowestColumn),
          static_cast<int>(std::ceil(geometry_.top + weekCount() * shortestWeek())) + 2};
}

void MonthView::layOut() {
  if (scene_.weeks.length() < daysInWeek) return;
  const double line = QFontMetricsF{fontOf(TypeSize::small)}.height();
  geometry_.barHeight = std::max(16.0, line - 1) + (scene_.month == 0 ? 5 : 0);
  geometry_.pitch = geometry_.barHeight + (scene_.month == 0 ? 4 : 1);
  geometry_.columnWidth = (width() - geometry_.left - 1) / daysInWeek;
  geometry_.rowHeight = std::max((height() - geometry_.top - 1) / weekCount(),
                                 geometry_.laneTop + fewestLanes * geometry_.pitch);
  MonthMeasures measures;
  measures.columnWidth = geometry_.columnWidth;
  measures.lanes =
      scene_.month == 0
          ? lanesWithoutEnd
          : static_cast<int>((geometry_.rowHeight - geometry_.laneTop) / geometry_.pitch);
  measures.textWidth = barTextWidth;
  layout_ = layOutWeeks(scene_.weeks, scene_.bars, scene_.stages, measures, scene_.today);
}

void MonthView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  layOut();
}

void MonthView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) {
    layOut();
    update();
  }
}

void MonthView::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  MonthMarks marks{scene_.today, scene_.chosen, cursor_, {}, hasFocus(), scene_.month};
  if (segment_) marks.bar = segmentsInOrder(layout_)[*segment_].second->bar;
  MonthPainter{painter, layout_, geometry_, marks}.paint();
  painter.setFont(fontOf(TypeSize::small));
  painter.setPen(palette().color(QPalette::Link));
  for (std::size_t week = 0; week < layout_.weeks.size(); ++week)
    if (const int hidden = layout_.weeks[week].hidden; hidden > 0)
      painter.drawText(geometry_.moreBox(static_cast<int>(week)),
                       Qt::AlignRight | Qt::AlignTop | Qt::TextWordWrap,
                       tr("%1\nmore").arg(hidden));
}

std::optional<std::pair<int, Day>> MonthView::dayAt(QPointF where) const {
  if (where.x() < geometry_.left || where.y() < geometry_.top) return std::nullopt;
  const int day = static_cast<int>((where.x() - geometry_.left) / geometry_.columnWidth);
  const int week = static_cast<int>((where.y() - geometry_.top) / geometry_.rowHeight);
  if (day >= daysInWeek || week >= static_cast<int>(layout_.weeks.size()))
    return std::nullopt;
  const Day monday = layout_.weeks[static_cast<std::size_t>(week)].monday;
  return std::pair{week, plusDays(monday, day)};
}

std::optional<std::size_t> MonthView::barAt(QPointF where) const {
  for (const auto& [week, segment] : segmentsInOrder(layout_)) {
    const QRectF box =
        geometry_.laneBox(static_cast<int>(week), segment->lane, segment->span());
    if (box.contains(where)) return segment->bar;
  }
  return std::nullopt;
}

void MonthView::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return QWidget::mousePressEvent(event);
  segment_.reset();
  for (std::size_t week = 0; week < layout_.weeks.size(); ++week)
    if (layout_.weeks[week].hidden > 0
        && geometry_.moreBox(static_cast<int>(week)).contains(event->position()))
      return Q_EMIT weekOpened(layout_.weeks[week].monday);
  const auto day = dayAt(event->position());
  if (!day) return;
  // Choosing a day lays the month out again, so the bar is kept by value.
  const auto index = barAt(event->position());
  const std::optional<MonthBar> bar =
      index ? std::optional{layout_.bars[*index]} : std::nullopt;
  cursor_ = day->second;
  Q_EMIT dayChosen(day->second);
  if (bar) Q_EMIT barOpened(*bar);
}

void MonthView::mouseMoveEvent(QMouseEvent* event) {
  const bool onWords = std::ranges::any_of(layout_.weeks, [&](const MonthWeek& week) {
    const auto index = static_cast<int>(&week - layout_.weeks.data());
    return week.hidden > 0 && geometry_.moreBox(index).contains(event->position());
  });
  setCursor(onWords || barAt(event->position()) ? Qt::PointingHandCursor
                                                : Qt::ArrowCursor);
}

void MonthView::keyPressEvent(QKeyEvent* event) {
  if (moveByDay(*event)) return;
  switch (event->key()) {
    case Qt::Key_PageUp:
      return Q_EMIT turned(-1);
    case Qt::Key_PageDown:
      return Q_EMIT turned(1);
    case Qt::Key_Home:
      return Q_EMIT dayWanted(scene_.today);
    case Qt::Key_Space:
      return Q_EMIT dayChosen(cursor_);
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (segment_) return openBar(segmentsInOrder(layout_)[*segment_].second->bar);
      return Q_EMIT dayChosen(cursor_);
    case Qt::Key_Escape:
      if (!segment_) return event->ignore();
      segment_.reset();
      return update();
    default:
      QWidget::keyPressEvent(event);
  }
}

bool MonthView::moveByDay(const QKeyEvent& event) {
  struct Move {
    int key;
    int days;
  };

  static constexpr Move moves[] = {{Qt::Key_Left, -1},
                                   {Qt::Key_Right, 1},
                                   {Qt::Key_Up, -daysInWeek},
                                   {Qt::Key_Down, daysInWeek}};
  const auto* move = std::ranges::find(moves, event.key(), &Move::key);
  if (move == std::end(moves)) return false;
  if ((event.modifiers() & Qt::ControlModifier) != 0)
    stepBar(move->days > 0 ? 1 : -1);
  else
    moveCursor(plusDays(cursor_, move->days));
  return true;
}

void MonthView::moveCursor(Day day) {
  segment_.reset();
  cursor_ = day;
  if (!scene_.weeks.contains(day)) Q_EMIT dayWanted(day);
  tellReader();
  update();
}

void MonthView::stepBar(int steps) {
  const auto all = segmentsInOrder(layout_);
  if (all.empty()) return;
  const int week = daysBetween(scene_.weeks.first, cursor_) / daysInWeek;
  int next = 0;
  if (segment_)
    next = static_cast<int>(*segment_) + steps;
  else
    while (next + 1 < static_cast<int>(all.size())
           && static_cast<int>(all[static_cast<std::size_t>(next)].first) < week)
      ++next;
  segment_ =
      static_cast<std::size_t>(std::clamp(next, 0, static_cast<int>(all.size()) - 1));
  const auto& [at, segment] = all[*segment_];
  const Day monday = layout_.weeks[at].monday;
  cursor_ = std::clamp(cursor_,
                       plusDays(monday, segment->span().first),
                       plusDays(monday, segment->span().last));
  tellReader();
  update();
}

void MonthView::openBar(std::size_t index) {
  const MonthBar bar = layout_.bars[index];
  Q_EMIT dayChosen(cursor_);
  Q_EMIT barOpened(bar);
}

void MonthView::tellReader() {
  QString words = weekdayText(cursor_);
  if (segment_)
    words =
        scene_.describe(layout_.bars[segmentsInOrder(layout_)[*segment_].second->bar]);
  setAccessibleDescription(words);
  QAccessibleEvent event{this, QAccessible::DescriptionChanged};
  QAccessible::updateAccessibility(&event);
}

void MonthView::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  tellReader();
  update();
}

void MonthView::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

QString MonthView::wordsAt(QPointF where) const {
  if (const auto bar = barAt(where)) return scene_.describe(layout_.bars[*bar]);
  const auto day = dayAt(where);
  if (!day) return {};
  QStringList lines;
  const double line = geometry_.weekTop(day->first) + geometry_.laneTop;
  if (where.y() >= line) return {};
  for (const StageMark& mark :
       layout_.weeks[static_cast<std::size_t>(day->first)].stages) {
    const MonthStage& stage = layout_.stages[mark.stage];
    if (!DaySpan{stage.early, stage.late}.contains(day->second)) continue;
    const QString name = QString::fromStdString(stage.name);
    lines << (stage.early == stage.late
                  ? tr("%1: %2").arg(name, shortDayText(stage.date))
                  : tr("%1: most likely %2, in eight cases of ten from %3 to %4")
                        .arg(name,
                             shortDayText(stage.date),
                             shortDayText(stage.early),
                             shortDayText(stage.late)));
  }
  return lines.join(QLatin1Char('\n'));
}

bool MonthView::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip) return QWidget::event(event);
  const auto* help = static_cast<QHelpEvent*>(event);
  const QString words = wordsAt(help->pos());
  if (words.isEmpty())
    QToolTip::hideText();
  else
    QToolTip::showText(help->globalPos(), words, this);
  return true;
}

}  // namespace topwire
