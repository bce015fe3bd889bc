#pragma once

#include "core/planning/progress.h"

#include <QWidget>

#include <array>

namespace topwire {

/// The states met in what is shown: shape, word, and how many. Wraps to its width.
class StateLegend : public QWidget {
  Q_OBJECT

public:
  explicit StateLegend(QWidget* parent = nullptr);

  /// In the order of TaskState; states without a task are left out.
  void setCounts(const std::array<int, 7>& counts);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

  bool hasHeightForWidth() const override { return true; }

  int heightForWidth(int width) const override;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  struct Item {
    TaskState state;
    QString word;
    QString count;
    double width;
  };

  /// Calls `place` with each item's left and top; answers the height used.
  template <class Place>
  int flow(int width, const Place& place) const;

  std::vector<Item> items_;
};

}  // namespace topwire
