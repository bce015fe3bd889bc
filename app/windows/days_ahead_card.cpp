#include "app/windows/days_ahead_card.h"

#include "app/look/look.h"
#include "app/look/state_shape.h"
#include "app/words/say.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace topwire {

namespace {

constexpr double shapeSide = 9;
constexpr double besideShape = 3;
constexpr double padding = 4;
constexpr int mostLines = 2;
constexpr int narrowestDay = 62;

/// Its shape is heavier than its colour: a hollow mark, a triangle, a diamond with a
/// stroke.
TaskState looksLike(Severity severity) {
  switch (severity) {
    case Severity::low:
      return TaskState::waiting;
    case Severity::serious:
      return TaskState::closing;
    case Severity::grave:
      break;
  }
  return TaskState::late;
}

double lineHeight() {
  return QFontMetricsF{fontOf(TypeSize::small)}.height();
}

/// "Thu 8", and the month's name on its first.
QString dayName(Day day) {
  const Voice voice = voiceIn(language());
  const unsigned number = static_cast<unsigned>(civil(day).day());
  const QString weekday = voice.shortDay(day).section(QLatin1Char(' '), 0, 0);
  return QStringLiteral("%1 %2").arg(weekday.chopped(weekday.endsWith(QLatin1Char(','))),
                                     QString::number(number));
}

bool isKnown(const std::vector<DayAhead>& days) {
  return std::ranges::any_of(days,
                             [](const DayAhead& day) { return day.weather.has_value(); });
}

}  // namespace

DaysAheadStrip::DaysAheadStrip(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("daysAhead"));
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Coming days"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void DaysAheadStrip::setDays(std::vector<DayAhead> days, UnitSystem units) {
  const bool same =
      !days.empty() && !days_.empty() && days.front().day == days_.front().day;
  days_ = std::move(days);
  units_ = units;
  if (!same) {
    const auto first = std::ranges::find_if(
        days_, [](const DayAhead& day) { return !day.cautions.empty(); });
    chosen_ = first == days_.end() ? 0 : static_cast<int>(first - days_.begin());
  }
  updateGeometry();
  choose(chosen_);
}

void DaysAheadStrip::choose(int index) {
  if (days_.empty()) return;
  chosen_ = std::clamp(index, 0, static_cast<int>(days_.size()) - 1);
  setAccessibleDescription(describe(days_[static_cast<std::size_t>(chosen_)], units_));
  QAccessibleEvent event{this, QAccessible::DescriptionChanged};
  QAccessible::updateAccessibility(&event);
  update();
  Q_EMIT chosenChanged();
}

int DaysAheadStrip::linesOfCautions() const {
  std::size_t most = 0;
  for (const DayAhead& day : days_) most = std::max(most, day.cautions.size());
  return std::min(mostLines, static_cast<int>(most));
}

QSize DaysAheadStrip::sizeHint() const {
  return minimumSizeHint();
}

QSize DaysAheadStrip::minimumSizeHint() const {
  const double height = (2 + linesOfCautions()) * (lineHeight() + 2) + 2 * padding - 2;
  return {narrowestDay * static_cast<int>(std::max<std::size_t>(1, days_.size())),
          static_cast<int>(height)};
}

QRectF DaysAheadStrip::boxOf(int index) const {
  const double wide = static_cast<double>(width()) / static_cast<double>(days_.size());
  return {index * wide, 0, wide, static_cast<double>(height())};
}

void DaysAheadStrip::paintDay(QPainter& painter, int index) const {
  const BaseColours& base = baseColours(currentTheme());
  const DayAhead& day = days_[static_cast<std::size_t>(index)];
  const QRectF box = boxOf(index);
  if (index == chosen_) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(base.accentTint);
    painter.drawRoundedRect(box.adjusted(1, 0, -1, 0), 4, 4);
  } else if (index > 0 && index - 1 != chosen_) {
    painter.fillRect(QRectF{box.left(), 6, 1, box.height() - 12}, base.hairline);
  }
  QRectF line{box.left() + padding, padding, box.width() - padding - 1, lineHeight()};
  const auto write = [&](const QString& words, bool bold, const QColor& ink) {
    painter.setFont(fontOf(TypeSize::small, bold));
    painter.setPen(ink);
    const QString fitting =
        painter.fontMetrics().elidedText(words, Qt::ElideRight, qFloor(line.width()));
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, fitting);
    line.translate(0, lineHeight() + 2);
  };
  write(dayName(day.day), index == 0 || index == chosen_, base.text);
  const QString range = day.weather ? rangeText(*day.weather, units_, true) : QString{};
  write(range.isEmpty() ? QStringLiteral("–") : range, false, base.muted);
  for (int i = 0; i < std::min(mostLines, static_cast<int>(day.cautions.size())); ++i) {
    const DayCaution& caution = day.cautions[static_cast<std::size_t>(i)];
    const TaskState look = looksLike(caution.severity);
    paintShape(painter,
               {line.left(), line.center().y() - shapeSide / 2, shapeSide, shapeSide},
               look);
    line.adjust(shapeSide + besideShape, 0, 0, 0);
    write(nameOf(caution.kind),
          caution.severity != Severity::low,
          stateColours(currentTheme(), look).ink);
    line.adjust(-shapeSide - besideShape, 0, 0, 0);
  }
}

void DaysAheadStrip::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  painter.setRenderHint(QPainter::Antialiasing);
  for (int i = 0; i < static_cast<int>(days_.size()); ++i) paintDay(painter, i);
  if (!hasFocus() || days_.empty()) return;
  painter.setPen(QPen{baseColours(currentTheme()).focus, 2});
  painter.setBrush(Qt::NoBrush);
  painter.drawRoundedRect(boxOf(chosen_).adjusted(2, 1, -2, -1), 4, 4);
}

void DaysAheadStrip::mousePressEvent(QMouseEvent* event) {
  if (days_.empty()) return;
  choose(static_cast<int>(event->position().x() / boxOf(0).width()));
}

void DaysAheadStrip::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Left:
      return choose(chosen_ - 1);
    case Qt::Key_Right:
      return choose(chosen_ + 1);
    case Qt::Key_Home:
      return choose(0);
    case Qt::Key_End:
      return choose(static_cast<int>(days_.size()) - 1);
    default:
      QWidget::keyPressEvent(event);
  }
}

void DaysAheadStrip::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

void DaysAheadStrip::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

DaysAheadCard::DaysAheadCard(QWidget* parent)
    : Card(QPalette::Base, parent)
    , strip_(new DaysAheadStrip)
    , words_(textLabel({}, TypeSize::small)) {
  setObjectName(QStringLiteral("daysAheadCard"));
  words_->setObjectName(QStringLiteral("dayAheadWords"));
  words_->setWordWrap(true);
  words_->setMinimumWidth(1);
  words_->setContentsMargins(padding, 0, 0, 0);
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(10, 8, 12, 10);
  lines->setSpacing(4);
  lines->addWidget(strip_);
  lines->addWidget(words_);
  connect(strip_, &DaysAheadStrip::chosenChanged, this, &DaysAheadCard::tellChosen);
}

void DaysAheadCard::setDays(std::vector<DayAhead> days, UnitSystem units) {
  units_ = units;
  setVisible(isKnown(days));
  strip_->setDays(std::move(days), units);
}

void DaysAheadCard::tellChosen() {
  const DayAhead& day = strip_->days()[static_cast<std::size_t>(strip_->chosen())];
  words_->setText(describe(day, units_));
  words_->setToolTip(say(cautionAdvice()));
}

}  // namespace topwire
