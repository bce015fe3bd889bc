#include "app/windows/worth_strip.h"

#include "app/look/look.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>

namespace topwire {

namespace {

constexpr int barHeight = 40;
constexpr int narrowestDay = 17;
constexpr double barGap = 3;

int lineHeight() {
  return QFontMetrics{fontOf(TypeSize::small)}.height();
}

}  // namespace

WorthStrip::WorthStrip(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("worthStrip"));
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("What one more worker-hour is worth, day by day"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void WorthStrip::setDays(std::vector<DayWorth> days, std::vector<QString> words) {
  if (days == days_ && words == words_) return;
  days_ = std::move(days);
  words_ = std::move(words);
  const auto dearest = std::ranges::max_element(days_, {}, &DayWorth::saves);
  choose(dearest == days_.end() ? 0 : static_cast<int>(dearest - days_.begin()));
}

QString WorthStrip::text() const {
  const auto at = static_cast<std::size_t>(chosen_);
  return at < words_.size() ? words_[at] : QString{};
}

void WorthStrip::choose(int index) {
  if (days_.empty()) return;
  chosen_ = std::clamp(index, 0, static_cast<int>(days_.size()) - 1);
  setAccessibleDescription(text());
  QAccessibleEvent event{this, QAccessible::DescriptionChanged};
  QAccessible::updateAccessibility(&event);
  update();
  Q_EMIT chosenChanged();
}

QSize WorthStrip::sizeHint() const {
  const int days = std::max(1, static_cast<int>(days_.size()));
  return {days * narrowestDay, barHeight + lineHeight() + 8};
}

QRectF WorthStrip::boxOf(std::size_t index) const {
  const double wide = static_cast<double>(width()) / static_cast<double>(days_.size());
  return {static_cast<double>(index) * wide, 0, wide, static_cast<double>(height())};
}

void WorthStrip::paintDay(QPainter& painter, std::size_t index, double most) const {
  const BaseColours& base = baseColours(currentTheme());
  const DayWorth& day = days_[index];
  const QRectF box = boxOf(index);
  const double foot = barHeight + 3;
  const double tall = most > 0 ? day.saves / most * barHeight : 0;
  const QRectF bar{
      box.left() + barGap / 2, foot - tall, box.width() - barGap, std::max(tall, 1.0)};
  if (day.hours > 0) {
    painter.fillRect(bar, tall > 0 ? base.muted : base.outline);
  } else {
    painter.setPen(QPen{base.outline, 1, Qt::DotLine});
    painter.drawLine(bar.bottomLeft(), bar.bottomRight());
  }
  const bool chosen = static_cast<int>(index) == chosen_;
  painter.setFont(fontOf(TypeSize::small, chosen));
  painter.setPen(chosen ? base.text : base.muted);
  painter.drawText(QRectF{box.left(), foot + 2, box.width(), lineHeight() + 2.0},
                   Qt::AlignCenter,
                   QString::number(static_cast<unsigned>(civil(day.day).day())));
  if (!chosen) return;
  painter.setPen(QPen{hasFocus() ? base.focus : base.text, hasFocus() ? 2.0 : 1.0});
  painter.drawLine(QPointF{box.left() + 2, box.bottom() - 1},
                   QPointF{box.right() - 2, box.bottom() - 1});
}

void WorthStrip::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  const auto dearest = std::ranges::max_element(days_, {}, &DayWorth::saves);
  const double most = dearest == days_.end() ? 0 : dearest->saves;
  for (std::size_t i = 0; i < days_.size(); ++i) paintDay(painter, i, most);
}

void WorthStrip::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Left) return choose(chosen_ - 1);
  if (event->key() == Qt::Key_Right) return choose(chosen_ + 1);
  QWidget::keyPressEvent(event);
}

void WorthStrip::mousePressEvent(QMouseEvent* event) {
  for (std::size_t i = 0; i < days_.size(); ++i)
    if (boxOf(i).contains(event->position())) choose(static_cast<int>(i));
}

void WorthStrip::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

void WorthStrip::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

}  // namespace topwire
