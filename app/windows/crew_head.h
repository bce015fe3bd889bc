#pragma once

#include "core/crews/crew_plan.h"

#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include <vector>

namespace topwire {

/// A crew at the head of its lane: name, who turned out with a step down and a step up,
/// and what that makes of the day.
class CrewHead : public QWidget {
  Q_OBJECT

public:
  explicit CrewHead(QWidget* parent = nullptr);

  /// Where Tab stops, in order.
  std::vector<QWidget*> stops() const { return {fewer_, more_}; }

  void setLane(const QString& name, const CrewLane& lane, bool mayChange);

Q_SIGNALS:
  void turnoutWanted(int workers);

private:
  QPushButton* addStep(QBoxLayout& to, bool up);

  int workers_ = 0;
  QLabel* name_;
  QLabel* count_;
  QLabel* words_;
  QPushButton* fewer_ = nullptr;
  QPushButton* more_ = nullptr;
};

}  // namespace topwire
