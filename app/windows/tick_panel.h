#pragma once

#include "app/look/card.h"
#include "app/models/calendar_work.h"
#include "app/windows/row_grid.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>

#include <array>
#include <optional>

namespace topwire {

/// Ticks some rows of a task, at the foot of the page: large cells and a field that
/// follow each other, hours, who, and for rows not finished how much of them is done.
/// Rows that are done can be taken back.
class TickPanel : public Card {
  Q_OBJECT

public:
  explicit TickPanel(Session& session, QWidget* parent = nullptr);

  /// Ticks go to `day`; `planned` rows are marked among the others.
  void open(const TaskKey& task, Day day, const RowSet& planned = {});

  /// Whom the ticks are put down to, until a person says otherwise.
  void setWho(const QString& name) { who_->setCurrentText(name); }

  /// Without its own head where what stands above says the task already.
  void setTitled(bool titled);
  /// Chooses every row left and asks who did the work.
  void askWho();
  /// Shows what the task is now; closes where it is gone.
  void refresh();

  const std::optional<TaskKey>& task() const { return task_; }

Q_SIGNALS:
  void closed();

protected:
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

private:
  void placeFields(bool narrow);
  void placeIn(QGridLayout& grid, bool narrow);
  QWidget* headLine();
  QWidget* fields();
  QWidget* deeds();
  void connectFields();
  std::optional<TaskView> view() const;
  void readField();
  void followCells();
  void offerDeeds();
  void say(const QString& problem);
  void tick();
  void takeBack();
  void settle(const Problems& problems);
  RowSet tickable() const;
  RowSet takeable() const;
  std::optional<int> minutes() const;

  Session* session_;
  std::optional<TaskKey> task_;
  Day day_{};
  RowSet planned_;
  std::optional<bool> narrow_;
  QWidget* head_ = nullptr;
  CellLegend* legend_ = nullptr;
  QLabel* title_ = nullptr;
  QLabel* when_ = nullptr;
  RowGrid* cells_ = nullptr;
  QScrollArea* area_ = nullptr;
  QGridLayout* grid_ = nullptr;
  QWidget* fields_ = nullptr;
  QGridLayout* fieldGrid_ = nullptr;
  std::array<QLabel*, 3> labels_{};  ///< of rows, hours, who
  QWidget* deeds_ = nullptr;
  QLineEdit* rows_ = nullptr;
  QLineEdit* hours_ = nullptr;
  QComboBox* who_ = nullptr;
  QCheckBox* partly_ = nullptr;
  QSpinBox* percent_ = nullptr;
  QLabel* problem_ = nullptr;
  QPushButton* tick_ = nullptr;
  QPushButton* takeBack_ = nullptr;
  QPushButton* close_ = nullptr;
};

}  // namespace topwire
