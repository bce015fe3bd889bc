#pragma once

#include "app/look/card.h"
#include "app/windows/heat_view.h"

#include <QPushButton>

namespace topwire {

/// The chart with its heading, the choice of measure, and the way to paper.
class HeatCard : public Card {
  Q_OBJECT

public:
  explicit HeatCard(QWidget* parent = nullptr);

  /// `measured`: what the figures are, in words.
  void setScene(const HeatScene& scene, const QString& measured);

  HeatMeasure measure() const { return measure_; }

  HeatView& view() const { return *view_; }

Q_SIGNALS:
  void measureChosen(topwire::HeatMeasure measure);
  void printWanted();
  void pdfWanted();

private:
  QPushButton* switchTo(HeatMeasure measure, const QString& words, const char* name);
  void choose(HeatMeasure measure);
  QWidget* head();

  HeatMeasure measure_ = HeatMeasure::heatUnits;
  QLabel* title_ = nullptr;
  QLabel* subtitle_ = nullptr;
  QPushButton* units_ = nullptr;
  QPushButton* days_ = nullptr;
  HeatView* view_;
};

}  // namespace topwire
