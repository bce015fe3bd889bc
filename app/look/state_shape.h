#pragma once

#include "core/planning/progress.h"

#include <QPainter>
#include <QPainterPath>

namespace topwire {

/// The state's shape, made on a grid of 16, in the square `where`: ring, disc, triangle,
/// diamond, crossed square, ticked square, hollow square. It tells the state without its
/// colour.
void paintShape(QPainter& painter, const QRectF& where, TaskState state);

/// Tint and hatch inside `area`. The hatch hangs on the painter's origin, so that pieces
/// of one bar join.
void paintStateFill(QPainter& painter, const QPainterPath& area, TaskState state);

/// The pen of the state's edge: dashed while waiting.
QPen edgePen(TaskState state, double width = 1);

}  // namespace topwire
