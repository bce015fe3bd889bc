#include "core/exchange/past_stages_reader.h"

#include "core/exchange/delimited_text.h"
#include "core/exchange/nearest.h"
#include "core/phenology/stage.h"

#include <algorithm>
#include <array>
#include <optional>

namespace topwire {

namespace {

constexpr std::size_t mostFaults = 100;

enum Column : std::size_t { cultivar, stage, date, year, dayInYear, columnCount };

struct HeadingName {
  const char* name;  ///< without blanks and the like, in lower case
  Column column;
};

constexpr std::array headingNames{HeadingName{"cultivar", cultivar},
                                  HeadingName{"variety", cultivar},
                                  HeadingName{"variedad", cultivar},
                                  HeadingName{"stage", stage},
                                  HeadingName{"bbch", stage},
                                  HeadingName{"etapa", stage},
                                  HeadingName{"estado", stage},
                                  HeadingName{"date", date},
                                  HeadingName{"day", date},
                                  HeadingName{"fecha", date},
                                  HeadingName{"year", year},
                                  HeadingName{"año", year},
                                  HeadingName{"dayofyear", dayInYear},
                                  HeadingName{"doy", dayInYear},
                                  HeadingName{"díadelaño", dayInYear}};

/// Lower case for A to Z, and without what may stand between the words of a heading.
std::string plain(std::string_view text) {
  std::string letters;
  for (const char c : text) {
    if (c == ' ' || c == '_' || c == '-' || c == '.') continue;
    letters += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  }
  return letters;
}

using Columns = std::array<std::optional<std::size_t>, columnCount>;

struct Layout {
  char separator = ',';
  Columns columns;

  bool has(Column column) const { return columns[column].has_value(); }

  bool complete() const {
    return has(cultivar) && has(stage) && (has(date) || (has(year) && has(dayInYear)));
  }
};

Layout layoutOf(std::string_view line, char separator) {
  std::vector<std::string_view> fields;
  splitFields(line, separator, fields);
  Layout layout{separator, {}};
  for (std::size_t i = 0; i < fields.size(); ++i) {
    const auto* known =
        std::ranges::find(headingNames, plain(fields[i]), &HeadingName::name);
    if (known == headingNames.end()) continue;
    auto& place = layout.columns[known->column];
    if (!place) place = i;
  }
  return layout;
}

std::optional<Layout> findLayout(std::string_view line) {
  for (const char separator : {',', ';', '\t'}) {
    const Layout layout = layoutOf(line, separator);
    if (layout.complete()) return layout;
  }
  return std::nullopt;
}

/// The stage by its code or its name in either language, capitals aside.
std::optional<int> stageFrom(std::string_view text) {
  if (const auto code = parseWhole(text)) return *code;
  const std::string name = plain(text);
  for (const Stage& one : allStages())
    if (plain(one.name.en) == name || plain(one.name.es) == name) return one.bbch;
  return std::nullopt;
}

Sentence noStage(const std::string& text) {
  std::vector<std::string> names;
  for (const Stage& one : allStages())
    names.insert(names.end(), {one.name.en, one.name.es});
  const std::string nearest = nearestName(text, names);
  if (nearest.empty())
    return {phrase("Past dates",
                   "There is no stage \"%1\"; write its BBCH code, such as 65, or its "
                   "name, such as \"full bloom\"."),
            {text}};
  return {phrase("Past dates", R"(There is no stage "%1"; write "%2".)"),
          {text, nearest}};
}

class PastStagesReading {
public:
  PastStagesReading(const Layout& layout, const std::string& file, IdSource& ids)
      : layout_(layout), file_(file), ids_(&ids) {}

  void read(std::string_view line, std::size_t number);

  bool isHopeless() const { return problems_.size() >= mostFaults; }

  Checked<std::vector<PlacedPastStage>> take() &&;

private:
  /// Empty where the line is too short, or the table has no such column.
  std::string field(Column column) const;
  void readStage(PastStage& past);
  void readDay(PastStage& past);
  void readDayInYear(PastStage& past);
  void fault(Sentence sentence);

  Layout layout_;
  std::string file_;
  IdSource* ids_;
  std::string place_;
  std::vector<std::string_view> fields_;
  std::vector<PlacedPastStage> dates_;
  Problems problems_;
};

void PastStagesReading::fault(Sentence sentence) {
  problems_.push_back({std::move(sentence), place_, {}});
}

std::string PastStagesReading::field(Column column) const {
  const auto at = layout_.columns[column];
  return at && *at < fields_.size() ? undoubled(fields_[*at]) : std::string{};
}

void PastStagesReading::read(std::string_view line, std::size_t number) {
  splitFields(line, layout_.separator, fields_);
  if (std::ranges::all_of(fields_, &std::string_view::empty)) return;
  place_ = file_ + ':' + std::to_string(number);
  PlacedPastStage placed;
  placed.place = place_;
  placed.past.id = ids_->next<PastStageId>();
  placed.past.cultivar = field(cultivar);
  if (placed.past.cultivar.empty())
    fault(phrase("Past dates", "This line names no cultivar."));
  readStage(placed.past);
  if (layout_.has(date))
    readDay(placed.past);
  else
    readDayInYear(placed.past);
  dates_.push_back(std::move(placed));
}

void PastStagesReading::readStage(PastStage& past) {
  const std::string text = field(stage);
  if (const auto code = stageFrom(text))
    past.bbch = *code;
  else
    fault(noStage(excerpt(text)));
}

void PastStagesReading::readDay(PastStage& past) {
  const std::string text = field(date);
  if (const auto day = parseDay(text))
    past.day = *day;
  else
    fault({phrase("Past dates",
                  "\"%1\" is no day of the calendar; write it like 2019-05-02."),
           {excerpt(text)}});
}

void PastStagesReading::readDayInYear(PastStage& past) {
  const auto inYear = parseWhole(field(year));
  if (!inYear || *inYear < 1 || *inYear > 9999)
    return fault({phrase("Past dates", "\"%1\" is no year; write it like 2019."),
                  {excerpt(field(year))}});
  const auto number = parseWhole(field(dayInYear));
  const Day first = dayOf(*inYear, 1, 1);
  if (!number || *number < 1 || *number > dayOfYear(dayOf(*inYear, 12, 31)))
    return fault({phrase("Past dates",
                         "\"%1\" is no day of the year %2; write its number, counted "
                         "from 1 January as 1."),
                  {excerpt(field(dayInYear)), std::int64_t{*inYear}}});
  past.day = plusDays(first, *number - 1);
}

Checked<std::vector<PlacedPastStage>> PastStagesReading::take() && {
  if (!problems_.empty()) return tl::unexpected{std::move(problems_)};
  return std::move(dates_);
}

}  // namespace

Checked<std::vector<PlacedPastStage>> readPastStages(std::string_view text,
                                                     const std::string& file,
                                                     IdSource& ids) {
  TextLines lines{withoutByteOrderMark(text)};
  const auto head = lines.next();
  const auto layout = head ? findLayout(*head) : std::nullopt;
  if (!layout)
    return tl::unexpected{Problems{
        {Sentence{phrase("Past dates",
                         "The first line must name the columns: cultivar, stage, and "
                         "date, or year and day of year in its place.")},
         file + ":1",
         {}}}};
  PastStagesReading reading{*layout, file, ids};
  while (const auto line = lines.next()) {
    reading.read(*line, lines.number());
    if (reading.isHopeless()) break;
  }
  return std::move(reading).take();
}

}  // namespace topwire
