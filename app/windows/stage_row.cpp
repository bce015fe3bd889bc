#include "app/windows/stage_row.h"

#include "app/look/card.h"
#include "app/look/look.h"
#include "app/windows/block_words.h"
#include "app/windows/day_field.h"
#include "app/windows/heat_view.h"
#include "app/windows/task_row.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>

namespace topwire {

namespace {

constexpr int diamondColumn = 42;
constexpr double diamondHalf = 7;
constexpr int rightMargin = 15;
constexpr int chosenEdge = 4;

}  // namespace

StageRow::StageRow(const StageLine& line, Day today, bool writable, QWidget* parent)
    : QWidget(parent), line_(line), today_(today), writable_(writable) {
  setFocusPolicy(Qt::StrongFocus);
  setObjectName(QStringLiteral("stage%1").arg(line.bbch));
  setAccessibleName(QStringList{capitalised(line.name), line.when, line.details}.join(
      QStringLiteral(", ")));
  setAccessibleDescription(tr("Enter: seen today. D: seen on another day."));
  auto* grid = new QGridLayout{this};
  grid->setContentsMargins(diamondColumn, 6, rightMargin, 8);
  grid->setVerticalSpacing(1);
  QLabel* name = textLabel(capitalised(line.name), TypeSize::name, true);
  name->setWordWrap(true);
  name->setMinimumWidth(1);
  grid->addWidget(name, 0, 0, Qt::AlignVCenter);
  seenToday_ = new QPushButton{tr("Seen today")};
  seenToday_->setObjectName(QStringLiteral("seenToday"));
  seenToday_->setProperty("main", true);
  seenToday_->setFocusPolicy(Qt::TabFocus);
  grid->addWidget(seenToday_, 0, 1, Qt::AlignRight | Qt::AlignVCenter);
  grid->addWidget(detailsLine(), 1, 0, 1, 2);
  grid->addWidget(entry_ = dayEntry(), 2, 0, 1, 2);
  problem_ = textLabel({}, TypeSize::small, true);
  problem_->setObjectName(QStringLiteral("seenProblem"));
  problem_->setWordWrap(true);
  problem_->hide();
  grid->addWidget(problem_, 3, 0, 1, 2);
  grid->setColumnStretch(0, 1);
  connect(seenToday_, &QPushButton::clicked, this, &StageRow::seeToday);
  setChosen(false);
}

QWidget* StageRow::detailsLine() {
  auto* line = new QWidget;
  auto* layout = new QHBoxLayout{line};
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(6);
  layout->addWidget(textLabel(line_.when), 0, Qt::AlignTop);
  QLabel* details = mutedLabel(
      line_.details.isEmpty() ? QString{} : QStringLiteral("· ") + line_.details);
  details->setWordWrap(true);
  details->setMinimumWidth(1);
  details->setContentsMargins(0, 1, 0, 0);
  layout->addWidget(details, 1, Qt::AlignTop);
  otherDay_ = linkButton(tr("Another day"));
  otherDay_->setObjectName(QStringLiteral("otherDay"));
  otherDay_->setFocusPolicy(Qt::TabFocus);
  layout->addWidget(otherDay_, 0, Qt::AlignTop);
  connect(otherDay_, &QPushButton::clicked, this, &StageRow::askDay);
  return line;
}

QWidget* StageRow::dayEntry() {
  auto* line = new QWidget;
  auto* layout = new QHBoxLayout{line};
  layout->setContentsMargins(0, 4, 0, 2);
  day_ = dayField();
  day_->setObjectName(QStringLiteral("seenDay"));
  day_->setAccessibleName(tr("Day it was seen"));
  day_->setDate(dateOf(line_.seen ? line_.date : today_));
  day_->setMaximumDate(dateOf(today_));
  auto* keep = new QPushButton{tr("Seen then")};
  keep->setObjectName(QStringLiteral("seenThen"));
  layout->addWidget(day_, 1);
  layout->addWidget(keep);
  connect(keep, &QPushButton::clicked, this, [this] {
    Q_EMIT seen(line_.bbch, dayOf(day_->date()));
  });
  return line;
}

void StageRow::setChosen(bool chosen) {
  chosen_ = chosen;
  seenToday_->setVisible(chosen && writable_ && !line_.seen);
  otherDay_->setVisible(chosen && writable_);
  if (!chosen) problem_->hide();
  entry_->hide();
  update();
}

void StageRow::showProblem(const QString& words) {
  problem_->setText(words);
  problem_->setVisible(!words.isEmpty());
}

void StageRow::askDay() {
  entry_->show();
  day_->setFocus(Qt::OtherFocusReason);
}

void StageRow::seeToday() {
  Q_EMIT seen(line_.bbch, today_);
}

void StageRow::mousePressEvent(QMouseEvent*) {
  Q_EMIT chosen(line_.bbch);
  setFocus(Qt::MouseFocusReason);
}

void StageRow::keyPressEvent(QKeyEvent* event) {
  const bool open = chosen_ && writable_;
  switch (event->key()) {
    case Qt::Key_Up:
      return Q_EMIT stepWanted(-1);
    case Qt::Key_Down:
      return Q_EMIT stepWanted(1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (day_->hasFocus()) return Q_EMIT seen(line_.bbch, dayOf(day_->date()));
      if (open && !line_.seen) return seeToday();
      return;
    case Qt::Key_D:
      if (open) return askDay();
      return;
    case Qt::Key_Escape:
      if (entry_->isHidden()) return event->ignore();
      entry_->hide();
      return setFocus(Qt::OtherFocusReason);
    default:
      QWidget::keyPressEvent(event);
  }
}

void StageRow::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  if (!chosen_) Q_EMIT chosen(line_.bbch);
  update();
}

void StageRow::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

void StageRow::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  const BaseColours& base = baseColours(currentTheme());
  if (chosen_ && writable_) {
    painter.fillRect(rect(), base.accentTint);
    painter.fillRect(0, 0, chosenEdge, height(), base.accent);
  }
  painter.fillRect(0, 0, width(), 1, base.hairline);
  painter.setRenderHint(QPainter::Antialiasing);
  HeatColours colours = heatColoursOnScreen();
  colours.ground = base.raised;
  const QRect name = childrenRect();
  const double middle = seenToday_->isHidden()
                            ? name.top() + 11.0
                            : seenToday_->geometry().center().y() + 1.0;
  paintDiamond(painter, {24, middle}, diamondHalf, line_.seen, colours);
  if (!hasFocus() || !window()->testAttribute(Qt::WA_KeyboardFocusChange)) return;
  painter.setPen(QPen{base.focus, 2});
  painter.setBrush(Qt::NoBrush);
  painter.drawRoundedRect(QRectF{rect()}.adjusted(5, 2, -3, -2), 6, 6);
}

}  // namespace topwire
