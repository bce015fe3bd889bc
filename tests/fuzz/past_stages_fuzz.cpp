#include "core/exchange/past_stages_reader.h"
#include "tests/fuzz/fuzzing.h"

// The name is libFuzzer's.
// NOLINTNEXTLINE(readability-identifier-naming)
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace topwire;
  fuzzing::tally(size);
  IdSource ids = IdSource::countingFrom(1);
  const auto read = readPastStages(fuzzing::textOf(data, size), "case", ids);
  if (!read) fuzzing::checkSpeakable(read.error());
  return 0;
}
