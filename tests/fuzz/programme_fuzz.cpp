#include "core/programme/programme_reader.h"
#include "tests/fuzz/fuzzing.h"

// The name is libFuzzer's.
// NOLINTNEXTLINE(readability-identifier-naming)
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace topwire;
  fuzzing::tally(size);
  const auto read = readProgramme(fuzzing::textOf(data, size), "case");
  if (!read) fuzzing::checkSpeakable(read.error());
  return 0;
}
