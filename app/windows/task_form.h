#pragma once

#include "app/look/card.h"
#include "app/models/calendar_work.h"

#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

#include <optional>

namespace topwire {

/// A person's word on a task, at the foot of the page: set it aside with a reason, move
/// its window, or add work that no operation asks for.
class TaskForm : public Card {
  Q_OBJECT

public:
  explicit TaskForm(Session& session, QWidget* parent = nullptr);

  void askReason(const TaskKey& task);
  void askWindow(const TaskKey& task);
  void askWork(Day day);

Q_SIGNALS:
  void closed();

protected:
  void keyPressEvent(QKeyEvent* event) override;

private:
  enum class Asks { reason, window, work };

  QWidget* fields();
  QWidget* deeds();
  void begin(Asks asks, const QString& title, const QString& deed);
  void fillPlantings();
  void act();
  Checked<Change> change() const;
  std::optional<TaskView> view() const;

  Session* session_;
  Asks asks_ = Asks::reason;
  std::optional<TaskKey> task_;
  QLabel* title_ = nullptr;
  QLabel* textLabel_ = nullptr;
  QLineEdit* text_ = nullptr;
  QLabel* plantingLabel_ = nullptr;
  QComboBox* planting_ = nullptr;
  QLabel* fromLabel_ = nullptr;
  QDateEdit* from_ = nullptr;
  QLabel* toLabel_ = nullptr;
  QDateEdit* to_ = nullptr;
  QLabel* secondsLabel_ = nullptr;
  QSpinBox* seconds_ = nullptr;
  QLabel* problem_ = nullptr;
  QPushButton* deed_ = nullptr;
};

}  // namespace topwire
