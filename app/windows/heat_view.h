#pragma once

#include "app/paper/heat_chart.h"

#include <QWidget>

#include <optional>

namespace topwire {

/// The chart of a season's heat. The pointer, or the arrows, move a line from day to day
/// that tells the sum and how past years stood; Up and Down go from stage to stage, Home
/// to today, Escape puts the line away.
class HeatView : public QWidget {
  Q_OBJECT

public:
  explicit HeatView(QWidget* parent = nullptr);

  void setScene(HeatScene scene);

  const HeatChart& chartShown() const { return chart_; }

  const HeatScene& sceneShown() const { return scene_; }

  std::optional<Day> dayRead() const { return read_; }

  /// What the line tells of a day, line by line.
  QStringList readingOf(Day day) const;

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  void layOutChart();
  void read(std::optional<Day> day);
  void step(int days);
  bool stepToStage(int direction);
  void tellReader();
  void paintReading(QPainter& painter, Day day) const;

  HeatScene scene_;
  HeatChart chart_;
  std::optional<Day> read_;
  bool byKeys_ = false;
};

/// Fonts and colours of the application in its theme.
HeatType heatTypeOnScreen();
HeatColours heatColoursOnScreen();

}  // namespace topwire
