#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace topwire::fuzzing {

inline std::string_view textOf(const std::uint8_t* data, std::size_t size) {
  return {reinterpret_cast<const char*>(data), size};
}

/// Counts a case. Tells the sums when the program ends, and ends it once as many bytes
/// were gone through as the variable TOPWIRE_FUZZ_BYTES asks for.
void tally(std::size_t bytes);

/// Every sentence must be written out whole, in valid UTF-8: it goes to a screen and into
/// the journal.
void checkSpeakable(const Sentence& sentence);
/// At least one, each with a sentence.
void checkSpeakable(const Problems& problems);

}  // namespace topwire::fuzzing
