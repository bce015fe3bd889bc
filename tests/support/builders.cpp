#include "tests/support/builders.h"

#include "core/base/contract.h"
#include "core/programme/programme_reader.h"

#include <fstream>
#include <sstream>

namespace topwire::testing {

namespace {

template <class T>
T readShipped(const std::string& path,
              Checked<T> (*read)(std::string_view, const std::string&)) {
  auto result = read(sourceText(path), path);
  if (!result) std::fputs(inEnglish(result.error().front()).c_str(), stderr);
  TOPWIRE_REQUIRE(result.has_value());
  return std::move(*result);
}

class PlainForecast final : public StageForecast {
public:
  PlainForecast(const PlainForecaster& forecaster, const Orchard& orchard, Day today)
      : forecaster_(&forecaster), orchard_(&orchard), today_(today) {}

  Outlook outlook(const Planting& planting, Season season) override {
    return forecaster_->outlook(*orchard_, planting, season, today_);
  }

private:
  const PlainForecaster* forecaster_;
  const Orchard* orchard_;
  Day today_;
};

}  // namespace

std::string sourceText(const std::string& path) {
  std::ifstream file{std::string{TOPWIRE_SOURCE_DIR "/"} + path, std::ios::binary};
  TOPWIRE_REQUIRE(file.good());
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

const TradeTables& shippedTables() {
  static const TradeTables tables{
      readShipped("resources/tables/cultivars.toml", readCultivars),
      readShipped("resources/tables/rootstocks.toml", readRootstocks),
      readShipped("resources/tables/stations.toml", readStations),
      readShipped("resources/tables/frost_kill.toml", readFrostKills),
      readShipped("resources/tables/stage_heat.toml", readStageHeat),
      {readShipped("resources/tables/crop_load.toml", readCropLoads),
       readShipped("resources/tables/fruit_by_leaf.toml", readFruitByLeaf),
       readShipped("resources/tables/leader_height.toml", readLeaderHeights),
       readShipped("resources/tables/shoot_growth.toml", readShootGrowth),
       readShipped("resources/tables/nutrition.toml", readNutrition)},
      readShipped("resources/tables/materials.toml", readMaterials),
      readShipped("resources/tables/trellis.toml", readTrellises),
      readShipped("resources/tables/delay.toml", readDelayWeights)};
  return tables;
}

const Programmes& shippedProgrammes() {
  static const Programmes programmes = [] {
    Programmes read;
    for (const char* id : {"tall-spindle-apple", "planar-wall-apple"})
      read.emplace(id,
                   readShipped("resources/programmes/" + std::string{id} + ".toml",
                               readProgramme));
    return read;
  }();
  return programmes;
}

Settings northernSettings() {
  Settings settings;
  settings.name = "Alder Bend";
  settings.latitude = 47;
  settings.elevation = Length::metres(450);
  settings.station = "Ellensburg";
  settings.stationElevation = Length::metres(450);
  settings.normals = {
      {-7.4, -4.9, -1.8, 1.3, 5.5, 9.0, 11.6, 11.2, 6.3, 0.7, -2.8, -6.8},
      {0.9, 5.2, 11.3, 15.8, 20.2, 23.9, 28.2, 28.3, 23.6, 16.4, 6.7, 0.9}};
  settings.recordsFrom = dayOf(2000, 1, 1);
  return settings;
}

Settings southernSettings() {
  Settings settings = northernSettings();
  settings.name = "Rata Flat";
  settings.latitude = -39;
  settings.station = "Orange Airport";
  settings.elevation = settings.stationElevation = Length::metres(950);
  settings.normals = {
      {12.2, 12.3, 9.6, 6.2, 3.6, 1.5, 0.7, 1.4, 3.3, 5.8, 7.9, 10.1},
      {26.0, 25.2, 22.4, 18.3, 13.9, 10.4, 9.3, 10.7, 13.7, 17.3, 20.5, 23.9}};
  return settings;
}

Block block(std::uint64_t id, const std::string& name, const std::string& rows) {
  Block made;
  made.id = {0, id};
  made.name = name;
  made.rows = parseRows(rows).rows;
  made.rowSpacing = Length::feet(11);
  return made;
}

Planting planting(std::uint64_t id, const Block& block, Day planted) {
  Planting made;
  made.id = {0, id};
  made.block = block.id;
  made.code = "p" + std::to_string(id);
  made.cultivar = "Gala";
  made.rootstock = "M.9 T337";
  made.planted = planted;
  made.rows = block.rows;
  made.treeSpacing = Length::feet(3);
  made.treesPerRow = 100;
  made.programme = "tall-spindle-apple";
  return made;
}

Orchard orchardOfOne(const Settings& settings, Day planted) {
  Orchard orchard;
  orchard.settings = settings;
  const Block creek = block(1, "Creek", "1-10");
  orchard.blocks[creek.id] = creek;
  const Planting gala = planting(2, creek, planted);
  orchard.plantings[gala.id] = gala;
  return orchard;
}

std::unique_ptr<StageForecast> PlainForecaster::over(const Orchard& orchard,
                                                     Day today) const {
  return std::make_unique<PlainForecast>(*this, orchard, today);
}

Outlook FixedForecaster::outlook(const Orchard& orchard,
                                 const Planting&,
                                 Season season,
                                 Day) const {
  const Day bloom = localSeasonDay(season, orchard.settings.hemisphere(), 5, 10);

  struct Offset {
    int bbch;
    int days;
  };

  static constexpr Offset offsets[] = {{51, -45},
                                       {52, -40},
                                       {53, -32},
                                       {54, -24},
                                       {55, -16},
                                       {57, -7},
                                       {59, -4},
                                       {60, -3},
                                       {65, 0},
                                       {69, 9},
                                       {71, 17},
                                       {73, 40},
                                       {91, 90},
                                       {87, 140},
                                       {95, 185}};
  Outlook outlook;
  for (const Offset& offset : offsets) {
    StageEstimate estimate;
    estimate.bbch = offset.bbch;
    estimate.date = plusDays(bloom, offset.days);
    estimate.early = plusDays(estimate.date, -5);
    estimate.late = plusDays(estimate.date, 5);
    outlook.stages.push_back(estimate);
  }
  return outlook;
}

}  // namespace topwire::testing
