#pragma once

#include <QApplication>
#include <QFocusFrame>
#include <QPointer>

namespace topwire {

/// One ring for the application, standing clear of the button or field that has the
/// keyboard. Views that have a place inside them (lists, the month) draw their own.
class FocusRing : public QObject {
public:
  explicit FocusRing(QApplication& application);

private:
  void follow(QWidget* now);

  QPointer<QFocusFrame> frame_;
};

}  // namespace topwire
