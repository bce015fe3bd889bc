#include "core/calendar/season.h"

#include <algorithm>
#include <cstdio>

namespace topwire {

Hemisphere hemisphereAt(double latitudeDegrees) {
  return latitudeDegrees < 0 ? Hemisphere::south : Hemisphere::north;
}

Season seasonOf(Day day, Hemisphere hemisphere) {
  const CivilDate c = civil(day);
  const bool beforeJuly = c.month() < date::July;
  const int year = static_cast<int>(c.year());
  return {hemisphere == Hemisphere::south && beforeJuly ? year - 1 : year};
}

Day firstDayOf(Season season, Hemisphere hemisphere) {
  return dayOf(season.year, hemisphere == Hemisphere::north ? 1 : 7, 1);
}

Day lastDayOf(Season season, Hemisphere hemisphere) {
  return plusDays(firstDayOf(season.plus(1), hemisphere), -1);
}

std::string nameOf(Season season, Hemisphere hemisphere) {
  if (hemisphere == Hemisphere::north) return std::to_string(season.year);
  char text[32];
  std::snprintf(text, sizeof text, "%d-%02d", season.year, (season.year + 1) % 100);
  return text;
}

Day localSeasonDay(Season season,
                   Hemisphere hemisphere,
                   unsigned northMonth,
                   unsigned dayOfMonth) {
  const Day firstOfMonth = plusMonthsCapToMonthEnd(firstDayOf(season, hemisphere),
                                                   static_cast<int>(northMonth) - 1);
  const Day wanted = plusDays(firstOfMonth, static_cast<int>(dayOfMonth) - 1);
  const Day monthEnd = plusDays(plusMonthsCapToMonthEnd(firstOfMonth, 1), -1);
  return std::min(wanted, monthEnd);
}

Day growthEnds(Season season, Hemisphere hemisphere) {
  return localSeasonDay(season, hemisphere, 9, 1);
}

Season firstLeafSeason(Day planted, Hemisphere hemisphere) {
  const Season season = seasonOf(planted, hemisphere);
  return planted < growthEnds(season, hemisphere) ? season : season.plus(1);
}

int leafIn(Season season, Day planted, Hemisphere hemisphere) {
  return season.year - firstLeafSeason(planted, hemisphere).year + 1;
}

}  // namespace topwire
