#pragma once

#include "core/orchard/orchard.h"
#include "core/weather/degree_days.h"

#include <compare>

namespace topwire {

/// Degrees C added to the station's temperatures at one place: for its height, and by the
/// grower's own word.
struct SiteCorrection {
  double forElevation = 0;
  double minimum = 0;  ///< with `forElevation` in it
  double maximum = 0;

  /// What the grower's own corrections add to the day's mean.
  double forBlock() const { return (minimum + maximum) / 2 - forElevation; }

  WeatherDay at(WeatherDay station) const;

  friend auto operator<=>(const SiteCorrection&, const SiteCorrection&) = default;
};

SiteCorrection correctionOf(const Orchard& orchard, const Planting& planting);
/// At the orchard's own elevation.
SiteCorrection correctionOf(const Settings& settings);

}  // namespace topwire
