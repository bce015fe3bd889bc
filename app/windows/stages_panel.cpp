#include "app/windows/stages_panel.h"

#include "app/windows/block_words.h"
#include "app/windows/fit_height.h"
#include "app/windows/task_row.h"
#include "app/words/say.h"

#include <QEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>

namespace topwire {

namespace {

/// A line of words with a bar at its left: something moved.
class ShiftNote final : public QWidget {
public:
  using QWidget::QWidget;

protected:
  void paintEvent(QPaintEvent*) override {
    QPainter{this}.fillRect(
        0, 0, 3, height(), stateColours(currentTheme(), TaskState::closing).mark);
  }
};

}  // namespace

StagesPanel::StagesPanel(Session& session, QWidget* parent)
    : Card(QPalette::Base, parent), session_(&session) {
  setObjectName(QStringLiteral("stagesPanel"));
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(1, 10, 1, 12);
  lines->setSpacing(0);
  lines->addWidget(head());
  lines->addSpacing(8);
  area_ = new QScrollArea;
  area_->setWidgetResizable(true);
  area_->setFrameShape(QFrame::NoFrame);
  area_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area_->setFocusPolicy(Qt::NoFocus);
  area_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Ignored);
  area_->viewport()->setBackgroundRole(QPalette::Base);
  lines->addWidget(area_, 1);
  lines->addWidget(hairline());
  lines->addWidget(foot());
}

QWidget* StagesPanel::head() {
  auto* box = new QWidget;
  auto* lines = new QVBoxLayout{box};
  lines->setContentsMargins(15, 0, 15, 0);
  lines->setSpacing(0);
  lines->addWidget(textLabel(tr("Stages"), TypeSize::head, true));
  place_ = mutedLabel({}, TypeSize::body);
  place_->setObjectName(QStringLiteral("stagesPlace"));
  place_->setWordWrap(true);
  lines->addWidget(place_);
  return box;
}

QWidget* StagesPanel::foot() {
  auto* box = new QWidget;
  auto* lines = new QVBoxLayout{box};
  lines->setContentsMargins(15, 10, 15, 0);
  lines->setSpacing(8);
  shift_ = new ShiftNote;
  shift_->setObjectName(QStringLiteral("shiftNote"));
  auto* note = new QHBoxLayout{shift_};
  note->setContentsMargins(12, 0, 0, 0);
  shiftWords_ = textLabel({});
  shiftWords_->setObjectName(QStringLiteral("shiftWords"));
  shiftWords_->setWordWrap(true);
  shiftWords_->setMinimumWidth(1);
  QPushButton* show = linkButton(tr("Show them"));
  show->setObjectName(QStringLiteral("showShift"));
  show->setFocusPolicy(Qt::TabFocus);
  note->addWidget(shiftWords_, 1);
  note->addWidget(show, 0, Qt::AlignBottom);
  shift_->hide();
  coverage_ = mutedLabel({});
  coverage_->setObjectName(QStringLiteral("coverage"));
  coverage_->setWordWrap(true);
  lines->addWidget(shift_);
  lines->addWidget(coverage_);
  connect(show, &QPushButton::clicked, this, &StagesPanel::calendarWanted);
  return box;
}

void StagesPanel::setPlanting(const Planting& planting, const HeatScene& scene) {
  const bool same = planting.id == planting_;
  const int scrolledTo = area_->verticalScrollBar()->value();
  const auto focused =
      std::ranges::find_if(rows_, [](const StageRow* row) { return row->hasFocus(); });
  const bool hadFocus = focused != rows_.end();
  const int focus = hadFocus ? (*focused)->bbch() : 0;
  planting_ = planting.id;
  const Outlook& outlook = session_->outlooks().at(planting.id);
  place_->setText(
      outlook.ladderHolds
          ? plantingName(session_->orchard(), planting)
          : tr("%1. Winters here are warmer than those the heat sums were measured in: "
               "note the dates you see, they go before these.")
                .arg(plantingName(session_->orchard(), planting)));
  coverage_->setText(coverageText(scene.heat));
  if (!same) chosen_.reset();
  fill(scene);
  fitHeight(*area_, scrolls_, width());
  if (StageRow* row = rowOf(focus); hadFocus && row != nullptr)
    row->setFocus(Qt::OtherFocusReason);
  if (same) area_->verticalScrollBar()->setValue(scrolledTo);
}

