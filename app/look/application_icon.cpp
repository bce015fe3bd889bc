#include "app/look/application_icon.h"

#include <QPainter>
#include <QPainterPath>

namespace topwire {

namespace {

constexpr double grid = 64;

void stroke(QPainter& painter, const QPainterPath& path, QRgb colour, double width) {
  painter.setPen(
      QPen{QColor::fromRgb(colour), width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
  painter.drawPath(path);
}

QPainterPath wires() {
  QPainterPath path;
  for (const double y : {17.0, 33.0, 47.0}) {
    path.moveTo(8, y);
    path.lineTo(56, y);
  }
  return path;
}

QPainterPath trunk() {
  QPainterPath path{{32, 56}};
  path.cubicTo(31, 44, 33, 30, 32, 12);
  return path;
}

QPainterPath limbs() {
  QPainterPath path{{32, 47}};
  path.cubicTo(24, 46, 20, 44, 16, 40);
  path.moveTo(32, 40);
  path.cubicTo(40, 39, 44, 37, 48, 33);
  path.moveTo(32, 30);
  path.cubicTo(27, 29, 24, 27, 21, 24);
  return path;
}

QPainterPath tie() {
  QPainterPath path{{26, 20}};
  path.cubicTo(24, 13, 30, 11, 32, 17);
  path.cubicTo(34, 23, 40, 21, 38, 14);
  return path;
}

QPixmap drawn(int side) {
  QPixmap pixmap{side, side};
  pixmap.fill(Qt::transparent);
  QPainter painter{&pixmap};
  painter.setRenderHint(QPainter::Antialiasing);
  painter.scale(side / grid, side / grid);
  painter.setPen(Qt::NoPen);
  painter.setBrush(QColor::fromRgb(0x1B2E33));
  painter.drawRoundedRect(QRectF(0, 0, grid, grid), 12, 12);
  painter.setBrush(Qt::NoBrush);
  stroke(painter, wires(), 0xAEBDBB, 2);
  stroke(painter, trunk(), 0xFAFBF8, 5);
  stroke(painter, limbs(), 0xFAFBF8, 3);
  stroke(painter, tie(), 0xF0B434, 4);
  return pixmap;
}

}  // namespace

QIcon applicationIcon() {
  QIcon icon;
  for (const int side : {16, 32, 64, 128, 256}) icon.addPixmap(drawn(side));
  return icon;
}

}  // namespace topwire
