#include "app/windows/heat_view.h"

#include "app/look/look.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr double figurePoints = 22;
constexpr int leastWidth = 420;
constexpr int daysInWeek = 7;

QColor mixed(const QColor& over, const QColor& under, double part) {
  return QColor::fromRgbF(
      static_cast<float>(over.redF() * part + under.redF() * (1 - part)),
      static_cast<float>(over.greenF() * part + under.greenF() * (1 - part)),
      static_cast<float>(over.blueF() * part + under.blueF() * (1 - part)));
}

Voice ownVoice() {
  return voiceIn(language());
}

std::string rounded(double sum, const Voice& voice) {
  return voice.count(std::llround(sum)).toStdString();
}

Phrase sourcePhrase(HeatSource source) {
  switch (source) {
    case HeatSource::measured:
      return phrase("HeatChart", "%1 %2, measured");
    case HeatSource::forecast:
      return phrase("HeatChart", "%1 %2, by the forecast");
    case HeatSource::likely:
      break;
  }
  return phrase("HeatChart", "%1 %2, most likely");
}

}  // namespace

HeatType heatTypeOnScreen() {
  HeatType type{fontOf(TypeSize::small),
                fontOf(TypeSize::body),
                fontOf(TypeSize::body, true),
                fontOf(TypeSize::body, true),
                1};
  type.figure.setPointSizeF(type.figure.pointSizeF() * figurePoints / 10);
  return type;
}

HeatColours heatColoursOnScreen() {
  const BaseColours& base = baseColours(currentTheme());
  const StateColours& quiet = stateColours(currentTheme(), TaskState::waiting);
  constexpr double half = 0.34;
  constexpr double edge = 0.6;
  HeatColours colours;
  colours.ground = base.surface;
  colours.text = base.text;
  colours.muted = base.muted;
  colours.hairline = base.hairline;
  colours.outline = base.outline;
  colours.half = mixed(quiet.mark, base.surface, half);
  colours.eightInTen = quiet.hatch;
  colours.bandEdge = mixed(base.outline, base.surface, edge);
  return colours;
}

HeatView::HeatView(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAccessibleName(tr("Heat of the season"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void HeatView::setScene(HeatScene scene) {
  scene_ = std::move(scene);
  if (read_ && !scene_.days.contains(*read_)) read_.reset();
  layOutChart();
  setAccessibleDescription(describe(scene_, ownVoice()));
  updateGeometry();
  update();
}

void HeatView::layOutChart() {
  if (scene_.days.length() > 1)
    chart_ = layOut(scene_, QSizeF{size()}, heatTypeOnScreen(), ownVoice());
}

QSize HeatView::sizeHint() const {
  return minimumSizeHint();
}

QSize HeatView::minimumSizeHint() const {
  return {leastWidth,
          static_cast<int>(std::ceil(leastHeight(scene_, heatTypeOnScreen())))};
}

void HeatView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  layOutChart();
}

void HeatView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) {
    layOutChart();
    update();
  }
}

void HeatView::read(std::optional<Day> day) {
  if (day == read_) return;
  read_ = day;
  update();
}

void HeatView::mouseMoveEvent(QMouseEvent* event) {
  const QPointF at = event->position();
  const bool over = at.x() >= chart_.plot.left() && at.x() <= chart_.plot.right();
  byKeys_ = false;
  read(over ? std::optional{chart_.dayAt(at.x())} : std::nullopt);
}

void HeatView::leaveEvent(QEvent* event) {
  QWidget::leaveEvent(event);
  if (!byKeys_) read(std::nullopt);
}

void HeatView::step(int days) {
  const Day from =
      read_.value_or(std::clamp(scene_.today, scene_.days.first, scene_.days.last));
  const Day to = read_ ? plusDays(from, days) : from;
  byKeys_ = true;
  read(std::clamp(to, scene_.days.first, scene_.days.last));
  tellReader();
}

bool HeatView::stepToStage(int direction) {
  const Day from = read_.value_or(scene_.today);
  const HeatStage* next = nullptr;
  for (const HeatStage& stage : scene_.stages) {
    const bool ahead = direction > 0 ? stage.date > from : stage.date < from;
    if (!ahead || !scene_.days.contains(stage.date)) continue;
    if (direction < 0 || next == nullptr) next = &stage;
  }
  if (next == nullptr) return false;
  byKeys_ = true;
  read(next->date);
  tellReader();
  return true;
}