void StagesPanel::fill(const HeatScene& scene) {
  rows_.clear();
  auto* content = new QWidget;
  list_ = new QVBoxLayout{content};
  list_->setContentsMargins(0, 0, 0, 0);
  list_->setSpacing(0);
  const Planting& planting = session_->orchard().plantings.at(planting_);
  const std::vector<StageLine> lines = stageLines(*session_, planting, scene);
  for (const StageLine& line : lines) addRow(line);
  list_->addStretch(1);
  // The old rows may be those that asked for the change.
  if (QWidget* old = area_->takeWidget()) old->deleteLater();
  area_->setWidget(content);
  content->setAutoFillBackground(false);
  const auto next = nextStage(lines, session_->today());
  const bool wasSeen =
      chosen_ && std::ranges::any_of(lines, [this](const StageLine& line) {
        return line.bbch == *chosen_ && line.seen;
      });
  if (!chosen_ || wasSeen) chosen_ = next ? next : chosen_;
  if (chosen_) choose(*chosen_);
}

void StagesPanel::addRow(const StageLine& line) {
  auto* row = new StageRow{line, session_->today(), !session_->isReadOnly()};
  connect(row, &StageRow::chosen, this, &StagesPanel::choose);
  connect(row, &StageRow::seen, this, &StagesPanel::see);
  connect(
      row, &StageRow::stepWanted, this, [this, row](int steps) { step(*row, steps); });
  rows_.push_back(row);
  list_->addWidget(row);
}

StageRow* StagesPanel::rowOf(int bbch) const {
  const auto found = std::ranges::find(rows_, bbch, &StageRow::bbch);
  return found == rows_.end() ? nullptr : *found;
}

void StagesPanel::choose(int bbch) {
  chosen_ = bbch;
  for (StageRow* row : rows_)
    if (row->isChosen() != (row->bbch() == bbch)) row->setChosen(row->bbch() == bbch);
  fitHeight(*area_, scrolls_, width());
  // The rows have their heights only once they have been laid out.
  QMetaObject::invokeMethod(this, &StagesPanel::showChosen, Qt::QueuedConnection);
}

void StagesPanel::showChosen() {
  const StageRow* row = chosen_ ? rowOf(*chosen_) : nullptr;
  if (row == nullptr || !scrolls_) return;
  area_->widget()->layout()->activate();
  area_->ensureVisible(0, row->geometry().bottom() + row->height(), 0, 0);
  area_->ensureVisible(0, row->geometry().top() - row->height(), 0, 0);
}

void StagesPanel::takeFocus() {
  if (StageRow* row = chosen_ ? rowOf(*chosen_) : nullptr)
    row->setFocus(Qt::OtherFocusReason);
}

void StagesPanel::step(const StageRow& from, int steps) {
  const auto at = std::ranges::find(rows_, &from);
  const auto index = at - rows_.begin() + steps;
  if (index < 0 || index >= static_cast<std::ptrdiff_t>(rows_.size())) return;
  StageRow* next = rows_[static_cast<std::size_t>(index)];
  next->setFocus(Qt::TabFocusReason);
  choose(next->bbch());
}

void StagesPanel::see(int bbch, Day day) {
  Observation seen;
  seen.id = session_->ids().next<ObservationId>();
  seen.planting = planting_;
  seen.bbch = bbch;
  seen.day = day;
  const Problems problems = session_->perform(observeStage(session_->orchard(), seen));
  if (problems.empty()) return;
  if (StageRow* row = rowOf(bbch)) row->showProblem(say(problems.front().sentence));
}

void StagesPanel::tellShift(const QString& words) {
  shift_->setVisible(!words.isEmpty());
  shiftWords_->setText(words);
}

void StagesPanel::setScrolling(bool scrolls) {
  scrolls_ = scrolls;
  fitHeight(*area_, scrolls_, width());
}

bool StagesPanel::event(QEvent* event) {
  if (event->type() == QEvent::Resize || event->type() == QEvent::LayoutRequest)
    fitHeight(*area_, scrolls_, width());
  return Card::event(event);
}

}  // namespace topwire
