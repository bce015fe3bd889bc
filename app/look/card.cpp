#include "app/look/card.h"

#include <QPainter>

namespace topwire {

namespace {

class Hairline final : public QWidget {
public:
  Hairline() { setFixedHeight(1); }

protected:
  void paintEvent(QPaintEvent*) override {
    QPainter{this}.fillRect(rect(), palette().color(QPalette::Mid));
  }
};

}  // namespace

Card::Card(QPalette::ColorRole role, QWidget* parent) : QFrame(parent), role_(role) {}

void Card::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(palette().color(QPalette::Mid));
  painter.setBrush(palette().color(role_));
  painter.drawRoundedRect(QRectF{rect()}.adjusted(0.5, 0.5, -0.5, -0.5),
                          measure::cardRadius,
                          measure::cardRadius);
}

QLabel* textLabel(const QString& text, TypeSize size, bool bold) {
  auto* label = new QLabel{text};
  label->setTextFormat(Qt::PlainText);
  label->setFont(fontOf(size, bold));
  return label;
}

QLabel* mutedLabel(const QString& text, TypeSize size) {
  auto* label = textLabel(text, size);
  label->setForegroundRole(QPalette::PlaceholderText);
  return label;
}

QLabel* wrapping(QLabel* label) {
  label->setWordWrap(true);
  label->setMinimumWidth(1);
  return label;
}

QWidget* hairline() {
  return new Hairline;
}

}  // namespace topwire
