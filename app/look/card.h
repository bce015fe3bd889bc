#pragma once

#include "app/look/look.h"

#include <QFrame>
#include <QLabel>

namespace topwire {

/// A lighter surface with a hairline and a radius: what content stands on.
class Card : public QFrame {
  Q_OBJECT

public:
  /// `role` is the palette's role for the ground: Base or Light.
  explicit Card(QPalette::ColorRole role, QWidget* parent = nullptr);

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  QPalette::ColorRole role_;
};

/// Plain text, never read as mark-up, that wraps where it must.
QLabel* textLabel(const QString& text, TypeSize size = TypeSize::body, bool bold = false);
/// The same in the muted colour.
QLabel* mutedLabel(const QString& text, TypeSize size = TypeSize::small);
/// As narrow as its column asks, on as many lines as it then needs.
QLabel* wrapping(QLabel* label);
/// A dividing line one pixel high.
QWidget* hairline();

}  // namespace topwire
