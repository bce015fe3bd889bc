#pragma once

#include "core/phenology/outlook.h"

namespace topwire {

/// Dates from the weather: what was measured this season, then the forecast, then each
/// past season of the station's record in turn (ten kinds of season from the monthly
/// normals where the record has fewer than ten), against the heat each stage needs. The
/// need is the published one, moved by the cultivar's shift and by the grower's own past
/// dates; it is drawn ten times from its spread for each course of the weather, and the
/// date is the middle of what comes out, its span the middle eight tenths.
///
/// What was seen in the planting this season, up to today, goes first; a later record
/// counts as not yet made. A stage that was seen has its day; the others follow from the
/// nearest one seen before them, or else after them. Of two records of one stage the
/// earlier holds, and none outlasts that of a later stage. Heat that the season never
/// brings puts a stage on the season's last day.
class WeatherForecaster final : public StageForecaster {
public:
  /// `tables` must outlive the forecaster and hold the heat of every stage up to petal
  /// fall.
  explicit WeatherForecaster(const TradeTables& tables) : tables_(&tables) {}

  std::unique_ptr<StageForecast> over(const Orchard& orchard, Day today) const override;

private:
  const TradeTables* tables_;
};

}  // namespace topwire
