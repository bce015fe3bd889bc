#include "core/phenology/site_heat.h"

#include "tests/support/builders.h"
#include "tests/support/weather.h"

#include <gmock/gmock.h>

namespace topwire {

namespace {

void fill(Orchard& orchard,
          DaySpan days,
          double minimum,
          double maximum,
          WeatherSource source = WeatherSource::measured) {
  for (Day day = days.first; day <= days.last; day = plusDays(day, 1))
    testing::put(orchard, day, {minimum, maximum, std::nullopt, source});
}

Orchard orchardWith(int years, double maximum = 15) {
  Orchard orchard =
      testing::orchardOfOne(testing::northernSettings(), dayOf(2020, 4, 10));
  if (years > 0)
    fill(orchard, {dayOf(2027 - years, 1, 1), dayOf(2026, 12, 31)}, 5, maximum);
  return orchard;
}

HeatCourses coursesOf(const Orchard& orchard,
                      Day today,
                      HeatMeasure measure = HeatMeasure::degreeDays,
                      Season season = {2027}) {
  const StationClimate climate{orchard};
  SiteHeat site{climate, correctionOf(orchard.settings), measure};
  return site.courses(season, today);
}

TEST(SiteHeat, TakesPastSeasonsInTurnOnceThereAreTen) {
  const HeatCourses nine = coursesOf(orchardWith(9), dayOf(2027, 1, 1));
  EXPECT_EQ(nine.pastSeasons, 0);
  EXPECT_EQ(nine.sums.size(), 10u);
  const HeatCourses ten = coursesOf(orchardWith(10), dayOf(2027, 1, 1));
  EXPECT_EQ(ten.pastSeasons, 10);
  EXPECT_EQ(ten.sums.size(), 10u);
}

TEST(SiteHeat, TakesTheThirtyNearestSeasons) {
  Orchard orchard = orchardWith(45);
  fill(orchard, {dayOf(1982, 1, 1), dayOf(1996, 12, 31)}, 20, 30);
  const HeatCourses courses = coursesOf(orchard, dayOf(2027, 1, 1));
  EXPECT_EQ(courses.pastSeasons, 30);
  for (std::size_t course = 0; course < courses.sums.size(); ++course)
    EXPECT_NEAR(courses.by(course, dayOf(2027, 1, 10)), 10 * 4.0566, 0.01);
}

/// 5 to 15 degrees above 6.1: 4.0566 degree days by single sine (Baskerville and Emin
/// 1969); 0 to 10: 1.0802.
TEST(SiteHeat, MeasuredDaysGoBeforePastOnesUpToToday) {
  Orchard orchard = orchardWith(10);
  fill(orchard, {dayOf(2027, 1, 1), dayOf(2027, 1, 20)}, 0, 10);
  const HeatCourses courses = coursesOf(orchard, dayOf(2027, 1, 10));
  EXPECT_NEAR(courses.middleBy(dayOf(2027, 1, 10)), 10 * 1.0802, 0.001);
  EXPECT_NEAR(courses.middleBy(dayOf(2027, 1, 12)), 10 * 1.0802 + 2 * 4.0566, 0.001);
  EXPECT_EQ(courses.measuredTo, dayOf(2027, 1, 10));
  EXPECT_EQ(courses.knownTo, dayOf(2027, 1, 10));
}

TEST(SiteHeat, AForecastGoesOnFromThere) {
  Orchard orchard = orchardWith(10);
  fill(orchard, {dayOf(2027, 1, 1), dayOf(2027, 1, 9)}, 0, 10);
  fill(orchard, {dayOf(2027, 1, 10), dayOf(2027, 1, 12)}, 0, 10, WeatherSource::forecast);
  const HeatCourses courses = coursesOf(orchard, dayOf(2027, 1, 9));
  EXPECT_EQ(courses.measuredTo, dayOf(2027, 1, 9));
  EXPECT_EQ(courses.knownTo, dayOf(2027, 1, 12));
  EXPECT_NEAR(courses.middleBy(dayOf(2027, 1, 12)), 12 * 1.0802, 0.001);
}

TEST(SiteHeat, AForecastFarAheadIsNotBelieved) {
  Orchard orchard = orchardWith(10);
  fill(orchard, {dayOf(2027, 1, 1), dayOf(2027, 3, 1)}, 20, 30, WeatherSource::forecast);
  EXPECT_EQ(coursesOf(orchard, dayOf(2027, 1, 9)).knownTo, dayOf(2027, 1, 25));
}

TEST(SiteHeat, GapsAreCountedAndTakenFromPastSeasons) {
  Orchard orchard = orchardWith(10);
  fill(orchard, {dayOf(2027, 1, 1), dayOf(2027, 1, 3)}, 0, 10);
  fill(orchard, {dayOf(2027, 1, 6), dayOf(2027, 1, 8)}, 0, 10);
  const HeatCourses courses = coursesOf(orchard, dayOf(2027, 1, 8));
  EXPECT_EQ(courses.missingDays, 2);
  EXPECT_NEAR(courses.middleBy(dayOf(2027, 1, 8)), 6 * 1.0802 + 2 * 4.0566, 0.001);
}

TEST(SiteHeat, ADayWithOneTemperatureIsAGap) {
  Orchard orchard = orchardWith(10);
  fill(orchard, {dayOf(2027, 1, 1), dayOf(2027, 1, 3)}, 0, 10);
  orchard.weather.at({2027, 1}).days[1]->maximum.reset();
  EXPECT_EQ(coursesOf(orchard, dayOf(2027, 1, 3)).missingDays, 1);
}

TEST(SiteHeat, SeasonsWithHolesDoNotStandForThisOne) {
  Orchard orchard = orchardWith(10);
  for (unsigned day = 1; day <= 8; ++day) orchard.weather.at({2020, 3}).days[day].reset();
  EXPECT_EQ(coursesOf(orchard, dayOf(2027, 1, 1)).pastSeasons, 0);
  orchard = orchardWith(10);
  for (unsigned day = 1; day <= 7; ++day) orchard.weather.at({2020, 3}).days[day].reset();
  EXPECT_EQ(coursesOf(orchard, dayOf(2027, 1, 1)).pastSeasons, 10);
}

TEST(SiteHeat, SouthernSeasonsRunFromJulyAndAwakenInAugust) {
  Orchard orchard =
      testing::orchardOfOne(testing::southernSettings(), dayOf(2020, 9, 10));
  fill(orchard, {dayOf(2016, 7, 1), dayOf(2027, 6, 30)}, 5, 15);
  const HeatCourses courses =
      coursesOf(orchard, dayOf(2027, 7, 1), HeatMeasure::heatUnits);
  EXPECT_EQ(courses.pastSeasons, 11);
  EXPECT_EQ(courses.season.first, dayOf(2027, 7, 1));
  const double before = courses.middleBy(dayOf(2027, 7, 31));
  // 5 to 15 degrees lie wholly above 3: 7 degree days, half of which count on 1 August.
  EXPECT_NEAR(courses.middleBy(dayOf(2027, 8, 1)) - before, 3.5, 0.001);
}

TEST(SiteHeat, ALeapDayCountsLikeAnyOther) {
  Orchard orchard = orchardWith(12);
  const HeatCourses courses =
      coursesOf(orchard, dayOf(2028, 1, 1), HeatMeasure::degreeDays, {2028});
  EXPECT_EQ(courses.sums.front().size(), 366u);
  EXPECT_NEAR(courses.middleBy(dayOf(2028, 12, 31)), 366 * 4.0566, 0.05);
}

TEST(SiteHeat, ABlocksOwnCorrectionIsAddedToItsHeight) {
  Orchard orchard = orchardWith(0);
  Block& creek = orchard.blocks.begin()->second;
  creek.elevation = orchard.settings.stationElevation + Length::metres(100);
  creek.minimumCorrection = -1.5;
  creek.maximumCorrection = 0.5;
  const SiteCorrection at = correctionOf(orchard, orchard.plantings.begin()->second);
  EXPECT_NEAR(at.forElevation, -0.65, 1e-9);
  EXPECT_NEAR(at.minimum, -2.15, 1e-9);
  EXPECT_NEAR(at.maximum, -0.15, 1e-9);
}

TEST(SiteHeat, TheNearestDayIsTaken) {
  HeatCourses courses;
  courses.season = {dayOf(2027, 1, 1), dayOf(2027, 1, 4)};
  courses.sums = {{0, 10, 20, 30}};
  EXPECT_EQ(courses.reaching(0, 14), dayOf(2027, 1, 2));
  EXPECT_EQ(courses.reaching(0, 16), dayOf(2027, 1, 3));
  EXPECT_EQ(courses.reaching(0, 31), dayOf(2027, 1, 4));
  EXPECT_EQ(courses.reaching(0, -5), dayOf(2027, 1, 1));
}

/// Mean degree days from 1 January by the daily record 1991-2020, single sine above 6.1:
/// Klein-Altendorf 111 by the end of March, 245 of April, 479 of May; Zaragoza 350, 598,
/// 978. Plain normals give less than half of the first.
TEST(SiteHeat, NormalsGiveTheHeatOfTheDaysBehindThem) {
  struct Row {
    const char* station;
    double march;
    double april;
    double may;
  };

  const Row rows[] = {{"Klein-Altendorf", 111, 245, 479}, {"Zaragoza", 350, 598, 978}};
  for (const auto& [name, march, april, may] : rows) {
    const Station& station = *testing::shippedTables().station(name);
    Orchard orchard = orchardWith(0);
    orchard.settings.normals = station.normals;
    orchard.settings.latitude = station.latitude;
    orchard.settings.elevation = orchard.settings.stationElevation = station.elevation;
    const HeatCourses courses = coursesOf(orchard, dayOf(2026, 12, 1));
    EXPECT_NEAR(courses.middleBy(dayOf(2027, 3, 31)), march, 0.1 * march) << name;
    EXPECT_NEAR(courses.middleBy(dayOf(2027, 4, 30)), april, 0.06 * april) << name;
    EXPECT_NEAR(courses.middleBy(dayOf(2027, 5, 31)), may, 0.04 * may) << name;
  }
}

}  // namespace

}  // namespace topwire
