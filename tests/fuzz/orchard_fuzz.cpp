#include "core/exchange/orchard_reader.h"
#include "core/programme/programme_reader.h"
#include "tests/fuzz/fuzzing.h"

// The name is libFuzzer's.
// NOLINTNEXTLINE(readability-identifier-naming)
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace topwire;
  fuzzing::tally(size);
  static const TradeTables tables = [] {
    TradeTables few;
    few.cultivars.push_back({.name = "Gala"});
    few.rootstocks.push_back({.name = "M.9 T337"});
    few.stations.push_back({.name = "Ellensburg"});
    return few;
  }();
  IdSource ids = IdSource::countingFrom(1);
  const auto read = readOrchard(fuzzing::textOf(data, size), "case", tables, {}, ids);
  if (!read) fuzzing::checkSpeakable(read.error());
  return 0;
}
