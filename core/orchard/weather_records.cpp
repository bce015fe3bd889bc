#include "core/orchard/weather_records.h"

#include <algorithm>

namespace topwire {

namespace {

bool isInCalendar(MonthOfYear month) {
  return month.year >= 0 && month.year <= 9999 && month.month >= 1 && month.month <= 12;
}

bool isUnknown(const std::optional<WeatherDay>& day) {
  return day && !day->known();
}

}  // namespace

MonthOfYear monthOf(Day day) {
  const CivilDate date = civil(day);
  return {static_cast<int>(date.year()), static_cast<unsigned>(date.month())};
}

DaySpan spanOf(MonthOfYear month) {
  const Day first = dayOf(month.year, month.month, 1);
  return {first, plusDays(plusMonthsCapToMonthEnd(first, 1), -1)};
}

bool isSound(const WeatherMonth& month) {
  if (!isInCalendar(month.month) || std::ranges::any_of(month.days, isUnknown))
    return false;
  const auto end = month.days.begin() + spanOf(month.month).length();
  const auto isThere = [](const auto& day) { return day.has_value(); };
  return std::any_of(month.days.begin(), end, isThere)
         && std::none_of(end, month.days.end(), isThere);
}

}  // namespace topwire
