#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace topwire {

/// A length as a whole number of micrometres. An inch is exactly 25,400 of them and a
/// foot 304,800 (international yard and pound agreement, 1959), so that feet, inches to
/// the eighth, and metric to the tenth of a millimetre are all exact, and a spacing
/// entered as 3 ft comes back as 3 ft.
class Length {
public:
  constexpr Length() = default;

  static constexpr Length micrometres(std::int64_t count) { return Length{count}; }

  static constexpr Length millimetres(std::int64_t count) { return Length{count * 1000}; }

  static constexpr Length centimetres(std::int64_t count) {
    return Length{count * 10'000};
  }

  static constexpr Length metres(std::int64_t count) { return Length{count * 1'000'000}; }

  static constexpr Length inches(std::int64_t count) { return Length{count * 25'400}; }

  static constexpr Length feet(std::int64_t count) { return Length{count * 304'800}; }

  constexpr std::int64_t inMicrometres() const { return micrometres_; }

  constexpr double inMetres() const { return static_cast<double>(micrometres_) / 1e6; }

  constexpr double inFeet() const { return static_cast<double>(micrometres_) / 304'800; }

  friend constexpr auto operator<=>(Length, Length) = default;

  friend constexpr Length operator+(Length a, Length b) {
    return Length{a.micrometres_ + b.micrometres_};
  }

  friend constexpr Length operator-(Length a, Length b) {
    return Length{a.micrometres_ - b.micrometres_};
  }

private:
  explicit constexpr Length(std::int64_t count) : micrometres_(count) {}

  std::int64_t micrometres_ = 0;
};

enum class UnitSystem { metric, usCustomary };

/// Reads "3 ft", "11.5ft", "36 in", "0.9 m", "90 cm", "900 mm", "3 ft 6 in"; a bare
/// number is metres or feet by `bare`. A decimal comma is read as a point. Nothing for
/// anything else, for a negative length (an elevation may be negative: -3 m is read), or
/// one over 100 km.
std::optional<Length> parseLength(std::string_view text, UnitSystem bare);
/// Metres with up to two decimals ("0.9 m"), or feet with up to two ("3.5 ft").
std::string lengthText(Length length, UnitSystem units);

/// Trees on an acre of 43,560 square feet, or a hectare of 10,000 square metres, each
/// taking row spacing times tree spacing; both must be above zero.
double treesPerAcre(Length rowSpacing, Length treeSpacing);
double treesPerHectare(Length rowSpacing, Length treeSpacing);

}  // namespace topwire
