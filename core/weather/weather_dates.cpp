#include "core/weather/weather_dates.h"

#include "core/exchange/delimited_text.h"

#include <array>
#include <cstdlib>

namespace topwire {

namespace {

/// One date in so many may be mistyped without unsettling the rest.
constexpr int datesToAMistyped = 20;

CivilDate civilDate(int year, unsigned month, unsigned dayOfMonth) {
  return CivilDate{date::year{year}, date::month{month}, date::day{dayOfMonth}};
}

std::size_t digitsAt(std::string_view text, std::size_t at) {
  std::size_t count = 0;
  while (at + count < text.size() && text[at + count] >= '0' && text[at + count] <= '9')
    ++count;
  return count;
}

/// The date alone, without the time of day after it.
std::string_view withoutTime(std::string_view text) {
  const std::size_t end = text.find_first_of(" T");
  return end == std::string_view::npos ? text : text.substr(0, end);
}

/// Three runs of digits with the same sign between them.
std::optional<std::array<std::string_view, 3>> threeParts(std::string_view text) {
  const std::size_t first = digitsAt(text, 0);
  if (first == 0 || first >= text.size()) return std::nullopt;
  const char between = text[first];
  if (between != '-' && between != '/' && between != '.') return std::nullopt;
  const std::size_t second = digitsAt(text, first + 1);
  const std::size_t sign = first + 1 + second;
  if (second == 0 || sign >= text.size() || text[sign] != between) return std::nullopt;
  const std::size_t third = digitsAt(text, sign + 1);
  if (third == 0 || sign + 1 + third != text.size()) return std::nullopt;
  return std::array{
      text.substr(0, first), text.substr(first + 1, second), text.substr(sign + 1)};
}

unsigned smallNumber(std::string_view digits) {
  return static_cast<unsigned>(parseWhole(digits).value_or(0));
}

bool contradicted(int reasons, int against) {
  return reasons <= against * datesToAMistyped;
}

}  // namespace

std::optional<Day> realDay(int year, unsigned month, unsigned dayOfMonth) {
  const CivilDate asked = civilDate(year, month, dayOfMonth);
  return asked.ok() ? std::optional{Day{asked}} : std::nullopt;
}

unsigned daysOfMonth(int year, unsigned month) {
  const auto last = date::year{year} / date::month{month} / date::last;
  return last.ok() ? static_cast<unsigned>(last.day()) : 0;
}

std::optional<Day> parseCompactDay(std::string_view text) {
  if (text.size() != 8 || digitsAt(text, 0) != 8) return std::nullopt;
  return realDay(parseWhole(text.substr(0, 4)).value_or(0),
                 smallNumber(text.substr(4, 2)),
                 smallNumber(text.substr(6, 2)));
}

std::optional<WrittenDate> parseDate(std::string_view text) {
  text = withoutTime(text);
  if (text.size() == 8 && digitsAt(text, 0) == 8)
    return WrittenDate{true,
                       parseWhole(text.substr(0, 4)).value_or(0),
                       smallNumber(text.substr(4, 2)),
                       smallNumber(text.substr(6, 2))};
  const auto parts = threeParts(text);
  if (!parts) return std::nullopt;
  const auto& [first, second, third] = *parts;
  if (second.size() > 2) return std::nullopt;
  if (first.size() == 4 && third.size() <= 2)
    return WrittenDate{
        true, parseWhole(first).value_or(0), smallNumber(second), smallNumber(third)};
  if (first.size() <= 2 && third.size() == 4)
    return WrittenDate{
        false, parseWhole(third).value_or(0), smallNumber(first), smallNumber(second)};
  return std::nullopt;
}

std::optional<Day> dayFrom(const WrittenDate& date, DateOrder order) {
  const bool monthFirst = date.yearFirst || order == DateOrder::monthFirst;
  return monthFirst ? realDay(date.year, date.first, date.second)
                    : realDay(date.year, date.second, date.first);
}

void DateOrderFinder::see(const WrittenDate& date) {
  if (date.yearFirst) return;
  const auto withDayFirst = dayFrom(date, DateOrder::dayFirst);
  const auto withMonthFirst = dayFrom(date, DateOrder::monthFirst);
  if (withDayFirst == withMonthFirst && !withDayFirst) return;
  needed_ = needed_ || withDayFirst != withMonthFirst;
  if (!withMonthFirst) ++dayFirst_.onlyReal;
  if (!withDayFirst) ++monthFirst_.onlyReal;
  const auto step = [](Evidence& evidence, const std::optional<Day>& day) {
    if (day && evidence.last && std::abs(daysBetween(*evidence.last, *day)) == 1)
      ++evidence.steps;
    evidence.last = day;
  };
  step(dayFirst_, withDayFirst);
  step(monthFirst_, withMonthFirst);
}

std::optional<DateOrder> DateOrderFinder::found() const {
  const bool byExistence = dayFirst_.onlyReal + monthFirst_.onlyReal > 0;
  const int forDay = byExistence ? dayFirst_.onlyReal : dayFirst_.steps;
  const int forMonth = byExistence ? monthFirst_.onlyReal : monthFirst_.steps;
  if (forDay > 0 && !contradicted(forDay, forMonth)) return DateOrder::dayFirst;
  if (forMonth > 0 && !contradicted(forMonth, forDay)) return DateOrder::monthFirst;
  return std::nullopt;
}

Sentence noDay(std::string_view text) {
  return {phrase("Weather file",
                 "\"%1\" is no day of the calendar that can be read; the line is left "
                 "out."),
          {excerpt(text)}};
}

Sentence noNumber(std::string_view text) {
  return {phrase("Weather file", "\"%1\" is no number; it is left out."),
          {excerpt(text)}};
}

char shownFlag(char flag) {
  return flag > ' ' && flag < 0x7f ? flag : '?';
}

}  // namespace topwire
