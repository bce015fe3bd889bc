#include "core/phenology/weather_forecaster.h"

#include "core/phenology/own_heat.h"
#include "core/phenology/planting_stages.h"

#include <map>

namespace topwire {

namespace {

/// Published sums hold where the coldest month is no warmer: at Meknes (10.5 degrees)
/// bloom took three times the heat, and at Zaragoza (7.0) they would put bloom in
/// mid-March. The limit is ours.
constexpr double warmestHoldingWinter = 6;

/// So many of a grower's own seasons make up for a ladder that does not hold.
constexpr int ownSeasonsThatHold = 3;

class WeatherForecast final : public StageForecast {
public:
  WeatherForecast(const Orchard& orchard, const TradeTables& tables, Day today)
      : orchard_(&orchard)
      , tables_(&tables)
      , today_(today)
      , climate_(orchard)
      , coolWinters_(siteAt(correctionOf(orchard.settings)).coldestMonth()
                     <= warmestHoldingWinter)
      , calibration_(ownHeat(),
                     coolWinters_ ? Calibration::coolPlaces : Calibration::warmPlaces) {}

  Outlook outlook(const Planting& planting, Season season) override {
    SiteHeat& site = siteAt(correctionOf(*orchard_, planting));
    const PlantingCase which{*orchard_, *tables_, calibration_, planting, season, today_};
    Outlook outlook = stagesOf(which, site);
    outlook.ladderHolds =
        site.coldestMonth() <= warmestHoldingWinter
        || calibration_.seasonsOf(planting.cultivar) >= ownSeasonsThatHold;
    return outlook;
  }

private:
  SiteHeat& siteAt(const SiteCorrection& correction) {
    const auto known = sites_.find(correction);
    if (known != sites_.end()) return known->second;
    return sites_
        .emplace(correction, SiteHeat{climate_, correction, HeatMeasure::heatUnits})
        .first->second;
  }

  std::vector<OwnHeat> ownHeat() {
    const Season current = seasonOf(today_, climate_.hemisphere);
    return ownHeatOf(*orchard_,
                     *tables_,
                     current,
                     [this](const Planting* planting, Season season, Day day) {
                       return siteAt(planting != nullptr
                                         ? correctionOf(*orchard_, *planting)
                                         : correctionOf(orchard_->settings))
                           .measuredBy(season, day);
                     });
  }

  const Orchard* orchard_;
  const TradeTables* tables_;
  Day today_;
  StationClimate climate_;
  std::map<SiteCorrection, SiteHeat> sites_;
  bool coolWinters_;
  Calibration calibration_;
};

}  // namespace

std::unique_ptr<StageForecast> WeatherForecaster::over(const Orchard& orchard,
                                                       Day today) const {
  return std::make_unique<WeatherForecast>(orchard, *tables_, today);
}

}  // namespace topwire
