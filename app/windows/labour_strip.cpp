#include "app/windows/labour_strip.h"

#include "app/look/look.h"
#include "app/look/state_shape.h"
#include "app/words/say.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr double radius = 3;
constexpr double gap = 4;
constexpr int stripHeight = 190;
constexpr double nothing = 0.5;
/// Lower ones would be told over every week that something small is carried through.
constexpr double leastTold = 4;

/// 50, 100, 200, 500 ...: about four lines on the scale.
double scaleStep(double most) {
  double step = 1;
  while (most / step > 5)
    step *= std::lround(step / std::pow(10, std::floor(std::log10(step)))) == 2 ? 2.5 : 2;
  return step;
}

QString hoursPlain(double hours) {
  if (hours > 0 && hours < nothing) return LabourStrip::tr("under 1");
  return voiceIn(language()).count(std::llround(hours));
}

}  // namespace

double mostHours(const std::vector<WeekOfLabour>& weeks) {
  double most = 1;
  for (const WeekOfLabour& week : weeks)
    most = std::max({most, week.there, week.wanted, week.planned + week.overdue});
  return most;
}

QString wordsOf(const WeekOfLabour& week) {
  const QString words =
      LabourStrip::tr("Week of %1: %2 worker-hours there, %3 wanted, %4 planned")
          .arg(briefDay(week.monday),
               hoursPlain(week.there),
               hoursPlain(week.wanted),
               hoursPlain(week.planned));
  if (week.overdue < nothing) return words;
  return LabourStrip::tr("%1; %2 carried past their closing")
      .arg(words, hoursPlain(week.overdue));
}

LabourStrip::LabourStrip(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("labourStrip"));
  setFont(fontOf(TypeSize::small));
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAccessibleName(tr("Labour by week"));
}

void LabourStrip::setWeeks(std::vector<WeekOfLabour> weeks, double most) {
  weeks_ = std::move(weeks);
  most_ = std::max(1.0, most);
  chosen_ = std::clamp(chosen_, 0, std::max(0, static_cast<int>(weeks_.size()) - 1));
  describe();
  update();
}

QString LabourStrip::reading() const {
  if (weeks_.empty()) return {};
  return wordsOf(weeks_[static_cast<std::size_t>(chosen_)]);
}

/// The same in words, for who does not see it.
void LabourStrip::describe() {
  setAccessibleDescription(reading());
  setToolTip({});
}

QSize LabourStrip::sizeHint() const {
  return {720, stripHeight};
}

QSize LabourStrip::minimumSizeHint() const {
  return {360, stripHeight};
}

QRectF LabourStrip::chart() const {
  const double left = fontMetrics().horizontalAdvance(hoursPlain(most_)) + 10.0;
  const double line = fontMetrics().height();
  return QRectF{left, line + 4, width() - left - 2, height() - 2 * line - 12};
}

QRectF LabourStrip::column(int week) const {
  const QRectF area = chart();
  const double pitch =
      area.width() / static_cast<double>(std::max<std::size_t>(1, weeks_.size()));
  return {area.left() + week * pitch + gap / 2, area.top(), pitch - gap, area.height()};
}

double LabourStrip::heightOf(double hours) const {
  return chart().height() * hours / most_;
}

void LabourStrip::choose(int week) {
  if (weeks_.empty()) return;
  chosen_ = std::clamp(week, 0, static_cast<int>(weeks_.size()) - 1);
  describe();
  update();
  Q_EMIT read(reading());
}

void LabourStrip::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Left:
      return choose(chosen_ - 1);
    case Qt::Key_Right:
      return choose(chosen_ + 1);
    case Qt::Key_Home:
      return choose(0);
    case Qt::Key_End:
      return choose(static_cast<int>(weeks_.size()) - 1);
    default:
      QWidget::keyPressEvent(event);
  }
}

void LabourStrip::mouseMoveEvent(QMouseEvent* event) {
  const QRectF area = chart();
  if (weeks_.empty() || event->position().x() < area.left()) return;
  const double pitch = area.width() / static_cast<double>(weeks_.size());
  choose(static_cast<int>((event->position().x() - area.left()) / pitch));
}

void LabourStrip::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  choose(chosen_);
}

void LabourStrip::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

void LabourStrip::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  painter.setRenderHint(QPainter::Antialiasing);
  paintScale(painter);
  for (int week = 0; week < static_cast<int>(weeks_.size()); ++week)
    paintWeek(painter, week);
  paintThere(painter);
  paintMonths(painter);
}

