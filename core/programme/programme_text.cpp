#include "core/programme/programme_text.h"

#include "core/programme/operation_text.h"
#include "core/programme/programme_reader.h"
#include "core/programme/text_edits.h"

#include <algorithm>
#include <charconv>

namespace topwire {

namespace {

Problem cannotWrite(const Programme& programme) {
  return {Sentence{phrase("Programme",
                          "This can't be written into the text of %1 without touching "
                          "other fields; change it in the text by hand."),
                   {programme.name}},
          {},
          {}};
}

Problem notThere(const Programme& programme, const std::string& operation) {
  return {Sentence{phrase("Programme", "There is no operation %1 in %2; choose another."),
                   {operation, programme.name}},
          {},
          {}};
}

/// The line of "file:12".
int lineOf(const std::string& place) {
  const auto colon = place.rfind(':');
  if (colon == std::string::npos) return 0;
  int line = 0;
  std::from_chars(place.data() + colon + 1, place.data() + place.size(), line);
  return line;
}

/// Faults of the edited operation are placed at their fields.
Problems placed(Problems problems, std::string_view text, const std::string& operation) {
  for (Problem& problem : problems) {
    const ProgrammePlace place = programmePlace(text, lineOf(problem.place));
    if (place.operation == operation && !place.field.empty()) problem.place = place.field;
  }
  return problems;
}

/// The edited text, where it reads and then says what `asWanted` holds it against.
template <class AsWanted>
Checked<std::string> readAgain(std::string text,
                               const Programme& before,
                               const std::string& operation,
                               AsWanted asWanted) {
  auto read = readProgramme(text, before.id);
  if (!read) return tl::unexpected{placed(std::move(read.error()), text, operation)};
  if (asWanted(*read)) return text;
  return tl::unexpected{Problems{cannotWrite(before)}};
}

bool anything(const Programme&) {
  return true;
}

/// A text that reads, taken apart.
struct OpenText {
  std::string_view text;
  Programme programme;
  std::vector<TextSection> sections;

  /// Nothing where there is none, or where the text gives it in a way that can't be
  /// edited: operations in braces.
  const TextSection* sectionOf(const std::string& operation) const {
    const auto found = std::ranges::find(programme.operations, operation, &Operation::id);
    const auto at = static_cast<std::size_t>(found - programme.operations.begin()) + 1;
    const bool oneEach = sections.size() == programme.operations.size() + 1;
    return oneEach && at < sections.size() ? &sections[at] : nullptr;
  }

