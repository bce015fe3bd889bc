#pragma once

#include "app/paper/drawing.h"

#include <QLineF>
#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QString>

#include <variant>
#include <vector>

namespace topwire {

// What stands on a page, in points (1/72 inch) from the page's top left corner. All of it
// is black on white.

constexpr double millimetres(double count) {
  return count * 72 / 25.4;
}

struct Face {
  double points;
  bool bold = false;

  friend bool operator==(const Face&, const Face&) = default;
};

struct TextItem {
  QPointF baseline;  ///< its left end
  QString text;
  Face face;
  bool white = false;  ///< on a black ground
};

struct RuleItem {
  QLineF line;
  double width;
};

struct FrameItem {
  QRectF rect;
  double edge;  ///< drawn inside the rectangle
  bool filled = false;
};

enum class RowMark { toDo, partly, done, absent };

/// The box of one row, or the dash of rows that are not in the job.
struct RowItem {
  QRectF box;
  int job;
  int first;
  int last;  ///< the same as `first` but for a dash that stands for several rows
  RowMark mark;
};

struct DrawingItem {
  QRectF rect;
  Drawing drawing;
};

using Item = std::variant<TextItem, RuleItem, FrameItem, RowItem, DrawingItem>;

struct Page {
  QSizeF size;
  std::vector<Item> items;
};

/// The area an item's ink may take.
QRectF boundsOf(const Item& item);
Item moved(Item item, QPointF by);

}  // namespace topwire
