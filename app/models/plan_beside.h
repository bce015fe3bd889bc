#pragma once

#include "core/crews/crew_plan.h"

#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <cstdint>
#include <memory>
#include <optional>

namespace topwire {

/// One crew plan that is made beside the windows: of several questions asked one after
/// another the answer to the last alone is taken, and the one before it stands until
/// then.
class PlanBeside : public QObject {
  Q_OBJECT

public:
  /// The pool has to be done with its work before this goes.
  explicit PlanBeside(QThreadPool& pool, QObject* parent = nullptr);

  /// `beforeSearch`: by rule alone, for a start; the whole one follows.
  enum class Answer { beforeSearch, whole };

  /// Where no plan stands yet, one without the search comes first, so that nobody waits
  /// for that.
  void ask(CrewQuestion question, SearchLimits limits);
  /// The same, with the answer there on return.
  void askAtOnce(CrewQuestion question, SearchLimits limits);
  /// No plan stands, and none that is on its way will.
  void forget();

  const CrewPlan* plan() const { return plan_ ? &*plan_ : nullptr; }

  bool isPlanning() const { return isPlanning_; }

  std::uint64_t generation() const { return *generation_; }

  /// Takes the answer to the `generation`th question, unless another was asked since.
  void take(std::uint64_t generation, CrewPlan plan, Answer answer = Answer::whole);

Q_SIGNALS:
  void planned();

private:
  QThreadPool* pool_;
  /// Shared with runs that wait for their turn, so that those out of date are passed
  /// over.
  std::shared_ptr<std::atomic<std::uint64_t>> generation_;
  bool isPlanning_ = false;
  std::optional<CrewPlan> plan_;
};

}  // namespace topwire
