#pragma once

#include <cstdint>

namespace topwire {

/// SplitMix64 (Steele, Lea, Flood 2014): the same numbers with any library.
class SearchNumbers {
public:
  explicit SearchNumbers(std::uint64_t seed) : state_{seed} {}

  std::uint64_t next() {
    state_ += 0x9e3779b97f4a7c15U;
    std::uint64_t z = state_;
    z = (z ^ z >> 30) * 0xbf58476d1ce4e5b9U;
    z = (z ^ z >> 27) * 0x94d049bb133111ebU;
    return z ^ z >> 31;
  }

  /// From 0; `bound` is at least 1.
  int below(int bound) {
    return static_cast<int>((next() >> 32) * static_cast<std::uint64_t>(bound) >> 32);
  }

private:
  std::uint64_t state_;
};

}  // namespace topwire
