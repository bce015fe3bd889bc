#include "core/weather/ghcn_reader.h"

#include "core/exchange/delimited_text.h"
#include "core/weather/weather_dates.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace topwire {

namespace {

constexpr int missing = -9999;

/// Where a line of fixed width has what, counted from 0; the readme counts from 1.
namespace columns {
constexpr std::size_t year = 11;
constexpr std::size_t month = 15;
constexpr std::size_t element = 17;
constexpr std::size_t firstValue = 21;
constexpr std::size_t valueWidth = 5;
constexpr std::size_t qualityFlag = 6;  ///< after the value and the measurement flag
constexpr std::size_t dayWidth = 8;
constexpr unsigned days = 31;
constexpr std::size_t end = firstValue + days * dayWidth;
}  // namespace columns

bool isCode(std::string_view text) {
  return std::ranges::all_of(text, [](char c) {
    return (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '-';
  });
}

std::optional<Element> elementOf(std::string_view code) {
  if (code == "TMIN") return Element::minimum;
  if (code == "TMAX") return Element::maximum;
  if (code == "PRCP") return Element::rain;
  return std::nullopt;
}

std::string_view withoutTrailingBlanks(std::string_view line) {
  const std::size_t last = line.find_last_not_of(" \t\r");
  return line.substr(0, last == std::string_view::npos ? 0 : last + 1);
}

/// One station's month of one element.
class FixedWidthLine {
public:
  FixedWidthLine(std::string_view line, std::size_t number)
      : line_(withoutTrailingBlanks(line)), number_(number) {}

  bool blank() const { return line_.empty(); }

  std::string_view station() const { return trimmed(line_.substr(0, columns::year)); }

  bool wellFormed() const {
    if (!isFixedWidthLine(line_) || line_.size() > columns::end) return false;
    const auto first = realDay(year(), month(), 1);
    return first && WeatherCollector::covers(*first);
  }

  std::optional<Element> element() const {
    return elementOf(line_.substr(columns::element, 4));
  }

  void putInto(WeatherCollector& collector, WeatherSource source) const;

private:
  void putDay(unsigned dayOfMonth,
              WeatherCollector& collector,
              WeatherSource source) const;

  int year() const { return parseWhole(line_.substr(columns::year, 4)).value_or(0); }

  unsigned month() const {
    return static_cast<unsigned>(parseWhole(line_.substr(columns::month, 2)).value_or(0));
  }

  std::string_view line_;
  std::size_t number_;
};

void FixedWidthLine::putInto(WeatherCollector& collector, WeatherSource source) const {
  for (unsigned day = 1; day <= columns::days; ++day) putDay(day, collector, source);
  // A month's last value may only lack its three flags where they are blank.
  const unsigned last = daysOfMonth(year(), month());
  if (line_.size() < columns::firstValue + last * columns::dayWidth - 3)
    collector.fault(number_, [this] {
      return Sentence{phrase("Weather file",
                             "The line ends after %1 letters, within its month; the days "
                             "after that are missing."),
                      {static_cast<std::int64_t>(line_.size())}};
    });
}

void FixedWidthLine::putDay(unsigned dayOfMonth,
                            WeatherCollector& collector,
                            WeatherSource source) const {
  const std::size_t at = columns::firstValue + (dayOfMonth - 1) * columns::dayWidth;
  if (at + columns::valueWidth > line_.size()) return;
  const std::string_view text = trimmed(line_.substr(at, columns::valueWidth));
  const auto value = parseWhole(text);
  if (text.empty() || value == missing) return;
  const std::size_t flagAt = at + columns::qualityFlag;
  const char flag = flagAt < line_.size() ? line_[flagAt] : ' ';
  const auto day = realDay(year(), month(), dayOfMonth);
  if (!value)
    collector.fault(number_, [&] {
      return Sentence{
          phrase("Weather file",
                 "The value of day %1 is \"%2\", which is no whole number; it is left "
                 "out."),
          {dayOfMonth, excerpt(text)}};
    });
  else if (!day)
    collector.fault(number_, [&] {
      return Sentence{phrase("Weather file",
                             "There is a value for day %1, which the month does not "
                             "have; it is left out."),
                      {dayOfMonth}};
    });
  else if (flag != ' ')
    collector.dropFlagged(shownFlag(flag));
  else
    collector.put(*day, *element(), *value, source, number_);
}

struct ByStationLine {
  explicit ByStationLine(const std::vector<std::string_view>& fields) {
    const auto at = [&](std::size_t i) {
      return i < fields.size() ? fields[i] : std::string_view{};
    };
    station = at(0);
    date = at(1);
    element = at(2);
    value = at(3);
    qualityFlag = at(5);
  }

  bool wellFormed() const {
    return !station.empty() && isCode(station) && date.size() == 8 && parseWhole(date)
           && element.size() == 4 && isCode(element);
  }

  std::string_view station;
  std::string_view date;
  std::string_view element;
  std::string_view value;
  std::string_view qualityFlag;
};

void put(const ByStationLine& line,
         Element element,
         std::size_t number,
         WeatherCollector& collector,
         WeatherSource source) {
  const auto day = parseCompactDay(line.date);
  const auto value = parseWhole(line.value);
  if (!day || !WeatherCollector::covers(*day))
    collector.unreadableLine(number, [&] { return noDay(line.date); });
  else if (line.value.empty() || value == missing)
    return;
  else if (!value)
    collector.fault(number, [&] { return noNumber(line.value); });
  else if (!line.qualityFlag.empty())
    collector.dropFlagged(shownFlag(line.qualityFlag.front()));
  else
    collector.put(*day, element, *value, source, number);
}

Sentence otherLine(std::string_view line) {
  return {phrase("Weather file",
                 "The line \"%1\" does not have the shape of the others; it is left "
                 "out."),
          {excerpt(line)}};
}

void useNativeUnits(WeatherCollector& collector) {
  collector.temperaturesAre(TemperatureUnit::tenthsOfCelsius, UnitOrigin::format);
  collector.rainIs(RainUnit::tenthsOfMillimetres, UnitOrigin::format);
}

}  // namespace

bool isFixedWidthLine(std::string_view line) {
  if (line.size() < columns::firstValue + columns::valueWidth) return false;
  const auto month = parseWhole(line.substr(columns::month, 2));
  return isCode(line.substr(0, columns::year)) && month && *month >= 1 && *month <= 12
         && parseWhole(line.substr(columns::year, 4)).value_or(0) > 0
         && isCode(line.substr(columns::element, 4));
}

bool isByStationLine(std::string_view line) {
  std::vector<std::string_view> fields;
  splitFields(line, ',', fields);
  const ByStationLine parts{fields};
  return fields.size() >= 4 && parts.wellFormed();
}

bool readFixedWidth(std::string_view text,
                    const WeatherReading& reading,
                    ReadingPace& pace,
                    WeatherCollector& collector) {
  useNativeUnits(collector);
  TextLines lines{text};
  while (const auto next = lines.next()) {
    if (!pace.goesOn(lines.offset())) return false;
    const FixedWidthLine line{*next, lines.number()};
    if (line.blank()) continue;
    collector.lineSeen();
    if (!line.wellFormed())
      collector.unreadableLine(lines.number(), [&] { return otherLine(*next); });
    else if (collector.takes(line.station()) && line.element())
      line.putInto(collector, reading.source);
  }
  return true;
}

bool readByStation(std::string_view text,
                   const WeatherReading& reading,
                   ReadingPace& pace,
                   WeatherCollector& collector) {
  useNativeUnits(collector);
  TextLines lines{text};
  std::vector<std::string_view> fields;
  while (const auto next = lines.next()) {
    if (!pace.goesOn(lines.offset())) return false;
    if (trimmed(*next).empty()) continue;
    splitFields(*next, ',', fields);
    const ByStationLine line{fields};
    // Some copies of the archive put headings above it.
    if (lines.number() == 1 && line.station == "ID") continue;
    collector.lineSeen();
    const auto element = elementOf(line.element);
    if (!line.wellFormed())
      collector.unreadableLine(lines.number(), [&] { return otherLine(*next); });
    else if (collector.takes(line.station) && element)
      put(line, *element, lines.number(), collector, reading.source);
  }
  return true;
}

}  // namespace topwire
