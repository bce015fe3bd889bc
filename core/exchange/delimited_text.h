#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace topwire {

/// The lines of a text, one by one, without their ends (line feed, carriage return and
/// line feed, or carriage return alone where the text has no line feed). Views into the
/// text, which must outlive them.
class TextLines {
public:
  explicit TextLines(std::string_view text);

  /// Nothing after the last line; an end of line at the end of the text begins no other.
  std::optional<std::string_view> next();

  /// The number of the line last given, counted from 1.
  std::size_t number() const { return number_; }

  /// Bytes given so far.
  std::size_t offset() const { return offset_; }

private:
  std::string_view text_;
  char end_;
  std::size_t offset_ = 0;
  std::size_t number_ = 0;
};

/// Without the mark that some programs put before UTF-8.
std::string_view withoutByteOrderMark(std::string_view text);

/// Splits one line at `separator`, after RFC 4180: a field may stand in quotes, and then
/// hold the separator and doubled quotes. Blanks around fields go. Fields after the
/// thousandth are left out.
///
/// Unlike in RFC 4180 no field spans lines, and a quote left open ends with its line: a
/// stray one costs that line, not the rest of the file. Written here because the
/// tokenizers Debian packages either throw, or copy each field and cannot say which line
/// it stands in.
void splitFields(std::string_view line,
                 char separator,
                 std::vector<std::string_view>& fields);

/// The field as a person reads it: doubled quotes of a quoted field single.
std::string undoubled(std::string_view field);

/// At most `most` bytes to show in a sentence, made valid UTF-8 without control signs;
/// ends in "..." where something was left out.
std::string excerpt(std::string_view text, std::size_t most = 40);

std::string_view trimmed(std::string_view text);

/// A number with a point, or with a comma where the text has no point; nothing else
/// around it. Whatever the locale. Nothing where it is no finite number.
std::optional<double> parseNumber(std::string_view text);
std::optional<int> parseWhole(std::string_view text);

}  // namespace topwire
