#pragma once

#include "app/look/card.h"

#include <QPushButton>
#include <QVBoxLayout>

namespace topwire {

/// What stands beside a page's main part for a while: a heading, a line on what it is
/// for, and the way back.
class BesidePanel : public Card {
  Q_OBJECT

public:
  BesidePanel(const QString& title, const QString& purpose, QWidget* parent = nullptr);

  /// Where the keyboard goes when the panel opens.
  virtual void takeFocus() = 0;

Q_SIGNALS:
  void closed();

protected:
  QVBoxLayout& lines() { return *lines_; }

  void keyPressEvent(QKeyEvent* event) override;

private:
  QVBoxLayout* lines_;
};

}  // namespace topwire
