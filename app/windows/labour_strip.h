#pragma once

#include "core/crews/labour_ahead.h"

#include <QWidget>

#include <vector>

namespace topwire {

/// A column a week: what the plan has done filled, what is wanted as an outline, what
/// there is as a step line across, and above it what is carried past its closing, hatched
/// as late with its hours. Arrows move from week to week and tell its figures.
class LabourStrip : public QWidget {
  Q_OBJECT

public:
  explicit LabourStrip(QWidget* parent = nullptr);

  /// `most` is the hours the top of the scale stands for, so that two strips compare.
  void setWeeks(std::vector<WeekOfLabour> weeks, double most);

  /// The figures of the week the keyboard or the pointer is on.
  QString reading() const;

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

Q_SIGNALS:
  void read(const QString& words);

protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

private:
  QRectF chart() const;
  QRectF column(int week) const;
  double heightOf(double hours) const;
  void choose(int week);
  void describe();
  void paintScale(QPainter& painter) const;
  void paintWeek(QPainter& painter, int week) const;
  void writeOverdue(QPainter& painter, const QRectF& bar, const QString& hours) const;
  void paintThere(QPainter& painter) const;
  void paintMonths(QPainter& painter) const;

  std::vector<WeekOfLabour> weeks_;
  double most_ = 1;
  int chosen_ = 0;
};

/// The highest hours that stand in any column.
double mostHours(const std::vector<WeekOfLabour>& weeks);

/// "Week of 5 April: 320 hours there, 280 wanted, 275 planned, 12 carried past their
/// closing".
QString wordsOf(const WeekOfLabour& week);

}  // namespace topwire
