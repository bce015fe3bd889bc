#include "core/phenology/site_heat.h"

#include "core/weather/normals.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace topwire {

namespace {

/// The nearest seasons say most of what is likely: bloom came 2.5 to 3.6 days earlier
/// each decade at Klein-Altendorf, 1958-2020. Thirty are a climate normal's length.
constexpr std::size_t mostPastSeasons = 30;
constexpr std::size_t fewestPastSeasons = 10;

/// To the end of May, November in the south: bloom is over where apples are grown.
constexpr int daysThatMatter = 150;
constexpr double enoughOfThem = 0.95;

/// A forecast beyond this is no better than past years.
constexpr int longestForecast = 16;

/// Standard deviation of a day's temperature about its normal, degrees C. Computed from
/// the daily records of three places, 1991-2020: 4 gives the true heat sums back at
/// Klein-Altendorf (coldest month 2.7 degrees), 3 does at Zaragoza (7.0) and Meknes
/// (10.5). The step between them is ours.
double scatterFor(double coldestMonth) {
  return coldestMonth < 6 ? 4 : 3;
}

/// Standard deviation of a season's late winter and spring about the normals, degrees C:
/// that of single months is 1.1 to 2.4 at the same places, winter's the largest.
constexpr double seasonDeviation = 1.5;

/// Any leap year: the normals are the same in all of them.
constexpr int referenceYear = 2000;

/// Each day's normal from the season's first day on.
std::vector<double> dailyNormals(const std::array<double, 12>& monthly,
                                 Hemisphere hemisphere) {
  std::vector<double> days = dailyFromMonthly(monthly, referenceYear);
  const Day newYear = dayOf(referenceYear, 1, 1);
  const Day first =
      hemisphere == Hemisphere::north ? newYear : dayOf(referenceYear, 7, 1);
  // Not of std::ranges, whose rotate clang 14 cannot compile; the fuzz targets need it.
  std::rotate(days.begin(), days.begin() + daysBetween(newYear, first), days.end());
  return days;
}

double coldestMonthOf(const Settings& settings) {
  const std::size_t month = settings.hemisphere() == Hemisphere::north ? 0 : 6;
  return (settings.normals.minimum[month] + settings.normals.maximum[month]) / 2;
}

std::size_t indexIn(DaySpan season, Day day) {
  return static_cast<std::size_t>(daysBetween(season.first, day));
}

}  // namespace

double HeatCourses::by(std::size_t course, Day day) const {
  if (day < season.first) return 0;
  return sums[course][indexIn(season, std::min(day, season.last))];
}

double HeatCourses::middleBy(Day day) const {
  std::vector<double> all;
  for (std::size_t course = 0; course < sums.size(); ++course)
    all.push_back(by(course, day));
  std::ranges::sort(all);
  return (all[(all.size() - 1) / 2] + all[all.size() / 2]) / 2;
}

Day HeatCourses::reaching(std::size_t course, double sum) const {
  const auto& days = sums[course];
  auto found = std::ranges::lower_bound(days, sum);
  if (found == days.end()) return season.last;
  if (found != days.begin() && sum - *(found - 1) < *found - sum) --found;
  return plusDays(season.first, static_cast<int>(found - days.begin()));
}

StationClimate::StationClimate(const Orchard& orchard)
    : hemisphere(orchard.settings.hemisphere())
    , record(orchard.weather)
    , minimum(dailyNormals(orchard.settings.normals.minimum, hemisphere))
    , maximum(dailyNormals(orchard.settings.normals.maximum, hemisphere))
    , coldestMonth(coldestMonthOf(orchard.settings)) {}

SiteHeat::SiteHeat(const StationClimate& climate,
                   SiteCorrection correction,
                   HeatMeasure measure)
    : climate_(&climate), correction_(correction), measure_(measure) {}

double SiteHeat::coldestMonth() const {
  return climate_->coldestMonth + (correction_.minimum + correction_.maximum) / 2;
}

DaySpan SiteHeat::daysOf(Season season) const {
  return {firstDayOf(season, climate_->hemisphere),
          lastDayOf(season, climate_->hemisphere)};
}

int SiteHeat::daysFromFebruary(Season season, Day day) const {
  return daysBetween(localSeasonDay(season, climate_->hemisphere, 2, 1), day);
}

const HeatCourses& SiteHeat::courses(Season season, Day today) {
  const std::pair key{season, today};
  const auto known = courses_.find(key);
  if (known != courses_.end()) return known->second;
  return courses_.emplace(key, made(season, today)).first->second;
}

std::optional<double> SiteHeat::heatOn(Season season, Day day) const {
  const WeatherDay* weather = climate_->record.at(day);
  if (weather == nullptr) return std::nullopt;
  const WeatherDay here = correction_.at(*weather);
  return heatOf(measure_, {*here.minimum, *here.maximum}, daysFromFebruary(season, day));
}

