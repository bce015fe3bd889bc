#pragma once

#include "core/calendar/day.h"

#include <compare>
#include <string>

namespace topwire {

enum class Hemisphere { north, south };

/// North for a latitude of zero or more.
Hemisphere hemisphereAt(double latitudeDegrees);

/// One growing season, named by the calendar year in which it begins. North of the
/// equator season 2027 is the year 2027; south of it season 2027 runs from 1 July 2027 to
/// 30 June 2028, so that bud break, harvest and leaf fall lie in the same season.
struct Season {
  int year;

  friend auto operator<=>(const Season&, const Season&) = default;

  Season plus(int count) const { return {year + count}; }
};

Season seasonOf(Day day, Hemisphere hemisphere);
/// 1 January, or 1 July in the south: the day from which heat is summed.
Day firstDayOf(Season season, Hemisphere hemisphere);
Day lastDayOf(Season season, Hemisphere hemisphere);
/// "2027", or "2027-28" in the south.
std::string nameOf(Season season, Hemisphere hemisphere);

/// A date written for the north as month and day, in the given season: the same date in
/// the north, six months later in the south (1 February becomes 1 August). The day is
/// capped to the month's end.
Day localSeasonDay(Season season,
                   Hemisphere hemisphere,
                   unsigned northMonth,
                   unsigned dayOfMonth);

/// The first day that no longer counts as growth for a new planting: 1 September, or
/// 1 March in the south. Young trees set their terminal buds in August and September
/// (February and March), so the middle of that span is taken.
Day growthEnds(Season season, Hemisphere hemisphere);

/// The season of a planting's first leaf: the one it is set in, before or during growth;
/// the next one if it is set after growth has ended.
///
/// | planted | where | first leaf |
/// |---|---|---|
/// | 10 April 2027, spring | north | 2027 |
/// | 12 June 2027, in leaf | north | 2027 |
/// | 31 August 2027, late summer, still growing | north | 2027 |
/// | 1 September 2027, growth over | north | 2028 |
/// | 10 November 2027, autumn | north | 2028 |
/// | 29 February 2028 | north | 2028 |
/// | 20 August 2027, late winter | south | 2027-28 |
/// | 5 January 2028, in leaf, across New Year | south | 2027-28 |
/// | 29 February 2028, still growing | south | 2027-28 |
/// | 1 March 2028, growth over | south | 2028-29 |
/// | 25 May 2028, autumn | south | 2028-29 |
Season firstLeafSeason(Day planted, Hemisphere hemisphere);

/// 1 in the first leaf; 0, -1, -2 ... in the seasons before it.
int leafIn(Season season, Day planted, Hemisphere hemisphere);

}  // namespace topwire
