#include "app/windows/calendar_page.h"

#include "app/look/look.h"
#include "app/windows/checklist.h"
#include "app/windows/month_view.h"
#include "app/windows/state_legend.h"
#include "app/windows/task_form.h"
#include "app/windows/task_words.h"
#include "app/windows/tick_panel.h"
#include "app/words/say.h"

#include <QResizeEvent>

namespace topwire {

namespace {

constexpr int checklistWidth = 368;
constexpr int narrowBelow = 1000;  // then the checklist goes under the month
constexpr int daysInWeek = 7;
constexpr int usualLanes = 5;
constexpr int leastLanes = 3;
constexpr int undoNameWidth = 190;

}  // namespace

CalendarPage::CalendarPage(Session& session, QWidget* parent)
    : QWidget(parent), session_(&session) {
  auto* area = new QScrollArea;
  area->setWidget(content());
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setFocusPolicy(Qt::NoFocus);
  auto* all = new QVBoxLayout{this};
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(0);
  all->addWidget(area, 1);
  all->addWidget(foot());
  listenToMonth();
  listenToChecklist();
  connect(rows_, &TickPanel::closed, this, &CalendarPage::closeFoot);
  connect(form_, &TaskForm::closed, this, &CalendarPage::closeFoot);
  connect(&session, &Session::changed, this, &CalendarPage::refresh);
  connect(&session, &Session::reset, this, &CalendarPage::startAnew);
  startAnew();
}

void CalendarPage::listenToMonth() {
  connect(view_, &MonthView::dayChosen, this, [this](Day day) {
    chosen_ = day;
    refresh();
  });
  connect(view_, &MonthView::dayWanted, this, &CalendarPage::showDay);
  connect(view_, &MonthView::barOpened, this, &CalendarPage::openBar);
  connect(view_, &MonthView::turned, this, &CalendarPage::turn);
  connect(view_, &MonthView::weekOpened, this, [this](Day monday) {
    anchor_ = monday;
    if (isoWeekOf(chosen_) != isoWeekOf(monday)) chosen_ = monday;
    setWeekly(true);
  });
}

void CalendarPage::listenToChecklist() {
  connect(list_, &Checklist::tickWanted, this, &CalendarPage::tickWhole);
  connect(list_, &Checklist::rowsWanted, this, &CalendarPage::openRows);
  connect(list_, &Checklist::restoreWanted, this, &CalendarPage::restore);
  connect(list_, &Checklist::asideWanted, this, [this](const TaskKey& task) {
    showForm(true, false);
    form_->askReason(task);
  });
  connect(list_, &Checklist::moveWanted, this, [this](const TaskKey& task) {
    showForm(true, false);
    form_->askWindow(task);
  });
  connect(list_, &Checklist::addWanted, this, [this] {
    showForm(true, false);
    form_->askWork(chosen_);
  });
}

void CalendarPage::startAnew() {
  filter_ = {};
  closeFoot();
  showDay(session_->today());
}

void CalendarPage::showDay(Day day) {
  chosen_ = anchor_ = day;
  refresh();
}

DaySpan CalendarPage::daysShown() const {
  return weekly_ ? daysOf(isoWeekOf(anchor_)) : weeksOfMonth(anchor_);
}

void CalendarPage::turn(int steps) {
  const auto moved = [&](Day day) {
    return weekly_ ? plusDays(day, steps * daysInWeek)
                   : plusMonthsCapToMonthEnd(day, steps);
  };
  anchor_ = moved(anchor_);
  chosen_ = daysShown().contains(moved(chosen_)) ? moved(chosen_) : anchor_;
  refresh();
}

void CalendarPage::setWeekly(bool weekly) {
  if (weekly && !weekly_ && !daysOf(isoWeekOf(anchor_)).contains(chosen_)
      && daysShown().contains(chosen_))
    anchor_ = chosen_;
  weekly_ = weekly;
  refresh();
}

void CalendarPage::refresh() {
  if (!session_->isOpen()) return;
  const bool empty = session_->orchard().plantings.empty();
  work_->setVisible(!empty);
  empty_->setVisible(empty);
  refreshHead();
  refreshUndo();
  if (empty) return closeFoot();
  refreshMonth();
  list_->setWork(workOn(*session_, chosen_, filter_));
  if (rows_->isVisibleTo(this)) rows_->refresh();
}

QString CalendarPage::riskText() const {
  const auto counts = countByState(session_->views());
  const int late = counts.at(static_cast<std::size_t>(TaskState::late));
  const int closing = counts.at(static_cast<std::size_t>(TaskState::closing));
  QStringList parts;
  if (late > 0)
    parts << say(Sentence{phrase("Calendar", "%1 late"), {std::int64_t{late}}});
  if (closing > 0)
    parts << say(Sentence{counted(closing,
                                  phrase("Calendar", "%1 closes within days"),
                                  phrase("Calendar", "%1 close within days")),
                          {std::int64_t{closing}}});
  return parts.join(QStringLiteral(", "));
}

void CalendarPage::refreshHead() {
  title_->setText(monthText(weekly_ ? daysShown().first : anchor_));
  const Day today = session_->today();
  QStringList parts{weekdayText(today),
                    say(Sentence{phrase("Calendar", "week %1"),
                                 {std::int64_t{isoWeekOf(today).number}}})};
  if (const QString risk = riskText(); !risk.isEmpty()) parts << risk;
  subtitle_->setText(parts.join(QStringLiteral(" · ")));
  month_->setChecked(!weekly_);
  week_->setChecked(weekly_);
  filterButton_->setText(filterText());
  print_->setToolTip(say(Sentence{phrase("Calendar", "Print week %1, which holds %2"),
                                  {std::int64_t{isoWeekOf(chosen_).number}, chosen_}}));
}

void CalendarPage::refreshMonth() {
  const DaySpan days = daysShown();
  const std::vector<TaskView> views = workIn(*session_, days, filter_);
  legend_->setCounts(countByState(views));
  const Day today = session_->today();
  const auto month = static_cast<int>(static_cast<unsigned>(civil(anchor_).month()));
  view_->setScene({days,
                   today,
                   chosen_,
                   weekly_ ? 0 : month,
                   barsOf(*session_, views),
                   stagesIn(*session_, days, filter_),
                   [today](const MonthBar& bar) { return barText(bar, today); }});
}

void CalendarPage::refreshUndo() {
  const Sentence* name = session_->undoName();
  undo_->setEnabled(name != nullptr && !session_->isReadOnly());
  if (name == nullptr) {
    undo_->setText(tr("&Undo"));
    undo_->setToolTip(tr("Nothing to undo yet."));
    return;
  }
  const QString full =
      say(Sentence{phrase("Calendar", "Undo: %1"), {say(*name).toStdString()}});
  const bool roomy = width() >= narrowBelow;
  undo_->setText(
      roomy ? undo_->fontMetrics().elidedText(full, Qt::ElideRight, undoNameWidth)
            : tr("&Undo"));
  undo_->setToolTip(full);
  undo_->setAccessibleName(full);
}

void CalendarPage::setFilter(WorkFilter filter) {
  filter_ = std::move(filter);
  refresh();
}

QString CalendarPage::filterText() const {
  if (filter_.showsAll()) return tr("&Show: all work");
  if (!filter_.block) return tr("&Show: some work");
  const auto block = session_->orchard().blocks.find(*filter_.block);
  return block == session_->orchard().blocks.end()
             ? tr("&Show: some work")
             : tr("&Show: %1").arg(QString::fromStdString(block->second.name));
}

void CalendarPage::openBar(const MonthBar& bar) {
  for (const TaskKey& task : bar.tasks)
    if (list_->goTo(task)) return;
}

Day CalendarPage::dayOfTicks() const {
  return std::min(chosen_, session_->today());
}

void CalendarPage::tickWhole(const TaskKey& key) {
  const auto view = findView(*session_, key);
  if (!view) return;
  const Orchard& orchard = session_->orchard();
  const Words title = session_->titleOf(*view->task);
  if (view->state == TaskState::done)
    return tell(session_->perform(untickRows(
        orchard, *view->task, title, view->task->rows, session_->ids(), dayOfTicks())));
  Tick tick;
  tick.by = usualWorker(orchard);
  if (tick.by.empty()) {
    openRows(key);
    return rows_->askWho();
  }
  tick.id = session_->ids().next<TickId>();
  tick.task = key;
  tick.rows = view->rowsLeft();
  tick.day = dayOfTicks();
  tell(session_->perform(tickRows(orchard, *view->task, title, tick)));
}

void CalendarPage::openRows(const TaskKey& task) {
  showForm(false, true);
  rows_->open(task, dayOfTicks());
}

void CalendarPage::restore(const TaskKey& key) {
  const auto view = findView(*session_, key);
  if (!view) return;
  tell(session_->perform(
      restoreTask(session_->orchard(), *view->task, session_->titleOf(*view->task))));
}

void CalendarPage::showForm(bool form, bool rows) {
  form_->setVisible(form);
  rows_->setVisible(rows);
  foot_->setVisible(form || rows || !problem_->isHidden());
}

void CalendarPage::closeFoot() {
  const bool hadFocus =
      rows_->isAncestorOf(focusWidget()) || form_->isAncestorOf(focusWidget());
  const std::optional<TaskKey> task = rows_->task();
  showForm(false, false);
  if (!hadFocus) return;
  if (!task || !list_->goTo(*task)) view_->setFocus(Qt::OtherFocusReason);
}

void CalendarPage::undo() {
  const Done done = session_->undo();
  tell(done ? Problems{} : Problems{done.error()});
}

void CalendarPage::tell(const Problems& problems) {
  problem_->setVisible(!problems.empty());
  showForm(!form_->isHidden(), !rows_->isHidden());
  if (!problems.empty()) problem_->setText(say(problems.front().sentence));
}

void CalendarPage::arrange() {
  const bool narrow = width() < narrowBelow;
  body_->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
  head_->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
  list_->setMinimumWidth(narrow ? 0 : checklistWidth);
  list_->setMaximumWidth(narrow ? QWIDGETSIZE_MAX : checklistWidth);
  list_->setScrolling(!narrow);
  view_->setFewestLanes(narrow ? usualLanes : leastLanes);
  if (session_->isOpen()) refreshUndo();
}

void CalendarPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) arrange();
}

}  // namespace topwire
