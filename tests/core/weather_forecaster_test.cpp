#include "core/phenology/weather_forecaster.h"

#include "tests/support/builders.h"
#include "tests/support/weather.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

constexpr Season season{2027};
const Day today = dayOf(2027, 12, 31);

Orchard orchardAt(const std::string& name, Day planted = dayOf(2020, 4, 10)) {
  const Station& station = *testing::shippedTables().station(name);
  Settings settings = testing::northernSettings();
  settings.latitude = station.latitude;
  settings.station = name;
  settings.elevation = settings.stationElevation = station.elevation;
  settings.normals = station.normals;
  Orchard orchard = testing::orchardOfOne(settings, planted);
  orchard.plantings.begin()->second.cultivar = "Golden Delicious";
  return orchard;
}

Outlook outlookOf(const Orchard& orchard, Day day = today, Season wanted = season) {
  return WeatherForecaster{testing::shippedTables()}
      .over(orchard, day)
      ->outlook(orchard.plantings.begin()->second, wanted);
}

Day dateOf(const Outlook& outlook, int bbch) {
  return outlook.find(bbch)->date;
}

void observe(Orchard& orchard, int bbch, Day day) {
  Observation seen;
  seen.id = {7, orchard.observations.size() + 1};
  seen.planting = orchard.plantings.begin()->first;
  seen.bbch = bbch;
  seen.day = day;
  orchard.observations[seen.id] = seen;
}

int reachOf(const StageEstimate& stage) {
  return daysBetween(stage.date, stage.late);
}

/// Golden Delicious at Klein-Altendorf: mean full bloom on day 125 over 1958-2020 and,
/// with the trend, day 119 at the end of that time, to which the normals of 1991-2020
/// belong.
TEST(WeatherForecaster, FullBloomFallsWhereItIsObserved) {
  const Day bloom = dateOf(outlookOf(orchardAt("Klein-Altendorf")), stages::fullBloom);
  EXPECT_NEAR(dayOfYear(bloom), 119, 4);
}

/// The ladder's dates from the same place's daily weather: pink 8 days before first
/// bloom, tight cluster 18, half-inch green 27, green tip 41, petal fall 12 after it.
TEST(WeatherForecaster, StagesStandAsFarApartAsTheRecordHasThem) {
  const Outlook outlook = outlookOf(orchardAt("Klein-Altendorf"));
  const auto before = [&](int bbch) {
    return daysBetween(dateOf(outlook, bbch), dateOf(outlook, stages::firstBloom));
  };
  EXPECT_NEAR(before(stages::pink), 8, 3);
  EXPECT_NEAR(before(stages::tightCluster), 18, 3);
  EXPECT_NEAR(before(stages::halfInchGreen), 27, 3);
  EXPECT_NEAR(before(stages::greenTip), 41, 4);
  EXPECT_NEAR(before(stages::petalFall), -12, 3);
}

/// Common practice: apples bloom from late April to mid May in the Pacific Northwest's
/// inland valleys, and from late September to early November in the south.
TEST(WeatherForecaster, OtherDistrictsBloomInTheirSeason) {
  struct Row {
    const char* station;
    Day first;
    Day last;
  };

  const Row rows[] = {{"Ellensburg", dayOf(2027, 4, 20), dayOf(2027, 5, 15)},
                      {"Penticton", dayOf(2027, 4, 20), dayOf(2027, 5, 15)},
                      {"Orange Airport", dayOf(2027, 9, 20), dayOf(2027, 11, 5)}};
  for (const auto& [station, first, last] : rows) {
    const Day bloom = dateOf(outlookOf(orchardAt(station)), stages::fullBloom);
    EXPECT_TRUE((DaySpan{first, last}).contains(bloom)) << isoText(bloom);
  }
}

