#include "core/planning/day_cautions.h"

#include "tests/support/builders.h"
#include "tests/support/operations.h"
#include "tests/support/weather.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using Kind = CautionKind;

// FixedForecaster: silver tip 31 March, green tip 8 April, full bloom 10 May, June drop
// 19 June, leaf fall 11 November; half a year later in the south.
class DayCautionsTest : public ::testing::Test {
protected:
  void dayIs(Day day,
             std::optional<double> minimum,
             std::optional<double> maximum,
             std::optional<double> rain = 0,
             WeatherSource source = WeatherSource::measured) {
    put(orchard, day, {minimum, maximum, rain, source});
  }

  Outlook outlookOn(Day day) const {
    const Hemisphere hemisphere = orchard.settings.hemisphere();
    return FixedForecaster{}.outlook(
        orchard, gala(), seasonOf(day, hemisphere), dayOf(2027, 1, 1));
  }

  std::vector<DayCaution> cautions(Day day) const {
    return cautionsFor(orchard, shippedTables(), gala(), outlookOn(day), day);
  }

  std::vector<Kind> kinds(Day day) const {
    std::vector<Kind> all;
    for (const DayCaution& caution : cautions(day)) all.push_back(caution.kind);
    return all;
  }

  std::vector<std::string> said(Day day) const {
    std::vector<std::string> all;
    for (const DayCaution& caution : cautions(day))
      all.push_back(inEnglish(caution.sentence) + ' ' + inEnglish(caution.advice));
    return all;
  }

  Planting& gala() { return orchard.plantings.begin()->second; }

  const Planting& gala() const { return orchard.plantings.begin()->second; }

  Block& creek() { return orchard.blocks.begin()->second; }

  Orchard orchard = orchardOfOne(northernSettings(), dayOf(2018, 4, 10));
};

const Day inBloom = dayOf(2027, 5, 12);
const Day winter = dayOf(2027, 2, 10);
const Day summer = dayOf(2027, 7, 20);

TEST_F(DayCautionsTest, SaysNothingOfWhatIsNotKnown) {
  EXPECT_THAT(kinds(inBloom), IsEmpty());
  dayIs(inBloom, std::nullopt, std::nullopt, std::nullopt);
  EXPECT_THAT(kinds(inBloom), IsEmpty());
  dayIs(inBloom, 5, 15);
  EXPECT_THAT(kinds(inBloom), IsEmpty());
}

TEST_F(DayCautionsTest, TellsFrostWithStageAndPublishedFigures) {
  dayIs(inBloom, -2.9, 12);
  EXPECT_THAT(
      said(inBloom),
      ElementsAre(
          "Frost, down to -2.9 °C at full bloom. About one flower bud in ten dies "
          "at -2.2 °C, nine in ten at -3.9 °C."));
  orchard.settings.units = UnitSystem::usCustomary;
  EXPECT_THAT(
      said(inBloom),
      ElementsAre("Frost, down to 27 °F at full bloom. About one flower bud in ten dies "
                  "at 28 °F, nine in ten at 25 °F."));
}

// 28 F is -2.22 degrees; a record in tenths writes -2.2 for it.
TEST_F(DayCautionsTest, TakesARecordInTenthsForThePublishedDegree) {
  dayIs(inBloom, -2.2, 12);
  EXPECT_EQ(cautions(inBloom).at(0).severity, Severity::serious);
  dayIs(inBloom, -2.1, 12);
  EXPECT_EQ(cautions(inBloom).at(0).severity, Severity::low);
}

TEST_F(DayCautionsTest, FearsForBudsFromSilverTipToTheJuneDrop) {
  const auto frostOn = [&](Day day) {
    dayIs(day, -25, -5);
    return cautions(day).at(0).kind == Kind::frost;
  };
  EXPECT_FALSE(frostOn(dayOf(2027, 3, 30)));
  EXPECT_TRUE(frostOn(dayOf(2027, 3, 31)));
  EXPECT_TRUE(frostOn(dayOf(2027, 6, 18)));
  EXPECT_FALSE(frostOn(dayOf(2027, 6, 19)));
}

TEST_F(DayCautionsTest, TellsOfAFrostyMorningThatBudsStand) {
  const Day greenTip = dayOf(2027, 4, 9);
  dayIs(greenTip, 0, 12);
  EXPECT_THAT(
      said(greenTip),
      ElementsAre("Frosty morning, down to 0.0 °C. Buds and young wood are brittle until "
                  "it has thawed."));
  dayIs(greenTip, 0.1, 12);
  EXPECT_THAT(kinds(greenTip), IsEmpty());
  dayIs(winter, -5, 3);
  EXPECT_THAT(kinds(winter), IsEmpty());
  dayIs(dayOf(2027, 11, 10), -5, 3);
  EXPECT_THAT(kinds(dayOf(2027, 11, 10)), ElementsAre(Kind::freezing));
  dayIs(dayOf(2027, 11, 11), -5, 3);
  EXPECT_THAT(kinds(dayOf(2027, 11, 11)), IsEmpty());
}

