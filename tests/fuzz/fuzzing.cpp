#include "tests/fuzz/fuzzing.h"

#include "core/base/contract.h"

#include <nlohmann/json.hpp>

#include <cstdio>
#include <cstdlib>

namespace topwire::fuzzing {

namespace {

class Tally {
public:
  Tally() {
    if (const char* asked = std::getenv("TOPWIRE_FUZZ_BYTES"))
      goal_ = std::strtoull(asked, nullptr, 10);
  }

  Tally(const Tally&) = delete;
  Tally& operator=(const Tally&) = delete;

  ~Tally() { tell(); }

  void add(std::size_t bytes) {
    ++cases_;
    bytes_ += bytes;
    if (goal_ == 0 || bytes_ < goal_) return;
    tell();
    // libFuzzer takes any other way out for a fault of the target.
    std::_Exit(EXIT_SUCCESS);
  }

private:
  void tell() const {
    std::printf("%llu cases, %llu bytes\n", cases_, bytes_);
    std::fflush(stdout);
  }

  unsigned long long goal_ = 0;
  unsigned long long cases_ = 0;
  unsigned long long bytes_ = 0;
};

}  // namespace

void tally(std::size_t bytes) {
  static Tally sums;
  sums.add(bytes);
}

void checkSpeakable(const Sentence& sentence) {
  const std::string spoken = inEnglish(sentence);
  TOPWIRE_REQUIRE(!spoken.empty());
  try {
    static_cast<void>(nlohmann::json(spoken).dump());
  } catch (const nlohmann::json::exception&) {
    contractBroken("a sentence is valid UTF-8", __FILE__, __LINE__);
  }
}

void checkSpeakable(const Problems& problems) {
  TOPWIRE_REQUIRE(!problems.empty());
  for (const Problem& problem : problems) checkSpeakable(problem.sentence);
}

}  // namespace topwire::fuzzing
