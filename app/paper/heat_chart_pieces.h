#pragma once

#include "app/paper/heat_chart.h"

#include <QFontMetricsF>

#include <vector>

namespace topwire {

/// Gaps and sizes of the chart, in pixels of a screen.
namespace heat_style {
inline constexpr double gap = 4;
inline constexpr double leastPlot = 138;
inline constexpr double roomyPlot = 260;  // from here on the rows below spread out
inline constexpr double gridPitch = 46;
inline constexpr double rowPitch = 22;
inline constexpr double monthTick = 6;
inline constexpr double pointHalf = 6;
inline constexpr double rowHalf = 5;
inline constexpr double besidePoint = 11;
inline constexpr double nearestName = 11;
inline constexpr double keyWidth = 26;
inline constexpr double keyGap = 8;
inline constexpr double inset = 16;
}  // namespace heat_style

/// Fonts with their measures in the chart's units.
class ChartType {
public:
  explicit ChartType(const HeatType& type);

  double width(const QString& text, ChartFont font) const;
  double height(ChartFont font) const;

  double small() const { return height(ChartFont::small); }

  double px(double count) const { return count * unit_; }

private:
  const QFontMetricsF& metrics(ChartFont font) const;

  double unit_;
  QFontMetricsF small_, smallStrong_, body_, strong_, figure_;
};

/// Lines of words below each other, before they have a place.
struct ChartBlock {
  struct Line {
    QString text;
    ChartFont font;
    ChartInk ink = ChartInk::text;
  };

  std::vector<Line> lines;

  QSizeF size(const ChartType& type) const;
};

/// Heights of what stands below the plot. `pitch` is that of the stages' rows.
double narrowestPitch(const ChartType& type);
double rowsHeight(const HeatScene& scene, const ChartType& type, double pitch);
double monthsHeight(const ChartType& type);

/// The lines whose samples explain the rest, in the order they are told.
struct LegendEntry {
  HeatKey key;
  QString words;
};

std::vector<LegendEntry> legendOf(const SeasonHeat& heat, const Voice& voice);

struct StageName;

/// One attempt at laying a chart out: the frame and the curves first, then the words
/// wherever those leave room.
class ChartLayout {
public:
  ChartLayout(const HeatScene& scene,
              QSizeF size,
              const HeatType& type,
              const Voice& voice);

  /// `legendAbove`: the legend takes lines of its own above the plot. Otherwise it stands
  /// in the plot, or nowhere for want of room.
  HeatChart made(bool legendAbove);

private:
  double px(double count) const { return type_.px(count); }

  void add(const QRectF& box, const QString& text, ChartFont font, ChartInk ink);
  /// Puts the ground below words that stand over lines.
  void clear(const QRectF& box);
  void divide(bool legendAbove);
  void drawAxis();
  void drawMonths();
  void nameMonth(Day month, const QRectF& room);
  QString monthText(Day month, double room) const;
  void drawCurves();
  QPolygonF curve(const std::vector<HeatSample>& samples) const;
  QPolygonF band(double HeatBand::*low, double HeatBand::*high) const;
  void markToday();
  void markStages();
  void nameStage(const HeatStage& stage, StagePoint& point);
  bool canName(const QRectF& box) const;
  void putName(const StageName& name, const QRectF& box);
  void layOutRows();
  void layOutRow(std::size_t index, double middle);
  void explainRows();
  void tellToday();
  ChartBlock todayBlock() const;
  void putBlock(const ChartBlock& block, QPointF at, bool rightAligned);
  QSizeF legendSize() const;
  void putLegendInside();
  std::optional<QPointF> legendPlace(QSizeF size) const;
  double putLegendAbove(double left, double width);
  void putKey(const LegendEntry& key, QPointF at);

  bool isTaken(const QRectF& box) const;
  bool crossesToday(const QRectF& box) const;
  double ceilingAt(double x, bool ofLineAlone) const;
  bool isFree(const QRectF& box, bool overBand) const;

  const HeatScene& scene_;
  ChartType type_;
  const Voice& voice_;
  std::vector<LegendEntry> keys_;
  HeatChart chart_;
  double step_ = 1;
  double pitch_ = 0;
  std::vector<QRectF> taken_;
};

}  // namespace topwire
