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
  pool_->start([this, last, generation, limits, asked = std::move(question)]() mutable {
    if (*last != generation) return;
    QMetaObject::invokeMethod(
        this,
        [this, generation, made = planCrews(std::move(asked), limits)]() mutable {
          take(generation, std::move(made));
        },
        Qt::QueuedConnection);
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

void PlanBeside::take(std::uint64_t generation, CrewPlan plan) {
  if (generation != *generation_) return;
  isPlanning_ = false;
  plan_ = std::move(plan);
  Q_EMIT planned();
}

}  // namespace topwire
