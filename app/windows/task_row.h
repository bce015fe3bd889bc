#pragma once

#include "app/look/row_strip.h"
#include "app/models/calendar_work.h"

#include <QAbstractButton>
#include <QLabel>
#include <QPushButton>
#include <QWidget>

namespace topwire {

/// Words in a state's ink, led by its shape; fewer words where there are some and no room
/// for all.
class StateWord : public QWidget {
  Q_OBJECT

public:
  explicit StateWord(QWidget* parent = nullptr);

  void setState(TaskState state, const QString& words, const QString& brief = {});

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  QSize sizeFor(const QString& words) const;

  TaskState state_ = TaskState::open;
  QString words_;
  QString brief_;
};

/// "Should wait", led by its shape.
class WaitWord : public QWidget {
  Q_OBJECT

public:
  explicit WaitWord(QWidget* parent = nullptr);

  QSize sizeHint() const override;

  QSize minimumSizeHint() const override { return sizeHint(); }

protected:
  void paintEvent(QPaintEvent* event) override;
};

/// A box of 22 px in a square of 40 that can be hit: empty, partly done, done.
class TickBox : public QAbstractButton {
  Q_OBJECT

public:
  explicit TickBox(QWidget* parent = nullptr);

  void setMark(CellMark mark);

  QSize sizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  CellMark mark_ = CellMark::toDo;
};

/// Words that act, in the accent's colour, without a frame.
QPushButton* linkButton(const QString& words);

/// One task of the day's list: tick box, name, state, rows, progress, and why. The whole
/// row takes the keyboard: Space ticks it, Enter opens its rows, W says why, the menu key
/// has the rest.
class TaskRow : public QWidget {
  Q_OBJECT

public:
  /// `wait`: why the day's weather advises against it; nullptr where it does not.
  TaskRow(Session& session,
          const TaskView& view,
          const DayCaution* wait,
          QWidget* parent = nullptr);

  const TaskKey& task() const { return task_; }

  void unfoldWhy(bool open);

  bool isWhyOpen() const { return why_ != nullptr; }

Q_SIGNALS:
  void tickWanted(const topwire::TaskKey& task);
  void rowsWanted(const topwire::TaskKey& task);
  void asideWanted(const topwire::TaskKey& task);
  void moveWanted(const topwire::TaskKey& task);
  void restoreWanted(const topwire::TaskKey& task);
  void whyFolded(const topwire::TaskKey& task, bool open);
  void stepWanted(int steps);

protected:
  void keyPressEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  void build(const TaskView& view);
  QWidget* headLine(const TaskView& view);
  QWidget* footLine(const TaskView& view);
  void openMenu(QPoint where);
  void describe(const TaskView& view);

  QString wait_;  ///< why it should wait, where it should
  Session* session_;
  TaskKey task_;
  bool settled_ = false;
  bool done_ = false;
  bool marked_ = false;  ///< a person's word stands on it
  TickBox* box_ = nullptr;
  QPushButton* whyLink_ = nullptr;
  QLabel* why_ = nullptr;
};

}  // namespace topwire
