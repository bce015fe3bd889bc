#pragma once

#include "app/paper/pen.h"

namespace topwire {

// What a hand brings to the tree, and what is written down.

/// "Look closely here."
void magnifier(Pen& pen, QPointF centre, double radius);
/// A board with a sheet of `lines`; the last of them is being written.
void notebook(Pen& pen, QPointF corner, int lines);
/// Four strokes and one across: things counted.
void tally(Pen& pen, QPointF corner, double height);
/// An open paper bag standing at `corner`, its top left.
void bag(Pen& pen, QPointF corner, double width, double height);
/// A sack tipped to the left, its mouth at `mouth`, with the grains that fall from it.
void tippedSack(Pen& pen, QPointF mouth);
void grain(Pen& pen, QPointF at);
/// A drip hose through the lens with a dripper under it.
void dripHose(Pen& pen, double y, double dripperX);
/// A label on a string from `knot`.
void label(Pen& pen, QPointF knot);
void snowflake(Pen& pen, QPointF centre, double radius);
/// A spring clothes-pin whose jaws are at the left of `jaws`.
void clothesPin(Pen& pen, QPointF jaws, Part part);
void flag(Pen& pen, QPointF foot, double height);

}  // namespace topwire
