#include "app/windows/calendar_page.h"

#include "app/look/card.h"
#include "app/look/icons.h"
#include "app/look/look.h"
#include "app/windows/checklist.h"
#include "app/windows/month_view.h"
#include "app/windows/state_legend.h"
#include "app/windows/task_form.h"
#include "app/windows/task_words.h"
#include "app/windows/tick_panel.h"
#include "app/words/say.h"

#include <QMenu>
#include <QResizeEvent>

namespace topwire {

namespace {

constexpr int checklistWidth = 368;
constexpr int narrowBelow = 1000;  // then the checklist goes under the month
constexpr int daysInWeek = 7;
constexpr int undoNameWidth = 190;

constexpr TaskState allStates[] = {TaskState::late,
                                   TaskState::closing,
                                   TaskState::open,
                                   TaskState::waiting,
                                   TaskState::done,
                                   TaskState::setAside,
                                   TaskState::lapsed};

}  // namespace

CalendarPage::CalendarPage(Session& session, QWidget* parent)
    : QWidget(parent), session_(&session) {
  auto* content = new QWidget;
  auto* column = new QVBoxLayout{content};
  column->setContentsMargins(measure::pageMargin, 12, measure::pageMargin, 10);
  column->setSpacing(8);
  column->addWidget(header());
  work_ = new QWidget;
  body_ = new QBoxLayout{QBoxLayout::LeftToRight, work_};
  body_->setContentsMargins(0, 0, 0, 0);
  body_->setSpacing(14);
  body_->addWidget(calendarSide(), 1);
  list_ = new Checklist{session};
  body_->addWidget(list_);
  column->addWidget(work_, 1);
  empty_ = emptyPage();
  column->addWidget(empty_, 1);

  auto* area = new QScrollArea;
  area->setWidget(content);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setFocusPolicy(Qt::NoFocus);
  auto* all = new QVBoxLayout{this};
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(0);
  all->addWidget(area, 1);

  auto* foot = new QVBoxLayout;
  foot->setContentsMargins(measure::pageMargin, 0, measure::pageMargin, 12);
  problem_ = textLabel({}, TypeSize::body, true);
  problem_->setObjectName(QStringLiteral("calendarProblem"));
  problem_->hide();
  rows_ = new TickPanel{session};
  rows_->setObjectName(QStringLiteral("tickPanel"));
  rows_->hide();
  form_ = new TaskForm{session};
  form_->hide();
  foot->addWidget(problem_);
  foot->addWidget(rows_);
  foot->addWidget(form_);
  all->addLayout(foot);

  listenToMonth();
  listenToChecklist();
  connect(rows_, &TickPanel::closed, this, &CalendarPage::closeFoot);
  connect(form_, &TaskForm::closed, this, &CalendarPage::closeFoot);
  connect(&session, &Session::changed, this, &CalendarPage::refresh);
  connect(&session, &Session::reset, this, &CalendarPage::startAnew);
  startAnew();
}

QWidget* CalendarPage::header() {
  auto* line = new QWidget;
  head_ = new QBoxLayout{QBoxLayout::LeftToRight, line};
  head_->setContentsMargins(0, 0, 0, 0);
  auto* words = new QVBoxLayout;
  words->setSpacing(0);
  title_ = textLabel({}, TypeSize::title, true);
  title_->setObjectName(QStringLiteral("calendarTitle"));
  subtitle_ = mutedLabel({}, TypeSize::body);
  words->addWidget(title_);
  words->addWidget(subtitle_);
  head_->addLayout(words, 1);
  head_->addWidget(headButtons());
  return line;
}

QPushButton* CalendarPage::addButton(QBoxLayout& to,
                                     const QString& words,
                                     const char* name) {
  auto* button = new QPushButton{words};
  button->setObjectName(QLatin1String(name));
  to.addWidget(button);
  return button;
}

QWidget* CalendarPage::headButtons() {
  auto* group = new QWidget;
  auto* line = new QHBoxLayout{group};
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(8);
  QPushButton* previous = addButton(*line, {}, "previous");
  previous->setIcon(iconFor(Icon::previous));
  previous->setAccessibleName(tr("Earlier"));
  previous->setToolTip(tr("Earlier (Page Up)"));
  QPushButton* today = addButton(*line, tr("&Today"), "today");
  today->setToolTip(tr("Go to today (Home)"));
  QPushButton* next = addButton(*line, {}, "next");
  next->setIcon(iconFor(Icon::next));
  next->setAccessibleName(tr("Later"));
  next->setToolTip(tr("Later (Page Down)"));
  month_ = addButton(*line, tr("&Month"), "month");
  week_ = addButton(*line, tr("Wee&k"), "week");
  month_->setCheckable(true);
  week_->setCheckable(true);
  undo_ = addButton(*line, tr("&Undo"), "undo");
  undo_->setIcon(iconFor(Icon::undo));
  print_ = addButton(*line, tr("&Print the week"), "print");
  print_->setIcon(iconFor(Icon::print));
  print_->setProperty("main", true);
  connect(previous, &QPushButton::clicked, this, [this] { turn(-1); });
  connect(next, &QPushButton::clicked, this, [this] { turn(1); });
  connect(today, &QPushButton::clicked, this, [this] { showDay(session_->today()); });
  connect(month_, &QPushButton::clicked, this, [this] { setWeekly(false); });
  connect(week_, &QPushButton::clicked, this, [this] { setWeekly(true); });
  connect(undo_, &QPushButton::clicked, this, &CalendarPage::undo);
  connect(print_, &QPushButton::clicked, this, [this] {
    Q_EMIT printWanted(isoWeekOf(chosen_));
  });
  return group;
}

QWidget* CalendarPage::calendarSide() {
  auto* side = new QWidget;
  auto* column = new QVBoxLayout{side};
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  auto* tools = new QHBoxLayout;
  tools->setSpacing(12);
  filterButton_ = addButton(*tools, {}, "filter");
  connect(filterButton_, &QPushButton::clicked, this, &CalendarPage::openFilter);
  legend_ = new StateLegend;
  tools->addWidget(legend_, 1, Qt::AlignVCenter);
  column->addLayout(tools);
  view_ = new MonthView;
  view_->setObjectName(QStringLiteral("monthView"));
  column->addWidget(view_, 1);
  return side;
}

QWidget* CalendarPage::emptyPage() {
  auto* page = new QWidget;
  auto* column = new QVBoxLayout{page};
  column->addStretch(1);
  QLabel* sentence =
      textLabel(tr("The calendar fills once a block is planted."), TypeSize::title, true);
  QLabel* how = mutedLabel(
      tr("Add a block and say what grows in it; its work then stands here with dates."),
      TypeSize::body);
  column->addWidget(sentence, 0, Qt::AlignHCenter);
  column->addWidget(how, 0, Qt::AlignHCenter);
  column->addSpacing(12);
  auto* button = new QPushButton{tr("&Add a block")};
  button->setObjectName(QStringLiteral("calendarAddBlock"));
  button->setProperty("main", true);
  connect(button, &QPushButton::clicked, this, &CalendarPage::blocksWanted);
  column->addWidget(button, 0, Qt::AlignHCenter);
  column->addStretch(2);
  return page;
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

void CalendarPage::openFilter() {
  QMenu menu{this};
  QAction* all = menu.addAction(tr("&All work"));
  connect(all, &QAction::triggered, this, [this] { setFilter({}); });
  menu.addSeparator();
  for (const TaskState state : allStates) {
    QAction* action = menu.addAction(nameOf(state));
    action->setCheckable(true);
    action->setChecked(!filter_.hidden.contains(state));
    connect(action, &QAction::toggled, this, [this, state](bool shown) {
      WorkFilter filter = filter_;
      if (shown)
        filter.hidden.erase(state);
      else
        filter.hidden.insert(state);
      setFilter(filter);
    });
  }
  menu.addSeparator();
  for (const Block* block : blocksInOrder(session_->orchard())) {
    QAction* action = menu.addAction(QString::fromStdString(block->name));
    action->setCheckable(true);
    action->setChecked(filter_.block == block->id);
    connect(action, &QAction::toggled, this, [this, id = block->id](bool only) {
      WorkFilter filter = filter_;
      filter.block = only ? std::optional{id} : std::nullopt;
      setFilter(filter);
    });
  }
  menu.exec(filterButton_->mapToGlobal(QPoint{0, filterButton_->height()}));
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
  if (!problems.empty()) problem_->setText(say(problems.front().sentence));
}

void CalendarPage::arrange() {
  const bool narrow = width() < narrowBelow;
  body_->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
  head_->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
  list_->setMinimumWidth(narrow ? 0 : checklistWidth);
  list_->setMaximumWidth(narrow ? QWIDGETSIZE_MAX : checklistWidth);
  list_->setScrolling(!narrow);
  if (session_->isOpen()) refreshUndo();
}

void CalendarPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) arrange();
}

}  // namespace topwire
