#pragma once

#include "core/phenology/outlook.h"

namespace topwire {

/// Dates from twelve monthly normals: daily means that keep each month's mean, heat
/// summed over the day-to-day scatter (a threshold cuts smooth normals, which then date
/// spring up to nine days late), the orchard's or block's elevation, the cultivar's
/// shift, and an observed stage, which replaces its own date and pulls the later ones
/// along.
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
