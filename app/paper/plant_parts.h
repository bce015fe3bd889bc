#pragma once

#include "app/paper/pen.h"

namespace topwire {

/// A young shoot along the cubic, with leaves on alternate sides and one at its tip.
void shoot(Pen& pen, const Cubic& along, Part part, int leaves, double leafSize = 11);
/// Five petals round a ring.
void flower(Pen& pen, QPointF centre, double radius, Part part);
/// A fruit hanging from `stalk`.
void apple(Pen& pen, QPointF stalk, double radius, Part part);
/// A trunk through the lens, kept.
void lensTrunk(Pen& pen, double base = 17, double tip = 14);
/// The soil's surface through the lens.
void lensGround(Pen& pen, double y);
/// A trunk through the upper lens that stands on soil of its own.
void standingTrunk(Pen& pen, QPointF foot, double base, double tip);
/// The foot of a grafted tree, its union at y 47: a bend and a swelling.
void graftedTrunk(Pen& pen, double foot);
/// A nursery tree with bare roots and feathers.
void nurseryTree(Pen& pen, QPointF foot, double lean);
/// A whole tree small enough to stand in a row of them.
void smallTree(Pen& pen, QPointF foot, double height, Part part);
/// A fruiting spur on a limb, with its rosette of leaves.
void spur(Pen& pen, QPointF foot, double height);
/// Three flowers on stalks from one bud, opening.
void flowerCluster(Pen& pen, QPointF bud, double size, double angle, Part part);
void grassTuft(Pen& pen, QPointF foot, Part part);
/// Roots spreading from the foot of a trunk.
void roots(Pen& pen, QPointF foot, double reach);
void drop(Pen& pen, QPointF tip, double size);
/// Short strokes of soil below the surface, away from `clear`.
void soil(Pen& pen, double top, double clearFrom, double clearTo);

}  // namespace topwire
