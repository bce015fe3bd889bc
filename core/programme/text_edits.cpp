#include "core/programme/text_edits.h"

#include "core/programme/operation_text.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <utility>

namespace topwire {

namespace {

using Kind = TomlStatement::Kind;

constexpr std::string_view operationHeader = "operation";

bool opensOperation(const TomlStatement& statement) {
  return statement.kind == Kind::tableOfList
         && statement.path == TomlPath{std::string{operationHeader}};
}

SectionField fieldFrom(const TomlStatement& statement) {
  return {statement.path, statement.lines, statement.value, statement.comments};
}

/// "name.en" of the path {"name", "en"}.
std::string dotted(const TomlPath& path) {
  std::string text;
  for (const std::string& key : path) text += (text.empty() ? "" : ".") + key;
  return text;
}

/// The scalars and lists below a value, each with its path from there.
void addLeaves(const TomlValue& value,
               const TomlPath& path,
               std::vector<std::pair<TomlPath, const TomlValue*>>& leaves) {
  if (!value.isTable()) return leaves.emplace_back(path, &value), void();
  for (const auto& [key, inner] : value.fields) {
    TomlPath longer = path;
    longer.push_back(key);
    addLeaves(inner, longer, leaves);
  }
}

const TomlValue* valueAt(const TomlValue& value, const TomlPath& path, std::size_t from) {
  const TomlValue* at = &value;
  for (std::size_t i = from; i < path.size(); ++i) {
    const auto found = std::ranges::find_if(
        at->fields, [&](const auto& entry) { return entry.first == path[i]; });
    if (found == at->fields.end()) return nullptr;
    at = &found->second;
  }
  return at;
}

bool beginsWith(const TomlPath& path, const TomlPath& start) {
  return start.size() <= path.size()
         && std::equal(start.begin(), start.end(), path.begin());
}

/// Sets one field of one section.
class FieldSetter {
public:
  FieldSetter(TextEdits& edits, const TextSection& section, const std::string& field)
      : edits_(edits), section_(section), field_(field) {
    for (const SectionField& there : section.fields)
      if (there.path.front() == field) existing_.push_back(&there);
  }

  void set(const TomlValue& value) {
    dropBelow();
    for (const SectionField* there : existing_) keepOrDrop(*there, value);
    addMissing(value);
  }

  void remove() {
    dropBelow();
    for (const SectionField* there : existing_) edits_.remove(there->lines);
  }

private:
  /// Tables with headers of their own are written anew among the other lines.
  void dropBelow() {
    for (const SubSection& below : section_.below)
      if (below.field == field_) edits_.remove(below.lines);
  }

  void keepOrDrop(const SectionField& there, const TomlValue& value) {
    const TomlValue* wanted = valueAt(value, there.path, 1);
    if (wanted == nullptr) {
      firstDropped_ = firstDropped_.value_or(there.lines.begin);
      edits_.remove(there.lines);
      return;
    }
    covered_.push_back(there.path);
    lastKept_ = there.lines.end;
    const std::string written = inlineToml(*wanted);
    if (sameToml(there.value.in(edits_.text()), written)) return;
    for (const TextSpan comment : there.comments)
      edits_.insertLine(there.lines.begin,
                        indentOf(there.lines) + std::string{comment.in(edits_.text())});
    edits_.replace(there.value, written);
  }

  void addMissing(const TomlValue& value) {
    std::vector<std::pair<TomlPath, const TomlValue*>> lines;
    if (covered_.empty() && !value.spread)
      lines.emplace_back(TomlPath{field_}, &value);
    else
      addLeaves(value, {field_}, lines);
    std::erase_if(lines, [this](const auto& line) {
      return std::ranges::any_of(
          covered_, [&](const TomlPath& path) { return beginsWith(line.first, path); });
    });
    const std::size_t at = placeForNew();
    for (const auto& [path, leaf] : lines)
      edits_.insertLine(at, indent() + dotted(path) + " = " + inlineToml(*leaf));
  }

  std::size_t placeForNew() const {
    if (lastKept_) return *lastKept_;
    if (firstDropped_) return *firstDropped_;
    const std::size_t rank = rankOf(field_);
    std::size_t at = section_.header.end;
    std::size_t best = 0;
    for (const SectionField& other : section_.fields) {
      const std::size_t otherRank = rankOf(other.path.front());
      if (otherRank >= rank || otherRank < best) continue;
      best = otherRank;
      at = other.lines.end;
    }
    return at;
  }

  std::string indentOf(TextSpan lines) const {
    const std::string_view text = lines.in(edits_.text());
    return std::string{text.substr(0, text.find_first_not_of(" \t"))};
  }

  std::string indent() const {
    return section_.fields.empty() ? std::string{}
                                   : indentOf(section_.fields.front().lines);
  }

  TextEdits& edits_;
  const TextSection& section_;
  const std::string& field_;
  std::vector<const SectionField*> existing_;
  std::vector<TomlPath> covered_;
  std::optional<std::size_t> firstDropped_;
  std::optional<std::size_t> lastKept_;
};

}  // namespace

std::size_t TextSection::end() const {
  std::size_t last = header.end;
  for (const SectionField& field : fields) last = std::max(last, field.lines.end);
  for (const SubSection& sub : below) last = std::max(last, sub.lines.end);
  return last;
}

std::vector<TextSection> sectionsOf(std::string_view text) {
  std::vector<TextSection> sections(1);
  bool inSub = false;
  for (const TomlStatement& statement : tomlStatements(text)) {
    if (opensOperation(statement)) {
      sections.push_back({statement.lines, {}, {}});
      inSub = false;
    } else if (statement.isHeader()) {
      inSub = true;
      const bool ofOperation =
          statement.path.size() > 1 && statement.path.front() == operationHeader;
      sections.back().below.push_back(
          {ofOperation ? statement.path[1] : std::string{}, statement.lines});
    } else if (inSub) {
      sections.back().below.back().lines.end = statement.lines.end;
    } else {
      sections.back().fields.push_back(fieldFrom(statement));
    }
  }
  return sections;
}

TextEdits::TextEdits(std::string_view text)
    : text_(text)
    , lineBreak_(text.find("\r\n") == std::string_view::npos ? "\n" : "\r\n") {}

void TextEdits::replace(TextSpan span, std::string with) {
  replacements_.push_back({span, std::move(with)});
}

void TextEdits::insertLine(std::size_t at, const std::string& line) {
  const bool onOpenLine = at > 0 && text_[at - 1] != '\n';
  replace({at, at}, onOpenLine ? lineBreak_ + line : line + lineBreak_);
}

std::string TextEdits::applied() && {
  std::ranges::stable_sort(replacements_, {}, [](const Replacement& one) {
    return std::pair{one.span.begin, one.span.end};
  });
  std::string result;
  std::size_t at = 0;
  for (const Replacement& one : replacements_) {
    result += text_.substr(at, one.span.begin - at);
    result += one.with;
    at = one.span.end;
  }
  return result.append(text_.substr(at));
}

void setField(TextEdits& edits,
              const TextSection& section,
              const std::string& field,
              const std::optional<TomlValue>& value) {
  FieldSetter setter{edits, section, field};
  if (value)
    setter.set(*value);
  else
    setter.remove();
}

}  // namespace topwire
