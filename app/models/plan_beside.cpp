#include "app/models/plan_beside.h"

#include <utility>

namespace topwire {

PlanBeside::PlanBeside(QThreadPool& pool, QObject* parent)
    : QObject(parent)
    , pool_(&pool)
    , generation_(std::make_shared<std::atomic<std::uint64_t>>(0)) {}

void PlanBeside::ask(CrewQuestion question, SearchLimits limits) {
  isPlanning_ = true;
  const auto last = generation_;
  const std::uint64_t generation = ++*last;
  const auto post = [this, generation](CrewPlan plan, Answer answer) {
    QMetaObject::invokeMethod(
        this,
        [this, generation, answer, made = std::move(plan)]() mutable {
          take(generation, std::move(made), answer);
        },
        Qt::QueuedConnection);
  };
  pool_->start(
      [post, last, generation, limits, first = !plan_, asked = std::move(question)] {
        if (*last != generation) return;
        if (first) post(planCrews(asked, {0, limits.seed}), Answer::beforeSearch);
        if (*last == generation) post(planCrews(asked, limits), Answer::whole);
      });
}

void PlanBeside::askAtOnce(CrewQuestion question, SearchLimits limits) {
  take(++*generation_, planCrews(std::move(question), limits));
}

void PlanBeside::forget() {
  ++*generation_;
  isPlanning_ = false;
  plan_.reset();
}

void PlanBeside::take(std::uint64_t generation, CrewPlan plan, Answer answer) {
  if (generation != *generation_) return;
  isPlanning_ = answer == Answer::beforeSearch;
  plan_ = std::move(plan);
  Q_EMIT planned();
}

}  // namespace topwire