TEST(WeatherForecaster, DatesNeverRunBackwardsAndLieInTheirSpans) {
  for (const Station& station : testing::shippedTables().stations)
    for (const Cultivar& cultivar : testing::shippedTables().cultivars) {
      Orchard orchard = orchardAt(station.name, dayOf(2027, 4, 10));
      orchard.plantings.begin()->second.cultivar = cultivar.name;
      const Outlook outlook = outlookOf(orchard);
      EXPECT_EQ(outlook.stages.size(), allStages().size());
      EXPECT_TRUE(std::ranges::is_sorted(outlook.stages, {}, &StageEstimate::date))
          << station.name << " " << cultivar.name;
      for (const StageEstimate& stage : outlook.stages)
        EXPECT_TRUE((DaySpan{stage.early, stage.late}).contains(stage.date))
            << stage.bbch;
    }
}

TEST(WeatherForecaster, SouthernHarvestAndLeafFallLieInTheSameSeason) {
  const Outlook outlook = outlookOf(orchardAt("Orange Airport"));
  EXPECT_EQ(yearOf(dateOf(outlook, stages::harvest)), 2028);
  EXPECT_EQ(isoText(dateOf(outlook, stages::leafFall)), "2028-05-15");
  EXPECT_EQ(isoText(dateOf(outlookOf(orchardAt("Penticton")), stages::leafFall)),
            "2027-11-15");
}

TEST(WeatherForecaster, HigherGroundIsColderAndLater) {
  Orchard orchard = orchardAt("Penticton");
  const Outlook low = outlookOf(orchard);
  Block& creek = orchard.blocks.begin()->second;
  creek.elevation = orchard.settings.stationElevation + Length::metres(200);
  const Outlook high = outlookOf(orchard);
  EXPECT_NEAR(high.find(stages::pink)->degreesForElevation, -1.3, 1e-9);
  const int later =
      daysBetween(dateOf(low, stages::fullBloom), dateOf(high, stages::fullBloom));
  EXPECT_GE(later, 5);
  EXPECT_LE(later, 12);
}

TEST(WeatherForecaster, ACultivarsShiftMovesBudsAndBloom) {
  Orchard orchard = orchardAt("Penticton");
  const Outlook golden = outlookOf(orchard);
  orchard.plantings.begin()->second.cultivar = "Gala";
  const Outlook gala = outlookOf(orchard);
  for (const int bbch : {stages::greenTip, stages::pink, stages::fullBloom}) {
    EXPECT_NEAR(daysBetween(dateOf(golden, bbch), dateOf(gala, bbch)), -3, 2) << bbch;
    EXPECT_EQ(gala.find(bbch)->cultivarShiftDays, -3);
  }
}

TEST(WeatherForecaster, HarvestIsTheCultivarsOwnDaysAfterFullBloom) {
  struct Row {
    const char* cultivar;
    int days;
  };

  constexpr Row rows[] = {
      {"Elstar", 133}, {"Golden Delicious", 151}, {"Braeburn", 170}, {"Unheard-of", 151}};
  for (const auto& [cultivar, days] : rows) {
    Orchard orchard = orchardAt("Klein-Altendorf");
    orchard.plantings.begin()->second.cultivar = cultivar;
    const Outlook outlook = outlookOf(orchard);
    EXPECT_EQ(
        daysBetween(dateOf(outlook, stages::fullBloom), dateOf(outlook, stages::harvest)),
        days)
        << cultivar;
    EXPECT_EQ(outlook.find(stages::harvest)->kind, StageKind::byOffset);
    EXPECT_FALSE(outlook.find(stages::harvest)->heat);
  }
}

TEST(WeatherForecaster, TreesInTheirFirstLeafWakeLater) {
  const Outlook first = outlookOf(orchardAt("Penticton", dayOf(2027, 4, 10)));
  const Outlook second = outlookOf(orchardAt("Penticton", dayOf(2026, 4, 10)));
  EXPECT_EQ(
      daysBetween(dateOf(second, stages::fullBloom), dateOf(first, stages::fullBloom)),
      10);
  EXPECT_EQ(first.find(stages::fullBloom)->firstLeafDelayDays, 10);
  EXPECT_EQ(second.find(stages::fullBloom)->firstLeafDelayDays, 0);
}

