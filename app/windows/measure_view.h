#pragma once

#include "app/paper/measure_chart.h"

#include <QWidget>

namespace topwire {

/// The chart of a planting's measurements; as high as its width asks for.
class MeasureView : public QWidget {
  Q_OBJECT

public:
  explicit MeasureView(QWidget* parent = nullptr);

  void setScene(MeasureScene scene);

  const MeasureScene& sceneShown() const { return scene_; }

  const MeasureChart& chartShown() const { return chart_; }

protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  void layOutChart();

  MeasureScene scene_;
  MeasureChart chart_;
};

}  // namespace topwire
