#pragma once

#include "core/base/result.h"
#include "core/edit/change.h"
#include "core/planning/planner.h"

#include <string>
#include <string_view>
#include <vector>

namespace topwire {

/// What can be done to an orchard's own programmes, with checks and answers as in
/// deeds.h. Shipped programmes are never changed: their copies are. Fields: id, name,
/// text, programme.

/// A copy of the programme that `text` holds, under a fresh id and a name of its own.
Checked<Change> addProgramme(const Orchard& orchard,
                             const Programmes& shipped,
                             std::string_view text,
                             const std::string& id,
                             const Words& name);
/// The text takes the place of the one held; it keeps its id.
Checked<Change> editProgramme(const Orchard& orchard,
                              const std::string& id,
                              const std::string& text);
/// Refused while plantings use it.
Checked<Change> removeProgramme(const Orchard& orchard, const std::string& id);

/// A file's text under the id it gives itself; of an own programme that is there already,
/// a new wording. `file` is what problems call it.
Checked<Change> bringInProgramme(const Orchard& orchard,
                                 const Programmes& shipped,
                                 const std::string& text,
                                 const std::string& file);

/// `programmes` are those at hand, the orchard's own among them.
Checked<Change> chooseProgramme(const Orchard& orchard,
                                const Programmes& programmes,
                                const std::vector<PlantingId>& plantings,
                                const std::string& programme);

/// An id for a copy that is free: "my-tall-spindle", "my-tall-spindle-2".
std::string freshProgrammeId(const Orchard& orchard,
                             const Programmes& shipped,
                             std::string_view wanted);

}  // namespace topwire
