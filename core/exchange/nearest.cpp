#include "core/exchange/nearest.h"

#include <algorithm>
#include <cstddef>

namespace topwire {

namespace {

char lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

bool same(std::string_view a, std::size_t i, std::string_view b, std::size_t j) {
  return lower(a[i]) == lower(b[j]);
}

/// Optimal string alignment: Levenshtein's distance with swaps of neighbours.
std::size_t distanceBetween(std::string_view a, std::string_view b) {
  std::vector<std::size_t> beforeLast;
  std::vector<std::size_t> last(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::vector<std::size_t> row(b.size() + 1, i);
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t change = last[j - 1] + (same(a, i - 1, b, j - 1) ? 0 : 1);
      row[j] = std::min({last[j] + 1, row[j - 1] + 1, change});
      const bool swapped =
          i > 1 && j > 1 && same(a, i - 1, b, j - 2) && same(a, i - 2, b, j - 1);
      if (swapped) row[j] = std::min(row[j], beforeLast[j - 2] + 1);
    }
    beforeLast = std::move(last);
    last = std::move(row);
  }
  return last.back();
}

}  // namespace

std::string nearestName(std::string_view typed, const std::vector<std::string>& known) {
  std::string nearest;
  std::size_t least = std::max<std::size_t>(1, typed.size() / 3) + 1;
  for (const std::string& name : known) {
    const std::size_t distance = distanceBetween(typed, name);
    if (distance >= least) continue;
    least = distance;
    nearest = name;
  }
  return nearest;
}

}  // namespace topwire
