#include "app/windows/measure_view.h"

#include "app/look/look.h"
#include "app/windows/heat_view.h"

#include <QPainter>
#include <QResizeEvent>

#include <cmath>

namespace topwire {

namespace {

constexpr int leastWidth = 260;

/// On a card, whose ground is lighter than the page's.
HeatColours coloursOnCard() {
  HeatColours colours = heatColoursOnScreen();
  colours.ground = baseColours(currentTheme()).raised;
  return colours;
}

}  // namespace

MeasureView::MeasureView(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("measureChart"));
  setAccessibleName(tr("Measurements over the seasons"));
  setMinimumWidth(leastWidth);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void MeasureView::setScene(MeasureScene scene) {
  scene_ = std::move(scene);
  setAccessibleDescription(describe(scene_, voiceIn(language())));
  layOutChart();
  update();
}

void MeasureView::layOutChart() {
  if (scene_.leaves.empty()) return;
  chart_ = layOut(scene_, width(), heatTypeOnScreen(), voiceIn(language()));
  const int high = static_cast<int>(std::ceil(chart_.size.height()));
  if (high != minimumHeight()) setFixedHeight(high);
}

void MeasureView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) layOutChart();
}

void MeasureView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::FontChange && event->type() != QEvent::PaletteChange)
    return;
  layOutChart();
  update();
}

void MeasureView::paintEvent(QPaintEvent*) {
  if (scene_.leaves.empty()) return;
  QPainter painter{this};
  paint(painter, chart_, heatTypeOnScreen(), coloursOnCard());
}

}  // namespace topwire