  tl::unexpected<Problems> noSection(const std::string& operation) const {
    return tl::unexpected{Problems{programme.find(operation) == nullptr
                                       ? notThere(programme, operation)
                                       : cannotWrite(programme)}};
  }
};

Checked<OpenText> opened(std::string_view text) {
  auto programme = readProgramme(text, "");
  if (!programme) return tl::unexpected{std::move(programme.error())};
  return OpenText{text, std::move(*programme), sectionsOf(text)};
}

bool sameProgramme(const Programme& one, const Programme& other) {
  return one.id == other.id && one.name == other.name && one.summary == other.summary
         && std::ranges::equal(one.operations, other.operations, sameOperation);
}

std::string inLines(const OperationField& field) {
  return field.value ? inlineToml(*field.value) : std::string{};
}

void setDiffering(TextEdits& edits,
                  const TextSection& section,
                  const Operation& before,
                  const Operation& edited) {
  const auto was = fieldsOf(before);
  const auto wanted = fieldsOf(edited);
  for (std::size_t i = 0; i < wanted.size(); ++i)
    if (inLines(was[i]) != inLines(wanted[i]))
      setField(edits, section, wanted[i].key, wanted[i].value);
}

/// Where the comment lines right above a header begin.
std::size_t withCommentsAbove(std::string_view text, std::size_t header) {
  std::size_t begin = header;
  while (begin > 0) {
    const auto previous =
        begin < 2 ? std::string_view::npos : text.rfind('\n', begin - 2);
    const std::size_t line = previous == std::string_view::npos ? 0 : previous + 1;
    const auto first = text.find_first_not_of(" \t", line);
    if (first >= begin || text[first] != '#') break;
    begin = line;
  }
  return begin;
}

std::size_t pastBlankLines(std::string_view text, std::size_t from) {
  std::size_t end = from;
  while (end < text.size()) {
    const auto next = text.find('\n', end);
    const auto line = text.substr(end, next - end);
    if (line.find_first_not_of(" \t\r") != std::string_view::npos) break;
    end = next == std::string_view::npos ? text.size() : next + 1;
  }
  return end;
}

}  // namespace

Checked<std::string> copyOf(std::string_view text,
                            const std::string& id,
                            const Words& name) {
  const auto open = opened(text);
  if (!open) return tl::unexpected{open.error()};
  TextEdits edits{text};
  setField(edits, open->sections.front(), "id", tomlText(id));
  setField(edits, open->sections.front(), "name", tomlWords(name));
  Programme wanted = open->programme;
  wanted.id = id;
  wanted.name = name;
  return readAgain(
      std::move(edits).applied(), wanted, {}, [&wanted](const Programme& read) {
        return sameProgramme(read, wanted);
      });
}

Checked<std::string> withField(std::string_view text,
                               const std::string& operation,
                               const std::string& field,
                               const std::optional<TomlValue>& value) {
  const auto open = opened(text);
  if (!open) return tl::unexpected{open.error()};
  const TextSection* section = open->sectionOf(operation);
  if (section == nullptr) return open->noSection(operation);
  TextEdits edits{text};
  setField(edits, *section, field, value);
  return readAgain(std::move(edits).applied(), open->programme, operation, anything);
}

Checked<std::string> withOperation(std::string_view text, const Operation& edited) {
  auto open = opened(text);
  if (!open) return tl::unexpected{open.error()};
  const TextSection* section = open->sectionOf(edited.id);
  if (section == nullptr) return open->noSection(edited.id);
  const auto held =
      std::ranges::find(open->programme.operations, edited.id, &Operation::id);
  TextEdits edits{text};
  setDiffering(edits, *section, *held, edited);
  *held = edited;
  return readAgain(
      std::move(edits).applied(),
      open->programme,
      edited.id,
      [&open](const Programme& read) { return sameProgramme(read, open->programme); });
}

Checked<std::string> withCopiedOperation(std::string_view text,
                                         const std::string& from,
                                         const std::string& id,
                                         const Words& name) {
  const auto open = opened(text);
  if (!open) return tl::unexpected{open.error()};
  const TextSection* section = open->sectionOf(from);
  if (section == nullptr) return open->noSection(from);
  const Operation* original = open->programme.find(from);
  const std::size_t end = section->end();
  const std::string body{TextSpan{section->header.begin, end}.in(text)};
  TextEdits copies{body};
  const TextSection copied = sectionsOf(body).at(1);
  setField(copies, copied, "id", tomlText(id));
  setField(copies, copied, "name", tomlWords(name));
  setField(copies, copied, "short", std::nullopt);
  setField(copies, copied, "drawing", tomlText(original->drawing));
  TextEdits edits{text};
  const bool openLine = end > 0 && text[end - 1] != '\n';
  edits.replace({end, end},
                (openLine ? edits.lineBreak() : "") + edits.lineBreak()
                    + std::move(copies).applied());
  return readAgain(std::move(edits).applied(), open->programme, id, anything);
}

Checked<std::string> withoutOperation(std::string_view text,
                                      const std::string& operation) {
  const auto open = opened(text);
  if (!open) return tl::unexpected{open.error()};
  const TextSection* section = open->sectionOf(operation);
  if (section == nullptr) return open->noSection(operation);
  TextEdits edits{text};
  edits.remove({withCommentsAbove(text, section->header.begin),
                pastBlankLines(text, section->end())});
  return readAgain(std::move(edits).applied(), open->programme, {}, anything);
}

ProgrammePlace programmePlace(std::string_view text, int line) {
  std::size_t at = 0;
  for (int i = 1; i < line && at != std::string_view::npos; ++i) {
    const auto next = text.find('\n', at);
    at = next == std::string_view::npos ? next : next + 1;
  }
  if (at == std::string_view::npos || line < 1) return {};
  const auto holds = [at](TextSpan span) { return span.begin <= at && at < span.end; };
  for (const TextSection& section : sectionsOf(text)) {
    ProgrammePlace place;
    for (const SectionField& field : section.fields) {
      if (field.path == TomlPath{"id"} && !section.header.empty())
        place.operation = std::string{field.value.in(text)};
      if (holds(field.lines)) place.field = field.path.front();
    }
    for (const SubSection& below : section.below)
      if (holds(below.lines)) place.field = below.field;
    if (place.operation.size() > 1)
      place.operation = place.operation.substr(1, place.operation.size() - 2);
    if (!place.field.empty() || holds({section.header.begin, section.end()}))
      return place;
  }
  return {};
}

}  // namespace topwire
