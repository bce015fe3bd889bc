#pragma once

#include "core/phenology/heat_units.h"
#include "core/weather/site_correction.h"
#include "core/weather/weather_series.h"

#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace topwire {

/// What an orchard knows of its station's weather, laid out for summing heat.
struct StationClimate {
  explicit StationClimate(const Orchard& orchard);

  Hemisphere hemisphere;
  WeatherSeries record;
  /// The normals of each day of a leap year, from the season's first day on.
  std::vector<double> minimum;
  std::vector<double> maximum;
  double coldestMonth;  ///< mean of January (July) by the normals, degrees C
};

/// What may still come of one season's heat: each course is a sum by the end of every day
/// of the season, and all are alike as far as the weather is known. One course stands for
/// each past season of the station's own record, or for a tenth of what the monthly
/// normals let expect.
struct HeatCourses {
  DaySpan season{};
  std::vector<std::vector<double>> sums;
  std::optional<Day> measuredTo;  ///< the last day known that is not a forecast
  std::optional<Day> knownTo;     ///< with the forecast
  int missingDays = 0;            ///< in the season up to `measuredTo`
  int pastSeasons = 0;            ///< 0 where the courses come from monthly normals

  /// The middle course's sum by the end of `day`: 0 before the season.
  double middleBy(Day day) const;
  /// The sum of one course by the end of `day`.
  double by(std::size_t course, Day day) const;
  /// The day by whose end the course comes nearest to `sum`, since needs are means of
  /// such sums; the first day past it would come half a day late. The season's last day
  /// if it is never reached.
  Day reaching(std::size_t course, double sum) const;
};

/// Heat at one place, by one measure, from the station's daily record and its normals.
///
/// Of the season asked for, the days up to today are taken as measured or typed in, then
/// a forecast's. What is not known comes from the past seasons of the record in turn: the
/// thirty nearest ones that have 95 in 100 of their first 150 days, which carry bloom to
/// its end. With fewer than ten such seasons the monthly normals stand in for the record.
class SiteHeat {
public:
  /// `climate` must outlive this.
  SiteHeat(const StationClimate& climate, SiteCorrection correction, HeatMeasure measure);

  const SiteCorrection& correction() const { return correction_; }

  const HeatCourses& courses(Season season, Day today);
  /// Heat from the season's first day to the end of `day`, where the record has all but
  /// five in a hundred of those days; missing ones count as their normals.
  std::optional<double> measuredBy(Season season, Day day);

  /// Mean temperature of the coldest month by the normals, January or July, degrees C.
  double coldestMonth() const;

private:
  /// One season's heat day by day, its first day first.
  using DailyHeat = std::vector<double>;

  HeatCourses made(Season season, Day today);
  std::vector<const DailyHeat*> likelySeasons(Season except, HeatCourses& courses);
  std::vector<const DailyHeat*> pastSeasons(Season except);
  const DailyHeat& pastSeason(Season season);
  bool hasSeason(Season season);
  const std::vector<DailyHeat>& fromNormals();
  const DailyHeat& normalHeat();
  DailyHeat shiftedNormalHeat(double shift) const;
  std::optional<double> heatOn(Season season, Day day) const;
  DaySpan daysOf(Season season) const;
  int daysFromFebruary(Season season, Day day) const;

  const StationClimate* climate_;
  SiteCorrection correction_;
  HeatMeasure measure_;
  std::map<Season, DailyHeat> pastSeasons_;
  std::map<Season, bool> hasSeason_;
  DailyHeat normalHeat_;
  std::vector<DailyHeat> fromNormals_;
  std::map<std::pair<Season, Day>, HeatCourses> courses_;
};

}  // namespace topwire
