// What the Today page is made of; today_page.cpp says what it does.

#include "app/look/icons.h"
#include "app/windows/day_forms.h"
#include "app/windows/day_ribbon.h"
#include "app/windows/hours_form.h"
#include "app/windows/job_bar.h"
#include "app/windows/page_head.h"
#include "app/windows/past_day.h"
#include "app/windows/tick_panel.h"
#include "app/windows/today_page.h"
#include "app/windows/today_side.h"

#include <QScrollArea>
#include <QShortcut>

namespace topwire {

namespace {

QLabel* wrapping(QLabel* label, const char* name) {
  label->setObjectName(QLatin1String(name));
  return topwire::wrapping(label);
}

}  // namespace

QWidget* TodayPage::content() {
  auto* content = new QWidget;
  auto* column = new QVBoxLayout{content};
  column->setContentsMargins(measure::pageMargin, 12, measure::pageMargin, 12);
  column->setSpacing(12);
  head_ = new PageHead;
  addHeadButtons();
  column->addWidget(head_);
  work_ = new QWidget;
  body_ = new QBoxLayout{QBoxLayout::LeftToRight, work_};
  body_->setContentsMargins(0, 0, 0, 0);
  body_->setSpacing(20);
  body_->addWidget(mainSide(), 1);
  side_ = new TodaySide{*session_};
  body_->addWidget(side_);
  column->addWidget(work_, 1);
  empty_ = emptyPage();
  column->addWidget(empty_, 1);
  return content;
}

void TodayPage::addHeadButtons() {
  earlier_ = head_->addButton({}, "earlierDay");
  earlier_->setIcon(iconFor(Icon::previous));
  earlier_->setAccessibleName(tr("The day before"));
  earlier_->setToolTip(
      tr("The working day before; before today, what was planned and done "
         "(Alt+Page Up)"));
  earlier_->setShortcut(QKeySequence{Qt::ALT | Qt::Key_PageUp});
  toToday_ = head_->addButton(tr("T&oday"), "toToday");
  later_ = head_->addButton({}, "laterDay");
  later_->setIcon(iconFor(Icon::next));
  later_->setAccessibleName(tr("The next working day"));
  later_->setToolTip(tr("The next working day (Alt+Page Down)"));
  later_->setShortcut(QKeySequence{Qt::ALT | Qt::Key_PageDown});
  undo_ = head_->addButton(tr("&Undo"), "undo");
  undo_->setIcon(iconFor(Icon::undo));
  print_ = head_->addButton(tr("Print the &week"), "print");
  print_->setIcon(iconFor(Icon::print));
}

QWidget* TodayPage::mainSide() {
  auto* side = new QWidget;
  auto* column = new QVBoxLayout{side};
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(10);
  column->addWidget(headLine());
  ribbon_ = new DayRibbon{*session_};
  column->addWidget(ribbon_);
  making_ = wrapping(textLabel(tr("The plan is being made.")), "planMaking");
  column->addWidget(making_);
  lanes_ = new CrewLanes{*session_};
  column->addWidget(lanes_);
  past_ = new PastDayView{*session_};
  column->addWidget(past_);
  hint_ = wrapping(
      mutedLabel(tr("Enter opens a job, the arrows go from job to job. Ctrl+Up and "
                    "Ctrl+Down give it to another crew, as dragging it there does.")),
      "laneHint");
  column->addWidget(hint_);
  column->addStretch(1);
  return side;
}

QWidget* TodayPage::headLine() {
  auto* box = new QWidget;
  auto* line = new QHBoxLayout{box};
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(12);
  headline_ = wrapping(textLabel({}, TypeSize::head), "headline");
  headline_->setTextFormat(Qt::RichText);
  acceptance_ = mutedLabel({}, TypeSize::body);
  acceptance_->setObjectName(QStringLiteral("acceptance"));
  acceptance_->setWordWrap(true);
  acceptance_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  accept_ = new QPushButton;
  accept_->setObjectName(QStringLiteral("acceptPlan"));
  accept_->setProperty("main", true);
  accept_->setToolTip(tr("Accept the morning's plan (Ctrl+Enter)"));
  for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Enter})
    connect(new QShortcut{QKeySequence{Qt::CTRL | key}, this},
            &QShortcut::activated,
            accept_,
            [this] {
              if (accept_->isVisible()) accept_->click();
            });
  line->addWidget(headline_, 3);
  line->addWidget(acceptance_, 1);
  enterHours_ = new QPushButton{tr("Enter hour&s…")};
  enterHours_->setObjectName(QStringLiteral("enterHoursOfDay"));
  line->addWidget(accept_, 0, Qt::AlignTop);
  line->addWidget(enterHours_, 0, Qt::AlignTop);
  return box;
}

