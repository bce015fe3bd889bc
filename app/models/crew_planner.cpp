#include "app/models/crew_planner.h"

#include <algorithm>
#include <utility>

namespace topwire {

namespace {

/// Jobs times rounds: a round goes through every job, so this keeps the time about even.
constexpr int jobRounds = 300'000;
constexpr int mostRounds = 1000;

}  // namespace

SearchLimits limitsFor(const CrewQuestion& question) {
  const int jobs = std::max(1, static_cast<int>(question.problem.jobs.size()));
  SearchLimits limits;
  limits.evaluations = std::min(mostRounds, jobRounds / jobs);
  return limits;
}

CrewPlanner::CrewPlanner(Session& session, QObject* parent)
    : QObject(parent), session_(&session), mostRounds_(mostRounds) {
  pool_.setMaxThreadCount(1);
  connect(&session, &Session::changed, this, [this] {
    stale_ = true;
    if (watched_) ask();
  });
  connect(&session, &Session::reset, this, [this] {
    forget();
    if (watched_) ask();
  });
}

CrewPlanner::~CrewPlanner() {
  pool_.clear();
  pool_.waitForDone();
}

void CrewPlanner::forget() {
  plan_.reset();
  stale_ = true;
  ++generation_;
  awaited_ = 0;
}

void CrewPlanner::setWatched(bool watched) {
  watched_ = watched;
  if (watched_ && stale_ && session_->isOpen()) ask();
}

CrewQuestion CrewPlanner::question() const {
  return crewQuestion(session_->orchard(),
                      session_->trade(),
                      session_->views(),
                      session_->outlooks(),
                      session_->today(),
                      crewPlanDays(session_->today()));
}

SearchLimits CrewPlanner::limits(const CrewQuestion& asked) const {
  SearchLimits limits = limitsFor(asked);
  limits.evaluations = std::min(limits.evaluations, mostRounds_);
  return limits;
}

bool CrewPlanner::isOfThisDay() const {
  return plan_ && path_ == session_->path() && plan_->question.first == session_->today();
}

void CrewPlanner::ask() {
  if (!session_->isOpen()) return;
  if (!isOfThisDay()) forget();
  path_ = session_->path();
  stale_ = false;
  ++generation_;
  if (session_->orchard().crews.empty()) {
    forget();
    return Q_EMIT planned();
  }
  CrewQuestion asked = question();
  if (runs_ == Runs::atOnce) {
    const SearchLimits within = limits(asked);
    return take(generation_, planCrews(std::move(asked), within));
  }
  if (plan_) plan_ = replanCrews(asked, *plan_);
  run(std::move(asked));
  Q_EMIT planned();
}

/// The first plan is shown without the search before it, so that nobody waits for that.
void CrewPlanner::run(CrewQuestion question) {
  awaited_ = generation_;
  pool_.clear();
  const auto post = [this, generation = generation_](CrewPlan plan) {
    QMetaObject::invokeMethod(
        this,
        [this, generation, made = std::move(plan)]() mutable {
          take(generation, std::move(made));
        },
        Qt::QueuedConnection);
  };
  const SearchLimits limits = this->limits(question);
  pool_.start(
      [post, limits, hasPlan = plan_.has_value(), asked = std::move(question)]() mutable {
        if (!hasPlan) {
          SearchLimits none = limits;
          none.evaluations = 0;
          post(planCrews(asked, none));
        }
        post(planCrews(std::move(asked), limits));
      });
}

void CrewPlanner::take(std::uint64_t generation, CrewPlan plan) {
  if (generation != generation_) return;
  plan_ = std::move(plan);
  awaited_ = 0;
  Q_EMIT planned();
}

}  // namespace topwire
