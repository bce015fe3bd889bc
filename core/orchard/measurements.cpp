#include "core/orchard/measurements.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <tuple>

namespace topwire {

namespace {

/// What a value of `measured` is multiplied with to say `wanted`; nothing where the one
/// tells nothing of the other.
std::optional<double> factorBetween(Measure measured, Measure wanted) {
  if (measured == wanted) return 1;
  if (measured == Measure::trunkGirth && wanted == Measure::trunkDiameter)
    return 1 / std::numbers::pi;
  if (measured == Measure::trunkDiameter && wanted == Measure::trunkGirth)
    return std::numbers::pi;
  return std::nullopt;
}

}  // namespace

std::vector<const Measurement*> measurementsOf(const Orchard& orchard,
                                               PlantingId planting) {
  std::vector<const Measurement*> found;
  for (const auto& [id, measurement] : orchard.measurements)
    if (measurement.planting == planting && !measurement.values.empty())
      found.push_back(&measurement);
  std::ranges::sort(found, [](const Measurement* a, const Measurement* b) {
    return std::tie(a->day, a->id) < std::tie(b->day, b->id);
  });
  return found;
}

const Measurement* latest(const Orchard& orchard,
                          PlantingId planting,
                          Measure measure,
                          Day upTo) {
  const Measurement* last = nullptr;
  for (const Measurement* each : measurementsOf(orchard, planting))
    if (each->measure == measure && each->day <= upTo) last = each;
  return last;
}

std::optional<double> meanOf(const Measurement& measurement) {
  const auto& values = measurement.values;
  if (values.empty()) return std::nullopt;
  return std::accumulate(values.begin(), values.end(), 0.0)
         / static_cast<double>(values.size());
}

std::optional<MeasuredMean> lastMean(const std::vector<const Measurement*>& measurements,
                                     Measure measure,
                                     DaySpan within) {
  const Measurement* last = nullptr;
  for (const Measurement* each : measurements) {
    if (!within.contains(each->day) || !factorBetween(each->measure, measure)) continue;
    const bool outdone = last && last->day == each->day && last->measure == measure
                         && each->measure != measure;
    if (!outdone) last = each;
  }
  if (!last) return std::nullopt;
  return MeasuredMean{*meanOf(*last) * *factorBetween(last->measure, measure), last->day};
}

std::optional<Length> trunkDiameter(const Orchard& orchard,
                                    const Planting& planting,
                                    Day upTo) {
  const auto mean = lastMean(
      measurementsOf(orchard, planting.id), Measure::trunkDiameter, {Day::min(), upTo});
  if (!mean) return std::nullopt;
  return Length::micrometres(std::llround(mean->value));
}

Length topWireOf(const Block& block) {
  return block.wires.empty() ? usualTopWire : std::ranges::max(block.wires);
}

}  // namespace topwire