TEST(WeatherForecaster, ShootsOfYoungTreesStopLater) {
  const auto shootsStop = [](int yearPlanted) {
    const Outlook outlook = outlookOf(orchardAt("Penticton", dayOf(yearPlanted, 4, 10)));
    return daysBetween(dateOf(outlook, stages::fullBloom),
                       dateOf(outlook, stages::terminalBud));
  };
  EXPECT_EQ(shootsStop(2025), 110);
  EXPECT_EQ(shootsStop(2024), 75);
}

TEST(WeatherForecaster, AnEarlyCultivarMayBePickedBeforeYoungShootsStop) {
  Orchard orchard = orchardAt("Penticton", dayOf(2026, 4, 10));
  orchard.plantings.begin()->second.cultivar = "Paulared";
  const Outlook outlook = outlookOf(orchard);
  EXPECT_LT(dateOf(outlook, stages::harvest), dateOf(outlook, stages::terminalBud));
}

TEST(WeatherForecaster, HeatSaysWhatIsNeededAndWhatIsIn) {
  const Orchard orchard = orchardAt("Penticton");
  const auto heat = [&](Day day) {
    return outlookOf(orchard, day).find(stages::fullBloom)->heat.value();
  };
  EXPECT_EQ(heat(dayOf(2026, 11, 1)).reached, 0);
  const HeatBasis april = heat(dayOf(2027, 4, 6));
  EXPECT_EQ(april.needed, 404);
  EXPECT_EQ(april.base, 3);
  EXPECT_EQ(isoText(april.from), "2027-01-01");
  EXPECT_GT(april.reached, 100);
  EXPECT_LT(april.reached, april.needed);
  const Day bloom = dateOf(outlookOf(orchard), stages::fullBloom);
  EXPECT_NEAR(heat(bloom).reached, 404, 15);
}

TEST(WeatherForecaster, TodayMovesNoDateByItself) {
  const Orchard orchard = orchardAt("Penticton");
  const Outlook early = outlookOf(orchard, dayOf(2027, 1, 1));
  for (const StageEstimate& stage : outlookOf(orchard).stages)
    EXPECT_EQ(early.find(stage.bbch)->date, stage.date) << stage.bbch;
}

/// Standard deviation of the bloom date over 62 seasons with their trend: 9.9 days, so
/// that eight in ten lie within 13. A good part of it is the trend's, 2.5 to 3.6 days a
/// decade.
TEST(WeatherForecaster, SpansBeforeTheSeasonAreAsWideAsBloomDatesSpread) {
  const Outlook outlook = outlookOf(orchardAt("Klein-Altendorf"), dayOf(2026, 12, 1));
  EXPECT_GE(reachOf(*outlook.find(stages::firstBloom)), 8);
  EXPECT_LE(reachOf(*outlook.find(stages::firstBloom)), 15);
  EXPECT_GE(reachOf(*outlook.find(stages::greenTip)),
            reachOf(*outlook.find(stages::firstBloom)));
}

class Observed : public ::testing::Test {
protected:
  Orchard orchard_ = orchardAt("Klein-Altendorf");
  Outlook expected_ = outlookOf(orchard_);

  Day expected(int bbch) const { return dateOf(expected_, bbch); }

  Outlook after(int bbch, Day day) {
    observe(orchard_, bbch, day);
    return outlookOf(orchard_);
  }
};

TEST_F(Observed, ReplacesItsOwnDate) {
  const Day seen = plusDays(expected(stages::greenTip), -9);
  const StageEstimate stage = *after(stages::greenTip, seen).find(stages::greenTip);
  EXPECT_EQ(stage.kind, StageKind::observed);
  EXPECT_EQ(stage.date, seen);
  EXPECT_EQ(stage.early, seen);
  EXPECT_EQ(stage.late, seen);
  EXPECT_FALSE(stage.heat);
}