TEST_F(DayCautionsTest, CorrectsTheStationForTheBlock) {
  dayIs(inBloom, -1.9, 12);
  creek().minimumCorrection = -2;
  EXPECT_EQ(cautions(inBloom).at(0).severity, Severity::grave);
  creek().minimumCorrection = 1;
  EXPECT_THAT(kinds(inBloom), ElementsAre(Kind::freezing));
  creek().minimumCorrection = 0;
  // 6.5 degrees a kilometre, ISO 2533: 400 m up are 2.6 degrees colder.
  creek().elevation = orchard.settings.stationElevation + Length::metres(400);
  EXPECT_EQ(cautions(inBloom).at(0).severity, Severity::grave);
  dayIs(summer, 15, 31);
  creek().elevation.reset();
  EXPECT_THAT(kinds(summer), IsEmpty());
  creek().maximumCorrection = 1.3;
  EXPECT_THAT(kinds(summer), ElementsAre(Kind::heat));
}

TEST_F(DayCautionsTest, FearsForNoTreesThatAreNotInTheGround) {
  gala().planted = plusDays(inBloom, 1);
  dayIs(inBloom, -3, 12, 1);
  EXPECT_THAT(kinds(inBloom), ElementsAre(Kind::wet));
  gala().planted = inBloom;
  EXPECT_THAT(kinds(inBloom), ElementsAre(Kind::frost, Kind::wet));
}

// Dew or 0.2 mm wet a flower (Biggs and Turechek 2010).
TEST_F(DayCautionsTest, CallsADayWetFromTwoTenthsOfAMillimetre) {
  dayIs(summer, 8, 14, 0.2);
  EXPECT_THAT(said(summer),
              ElementsAre("Rain, 0.2 mm. Disease spreads in wet trees, and rungs slip."));
  dayIs(summer, 8, 14, 0.1);
  EXPECT_THAT(kinds(summer), IsEmpty());
  orchard.settings.units = UnitSystem::usCustomary;
  dayIs(summer, 8, 14, 12.7);
  EXPECT_EQ(said(summer).at(0).substr(0, 12), "Rain, 0.50 i");
}

TEST_F(DayCautionsTest, TakesSnowForDry) {
  dayIs(winter, -9, 0, 8);
  EXPECT_THAT(kinds(winter), IsEmpty());
  dayIs(winter, -9, 0.1, 8);
  EXPECT_THAT(kinds(winter), ElementsAre(Kind::wet));
}

TEST_F(DayCautionsTest, AsksForDryDaysAroundCutsWhereWoundsCatchDisease) {
  const auto kindsAround = [&](Day day, double before, double after) {
    dayIs(plusDays(day, -1), 2, 9, before);
    dayIs(day, 2, 9);
    dayIs(plusDays(day, 1), 2, 9, after);
    return kinds(day);
  };
  EXPECT_THAT(kindsAround(summer, 2.5, 0), ElementsAre(Kind::damp));
  EXPECT_THAT(kindsAround(summer, 2.4, 0), IsEmpty());
  EXPECT_THAT(kindsAround(summer, 0, 0.2), ElementsAre(Kind::damp));
  EXPECT_THAT(kindsAround(summer, 0, 0.1), IsEmpty());
  EXPECT_THAT(kindsAround(dayOf(2027, 12, 10), 9, 9), ElementsAre(Kind::damp));
  EXPECT_THAT(kindsAround(dayOf(2027, 12, 11), 9, 9), IsEmpty());
  EXPECT_THAT(kindsAround(winter, 9, 9), IsEmpty());
  gala().planted = dayOf(2025, 4, 10);
  EXPECT_THAT(kindsAround(winter, 9, 9), ElementsAre(Kind::damp));
}

// 90 and 100 F: WAC 296-62-09547.
TEST_F(DayCautionsTest, CallsADayHotFromThirtyTwoDegrees) {
  dayIs(summer, 15, 32.1);
  EXPECT_THAT(kinds(summer), IsEmpty());
  dayIs(summer, 15, 32.2);
  EXPECT_EQ(cautions(summer).at(0).severity, Severity::low);
  dayIs(summer, 15, 37.7);
  EXPECT_EQ(cautions(summer).at(0).severity, Severity::low);
  dayIs(summer, 15, 37.8);
  EXPECT_EQ(cautions(summer).at(0).severity, Severity::serious);
}

