#include "core/base/record_id.h"

#include <cstdio>
#include <random>

namespace topwire {

std::string hexText(std::uint64_t high, std::uint64_t low) {
  char text[40];
  std::snprintf(text,
                sizeof text,
                "%016llx%016llx",
                static_cast<unsigned long long>(high),
                static_cast<unsigned long long>(low));
  return text;
}

std::optional<std::array<std::uint64_t, 2>> parseHex(std::string_view text) {
  if (text.size() != 32) return std::nullopt;
  std::array<std::uint64_t, 2> bits{};
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    const bool digit = c >= '0' && c <= '9';
    if (!digit && !(c >= 'a' && c <= 'f')) return std::nullopt;
    const int nibble = digit ? c - '0' : c - 'a' + 10;
    std::uint64_t& half = bits[i / 16];
    half = (half << 4) | static_cast<std::uint64_t>(nibble);
  }
  return bits;
}

IdSource IdSource::fromSystem() {
  return IdSource{[] {
    static std::random_device device;
    const std::uint64_t high = device();
    return (high << 32) | device();
  }};
}

IdSource IdSource::countingFrom(std::uint64_t first) {
  return IdSource{[next = first]() mutable { return next++; }};
}

}  // namespace topwire
