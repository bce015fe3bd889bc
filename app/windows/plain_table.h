#pragma once

#include "core/planning/progress.h"

#include <QTableWidget>

#include <optional>
#include <vector>

namespace topwire {

/// A table as high as its rows, so that the page scrolls and not the table: words without
/// a grid, chosen by the row. A cell may have several lines.
class PlainTable : public QTableWidget {
  Q_OBJECT

public:
  struct Cell {
    QString text;
    bool bold = false;
    bool isFigure = false;                ///< set to the right
    std::optional<TaskState> shape = {};  ///< before the words
  };

  struct Row {
    std::vector<Cell> cells;
    QString whole;  ///< all of it in one sentence, for who does not see it
  };

  /// The first column takes the room that is left.
  explicit PlainTable(const QStringList& heads, QWidget* parent = nullptr);

  void setRows(std::vector<Row> rows);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

protected:
  void changeEvent(QEvent* event) override;

private:
  void fill();
  void putRow(int row, const Row& words);
  QIcon shapeIcon(TaskState state) const;

  std::vector<Row> rows_;
};

}  // namespace topwire