TEST_F(DayCautionsTest, HoldsDormantCutsBackForThreeDaysBeforeHardCold) {
  dayIs(winter, -18, -6);
  for (int before = 0; before <= 3; ++before)
    EXPECT_THAT(kinds(plusDays(winter, -before)), ElementsAre(Kind::hardCold)) << before;
  EXPECT_THAT(kinds(plusDays(winter, -4)), IsEmpty());
  EXPECT_THAT(kinds(plusDays(winter, 1)), IsEmpty());
  EXPECT_THAT(
      said(winter),
      ElementsAre("Hard cold, down to -18.0 °C on 10 February 2027. Leave pruning cuts "
                  "until it has passed, and take the youngest trees last."));
  dayIs(winter, -17.9, -6);
  EXPECT_THAT(kinds(winter), IsEmpty());
}

TEST_F(DayCautionsTest, HoldsDormantCutsBackBeforeASharpDrop) {
  dayIs(winter, -2, 8);
  dayIs(plusDays(winter, 2), -12, -4, 0, WeatherSource::forecast);
  EXPECT_THAT(said(winter),
              ElementsAre("Sharp drop, from 8.0 to -12.0 °C by 12 February 2027. Leave "
                          "pruning cuts until it has passed, and take the youngest trees "
                          "last."));
  EXPECT_EQ(cautions(winter).at(0).source, WeatherSource::forecast);
  EXPECT_THAT(kinds(plusDays(winter, 1)), IsEmpty());
  dayIs(winter, -2, 7.9);
  EXPECT_THAT(kinds(winter), IsEmpty());
  dayIs(winter, -2, 9);
  dayIs(plusDays(winter, 2), -11.9, -4);
  EXPECT_THAT(kinds(winter), IsEmpty());
  // A warm afternoon after the cold night is no drop.
  dayIs(winter, -14, 8);
  EXPECT_THAT(kinds(plusDays(winter, -1)), IsEmpty());
}

TEST_F(DayCautionsTest, FearsHardColdForDormantTreesOnly) {
  const Day greenTip = dayOf(2027, 4, 8);
  dayIs(plusDays(greenTip, 1), -20, -5);
  EXPECT_THAT(kinds(plusDays(greenTip, -1)), ElementsAre(Kind::hardCold));
  EXPECT_THAT(kinds(greenTip), IsEmpty());
}

// Mean of 60 F and wet, in the published set of conditions (Biggs and Turechek 2010).
TEST_F(DayCautionsTest, LeavesCutsInWarmWetWeatherWhileTreesGrow) {
  dayIs(summer, 10, 21.2);
  dayIs(plusDays(summer, 1), 10, 21.2, 0.2, WeatherSource::forecast);
  EXPECT_THAT(kinds(summer), ElementsAre(Kind::blightWeather, Kind::damp));
  EXPECT_EQ(cautions(summer).at(0).source, WeatherSource::forecast);
  dayIs(summer, 10, 20.8);
  EXPECT_THAT(kinds(summer), ElementsAre(Kind::damp));
  dayIs(summer, 10, 25);
  dayIs(plusDays(summer, 1), 10, 25, 0.1);
  EXPECT_THAT(kinds(summer), IsEmpty());
  dayIs(winter, 10, 25, 5);
  EXPECT_THAT(kinds(winter), ElementsAre(Kind::wet));
}

TEST_F(DayCautionsTest, PutsTheWeightiestFirst) {
  dayIs(inBloom, -4, 36, 3);
  EXPECT_THAT(kinds(inBloom),
              ElementsAre(Kind::frost, Kind::blightWeather, Kind::wet, Kind::heat));
}

TEST_F(DayCautionsTest, TurnsWithTheSeasonsSouthOfTheEquator) {
  orchard = orchardOfOne(southernSettings(), dayOf(2018, 9, 10));
  const Day bloom = dayOf(2027, 11, 12);
  dayIs(bloom, -3, 14);
  EXPECT_THAT(kinds(bloom), ElementsAre(Kind::frost));
  dayIs(dayOf(2028, 5, 20), -3, 14);
  EXPECT_THAT(kinds(dayOf(2028, 5, 20)), IsEmpty());
  dayIs(dayOf(2027, 8, 10), -19, -2);
  EXPECT_THAT(kinds(dayOf(2027, 8, 10)), ElementsAre(Kind::hardCold));
  dayIs(dayOf(2028, 1, 20), 14, 36, 4);
  EXPECT_THAT(kinds(dayOf(2028, 1, 20)),
              ElementsAre(Kind::blightWeather, Kind::wet, Kind::heat));
}

