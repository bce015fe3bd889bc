#include "app/models/crew_planner.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace topwire {

CrewPlanner::CrewPlanner(Session& session, QObject* parent)
    : QObject(parent), session_(&session), mostTrades_(std::numeric_limits<int>::max()) {
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
  ++generation_;
  pool_.clear();
  pool_.waitForDone();
}

void CrewPlanner::forget() {
  plan_.reset();
  missed_.clear();
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
  SearchLimits limits = searchLimits(asked.problem);
  limits.evaluations = std::min(limits.evaluations, mostTrades_);
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
  if (runs_ == Runs::atOnce) return runAtOnce(std::move(asked));
  if (plan_) plan_ = replanCrews(asked, *plan_);
  run(std::move(asked));
  Q_EMIT planned();
}

void CrewPlanner::runAtOnce(CrewQuestion question) {
  const SearchLimits within = limits(question);
  const PastRain rained = rain(question);
  take(generation_, planCrews(std::move(question), within));
  takeMissed(generation_, missedInPastYears(rained, *plan_));
}

PastRain CrewPlanner::rain(const CrewQuestion& asked) const {
  return pastRain(session_->orchard(), session_->trade(), asked);
}

/// The first plan is shown without the search before it, so that nobody waits for that;
/// past years are counted last, and only as long as nobody asks for another plan.
void CrewPlanner::run(CrewQuestion question) {
  const std::uint64_t generation = awaited_ = generation_;
  pool_.clear();
  const auto post = [this](auto deed) {
    QMetaObject::invokeMethod(this, std::move(deed), Qt::QueuedConnection);
  };
  const auto postPlan = [this, post, generation](CrewPlan plan) {
    post([this, generation, made = std::move(plan)]() mutable {
      take(generation, std::move(made));
    });
  };
  pool_.start([this,
               post,
               postPlan,
               generation,
               limits = this->limits(question),
               rained = rain(question),
               hasPlan = plan_.has_value(),
               asked = std::move(question)]() mutable {
    if (!hasPlan) {
      SearchLimits none = limits;
      none.evaluations = 0;
      postPlan(planCrews(asked, none));
    }
    const CrewPlan plan = planCrews(std::move(asked), limits);
    postPlan(plan);
    const auto isWanted = [this, generation] { return generation == generation_; };
    post(
        [this, generation, missed = missedInPastYears(rained, plan, isWanted)]() mutable {
          takeMissed(generation, std::move(missed));
        });
  });
}

void CrewPlanner::take(std::uint64_t generation, CrewPlan plan) {
  if (generation != generation_) return;
  plan_ = std::move(plan);
  awaited_ = 0;
  Q_EMIT planned();
}

void CrewPlanner::takeMissed(std::uint64_t generation, std::vector<MissedWindow> missed) {
  if (generation != generation_) return;
  missed_ = std::move(missed);
  Q_EMIT yearsCounted();
}

}  // namespace topwire
