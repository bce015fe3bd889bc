#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace topwire {

/// 128 random bits: two machines can both add records and never collide, so nothing is
/// numbered in sequence. The tag keeps a block's id from being used as a planting's.
template <class Tag>
struct RecordId {
  std::uint64_t high = 0;
  std::uint64_t low = 0;

  friend auto operator<=>(const RecordId&, const RecordId&) = default;
};

std::string hexText(std::uint64_t high, std::uint64_t low);
/// 32 lower-case hexadecimal digits, nothing else.
std::optional<std::array<std::uint64_t, 2>> parseHex(std::string_view text);

template <class Tag>
std::string idText(RecordId<Tag> id) {
  return hexText(id.high, id.low);
}

template <class Id>
std::optional<Id> parseId(std::string_view text) {
  const auto bits = parseHex(text);
  if (!bits) return std::nullopt;
  return Id{(*bits)[0], (*bits)[1]};
}

/// Where new ids come from: the system's random source in the programs, a counter in
/// tests, which makes their results repeatable.
class IdSource {
public:
  using Bits = std::function<std::uint64_t()>;

  explicit IdSource(Bits bits) : bits_(std::move(bits)) {}

  template <class Id>
  Id next() {
    const std::uint64_t high = bits_();
    return Id{high, bits_()};
  }

  static IdSource fromSystem();
  static IdSource countingFrom(std::uint64_t first);

private:
  Bits bits_;
};

}  // namespace topwire
