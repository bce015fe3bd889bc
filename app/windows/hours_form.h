#pragma once

#include "app/windows/day_forms.h"
#include "core/crews/crew_words.h"
#include "core/crews/plan_and_done.h"

#include <QScrollArea>

#include <vector>

namespace topwire {

/// The hours of a day's planned jobs, entered together once they are ticked.
class HoursForm : public DayForm {
  Q_OBJECT

public:
  explicit HoursForm(Session& session, QWidget* parent = nullptr);

  void open(Day day);

private:
  struct Line {
    PlanAndDone job;
    QLineEdit* hours;
  };

  QWidget* makeLines();
  QLineEdit* makeField(const PlanAndDone& job, const QString& name);
  void act();

  Day day_{};
  std::vector<Line> jobs_;
  QScrollArea* area_;
  QPushButton* deed_;
};

}  // namespace topwire
