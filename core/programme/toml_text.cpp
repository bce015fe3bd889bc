#include "core/programme/toml_text.h"

#include <toml++/toml.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>

namespace topwire {

namespace {

using Kind = TomlStatement::Kind;

constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";

bool isBlank(char c) {
  return c == ' ' || c == '\t' || c == '\r';
}

/// Walks over a text; past the end it reads as a row of line breaks, so that a text cut
/// short ends every string and every list.
class Scanner {
public:
  explicit Scanner(std::string_view text) : text_(text) {
    if (text_.starts_with(byteOrderMark)) at_ = byteOrderMark.size();
  }

  std::vector<TomlStatement> all() {
    while (!atEnd()) readLine();
    return std::move(statements_);
  }

private:
  bool atEnd() const { return at_ >= text_.size(); }

  char here(std::size_t ahead = 0) const {
    return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\n';
  }

  bool startsWith(std::string_view what) const {
    return text_.substr(std::min(at_, text_.size())).starts_with(what);
  }

  void skipBlanks() {
    while (!atEnd() && isBlank(here())) ++at_;
  }

  void skipToBreak() {
    while (!atEnd() && here() != '\n') ++at_;
  }

  void skipLine() {
    skipToBreak();
    if (!atEnd()) ++at_;
  }

  void readLine() {
    const std::size_t begin = at_;
    skipBlanks();
    if (here() == '\n' || here() == '#') return skipLine();
    TomlStatement statement = here() == '[' ? header() : assignment();
    at_ = std::min(at_, text_.size());
    statement.value.begin = std::min(statement.value.begin, at_);
    statement.value.end = std::min(statement.value.end, at_);
    skipLine();
    statement.lines = {begin, at_};
    statements_.push_back(std::move(statement));
  }

  TomlStatement header() {
    const bool list = here(1) == '[';
    at_ += list ? 2 : 1;
    return {list ? Kind::tableOfList : Kind::table, path(), {}, {}, {}};
  }

  TomlStatement assignment() {
    TomlStatement statement{Kind::assignment, path(), {}, {}, {}};
    skipBlanks();
    if (here() == '=') ++at_;
    skipBlanks();
    statement.value.begin = at_;
    skipValue(statement.comments);
    statement.value.end = at_;
    return statement;
  }

  TomlPath path() {
    TomlPath path;
    do {
      if (!path.empty()) ++at_;
      skipBlanks();
      path.push_back(key());
      skipBlanks();
    } while (here() == '.');
    return path;
  }

  std::string key() {
    const std::size_t begin = at_;
    if (here() == '"' || here() == '\'') {
      skipString();
      const std::size_t length = at_ - begin;
      return std::string{text_.substr(begin + 1, length < 2 ? 0 : length - 2)};
    }
    constexpr std::string_view ends = " \t\r\n=.]#";
    while (!atEnd() && ends.find(here()) == std::string_view::npos) ++at_;
    return std::string{text_.substr(begin, at_ - begin)};
  }

  bool escapes(char quote) const { return quote == '"' && here() == '\\'; }

  void skipString() {
    const char quote = here();
    const std::string three(3, quote);
    if (startsWith(three)) return skipLongString(three);
    ++at_;
    while (here() != quote && here() != '\n') at_ += escapes(quote) ? 2U : 1U;
    if (here() == quote) ++at_;
  }

  /// Up to two quotes may stand before the closing three.
  void skipLongString(const std::string& three) {
    at_ += 3;
    while (!atEnd() && !startsWith(three)) at_ += escapes(three[0]) ? 2U : 1U;
    at_ = std::min(at_ + 3, text_.size());
    for (int more = 0; more < 2 && here() == three[0]; ++more) ++at_;
  }

  void skipValue(std::vector<TextSpan>& comments) {
    if (here() == '"' || here() == '\'') return skipString();
    if (here() == '[' || here() == '{') return skipBrackets(comments);
    const std::size_t begin = at_;
    while (!atEnd() && here() != '\n' && here() != '#') ++at_;
    while (at_ > begin && isBlank(text_[at_ - 1])) --at_;
  }

  void skipBrackets(std::vector<TextSpan>& comments) {
    int depth = 0;
    do {
      const char c = here();
      if (c == '"' || c == '\'') {
        skipString();
        continue;
      }
      if (c == '#') {
        const std::size_t begin = at_;
        skipToBreak();
        const bool carriage = text_[at_ - 1] == '\r';
        comments.push_back({begin, carriage ? at_ - 1 : at_});
        continue;
      }
      if (c == '[' || c == '{') ++depth;
      if (c == ']' || c == '}') --depth;
      ++at_;
    } while (depth > 0 && !atEnd());
    at_ = std::min(at_, text_.size());
  }

  std::string_view text_;
  std::size_t at_ = 0;
  std::vector<TomlStatement> statements_;
};

std::string escaped(char c) {
  switch (c) {
    case '"':
      return "\\\"";
    case '\\':
      return "\\\\";
    case '\n':
      return "\\n";
    case '\t':
      return "\\t";
    default:
      break;
  }
  constexpr std::string_view digits = "0123456789ABCDEF";
  const auto code = static_cast<unsigned char>(c);
  if (code >= 0x20 && code != 0x7F) return {c};
  return std::string{"\\u00"} + digits[code / 16] + digits[code % 16];
}

std::optional<toml::table> tableOf(std::string_view value) {
  try {
    return toml::parse("it = " + std::string{value});
  } catch (const toml::parse_error&) {
    return std::nullopt;
  }
}

}  // namespace

std::vector<TomlStatement> tomlStatements(std::string_view text) {
  return Scanner{text}.all();
}

TomlValue tomlText(std::string_view text) {
  TomlValue value;
  value.written = '"';
  for (const char c : text) value.written += escaped(c);
  value.written += '"';
  return value;
}

TomlValue tomlNumber(double number) {
  std::array<char, 32> digits{};
  const auto end =
      std::to_chars(digits.data(), digits.data() + digits.size(), number).ptr;
  TomlValue value;
  value.written.assign(digits.data(), end);
  return value;
}

TomlValue tomlList(const std::vector<TomlValue>& values) {
  TomlValue list;
  for (const TomlValue& value : values)
    list.written += (list.written.empty() ? "" : ", ") + inlineToml(value);
  list.written = '[' + list.written + ']';
  return list;
}

std::string inlineToml(const TomlValue& value) {
  if (!value.isTable()) return value.written;
  std::string text;
  for (const auto& [key, field] : value.fields)
    text += (text.empty() ? "{ " : ", ") + key + " = " + inlineToml(field);
  return text + " }";
}

bool sameToml(std::string_view one, std::string_view other) {
  const auto first = tableOf(one);
  const auto second = tableOf(other);
  return first && second && *first == *second;
}

}  // namespace topwire
