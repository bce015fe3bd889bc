#pragma once

#include "core/orchard/records.h"

namespace topwire {

/// As said of trees: "weak trees", "árboles débiles".
inline Words wordsOf(Vigour vigour) {
  switch (vigour) {
    case Vigour::weak:
      return {"weak", "débiles"};
    case Vigour::moderate:
      return {"moderate", "moderados"};
    case Vigour::strong:
      break;
  }
  return {"strong", "fuertes"};
}

}  // namespace topwire
