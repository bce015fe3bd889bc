#include "core/weather/site_correction.h"

#include "core/weather/normals.h"

namespace topwire {

WeatherDay SiteCorrection::at(WeatherDay station) const {
  if (station.minimum) *station.minimum += minimum;
  if (station.maximum) *station.maximum += maximum;
  return station;
}

SiteCorrection correctionOf(const Settings& settings) {
  const double height = lapseCorrection(settings.elevation, settings.stationElevation);
  return {height, height, height};
}

SiteCorrection correctionOf(const Orchard& orchard, const Planting& planting) {
  const Block& block = blockOf(orchard, planting);
  const double height =
      lapseCorrection(elevationOf(orchard, planting), orchard.settings.stationElevation);
  return {height, height + block.minimumCorrection, height + block.maximumCorrection};
}

}  // namespace topwire
