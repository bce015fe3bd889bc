// What a person does on the Today page.

#include "app/windows/day_forms.h"
#include "app/windows/hours_form.h"
#include "app/windows/job_bar.h"
#include "app/windows/tick_panel.h"
#include "app/windows/today_page.h"
#include "core/edit/crew_deeds.h"

namespace topwire {

namespace {

constexpr int cardMargin = 12;

}  // namespace

RowSet TodayPage::rowsAt(const JobPlace& place) const {
  RowSet rows;
  for (const CrewLane& lane : shown_)
    for (const LaneJob& job : lane.jobs)
      if (lane.crew == place.crew && job.gang == place.gang && job.task == place.task)
        rows = rows.with(job.rows);
  return rows;
}

void TodayPage::take(const JobPlace& place, JobDeed deed) {
  switch (deed) {
    case JobDeed::open:
      return openJob(place, false);
    case JobDeed::why:
      return openJob(place, true);
    case JobDeed::unpin:
      return unpin(place);
    case JobDeed::notToday:
      return notToday(place);
    case JobDeed::toCrewAbove:
      return moveBeside(place, -1);
    case JobDeed::toCrewBelow:
      return moveBeside(place, 1);
  }
}

void TodayPage::openJob(const JobPlace& place, bool why) {
  const CrewPlan* plan = planner_->plan();
  if (plan == nullptr) return;
  cameFrom_ = focusWidget();
  chosen_ = place;
  ticking_ = !why && !session_->isReadOnly();
  show(Foot::job);
  bar_->unfoldReasons(why);
  if (ticking_) {
    rows_->open(place.task, session_->today(), rowsAt(place));
    rows_->setWho(crewName(session_->orchard(), place.crew));
  }
  refreshFoot(*plan);
  JobCard* card = lanes_->cardAt(place);
  if (card == nullptr) return;
  if (!ticking_) card->setFocus(Qt::OtherFocusReason);
  layout()->activate();  // the foot takes its room before the card is looked for
  area_->ensureWidgetVisible(card, 0, cardMargin);
}

/// A job on no lane: why it waits, what dates it, and the crews that could have it.
void TodayPage::openWaiting(const TaskKey& task) {
  const CrewPlan* plan = planner_->plan();
  if (plan == nullptr) return;
  cameFrom_ = focusWidget();
  chosen_ = JobPlace{CrewId{}, 0, task};
  ticking_ = false;
  show(Foot::job);
  bar_->unfoldReasons(true);
  refreshFoot(*plan);
  bar_->focusWhy();
}

void TodayPage::moveBeside(const JobPlace& place, int steps) {
  if (const auto crew = crewBeside(shown_, place.crew, steps)) pin(place, *crew);
}

/// To another crew, away from the one it was pinned to: one change.
void TodayPage::pin(const JobPlace& place, CrewId crew) {
  if (session_->isReadOnly()) return;
  const Orchard& orchard = session_->orchard();
  Pin pin;
  pin.id = session_->ids().next<PinId>();
  pin.kind = PinKind::crewToJob;
  pin.task = place.task;
  pin.crew = crew;
  pin.day = day_;
  Checked<Change> change = addPin(orchard, pin, skillOf(place.task));
  const Pin* before = crewPinOf(orchard, place.task, place.crew, day_);
  if (change && before != nullptr && place.crew != crew)
    if (const Checked<Change> removed = removePin(orchard, before->id))
      change->edits.insert(
          change->edits.end(), removed->edits.begin(), removed->edits.end());
  tell(session_->perform(change));
}

std::string TodayPage::skillOf(const TaskKey& task) const {
  const TaskView* view = session_->view(task);
  const Operation* operation =
      view == nullptr ? nullptr : session_->operationOf(*view->task);
  return operation == nullptr ? std::string{} : operation->skill;
}

void TodayPage::unpin(const JobPlace& place) {
  const Pin* pin = crewPinOf(session_->orchard(), place.task, place.crew, day_);
  if (pin == nullptr || session_->isReadOnly()) return;
  tell(session_->perform(removePin(session_->orchard(), pin->id)));
}

void TodayPage::notToday(const JobPlace& place) {
  const CrewPlan* plan = planner_->plan();
  if (plan == nullptr || session_->isReadOnly()) return;
  const auto next = workedAfter(*plan, day_);
  if (!next) return;
  Pin pin;
  pin.id = session_->ids().next<PinId>();
  pin.kind = PinKind::notBefore;
  pin.task = place.task;
  pin.day = *next;
  tell(session_->perform(addPin(session_->orchard(), pin, skillOf(place.task))));
}

void TodayPage::setWorkers(CrewId crew, int workers) {
  tell(session_->perform(
      setTurnout(session_->orchard(), Turnout{CrewDay{crew, day_}, workers})));
}

void TodayPage::accept() {
  tell(session_->perform(
      acceptPlan(session_->orchard(), day_, plannedJobs(shown_, day_))));
}

void TodayPage::reopen(ClosureId closure) {
  tell(session_->perform(reopenBlock(session_->orchard(), closure)));
}

void TodayPage::release(PinId pin) {
  tell(session_->perform(removePin(session_->orchard(), pin)));
}

void TodayPage::undo() {
  const Done done = session_->undo();
  tell(done ? Problems{} : Problems{done.error()});
}

void TodayPage::openForm(Foot foot) {
  cameFrom_ = focusWidget();
  chosen_.reset();
  lanes_->choose(std::nullopt);
  show(foot);
  if (foot == Foot::closeBlock) closeBlock_->open(day_);
  if (foot == Foot::lostDay) lostDay_->open(day_);
}

void TodayPage::enterHours(Day day) {
  openForm(Foot::hours);
  hours_->open(day);
}

}  // namespace topwire
