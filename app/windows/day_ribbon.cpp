#include "app/windows/day_ribbon.h"

#include "app/look/card.h"
#include "app/look/icons.h"
#include "app/models/days_ahead.h"
#include "app/windows/task_row.h"
#include "app/words/say.h"
#include "core/calendar/clock_time.h"

#include <QHBoxLayout>
#include <QPainter>

namespace topwire {

namespace {

constexpr int minutesPerHour = 60;
constexpr int tickLength = 5;
constexpr int iconSide = 14;

QString sourceText(WeatherSource source) {
  switch (source) {
    case WeatherSource::forecast:
      return DayRibbon::tr("as forecast");
    case WeatherSource::typed:
      return DayRibbon::tr("as typed in");
    case WeatherSource::measured:
      break;
  }
  return DayRibbon::tr("as measured");
}

}  // namespace

HourAxis::HourAxis(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setFixedHeight(QFontMetrics{fontOf(TypeSize::small)}.height() + tickLength + 2);
}

void HourAxis::setAxis(const DayAxis& axis) {
  axis_ = axis;
  update();
}

void HourAxis::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  const BaseColours& base = baseColours(currentTheme());
  painter.setFont(fontOf(TypeSize::small));
  const QFontMetrics metrics = painter.fontMetrics();
  int free = 0;
  for (int minute = axis_.from; minute <= axis_.to; minute += minutesPerHour) {
    const int x = std::min(static_cast<int>(axis_.placeOf(minute, width())), width() - 1);
    painter.setPen(base.outline);
    painter.drawLine(x, 0, x, tickLength);
    const QString text = QString::fromStdString(clockText(minute));
    const int wide = metrics.horizontalAdvance(text);
    const int left = std::clamp(x - wide / 2, 0, std::max(0, width() - wide));
    if (left < free) continue;
    painter.setPen(base.muted);
    painter.drawText(left, tickLength + 1 + metrics.ascent(), text);
    free = left + wide + 8;
  }
}

DayRibbon::DayRibbon(Session& session, QWidget* parent)
    : QWidget(parent), session_(&session), lines_(new QVBoxLayout), axis_(new HourAxis) {
  setObjectName(QStringLiteral("dayRibbon"));
  auto* card = new Card{QPalette::Base};
  card->setLayout(lines_);
  lines_->setContentsMargins(14, 8, 14, 8);
  lines_->setSpacing(4);
  auto* hours = new QVBoxLayout;
  hours->setSpacing(0);
  hours->addWidget(card);
  hours->addWidget(axis_);
  auto* line = new QHBoxLayout{this};
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(crewHeadGap);
  line->addWidget(words(), 0, Qt::AlignTop);
  line->addLayout(hours, 1);
}

QWidget* DayRibbon::words() {
  auto* box = new QWidget;
  box->setFixedWidth(crewHeadWidth);
  auto* lines = new QVBoxLayout{box};
  lines->setContentsMargins(0, 0, 0, 0);
  lines->setSpacing(2);
  title_ = wrapping(textLabel({}, TypeSize::body, true));
  lines->addWidget(title_);
  source_ = wrapping(mutedLabel({}));
  lines->addWidget(source_);
  lost_ = linkButton(tr("&Change its hours…"));
  lost_->setObjectName(QStringLiteral("lostDay"));
  lost_->setFocusPolicy(Qt::StrongFocus);
  lost_->setToolTip(
      tr("A day lost to weather, a holiday, half a day, or work on a day of rest."));
  lines->addWidget(lost_, 0, Qt::AlignLeft);
  connect(lost_, &QPushButton::clicked, this, &DayRibbon::lostWanted);
  return box;
}

QString DayRibbon::weatherLine(Day day) const {
  const WeatherDay* weather = weatherOn(session_->orchard(), day);
  if (weather == nullptr || !weather->known()) return {};
  const UnitSystem units = session_->orchard().settings.units;
  QStringList figures;
  for (const QString& figure :
       {rangeText(*weather, units, false), rainText(*weather, units)})
    if (!figure.isEmpty()) figures << figure;
  return figures.join(QStringLiteral(" · "));
}

void DayRibbon::addLine(const QString& head, const QString& words, bool cautions) {
  auto* row = new QWidget;
  auto* line = new QHBoxLayout{row};
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(8);
  if (cautions) {
    auto* mark = new QLabel;
    const QSize size{iconSide, iconSide};
    mark->setPixmap(iconFor(Icon::wait).pixmap(size, devicePixelRatioF()));
    line->addWidget(mark, 0, Qt::AlignTop);
  }
  if (!head.isEmpty())
    line->addWidget(textLabel(head, TypeSize::body, true), 0, Qt::AlignTop);
  QLabel* text = wrapping(textLabel(words));
  text->setObjectName(QStringLiteral("ribbonLine"));
  line->addWidget(text, 1);
  lines_->addWidget(row);
}

void DayRibbon::setDay(Day day, const DayAxis& axis, const CautionsByPlanting& cautions) {
  while (QLayoutItem* item = lines_->takeAt(0)) {
    item->widget()->hide();
    item->widget()->deleteLater();
    delete item;
  }
  const bool past = day < session_->today();
  axis_->setAxis(axis);
  title_->setText(past ? tr("How the day was") : tr("What the day allows"));
  axis_->setVisible(!past);
  lost_->setVisible(!past);
  lost_->setEnabled(!session_->isReadOnly());
  const Orchard& orchard = session_->orchard();
  const WeatherDay* weather = weatherOn(orchard, day);
  source_->setVisible(weather != nullptr);
  if (weather != nullptr) source_->setText(sourceText(weather->source));
  if (const auto own = orchard.workDays.find(day); own != orchard.workDays.end())
    addLine(tr("%1 % of the usual hours").arg(own->second.percent),
            QString::fromStdString(own->second.reason),
            false);
  const QString figures = weatherLine(day);
  const std::vector<SharedCaution> shared = sharedAmong(orchard, cautions);
  for (const SharedCaution& caution : shared) {
    const QString places = QString::fromStdString(placesOf(orchard, caution));
    const QString words =
        say(caution.caution.sentence) + u' ' + say(caution.caution.advice);
    addLine({}, places.isEmpty() ? words : tr("%1: %2").arg(places, words), true);
  }
  if (!figures.isEmpty() && shared.empty())
    addLine(figures,
            past ? QString{} : tr("Nothing in it speaks against the day's work."),
            false);
  else if (shared.empty())
    addLine({},
            past ? tr("Nothing is known of the day's weather.")
                 : tr("Nothing is known of the day's weather yet."),
            false);
  setToolTip(shared.empty() ? QString{} : say(cautionAdvice()));
}

}  // namespace topwire
