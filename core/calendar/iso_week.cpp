#include "core/calendar/iso_week.h"

#include "core/base/contract.h"

#include <date/iso_week.h>

#include <cstdio>

namespace topwire {

namespace {

/// Digits only: sscanf would take "W 4" and "W+4" too.
std::optional<int> digits(std::string_view text) {
  int value = 0;
  for (const char c : text) {
    if (c < '0' || c > '9') return std::nullopt;
    value = value * 10 + (c - '0');
  }
  return value;
}

}  // namespace

IsoWeek isoWeekOf(Day day) {
  const iso_week::year_weeknum_weekday w{day};
  return {static_cast<int>(w.year()),
          static_cast<int>(static_cast<unsigned>(w.weeknum()))};
}

int isoWeeksInYear(int year) {
  // 28 December lies in the last week of its year, whatever the weekday.
  return isoWeekOf(dayOf(year, 12, 28)).number;
}

Day mondayOf(IsoWeek week) {
  TOPWIRE_REQUIRE(week.number >= 1 && week.number <= isoWeeksInYear(week.year));
  return Day{iso_week::year{week.year}
             / iso_week::weeknum{static_cast<unsigned>(week.number)} / iso_week::mon};
}

DaySpan daysOf(IsoWeek week) {
  const Day monday = mondayOf(week);
  return {monday, plusDays(monday, 6)};
}

IsoWeek nextWeek(IsoWeek week) {
  return isoWeekOf(plusDays(mondayOf(week), 7));
}

IsoWeek previousWeek(IsoWeek week) {
  return isoWeekOf(plusDays(mondayOf(week), -7));
}

int isoWeekday(Day day) {
  return static_cast<int>(date::weekday{day}.iso_encoding());
}

std::optional<IsoWeek> parseIsoWeek(std::string_view text) {
  if (text.size() != 8 || text.substr(4, 2) != "-W") return std::nullopt;
  const auto year = digits(text.substr(0, 4));
  const auto number = digits(text.substr(6));
  if (!year || !number || *year < 1) return std::nullopt;
  if (*number < 1 || *number > isoWeeksInYear(*year)) return std::nullopt;
  return IsoWeek{*year, *number};
}

std::string isoText(IsoWeek week) {
  char text[32];
  std::snprintf(text, sizeof text, "%04d-W%02d", week.year, week.number);
  return text;
}

}  // namespace topwire
