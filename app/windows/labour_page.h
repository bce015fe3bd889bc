#pragma once

#include "app/models/labour_planner.h"
#include "core/crews/labour_ahead.h"

#include <QLabel>
#include <QScrollArea>
#include <QWidget>

namespace topwire {

class ComingJobsCard;
class LabourStrip;
class PacesCard;
class PageHead;
class WhatIfCard;

/// Labour wanted against labour there is, by week, half a year ahead; what would change
/// with more people, days lost, or a late spring, side by side with what is known; when
/// each coming job will be done; and how long a tree was learned to take. While it is
/// planned anew the figures from before stand.
class LabourPage : public QWidget {
  Q_OBJECT

public:
  explicit LabourPage(Session& session, QWidget* parent = nullptr);

  LabourPlanner& planner() { return *planner_; }

  /// As if typed into the fields.
  void suppose(const Supposition& supposed);

Q_SIGNALS:
  void crewsWanted();

protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

private:
  QWidget* makeScrolling();
  QWidget* makeKnown();
  QWidget* makeEmpty();
  void startAnew();
  void followSession();
  void refresh();
  void showKnown(const CrewPlan& plan);
  void showComparison(const CrewPlan* supposed);

  Session* session_;
  LabourPlanner* planner_;
  std::vector<WeekOfLabour> weeks_;
  PlanSum known_;
  PageHead* head_;
  QWidget* empty_ = nullptr;
  QScrollArea* scroll_ = nullptr;
  QLabel* summary_;
  QWidget* knownCard_ = nullptr;
  LabourStrip* strip_ = nullptr;
  QLabel* reading_ = nullptr;
  ComingJobsCard* coming_;
  WhatIfCard* whatIf_;
  PacesCard* paces_;
};

}  // namespace topwire
