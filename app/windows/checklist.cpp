#include "app/windows/checklist.h"

#include "app/look/card.h"
#include "app/look/icons.h"
#include "app/look/look.h"
#include "app/look/tokens.h"
#include "app/windows/fit_height.h"
#include "app/windows/task_words.h"
#include "app/words/say.h"

#include <QEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>

namespace topwire {

Checklist::Checklist(Session& session, QWidget* parent)
    : QWidget(parent), session_(&session) {
  auto* layout = new QVBoxLayout{this};
  layout->setContentsMargins(1, 10, 1, 6);
  layout->setSpacing(8);
  layout->addWidget(header());
  area_ = new QScrollArea;
  area_->setWidgetResizable(true);
  area_->setFrameShape(QFrame::NoFrame);
  area_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area_->setFocusPolicy(Qt::NoFocus);
  area_->viewport()->setBackgroundRole(QPalette::Base);
  layout->addWidget(area_, 1);
}

QWidget* Checklist::header() {
  auto* head = new QWidget;
  auto* layout = new QGridLayout{head};
  layout->setContentsMargins(15, 0, 15, 0);
  layout->setVerticalSpacing(0);
  title_ = textLabel({}, TypeSize::head, true);
  title_->setObjectName(QStringLiteral("dayTitle"));
  summary_ = mutedLabel({}, TypeSize::body);
  summary_->setObjectName(QStringLiteral("daySummary"));
  summary_->setWordWrap(true);
  waitText_ = textLabel({}, TypeSize::small);
  waitText_->setObjectName(QStringLiteral("dayWaits"));
  waitText_->setWordWrap(true);
  waitText_->setMinimumWidth(1);
  waits_ = new QWidget;
  auto* waitLine = new QVBoxLayout{waits_};
  waitLine->setContentsMargins(0, 6, 0, 0);
  waitLine->setSpacing(1);
  waitLine->addWidget(new WaitWord);
  waitLine->addWidget(waitText_);
  add_ = new QPushButton{tr("&Add work")};
  add_->setIcon(iconFor(Icon::plus, palette().color(QPalette::ButtonText)));
  add_->setObjectName(QStringLiteral("addWork"));
  connect(add_, &QPushButton::clicked, this, &Checklist::addWanted);
  layout->addWidget(title_, 0, 0);
  layout->addWidget(summary_, 1, 0);
  layout->addWidget(add_, 0, 1, 2, 1, Qt::AlignVCenter);
  layout->addWidget(waits_, 2, 0, 1, 2);
  layout->setColumnStretch(0, 1);
  return head;
}

void Checklist::setWork(const DayWork& work) {
  const int scrolledTo = work.day == day_ ? area_->verticalScrollBar()->value() : 0;
  const auto focused =
      std::ranges::find_if(rows_, [](const TaskRow* row) { return row->hasFocus(); });
  const std::optional<TaskKey> keep =
      focused != rows_.end() ? std::optional{(*focused)->task()} : std::nullopt;
  day_ = work.day;
  title_->setText(weekdayText(work.day));
  summary_->setText(dayWorkText(work));
  showWaits(work);
  add_->setEnabled(!session_->isReadOnly());
  fill(work);
  fitHeight(*area_, scrolls_, width());
  if (keep) goTo(*keep);
  area_->verticalScrollBar()->setValue(scrolledTo);
}

void Checklist::fill(const DayWork& work) {
  rows_.clear();
  auto* content = new QWidget;
  list_ = new QVBoxLayout{content};
  list_->setContentsMargins(0, 0, 0, 0);
  list_->setSpacing(0);
  for (const DayGroup& group : work.groups) {
    list_->addWidget(groupHead(group));
    list_->addSpacing(4);
    for (const TaskView& view : group.views) {
      const auto wait = work.waits.find(view.task->key);
      addRow(view, wait == work.waits.end() ? nullptr : &wait->second);
    }
    list_->addSpacing(4);
  }
  if (work.groups.empty()) {
    QLabel* nothing = mutedLabel(
        tr("No window is open on this day. Choose another day, or add work of your own."),
        TypeSize::body);
    nothing->setContentsMargins(15, 8, 15, 8);
    list_->addWidget(nothing);
  }
  list_->addStretch(1);
  // The old list may be the one that asked for the change.
  if (QWidget* old = area_->takeWidget()) old->deleteLater();
  area_->setWidget(content);
  content->setAutoFillBackground(false);
}

QWidget* Checklist::groupHead(const DayGroup& group) {
  const Planting& planting = session_->orchard().plantings.at(group.planting);
  const Block& block = blockOf(session_->orchard(), planting);
  QLabel* head = textLabel(
      QStringLiteral("<b>%1</b> · <span style=\"font-size:9pt; color:%2\">%3</span>")
          .arg(QString::fromStdString(block.name).toHtmlEscaped(),
               baseColours(currentTheme()).muted.name(),
               plantingText(*session_, planting, day_).toHtmlEscaped()));
  head->setTextFormat(Qt::RichText);
  head->setWordWrap(true);
  head->setMinimumWidth(1);
  head->setAutoFillBackground(true);
  head->setBackgroundRole(QPalette::Window);
  head->setContentsMargins(15, 4, 15, 4);
  return head;
}

void Checklist::showWaits(const DayWork& work) {
  waits_->setVisible(!work.cautions.empty());
  waitText_->setText(waitText(*session_, work));
  waitText_->setToolTip(say(cautionAdvice()));
}

void Checklist::addRow(const TaskView& view, const DayCaution* wait) {
  auto* row = new TaskRow{*session_, view, wait};
  if (unfolded_.contains(row->task())) row->unfoldWhy(true);
  connect(row, &TaskRow::tickWanted, this, &Checklist::tickWanted);
  connect(row, &TaskRow::rowsWanted, this, &Checklist::rowsWanted);
  connect(row, &TaskRow::asideWanted, this, &Checklist::asideWanted);
  connect(row, &TaskRow::moveWanted, this, &Checklist::moveWanted);
  connect(row, &TaskRow::restoreWanted, this, &Checklist::restoreWanted);
  connect(row, &TaskRow::stepWanted, this, [this, row](int steps) { step(*row, steps); });
  connect(row, &TaskRow::whyFolded, this, [this](const TaskKey& task, bool open) {
    if (open)
      unfolded_.insert(task);
    else
      unfolded_.erase(task);
    fitHeight(*area_, scrolls_, width());
  });
  rows_.push_back(row);
  list_->addWidget(row);
}

void Checklist::step(const TaskRow& from, int steps) {
  const auto at = std::ranges::find(rows_, &from);
  const auto index = at - rows_.begin() + steps;
  if (index < 0 || index >= static_cast<std::ptrdiff_t>(rows_.size())) return;
  TaskRow* next = rows_[static_cast<std::size_t>(index)];
  next->setFocus(Qt::TabFocusReason);
  area_->ensureWidgetVisible(next, 0, 8);
}

bool Checklist::goTo(const TaskKey& task) {
  const auto found = std::ranges::find(rows_, task, &TaskRow::task);
  if (found == rows_.end()) return false;
  (*found)->setFocus(Qt::OtherFocusReason);
  area_->widget()->layout()->activate();
  area_->ensureWidgetVisible(*found, 0, 8);
  return true;
}

void Checklist::setScrolling(bool scrolls) {
  scrolls_ = scrolls;
  fitHeight(*area_, scrolls_, width());
}

bool Checklist::event(QEvent* event) {
  if (event->type() == QEvent::Resize || event->type() == QEvent::LayoutRequest)
    fitHeight(*area_, scrolls_, width());
  return QWidget::event(event);
}

void Checklist::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  painter.setRenderHint(QPainter::Antialiasing);
  const BaseColours& base = baseColours(currentTheme());
  painter.setPen(QPen{base.hairline, 1});
  painter.setBrush(base.surface);
  painter.drawRoundedRect(QRectF{rect()}.adjusted(0.5, 0.5, -0.5, -0.5), 6, 6);
}

}  // namespace topwire
