#pragma once

#include "app/look/row_strip.h"

#include <optional>

namespace topwire {

/// Row cells of 44 px to click, drag over, or walk through with the arrows and Space.
/// Shift extends from the last cell. Wraps to its width.
class RowGrid : public QWidget {
  Q_OBJECT

public:
  explicit RowGrid(QWidget* parent = nullptr);

  void setCells(std::vector<RowCellState> cells);
  void setChosen(const RowSet& rows);
  RowSet chosen() const;

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

  bool hasHeightForWidth() const override { return true; }

  int heightForWidth(int width) const override;

Q_SIGNALS:
  /// A person chose otherwise; not told for setChosen.
  void chosenChanged();

protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  int perLine(int width) const;
  QRectF boxOf(std::size_t index) const;
  std::optional<std::size_t> cellAt(QPointF where) const;
  void choose(std::size_t index, bool chosen);
  void chooseTo(std::size_t index);
  void moveTo(std::size_t index, bool extend);
  void tellReader();

  std::vector<RowCellState> cells_;
  std::size_t cursor_ = 0;
  bool choosing_ = true;  ///< whether a drag chooses or lets go
  std::optional<std::size_t> dragFrom_;
};

/// What the cells mean, in words beside samples of them.
class CellLegend : public QWidget {
  Q_OBJECT

public:
  explicit CellLegend(QWidget* parent = nullptr);

  /// Explains the outline of planned rows as well.
  void setPlanned(bool planned);

  QSize sizeHint() const override;

  QSize minimumSizeHint() const override { return sizeHint(); }

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  bool planned_ = false;
};

}  // namespace topwire
