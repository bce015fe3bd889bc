#include "app/look/focus_ring.h"

#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace topwire {

namespace {

bool isField(const QWidget* widget) {
  return qobject_cast<const QLineEdit*>(widget) != nullptr
         || qobject_cast<const QAbstractSpinBox*>(widget) != nullptr
         || qobject_cast<const QComboBox*>(widget) != nullptr
         || qobject_cast<const QPlainTextEdit*>(widget) != nullptr;
}

/// The whole field, where the keyboard is in the line edit within it.
QWidget* outermostField(QWidget* widget) {
  QWidget* parent = widget->parentWidget();
  const bool inside = qobject_cast<QComboBox*>(parent) != nullptr
                      || qobject_cast<QAbstractSpinBox*>(parent) != nullptr;
  return inside ? parent : widget;
}

/// A button pressed with the mouse needs no ring; a field being written in does.
bool wantsRing(const QWidget* widget) {
  if (isField(widget)) return true;
  return qobject_cast<const QAbstractButton*>(widget) != nullptr
         && !widget->property("ownFocus").toBool()
         && widget->window()->testAttribute(Qt::WA_KeyboardFocusChange);
}

}  // namespace

FocusRing::FocusRing(QApplication& application) : QObject(&application) {
  connect(
      &application, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
        follow(now);
      });
}

void FocusRing::follow(QWidget* now) {
  if (now == nullptr || !wantsRing(now)) {
    if (frame_ != nullptr) frame_->setWidget(nullptr);
    return;
  }
  if (frame_ == nullptr) frame_ = new QFocusFrame;
  frame_->setWidget(outermostField(now));
}

}  // namespace topwire