TEST_F(DayCautionsTest, LetsOnlyWorkWaitThatTheCautionIsAbout) {
  Operation work = operation("work", atStage(53), atStage(57));
  const auto waits = [&](Kind kind) {
    const std::vector<DayCaution> one{{inBloom, kind, Severity::low, {}, 0, {}, {}}};
    return shouldWait(work, one) != nullptr;
  };
  const auto waitsFor = [&] {
    std::vector<Kind> all;
    for (const Kind kind : {Kind::frost,
                            Kind::freezing,
                            Kind::hardCold,
                            Kind::blightWeather,
                            Kind::wet,
                            Kind::damp,
                            Kind::heat})
      if (waits(kind)) all.push_back(kind);
    return all;
  };
  EXPECT_THAT(waitsFor(), IsEmpty());
  work.avoid = {Avoid::wet, Avoid::wind};
  EXPECT_THAT(waitsFor(), ElementsAre(Kind::wet));
  work.avoid = {Avoid::frost, Avoid::heat};
  EXPECT_THAT(waitsFor(), ElementsAre(Kind::frost, Kind::freezing, Kind::heat));
  work.avoid.clear();
  work.cuts = true;
  EXPECT_THAT(waitsFor(), ElementsAre(Kind::hardCold, Kind::blightWeather, Kind::damp));
}

TEST_F(DayCautionsTest, LetsShippedPruningWaitForHardColdButNotTheCount) {
  const Programme& programme = shippedProgrammes().at("tall-spindle-apple");
  dayIs(plusDays(winter, 2), -21, -8);
  const auto on = cautions(winter);
  EXPECT_NE(shouldWait(*programme.find("dormant-pruning"), on), nullptr);
  EXPECT_EQ(shouldWait(*programme.find("trellis-check"), on), nullptr);
  EXPECT_EQ(shouldWait(*programme.find("dormant-pruning"), {}), nullptr);
}

/// Creek with Gala and a pollinizer, Ridge 400 m higher.
class CautionsAheadTest : public DayCautionsTest {
protected:
  CautionsAheadTest() {
    Planting idared = planting(3, creek(), dayOf(2018, 4, 10));
    idared.cultivar = "Idared";
    idared.kind = PlantingKind::pollinizer;
    orchard.plantings[idared.id] = idared;
    Block ridge = block(4, "Ridge", "1-10");
    ridge.elevation = orchard.settings.stationElevation + Length::metres(400);
    orchard.blocks[ridge.id] = ridge;
    const Planting fuji = planting(5, ridge, dayOf(2018, 4, 10));
    orchard.plantings[fuji.id] = fuji;
  }

  std::vector<std::string> ahead(Day today, int days = 10) const {
    const FixedForecaster forecaster;
    const Trade trade{shippedTables(), shippedProgrammes(), forecaster};
    std::vector<std::string> all;
    for (const SharedCaution& shared : cautionsAhead(
             orchard, shippedTables(), outlooksOf(orchard, trade, today), today, days))
      all.push_back(isoText(shared.caution.day) + ' ' + placesOf(orchard, shared) + ": "
                    + inEnglish(shared.caution.sentence));
    return all;
  }
};

TEST_F(CautionsAheadTest, TellsPlantingsApartByWhatTheySuffer) {
  dayIs(inBloom, -1.9, 12, 0.4);
  EXPECT_THAT(
      ahead(inBloom),
      ElementsAre(
          "2027-05-12 Ridge: Killing frost, down to -4.5 °C at full bloom.",
          "2027-05-12 Creek: Close to harmful frost, down to -1.9 °C at full bloom.",
          "2027-05-12 : Rain, 0.4 mm."));
}

TEST_F(CautionsAheadTest, LooksFromTodayOn) {
  for (int ahead = -1; ahead <= 10; ++ahead) dayIs(plusDays(summer, ahead), 15, 33);
  EXPECT_THAT(ahead(summer), SizeIs(10));
  EXPECT_EQ(ahead(summer).front().substr(0, 10), isoText(summer));
  EXPECT_THAT(ahead(summer, 1), SizeIs(1));
}

TEST_F(CautionsAheadTest, NamesTheCultivarWherePartOfABlockIsMeant) {
  const auto names = [&](std::vector<std::uint64_t> ids) {
    SharedCaution caution;
    caution.caution.day = inBloom;
    for (const std::uint64_t id : ids) caution.plantings.push_back({0, id});
    return placesOf(orchard, caution);
  };
  EXPECT_EQ(names({2}), "Creek (Gala)");
  EXPECT_EQ(names({3, 5}), "Creek (Idared), Ridge");
  EXPECT_EQ(names({2, 3}), "Creek");
  EXPECT_EQ(names({2, 3, 5}), "");
  orchard.plantings[{0, 5}].planted = dayOf(2029, 4, 10);
  EXPECT_EQ(names({2, 3}), "") << "no trees stand on the ridge";
}

TEST_F(CautionsAheadTest, TellsTheWorstOfPlantingsThatFareAlike) {
  dayIs(dayOf(2027, 4, 12), 0, 12);
  EXPECT_THAT(ahead(dayOf(2027, 4, 12)),
              ElementsAre("2027-04-12 : Frosty morning, down to -2.6 °C."));
}

}  // namespace
}  // namespace topwire
