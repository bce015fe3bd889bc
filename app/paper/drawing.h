#pragma once

#include <QColor>
#include <QPainterPath>
#include <QRectF>
#include <QString>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

class QPainter;

namespace topwire {

enum class Shade { none, paper, ink };

/// One shape: an outline of `width` units (0 for none) over a fill.
struct Stroke {
  QPainterPath path;
  double width = 0;
  Shade line = Shade::ink;
  Shade fill = Shade::none;
  double dash = 0;  ///< units on, then `gap` units off; 0 for a whole line
  double gap = 0;
  bool inLens = false;  ///< clipped to the lens
};

/// A line drawing of one operation: the tree at the left shows where, the lens at the
/// right shows what. Solid stays, dashed comes off, the heaviest line ties, an arrow
/// moves. Kept as shapes without colour, so that one drawing serves paper and dark
/// screens.
struct Drawing {
  static constexpr double width = 160;
  static constexpr double height = 120;

  std::vector<Stroke> strokes;
  std::optional<QRectF> lens;  ///< the square round it
};

/// The names that programmes may use.
std::vector<std::string_view> drawingNames();
/// The drawing with the tree as it stands in that leaf, 1 the first growing season; work
/// before the planting day shows the ground. "wall-" before any name shows that work on a
/// wall of uprights in place of a cone. Nothing for a name that has no drawing.
std::optional<Drawing> drawingFor(std::string_view name, int leaf);

/// Paints as large as fits in the middle of `area`.
void paint(QPainter& painter,
           const Drawing& drawing,
           const QRectF& area,
           const QColor& ink,
           const QColor& paper);

/// The drawing as an SVG document that needs nothing outside itself.
QString toSvg(const Drawing& drawing, const QColor& ink, const QColor& paper);
/// One <svg> element for inside another document, at `area` of it, with an `id` of its
/// own there.
QString toSvgElement(const Drawing& drawing,
                     const QColor& ink,
                     const QColor& paper,
                     const QRectF& area,
                     const QString& id);

}  // namespace topwire
