#pragma once

#include <date/date.h>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace topwire {

/// A civil day as a serial number: arithmetic and comparison are done here. A date's
/// parts (year, month, day of the month) are read with `CivilDate`.
using Day = date::sys_days;
using Days = date::days;
using CivilDate = date::year_month_day;

/// First and last day, both inclusive.
struct DaySpan {
  Day first;
  Day last;

  bool contains(Day day) const { return first <= day && day <= last; }

  bool overlaps(const DaySpan& other) const {
    return first <= other.last && other.first <= last;
  }

  int length() const { return static_cast<int>((last - first).count()) + 1; }

  friend bool operator==(const DaySpan&, const DaySpan&) = default;
};

/// The day of an existing date; aborts on one that does not exist (2027-02-29).
Day dayOf(int year, unsigned month, unsigned dayOfMonth);

CivilDate civil(Day day);
int yearOf(Day day);
/// 1 on 1 January.
int dayOfYear(Day day);

inline Day plusDays(Day day, int count) {
  return day + Days{count};
}

inline int daysBetween(Day from, Day to) {
  return static_cast<int>((to - from).count());
}

/// The same day of the month `count` months later (earlier if negative); where that
/// month is too short, its last day: 31 January plus one month is 28 or 29 February.
/// The policy is in the name because the alternatives (spill over, refuse) are as
/// plausible and give other dates.
Day plusMonthsCapToMonthEnd(Day day, int count);

/// Reads YYYY-MM-DD, nothing else; nothing for a date that does not exist.
std::optional<Day> parseDay(std::string_view text);
/// YYYY-MM-DD.
std::string isoText(Day day);

}  // namespace topwire
