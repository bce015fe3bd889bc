#include "app/models/fresh_orchard.h"

namespace topwire {

void takeStation(Settings& settings, const Station& station) {
  settings.station = station.name;
  settings.stationElevation = station.elevation;
  settings.normals = station.normals;
}

Orchard freshOrchard(const TradeTables& tables,
                     std::string name,
                     UnitSystem units,
                     Day today) {
  Orchard orchard;
  Settings& settings = orchard.settings;
  settings.name = std::move(name);
  settings.units = units;
  if (!tables.stations.empty()) {
    const Station& station = tables.stations.front();
    takeStation(settings, station);
    settings.latitude = station.latitude;
    settings.elevation = station.elevation;
  }
  const Hemisphere hemisphere = settings.hemisphere();
  settings.recordsFrom = firstDayOf(seasonOf(today, hemisphere), hemisphere);
  return orchard;
}

}  // namespace topwire
