#pragma once

#include "app/models/plan_beside.h"
#include "app/models/session.h"

namespace topwire {

/// The season's labour as it is known and as it is supposed, each by a plan made beside
/// the windows while somebody looks. Both search as long as the plan of the day does, so
/// that the one known is the same.
class LabourPlanner : public QObject {
  Q_OBJECT

public:
  /// `atOnce`: before the change returns, for tests and pictures.
  enum class Runs { beside, atOnce };

  explicit LabourPlanner(Session& session, QObject* parent = nullptr);
  /// Waits for a run that has begun.
  ~LabourPlanner() override;

  void setRuns(Runs runs) { runs_ = runs; }

  /// Searches no longer than this, however small the orchard.
  void setMostTrades(int trades) { mostTrades_ = trades; }

  /// Nothing is planned while nobody looks.
  void setWatched(bool watched);
  /// Plans what is supposed, and nothing where that is what is known.
  void suppose(const Supposition& supposed);

  const Supposition& supposition() const { return supposition_; }

  /// Of the orchard as it last was; nullptr until there is one, and without crews.
  const CrewPlan* known() const { return known_.plan(); }

  /// nullptr also where nothing is supposed.
  const CrewPlan* supposed() const { return supposed_.plan(); }

  bool isPlanning() const { return known_.isPlanning() || supposed_.isPlanning(); }

Q_SIGNALS:
  /// There is another plan, or another one is being made, or there is none any more.
  void changed();

private:
  void askAll();
  void askSupposed();
  void ask(PlanBeside& plan, const Supposition& supposed);
  void forget();

  Session* session_;
  Runs runs_ = Runs::beside;
  std::optional<int> mostTrades_;
  bool watched_ = false;
  bool stale_ = true;
  Supposition supposition_;
  QThreadPool pool_;
  PlanBeside known_{pool_};
  PlanBeside supposed_{pool_};
};

}  // namespace topwire
