#pragma once

#include "core/phenology/calibration.h"
#include "core/phenology/outlook.h"
#include "core/phenology/site_heat.h"

namespace topwire {

/// Whose stages are asked for, and what is known about their needs. The references must
/// outlive the call.
struct PlantingCase {
  const Orchard& orchard;
  const TradeTables& tables;
  const Calibration& calibration;
  const Planting& planting;
  Season season;
  Day today;
};

/// All stages of the planting with the heat of its site; see WeatherForecaster.
Outlook stagesOf(const PlantingCase& which, SiteHeat& site);

}  // namespace topwire
