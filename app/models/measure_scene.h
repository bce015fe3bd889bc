#pragma once

#include "app/models/session.h"
#include "app/paper/measure_chart.h"
#include "core/targets/planting_targets.h"

namespace topwire {

/// Trunk, leader and shoots of a planting over its last seasons; the planting must stand
/// in its first leaf at least.
MeasureScene measureScene(const Session& session, const Planting& planting);

/// As of the session's day.
PlantingTargets targetsOf(const Session& session, const Planting& planting);

}  // namespace topwire
