#pragma once

#include "app/look/card.h"
#include "app/models/days_ahead.h"

#include <vector>

namespace topwire {

/// The coming days side by side: what they bring and a word for each reason to think
/// twice, with a shape for its weight. Arrows move between the days.
class DaysAheadStrip : public QWidget {
  Q_OBJECT

public:
  explicit DaysAheadStrip(QWidget* parent = nullptr);

  void setDays(std::vector<DayAhead> days, UnitSystem units);

  const std::vector<DayAhead>& days() const { return days_; }

  int chosen() const { return chosen_; }

  void choose(int index);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

Q_SIGNALS:
  void chosenChanged();

protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  QRectF boxOf(int index) const;
  int linesOfCautions() const;
  void paintDay(QPainter& painter, int index) const;

  std::vector<DayAhead> days_;
  UnitSystem units_ = UnitSystem::metric;
  int chosen_ = 0;
};

/// The strip, and below it the chosen day in full.
class DaysAheadCard : public Card {
  Q_OBJECT

public:
  explicit DaysAheadCard(QWidget* parent = nullptr);

  /// Hidden where nothing is known of any of the days.
  void setDays(std::vector<DayAhead> days, UnitSystem units);

private:
  void tellChosen();

  UnitSystem units_ = UnitSystem::metric;
  DaysAheadStrip* strip_;
  QLabel* words_;
};

}  // namespace topwire