HeatCourses SiteHeat::made(Season season, Day today) {
  HeatCourses courses;
  courses.season = daysOf(season);
  const auto length = static_cast<std::size_t>(courses.season.length());
  std::vector<std::optional<double>> known(length);
  const Day last = std::min(courses.season.last, plusDays(today, longestForecast));
  for (Day day = courses.season.first; day <= last; day = plusDays(day, 1)) {
    const WeatherDay* weather = climate_->record.at(day);
    const bool isForecast =
        weather != nullptr && weather->source == WeatherSource::forecast;
    if (weather == nullptr || (day > today && !isForecast)) continue;
    known[indexIn(courses.season, day)] = heatOn(season, day);
    courses.knownTo = day;
    if (!isForecast) courses.measuredTo = day;
  }
  if (courses.measuredTo)
    courses.missingDays = static_cast<int>(
        std::count(known.begin(),
                   known.begin() + daysBetween(courses.season.first, *courses.measuredTo),
                   std::nullopt));
  for (const DailyHeat* likely : likelySeasons(season, courses)) {
    auto& sums = courses.sums.emplace_back(length);
    double sum = 0;
    for (std::size_t i = 0; i < length; ++i)
      sums[i] = sum += known[i] ? *known[i] : (*likely)[std::min(i, likely->size() - 1)];
  }
  return courses;
}

std::vector<const SiteHeat::DailyHeat*> SiteHeat::likelySeasons(Season except,
                                                                HeatCourses& courses) {
  auto seasons = pastSeasons(except);
  if (seasons.size() >= fewestPastSeasons) {
    courses.pastSeasons = static_cast<int>(seasons.size());
    return seasons;
  }
  seasons.clear();
  for (const DailyHeat& heat : fromNormals()) seasons.push_back(&heat);
  return seasons;
}

std::vector<const SiteHeat::DailyHeat*> SiteHeat::pastSeasons(Season except) {
  std::vector<const DailyHeat*> seasons;
  if (!climate_->record.days()) return seasons;
  const Season first = seasonOf(climate_->record.days()->first, climate_->hemisphere);
  const Season last = seasonOf(climate_->record.days()->last, climate_->hemisphere);
  const int furthest =
      std::max(std::abs(except.year - first.year), std::abs(last.year - except.year));
  for (int away = 1; away <= furthest; ++away)
    for (const int step : {-away, away}) {
      const Season season = except.plus(step);
      if (season < first || last < season || !hasSeason(season)) continue;
      if (seasons.size() < mostPastSeasons) seasons.push_back(&pastSeason(season));
    }
  return seasons;
}

bool SiteHeat::hasSeason(Season season) {
  const auto [place, isNew] = hasSeason_.try_emplace(season);
  if (isNew) {
    const Day first = firstDayOf(season, climate_->hemisphere);
    const DaySpan matter{first, plusDays(first, daysThatMatter - 1)};
    place->second = climate_->record.wholeDaysIn(matter) >= enoughOfThem * daysThatMatter;
  }
  return place->second;
}

const SiteHeat::DailyHeat& SiteHeat::pastSeason(Season season) {
  const auto [place, isNew] = pastSeasons_.try_emplace(season);
  if (!isNew) return place->second;
  const DaySpan days = daysOf(season);
  for (Day day = days.first; day <= days.last; day = plusDays(day, 1)) {
    const auto heat = heatOn(season, day);
    place->second.push_back(heat ? *heat : normalHeat()[indexIn(days, day)]);
  }
  return place->second;
}

std::optional<double> SiteHeat::measuredBy(Season season, Day day) {
  const DaySpan days{firstDayOf(season, climate_->hemisphere), day};
  if (climate_->record.wholeDaysIn(days) < enoughOfThem * days.length())
    return std::nullopt;
  double sum = 0;
  for (Day one = days.first; one <= day; one = plusDays(one, 1)) {
    const auto heat = heatOn(season, one);
    sum += heat ? *heat : normalHeat()[indexIn(days, one)];
  }
  return sum;
}

const SiteHeat::DailyHeat& SiteHeat::normalHeat() {
  if (normalHeat_.empty()) normalHeat_ = shiftedNormalHeat(0);
  return normalHeat_;
}

const std::vector<SiteHeat::DailyHeat>& SiteHeat::fromNormals() {
  if (fromNormals_.empty())
    for (const double deviate : equallyLikely)
      fromNormals_.push_back(shiftedNormalHeat(seasonDeviation * deviate));
  return fromNormals_;
}

SiteHeat::DailyHeat SiteHeat::shiftedNormalHeat(double shift) const {
  const double scatter = scatterFor(coldestMonth());
  const Season season = seasonOf(dayOf(referenceYear, 7, 1), climate_->hemisphere);
  const DaySpan days = daysOf(season);
  DailyHeat heat;
  for (std::size_t i = 0; i < climate_->minimum.size(); ++i) {
    const DayExtremes normal{climate_->minimum[i] + correction_.minimum + shift,
                             climate_->maximum[i] + correction_.maximum + shift};
    const Day day = plusDays(days.first, static_cast<int>(i));
    heat.push_back(
        expectedHeatOf(measure_, normal, scatter, daysFromFebruary(season, day)));
  }
  return heat;
}

}  // namespace topwire