TEST_F(Observed, PullsLaterStagesAlong) {
  const Day seen = plusDays(expected(stages::tightCluster), 10);
  const Outlook outlook = after(stages::tightCluster, seen);
  const StageEstimate& pink = *outlook.find(stages::pink);
  EXPECT_EQ(pink.pulledBy, stages::tightCluster);
  EXPECT_EQ(pink.heat->needed, 304 - 241);
  EXPECT_EQ(pink.heat->from, plusDays(seen, 1));
  const int pulled =
      daysBetween(expected(stages::fullBloom), dateOf(outlook, stages::fullBloom));
  EXPECT_GE(pulled, 4);
  EXPECT_LE(pulled, 10);
  EXPECT_EQ(daysBetween(expected(stages::harvest), dateOf(outlook, stages::harvest)),
            pulled);
  EXPECT_EQ(outlook.find(stages::harvest)->pulledBy, stages::tightCluster);
}

TEST_F(Observed, ShiftsOfCultivarAndFirstLeafAreInTheObservation) {
  orchard_.plantings.begin()->second.cultivar = "Gala";
  orchard_.plantings.begin()->second.planted = dayOf(2027, 4, 1);
  const StageEstimate bloom =
      *after(stages::pink, dayOf(2027, 4, 20)).find(stages::fullBloom);
  EXPECT_EQ(bloom.cultivarShiftDays, 0);
  EXPECT_EQ(bloom.firstLeafDelayDays, 0);
}

TEST_F(Observed, EarlierStagesAreCappedByIt) {
  const Day seen = plusDays(expected(stages::greenTip), -5);
  const Outlook outlook = after(stages::pink, seen);
  for (const int bbch : {stages::budSwell, stages::greenTip, stages::tightCluster}) {
    EXPECT_LT(dateOf(outlook, bbch), seen) << bbch;
    EXPECT_LE(outlook.find(bbch)->late, seen) << bbch;
    EXPECT_EQ(outlook.find(bbch)->kind == StageKind::observed, false);
  }
}

TEST_F(Observed, AStageBetweenTwoSeenOnesFollowsTheEarlier) {
  const Day tip = expected(stages::greenTip);
  observe(orchard_, stages::greenTip, tip);
  const Outlook outlook = after(stages::fullBloom, plusDays(tip, 20));
  EXPECT_EQ(outlook.find(stages::pink)->pulledBy, stages::greenTip);
  EXPECT_LE(dateOf(outlook, stages::pink), plusDays(tip, 20));
  EXPECT_GE(outlook.find(stages::pink)->early, tip);
}

TEST_F(Observed, FruitSeenDatesTheRestOfTheFruit) {
  const Day seen = plusDays(expected(stages::fruitSet), 6);
  const Outlook outlook = after(stages::fruitSet, seen);
  EXPECT_EQ(daysBetween(seen, dateOf(outlook, stages::juneDrop)), 40 - 17);
  EXPECT_EQ(outlook.find(stages::harvest)->pulledBy, stages::fruitSet);
  EXPECT_EQ(dateOf(outlook, stages::fullBloom), plusDays(seen, -17));
}

/// From pink to first bloom the published ladder's days vary by 6, from full bloom to
/// petal fall by 3 to 4 (standard deviations, Klein-Altendorf, 1958-2020).
TEST_F(Observed, SpansShrinkToTheIntervalsSpread) {
  const Outlook outlook = after(stages::pink, expected(stages::pink));
  EXPECT_GE(reachOf(*outlook.find(stages::firstBloom)), 2);
  EXPECT_LE(reachOf(*outlook.find(stages::firstBloom)), 8);
  const Outlook later = after(stages::fullBloom, expected(stages::fullBloom));
  EXPECT_GE(reachOf(*later.find(stages::petalFall)), 2);
  EXPECT_LE(reachOf(*later.find(stages::petalFall)), 5);
  EXPECT_EQ(reachOf(*later.find(stages::harvest)), std::lround(1.2816 * 7));
}

TEST_F(Observed, OfTwoRecordsOfAStageTheEarlierHolds) {
  observe(orchard_, stages::pink, dayOf(2027, 4, 18));
  const Outlook outlook = after(stages::pink, dayOf(2027, 4, 15));
  EXPECT_EQ(dateOf(outlook, stages::pink), dayOf(2027, 4, 15));
}

