#pragma once

#include "core/crews/crew_plan.h"

#include <QWidget>

#include <vector>

namespace topwire {

/// What one more worker-hour is worth on each of the coming days: a bar a day, a baseline
/// where there is time in hand, a dash where nobody works. The arrows go through the days
/// and say each in words.
class WorthStrip : public QWidget {
  Q_OBJECT

public:
  explicit WorthStrip(QWidget* parent = nullptr);

  /// `words`: each day's worth in a sentence.
  void setDays(std::vector<DayWorth> days, std::vector<QString> words);
  /// The chosen day in words; the dearest one until another is chosen.
  QString text() const;

  QSize sizeHint() const override;

  QSize minimumSizeHint() const override { return sizeHint(); }

Q_SIGNALS:
  void chosenChanged();

protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  void choose(int index);
  void paintDay(QPainter& painter, std::size_t index, double most) const;
  QRectF boxOf(std::size_t index) const;

  std::vector<DayWorth> days_;
  std::vector<QString> words_;
  int chosen_ = 0;
};

}  // namespace topwire
