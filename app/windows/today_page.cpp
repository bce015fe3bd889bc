#include "app/windows/today_page.h"

#include "app/look/tokens.h"
#include "app/windows/block_words.h"
#include "app/windows/day_forms.h"
#include "app/windows/day_ribbon.h"
#include "app/windows/hours_form.h"
#include "app/windows/job_bar.h"
#include "app/windows/page_head.h"
#include "app/windows/past_day.h"
#include "app/windows/tick_panel.h"
#include "app/windows/today_side.h"
#include "app/words/say.h"

#include <QEvent>
#include <QKeyEvent>
#include <QResizeEvent>
#include <QScrollBar>

namespace topwire {

namespace {

constexpr int sideWidth = 284;
constexpr int narrowBelow = 1000;  // then the side goes under the lanes
constexpr int undoNameWidth = 190;

QString bold(const QString& words, const QColor& ink) {
  return QStringLiteral("<span style=\"font-weight:bold; color:%1\">%2</span>")
      .arg(ink.name(), words.toHtmlEscaped());
}

}  // namespace

TodayPage::TodayPage(Session& session, CrewPlanner& planner, QWidget* parent)
    : QWidget(parent), session_(&session), planner_(&planner), area_(new QScrollArea) {
  setObjectName(QStringLiteral("todayPage"));
  area_->setWidget(content());
  area_->setWidgetResizable(true);
  area_->setFrameShape(QFrame::NoFrame);
  area_->setFocusPolicy(Qt::NoFocus);
  area_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* all = new QVBoxLayout{this};
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(0);
  all->addWidget(area_, 1);
  all->addWidget(foot());
  listen();
  startAnew();
}

void TodayPage::startAnew() {
  chosen_.reset();
  show(Foot::none);
  if (session_->isOpen()) day_ = today_ = session_->today();
  refresh();
}

void TodayPage::showDay(Day day) {
  day_ = day;
  today_ = session_->today();
  chosen_.reset();
  show(Foot::none);
  refresh();
  area_->verticalScrollBar()->setValue(0);
}

void TodayPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  planner_->setWatched(true);
  refresh();
}

void TodayPage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape && footShown_ != Foot::none) return closeFoot();
  QWidget::keyPressEvent(event);
}

void TodayPage::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  planner_->setWatched(false);
}

bool TodayPage::isPast() const {
  return day_ < session_->today();
}

std::optional<Day> TodayPage::dayBefore() const {
  const CrewPlan* plan = planner_->plan();
  if (!isPast() && day_ > session_->today())
    return plan == nullptr ? std::nullopt : workedBefore(*plan, day_);
  return recordedBefore(session_->orchard(), day_);
}

std::optional<Day> TodayPage::dayAfter() const {
  const Day today = session_->today();
  if (isPast()) return recordedAfter(session_->orchard(), day_, today).value_or(today);
  const CrewPlan* plan = planner_->plan();
  return plan == nullptr ? std::nullopt : workedAfter(*plan, day_);
}

void TodayPage::showParts(bool past, bool planned) {
  past_->setVisible(past);
  making_->setVisible(!past && !planned);
  for (QWidget* part : {static_cast<QWidget*>(lanes_),
                        static_cast<QWidget*>(side_),
                        static_cast<QWidget*>(hint_)})
    part->setVisible(!past && planned);
}

/// A page that shows today goes on to the next day at midnight.
void TodayPage::refresh() {
  if (!session_->isOpen() || !isVisible()) return;
  const Day today = session_->today();
  if (day_ == today_) day_ = today;
  today_ = today;
  const bool empty = session_->orchard().crews.empty();
  work_->setVisible(!empty);
  empty_->setVisible(empty);
  refreshHead();
  refreshUndo();
  if (empty) return show(Foot::none);
  const CrewPlan* plan = planner_->plan();
  showParts(isPast(), plan != nullptr);
  if (isPast()) return showPast();
  if (plan != nullptr) showPlan(*plan);
}

void TodayPage::showPast() {
  shown_.clear();
  ribbon_->setDay(day_, {}, session_->cautionsOn(day_));
  past_->setDay(day_);
  headline_->setText(bold(pastDayText(planAndDone(session_->orchard(), day_)),
                          baseColours(currentTheme()).text));
  for (QWidget* part : {static_cast<QWidget*>(accept_),
                        static_cast<QWidget*>(acceptance_),
                        static_cast<QWidget*>(enterHours_)})
    part->hide();
}

void TodayPage::showPlan(const CrewPlan& plan) {
  shown_ = lanesOn(session_->orchard(), plan, day_);
  const DayAxis axis = axisOf(plan, shown_, day_);
  const CautionsByPlanting cautions = session_->cautionsOn(day_);
  refreshHeadline(plan);
  refreshAcceptance();
  ribbon_->setDay(day_, axis, cautions);
  lanes_->setLanes(shown_, axis, cautions);
  side_->setPlan(plan, planner_->missed(), day_);
  refreshFoot(plan);
}

void TodayPage::refreshHead() {
  const IsoWeek week = isoWeekOf(day_);
  QStringList parts{say(Sentence{phrase("Today", "%1, week %2"),
                                 {std::to_string(static_cast<int>(civil(day_).year())),
                                  std::int64_t{week.number}}})};
  const int ahead = daysBetween(session_->today(), day_);
  if (ahead < 0) parts << say(Sentence{phrase("Today", "gone by: planned and done")});
  if (ahead == 0) parts << say(Sentence{phrase("Today", "today")});
  if (ahead == 1) parts << say(Sentence{phrase("Today", "tomorrow")});
  if (ahead > 1)
    parts << say(
        Sentence{phrase("Today", "in %1 days, as planned now"), {std::int64_t{ahead}}});
  head_->say(capitalised(weekdayText(day_)), parts.join(QStringLiteral(" · ")));
  earlier_->setEnabled(dayBefore().has_value());
  later_->setEnabled(dayAfter().has_value());
  toToday_->setEnabled(day_ != session_->today());
}

