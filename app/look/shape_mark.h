#pragma once

#include "core/planning/progress.h"

#include <QWidget>

namespace topwire {

/// A state's shape, beside its word.
class ShapeMark : public QWidget {
  Q_OBJECT

public:
  explicit ShapeMark(TaskState state = TaskState::waiting, QWidget* parent = nullptr);

  void setState(TaskState state);

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  TaskState state_;
};

}  // namespace topwire
