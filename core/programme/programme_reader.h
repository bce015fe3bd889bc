#pragma once

#include "core/base/result.h"
#include "core/programme/programme.h"

#include <string>
#include <string_view>

namespace topwire {

/// Reads and checks a programme. On any fault nothing is returned but all the faults,
/// each with line, field and what to do: unknown keys and stages, missing words in either
/// language, a window that ends before it opens, anchors or needs that go round in a
/// circle, a reference to an operation that is not there or not done in those leaves,
/// conditions that no tree can meet.
Checked<Programme> readProgramme(std::string_view toml, const std::string& file);

/// The operations ordered so that each comes after the ones it is anchored to.
std::vector<const Operation*> inAnchorOrder(const Programme& programme);

}  // namespace topwire
