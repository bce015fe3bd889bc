#include "core/orchard/row_set.h"

#include "core/base/contract.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr int highestRow = 9999;

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t");
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

/// The figure and en dash that word processors put for a hyphen become one.
std::string withPlainHyphens(std::string_view text) {
  std::string plain{text};
  for (const std::string_view dash : {"\u2013", "\u2012", "\u2014", "\u2212"}) {
    for (auto at = plain.find(dash); at != std::string::npos; at = plain.find(dash))
      plain.replace(at, dash.size(), "-");
  }
  return plain;
}

/// Over five digits are out of bounds anyway; stopping there keeps the sum from
/// overflowing.
std::optional<int> rowNumber(std::string_view text) {
  text = trimmed(text);
  if (text.empty()) return std::nullopt;
  int value = 0;
  for (const char c : text) {
    if (c < '0' || c > '9') return std::nullopt;
    value = std::min(value * 10 + (c - '0'), highestRow + 1);
  }
  return value;
}

bool inBounds(int row) {
  return row >= 1 && row <= highestRow;
}

ParsedRows readPart(const std::string& part) {
  using Kind = RowFault::Kind;
  const auto hyphen = part.find('-');
  const auto first = rowNumber(part.substr(0, hyphen));
  const auto last =
      hyphen == std::string::npos ? first : rowNumber(part.substr(hyphen + 1));
  if (!first || !last) return {{}, RowFault{Kind::notRows, part}};
  if (!inBounds(*first) || !inBounds(*last))
    return {{}, RowFault{Kind::outOfBounds, part}};
  if (*first > *last) return {{}, RowFault{Kind::backwards, part}};
  return {RowSet::range(*first, *last), std::nullopt};
}

}  // namespace

RowSet RowSet::range(int first, int last) {
  TOPWIRE_REQUIRE(inBounds(first) && inBounds(last) && first <= last);
  RowSet set;
  set.ranges_.push_back({first, last});
  return set;
}

int RowSet::count() const {
  int total = 0;
  for (const RowRange& range : ranges_) total += range.last - range.first + 1;
  return total;
}

bool RowSet::contains(int row) const {
  return std::ranges::any_of(ranges_, [row](const RowRange& range) {
    return range.first <= row && row <= range.last;
  });
}

std::vector<int> RowSet::rows() const {
  std::vector<int> all;
  for (const RowRange& range : ranges_)
    for (int row = range.first; row <= range.last; ++row) all.push_back(row);
  return all;
}

RowSet RowSet::with(const RowSet& other) const {
  std::vector<RowRange> sorted = ranges_;
  sorted.insert(sorted.end(), other.ranges_.begin(), other.ranges_.end());
  std::ranges::sort(sorted, {}, &RowRange::first);
  RowSet joined;
  for (const RowRange& range : sorted) {
    auto& done = joined.ranges_;
    if (!done.empty() && range.first <= done.back().last + 1)
      done.back().last = std::max(done.back().last, range.last);
    else
      done.push_back(range);
  }
  return joined;
}

RowSet RowSet::without(const RowSet& other) const {
  RowSet left;
  for (RowRange range : ranges_) {
    for (const RowRange& gone : other.ranges_) {
      if (gone.last < range.first || gone.first > range.last) continue;
      if (gone.first > range.first) left.ranges_.push_back({range.first, gone.first - 1});
      range.first = gone.last + 1;
    }
    if (range.first <= range.last) left.ranges_.push_back(range);
  }
  return left;
}

RowSet RowSet::inCommonWith(const RowSet& other) const {
  return without(without(other));
}

ParsedRows parseRows(std::string_view text) {
  const std::string plain = withPlainHyphens(text);
  ParsedRows read;
  std::size_t start = 0;
  while (start <= plain.size() && !trimmed(plain).empty()) {
    const auto comma = std::min(plain.find(',', start), plain.size());
    const std::string part{trimmed(std::string_view{plain}.substr(start, comma - start))};
    ParsedRows one = readPart(part);
    if (one.fault) return one;
    if (!read.rows.inCommonWith(one.rows).empty())
      return {{}, RowFault{RowFault::Kind::twice, part}};
    read.rows = read.rows.with(one.rows);
    start = comma + 1;
  }
  return read;
}

std::string rowsText(const RowSet& rows) {
  std::string text;
  for (const RowRange& range : rows.ranges()) {
    if (!text.empty()) text += ", ";
    text += std::to_string(range.first);
    if (range.last != range.first) text += '-' + std::to_string(range.last);
  }
  return text;
}

}  // namespace topwire
