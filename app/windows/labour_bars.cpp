#include "app/windows/labour_bars.h"

#include "app/look/state_shape.h"
#include "app/words/say.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace topwire {

namespace {

constexpr int barGap = 2;
constexpr int lineGap = 10;
constexpr double radius = 3;

QString monthName(unsigned month) {
  return voiceIn(language()).monthName(dayOf(2027, month, 1));
}

}  // namespace

LabourBars::LabourBars(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("labourBars"));
  setFont(fontOf(TypeSize::small));
}

void LabourBars::setMonths(const std::vector<MonthLabour>& months,
                           const QString& thisSeason,
                           const QString& nextSeason) {
  months_ = months;
  std::erase_if(months_, [](const MonthLabour& month) {
    return month.planned < 0.05 && month.noted < 0.05 && month.coming < 0.05;
  });
  this_ = thisSeason;
  next_ = nextSeason;
  describe();
  updateGeometry();
  update();
}

/// The same in words, for who does not see it.
void LabourBars::describe() {
  QStringList lines;
  for (const MonthLabour& month : months_)
    lines << tr("%1: %2 planned and %3 noted in %4, %5 planned in %6")
                 .arg(monthName(month.month),
                      hoursText(month.planned),
                      hoursText(month.noted),
                      this_,
                      hoursText(month.coming),
                      next_);
  setAccessibleName(tr("Worker-hours by month"));
  setAccessibleDescription(lines.join(QStringLiteral("; ")));
  setToolTip({});
}

int LabourBars::pitch() const {
  return 2 * (fontMetrics().height() + 2) + barGap + lineGap;
}

QSize LabourBars::sizeHint() const {
  return {560, pitch() * static_cast<int>(months_.size())};
}

QSize LabourBars::minimumSizeHint() const {
  return {320, sizeHint().height()};
}

double LabourBars::most() const {
  double hours = 1;
  for (const MonthLabour& month : months_)
    hours = std::max({hours, month.planned, month.noted, month.coming});
  return hours;
}

void LabourBars::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  painter.setRenderHint(QPainter::Antialiasing);
  QRectF line{0, 0, static_cast<double>(width()), static_cast<double>(pitch())};
  for (const MonthLabour& month : months_) {
    paintMonth(painter, month, line);
    line.translate(0, pitch());
  }
}

void LabourBars::paintMonth(QPainter& painter,
                            const MonthLabour& month,
                            const QRectF& line) const {
  int nameWidth = 0;
  for (const MonthLabour& any : months_)
    nameWidth =
        std::max(nameWidth, fontMetrics().horizontalAdvance(monthName(any.month)));
  const double height = fontMetrics().height() + 2;
  painter.setPen(palette().color(QPalette::WindowText));
  painter.drawText(QRectF{line.left(), line.top(), nameWidth + 4.0, height},
                   Qt::AlignLeft | Qt::AlignVCenter,
                   monthName(month.month));
  QRectF room = line.adjusted(nameWidth + 16.0, 0, 0, 0);
  room.setHeight(height);
  paintBar(painter,
           room,
           month.planned,
           month.noted,
           TaskState::done,
           tr("%1: %2 planned, %3 noted")
               .arg(this_, hoursText(month.planned), hoursText(month.noted)));
  room.translate(0, height + barGap);
  paintBar(painter,
           room,
           month.coming,
           0,
           TaskState::open,
           tr("%1: %2 planned").arg(next_, hoursText(month.coming)));
}

/// What was noted fills the bar; what was planned is its outline. Words stand after it,
/// or inside where they'd run out of the widget.
void LabourBars::paintBar(QPainter& painter,
                          const QRectF& room,
                          double hours,
                          double done,
                          TaskState fill,
                          const QString& words) const {
  const double wordsWidth = fontMetrics().horizontalAdvance(words) + 12.0;
  const double scale = std::max(40.0, room.width() - wordsWidth) / most();
  const double filled = fill == TaskState::open ? hours : done;
  if (filled > 0) {
    QPainterPath bar;
    bar.addRoundedRect(
        QRectF{room.topLeft(), QSizeF{filled * scale, room.height()}}, radius, radius);
    paintStateFill(painter, bar, fill);
    painter.setPen(edgePen(fill));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(bar);
  }
  if (hours > 0 && fill != TaskState::open) {
    painter.setPen(QPen{palette().color(QPalette::Dark), 1.2});
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(
        QRectF{room.topLeft(), QSizeF{hours * scale, room.height()}}.adjusted(
            0.6, 0.6, -0.6, -0.6),
        radius,
        radius);
  }
  const double end = std::max(hours, filled) * scale;
  painter.setPen(palette().color(QPalette::WindowText));
  painter.drawText(QRectF{room.left() + end + 8, room.top(), wordsWidth, room.height()},
                   Qt::AlignLeft | Qt::AlignVCenter,
                   words);
}

}  // namespace topwire
