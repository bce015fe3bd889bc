#pragma once

#include "core/exchange/toml_fields.h"
#include "core/orchard/records.h"

namespace topwire {

/// A stage by its BBCH code or its English name; 0 with the fault noted where it is none.
int readStage(TableFields& fields, const toml::table& table);

/// What stands in [[measurement]] beside the planting: measure, day, values, by, note.
Measurement readMeasurement(TableFields& fields, UnitSystem units);

}  // namespace topwire
