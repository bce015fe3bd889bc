#pragma once

#include "app/models/session.h"

#include <QString>

#include <optional>
#include <vector>

namespace topwire {

/// A day of the coming ones as it will be in one planting: the station's temperatures
/// corrected for its block.
struct DayAhead {
  Day day{};
  std::optional<WeatherDay> weather;
  std::vector<DayCaution> cautions;  ///< the weightiest first
};

std::vector<DayAhead> daysAhead(const Session& session,
                                const Planting& planting,
                                int count = 10);

/// One word for the kind: "frost", "wet".
QString nameOf(CautionKind kind);
/// "-1 / 14 °C", without the unit where `bare`; empty where neither is known.
QString rangeText(const WeatherDay& weather, UnitSystem units, bool bare);
/// "4.2 mm" or "0.17 in"; empty where nothing fell or nothing is known.
QString rainText(const WeatherDay& weather, UnitSystem units);
/// The day, its figures and every caution in full, for the screen reader and the line
/// below the days.
QString describe(const DayAhead& day, UnitSystem units);

}  // namespace topwire
