#include "app/look/icons.h"

#include "app/look/look.h"

#include <QIconEngine>
#include <QPainterPath>

#include <initializer_list>

namespace topwire {

namespace {

constexpr double grid = 20;
constexpr double stroke = 1.7;

void line(QPainterPath& path, std::initializer_list<QPointF> points) {
  const auto* point = points.begin();
  path.moveTo(*point);
  for (++point; point != points.end(); ++point) path.lineTo(*point);
}

/// Two rows with their trees, and somebody sent along one of them.
QPainterPath today() {
  QPainterPath path;
  line(path, {{3, 5}, {17, 5}});
  line(path, {{3, 15}, {17, 15}});
  for (const double x : {6.0, 10.0, 14.0}) line(path, {{x, 3}, {x, 7}});
  line(path, {{3, 10}, {13.5, 10}});
  line(path, {{11, 7.8}, {13.8, 10}, {11, 12.2}});
  return path;
}

QPainterPath calendar() {
  QPainterPath path;
  path.addRect(3, 4, 14, 13);
  line(path, {{3, 8}, {17, 8}});
  line(path, {{6, 11.5}, {12, 11.5}});
  line(path, {{6, 14.2}, {10, 14.2}});
  line(path, {{7, 2}, {7, 5}});
  line(path, {{13, 2}, {13, 5}});
  return path;
}

QPainterPath blocks() {
  QPainterPath path;
  for (const double x : {4.0, 8.0, 12.0, 16.0}) line(path, {{x, 3}, {x, 17}});
  line(path, {{2, 5.5}, {5, 5.5}});
  line(path, {{2, 14.5}, {5, 14.5}});
  return path;
}

/// A sum that climbs past a day.
QPainterPath weather() {
  QPainterPath path;
  line(path, {{3, 17}, {17, 17}});
  path.moveTo(3, 15);
  path.cubicTo(9, 14.5, 12, 11, 15, 3.5);
  line(path, {{11.5, 11}, {11.5, 17}});
  return path;
}

/// Columns under a line of what there is.
QPainterPath labour() {
  QPainterPath path;
  line(path, {{3, 17}, {17, 17}});
  line(path, {{5.5, 17}, {5.5, 11}});
  line(path, {{10, 17}, {10, 8}});
  line(path, {{14.5, 17}, {14.5, 12.5}});
  line(path, {{3, 7}, {7.5, 7}, {7.5, 4}, {17, 4}});
  return path;
}

/// A crate.
QPainterPath material() {
  QPainterPath path;
  line(path, {{3, 7}, {3, 16.5}, {17, 16.5}, {17, 7}});
  line(path, {{2, 7}, {18, 7}});
  line(path, {{3, 11.75}, {17, 11.75}});
  line(path, {{7, 3.5}, {13, 3.5}});
  return path;
}

/// Work, line by line, each with its box.
QPainterPath programme() {
  QPainterPath path;
  for (const double y : {4.5, 10.0, 15.5}) {
    path.addRect(3, y - 1.5, 3, 3);
    line(path, {{9.5, y}, {17, y}});
  }
  return path;
}

QPainterPath settings() {
  QPainterPath path;
  line(path, {{3, 6}, {17, 6}});
  line(path, {{3, 14}, {17, 14}});
  line(path, {{7, 3.5}, {7, 8.5}});
  line(path, {{13, 11.5}, {13, 16.5}});
  return path;
}

QPainterPath undo() {
  QPainterPath path;
  line(path, {{7, 4}, {3, 8}, {7, 12}});
  path.moveTo(3.5, 8);
  path.lineTo(12, 8);
  path.arcTo(7.5, 8, 9, 9, 90, -180);
  path.lineTo(8, 17);
  return path;
}

QPainterPath redo() {
  return QTransform{-1, 0, 0, 1, grid, 0}.map(undo());
}

QPainterPath print() {
  QPainterPath path;
  line(path, {{6, 8}, {6, 3}, {14, 3}, {14, 8}});
  line(path, {{6, 14}, {3, 14}, {3, 8}, {17, 8}, {17, 14}, {14, 14}});
  path.addRect(6, 11.5, 8, 5.5);
  return path;
}

QPainterPath plus() {
  QPainterPath path;
  line(path, {{4, 10}, {16, 10}});
  line(path, {{10, 4}, {10, 16}});
  return path;
}

QPainterPath why() {
  QPainterPath path;
  path.arcMoveTo(7, 4.2, 6, 6, 180);
  path.arcTo(7, 4.2, 6, 6, 180, -270);
  path.lineTo(10, 12);
  line(path, {{10, 15}, {10, 15.3}});
  return path;
}

QPainterPath edit() {
  QPainterPath path;
  line(path, {{4, 16}, {4.8, 12.4}, {13.4, 3.8}, {16.2, 6.6}, {7.6, 15.2}, {4, 16}});
  line(path, {{11.4, 5.8}, {14.2, 8.6}});
  return path;
}

/// Two bars in a ring.
QPainterPath wait() {
  QPainterPath path;
  path.addEllipse(QPointF{10, 10}, 7.5, 7.5);
  line(path, {{7.8, 7}, {7.8, 13}});
  line(path, {{12.2, 7}, {12.2, 13}});
  return path;
}

/// A pin seen from the side, its point down.
QPainterPath pin() {
  QPainterPath path;
  line(path, {{6.5, 3.5}, {13.5, 3.5}});
  line(path, {{8, 3.5}, {7.4, 9}, {4.8, 11.5}, {15.2, 11.5}, {12.6, 9}, {12, 3.5}});
  line(path, {{10, 11.5}, {10, 17}});
  return path;
}

QPainterPath single(std::initializer_list<QPointF> points) {
  QPainterPath path;
  line(path, points);
  return path;
}

QPainterPath pathOf(Icon icon) {
  switch (icon) {
    case Icon::today:
      return today();
    case Icon::calendar:
      return calendar();
    case Icon::blocks:
      return blocks();
    case Icon::weather:
      return weather();
    case Icon::labour:
      return labour();
    case Icon::material:
      return material();
    case Icon::programme:
      return programme();
    case Icon::settings:
      return settings();
    case Icon::undo:
      return undo();
    case Icon::redo:
      return redo();
    case Icon::print:
      return print();
    case Icon::previous:
      return single({{12, 4}, {6, 10}, {12, 16}});
    case Icon::next:
      return single({{8, 4}, {14, 10}, {8, 16}});
    case Icon::minus:
      return single({{4, 10}, {16, 10}});
    case Icon::plus:
      return plus();
    case Icon::why:
      return why();
    case Icon::down:
      return single({{4, 7}, {10, 13}, {16, 7}});
    case Icon::edit:
      return edit();
    case Icon::wait:
      return wait();
    case Icon::pin:
      return pin();
  }
  return {};
}

/// Paints afresh at every size and pixel ratio, and reads its colour as late as it can,
/// so that an icon follows a change of theme.
class LineIconEngine final : public QIconEngine {
public:
  LineIconEngine(Icon icon, QColor colour) : icon_(icon), colour_(std::move(colour)) {}

