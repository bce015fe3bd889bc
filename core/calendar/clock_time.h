#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace topwire {

/// "06:30" for 390 minutes after midnight; 1440 is "24:00".
std::string clockText(int minute);
/// Reads HH:MM or H:MM from 0:00 to 24:00, nothing else.
std::optional<int> parseClock(std::string_view text);

}  // namespace topwire
