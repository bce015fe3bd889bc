#include "app/models/session.h"

#include "core/base/contract.h"
#include "core/planning/stage_shifts.h"

#include <algorithm>
#include <utility>

namespace topwire {

Session::Session(const TradeTables& tables,
                 const Programmes& programmes,
                 const StageForecaster& forecaster,
                 OrchardFiles& files,
                 Clock clock,
                 QObject* parent)
    : QObject(parent)
    , tables_(&tables)
    , programmes_(programmes)
    , forecaster_(&forecaster)
    , files_(&files)
    , clock_(std::move(clock)) {}

Session::~Session() = default;

Done Session::open(const QString& path, Access access) {
  auto opened = files_->open(path.toStdString(), access);
  if (!opened) return tl::unexpected{opened.error()};
  takeOver(std::move(*opened), path);
  return {};
}

bool Session::canLook(const QString& path) const {
  return files_->open(path.toStdString(), Access::look).has_value();
}

Done Session::create(const QString& path, const Orchard& orchard) {
  auto made = files_->create(path.toStdString(), orchard);
  if (!made) return tl::unexpected{made.error()};
  takeOver(std::move(*made), path);
  return {};
}

Done Session::copyTo(const QString& path) const {
  TOPWIRE_REQUIRE(isOpen());
  return files_->copyTo(path_.toStdString(), path.toStdString());
}

void Session::takeOver(OpenedOrchard opened, const QString& path) {
  forecast_.reset();
  bench_.reset();
  journal_ = std::move(opened.journal);
  bench_ = std::make_unique<Workbench>(
      std::move(opened.orchard), *journal_, clock_, IdSource::fromSystem());
  path_ = path;
  readOnly_ = opened.readOnly;
  outlooks_.clear();
  onChange_ = bench_->onChange([this](const Change&) { replan(); });
  replan();
  Q_EMIT reset();
  std::vector<Sentence> notes = std::move(opened.notes);
  notes.insert(notes.end(), programmes_.notes().begin(), programmes_.notes().end());
  if (!notes.empty()) Q_EMIT noted(notes);
}

void Session::setToday(Day today) {
  if (today == today_) return;
  today_ = today;
  if (isOpen()) replan();
}

void Session::replan() {
  views_.clear();
  otherPlans_.clear();
  programmes_.take(orchard());
  const SeasonSpan seasons = plannedSeasons(orchard(), today_);
  forecast_ = forecaster_->over(orchard(), today_);
  plan_ = planTasks(orchard(), trade(), *forecast_, seasons);
  const std::vector<PlanDifference> moved = store(seasons);
  const Season before = std::exchange(outlookSeason_, season());
  const Outlooks earlier =
      std::exchange(outlooks_, topwire::outlooksOf(orchard(), *forecast_, season()));
  views_ = viewsOf(orchard(), plan_, today_);
  Q_EMIT changed();
  if (!moved.empty()) Q_EMIT shifted(moved, whyMoved(moved, earlier, before));
}

Season Session::season() const {
  return seasonOf(today_, orchard().settings.hemisphere());
}

std::vector<Sentence> Session::whyMoved(const std::vector<PlanDifference>& moved,
                                        const Outlooks& before,
                                        Season seasonBefore) const {
  if (seasonBefore != outlookSeason_) return {};
  return sentencesOf(orchard(),
                     stageShifts(before, outlooks_, outlookSeason_, plan_, moved));
}

PlanEffect Session::effectOf(const Change& change) const {
  Orchard changed = orchard();
  apply(changed, change);
  ProgrammesAtHand programmes = programmes_;
  programmes.take(changed);
  const Plan plan = planTasks(changed,
                              {*tables_, programmes.all(), *forecaster_},
                              *forecast_,
                              plannedSeasons(changed, today_));
  return effectBetween(orchard(), plan_, plan, today_);
}

CautionsByPlanting Session::cautionsOn(Day day) const {
  if (day < today_) return {};
  return topwire::cautionsOn(orchard(), *tables_, outlooks_, day);
}

std::vector<PlanDifference> Session::store(SeasonSpan seasons) {
  if (readOnly_) return {};
  Reconciled reconciled = reconcile(orchard(), plan_, seasons);
  if (reconciled.tasks == orchard().tasks) return {};
  const bool firstPlan = orchard().tasks.empty();
  if (const Done kept = bench_->replan(std::move(reconciled.tasks)); !kept) {
    Q_EMIT troubled(kept.error());
    return {};
  }
  plan_ = planTasks(orchard(), trade(), *forecast_, seasons);
  if (firstPlan) return {};
  return std::move(reconciled.differences);
}

const TaskView* Session::view(const TaskKey& key) const {
  const auto found = std::ranges::find_if(
      views_, [&key](const TaskView& view) { return view.task->key == key; });
  return found == views_.end() ? nullptr : &*found;
}

const Plan& Session::planFor(DaySpan days) {
  const SeasonSpan wanted = seasonsTouching(orchard(), days);
  const SeasonSpan held = plannedSeasons(orchard(), today_);
  if (held.first <= wanted.first && wanted.last <= held.last) return plan_;
  const auto [place, isNew] =
      otherPlans_.try_emplace(wanted.first.year * 10000 + wanted.last.year);
  if (isNew) place->second = planTasks(orchard(), trade(), *forecast_, wanted);
  return place->second;
}

std::vector<TaskView> Session::viewsFor(DaySpan days) {
  return viewsOf(orchard(), planFor(days), today_);
}

Outlook Session::outlook(const Planting& planting, Season season) const {
  return forecast_->outlook(planting, season);
}

const Operation* Session::operationOf(const Task& task) const {
  return topwire::operationOf(orchard(), programmes(), task.key);
}

Words Session::titleOf(const Task& task) const {
  return topwire::titleOf(task, operationOf(task));
}

Problems Session::perform(const Checked<Change>& change) {
  if (!change) return change.error();
  if (const Done done = bench_->perform(*change); !done) {
    Q_EMIT troubled(done.error());
    return {done.error()};
  }
  if (!change->empty()) Q_EMIT happened(change->name);
  return {};
}

void Session::performOrTell(const Checked<Change>& change) {
  const Problems problems = perform(change);
  if (!change) Q_EMIT troubled(problems.front());
}

Done Session::undo() {
  TOPWIRE_REQUIRE(isOpen());
  const auto undone = bench_->undo();
  if (!undone) return tl::unexpected{undone.error()};
  return {};
}

Done Session::redo() {
  TOPWIRE_REQUIRE(isOpen());
  const auto redone = bench_->redo();
  if (!redone) return tl::unexpected{redone.error()};
  return {};
}

const Sentence* Session::undoName() const {
  return isOpen() ? bench_->undoName() : nullptr;
}

const Sentence* Session::redoName() const {
  return isOpen() ? bench_->redoName() : nullptr;
}

}  // namespace topwire
