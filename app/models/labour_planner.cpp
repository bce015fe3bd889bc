#include "app/models/labour_planner.h"

#include "app/models/crew_planner.h"

#include <algorithm>
#include <utility>

namespace topwire {

LabourPlanner::LabourPlanner(Session& session, QObject* parent)
    : QObject(parent), session_(&session) {
  pool_.setMaxThreadCount(1);
  connect(&known_, &PlanBeside::planned, this, &LabourPlanner::changed);
  connect(&supposed_, &PlanBeside::planned, this, &LabourPlanner::changed);
  connect(session_, &Session::changed, this, [this] {
    stale_ = true;
    if (watched_) askAll();
  });
  connect(session_, &Session::reset, this, [this] {
    supposition_ = {};
    forget();
    stale_ = true;
    if (watched_) askAll();
  });
}

LabourPlanner::~LabourPlanner() {
  known_.forget();
  supposed_.forget();
  pool_.waitForDone();
}

void LabourPlanner::forget() {
  known_.forget();
  supposed_.forget();
  Q_EMIT changed();
}

void LabourPlanner::setWatched(bool watched) {
  watched_ = watched;
  if (watched_ && stale_) askAll();
}

void LabourPlanner::suppose(const Supposition& supposed) {
  if (supposed == supposition_) return;
  supposition_ = supposed;
  if (watched_)
    askSupposed();
  else
    stale_ = true;
}

void LabourPlanner::askAll() {
  if (!session_->isOpen()) return;
  stale_ = false;
  if (session_->orchard().crews.empty()) return forget();
  ask(known_, {});
  askSupposed();
}

void LabourPlanner::askSupposed() {
  if (!session_->isOpen() || session_->orchard().crews.empty()) return;
  if (supposition_ == Supposition{})
    supposed_.forget();
  else
    ask(supposed_, supposition_);
  Q_EMIT changed();
}

void LabourPlanner::ask(PlanBeside& plan, const Supposition& supposed) {
  CrewQuestion question = crewQuestion(session_->orchard(),
                                       session_->trade(),
                                       session_->views(),
                                       session_->outlooks(),
                                       session_->today(),
                                       crewPlanDays(session_->today()),
                                       supposed);
  SearchLimits limits = searchLimits(question.problem);
  limits.evaluations =
      std::min(limits.evaluations, mostTrades_.value_or(limits.evaluations));
  if (runs_ == Runs::atOnce)
    plan.askAtOnce(std::move(question), limits);
  else
    plan.ask(std::move(question), limits);
}

}  // namespace topwire
