#pragma once

#include "core/orchard/orchard.h"

#include <optional>
#include <vector>

namespace topwire {

/// A planting's measurements that hold values, by day; those of one day as their ids lie.
std::vector<const Measurement*> measurementsOf(const Orchard& orchard,
                                               PlantingId planting);

/// The last one of this measure taken on or before `upTo`; nothing where there is none.
const Measurement* latest(const Orchard& orchard,
                          PlantingId planting,
                          Measure measure,
                          Day upTo);

/// Over the sample trees, in the measurement's own unit; nothing without values.
std::optional<double> meanOf(const Measurement& measurement);

/// A mean and the day it was measured on. `value` is in micrometres, fruit or percent, as
/// Measurement keeps them.
struct MeasuredMean {
  double value;
  Day day;

  friend bool operator==(const MeasuredMean&, const MeasuredMean&) = default;
};

/// The last mean of a measure in these days, out of `measurementsOf`. A trunk's diameter
/// and girth stand in for each other (girth is pi times the diameter), whichever was
/// measured last; of two on one day the measure asked for.
std::optional<MeasuredMean> lastMean(const std::vector<const Measurement*>& measurements,
                                     Measure measure,
                                     DaySpan within);

/// From diameter or girth, whichever was measured last.
std::optional<Length> trunkDiameter(const Orchard& orchard,
                                    const Planting& planting,
                                    Day upTo);

/// Where a block says nothing of its wires: 10 ft, the height tall narrow plantings are
/// trained to by the end of the second or third leaf (Ontario's and Michigan's training
/// notes name it; common practice).
constexpr Length usualTopWire = Length::feet(10);

Length topWireOf(const Block& block);

}  // namespace topwire
