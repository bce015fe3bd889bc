#include "storage/column_values.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <limits>
#include <string_view>

namespace topwire {

namespace {

/// Words by the enumerators' places.
constexpr std::array unitWords{"metric", "us"};
constexpr std::array kindWords{"main", "pollinizer", "replant"};
constexpr std::array vigourWords{"weak", "moderate", "strong"};
constexpr std::array sourceWords{"forecast", "typed", "measured"};
constexpr std::array pinWords{"crew to job", "not before"};
constexpr std::array measureWords{"trunk diameter",
                                  "trunk girth",
                                  "leader height",
                                  "leader growth",
                                  "shoot growth",
                                  "fruit per tree",
                                  "space filled",
                                  "missing trees"};

constexpr std::string_view between = " to ";
constexpr std::size_t dayLength = 10;
constexpr std::size_t spanLength = 2 * dayLength + between.size();

template <class Enum, class Words>
void bindWord(Statement& statement, int parameter, Enum value, const Words& words) {
  statement.bind(parameter, std::string_view{words[static_cast<std::size_t>(value)]});
}

template <class Enum, class Words>
void readWord(const Statement& statement, int column, Enum& value, const Words& words) {
  const std::string text = statement.text(column);
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (text != words[i]) continue;
    value = static_cast<Enum>(i);
    return;
  }
  throw UnreadableValue{text};
}

}  // namespace

void bindValue(Statement& statement, int parameter, const std::string& text) {
  statement.bind(parameter, text);
}

void bindValue(Statement& statement, int parameter, int number) {
  statement.bind(parameter, std::int64_t{number});
}

void bindValue(Statement& statement, int parameter, bool truth) {
  statement.bind(parameter, std::int64_t{truth ? 1 : 0});
}

void bindValue(Statement& statement, int parameter, double number) {
  statement.bind(parameter, number);
}

void bindValue(Statement& statement, int parameter, Day day) {
  statement.bind(parameter, isoText(day));
}

void bindValue(Statement& statement, int parameter, Length length) {
  statement.bind(parameter, length.inMicrometres());
}

void bindValue(Statement& statement, int parameter, const RowSet& rows) {
  statement.bind(parameter, rowsText(rows));
}

void bindValue(Statement& statement, int parameter, UnitSystem units) {
  bindWord(statement, parameter, units, unitWords);
}

void bindValue(Statement& statement, int parameter, PlantingKind kind) {
  bindWord(statement, parameter, kind, kindWords);
}

void bindValue(Statement& statement, int parameter, Vigour vigour) {
  bindWord(statement, parameter, vigour, vigourWords);
}

void bindValue(Statement& statement, int parameter, WeatherSource source) {
  bindWord(statement, parameter, source, sourceWords);
}

void bindValue(Statement& statement, int parameter, Measure measure) {
  bindWord(statement, parameter, measure, measureWords);
}

void bindValue(Statement& statement,
               int parameter,
               const std::vector<std::int64_t>& list) {
  std::string text;
  for (const std::int64_t number : list)
    text += (text.empty() ? "" : ", ") + std::to_string(number);
  statement.bind(parameter, text);
}

void bindValue(Statement& statement, int parameter, const std::vector<Length>& list) {
  std::vector<std::int64_t> numbers;
  for (const Length length : list) numbers.push_back(length.inMicrometres());
  bindValue(statement, parameter, numbers);
}

void bindValue(Statement& statement, int parameter, PinKind kind) {
  bindWord(statement, parameter, kind, pinWords);
}

void bindValue(Statement& statement,
               int parameter,
               const std::vector<std::string>& names) {
  std::string text;
  for (const std::string& name : names) text += name + '\n';
  statement.bind(parameter, text);
}

void bindValue(Statement& statement, int parameter, const std::vector<DaySpan>& spans) {
  std::string text;
  for (const DaySpan& span : spans)
    text += (text.empty() ? "" : ", ") + isoText(span.first) + std::string{between}
            + isoText(span.last);
  statement.bind(parameter, text);
}

void bindValue(Statement& statement, int parameter, const std::array<bool, 7>& weekdays) {
  std::string text;
  for (const bool worked : weekdays) text += worked ? '1' : '0';
  statement.bind(parameter, text);
}

