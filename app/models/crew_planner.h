#pragma once

#include "app/models/session.h"
#include "core/crews/labour_ahead.h"

#include <QObject>
#include <QThreadPool>

#include <atomic>
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
  void setMostTrades(int trades) { mostTrades_ = trades; }

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

  /// How often windows were missed over past years' weather; empty until that is counted,
  /// which follows the whole plan.
  const std::vector<MissedWindow>& missed() const { return missed_; }

  void takeMissed(std::uint64_t generation, std::vector<MissedWindow> missed);

Q_SIGNALS:
  /// There is another plan, or none any more.
  void planned();
  /// `missed` is another one.
  void yearsCounted();

private:
  void forget();
  void ask();
  void run(CrewQuestion question);
  void runAtOnce(CrewQuestion question);
  CrewQuestion question() const;
  PastRain rain(const CrewQuestion& asked) const;
  SearchLimits limits(const CrewQuestion& asked) const;
  bool isOfThisDay() const;

  Session* session_;
  Runs runs_ = Runs::beside;
  int mostTrades_;
  bool watched_ = false;
  bool stale_ = true;
  QString path_;
  std::atomic<std::uint64_t> generation_ = 0;  ///< the worker looks whether it is stale
  std::uint64_t awaited_ = 0;                  ///< the generation being made; 0: none
  std::optional<CrewPlan> plan_;
  std::vector<MissedWindow> missed_;
  QThreadPool pool_;
};

}  // namespace topwire
