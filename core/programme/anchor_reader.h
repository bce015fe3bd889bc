#pragma once

#include "core/programme/programme.h"
#include "core/programme/programme_fields.h"

namespace topwire {

/// Reads the fields of an anchor out of a table that may hold others beside it; nothing
/// where they are faulty. The caller refuses the fields nobody asked for.
std::optional<Anchor> readAnchor(ProgrammeFields& fields);

}  // namespace topwire