void LabourStrip::paintScale(QPainter& painter) const {
  const QRectF area = chart();
  const double step = scaleStep(most_);
  for (double hours = 0; hours <= most_; hours += step) {
    const double y = area.bottom() - heightOf(hours);
    painter.setPen(QPen{palette().color(QPalette::Mid), 1});
    painter.drawLine(QPointF{area.left(), y}, QPointF{area.right(), y});
    painter.setPen(palette().color(QPalette::PlaceholderText));
    const double line = fontMetrics().height();
    painter.drawText(QRectF{0, y - line / 2, area.left() - 6, line},
                     Qt::AlignRight | Qt::AlignVCenter,
                     hoursPlain(hours));
  }
}

void LabourStrip::paintWeek(QPainter& painter, int index) const {
  const WeekOfLabour& week = weeks_[static_cast<std::size_t>(index)];
  const QRectF room = column(index);
  const auto bar = [&](double from, double hours) {
    return QRectF{room.left(),
                  room.bottom() - heightOf(from + hours),
                  room.width(),
                  heightOf(hours)};
  };
  const auto fill = [&](const QRectF& where, TaskState state) {
    QPainterPath path;
    path.addRoundedRect(where, radius, radius);
    paintStateFill(painter, path, state);
    painter.setPen(edgePen(state));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(path);
  };
  if (week.planned > nothing) fill(bar(0, week.planned), TaskState::done);
  if (week.overdue > nothing) fill(bar(week.planned, week.overdue), TaskState::late);
  painter.setBrush(Qt::NoBrush);
  if (week.wanted > nothing) {
    painter.setPen(QPen{palette().color(QPalette::Dark), 1.2, Qt::DashLine});
    painter.drawRoundedRect(bar(0, week.wanted), radius, radius);
  }
  if (week.overdue > nothing && heightOf(week.overdue) >= leastTold)
    writeOverdue(painter, bar(week.planned, week.overdue), hoursPlain(week.overdue));
  if (hasFocus() && index == chosen_) {
    painter.setPen(QPen{baseColours(currentTheme()).focus, 2.0});
    painter.drawRoundedRect(room.adjusted(-1, -1, 1, 1), radius, radius);
  }
}

/// Over its bar, and over what is wanted where that goes on higher.
void LabourStrip::writeOverdue(QPainter& painter,
                               const QRectF& bar,
                               const QString& hours) const {
  QFont bold = font();
  bold.setBold(true);
  const QFontMetricsF measure{bold};
  QRectF words{0, 0, measure.horizontalAdvance(hours) + 2, measure.height()};
  words.moveCenter({bar.center().x(), bar.top() - measure.height() / 2 - 1});
  painter.fillRect(words, palette().color(QPalette::Base));
  painter.setFont(bold);
  painter.setPen(palette().color(QPalette::WindowText));
  painter.drawText(words, Qt::AlignCenter, hours);
  painter.setFont(font());
  painter.setBrush(Qt::NoBrush);
}

/// What there is, as steps from week to week.
void LabourStrip::paintThere(QPainter& painter) const {
  QPainterPath steps;
  for (int week = 0; week < static_cast<int>(weeks_.size()); ++week) {
    const QRectF room = column(week).adjusted(-gap / 2, 0, gap / 2, 0);
    const double y =
        room.bottom() - heightOf(weeks_[static_cast<std::size_t>(week)].there);
    if (week == 0)
      steps.moveTo(room.left(), y);
    else
      steps.lineTo(room.left(), y);
    steps.lineTo(room.right(), y);
  }
  painter.setPen(QPen{palette().color(QPalette::WindowText), 2});
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(steps);
}

/// The first week of each month carries its name.
void LabourStrip::paintMonths(QPainter& painter) const {
  painter.setPen(palette().color(QPalette::PlaceholderText));
  const QRectF area = chart();
  double free = area.left();
  std::optional<date::month> before;
  for (int week = 0; week < static_cast<int>(weeks_.size()); ++week) {
    const Day monday = weeks_[static_cast<std::size_t>(week)].monday;
    const date::month month = civil(plusDays(monday, 6)).month();
    if (before == month) continue;
    before = month;
    const QString name =
        voiceIn(language()).monthName(plusDays(monday, 6), QLocale::ShortFormat);
    const double left = column(week).left();
    if (left < free) continue;
    const double wide = fontMetrics().horizontalAdvance(name) + 8.0;
    painter.drawText(QRectF{left, area.bottom() + 4, wide, fontMetrics().height() + 2.0},
                     Qt::AlignLeft | Qt::AlignVCenter,
                     name);
    free = left + wide;
  }
}

}  // namespace topwire