TEST_F(Observed, RecordsThatContradictOneAnotherDoNotRunBackwards) {
  observe(orchard_, stages::fullBloom, dayOf(2027, 4, 20));
  const Outlook outlook = after(stages::pink, dayOf(2027, 4, 28));
  EXPECT_EQ(dateOf(outlook, stages::pink), dayOf(2027, 4, 20));
  EXPECT_TRUE(std::ranges::is_sorted(outlook.stages, {}, &StageEstimate::date));
}

TEST_F(Observed, CountsOnlyInItsSeasonItsPlantingAndFromItsDayOn) {
  observe(orchard_, stages::pink, dayOf(2026, 4, 2));
  EXPECT_EQ(outlookOf(orchard_), expected_);
  observe(orchard_, stages::pink, dayOf(2027, 4, 2));
  EXPECT_EQ(dateOf(outlookOf(orchard_, dayOf(2027, 4, 1)), stages::pink),
            expected(stages::pink));
  EXPECT_NE(outlookOf(orchard_), expected_);
  orchard_.observations.rbegin()->second.planting = {9, 9};
  EXPECT_EQ(outlookOf(orchard_), expected_);
}

TEST(WeatherForecaster, SouthernLeafFallInMayBelongsToTheSeasonBegunBefore) {
  Orchard orchard = orchardAt("Orange Airport");
  observe(orchard, stages::leafFall, dayOf(2028, 5, 3));
  const Day later = dayOf(2028, 12, 1);
  EXPECT_EQ(dateOf(outlookOf(orchard, later), stages::leafFall), dayOf(2028, 5, 3));
  EXPECT_EQ(outlookOf(orchard, later, {2028}).find(stages::leafFall)->kind,
            StageKind::byOffset);
}

/// Meknes: full bloom took three times the heat of Klein-Altendorf; its January mean is
/// 10.5 degrees, which 800 m of height bring down to 5.3.
TEST(WeatherForecaster, TheLadderDoesNotHoldInWarmWinters) {
  Orchard orchard = orchardAt("Meknes");
  EXPECT_FALSE(outlookOf(orchard).ladderHolds);
  orchard.settings.elevation = orchard.settings.elevation + Length::metres(800);
  EXPECT_TRUE(outlookOf(orchard).ladderHolds);
  EXPECT_TRUE(outlookOf(orchardAt("Klein-Altendorf")).ladderHolds);
  EXPECT_TRUE(outlookOf(orchardAt("Orange Airport")).ladderHolds);
}

TEST(WeatherForecaster, GroundTooColdForBloomEndsOnTheSeasonsLastDay) {
  Orchard orchard = orchardAt("Penticton");
  orchard.settings.elevation = Length::metres(4500);
  const Outlook outlook = outlookOf(orchard);
  EXPECT_EQ(isoText(dateOf(outlook, stages::fullBloom)), "2027-12-31");
  EXPECT_EQ(isoText(dateOf(outlook, stages::harvest)), "2027-12-31");
}

/// Warm or cold by so many degrees against the normals of the place.
void fillSeason(Orchard& orchard, DaySpan days, double warmer) {
  const auto& [minimum, maximum] = orchard.settings.normals;
  for (Day day = days.first; day <= days.last; day = plusDays(day, 1)) {
    const std::size_t month = monthOf(day).month - 1;
    testing::put(orchard,
                 day,
                 {minimum[month] + warmer,
                  maximum[month] + warmer,
                  std::nullopt,
                  WeatherSource::measured});
  }
}

void enterPastBloom(Orchard& orchard, const std::string& cultivar, Day day) {
  PastStage past;
  past.id = {8, orchard.pastStages.size() + 1};
  past.cultivar = cultivar;
  past.bbch = stages::firstBloom;
  past.day = day;
  orchard.pastStages[past.id] = past;
}

class WithWeather : public ::testing::Test {
protected:
  WithWeather() {
    for (int year = 2012; year <= 2026; ++year)
      fillSeason(
          orchard_, {dayOf(year, 1, 1), dayOf(year, 12, 31)}, year % 3 == 0 ? 1.5 : 0);
  }

  static int widthOf(const StageEstimate& stage) {
    return daysBetween(stage.early, stage.late);
  }

