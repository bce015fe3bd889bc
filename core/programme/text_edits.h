#pragma once

#include "core/programme/toml_text.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace topwire {

/// One assignment of a section, under the path it has there.
struct SectionField {
  TomlPath path;
  TextSpan lines;
  TextSpan value;
  std::vector<TextSpan> comments;
};

/// A table below the section with a header of its own: [operation.cut-off].
struct SubSection {
  std::string field;
  TextSpan lines;
};

/// The head of a programme's text, or one operation.
struct TextSection {
  TextSpan header;  ///< its lines; empty at the text's begin for the head
  std::vector<SectionField> fields;
  std::vector<SubSection> below;

  /// Past the last line that belongs to it; comments behind that belong to what follows.
  std::size_t end() const;
};

/// The head first, then each [[operation]].
std::vector<TextSection> sectionsOf(std::string_view text);

/// Replacements in one text, gathered against the text as it was.
class TextEdits {
public:
  explicit TextEdits(std::string_view text);

  void replace(TextSpan span, std::string with);

  void remove(TextSpan span) { replace(span, {}); }

  /// `line` without its break, put before the line that begins there.
  void insertLine(std::size_t at, const std::string& line);

  const std::string& lineBreak() const { return lineBreak_; }

  std::string_view text() const { return text_; }

  std::string applied() &&;

private:
  struct Replacement {
    TextSpan span;
    std::string with;
  };

  std::string_view text_;
  std::string lineBreak_;
  std::vector<Replacement> replacements_;
};

/// Makes a field of the section have the value, or takes it out. What is there keeps its
/// shape: a value on one line stays on one, dotted keys stay dotted. A new field goes
/// where operations usually have it.
void setField(TextEdits& edits,
              const TextSection& section,
              const std::string& field,
              const std::optional<TomlValue>& value);

}  // namespace topwire