void HeatView::keyPressEvent(QKeyEvent* event) {
  const bool far = (event->modifiers() & Qt::ControlModifier) != 0;
  switch (event->key()) {
    case Qt::Key_Left:
      return step(far ? -daysInWeek : -1);
    case Qt::Key_Right:
      return step(far ? daysInWeek : 1);
    case Qt::Key_Up:
      if (!stepToStage(-1)) event->ignore();
      return;
    case Qt::Key_Down:
      if (!stepToStage(1)) event->ignore();
      return;
    case Qt::Key_Home:
      read_.reset();
      return step(0);
    case Qt::Key_Escape:
      if (!read_) return event->ignore();
      return read(std::nullopt);
    default:
      QWidget::keyPressEvent(event);
  }
}

void HeatView::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

void HeatView::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  if (byKeys_) read(std::nullopt);
  update();
}

void HeatView::tellReader() {
  if (!read_) return;
  setAccessibleDescription(readingOf(*read_).join(QStringLiteral(". ")));
  QAccessibleEvent event{this, QAccessible::DescriptionChanged};
  QAccessible::updateAccessibility(&event);
}

QStringList HeatView::readingOf(Day day) const {
  const Voice voice = ownVoice();
  QStringList lines{voice.shortDay(day)};
  const auto reading = readHeat(scene_.heat, day);
  if (reading)
    lines << voice.say(
        Sentence{sourcePhrase(reading->source),
                 {rounded(reading->sum, voice), nameOf(scene_.heat.measure)}});
  if (reading && reading->past) {
    const HeatBand& past = *reading->past;
    lines << voice.say(
        Sentence{phrase("HeatChart", "half of the years %1 to %2"),
                 {rounded(past.lowerQuarter, voice), rounded(past.upperQuarter, voice)}})
          << voice.say(Sentence{phrase("HeatChart", "eight in ten %1 to %2"),
                                {rounded(past.low, voice), rounded(past.high, voice)}});
  }
  for (const HeatStage& stage : scene_.stages)
    if (stage.date == day) lines << stage.name;
  return lines;
}

void HeatView::paintReading(QPainter& painter, Day day) const {
  const BaseColours& base = baseColours(currentTheme());
  const double x = chart_.x(day);
  const double bottom =
      chart_.rows.isEmpty() ? chart_.plot.bottom() : chart_.rows.bottom();
  painter.setPen(QPen{base.focus, 1});
  painter.drawLine(QPointF{x, chart_.plot.top()}, QPointF{x, bottom});
  if (const auto reading = readHeat(scene_.heat, day)) {
    painter.setBrush(base.focus);
    painter.drawEllipse(QPointF{x, chart_.y(reading->sum)}, 3.5, 3.5);
  }
  const QStringList lines = readingOf(day);
  const QFont plain = fontOf(TypeSize::small);
  const QFont strong = fontOf(TypeSize::small, true);
  double wide = QFontMetricsF{strong}.horizontalAdvance(lines.front());
  for (const QString& line : lines)
    wide = std::max(wide, QFontMetricsF{plain}.horizontalAdvance(line));
  const double pitch = QFontMetricsF{plain}.height() + 1;
  const QSizeF size{wide + 20, pitch * static_cast<double>(lines.size()) + 12};
  const bool left = x + 12 + size.width() > width();
  const QRectF box{QPointF{left ? x - 12 - size.width() : x + 12, chart_.plot.top() + 2},
                   size};
  painter.setPen(QPen{base.outline, 1});
  painter.setBrush(base.raised);
  painter.drawRoundedRect(box, 4, 4);
  painter.setPen(base.text);
  QRectF line{box.left() + 10, box.top() + 6, wide + 1, pitch};
  for (const QString& words : lines) {
    painter.setFont(&words == &lines.front() ? strong : plain);
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, words);
    line.translate(0, pitch);
  }
}

void HeatView::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  painter.setRenderHint(QPainter::Antialiasing);
  if (scene_.days.length() <= 1) return;
  paint(painter, chart_, heatTypeOnScreen(), heatColoursOnScreen());
  if (read_) paintReading(painter, *read_);
}

}  // namespace topwire
