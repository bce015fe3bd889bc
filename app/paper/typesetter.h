#pragma once

#include "app/paper/page.h"

#include <QFont>
#include <QStringList>

namespace topwire {

/// Fonts are measured and painted at this many pixels a point, unhinted, so that a line
/// is as wide on every device as it was when the page was laid out.
constexpr int pixelsPerPoint = 20;

/// Noto Sans where it is installed, else the system's font; in pixels as above.
QFont fontFor(Face face);

double widthOf(const QString& text, Face face);
double ascentOf(Face face);
double lineHeightOf(Face face);

/// Breaks between words, and inside a word that is wider than a line.
QStringList wrapped(const QString& text, Face face, double width);

/// A strip across the page: items measured from its top left corner.
struct Slab {
  std::vector<Item> items;
  double height = 0;
  double gap = 0;  ///< above it, except at a page's top
  bool keepWithNext = false;
  /// Drawn unless it begins a page: what divides it from the slab above.
  std::vector<Item> divider;
  /// Stands above it when it begins a page ("Job 3, continued").
  std::vector<Item> lead;
  double leadHeight = 0;
};

enum class Side { left, right, centre };

/// Adds one line whose box begins at `top`; `x` is its left end, right end or middle.
void addLine(std::vector<Item>& items,
             const QString& text,
             Face face,
             QPointF top,
             Side side = Side::left);
/// Adds `text`, wrapped to `width`; returns the height it takes.
double addText(
    std::vector<Item>& items, const QString& text, Face face, QPointF top, double width);

}  // namespace topwire
