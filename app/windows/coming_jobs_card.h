#pragma once

#include "app/look/card.h"
#include "app/models/session.h"
#include "core/crews/coming_jobs.h"

#include <QPushButton>

namespace topwire {

class PlainTable;

/// When each job of the coming weeks will be done, with a span, beside its closing; what
/// will be late stands first.
class ComingJobsCard : public Card {
  Q_OBJECT

public:
  explicit ComingJobsCard(Session& session, QWidget* parent = nullptr);

  void show(const CrewPlan& plan);

private:
  void fill();
  QString nameOf(const ComingJob& job) const;

  Session* session_;
  std::vector<ComingJob> jobs_;
  QLabel* sum_;
  PlainTable* table_;
  QPushButton* all_;
};

}  // namespace topwire
