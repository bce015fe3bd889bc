#pragma once

#include "core/orchard/orchard.h"

#include <utility>
#include <vector>

namespace topwire::testing {

/// Notes one measurement of a planting, each value a sample tree's.
inline void measure(Orchard& orchard,
                    PlantingId planting,
                    Measure measure,
                    Day day,
                    std::vector<std::int64_t> values) {
  Measurement made;
  made.id = {3, orchard.measurements.size() + 1};
  made.planting = planting;
  made.measure = measure;
  made.day = day;
  made.values = std::move(values);
  orchard.measurements[made.id] = std::move(made);
}

inline void measureLength(
    Orchard& orchard, PlantingId planting, Measure kind, Day day, Length length) {
  measure(orchard, planting, kind, day, std::vector{length.inMicrometres()});
}

inline Condition atLeast(Measure measure, Length length) {
  return {measure, Condition::Side::atLeast, length.inMicrometres(), false};
}

inline Condition below(Measure measure, Length length) {
  return {measure, Condition::Side::below, length.inMicrometres(), false};
}

inline Condition atTopWire() {
  return {Measure::leaderHeight, Condition::Side::atLeast, 0, true};
}

inline Condition belowTopWire() {
  return {Measure::leaderHeight, Condition::Side::below, 0, true};
}

}  // namespace topwire::testing
