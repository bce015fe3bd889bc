#pragma once

#include <cstddef>

namespace topwire {

/// Jobs, days, gangs and rows are counted in int, since some lie before the first; where
/// one stands in a vector.
inline std::size_t at(int index) {
  return static_cast<std::size_t>(index);
}

}  // namespace topwire
