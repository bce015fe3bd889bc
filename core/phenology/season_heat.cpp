#include "core/phenology/season_heat.h"

#include "core/phenology/site_heat.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

/// The value below which `share` of the sorted ones lie.
double quantile(const std::vector<double>& sorted, double share) {
  return sorted[static_cast<std::size_t>(
      std::lround(share * static_cast<double>(sorted.size() - 1)))];
}

/// How the courses of `courses` spread on each day of the season.
std::vector<HeatBand> bandsOf(const HeatCourses& courses) {
  std::vector<HeatBand> bands;
  for (Day day = courses.season.first; day <= courses.season.last;
       day = plusDays(day, 1)) {
    std::vector<double> sums;
    for (std::size_t course = 0; course < courses.sums.size(); ++course)
      sums.push_back(courses.by(course, day));
    std::ranges::sort(sums);
    bands.push_back({day,
                     quantile(sums, 0.1),
                     quantile(sums, 0.25),
                     quantile(sums, 0.5),
                     quantile(sums, 0.75),
                     quantile(sums, 0.9)});
  }
  return bands;
}

/// The first day by whose end the middle of past years has the sum.
Day middleReaching(const std::vector<HeatBand>& bands, double sum) {
  const auto found = std::ranges::lower_bound(bands, sum, {}, &HeatBand::middle);
  return found == bands.end() ? bands.back().day : found->day;
}

std::vector<HeatSample> samples(const HeatCourses& courses, DaySpan days) {
  std::vector<HeatSample> line;
  for (Day day = days.first; day <= days.last; day = plusDays(day, 1))
    line.push_back({day, courses.middleBy(day)});
  return line;
}

}  // namespace

SeasonHeat seasonHeat(const Orchard& orchard,
                      const Planting& planting,
                      Season season,
                      Day today,
                      HeatMeasure measure) {
  const StationClimate climate{orchard};
  SiteHeat site{climate, correctionOf(orchard, planting), measure};
  const HeatCourses& courses = site.courses(season, today);
  const DaySpan days = courses.season;
  // As seen before the season's first day, when all its courses are past years'.
  const HeatCourses& before = site.courses(season, plusDays(days.first, -400));

  SeasonHeat heat;
  heat.measure = measure;
  heat.past = bandsOf(before);
  heat.pastYears = courses.pastSeasons;
  heat.measuredTo = courses.measuredTo;
  heat.missingDays = courses.missingDays;
  const Day measuredTo = courses.measuredTo.value_or(plusDays(days.first, -1));
  const Day knownTo = courses.knownTo.value_or(measuredTo);
  heat.measured = samples(courses, {days.first, measuredTo});
  if (knownTo > measuredTo)
    heat.forecast = samples(courses, {std::max(measuredTo, days.first), knownTo});
  heat.likely = samples(courses, {std::max(knownTo, days.first), days.last});
  heat.today = courses.middleBy(today);
  if (courses.measuredTo && today >= days.first && today <= days.last)
    heat.daysAhead = daysBetween(today, middleReaching(heat.past, heat.today));
  return heat;
}

}  // namespace topwire
