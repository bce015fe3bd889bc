#pragma once

#include "core/programme/programme.h"
#include "core/programme/programme_fields.h"

#include <optional>
#include <string_view>
#include <vector>

namespace topwire {

/// A leaf number between -9 and 98 and nothing else: "3", "-2".
std::optional<int> readLeaf(std::string_view text);
/// Reads 2, "1-3", "-3 to -1", "4+", or a list of such; what is no range is a fault.
std::vector<LeafRange> readLeafRanges(ProgrammeFields& fields, std::string_view key);

}  // namespace topwire