QWidget* TodayPage::foot() {
  foot_ = new QWidget;
  auto* column = new QVBoxLayout{foot_};
  column->setContentsMargins(measure::pageMargin, 0, measure::pageMargin, 10);
  column->setSpacing(6);
  problem_ = wrapping(textLabel({}, TypeSize::body, true), "todayProblem");
  bar_ = new JobBar{*session_};
  rows_ = new TickPanel{*session_};
  rows_->setObjectName(QStringLiteral("tickPanel"));
  rows_->setTitled(false);  // the bar above it says the job
  closeBlock_ = new CloseBlockForm{*session_};
  lostDay_ = new LostDayForm{*session_};
  hours_ = new HoursForm{*session_};
  for (QWidget* part : {static_cast<QWidget*>(problem_),
                        static_cast<QWidget*>(bar_),
                        static_cast<QWidget*>(rows_),
                        static_cast<QWidget*>(closeBlock_),
                        static_cast<QWidget*>(lostDay_),
                        static_cast<QWidget*>(hours_)}) {
    column->addWidget(part);
    part->hide();
  }
  foot_->hide();
  return foot_;
}

QWidget* TodayPage::emptyPage() {
  auto* page = new QWidget;
  auto* column = new QVBoxLayout{page};
  column->addStretch(1);
  QLabel* sentence =
      wrapping(textLabel(tr("No crews yet. A crew is people who go to a job together."),
                         TypeSize::title,
                         true),
               "noCrews");
  sentence->setAlignment(Qt::AlignCenter);
  QLabel* how = wrapping(
      mutedLabel(
          tr("With their names and numbers, the day's work is shared out here each "
             "morning."),
          TypeSize::body),
      "noCrewsHow");
  how->setAlignment(Qt::AlignCenter);
  auto* button = new QPushButton{tr("Open the &settings")};
  button->setObjectName(QStringLiteral("openSettings"));
  button->setProperty("main", true);
  connect(button, &QPushButton::clicked, this, &TodayPage::crewsWanted);
  column->addWidget(sentence);
  column->addWidget(how);
  column->addSpacing(12);
  column->addWidget(button, 0, Qt::AlignHCenter);
  column->addStretch(2);
  return page;
}

void TodayPage::listen() {
  connect(earlier_, &QPushButton::clicked, this, [this] {
    if (const auto before = dayBefore()) showDay(*before);
  });
  connect(later_, &QPushButton::clicked, this, [this] {
    if (const auto after = dayAfter()) showDay(*after);
  });
  connect(toToday_, &QPushButton::clicked, this, [this] { showDay(session_->today()); });
  connect(undo_, &QPushButton::clicked, this, &TodayPage::undo);
  connect(print_, &QPushButton::clicked, this, [this] {
    Q_EMIT printWanted(isoWeekOf(day_));
  });
  connect(accept_, &QPushButton::clicked, this, &TodayPage::accept);
  connect(enterHours_, &QPushButton::clicked, this, [this] { enterHours(day_); });
  connect(ribbon_, &DayRibbon::lostWanted, this, [this] { openForm(Foot::lostDay); });
  connect(lanes_, &CrewLanes::asked, this, &TodayPage::take);
  connect(lanes_, &CrewLanes::carriedTo, this, &TodayPage::pin);
  connect(lanes_, &CrewLanes::turnoutWanted, this, &TodayPage::setWorkers);
  connect(
      side_, &TodaySide::closeBlockWanted, this, [this] { openForm(Foot::closeBlock); });
  connect(side_, &TodaySide::reopenWanted, this, &TodayPage::reopen);
  connect(side_, &TodaySide::releaseWanted, this, &TodayPage::release);
  connect(side_, &TodaySide::hoursWanted, this, &TodayPage::enterHours);
  connect(bar_, &JobBar::pinWanted, this, [this] {
    if (chosen_) pin(*chosen_, chosen_->crew);
  });
  connect(bar_, &JobBar::unpinWanted, this, [this] {
    if (chosen_) unpin(*chosen_);
  });
  connect(bar_, &JobBar::notTodayWanted, this, [this] {
    if (chosen_) notToday(*chosen_);
  });
  connect(bar_, &JobBar::crewWanted, this, [this](CrewId crew) {
    if (chosen_) pin(*chosen_, crew);
  });
  connect(bar_, &JobBar::closed, this, &TodayPage::closeFoot);
  connect(side_, &TodaySide::whyWanted, this, &TodayPage::openWaiting);
  connect(planner_, &CrewPlanner::yearsCounted, this, [this] {
    const CrewPlan* plan = planner_->plan();
    if (plan != nullptr && isVisible() && !isPast())
      side_->setPlan(*plan, planner_->missed(), day_);
  });
  connect(rows_, &TickPanel::closed, this, &TodayPage::closeFoot);
  connect(closeBlock_, &DayForm::closed, this, &TodayPage::closeFoot);
  connect(lostDay_, &DayForm::closed, this, &TodayPage::closeFoot);
  connect(hours_, &DayForm::closed, this, &TodayPage::closeFoot);
  connect(planner_, &CrewPlanner::planned, this, &TodayPage::refresh);
  connect(session_, &Session::reset, this, &TodayPage::startAnew);
}

}  // namespace topwire
