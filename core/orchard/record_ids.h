#pragma once

#include "core/base/record_id.h"

namespace topwire {

using BlockId = RecordId<struct BlockTag>;
using PlantingId = RecordId<struct PlantingTag>;
using CrewId = RecordId<struct CrewTag>;
using ObservationId = RecordId<struct ObservationTag>;
using TickId = RecordId<struct TickTag>;
using PastStageId = RecordId<struct PastStageTag>;
using MeasurementId = RecordId<struct MeasurementTag>;
using PinId = RecordId<struct PinTag>;
using ClosureId = RecordId<struct ClosureTag>;

}  // namespace topwire
