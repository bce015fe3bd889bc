#include "core/weather/table_reader.h"

#include "core/exchange/delimited_text.h"
#include "core/weather/weather_dates.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>
#include <vector>

namespace topwire {

namespace {

constexpr double missing = -9999;
constexpr std::size_t longestWord = 16;

/// Lower case where short enough to be one of the words below; else nothing.
std::string lowerWord(std::string_view text) {
  if (text.size() > longestWord) return {};
  std::string lower{text};
  for (char& c : lower)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return lower;
}

bool isOneOf(std::string_view text, std::initializer_list<std::string_view> words) {
  return std::ranges::find(words, lowerWord(text)) != words.end();
}

bool saysNothing(std::string_view text) {
  return text.empty()
         || isOneOf(text,
                    {"-", "--", ".", "na", "n/a", "nan", "null", "none", "m", "s/d"});
}

bool isTrace(std::string_view text) {
  return isOneOf(text, {"t", "trace", "traza", "trazas"});
}

/// Whether a mark says forecast; nothing where it is not understood. "Sí" in UTF-8 and in
/// Latin-1.
std::optional<bool> isForecastMark(std::string_view mark) {
  if (isOneOf(mark,
              {"yes",
               "y",
               "true",
               "1",
               "x",
               "f",
               "forecast",
               "si",
               "s\xc3\xad",
               "s\xed",
               "s",
               "verdadero",
               "pronostico",
               "pron\xc3\xb3stico",
               "pron\xf3stico"}))
    return true;
  if (mark.empty()
      || isOneOf(
          mark,
          {"no", "n", "false", "0", "-", "measured", "observed", "falso", "medido"}))
    return false;
  return std::nullopt;
}

/// The second of "measurement,quality,source"; blank where the value passed.
char qualityFlag(std::string_view attributes) {
  const std::size_t comma = attributes.find(',');
  if (comma == std::string_view::npos) return ' ';
  const std::string_view rest = attributes.substr(comma + 1);
  const std::string_view flag = trimmed(rest.substr(0, rest.find(',')));
  return flag.empty() ? ' ' : flag.front();
}

/// The rows under the headings, without blank ones and remarks.
class Rows {
public:
  Rows(std::string_view text, const TableColumns& columns)
      : lines_(text), columns_(&columns) {
    while (lines_.number() < columns.headerLine && lines_.next()) {
    }
  }

  bool next() {
    while (const auto line = lines_.next()) {
      if (isEmpty(*line) || line->starts_with('#')) continue;
      splitFields(*line, columns_->separator, fields_);
      // Files put one behind the other repeat their headings.
      if (date() != columns_->dateHeading) return true;
    }
    return false;
  }

  std::string_view field(std::optional<std::size_t> column) const {
    return column && *column < fields_.size() ? fields_[*column] : std::string_view{};
  }

  std::string_view date() const { return field(columns_->date); }

  std::size_t number() const { return lines_.number(); }

  std::size_t offset() const { return lines_.offset(); }

private:
  static bool isEmpty(std::string_view line) {
    return line.find_first_not_of(" ,;\t\"") == std::string_view::npos;
  }

  TextLines lines_;
  const TableColumns* columns_;
  std::vector<std::string_view> fields_;
};

class TableReading {
public:
  TableReading(const TableColumns& columns,
               const WeatherReading& reading,
               WeatherCollector& collector)
      : columns_(&columns), reading_(&reading), collector_(&collector) {}

  void useOrder(DateOrder order) {
    order_ = order;
    ordered_ = true;
  }

  void read(const Rows& row);

private:
  std::optional<Day> dayIn(const Rows& row) const;
  WeatherSource sourceOf(const Rows& row);
  void readValue(const Rows& row, Day day, Element element, WeatherSource source);

