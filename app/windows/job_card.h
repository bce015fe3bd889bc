#pragma once

#include "app/look/card.h"
#include "app/models/session.h"
#include "app/windows/today_words.h"

#include <QBoxLayout>
#include <QPoint>

#include <optional>

namespace topwire {

class OperationDrawing;
class RowStrip;

/// What a person can ask of a job.
enum class JobDeed { open, why, unpin, notToday, toCrewAbove, toCrewBelow };

/// Which card: a task stands once in each gang of a crew.
struct JobPlace {
  CrewId crew;
  int gang = 0;
  TaskKey task;

  friend bool operator==(const JobPlace&, const JobPlace&) = default;
};

/// One job on a lane: what, where, which rows, how long, until when. It takes the
/// keyboard as a whole, and can be dragged to another crew. The narrower it is, the less
/// it shows; what is left out stands in its tooltip and for the screen reader.
class JobCard : public QWidget {
  Q_OBJECT

public:
  JobCard(Session& session,
          const TaskView& view,
          const CrewLane& lane,
          const LaneJob& job,
          const DayCaution* wait,
          QWidget* parent = nullptr);

  const JobPlace& place() const { return place_; }

  int startMinute() const { return job_.startMinute; }

  int endMinute() const { return job_.endMinute; }

  /// `brief`: three lines, for a crew with many jobs.
  enum class Form { whole, brief };

  /// Leaves out what has no room there; ask for the height after it.
  void fitTo(int width, Form form);

  bool isChosen() const { return chosen_; }

  void setChosen(bool chosen);

Q_SIGNALS:
  void asked(topwire::JobDeed deed);
  void focused();
  /// The arrow's way to another card.
  void stepWanted(Qt::Key arrow);
  /// Carried to this point of the screen; `dropped` when let go there.
  void carried(QPoint where, bool dropped);

protected:
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  void build(const TaskView& view, const QString& wait);
  void addDrawing(const Task& task);
  QBoxLayout* words(const TaskView& view, const QString& wait);
  void showAmount(Form form);
  void openMenu(QPoint where);

  Session* session_;
  LaneJob job_;
  JobPlace place_;
  JobWords words_;
  TaskState state_;
  bool chosen_ = false;
  bool carrying_ = false;
  std::optional<QPoint> pressed_;
  OperationDrawing* drawing_ = nullptr;
  QLabel* name_ = nullptr;
  QLabel* amount_ = nullptr;
  QLabel* briefHours_ = nullptr;
  QBoxLayout* lines_ = nullptr;
  QBoxLayout* facts_ = nullptr;  ///< the hours and the state, below or beside each other
  RowStrip* strip_ = nullptr;
};

}  // namespace topwire
