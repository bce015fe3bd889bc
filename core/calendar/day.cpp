#include "core/calendar/day.h"

#include "core/base/contract.h"

#include <cstdio>

namespace topwire {

namespace {

std::optional<int> digits(std::string_view text) {
  int value = 0;
  for (const char c : text) {
    if (c < '0' || c > '9') return std::nullopt;
    value = value * 10 + (c - '0');
  }
  return value;
}

}  // namespace

Day dayOf(int year, unsigned month, unsigned dayOfMonth) {
  const CivilDate civilDate{date::year{year}, date::month{month}, date::day{dayOfMonth}};
  TOPWIRE_REQUIRE(civilDate.ok());
  return Day{civilDate};
}

CivilDate civil(Day day) {
  return CivilDate{day};
}

int yearOf(Day day) {
  return static_cast<int>(civil(day).year());
}

int dayOfYear(Day day) {
  return daysBetween(dayOf(yearOf(day), 1, 1), day) + 1;
}

Day plusMonthsCapToMonthEnd(Day day, int count) {
  const CivilDate moved = civil(day) + date::months{count};
  return moved.ok() ? Day{moved} : Day{moved.year() / moved.month() / date::last};
}

std::optional<Day> parseDay(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
  const auto year = digits(text.substr(0, 4));
  const auto month = digits(text.substr(5, 2));
  const auto day = digits(text.substr(8, 2));
  if (!year || !month || !day) return std::nullopt;
  const CivilDate civilDate{date::year{*year},
                            date::month{static_cast<unsigned>(*month)},
                            date::day{static_cast<unsigned>(*day)}};
  if (!civilDate.ok()) return std::nullopt;
  return Day{civilDate};
}

std::string isoText(Day day) {
  const CivilDate c = civil(day);
  char text[16];
  std::snprintf(text,
                sizeof text,
                "%04d-%02u-%02u",
                static_cast<int>(c.year()),
                static_cast<unsigned>(c.month()),
                static_cast<unsigned>(c.day()));
  return text;
}

}  // namespace topwire
