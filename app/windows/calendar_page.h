#pragma once

#include "app/models/calendar_work.h"
#include "app/models/session.h"

#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QWidget>

namespace topwire {

class Checklist;
class MonthView;
class StateLegend;
class TaskForm;
class TickPanel;
struct MonthBar;

/// A month or a week of windows, the chosen day's checklist beside it, and at the foot,
/// when wanted, the rows of one task.
class CalendarPage : public QWidget {
  Q_OBJECT

public:
  explicit CalendarPage(Session& session, QWidget* parent = nullptr);

  /// Chooses the day and turns to its month, or its week.
  void showDay(Day day);

  Day chosenDay() const { return chosen_; }

Q_SIGNALS:
  void printWanted(topwire::IsoWeek week);
  /// There is no block yet, and the person wants to add one.
  void blocksWanted();

protected:
  void resizeEvent(QResizeEvent* event) override;

private:
  QWidget* content();
  QWidget* foot();
  QWidget* header();
  QWidget* headButtons();
  QPushButton* addButton(QBoxLayout& to, const QString& words, const char* name);
  QWidget* calendarSide();
  QWidget* emptyPage();
  void listenToMonth();
  void listenToChecklist();

  void startAnew();
  void refresh();
  void refreshHead();
  void refreshMonth();
  void refreshUndo();
  void arrange();
  DaySpan daysShown() const;
  QString riskText() const;

  void turn(int steps);
  void setWeekly(bool weekly);
  void openFilter();
  void setFilter(WorkFilter filter);
  QString filterText() const;
  void openBar(const MonthBar& bar);
  void tickWhole(const TaskKey& task);
  void openRows(const TaskKey& task);
  void restore(const TaskKey& task);
  void showForm(bool form, bool rows);
  void closeFoot();
  void undo();
  void tell(const Problems& problems);
  Day dayOfTicks() const;

  Session* session_;
  Day anchor_{};
  Day chosen_{};
  bool weekly_ = false;
  WorkFilter filter_;

  QLabel* title_ = nullptr;
  QLabel* subtitle_ = nullptr;
  QBoxLayout* head_ = nullptr;
  QPushButton* month_ = nullptr;
  QPushButton* week_ = nullptr;
  QPushButton* undo_ = nullptr;
  QPushButton* print_ = nullptr;
  QPushButton* filterButton_ = nullptr;
  StateLegend* legend_ = nullptr;
  MonthView* view_ = nullptr;
  Checklist* list_ = nullptr;
  QWidget* work_ = nullptr;
  QWidget* empty_ = nullptr;
  QBoxLayout* body_ = nullptr;
  QWidget* foot_ = nullptr;
  QLabel* problem_ = nullptr;
  TickPanel* rows_ = nullptr;
  TaskForm* form_ = nullptr;
};

}  // namespace topwire
