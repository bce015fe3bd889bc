#pragma once

#include "core/phenology/outlook.h"

namespace topwire {

/// Dates from twelve monthly normals: daily means that keep each month's mean, heat
/// summed over the day-to-day scatter (a threshold cuts smooth normals, which then date
/// spring up to nine days late), the block's elevation, the cultivar's shift in days, and
/// ten days more in the first leaf.
///
/// What was seen in the planting this season, up to `today`, goes first; a later record
/// counts as not yet made, and `today` moves no other date. A stage that was seen has its
/// day; the others follow from the nearest one seen before them, or else after them. Of
/// two records of one stage the earlier holds, and none outlasts that of a later stage.
/// Heat that the season never brings puts a stage on the season's last day.
///
/// The sources of every figure stand beside it in normals_forecaster.cpp.
class NormalsForecaster final : public StageForecaster {
public:
  /// `tables` must outlive the forecaster.
  explicit NormalsForecaster(const TradeTables& tables) : tables_(&tables) {}

  Outlook outlook(const Orchard& orchard,
                  const Planting& planting,
                  Season season,
                  Day today) const override;

private:
  const TradeTables* tables_;
};

}  // namespace topwire