  const TableColumns* columns_;
  const WeatherReading* reading_;
  WeatherCollector* collector_;
  DateOrder order_ = DateOrder::dayFirst;
  bool ordered_ = false;
};

void TableReading::read(const Rows& row) {
  collector_->lineSeen();
  if ((columns_->station || columns_->name)
      && !collector_->takes(
          row.field(columns_->station ? columns_->station : columns_->name),
          columns_->station ? row.field(columns_->name) : std::string_view{}))
    return;
  const auto day = dayIn(row);
  if (!day) {
    collector_->unreadableLine(row.number(), [&] { return noDay(row.date()); });
    return;
  }
  const WeatherSource source = sourceOf(row);
  for (const Element element : allElements) readValue(row, *day, element, source);
}

std::optional<Day> TableReading::dayIn(const Rows& row) const {
  const auto date = parseDate(row.date());
  if (!date) return std::nullopt;
  // Where no order was settled, no date seen needed one; this one may all the same.
  const bool plain = date->yearFirst || ordered_ || date->first == date->second;
  const auto day = dayFrom(*date, order_);
  return plain && day && WeatherCollector::covers(*day) ? day : std::nullopt;
}

WeatherSource TableReading::sourceOf(const Rows& row) {
  if (!columns_->forecast) return reading_->source;
  const std::string_view mark = row.field(columns_->forecast);
  const auto forecast = isForecastMark(mark);
  if (!forecast)
    collector_->fault(row.number(), [mark] {
      return Sentence{phrase("Weather file",
                             "\"%1\" does not say whether the day is a forecast; it was "
                             "taken for one."),
                      {excerpt(mark)}};
    });
  return forecast.value_or(true) ? WeatherSource::forecast : reading_->source;
}

void TableReading::readValue(const Rows& row,
                             Day day,
                             Element element,
                             WeatherSource source) {
  const auto& column = columns_->of(element);
  const std::string_view text = row.field(column.column);
  if (saysNothing(text)) return;
  const bool trace = element == Element::rain && isTrace(text);
  const auto value = trace ? std::optional{0.0} : parseNumber(text);
  const char flag = qualityFlag(row.field(column.attributes));
  if (!value)
    collector_->fault(row.number(), [text] { return noNumber(text); });
  else if (*value == missing)
    return;
  else if (flag != ' ')
    collector_->dropFlagged(shownFlag(flag));
  else
    collector_->put(day, element, *value, source, row.number());
}

std::optional<Problem> useUnits(const TableColumns& columns,
                                const std::string& file,
                                const WeatherReading& reading,
                                WeatherCollector& collector) {
  const auto& units = columns.temperatureUnits;
  if (reading.temperatureUnit)
    collector.temperaturesAre(*reading.temperatureUnit, UnitOrigin::told);
  else if (!units.empty() && units.front() != units.back())
    return Problem{
        {phrase("Weather file",
                "The headings \"%1\" and \"%2\" name different units; say the "
                "unit, or give both the same."),
         {columns.of(Element::minimum).heading, columns.of(Element::maximum).heading}},
        file,
        {}};
  else if (!units.empty())
    collector.temperaturesAre(units.front(), UnitOrigin::heading);
  if (reading.rainUnit)
    collector.rainIs(*reading.rainUnit, UnitOrigin::told);
  else if (columns.rainUnit)
    collector.rainIs(*columns.rainUnit, UnitOrigin::heading);
  return std::nullopt;
}

/// A file that writes its dates year first does so from the start.
bool startsYearFirst(std::string_view text, const TableColumns& columns) {
  constexpr int rowsLookedAt = 20;
  Rows rows{text, columns};
  for (int i = 0; i < rowsLookedAt && rows.next(); ++i) {
    const auto date = parseDate(rows.date());
    if (date && !date->yearFirst) return false;
  }
  return true;
}

/// The order the dates need; nothing in it where they need none.
using NeededOrder = std::optional<DateOrder>;

/// False in `goesOn` where the pace asked to stop.
Result<NeededOrder> settleOrder(std::string_view text,
                                const std::string& file,
                                const TableColumns& columns,
                                ReadingPace& pace,
                                bool& goesOn) {
  DateOrderFinder finder;
  Rows rows{text, columns};
  while (rows.next()) {
    goesOn = pace.goesOn(rows.offset());
    if (!goesOn) return NeededOrder{};
    if (const auto date = parseDate(rows.date())) finder.see(*date);
  }
  if (!finder.needed()) return NeededOrder{};
  if (const auto found = finder.found()) return found;
  return refuse({phrase("Weather file",
                        "The dates do not say whether the day or the month stands first; "
                        "write them like 2027-04-03.")},
                file);
}

}  // namespace

Result<bool> readTable(std::string_view text,
                       const std::string& file,
                       const TableColumns& columns,
                       const WeatherReading& reading,
                       ReadingPace& pace,
                       WeatherCollector& collector) {
  if (auto problem = useUnits(columns, file, reading, collector))
    return tl::unexpected{std::move(*problem)};
  WeatherReport& report = collector.report();
  for (const Element element : allElements)
    report.headings[indexOf(element)] = columns.of(element).heading;
  TableReading table{columns, reading, collector};
  if (!startsYearFirst(text, columns)) {
    pace.twice();
    bool goesOn = true;
    const auto order = settleOrder(text, file, columns, pace, goesOn);
    if (!order) return tl::unexpected{order.error()};
    if (!goesOn) return false;
    report.dateOrder = *order;
    if (*order) table.useOrder(**order);
    pace.secondPass();
  }
  Rows rows{text, columns};
  while (rows.next()) {
    if (!pace.goesOn(rows.offset())) return false;
    table.read(rows);
  }
  return true;
}

}  // namespace topwire
