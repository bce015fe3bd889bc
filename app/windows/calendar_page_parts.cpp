// What the calendar page is made of; calendar_page.cpp says what it does.

#include "app/look/card.h"
#include "app/look/icons.h"
#include "app/look/look.h"
#include "app/windows/calendar_page.h"
#include "app/windows/checklist.h"
#include "app/windows/month_view.h"
#include "app/windows/state_legend.h"
#include "app/windows/task_form.h"
#include "app/windows/tick_panel.h"
#include "app/words/say.h"

#include <QMenu>

namespace topwire {

namespace {

constexpr TaskState allStates[] = {TaskState::late,
                                   TaskState::closing,
                                   TaskState::open,
                                   TaskState::waiting,
                                   TaskState::done,
                                   TaskState::setAside,
                                   TaskState::lapsed};

}  // namespace

QWidget* CalendarPage::content() {
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
  list_ = new Checklist{*session_};
  body_->addWidget(list_);
  column->addWidget(work_, 1);
  empty_ = emptyPage();
  column->addWidget(empty_, 1);
  return content;
}

QWidget* CalendarPage::foot() {
  foot_ = new QWidget;
  auto* column = new QVBoxLayout{foot_};
  column->setContentsMargins(measure::pageMargin, 0, measure::pageMargin, 10);
  column->setSpacing(8);
  problem_ = textLabel({}, TypeSize::body, true);
  problem_->setObjectName(QStringLiteral("calendarProblem"));
  problem_->hide();
  rows_ = new TickPanel{*session_};
  rows_->setObjectName(QStringLiteral("tickPanel"));
  rows_->hide();
  form_ = new TaskForm{*session_};
  form_->hide();
  column->addWidget(problem_);
  column->addWidget(rows_);
  column->addWidget(form_);
  foot_->hide();
  return foot_;
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
  subtitle_->setWordWrap(true);
  subtitle_->setMinimumWidth(1);
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

}  // namespace topwire