  StageEstimate bloomOn(Day day) const {
    return *outlookOf(orchard_, day).find(stages::firstBloom);
  }

  Orchard orchard_ = orchardAt("Klein-Altendorf");
};

TEST_F(WithWeather, AWarmSpringBringsBloomForwardAsItIsMeasured) {
  const Day before = bloomOn(dayOf(2027, 2, 1)).date;
  fillSeason(orchard_, {dayOf(2027, 1, 1), dayOf(2027, 3, 31)}, 3);
  const Day after = bloomOn(dayOf(2027, 3, 31)).date;
  EXPECT_LT(after, plusDays(before, -5));
  EXPECT_EQ(bloomOn(dayOf(2027, 3, 31)).heat->pastSeasons, 15);
}

TEST_F(WithWeather, SpansNarrowAsTheSeasonGoesOn) {
  fillSeason(orchard_, {dayOf(2027, 1, 1), dayOf(2027, 6, 30)}, 0.5);
  int before = 100;
  for (const Day day : {dayOf(2027, 1, 1), dayOf(2027, 4, 1), dayOf(2027, 6, 30)}) {
    const int now = widthOf(bloomOn(day));
    EXPECT_LE(now, before) << isoText(day);
    before = now;
  }
}

TEST_F(WithWeather, DaysAfterTodayAreNotYetKnown) {
  const Outlook before = outlookOf(orchard_, dayOf(2027, 2, 1));
  fillSeason(orchard_, {dayOf(2027, 2, 2), dayOf(2027, 5, 31)}, 6);
  const Outlook after = outlookOf(orchard_, dayOf(2027, 2, 1));
  EXPECT_EQ(after.find(stages::firstBloom)->date, before.find(stages::firstBloom)->date);
}

TEST_F(WithWeather, OwnDatesOfPastSeasonsCorrectTheNeed) {
  const Day published = bloomOn(dayOf(2027, 1, 1)).date;
  for (int year = 2018; year <= 2026; ++year)
    enterPastBloom(orchard_, "Golden Delicious", dayOf(year, 5, 20));
  const StageEstimate own = bloomOn(dayOf(2027, 1, 1));
  EXPECT_GT(own.date, plusDays(published, 10));
  EXPECT_EQ(own.heat->ownSeasons, 9);
}

TEST_F(WithWeather, ThreeOwnSeasonsMakeUpForALadderThatDoesNotHold) {
  for (auto* months :
       {&orchard_.settings.normals.minimum, &orchard_.settings.normals.maximum})
    for (double& degrees : *months) degrees += 6;
  EXPECT_FALSE(outlookOf(orchard_).ladderHolds);
  for (const int year : {2022, 2024, 2025})
    enterPastBloom(orchard_, "Golden Delicious", dayOf(year, 5, 20));
  const Outlook outlook = outlookOf(orchard_, dayOf(2027, 1, 1));
  EXPECT_TRUE(outlook.ladderHolds);
  EXPECT_NEAR(daysBetween(dayOf(2027, 5, 20), dateOf(outlook, stages::firstBloom)), 0, 8);
}

TEST_F(WithWeather, TheFirstLeafsDelayIsTheOrchardsOwn) {
  Planting& planting = orchard_.plantings.begin()->second;
  planting.planted = dayOf(2027, 4, 1);
  orchard_.settings.firstLeafDelayDays = 0;
  const Day without = bloomOn(dayOf(2027, 1, 1)).date;
  orchard_.settings.firstLeafDelayDays = 14;
  EXPECT_EQ(bloomOn(dayOf(2027, 1, 1)).date, plusDays(without, 14));
}

TEST_F(WithWeather, AFrostHollowWakesLater) {
  const Day open = bloomOn(dayOf(2027, 1, 1)).date;
  orchard_.blocks.begin()->second.minimumCorrection = -2;
  EXPECT_GT(bloomOn(dayOf(2027, 1, 1)).date, open);
  EXPECT_NEAR(bloomOn(dayOf(2027, 1, 1)).degreesForBlock, -1, 1e-9);
}

}  // namespace

}  // namespace topwire
