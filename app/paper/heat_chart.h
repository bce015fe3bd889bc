#pragma once

#include "app/words/say.h"
#include "core/phenology/season_heat.h"

#include <QColor>
#include <QFont>
#include <QLineF>
#include <QPolygonF>
#include <QRectF>
#include <QString>

#include <optional>
#include <vector>

class QPainter;

namespace topwire {

// A season's heat as a line against the band of past years, the stages along it, and
// below, on the same days, when each stage comes. Laid out once, painted alike on screen
// and on paper.

/// A stage as the chart marks it.
struct HeatStage {
  int bbch = 0;
  QString name;
  Day date{};
  DaySpan span{};  ///< eight years in ten
  bool seen = false;
  /// Named along the line only where the others leave room; below it always.
  bool lesser = false;

  friend bool operator==(const HeatStage&, const HeatStage&) = default;
};

struct HeatScene {
  SeasonHeat heat;
  DaySpan days{};  ///< shown; begins on the season's first day
  Day today{};
  std::vector<HeatStage> stages;  ///< in the order they are reached
};

/// From the season's first day to a good two weeks past the last stage, and to a week
/// past today where that is later; never past the season's end.
DaySpan daysOfChart(DaySpan season, const std::vector<HeatStage>& stages, Day today);

/// The sum by the end of `day`, wherever it comes from.
enum class HeatSource { measured, forecast, likely };

struct HeatReading {
  HeatSource source = HeatSource::measured;
  double sum = 0;
  std::optional<HeatBand> past;
};

/// Whether any day of the season is measured or forecast.
inline bool hasWeather(const SeasonHeat& heat) {
  return !heat.measured.empty() || !heat.forecast.empty();
}

/// Nothing for a day the season's line does not reach.
std::optional<HeatReading> readHeat(const SeasonHeat& heat, Day day);

/// Fonts of the device that is laid out for. `unit` is what a pixel of a screen at 96
/// dots an inch takes there; every width and gap is a multiple of it.
struct HeatType {
  QFont small;
  QFont body;
  QFont strong;
  QFont figure;
  double unit = 1;
};

enum class ChartFont { small, smallStrong, body, strong, figure };
enum class ChartInk { text, muted, onTag };

/// One line of words in its box; it starts at the left edge.
struct ChartWords {
  QRectF box;
  QString text;
  ChartFont font = ChartFont::small;
  ChartInk ink = ChartInk::text;
};

struct StagePoint {
  std::size_t stage = 0;
  bool seen = false;
  QPointF at;
  QLineF drop;                   ///< to the axis of days
  std::optional<QLineF> leader;  ///< from its name, where that stands apart
};

struct StageSpan {
  std::size_t stage = 0;
  bool seen = false;
  QPointF at;
  QLineF whisker;  ///< of no length for a stage that was seen
};

enum class HeatKey { measured, forecast, likely, middle, half, eightInTen };

/// A sample of a line or band, beside its words.
struct LegendKey {
  HeatKey key{};
  QRectF box;
};

struct HeatChart {
  QSizeF size;
  DaySpan days{};
  double top = 1;  ///< the sum at the plot's upper edge
  QRectF plot;     ///< the axes; the bands may reach beyond its upper edge
  QRectF rows;     ///< of the stages' spans; empty where there is no room for them

  std::vector<QLineF> grid;
  std::vector<QLineF> ticks;
  QPolygonF eightInTen;
  QPolygonF half;
  QPolygonF middle;
  QPolygonF measured;
  QPolygonF forecast;
  QPolygonF likely;
  std::vector<StagePoint> points;
  std::vector<StageSpan> spans;
  std::vector<LegendKey> legend;
  std::optional<QLineF> today;
  QRectF todayTag;
  /// What words stand on: the ground is put there first, so that no line runs through.
  std::vector<QRectF> clearings;
  std::vector<ChartWords> words;

  double x(Day day) const;
  double y(double sum) const;
  /// The day nearest to `x`, from the first to the last shown.
  Day dayAt(double x) const;
};

/// The least height at which names, plot and spans all find room.
double leastHeight(const HeatScene& scene, const HeatType& type);

/// Needs a QGuiApplication, whose fonts it measures. Where the height does not do for the
/// spans they are left out.
HeatChart layOut(const HeatScene& scene,
                 QSizeF size,
                 const HeatType& type,
                 const Voice& voice);

struct HeatColours {
  QColor ground, text, muted, hairline, outline;
  QColor half, eightInTen, bandEdge;
};

/// Black, white and greys that a copier keeps apart.
HeatColours heatColoursOnPaper();

void paint(QPainter& painter,
           const HeatChart& chart,
           const HeatType& type,
           const HeatColours& colours);

/// The diamond of a stage, filled once seen; `half` is from its middle to a corner.
void paintDiamond(
    QPainter& painter, QPointF at, double half, bool seen, const HeatColours& colours);

/// All the chart tells, in sentences for a screen reader.
QString describe(const HeatScene& scene, const Voice& voice);

/// "4 days ahead of the middle year".
QString toTheMiddleText(const SeasonHeat& heat, const Voice& voice);

/// "degree days" or "heat units".
Words nameOf(HeatMeasure measure);

}  // namespace topwire
