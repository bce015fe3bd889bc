#pragma once

#include "app/windows/month_painter.h"

#include <QWidget>

#include <functional>
#include <utility>

namespace topwire {

/// What a MonthView shows. `weeks` begins on a Monday and ends on a Sunday.
struct MonthScene {
  DaySpan weeks{};
  Day today{};
  Day chosen{};
  int month = 0;  ///< 0: one week, as tall as its bars need
  std::vector<MonthBar> bars;
  std::vector<MonthStage> stages;
  /// A bar's state and dates in words, for the tooltip and the screen reader.
  std::function<QString(const MonthBar&)> describe;
};

/// A month, or a week, of windows as bars over their days. Arrows move between days,
/// Ctrl+arrows between bars; Space chooses the day, Enter opens the bar's task; Page Up
/// and Page Down turn, Home goes to today.
class MonthView : public QWidget {
  Q_OBJECT

public:
  explicit MonthView(QWidget* parent = nullptr);

  void setScene(MonthScene scene);
  /// A week is never lower than so many bars need.
  void setFewestLanes(int lanes);

  const MonthLayout& layoutShown() const { return layout_; }

  const MonthGeometry& geometryShown() const { return geometry_; }

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

Q_SIGNALS:
  void dayChosen(topwire::Day day);
  void barOpened(const topwire::MonthBar& bar);
  void weekOpened(topwire::Day monday);
  /// The keyboard went to a day outside the weeks shown.
  void dayWanted(topwire::Day day);
  /// One month or week later, or earlier.
  void turned(int steps);

protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool event(QEvent* event) override;

private:
  void layOut();
  int weekCount() const;
  double shortestWeek() const;
  std::optional<std::pair<int, Day>> dayAt(QPointF where) const;
  std::optional<std::size_t> barAt(QPointF where) const;
  bool moveByDay(const QKeyEvent& event);
  void moveCursor(Day day);
  void stepBar(int steps);
  void openBar(std::size_t bar);
  void tellReader();
  QString wordsAt(QPointF where) const;

  MonthScene scene_;
  MonthLayout layout_;
  MonthGeometry geometry_;
  Day cursor_{};
  int fewestLanes_ = 3;
  /// Index into all segments of all weeks, in reading order.
  std::optional<std::size_t> segment_;
};

}  // namespace topwire
