#pragma once

#include "app/windows/task_row.h"

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <set>
#include <vector>

namespace topwire {

/// The chosen day's tasks by planting, most urgent first, each with its own tick box.
class Checklist : public QWidget {
  Q_OBJECT

public:
  explicit Checklist(Session& session, QWidget* parent = nullptr);

  void setWork(const DayWork& work);
  /// Brings the task into sight and gives it the keyboard; false where it is not listed.
  bool goTo(const TaskKey& task);
  /// Grows with its tasks instead of scrolling, for a page that scrolls as a whole.
  void setScrolling(bool scrolls);

Q_SIGNALS:
  void tickWanted(const topwire::TaskKey& task);
  void rowsWanted(const topwire::TaskKey& task);
  void asideWanted(const topwire::TaskKey& task);
  void moveWanted(const topwire::TaskKey& task);
  void restoreWanted(const topwire::TaskKey& task);
  void addWanted();

protected:
  void paintEvent(QPaintEvent* event) override;
  bool event(QEvent* event) override;

private:
  QWidget* header();
  void fill(const DayWork& work);
  QWidget* groupHead(const DayGroup& group);
  void addRow(const TaskView& view, const DayCaution* wait);
  void showWaits(const DayWork& work);
  void step(const TaskRow& from, int steps);

  Session* session_;
  Day day_{};
  QLabel* title_ = nullptr;
  QLabel* summary_ = nullptr;
  QWidget* waits_ = nullptr;  ///< why some of the day's tasks should wait
  QLabel* waitText_ = nullptr;
  QPushButton* add_ = nullptr;
  QScrollArea* area_ = nullptr;
  QVBoxLayout* list_ = nullptr;
  std::vector<TaskRow*> rows_;
  std::set<TaskKey> unfolded_;
  bool scrolls_ = true;
};

}  // namespace topwire
