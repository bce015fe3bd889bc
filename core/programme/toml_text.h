#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace topwire {

using TomlPath = std::vector<std::string>;

/// From a byte up to another, exclusive.
struct TextSpan {
  std::size_t begin = 0;
  std::size_t end = 0;

  bool empty() const { return begin == end; }

  std::string_view in(std::string_view text) const {
    return text.substr(begin, end - begin);
  }
};

/// One header or assignment of a TOML text, with where it stands.
struct TomlStatement {
  enum class Kind { table, tableOfList, assignment } kind;
  TomlPath path;   ///< as written here, without the header above it
  TextSpan lines;  ///< whole lines, from the first one's indent past the last one's break
  TextSpan value;  ///< of an assignment
  std::vector<TextSpan> comments;  ///< inside the value

  bool isHeader() const { return kind != Kind::assignment; }
};

/// The statements of a text that is TOML, in order; of any other text something, without
/// harm. Unlike a parser's tree it keeps where each begins and ends to the byte.
std::vector<TomlStatement> tomlStatements(std::string_view text);

/// A value about to be written: text that is TOML already, or fields in their order.
struct TomlValue {
  std::string written;
  std::vector<std::pair<std::string, TomlValue>> fields;
  /// Each field is given a line of its own where there is none yet: name.en, name.es.
  bool spread = false;

  bool isTable() const { return !fields.empty(); }
};

TomlValue tomlText(std::string_view text);
TomlValue tomlNumber(double number);
TomlValue tomlList(const std::vector<TomlValue>& values);
/// As it stands on one line.
std::string inlineToml(const TomlValue& value);

/// Whether two values, as written, mean the same.
bool sameToml(std::string_view one, std::string_view other);

}  // namespace topwire
