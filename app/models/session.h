#pragma once

#include "core/edit/deeds.h"
#include "core/edit/orchard_files.h"
#include "core/edit/workbench.h"
#include "core/planning/day_cautions.h"
#include "core/planning/explain.h"
#include "core/planning/plan_effect.h"
#include "core/planning/planner.h"
#include "core/planning/programmes_at_hand.h"
#include "core/planning/progress.h"
#include "core/planning/reconcile.h"

#include <QObject>
#include <QString>

#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace topwire {

/// One open orchard as the windows see it: the workbench, the day taken for today, and
/// what follows from both (plan, views), made again after every change. Windows read from
/// here, act through `perform`, and listen to the signals; none keeps data of its own.
class Session : public QObject {
  Q_OBJECT

public:
  /// The references must outlive the session.
  Session(const TradeTables& tables,
          const Programmes& programmes,
          const StageForecaster& forecaster,
          OrchardFiles& files,
          Clock clock,
          QObject* parent = nullptr);
  ~Session() override;

  /// Each leaves the orchard open before untouched when it is refused.
  Done open(const QString& path, Access access);
  /// Whether a file that may not be written can at least be read.
  bool canLook(const QString& path) const;
  Done create(const QString& path, const Orchard& orchard);
  /// A whole copy of the open file.
  Done copyTo(const QString& path) const;

  bool isOpen() const { return bench_ != nullptr; }

  bool isReadOnly() const { return readOnly_; }

  QString path() const { return path_; }

  Day today() const { return today_; }

  void setToday(Day today);

  /// That `today` lies in.
  Season season() const;

  const Orchard& orchard() const { return bench_->orchard(); }

  const TradeTables& tables() const { return *tables_; }

  /// The shipped ones and the orchard's own.
  const Programmes& programmes() const { return programmes_.all(); }

  const Programmes& shippedProgrammes() const { return programmes_.shipped(); }

  Trade trade() const { return {*tables_, programmes(), *forecaster_}; }

  IdSource& ids() { return bench_->ids(); }

  /// The plan for the seasons kept planned on `today`.
  const Plan& plan() const { return plan_; }

  const std::vector<TaskView>& views() const { return views_; }

  const TaskView* view(const TaskKey& key) const;
  /// Plans the seasons these days touch, where they lie outside `plan`; cached until the
  /// next change.
  const Plan& planFor(DaySpan days);
  std::vector<TaskView> viewsFor(DaySpan days);
  Outlook outlook(const Planting& planting, Season season) const;

  /// The stages of the season that `today` lies in, as the plan has them.
  const Outlooks& outlooks() const { return outlooks_; }

  /// What the plan would become by a change of programmes, or of which of them plantings
  /// go by; the stages stay as they are.
  PlanEffect effectOf(const Change& change) const;

  /// What the weather of a day of this season gives reason to think of; none for days
  /// gone by.
  CautionsByPlanting cautionsOn(Day day) const;
  const Operation* operationOf(const Task& task) const;
  Words titleOf(const Task& task) const;

  /// Performs the change; its problems otherwise, with nothing done. A window shows those
  /// beside the fields they name.
  Problems perform(const Checked<Change>& change);
  /// For a deed without fields of its own: the first problem is told as trouble.
  void performOrTell(const Checked<Change>& change);
  Done undo();
  Done redo();
  const Sentence* undoName() const;
  const Sentence* redoName() const;

Q_SIGNALS:
  /// Another orchard, or none, is open now.
  void reset();
  /// The orchard, the plan or today changed.
  void changed();
  /// A change was performed; not told for undo and redo.
  void happened(const topwire::Sentence& name);
  /// Opening the file did something worth knowing, such as setting a copy aside.
  void noted(const std::vector<topwire::Sentence>& notes);
  /// What the last replanning moved, and which stages moved it; empty lists of
  /// differences are not told.
  void shifted(const std::vector<topwire::PlanDifference>& differences,
               const std::vector<topwire::Sentence>& why);
  /// A write was refused or the like: to be shown, not swallowed.
  void troubled(const topwire::Problem& problem);

private:
  void takeOver(OpenedOrchard opened, const QString& path);
  void replan();
  /// The stages that moved since the last plan of the same season.
  std::vector<Sentence> whyMoved(const std::vector<PlanDifference>& moved,
                                 const Outlooks& before,
                                 Season seasonBefore) const;
  /// Stores what planning made of the tasks; what that moved, for telling.
  std::vector<PlanDifference> store(SeasonSpan seasons);

  const TradeTables* tables_;
  ProgrammesAtHand programmes_;
  const StageForecaster* forecaster_;
  OrchardFiles* files_;
  Clock clock_;
  Day today_{};
  QString path_;
  bool readOnly_ = false;
  std::unique_ptr<Journal> journal_;
  std::unique_ptr<Workbench> bench_;
  Subscription onChange_;
  std::unique_ptr<StageForecast> forecast_;  ///< over the orchard as last planned
  Plan plan_;
  Outlooks outlooks_;
  Season outlookSeason_{};
  std::vector<TaskView> views_;
  std::map<int, Plan> otherPlans_;
};

}  // namespace topwire
