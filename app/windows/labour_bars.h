#pragma once

#include "app/look/card.h"
#include "core/closing/labour_by_month.h"

#include <vector>

namespace topwire {

/// A line a month: this season's hours planned and noted, the next one's planned, as bars
/// on one scale with their figures. Months without any are left out.
class LabourBars : public QWidget {
  Q_OBJECT

public:
  explicit LabourBars(QWidget* parent = nullptr);

  void setMonths(const std::vector<MonthLabour>& months,
                 const QString& thisSeason,
                 const QString& nextSeason);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  int pitch() const;
  void describe();
  void paintMonth(QPainter& painter, const MonthLabour& month, const QRectF& line) const;
  void paintBar(QPainter& painter,
                const QRectF& room,
                double hours,
                double done,
                TaskState fill,
                const QString& words) const;
  double most() const;

  std::vector<MonthLabour> months_;
  QString this_;
  QString next_;
};

}  // namespace topwire
