#include "core/units/length.h"

#include "core/base/contract.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <cstdio>
#include <cstdlib>

namespace topwire {

namespace {

constexpr double longestInMicrometres = 1e11;

void skipSpaces(std::string_view& text) {
  while (!text.empty() && std::isspace(static_cast<unsigned char>(text.front())) != 0)
    text.remove_prefix(1);
}

/// Digits with at most one point or comma. Written out because strtod follows the
/// locale, and std::from_chars reads exponents and "inf".
std::optional<double> takeNumber(std::string_view& text) {
  double value = 0;
  double scale = 0;
  std::size_t digits = 0;
  while (!text.empty()) {
    const char c = text.front();
    if (c >= '0' && c <= '9') {
      value = scale == 0 ? value * 10 + (c - '0') : value + (c - '0') * scale;
      scale /= 10;
      ++digits;
    } else if ((c == '.' || c == ',') && scale == 0) {
      scale = 0.1;
    } else {
      break;
    }
    text.remove_prefix(1);
  }
  if (digits == 0) return std::nullopt;
  return value;
}

/// Micrometres in the unit named at the front of `text`, which is taken off.
std::optional<double> takeUnit(std::string_view& text, UnitSystem bare) {
  struct Unit {
    std::string_view name;
    double micrometres;
  };

  static constexpr Unit units[] = {{"ft", 304'800},
                                   {"in", 25'400},
                                   {"mm", 1000},
                                   {"cm", 10'000},
                                   {"km", 1e9},
                                   {"m", 1e6},
                                   {"'", 304'800},
                                   {"\"", 25'400}};
  skipSpaces(text);
  if (text.empty()) return bare == UnitSystem::metric ? 1e6 : 304'800;
  for (const Unit& unit : units) {
    if (!text.starts_with(unit.name)) continue;
    text.remove_prefix(unit.name.size());
    return unit.micrometres;
  }
  return std::nullopt;
}

std::optional<double> takeTerm(std::string_view& text, UnitSystem bare) {
  skipSpaces(text);
  const auto number = takeNumber(text);
  if (!number) return std::nullopt;
  const auto unit = takeUnit(text, bare);
  if (!unit) return std::nullopt;
  skipSpaces(text);
  return *number * *unit;
}

double squareMetres(Length a, Length b) {
  TOPWIRE_REQUIRE(a > Length{} && b > Length{});
  return a.inMetres() * b.inMetres();
}

}  // namespace

std::optional<Length> parseLength(std::string_view text, UnitSystem bare) {
  skipSpaces(text);
  const bool negative = text.starts_with('-');
  if (negative) text.remove_prefix(1);
  auto total = takeTerm(text, bare);
  while (total && !text.empty()) {
    const auto more = takeTerm(text, bare);
    total = more ? std::optional{*total + *more} : std::nullopt;
  }
  if (!total || *total > longestInMicrometres) return std::nullopt;
  const std::int64_t rounded = std::llround(*total);
  return Length::micrometres(negative ? -rounded : rounded);
}

std::string lengthText(Length length, UnitSystem units) {
  const bool metric = units == UnitSystem::metric;
  char digits[48];
  std::snprintf(
      digits, sizeof digits, "%.2f", metric ? length.inMetres() : length.inFeet());
  std::string text = digits;
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text + (metric ? " m" : " ft");
}

double treesPerAcre(Length rowSpacing, Length treeSpacing) {
  TOPWIRE_REQUIRE(rowSpacing > Length{} && treeSpacing > Length{});
  return 43'560.0 / (rowSpacing.inFeet() * treeSpacing.inFeet());
}

double treesPerHectare(Length rowSpacing, Length treeSpacing) {
  return 10'000.0 / squareMetres(rowSpacing, treeSpacing);
}

}  // namespace topwire
