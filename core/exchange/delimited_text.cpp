#include "core/exchange/delimited_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <utility>

namespace topwire {

namespace {

constexpr std::size_t mostFields = 1000;
constexpr std::size_t longestNumber = 64;

/// Where the quoted field that begins after `at` ends: the place of its closing quote, or
/// the line's end.
std::size_t closingQuote(std::string_view line, std::size_t at) {
  while (true) {
    const std::size_t quote = line.find('"', at);
    if (quote == std::string_view::npos) return line.size();
    if (quote + 1 == line.size() || line[quote + 1] != '"') return quote;
    at = quote + 2;
  }
}

struct FoundField {
  std::string_view text;
  std::size_t end;  ///< of the separator after it, or the line's
};

FoundField fieldAt(std::string_view line, std::size_t at, char separator) {
  std::size_t first = at;
  while (first < line.size() && line[first] == ' ') ++first;
  if (first < line.size() && line[first] == '"') {
    const std::size_t close = closingQuote(line, first + 1);
    return {line.substr(first + 1, close - first - 1),
            std::min(line.find(separator, close), line.size())};
  }
  const std::size_t end = std::min(line.find(separator, at), line.size());
  return {line.substr(at, end - at), end};
}

/// How many bytes the UTF-8 character at `at` takes; 0 where there is none to show.
std::size_t lengthOfCharacter(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned lead = byte(at);
  if (lead < 0x80) return lead >= 0x20 && lead != 0x7f ? 1 : 0;
  // Leads that would only spell out longer what fewer bytes can are no leads.
  const std::size_t length = lead < 0xc2 ? 0 : lead < 0xe0 ? 2 : lead < 0xf0 ? 3 : 4;
  if (length == 0 || lead > 0xf4 || at + length > text.size()) return 0;
  for (std::size_t i = 1; i < length; ++i)
    if ((byte(at + i) & 0xc0U) != 0x80U) return 0;
  const unsigned second = byte(at + 1);
  const bool overlong =
      (lead == 0xe0 && second < 0xa0) || (lead == 0xf0 && second < 0x90);
  const bool beyond = (lead == 0xed && second > 0x9f) || (lead == 0xf4 && second > 0x8f);
  return overlong || beyond ? 0 : length;
}

}  // namespace

TextLines::TextLines(std::string_view text)
    : text_(text), end_(text.find('\n') == std::string_view::npos ? '\r' : '\n') {}

std::optional<std::string_view> TextLines::next() {
  if (offset_ >= text_.size()) return std::nullopt;
  const std::size_t end = std::min(text_.find(end_, offset_), text_.size());
  std::string_view line = text_.substr(offset_, end - offset_);
  if (end_ == '\n' && line.ends_with('\r')) line.remove_suffix(1);
  offset_ = std::min(end + 1, text_.size());
  ++number_;
  return line;
}

void splitFields(std::string_view line,
                 char separator,
                 std::vector<std::string_view>& fields) {
  fields.clear();
  std::size_t at = 0;
  while (fields.size() < mostFields) {
    const FoundField found = fieldAt(line, at, separator);
    fields.push_back(trimmed(found.text));
    if (found.end >= line.size()) return;
    at = found.end + 1;
  }
}

std::string undoubled(std::string_view field) {
  std::string text;
  text.reserve(field.size());
  for (std::size_t i = 0; i < field.size(); ++i) {
    text += field[i];
    const bool doubled = field[i] == '"' && i + 1 < field.size() && field[i + 1] == '"';
    if (doubled) ++i;
  }
  return text;
}

std::string excerpt(std::string_view text, std::size_t most) {
  std::string shown;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t length = lengthOfCharacter(text, at);
    const std::size_t taken = std::max<std::size_t>(length, 1);
    if (shown.size() + taken > most) return shown + "...";
    shown += length == 0 ? std::string_view{"?"} : text.substr(at, length);
    at += taken;
  }
  return shown;
}

std::string_view withoutByteOrderMark(std::string_view text) {
  constexpr std::string_view mark = "\xEF\xBB\xBF";
  if (text.starts_with(mark)) text.remove_prefix(mark.size());
  return text;
}

std::string_view trimmed(std::string_view text) {
  const auto blank = [](char c) { return c == ' ' || c == '\t' || c == '\r'; };
  while (!text.empty() && blank(text.front())) text.remove_prefix(1);
  while (!text.empty() && blank(text.back())) text.remove_suffix(1);
  return text;
}

std::optional<double> parseNumber(std::string_view text) {
  if (text.starts_with('+') && !text.starts_with("+-")) text.remove_prefix(1);
  if (text.empty() || text.size() > longestNumber) return std::nullopt;
  std::array<char, longestNumber> copy{};
  std::ranges::copy(text, copy.begin());
  if (text.find('.') == std::string_view::npos)
    if (const std::size_t comma = text.find(','); comma != std::string_view::npos)
      copy[comma] = '.';
  double value = 0;
  const char* const end = copy.data() + text.size();
  const auto read = std::from_chars(copy.data(), end, value);
  // It takes "inf" and "nan" for numbers.
  if (read.ec != std::errc{} || read.ptr != end || !std::isfinite(value))
    return std::nullopt;
  return value;
}

std::optional<int> parseWhole(std::string_view text) {
  int value = 0;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
  if (read.ec != std::errc{} || read.ptr != text.data() + text.size())
    return std::nullopt;
  return value;
}

}  // namespace topwire