void readValue(const Statement& statement, int column, std::string& text) {
  text = statement.text(column);
}

void readValue(const Statement& statement, int column, int& number) {
  const std::int64_t held = statement.number(column);
  if (held < std::numeric_limits<int>::min() || held > std::numeric_limits<int>::max())
    throw UnreadableValue{statement.text(column)};
  number = static_cast<int>(held);
}

void readValue(const Statement& statement, int column, bool& truth) {
  truth = statement.number(column) != 0;
}

void readValue(const Statement& statement, int column, double& number) {
  number = statement.real(column);
}

void readValue(const Statement& statement, int column, Day& day) {
  const auto parsed = parseDay(statement.text(column));
  if (!parsed) throw UnreadableValue{statement.text(column)};
  day = *parsed;
}

void readValue(const Statement& statement, int column, Length& length) {
  length = Length::micrometres(statement.number(column));
}

void readValue(const Statement& statement, int column, RowSet& rows) {
  ParsedRows parsed = parseRows(statement.text(column));
  if (parsed.fault) throw UnreadableValue{statement.text(column)};
  rows = std::move(parsed.rows);
}

void readValue(const Statement& statement, int column, UnitSystem& units) {
  readWord(statement, column, units, unitWords);
}

void readValue(const Statement& statement, int column, PlantingKind& kind) {
  readWord(statement, column, kind, kindWords);
}

void readValue(const Statement& statement, int column, Vigour& vigour) {
  readWord(statement, column, vigour, vigourWords);
}

void readValue(const Statement& statement, int column, WeatherSource& source) {
  readWord(statement, column, source, sourceWords);
}

void readValue(const Statement& statement, int column, Measure& measure) {
  readWord(statement, column, measure, measureWords);
}

void readValue(const Statement& statement, int column, std::vector<std::int64_t>& list) {
  list.clear();
  const std::string text = statement.text(column);
  const char* const end = text.data() + text.size();
  for (const char* at = text.data(); at != end;) {
    const auto [stop, fault] = std::from_chars(at, end, list.emplace_back());
    const bool goesOn = end - stop > 2 && stop[0] == ',' && stop[1] == ' ';
    if (fault != std::errc{} || (stop != end && !goesOn)) throw UnreadableValue{text};
    at = goesOn ? stop + 2 : end;
  }
}

void readValue(const Statement& statement, int column, std::vector<Length>& list) {
  std::vector<std::int64_t> numbers;
  readValue(statement, column, numbers);
  list.clear();
  for (const std::int64_t number : numbers) list.push_back(Length::micrometres(number));
}

void readValue(const Statement& statement, int column, PinKind& kind) {
  readWord(statement, column, kind, pinWords);
}

void readValue(const Statement& statement, int column, std::vector<std::string>& names) {
  names.clear();
  const std::string text = statement.text(column);
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = text.find('\n', at);
    if (end == std::string::npos) throw UnreadableValue{text};
    names.push_back(text.substr(at, end - at));
    at = end + 1;
  }
}

void readValue(const Statement& statement, int column, std::vector<DaySpan>& spans) {
  spans.clear();
  const std::string text = statement.text(column);
  constexpr std::string_view comma = ", ";
  for (std::size_t at = 0; at < text.size(); at += spanLength + comma.size()) {
    const auto part = std::string_view{text}.substr(at);
    const auto first = parseDay(part.substr(0, dayLength));
    const bool joined =
        part.substr(std::min(dayLength, part.size())).starts_with(between);
    const auto last = joined
                          ? parseDay(part.substr(dayLength + between.size(), dayLength))
                          : std::nullopt;
    const bool ends = part.size() == spanLength
                      || (part.size() > spanLength + comma.size()
                          && part.substr(spanLength).starts_with(comma));
    if (!first || !last || !ends) throw UnreadableValue{text};
    spans.push_back({*first, *last});
  }
}

void readValue(const Statement& statement, int column, std::array<bool, 7>& weekdays) {
  const std::string text = statement.text(column);
  const bool known = text.find_first_not_of("01") == std::string::npos;
  if (text.size() != weekdays.size() || !known) throw UnreadableValue{text};
  for (std::size_t i = 0; i < weekdays.size(); ++i) weekdays.at(i) = text[i] == '1';
}

}  // namespace topwire
