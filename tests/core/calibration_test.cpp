#include "core/phenology/calibration.h"

#include "core/phenology/stage.h"

#include <gmock/gmock.h>

#include <cmath>

namespace topwire {

namespace {

std::vector<OwnHeat> seasonsAt(double ratio, int count, const std::string& cultivar) {
  std::vector<OwnHeat> own;
  for (int i = 0; i < count; ++i)
    own.push_back({cultivar, stages::firstBloom, Season{2000 + i}, ratio});
  return own;
}

TEST(Calibration, KnowsNothingWithoutDates) {
  const Calibration none;
  EXPECT_EQ(none.factorFor("Gala", stages::firstBloom), 1);
  EXPECT_EQ(none.seasonsOf("Gala"), 0);
}

TEST(Calibration, TrustsAFewSeasonsMoreThanOne) {
  const auto factor = [](int seasons) {
    return Calibration{seasonsAt(1.1, seasons, "Gala")}.factorFor("Gala",
                                                                  stages::firstBloom);
  };
  EXPECT_GT(factor(1), 1.04);
  EXPECT_LT(factor(1), 1.09);
  EXPECT_GT(factor(5), factor(1));
  EXPECT_NEAR(factor(20), 1.1, 0.003);
}

/// Learning from own seasons at Klein-Altendorf, full bloom: the own mean of one season
/// misses by 7.1 days, of two by 5.9, of five by 5.3, of twenty by 5.0. Its own share of
/// that error falls by 1 / n, which is what the weight of the seasons follows.
TEST(Calibration, IsLessUncertainWithEachSeason) {
  double before = 1;
  for (const int seasons : {0, 1, 2, 5, 20}) {
    const double now = Calibration{seasonsAt(1, seasons, "Gala")}.uncertaintyFor("Gala");
    EXPECT_LT(now, before);
    before = now;
  }
  EXPECT_LT(before, 0.025);
}

TEST(Calibration, WhatThePlaceDoesHoldsForEveryCultivar) {
  const Calibration learned{seasonsAt(1.1, 8, "Gala")};
  const double other = learned.factorFor("Fuji", stages::firstBloom);
  EXPECT_GT(other, 1.05);
  EXPECT_LT(other, learned.factorFor("Gala", stages::firstBloom));
  EXPECT_EQ(learned.seasonsOf("Fuji"), 0);
}

TEST(Calibration, DatesOfOneSeasonCountAsOneSeason) {
  auto own = seasonsAt(1.1, 1, "Gala");
  const double alone = Calibration{own}.factorFor("Elstar", stages::firstBloom);
  for (const char* cultivar : {"Fuji", "Cox", "Braeburn"})
    own.push_back({cultivar, stages::firstBloom, Season{2000}, 1.1});
  EXPECT_NEAR(Calibration{own}.factorFor("Elstar", stages::firstBloom), alone, 1e-12);
}

TEST(Calibration, AStageMayDifferFromTheOthers) {
  auto own = seasonsAt(1, 6, "Gala");
  for (int i = 0; i < 6; ++i)
    own.push_back({"Gala", stages::greenTip, Season{2000 + i}, 1.3});
  const Calibration learned{own};
  EXPECT_GT(learned.factorFor("Gala", stages::greenTip),
            learned.factorFor("Gala", stages::firstBloom) + 0.1);
}

/// Meknes: bloom after 2.8 times the degree days of Klein-Altendorf (575 against 205).
TEST(Calibration, WhereTheLadderDoesNotHoldOwnDatesTakeOverAtOnce) {
  const Calibration learned{seasonsAt(2.8, 3, "Gala"), Calibration::warmPlaces};
  EXPECT_NEAR(learned.factorFor("Gala", stages::firstBloom), 2.8, 0.05);
}

}  // namespace

}  // namespace topwire
