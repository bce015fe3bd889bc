#include "core/edit/deed_checks.h"

#include "core/planning/progress.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr std::size_t longestName = 120;
constexpr std::size_t longestNotes = 4000;

unsigned char byteAt(std::string_view text, std::size_t at) {
  return static_cast<unsigned char>(text[at]);
}

/// Length of the UTF-8 sequence that starts here; 0 where there is none. Overlong forms
/// and surrogates are left to SQLite and Qt, which both take them without harm.
std::size_t sequenceAt(std::string_view text, std::size_t at) {
  const unsigned char lead = byteAt(text, at);
  std::size_t length = 1;
  if (lead >= 0x80 && lead < 0xC2) return 0;
  if (lead >= 0xF5) return 0;
  if (lead >= 0xC2) length = lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
  if (at + length > text.size()) return 0;
  for (std::size_t i = 1; i < length; ++i)
    if ((byteAt(text, at + i) & 0xC0) != 0x80) return 0;
  return length;
}

bool isUtf8(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = sequenceAt(text, at);
    if (length == 0) return false;
    at += length;
  }
  return true;
}

bool isControl(char c) {
  return (c >= 0 && c < ' ') || c == '\x7f';
}

void checkReadable(Faults& faults,
                   const std::string& place,
                   std::string_view text,
                   std::size_t longest) {
  if (!isUtf8(text))
    faults.add(
        place,
        phrase("Deed", "This text is not in UTF-8, so its letters can't be read."));
  else if (text.size() > longest)
    faults.add(place,
               phrase("Deed", "This text is too long; keep it under %1 letters."),
               {static_cast<std::int64_t>(longest)});
}

/// The months of a season (as north of the equator) in which a stage may plausibly be
/// seen, first to last; common practice, wide enough for warm-winter districts.
struct Months {
  unsigned first;
  unsigned last;
};

Months plausibleMonths(int bbch) {
  if (bbch <= stages::petalFall) return {1, 7};
  if (bbch < stages::harvest) return {2, 8};
  if (bbch < stages::leafFall) return {5, 12};
  return {8, 12};
}

DaySpan plausibleDays(int bbch, Season season, Hemisphere hemisphere) {
  const Months months = plausibleMonths(bbch);
  return {localSeasonDay(season, hemisphere, months.first, 1),
          localSeasonDay(season, hemisphere, months.last, 31)};
}

}  // namespace

Checked<Change> Faults::orElse(Change change) && {
  if (any()) return std::move(*this).asRefusal();
  return change;
}

Checked<Change> refusal(std::string place, Phrase phrase, std::vector<Value> values) {
  Faults faults;
  faults.add(std::move(place), phrase, std::move(values));
  return std::move(faults).asRefusal();
}

std::string withoutBlanks(std::string_view text) {
  const auto first = text.find_first_not_of(" \t\r\n");
  if (first == std::string_view::npos) return {};
  return std::string{text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1)};
}

std::string folded(std::string_view text) {
  std::string lower{text};
  for (std::size_t i = 0; i < lower.size(); ++i) {
    const unsigned char c = byteAt(lower, i);
    const bool accented = i > 0 && byteAt(lower, i - 1) == 0xC3 && c >= 0x80 && c <= 0x9E
                          && c != 0x97;  // the multiplication sign
    if ((c >= 'A' && c <= 'Z') || accented) lower[i] = static_cast<char>(c + 0x20);
  }
  return lower;
}

void checkText(Faults& faults, const std::string& place, std::string_view text) {
  checkReadable(faults, place, text, longestName);
  if (std::ranges::any_of(text, isControl))
    faults.add(place,
               phrase("Deed", "Keep this on one line, without control characters."));
}

void checkName(Faults& faults, const std::string& place, std::string_view text) {
  if (withoutBlanks(text).empty())
    faults.add(place, phrase("Deed", "A name is missing here; type one."));
  else
    checkText(faults, place, text);
}

void checkNotes(Faults& faults, const std::string& place, std::string_view text) {
  checkReadable(faults, place, text, longestNotes);
}

void checkElevation(Faults& faults, const std::string& place, Length elevation) {
  if (elevation < Length::metres(-430) || elevation > Length::metres(5000))
    faults.add(place,
               phrase("Deed", "An elevation lies between -430 m and 5,000 m; check it."));
}

void checkLikelyDay(Faults& faults, const std::string& place, Day day) {
  if (yearOf(day) < 1900 || yearOf(day) > 2200)
    faults.add(place,
               phrase("Deed", "%1 lies outside the years 1900 to 2200; check the day."),
               {day});
}

void checkSeasonOf(Faults& faults, const Orchard& orchard, const Stage& stage, Day day) {
  const Hemisphere hemisphere = orchard.settings.hemisphere();
  const DaySpan span = plausibleDays(stage.bbch, seasonOf(day, hemisphere), hemisphere);
  if (!span.contains(day))
    faults.add("day",
               phrase("Deed",
                      "%1 is not seen on %2; it falls between %3 and %4. Check the day."),
               {stage.name, day, span.first, span.last});
}

void addUnknownStage(Faults& faults, const std::string& place, int bbch) {
  faults.add(place,
             phrase("Deed",
                    "BBCH %1 is not a stage that is followed here; choose one from the "
                    "list."),
             {std::int64_t{bbch}});
}

std::string calledName(const Orchard& orchard, const Planting& planting) {
  const Block* block = lookUp(orchard.blocks, planting.block);
  return block ? block->name + ": " + planting.cultivar : planting.code;
}

bool hasTicks(const Orchard& orchard, PlantingId planting) {
  return std::ranges::any_of(orchard.ticks, [planting](const auto& item) {
    return item.second.task.planting == planting;
  });
}

RowSet tickedRows(const Orchard& orchard, PlantingId planting) {
  RowSet rows;
  for (const Tick* tick : standingTicks(orchard))
    if (!tick->takesBack && tick->task.planting == planting) rows = rows.with(tick->rows);
  return rows;
}

void checkRowsWithin(
    Faults& faults, const RowSet& rows, const RowSet& allowed, Phrase one, Phrase many) {
  const RowSet outside = rows.without(allowed);
  if (outside.empty()) return;
  faults.add("rows",
             counted(outside.count(), one, many),
             {rowsText(outside), rowsText(allowed)});
}

}  // namespace topwire
