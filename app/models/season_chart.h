#pragma once

#include "app/models/session.h"
#include "app/paper/heat_chart.h"

#include <QString>

#include <optional>
#include <vector>

namespace topwire {

/// What the weather page shows of one planting's season, read afresh from the session.

/// The season today lies in, in the orchard's units: degree days Fahrenheit where it
/// counts in feet.
HeatScene heatScene(const Session& session,
                    const Planting& planting,
                    HeatMeasure measure);

/// One stage in the list beside the chart.
struct StageLine {
  int bbch = 0;
  QString name;
  bool seen = false;
  Day date{};
  QString when;     ///< "Sat 10 April", "seen Fri 2 April"
  QString details;  ///< span and sum, or how it compares with last season
};

std::vector<StageLine> stageLines(const Session& session,
                                  const Planting& planting,
                                  const HeatScene& scene);

/// Of those after the last one seen, the one whose day is nearest to today.
std::optional<int> nextStage(const std::vector<StageLine>& lines, Day today);

/// "Creek 1: Gala".
QString plantingName(const Orchard& orchard, const Planting& planting);
/// "Degree days above 6.1 °C, station Ellensburg, 457 m".
QString measureText(const Orchard& orchard, HeatMeasure measure);
/// "Measured to Wed 7 April, 2 days missing. Forecast to Thu 15 April."
QString coverageText(const SeasonHeat& heat);

}  // namespace topwire