  void paint(QPainter* painter,
             const QRect& rect,
             QIcon::Mode mode,
             QIcon::State) override {
    paintIcon(*painter, rect, icon_, colourIn(mode));
  }

  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    QPixmap made{size};
    made.fill(Qt::transparent);
    QPainter painter{&made};
    paint(&painter, QRect{QPoint{}, size}, mode, state);
    return made;
  }

  QIconEngine* clone() const override { return new LineIconEngine{*this}; }

private:
  QColor colourIn(QIcon::Mode mode) const {
    const QPalette palette = QApplication::palette();
    if (mode == QIcon::Disabled)
      return palette.color(QPalette::Disabled, QPalette::ButtonText);
    if (mode == QIcon::Selected) return palette.color(QPalette::HighlightedText);
    return colour_.isValid() ? colour_ : palette.color(QPalette::ButtonText);
  }

  Icon icon_;
  QColor colour_;
};

}  // namespace

void paintIcon(QPainter& painter, const QRectF& where, Icon icon, const QColor& colour) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.translate(where.topLeft());
  painter.scale(where.width() / grid, where.height() / grid);
  painter.setPen(QPen{colour, stroke, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(pathOf(icon));
  painter.restore();
}

QIcon iconFor(Icon icon, const QColor& colour) {
  return QIcon{new LineIconEngine{icon, colour}};
}

QIcon iconFor(Icon icon) {
  return iconFor(icon, QColor{});
}

}  // namespace topwire
