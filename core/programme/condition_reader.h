#pragma once

#include "core/programme/programme.h"
#include "core/programme/programme_fields.h"

#include <optional>
#include <string_view>
#include <vector>

namespace topwire {

/// Reads a list of conditions such as { measure = "trunk diameter", at-least = "1.5 in"
/// }; faulty ones are noted and left out. Two of which one shuts out the other are a
/// fault.
std::vector<Condition> readConditions(ProgrammeFields& fields, std::string_view key);

/// Reads a number of days, or a table of days by vigour with `growth` and `until`;
/// nothing where the operation does not repeat.
std::optional<Repeat> readRepeat(ProgrammeFields& fields);

}  // namespace topwire
