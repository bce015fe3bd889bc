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
void grassTuft(Pen& pen, QPointF foot, Part part);
/// Roots spreading from the foot of a trunk.
void roots(Pen& pen, QPointF foot, double reach);
void drop(Pen& pen, QPointF tip, double size);
/// Short strokes of soil below the surface, away from `clear`.
void soil(Pen& pen, double top, double clearFrom, double clearTo);

}  // namespace topwire
