#include "app/look/row_strip.h"

#include "app/look/look.h"
#include "app/look/tokens.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr double stripGap = 1.6;
constexpr double narrowest = 5;
constexpr double widest = 9;
constexpr int cellHeight = 15;
constexpr int linePitch = 18;
constexpr int groupOf = 5;
constexpr double tickFrom = 14;
constexpr double heavyFrom = 8;  ///< narrower planned cells keep the thin outline

double cornerOf(const QRectF& where) {
  return where.width() < 20 ? 1.5 : 4;
}

void outline(QPainter& painter, const QRectF& where, const QColor& edge, double width) {
  const double half = width / 2;
  painter.setPen(QPen{edge, width});
  painter.setBrush(baseColours(currentTheme()).raised);
  painter.drawRoundedRect(where.adjusted(half, half, -half, -half),
                          cornerOf(where) - half / 2,
                          cornerOf(where) - half / 2);
}

void fill(QPainter& painter, const QRectF& where, const QColor& colour) {
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour);
  painter.drawRoundedRect(where, cornerOf(where), cornerOf(where));
}

void tick(QPainter& painter, const QRectF& in) {
  const auto at = [&in](double x, double y) {
    return QPointF{in.left() + in.width() * x, in.top() + in.height() * y};
  };
  painter.setPen(QPen{baseColours(currentTheme()).raised, 2.2});
  painter.setBrush(Qt::NoBrush);
  painter.drawPolyline(QPolygonF{at(0.26, 0.52), at(0.44, 0.68), at(0.76, 0.30)});
}

void lowerHalf(QPainter& painter, const QRectF& where, const QColor& colour) {
  outline(painter, where, colour, 1.5);
  painter.save();
  painter.setClipRect(where.adjusted(0, where.height() / 2, 0, 0), Qt::IntersectClip);
  fill(painter, where, colour);
  painter.restore();
}

/// A done cell with a number keeps its tick in the upper half.
void paintDone(QPainter& painter, const QRectF& where, bool numbered) {
  fill(painter, where, stateColours(currentTheme(), TaskState::done).mark);
  if (where.width() < tickFrom) return;
  const double side = numbered ? where.width() * 0.45 : where.width();
  tick(painter,
       numbered ? QRectF{where.center().x() - side / 2, where.top() + 3, side, side}
                : where);
}

void paintToDo(QPainter& painter, const QRectF& where, bool planned) {
  const BaseColours& base = baseColours(currentTheme());
  if (!planned) return outline(painter, where, base.outline, 1.2);
  outline(painter, where, base.text, where.width() < heavyFrom ? 1.4 : 2);
}

void paintCell(
    QPainter& painter, const QRectF& where, CellMark mark, bool numbered, bool planned) {
  const BaseColours& base = baseColours(currentTheme());
  switch (mark) {
    case CellMark::toDo:
      return paintToDo(painter, where, planned);
    case CellMark::partly:
      return lowerHalf(
          painter, where, stateColours(currentTheme(), TaskState::done).mark);
    case CellMark::done:
      return paintDone(painter, where, numbered);
    case CellMark::notInTask:
      painter.setPen(Qt::NoPen);
      painter.setBrush(base.muted);
      painter.drawEllipse(where.center(), 1.6, 1.6);
      return;
  }
}

CellMark markOf(const TaskView& view, int row) {
  if (!view.task->rows.contains(row)) return CellMark::notInTask;
  const auto percent = view.progress.percentByRow.find(row);
  if (percent == view.progress.percentByRow.end() || percent->second == 0)
    return CellMark::toDo;
  return percent->second >= 100 ? CellMark::done : CellMark::partly;
}

int groupGaps(std::size_t cells) {
  return cells == 0 ? 0 : static_cast<int>((cells - 1) / groupOf);
}

double widthOf(std::size_t cells, double cellWidth) {
  return static_cast<double>(cells) * (cellWidth + stripGap)
         + groupGaps(cells) * stripGap;
}

}  // namespace

void paintRowCell(QPainter& painter, const QRectF& where, CellMark mark, bool planned) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  paintCell(painter, where, mark, false, planned);
  painter.restore();
}

void paintNumberedCell(QPainter& painter, const QRectF& where, const RowCellState& cell) {
  const BaseColours& base = baseColours(currentTheme());
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (cell.chosen)
    fill(painter, where, base.accent);
  else
    paintCell(painter, where, cell.mark, true, cell.planned);
  const bool small = !cell.chosen && cell.mark == CellMark::done;
  painter.setFont(fontOf(small ? TypeSize::small : TypeSize::name, cell.chosen));
  painter.setPen(cell.chosen ? base.onAccent : small ? base.raised : base.text);
  QRectF text = where;
  if (small) text.setTop(where.center().y() - 1);
  if (!cell.chosen && cell.mark == CellMark::partly)
    text.setBottom(where.center().y() + 1);
  painter.drawText(text, Qt::AlignCenter, QString::number(cell.number));
  painter.restore();
}

std::vector<RowCellState> rowCells(const TaskView& view, const RowSet& rowsOfBlock) {
  const RowSet& rows = view.task->rows;
  if (rows.empty()) return {};
  const RowSet shown =
      rowsOfBlock.with(rows).inCommonWith(RowSet::range(rows.first(), rows.last()));
  std::vector<RowCellState> cells;
  for (const int row : shown.rows())
    cells.push_back({row, markOf(view, row), false, false});
  return cells;
}

void markPlanned(std::vector<RowCellState>& cells, const RowSet& rows) {
  for (RowCellState& cell : cells) cell.planned = rows.contains(cell.number);
}

RowStrip::RowStrip(QWidget* parent) : QWidget(parent) {
  QSizePolicy policy{QSizePolicy::Expanding, QSizePolicy::Fixed};
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void RowStrip::setCells(std::vector<RowCellState> cells) {
  cells_ = std::move(cells);
  updateGeometry();
  update();
}

double RowStrip::cellWidth(int width) const {
  const auto count = static_cast<double>(std::max<std::size_t>(cells_.size(), 1));
  const double gaps = stripGap * (count + groupGaps(cells_.size()));
  return std::clamp((width - gaps) / count, narrowest, widest);
}

int RowStrip::perLine(int width) const {
  int cells = groupOf;
  while (widthOf(static_cast<std::size_t>(cells + groupOf), cellWidth(width)) <= width)
    cells += groupOf;
  const int all = static_cast<int>(cells_.size());
  return widthOf(cells_.size(), cellWidth(width)) <= width ? std::max(all, 1) : cells;
}

QSize RowStrip::sizeHint() const {
  return {static_cast<int>(widthOf(cells_.size(), narrowest)) + 1, cellHeight};
}

QSize RowStrip::minimumSizeHint() const {
  return {static_cast<int>(widthOf(2 * groupOf, narrowest)), cellHeight};
}

int RowStrip::heightForWidth(int width) const {
  const int line = perLine(width);
  const int lines = std::max(1, (static_cast<int>(cells_.size()) + line - 1) / line);
  return (lines - 1) * linePitch + cellHeight;
}

void RowStrip::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  const double wide = cellWidth(width());
  const auto line = static_cast<std::size_t>(perLine(width()));
  for (std::size_t i = 0; i < cells_.size(); ++i) {
    const std::size_t inLine = i % line;
    const double x = static_cast<double>(inLine) * (wide + stripGap)
                     + static_cast<double>(inLine / groupOf) * stripGap;
    const auto y = static_cast<double>(i / line) * linePitch;
    paintRowCell(painter, {x, y, wide, cellHeight}, cells_[i].mark, cells_[i].planned);
  }
}

}  // namespace topwire
