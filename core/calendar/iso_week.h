#pragma once

#include "core/calendar/day.h"

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace topwire {

/// A week of ISO 8601: Monday to Sunday; week 1 holds the year's first Thursday, so that
/// the first days of January may lie in week 52 or 53 of the year before.
struct IsoWeek {
  int year;
  int number;  ///< 1 to 52, or 53 in a long year

  friend auto operator<=>(const IsoWeek&, const IsoWeek&) = default;
};

IsoWeek isoWeekOf(Day day);
/// 52 or 53.
int isoWeeksInYear(int year);
Day mondayOf(IsoWeek week);
DaySpan daysOf(IsoWeek week);
IsoWeek nextWeek(IsoWeek week);
IsoWeek previousWeek(IsoWeek week);
/// 1 for Monday to 7 for Sunday.
int isoWeekday(Day day);

/// Reads 2027-W14; nothing for a week that year does not have.
std::optional<IsoWeek> parseIsoWeek(std::string_view text);
/// 2027-W14.
std::string isoText(IsoWeek week);

}  // namespace topwire
