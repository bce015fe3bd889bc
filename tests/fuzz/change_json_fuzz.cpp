#include "core/base/contract.h"
#include "core/edit/change.h"
#include "tests/fuzz/fuzzing.h"

// The name is libFuzzer's.
// NOLINTNEXTLINE(readability-identifier-naming)
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace topwire;
  fuzzing::tally(size);
  const auto read = changeFromJson(fuzzing::textOf(data, size));
  if (!read) return fuzzing::checkSpeakable(Problems{read.error()}), 0;
  TOPWIRE_REQUIRE(changeFromJson(toJson(*read)) == read);
  return 0;
}
