#include "core/edit/target_deeds.h"

#include "tests/core/deeds_support.h"

#include <gmock/gmock.h>

#include <functional>

namespace topwire {
namespace {

using testing::after;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing::nameOf;
using testing::orchardOfTwo;
using testing::said;

/// Trunks of Gala in Creek 1, planted in April 2024.
Measurement trunks() {
  Measurement taken;
  taken.id = {0, 900};
  taken.planting = {0, 10};
  taken.measure = Measure::trunkDiameter;
  taken.day = dayOf(2027, 2, 3);
  taken.values = {38'100, 36'000, 41'000};
  taken.by = " Kestrel ";
  return taken;
}

struct BadMeasurement {
  std::function<void(Measurement&)> spoil;
  std::string expected;
};

class MeasurementFault : public ::testing::TestWithParam<BadMeasurement> {};

TEST_P(MeasurementFault, IsSaidWithItsField) {
  Measurement taken = trunks();
  GetParam().spoil(taken);
  EXPECT_THAT(said(addMeasurement(orchardOfTwo(), taken)),
              ElementsAre(HasSubstr(GetParam().expected)));
}

INSTANTIATE_TEST_SUITE_P(
    Deeds,
    MeasurementFault,
    ::testing::Values(
        BadMeasurement{[](Measurement& m) {
                         m.planting = {0, 77};
                       },
                       "planting: That planting is no longer"},
        BadMeasurement{[](Measurement& m) { m.day = dayOf(2024, 4, 9); },
                       "day: These trees were planted on 10 April 2024"},
        BadMeasurement{[](Measurement& m) { m.day = dayOf(2127, 4, 9); },
                       "day: On 9 April 2127 these trees"},
        BadMeasurement{[](Measurement& m) { m.values.clear(); },
                       "values: No value is typed"},
        BadMeasurement{[](Measurement& m) { m.values.push_back(381'000); },
                       "values: 381 mm is not likely for trunk diameter, which lies "
                       "between 4 mm and 250 mm"},
        BadMeasurement{[](Measurement& m) { m.values.assign(501, 38'000); },
                       "values: That is more than 500"},
        BadMeasurement{[](Measurement& m) {
                         m.measure = Measure::missingTrees;
                         m.values = {3, 4};
                       },
                       "values: Missing trees are counted"},
        BadMeasurement{[](Measurement& m) {
                         m.measure = Measure::missingTrees;
                         m.values = {90'000};
                       },
                       "values: The planting has 1993 trees"},
        BadMeasurement{[](Measurement& m) { m.by = "two\nlines"; }, "by: Keep this on"},
        BadMeasurement{[](Measurement& m) { m.note.assign(5000, 'x'); },
                       "note: This text is too long"}));

TEST(AddMeasurement, IsOneTidyRecord) {
  const auto change = addMeasurement(orchardOfTwo(), trunks());
  EXPECT_EQ(nameOf(change),
            "Measured in Creek 1: Gala on 3 February 2027: trunk diameter");
  const Orchard orchard = after(orchardOfTwo(), change);
  ASSERT_EQ(orchard.measurements.size(), 1U);
  EXPECT_EQ(orchard.measurements.begin()->second.by, "Kestrel");
  Measurement again = trunks();
  again.id = {0, 901};
  EXPECT_THAT(said(addMeasurement(orchard, again)),
              ElementsAre(HasSubstr("day: For 3 February 2027 there is trunk diameter")));
  again.measure = Measure::leaderHeight;
  again.values = {2'900'000};
  EXPECT_THAT(said(addMeasurement(orchard, again)), IsEmpty());
}

TEST(RemoveMeasurement, TakesItAway) {
  const Orchard orchard = after(orchardOfTwo(), addMeasurement(orchardOfTwo(), trunks()));
  const auto change = removeMeasurement(orchard, trunks().id);
  EXPECT_EQ(nameOf(change),
            "Measurement of 3 February 2027 removed in Creek 1: Gala: trunk diameter");
  EXPECT_EQ(after(orchard, change), orchardOfTwo());
  EXPECT_THAT(said(removeMeasurement(orchardOfTwo(), trunks().id)),
              ElementsAre(HasSubstr("no longer there")));
}

SeasonTarget strongIn2027() {
  SeasonTarget target;
  target.of = {{0, 10}, Season{2027}};
  target.vigour = Vigour::strong;
  target.vigourReason = "shoots of 80 cm";
  target.fruitFrom = 20;
  target.fruitTo = 30;
  return target;
}

struct BadTarget {
  std::function<void(SeasonTarget&)> spoil;
  std::string expected;
};

class TargetFault : public ::testing::TestWithParam<BadTarget> {};

TEST_P(TargetFault, IsSaidWithItsField) {
  SeasonTarget target = strongIn2027();
  GetParam().spoil(target);
  EXPECT_THAT(said(setSeasonTarget(orchardOfTwo(), target)),
              ElementsAre(HasSubstr(GetParam().expected)));
}

INSTANTIATE_TEST_SUITE_P(
    Deeds,
    TargetFault,
    ::testing::Values(
        BadTarget{[](SeasonTarget& bad) {
                    bad.of.planting = {0, 77};
                  },
                  "planting: That planting is no longer"},
        BadTarget{[](SeasonTarget& bad) { bad.of.season = Season{2023}; },
                  "season: In season 2023 these trees are not standing; choose one from "
                  "2024 on."},
        BadTarget{[](SeasonTarget& bad) { bad.vigourReason = " "; },
                  "vigourReason: Say why"},
        BadTarget{[](SeasonTarget& bad) { bad.fruitTo.reset(); },
                  "fruit: Fruit to keep is a range"},
        BadTarget{[](SeasonTarget& bad) { bad.fruitTo = 10; },
                  "fruit: The range runs from 20 down to 10"},
        BadTarget{[](SeasonTarget& bad) { bad.fruitTo = 4000; },
                  "fruit: Fruit to keep lies between"}));

TEST(SetSeasonTarget, SettlesTheSeasonAndCanBeTakenAway) {
  const auto change = setSeasonTarget(orchardOfTwo(), strongIn2027());
  EXPECT_EQ(nameOf(change), "Targets of season 2027 settled in Creek 1: Gala");
  const Orchard orchard = after(orchardOfTwo(), change);
  EXPECT_EQ(
      vigourIn(
          Season{2027}, orchard, testing::smallTables(), orchard.plantings.at({0, 10}))
          .vigour,
      Vigour::strong);
  EXPECT_TRUE(setSeasonTarget(orchard, strongIn2027())->empty());
  SeasonTarget nothing;
  nothing.of = strongIn2027().of;
  EXPECT_EQ(after(orchard, setSeasonTarget(orchard, nothing)), orchardOfTwo());
}

TEST(DeletePlanting, TakesMeasurementsAndTargetsAlong) {
  Orchard orchard = after(orchardOfTwo(), addMeasurement(orchardOfTwo(), trunks()));
  orchard = after(orchard, setSeasonTarget(orchard, strongIn2027()));
  orchard = after(orchard, deletePlanting(orchard, {0, 12}));  // the replant in its rows
  orchard = after(orchard, deletePlanting(orchard, {0, 10}));
  EXPECT_THAT(orchard.measurements, IsEmpty());
  EXPECT_THAT(orchard.targets, IsEmpty());
}

}  // namespace
}  // namespace topwire
