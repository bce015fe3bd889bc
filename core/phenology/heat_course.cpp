#include "core/phenology/heat_course.h"

#include "core/weather/normals.h"

#include <algorithm>

namespace topwire {

namespace {

double coldestMonthMean(const MonthlyNormals& normals, Hemisphere hemisphere) {
  const std::size_t month = hemisphere == Hemisphere::north ? 0 : 6;
  return (normals.minimum[month] + normals.maximum[month]) / 2;
}

/// Standard deviation of a day's temperature about its normal, degrees C. Computed from
/// the daily records of three places, 1991-2020: 4 gives the true heat sums back at
/// Klein-Altendorf (coldest month 2.7 degrees), 3 does at Zaragoza (7.0) and Meknes
/// (10.5). The step between them is ours.
double scatterFor(double coldestMonth) {
  return coldestMonth < 6 ? 4 : 3;
}

/// The normals of each day of the season, which in the south lies in two years.
std::vector<double> daily(const std::array<double, 12>& monthly, DaySpan season) {
  std::vector<double> days;
  const int lastYear = yearOf(season.last);
  for (int year = yearOf(season.first); year <= lastYear; ++year) {
    const auto ofYear = dailyFromMonthly(monthly, year);
    const Day newYear = dayOf(year, 1, 1);
    const Day first = std::max(season.first, newYear);
    const Day last = std::min(season.last, dayOf(year, 12, 31));
    days.insert(days.end(),
                ofYear.begin() + daysBetween(newYear, first),
                ofYear.begin() + daysBetween(newYear, last) + 1);
  }
  return days;
}

}  // namespace

HeatCourse::HeatCourse(const MonthlyNormals& normals,
                       double correction,
                       Season season,
                       Hemisphere hemisphere)
    : season_{firstDayOf(season, hemisphere), lastDayOf(season, hemisphere)}
    , coldestMonth_(coldestMonthMean(normals, hemisphere) + correction) {
  const auto minimum = daily(normals.minimum, season_);
  const auto maximum = daily(normals.maximum, season_);
  const double scatter = scatterFor(coldestMonth_);
  sums_.reserve(minimum.size());
  double sum = 0;
  for (std::size_t i = 0; i < minimum.size(); ++i) {
    sum += expectedDegreeDays(
        {minimum[i] + correction, maximum[i] + correction}, base, scatter);
    sums_.push_back(sum);
  }
}

double HeatCourse::by(Day day) const {
  if (day < season_.first) return 0;
  const Day within = std::min(day, season_.last);
  return sums_[static_cast<std::size_t>(daysBetween(season_.first, within))];
}

Day HeatCourse::reaching(double sum) const {
  const auto found = std::ranges::lower_bound(sums_, sum);
  if (found == sums_.end()) return season_.last;
  return plusDays(season_.first, static_cast<int>(found - sums_.begin()));
}

}  // namespace topwire
