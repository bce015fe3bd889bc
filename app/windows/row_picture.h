#pragma once

#include "app/models/row_lanes.h"

#include <QWidget>

namespace topwire {

/// A block from above: each row a lane drawn head to foot, filled as far as the chosen
/// task is done. Long blocks stand in several bands. Says the same to a screen reader.
class RowPicture : public QWidget {
  Q_OBJECT

public:
  explicit RowPicture(QWidget* parent = nullptr);

  void setLanes(std::vector<RowLane> lanes);

  bool hasHeightForWidth() const override { return true; }

  int heightForWidth(int width) const override;
  QSize sizeHint() const override;

protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

private:
  struct Bands {
    int rows;   ///< in one band
    int count;  ///< of bands
    double pitch;
    int height;  ///< of a lane
  };

  Bands bandsAt(int width) const;
  QRectF laneRect(const Bands& bands, int index) const;
  bool numberShown(const Bands& bands, int index) const;
  void paintLane(QPainter& painter, const QRectF& lane, const RowLane& row) const;
  QString laneText(const RowLane& lane) const;

  std::vector<RowLane> lanes_;
};

/// What the picture's marks mean, for those that are in it.
class RowLegend : public QWidget {
  Q_OBJECT

public:
  explicit RowLegend(QWidget* parent = nullptr);

  void setLanes(const std::vector<RowLane>& lanes);
  QSize sizeHint() const override;
  QString text() const;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  enum class Mark { done, partly, toDo, outside, replant, pollinizer };

  struct Entry {
    Mark mark;
    QString words;
  };

  void paintMark(QPainter& painter, const QRectF& where, Mark mark) const;

  std::vector<Entry> entries_;
};

}  // namespace topwire
