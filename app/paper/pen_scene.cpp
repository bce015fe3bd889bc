#include "app/paper/pen.h"

#include <cmath>

namespace topwire {

namespace {

constexpr QPointF lensCentre{107, 60};
constexpr double lensRadius = 50;
constexpr double groundY = 112;
constexpr double leftEnd = 2;
constexpr double rightEnd = 52;

QPointF towardsLens(QPointF from) {
  const QPointF way = lensCentre - from;
  return way / std::hypot(way.x(), way.y());
}

}  // namespace

void Pen::ground() {
  line({leftEnd, groundY}, {rightEnd, groundY}, weight::ground);
}

void Pen::trellis(int wires, bool post) {
  constexpr double lowest = 92;
  constexpr double highest = 26;
  ground();
  for (int i = 0; i < wires; ++i) {
    const double y = lowest + (highest - lowest) * i / (wires - 1);
    line({leftEnd, y}, {rightEnd, y}, weight::wire);
  }
  if (!post) return;
  constexpr double x = rightEnd - 5;
  wood(straight({x, groundY}, {x, 14}), 3, 3, weight::post, Wood::closed);
}

void Pen::tree(const TreeForm& form) {
  for (const TreeForm::Limb& limb : form.limbs) {
    QPainterPath branch{limb.foot};
    branch.quadTo(limb.bow, limb.tip);
    stroke(branch, limb.width);
  }
  for (const TreeForm::Stem& stem : form.stems)
    wood(stem.along, stem.base, stem.tip, weight::twig);
}

void Pen::crop(const TreeForm& form, double first, double last, Part part) {
  const double height = form.foot.y() - form.top.y();
  for (const TreeForm::Limb& limb : form.limbs) {
    const double share = (form.foot.y() - limb.foot.y()) / height;
    if (share < first || share >= last) continue;
    const QPointF at = limb.tip + QPointF{0, 2.4};
    if (part == Part::kept)
      solid(circle(at, 1.7));
    else
      stroke(circle(at, 1.7), weight::wire, Shade::paper);
  }
}

void Pen::lens(QPointF where, double radius) {
  stroke(circle(where, radius), weight::lens);
  const QPointF towards = towardsLens(where);
  line(where + towards * radius, lensCentre - towards * lensRadius, weight::lens);
  Stroke& inside = add(circle(lensCentre, lensRadius), 0);
  inside.fill = Shade::paper;
  drawing_.lens = circle(lensCentre, lensRadius).boundingRect();
}

void Pen::scene(const TreeForm& form, QPointF where, double radius) {
  trellis(form.wires);
  tree(form);
  lens(where, radius);
}

Drawing Pen::finished() {
  if (drawing_.lens) add(circle(lensCentre, lensRadius), weight::lens).inLens = false;
  return std::move(drawing_);
}

}  // namespace topwire
