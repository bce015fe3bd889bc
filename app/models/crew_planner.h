#pragma once

#include "app/models/session.h"
#include "core/crews/crew_plan.h"

#include <QObject>
#include <QThreadPool>

#include <cstdint>
#include <optional>

namespace topwire {

/// Keeps the crew plan of a session's orchard fresh while somebody looks at it. After a
/// change the last prices give an answer at once; the whole plan is made again beside the
/// windows and takes its place when it is ready, unless the orchard changed meanwhile.
class CrewPlanner : public QObject {
  Q_OBJECT

public:
  /// `atOnce`: the whole plan before the change returns, for tests.
  enum class Runs { beside, atOnce };

  explicit CrewPlanner(Session& session, QObject* parent = nullptr);
  /// Waits for a run that has begun.
  ~CrewPlanner() override;

  void setRuns(Runs runs) { runs_ = runs; }

  /// Searches no longer than this, however small the orchard.
  void setMostRounds(int rounds) { mostRounds_ = rounds; }

  /// Somebody looks, or no longer does; nothing is planned while nobody does.
  void setWatched(bool watched);

  /// Of the orchard as it is now; nullptr until there is one, and where nobody is there
  /// to work.
  const CrewPlan* plan() const { return plan_ ? &*plan_ : nullptr; }

  /// A whole plan is being made.
  bool isPlanning() const { return awaited_ != 0; }

  /// Takes a plan made of the question that was the `generation`th; an older one than the
  /// last asked is dropped.
  void take(std::uint64_t generation, CrewPlan plan);

  std::uint64_t generation() const { return generation_; }

Q_SIGNALS:
  /// There is another plan, or none any more.
  void planned();

private:
  void forget();
  void ask();
  void run(CrewQuestion question);
  CrewQuestion question() const;
  SearchLimits limits(const CrewQuestion& asked) const;
  bool isOfThisDay() const;

  Session* session_;
  Runs runs_ = Runs::beside;
  int mostRounds_;
  bool watched_ = false;
  bool stale_ = true;
  QString path_;
  std::uint64_t generation_ = 0;
  std::uint64_t awaited_ = 0;  ///< the generation being made; 0: none
  std::optional<CrewPlan> plan_;
  QThreadPool pool_;
};

/// How long to search for a plan of this size: fewer rounds where each takes longer.
SearchLimits limitsFor(const CrewQuestion& question);

}  // namespace topwire
