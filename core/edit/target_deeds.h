#pragma once

#include "core/base/result.h"
#include "core/edit/change.h"

namespace topwire {

/// Deeds of what is measured and aimed at; see deeds.h.
///
/// Fields of a measurement: planting, day, values, by, note. Of a target: season, vigour,
/// vigourReason, fruit, note.

/// Refused where the measure is on record for that day: two means of one day would have
/// to be told apart by nothing.
Checked<Change> addMeasurement(const Orchard& orchard, const Measurement& measurement);
Checked<Change> removeMeasurement(const Orchard& orchard, MeasurementId measurement);

/// Settles a planting's season, in the place of what was settled before; one that says
/// nothing takes the target away. The class wants a reason.
Checked<Change> setSeasonTarget(const Orchard& orchard, const SeasonTarget& target);

}  // namespace topwire
