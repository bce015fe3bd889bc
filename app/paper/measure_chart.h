#pragma once

#include "app/paper/heat_chart.h"
#include "core/orchard/records.h"

#include <vector>

namespace topwire {

// What was measured in a planting over its seasons, a small plot a measure, each with
// what is wanted behind it. Laid out once, painted alike on screen and on paper.

struct MeasuredPoint {
  Day day{};
  Day drawnAt{};
  double value = 0;  ///< mean of the sample trees, as Measurement keeps it
  int trees = 0;
};

/// `low` and `high` are one for a line, else the edges of a band.
struct WantedPoint {
  Day day{};
  double low = 0;
  double high = 0;
};

struct MeasurePlot {
  Measure measure = Measure::trunkDiameter;
  std::vector<MeasuredPoint> measured;           ///< by day
  std::vector<std::vector<WantedPoint>> wanted;  ///< stretches, each by day
  bool isBand = false;
};

struct LeafMark {
  int leaf = 0;
  DaySpan days{};
};

struct MeasureScene {
  std::vector<MeasurePlot> plots;
  std::vector<LeafMark> leaves;  ///< the seasons shown, without a gap
  Day today{};
  UnitSystem units = UnitSystem::metric;

  DaySpan days() const { return {leaves.front().days.first, leaves.back().days.last}; }
};

struct MeasurePanel {
  QRectF plot;
  std::vector<QLineF> grid;
  std::vector<QLineF> seasons;  ///< where one season ends and the next begins
  std::vector<QPolygonF> wanted;
  bool isBand = false;
  QPolygonF measured;
  std::optional<QLineF> today;
  std::vector<ChartWords> words;
};

/// A sample beside its word.
struct MeasureKey {
  enum class Kind { measured, wanted, wantedBand };
  Kind kind = Kind::measured;
  QRectF sample;
};

struct MeasureChart {
  QSizeF size;
  std::vector<MeasurePanel> panels;
  std::vector<MeasureKey> keys;
  std::vector<ChartWords> words;
};

/// Plots stand side by side where there is room for it, else below each other; the height
/// follows. Needs a QGuiApplication, whose fonts it measures. The scene has a season at
/// least.
MeasureChart layOut(const MeasureScene& scene,
                    double width,
                    const HeatType& type,
                    const Voice& voice);

void paint(QPainter& painter,
           const MeasureChart& chart,
           const HeatType& type,
           const HeatColours& colours);

/// All the chart tells, in sentences for a screen reader.
QString describe(const MeasureScene& scene, const Voice& voice);

}  // namespace topwire
