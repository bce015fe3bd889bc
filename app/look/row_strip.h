#pragma once

#include "core/planning/progress.h"

#include <QPainter>
#include <QWidget>

#include <vector>

namespace topwire {

/// What one orchard row is to one task.
enum class CellMark { toDo, partly, done, notInTask };

struct RowCellState {
  int number = 0;
  CellMark mark = CellMark::toDo;
  bool chosen = false;
  bool planned = false;  ///< for the day in view

  friend bool operator==(const RowCellState&, const RowCellState&) = default;
};

/// One cell at any size: outline (a heavier one where it is planned), lower half filled,
/// filled (ticked from 14 px up), or a dot for a row the task leaves out. The same
/// everywhere a row is shown.
void paintRowCell(QPainter& painter,
                  const QRectF& where,
                  CellMark mark,
                  bool planned = false);
/// The large cell, with its number inside; `chosen` goes over its state.
void paintNumberedCell(QPainter& painter, const QRectF& where, const RowCellState& cell);

/// A block's rows as one task sees them, in field order, between the task's first row and
/// its last.
std::vector<RowCellState> rowCells(const TaskView& view, const RowSet& rowsOfBlock);
void markPlanned(std::vector<RowCellState>& cells, const RowSet& rows);

/// One small cell a row, a wider gap after every fifth; wraps where the rows are many.
class RowStrip : public QWidget {
  Q_OBJECT

public:
  explicit RowStrip(QWidget* parent = nullptr);

  void setCells(std::vector<RowCellState> cells);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

  bool hasHeightForWidth() const override { return true; }

  int heightForWidth(int width) const override;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  double cellWidth(int width) const;
  int perLine(int width) const;

  std::vector<RowCellState> cells_;
};

}  // namespace topwire
