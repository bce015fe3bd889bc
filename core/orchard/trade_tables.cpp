#include "core/orchard/trade_tables.h"

#include "core/base/contract.h"
#include "core/orchard/table_rows.h"
#include "core/units/conversions.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <optional>
#include <utility>

namespace topwire {

namespace {

const TableKind cultivarKind{"cultivar", {"cultivar", "variedad"}};
const TableKind rootstockKind{"rootstock", {"rootstock", "portainjerto"}};
const TableKind stationKind{"station", {"station", "estación"}};
const TableKind stageKind{"stage", {"stage", "estado"}};
const TableKind stageHeatKind{"stage_heat", {"stage", "estado"}};

constexpr TableField nameField{"name", "name = \"Gala\""};
constexpr TableField sourceField{"source", "source = \"where the figures come from\""};

Cultivar cultivarFrom(TableRow& row) {
  Cultivar cultivar;
  cultivar.name = row.text(nameField);
  cultivar.vigourScore = row.oneOf<double>({"vigour", ""},
                                           {{"moderate", 0},
                                            {"weak", -1},
                                            {"weak to moderate", -0.5},
                                            {"moderate to strong", 0.5},
                                            {"strong", 1}});
  cultivar.bloomShiftDays =
      row.number({"bloom_shift_days", "bloom_shift_days = -1.5"}, {-30, 30});
  cultivar.bloomToHarvestDays = static_cast<int>(std::lround(
      row.number({"bloom_to_harvest_days", "bloom_to_harvest_days = 140"}, {60, 250})));
  cultivar.biennial = row.flag({"biennial", "biennial = false"});
  cultivar.habit = row.text({"habit", "habit = \"III\""});
  cultivar.source = row.text(sourceField);
  return cultivar;
}

Rootstock rootstockFrom(TableRow& row) {
  Rootstock rootstock;
  rootstock.name = row.text({"name", "name = \"M.9 T337\""});
  rootstock.vigourScore = row.number({"vigour_score", "vigour_score = 0.5"}, {-3, 3});
  rootstock.suitsSystem = row.flag({"suits_system", "suits_system = true"});
  rootstock.source = row.text(sourceField);
  return rootstock;
}

bool isFahrenheit(TableRow& row) {
  return row.oneOf<bool>({"units", "units = \"C\""}, {{"C", false}, {"F", true}});
}

void reportCrossedNormals(TableRow& row, const MonthlyNormals& normals) {
  for (std::size_t month = 0; month < 12; ++month)
    if (normals.minimum[month] > normals.maximum[month])
      row.report(phrase("Tables",
                        "In %1 %2 the field %3 lies above the maximum in month %4; check "
                        "the two lists."),
                 {"minimum", ""},
                 std::to_string(month + 1),
                 row.source());
}

Station stationFrom(TableRow& row) {
  Station station;
  station.name = row.text({"name", "name = \"Ellensburg\""});
  station.latitude = row.number({"latitude", "latitude = 46.97"}, {-90, 90});
  station.elevation = Length::micrometres(
      std::llround(1e6 * row.number({"elevation_m", "elevation_m = 450"}, {-430, 5000})));
  station.period = row.text({"period", "period = \"1991-2020\""});
  const bool fahrenheit = isFahrenheit(row);
  MonthlyNormals& normals = station.normals;
  constexpr TableBounds likely{-80, 140};
  normals.minimum = row.twelve({"minimum", "minimum = [-4.3, -3.0, ... -3.7]"}, likely);
  normals.maximum = row.twelve({"maximum", "maximum = [0.9, 4.3, ... 1.4]"}, likely);
  reportCrossedNormals(row, normals);
  if (fahrenheit)
    for (auto* months : {&normals.minimum, &normals.maximum})
      for (double& value : *months) value = toCelsius(value);
  station.source = row.text(sourceField);
  return station;
}

FrostKill frostKillFrom(TableRow& row) {
  FrostKill kill;
  kill.name = row.text({"name", "name = \"green tip\""});
  kill.bbch = static_cast<int>(std::lround(row.number({"bbch", "bbch = 53"}, {0, 99})));
  const bool fahrenheit = isFahrenheit(row);
  constexpr TableBounds likely{-60, 40};
  kill.oneInTen = row.number({"kills_one_in_ten", "kills_one_in_ten = 18"}, likely);
  kill.nineInTen = row.number({"kills_nine_in_ten", "kills_nine_in_ten = 10"}, likely);
  if (kill.nineInTen > kill.oneInTen)
    row.report(
        phrase("Tables",
               "In %1 %2 the field %3 lies above kills_one_in_ten; check the two."),
        {"kills_nine_in_ten", ""},
        {},
        row.source());
  if (fahrenheit)
    for (double* value : {&kill.oneInTen, &kill.nineInTen}) *value = toCelsius(*value);
  kill.source = row.text(sourceField);
  return kill;
}

StageHeat stageHeatFrom(TableRow& row) {
  StageHeat heat;
  heat.name = row.text({"name", "name = \"green tip\""});
  row.oneOf<bool>({"method", ""}, {{"waking sine 3 C", true}});
  heat.needed = row.number({"needed", "needed = 364"}, {1, 3000});
  heat.deviation = row.number({"deviation", "deviation = 23"}, {0, 1000});
  heat.published = row.text({"published", "published = \"sum, base, start, method\""});
  heat.source = row.text(sourceField);
  return heat;
}

template <class Row>
const Row* named(const std::vector<Row>& rows, std::string_view name) {
  const auto found = std::ranges::find(rows, name, &Row::name);
  return found == rows.end() ? nullptr : &*found;
}

}  // namespace

const Cultivar* TradeTables::cultivar(std::string_view name) const {
  return named(cultivars, name);
}

const Rootstock* TradeTables::rootstock(std::string_view name) const {
  return named(rootstocks, name);
}

const Station* TradeTables::station(std::string_view name) const {
  return named(stations, name);
}

const StageHeat* TradeTables::heatOf(std::string_view stage) const {
  return named(stageHeat, stage);
}

const MaterialItem* TradeTables::material(std::string_view name) const {
  return named(materials, name);
}

const DelayWeight& TradeTables::delayWeight(DelayCost cost) const {
  const auto found = std::ranges::find(delayWeights, cost, &DelayWeight::cost);
  TOPWIRE_REQUIRE(found != delayWeights.end());
  return *found;
}

const TrellisPlan* TradeTables::trellis(std::string_view programme) const {
  return named(trellises, programme);
}

Checked<std::vector<Cultivar>> readCultivars(std::string_view toml,
                                             const std::string& file) {
  return readTable<Cultivar>(toml, file, cultivarKind, cultivarFrom);
}

Checked<std::vector<Rootstock>> readRootstocks(std::string_view toml,
                                               const std::string& file) {
  return readTable<Rootstock>(toml, file, rootstockKind, rootstockFrom);
}

Checked<std::vector<Station>> readStations(std::string_view toml,
                                           const std::string& file) {
  return readTable<Station>(toml, file, stationKind, stationFrom);
}

Checked<std::vector<FrostKill>> readFrostKills(std::string_view toml,
                                               const std::string& file) {
  return readTable<FrostKill>(toml, file, stageKind, frostKillFrom);
}

Checked<std::vector<StageHeat>> readStageHeat(std::string_view toml,
                                              const std::string& file) {
  return readTable<StageHeat>(toml, file, stageHeatKind, stageHeatFrom);
}

}  // namespace topwire