void TodayPage::refreshHeadline(const CrewPlan& plan) {
  const BaseColours& base = baseColours(currentTheme());
  const DayHeadline words = headlineOf(session_->orchard(), plan, day_);
  QStringList parts{bold(say(words.turnout), base.text),
                    say(words.hours).toHtmlEscaped()};
  if (words.shortBy)
    parts << bold(sayNear(*session_, *words.shortBy),
                  stateColours(currentTheme(), TaskState::late).ink);
  headline_->setText(parts.join(QLatin1Char(' ')));
}

void TodayPage::refreshAcceptance() {
  const Acceptance now = acceptanceOf(session_->orchard(), shown_, day_);
  const bool work = !plannedJobs(shown_, day_).empty();
  const bool accepted = now == Acceptance::asPlanned;
  accept_->setVisible(!accepted && (work || now == Acceptance::changedSince));
  accept_->setText(now == Acceptance::changedSince ? tr("Accep&t the change")
                                                   : tr("Accep&t this plan"));
  accept_->setEnabled(!session_->isReadOnly());
  acceptance_->setVisible(now != Acceptance::none);
  enterHours_->setVisible(now != Acceptance::none && day_ == session_->today());
  enterHours_->setEnabled(!session_->isReadOnly());
  acceptance_->setText(accepted ? tr("This plan is accepted.")
                                : tr("The plan has changed since it was accepted."));
}

void TodayPage::refreshUndo() {
  const Sentence* name = session_->undoName();
  undo_->setEnabled(name != nullptr && !session_->isReadOnly());
  if (name == nullptr) {
    undo_->setText(tr("&Undo"));
    undo_->setToolTip(tr("Nothing to undo yet."));
    return;
  }
  const QString full =
      say(Sentence{phrase("Calendar", "Undo: %1"), {say(*name).toStdString()}});
  undo_->setText(width() >= narrowBelow ? undo_->fontMetrics().elidedText(
                     full, Qt::ElideRight, undoNameWidth)
                                        : tr("&Undo"));
  undo_->setToolTip(full);
  undo_->setAccessibleName(full);
}

/// The chosen job may have gone to another crew, or out of the day.
void TodayPage::refreshFoot(const CrewPlan& plan) {
  if (footShown_ != Foot::job || !chosen_) return;
  const JobCard* card = lanes_->cardAt(*chosen_);
  if (card != nullptr && card->place() != *chosen_) {
    chosen_ = card->place();
    rows_->setWho(crewName(session_->orchard(), chosen_->crew));
  }
  lanes_->choose(chosen_);
  const Orchard& orchard = session_->orchard();
  const TaskView* view = session_->view(chosen_->task);
  if (view == nullptr) return closeFoot();
  const bool waits = card == nullptr;
  std::vector<Sentence> why =
      whyOn(orchard, session_->trade(), plan, chosen_->task, day_);
  if (waits)
    for (Sentence& date : explain(orchard, session_->trade(), *view->task))
      why.push_back(std::move(date));
  QStringList reasons;
  for (const Sentence& reason : why) reasons << sayNear(*session_, reason);
  const auto next = workedAfter(plan, day_);
  bar_->setJob({*chosen_,
                crewPinOf(orchard, chosen_->task, chosen_->crew, day_) != nullptr,
                reasons.join(QLatin1Char('\n')),
                next ? shortDayText(*next) : QString{},
                waits});
  if (!rows_->isHidden()) rows_->refresh();
}

void TodayPage::show(Foot foot) {
  // Before what has the keyboard is hidden, or it goes to whatever comes next, which may
  // be a button that undoes.
  if (foot == Foot::none && foot_->isAncestorOf(focusWidget()))
    print_->setFocus(Qt::OtherFocusReason);
  footShown_ = foot;
  problem_->hide();
  bar_->setVisible(foot == Foot::job);
  rows_->setVisible(foot == Foot::job && ticking_);
  closeBlock_->setVisible(foot == Foot::closeBlock);
  lostDay_->setVisible(foot == Foot::lostDay);
  hours_->setVisible(foot == Foot::hours);
  foot_->setVisible(foot != Foot::none);
}

void TodayPage::closeFoot() {
  if (footShown_ == Foot::none) return;
  const bool hadFocus = foot_->isAncestorOf(focusWidget());
  const std::optional<JobPlace> job = std::exchange(chosen_, std::nullopt);
  show(Foot::none);
  lanes_->choose(std::nullopt);
  if (!hadFocus) return;
  JobCard* card = job ? lanes_->cardAt(*job) : nullptr;
  QWidget* next = print_;
  if (cameFrom_ != nullptr && cameFrom_->isVisible() && cameFrom_->isEnabled())
    next = cameFrom_;
  if (card != nullptr) next = card;
  next->setFocus(Qt::OtherFocusReason);
}

void TodayPage::tell(const Problems& problems) {
  problem_->setVisible(!problems.empty());
  if (problems.empty()) return;
  problem_->setText(say(problems.front().sentence));
  foot_->show();
}

void TodayPage::arrange() {
  const bool narrow = width() < narrowBelow;
  body_->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
  side_->setMinimumWidth(narrow ? 0 : sideWidth);
  side_->setMaximumWidth(narrow ? QWIDGETSIZE_MAX : sideWidth);
  if (session_->isOpen()) refreshUndo();
}

void TodayPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) arrange();
}

void TodayPage::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) refresh();
  QWidget::changeEvent(event);
}

}  // namespace topwire
