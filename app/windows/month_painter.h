#pragma once

#include "app/models/month_layout.h"

#include <QFont>
#include <QPainter>
#include <QRectF>

#include <optional>

namespace topwire {

/// Where weeks, days and lanes stand in the calendar, in the view's pixels.
struct MonthGeometry {
  double left = 38;  ///< the week numbers' gutter
  double top = 24;   ///< the weekdays' names
  double columnWidth = 96;
  double rowHeight = 128;
  double laneTop = 36;  ///< below the day numbers and the stages
  double pitch = 17;
  double barHeight = 16;

  double dayLeft(int day) const { return left + day * columnWidth; }

  double weekTop(int week) const { return top + week * rowHeight; }

  QRectF dayBox(int week, int day) const;
  /// Where the segment's pieces are drawn: a true end keeps clear of the day's edge.
  QRectF laneBox(int week, int lane, WeekSpan days) const;
  QRectF moreBox(int week) const;
};

/// What the keyboard and the person have singled out.
struct MonthMarks {
  Day today{};
  Day chosen{};
  Day cursor{};
  std::optional<std::size_t> bar;  ///< the one under the keyboard
  bool hasFocus = false;
  int month = 0;  ///< days of other months are muted; 0 in a week's view
};

/// Paints a laid-out month: grounds, grid, stages, bars, words, brackets, frame, focus.
class MonthPainter {
public:
  MonthPainter(QPainter& painter,
               const MonthLayout& layout,
               const MonthGeometry& geometry,
               const MonthMarks& marks);

  void paint();

private:
  void paintGround();
  void paintGrid();
  void paintWeekdayNames();
  void paintDayNumbers(int week);
  void paintWeekNumber(int week);
  void paintStages(int week);
  void paintWhisker(int week, const StageMark& mark);
  void paintStageName(int week, const StageMark& mark);
  double stageX(const StageMark& mark) const;
  double stageY(int week, const StageMark& mark) const;
  void paintSegment(int week, const MonthSegment& segment);
  void paintBody(const QRectF& box, const MonthBar& bar, bool tornLeft, bool tornRight);
  void paintTail(const QRectF& box, const MonthBar& bar);
  void paintBracket(const QRectF& lane);
  void paintLabel(int week, const MonthSegment& segment);
  void paintShapeOf(int week, const MonthSegment& segment);
  void paintFrames(int week);

  QPainter* painter_;
  const MonthLayout* layout_;
  MonthGeometry geometry_;
  MonthMarks marks_;
  QFont name_;
  QFont place_;
};

/// Width of a bar's words as MonthPainter writes them.
double barTextWidth(const std::string& name, const std::string& place);

}  // namespace topwire
