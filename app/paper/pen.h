#pragma once

#include "app/paper/cubic.h"
#include "app/paper/drawing.h"
#include "app/paper/tree_form.h"

#include <QPainterPath>
#include <QPointF>

#include <array>
#include <string_view>
#include <utility>

namespace topwire {

/// Line widths in units of the view box. At 3 cm across one unit is 0.19 mm, so that the
/// thinnest of them still prints.
namespace weight {
constexpr double wire = 0.9;
constexpr double post = 1.1;
constexpr double ground = 1.2;
constexpr double twig = 1.3;
constexpr double lens = 1.4;
constexpr double limb = 1.8;
constexpr double trunk = 2.6;
constexpr double cut = 3.8;
constexpr double tie = 3.8;
}  // namespace weight

/// Reads a path of absolute M, L, Q, C and Z with points as "x y": the form in which
/// shapes are kept in the drawings. Aborts on anything else.
QPainterPath pathOf(std::string_view text);

/// How wood stands in a drawing: kept, taken off (dashed), or kept with its base closed
/// because nothing hides it.
enum class Wood { kept, off, closed };

enum class Part { kept, off };

/// One hand for every drawing. Strokes cover each other in the order they are made, and
/// all that follows `lens` is clipped to it.
class Pen {
public:
  void line(QPointF from, QPointF to, double width);
  void stroke(const QPainterPath& path, double width, Shade fill = Shade::none);
  void stroke(std::string_view path, double width, Shade fill = Shade::none);
  /// Dashed: what is taken off, or where something stood before.
  void off(const QPainterPath& path, double width, Shade fill = Shade::none);
  void off(std::string_view path, double width, Shade fill = Shade::none);
  void solid(const QPainterPath& path);
  void solid(std::string_view path);
  /// Paper laid over what is there, without an edge.
  void blank(std::string_view path);
  /// A stroke in the paper's colour.
  void erase(const QPainterPath& path, double width);
  void erase(std::string_view path, double width);

  /// Tapers from `base` to `tip` wide along the cubic; covers what lies behind.
  void wood(const Cubic& along, double base, double tip, double line, Wood how = {});
  /// An almond from its base, at an angle in degrees, 0 to the right and 90 up.
  void bud(QPointF base, double angle, double size, Part part = Part::kept);
  void leaf(QPointF base, double angle, double size, Part part = Part::kept);
  /// "Take this off", beside soft things.
  void cross(QPointF centre, double arm = 4.8);
  /// "So it is right."
  void tick(QPointF centre, double size = 9);
  /// One heavy bar across wood.
  void cut(QPointF centre, double angle, double half);
  void arrow(QPointF from, QPointF to, double width = 2.4, double head = 8);
  /// An arrow along a bend.
  void sweep(QPointF from, QPointF bend, QPointF to, double head = 8);
  void arrowHead(QPointF tip, QPointF direction, double length);
  /// Two arrows between two ticks: the room to leave.
  void dimension(QPointF from, QPointF to);
  /// A tie round a trunk at `centre`: the far half behind, then the near half with its
  /// ends crossed and nipped on the wire. The trunk is drawn between the two calls.
  void loopBehind(QPointF centre, double reach);
  void loopInFront(QPointF centre, double reach);

  /// The soil at the left.
  void ground();
  /// Soil, wires at equal steps up to the top one, and a post.
  void trellis(int wires = 4, bool post = true);
  void tree(const TreeForm& form);
  /// Fruit, or flowers in bud, on the limbs from the first to before the last share of
  /// the tree's height.
  void crop(const TreeForm& form, double first, double last, Part part = Part::kept);
  /// Opens the lens on what lies round `where`.
  void lens(QPointF where, double radius = 9);
  /// Ground, wires, the tree and the lens on `where`: how most begin.
  void scene(const TreeForm& form, QPointF where, double radius = 9);

  Drawing finished();

private:
  Stroke& add(const QPainterPath& path, double width);

  Drawing drawing_;
};

/// The point `distance` away at `angle` degrees, 0 to the right and 90 up.
QPointF polar(QPointF from, double angle, double distance);
QPainterPath circle(QPointF centre, double radius);

}  // namespace topwire
