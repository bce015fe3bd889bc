#include "core/calendar/iso_week.h"

#include "core/base/contract.h"

#include <date/iso_week.h>

#include <cstdio>

namespace topwire {

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
  int year = 0;
  int number = 0;
  int used = 0;
  const std::string copy{text};
  if (copy.size() != 8
      || std::sscanf(copy.c_str(), "%4d-W%2d%n", &year, &number, &used) != 2 || used != 8)
    return std::nullopt;
  if (year < 1 || number < 1 || number > isoWeeksInYear(year)) return std::nullopt;
  return IsoWeek{year, number};
}

std::string isoText(IsoWeek week) {
  char text[32];
  std::snprintf(text, sizeof text, "%04d-W%02d", week.year, week.number);
  return text;
}

}  // namespace topwire
