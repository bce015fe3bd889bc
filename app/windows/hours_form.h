#pragma once

#include "app/windows/day_forms.h"
#include "core/crews/plan_and_done.h"
#include "core/edit/crew_deeds.h"

#include <QGridLayout>
#include <QScrollArea>

#include <optional>
#include <vector>

namespace topwire {

/// A day's planned jobs as they come back in the evening: rows done and the hours they
/// took, entered together as one change.
class HoursForm : public DayForm {
  Q_OBJECT

public:
  explicit HoursForm(Session& session, QWidget* parent = nullptr);

  void open(Day day);

private:
  struct Line {
    PlanAndDone job;
    RowSet ticked;  ///< of its rows, whole or in part, on that day
    QLineEdit* rows = nullptr;
    QLineEdit* hours = nullptr;
  };

  QWidget* makeLines();
  QLineEdit* makeField(const char* name, const QString& spoken, const QString& text);
  void addLine(QGridLayout& grid, int row, Line& line);
  void focusFirst();
  /// What the lines say that is new.
  Checked<std::vector<NotedHours>> noted();
  std::optional<Problem> read(const Line& line, std::vector<NotedHours>& into);
  void act();

  Day day_{};
  std::vector<Line> jobs_;
  QScrollArea* area_;
  QPushButton* deed_;
};

}  // namespace topwire
