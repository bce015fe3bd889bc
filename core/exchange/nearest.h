#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace topwire {

/// The known name a person most likely meant by `typed`: fewest letters added, left out,
/// changed or swapped with their neighbour, capitals aside. Empty where nothing is near.
std::string nearestName(std::string_view typed, const std::vector<std::string>& known);

}  // namespace topwire
