#include "core/phenology/weather_forecaster.h"
#include "tests/support/builders.h"
#include "tests/support/plan_text.h"

#include <gmock/gmock.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

namespace topwire {

namespace {

using testing::planText;
using testing::shippedProgrammes;
using testing::shippedTables;

/// A planting whose plan stands beside this test, from the trees' order to leaf 8.
struct GoldenPlan {
  const char* name;
  const char* station;
  Day planted;
  const char* cultivar;
  const char* rootstock;
  void (*change)(Orchard&) = [](Orchard&) {};
};

void PrintTo(const GoldenPlan& plan, std::ostream* out) {
  *out << plan.name;
}

void makeWall(Orchard& orchard) {
  orchard.blocks.begin()->second.rowSpacing = Length::feet(10);
  orchard.plantings.begin()->second.treeSpacing = Length::feet(6);
  orchard.plantings.begin()->second.programme = "planar-wall-apple";
}

// The stations are shipped ones with published normals; planting days are common
// practice: as early in spring as the ground can be worked.
const GoldenPlan plans[]{
    {"north-weak", "Ellensburg", dayOf(2027, 4, 10), "Delicious, spur", "B.9"},
    {"north-moderate", "Ellensburg", dayOf(2027, 4, 10), "Gala", "M.9 T337"},
    {"north-strong", "Ellensburg", dayOf(2027, 4, 10), "Fuji", "M.26"},
    {"south-weak", "Orange Airport", dayOf(2027, 9, 10), "Delicious, spur", "B.9"},
    {"south-moderate", "Orange Airport", dayOf(2027, 9, 10), "Gala", "M.9 T337"},
    {"south-strong", "Orange Airport", dayOf(2027, 9, 10), "Fuji", "M.26"},
    {"north-wall", "Ellensburg", dayOf(2027, 4, 10), "Gala", "M.9 T337", &makeWall},
};

Orchard orchardOf(const GoldenPlan& plan) {
  const Station& station = *shippedTables().station(plan.station);
  Settings settings = testing::northernSettings();
  settings.latitude = station.latitude;
  settings.station = station.name;
  settings.normals = station.normals;
  settings.elevation = settings.stationElevation = station.elevation;
  Orchard orchard = testing::orchardOfOne(settings, plan.planted);
  Planting& planting = orchard.plantings.begin()->second;
  planting.cultivar = plan.cultivar;
  planting.rootstock = plan.rootstock;
  plan.change(orchard);
  return orchard;
}

std::string planned(const GoldenPlan& plan) {
  const WeatherForecaster forecaster{shippedTables()};
  const Trade trade{shippedTables(), shippedProgrammes(), forecaster};
  const Orchard orchard = orchardOf(plan);
  const Season first = firstLeafSeason(plan.planted, orchard.settings.hemisphere());
  return planText(orchard, trade, {first.plus(-4), first.plus(7)}, dayOf(2023, 7, 1));
}

std::string pathOf(const GoldenPlan& plan) {
  return std::string{TOPWIRE_SOURCE_DIR "/tests/core/golden/"} + plan.name + ".txt";
}

std::string kept(const GoldenPlan& plan) {
  std::ifstream file{pathOf(plan), std::ios::binary};
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

class GoldenPlanTest : public ::testing::TestWithParam<GoldenPlan> {};

TEST_P(GoldenPlanTest, IsAsKept) {
  const std::string plan = planned(GetParam());
  if (std::getenv("TOPWIRE_RENEW_GOLDEN") != nullptr)
    std::ofstream{pathOf(GetParam()), std::ios::binary} << plan;
  EXPECT_TRUE(plan == kept(GetParam()))
      << "The plan is no longer that of " << pathOf(GetParam())
      << ". Where the change is meant, run this test once with TOPWIRE_RENEW_GOLDEN=1 "
         "and "
         "read what git diff shows as a grower would.";
}

std::string testName(const ::testing::TestParamInfo<GoldenPlan>& info) {
  std::string name{info.param.name};
  std::ranges::replace(name, '-', '_');
  return name;
}

INSTANTIATE_TEST_SUITE_P(All, GoldenPlanTest, ::testing::ValuesIn(plans), testName);

}  // namespace

}  // namespace topwire
