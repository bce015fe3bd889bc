#include "app/look/shape_mark.h"

#include "app/look/state_shape.h"

namespace topwire {

ShapeMark::ShapeMark(TaskState state, QWidget* parent) : QWidget(parent), state_(state) {
  constexpr int side = 15;
  setFixedSize(side, side);
}

void ShapeMark::setState(TaskState state) {
  state_ = state;
  update();
}

void ShapeMark::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  painter.setRenderHint(QPainter::Antialiasing);
  paintShape(painter, QRectF{rect()}, state_);
}

}  // namespace topwire
