#include "core/phenology/heat_units.h"

#include "core/weather/normals.h"

#include <cmath>

namespace topwire {

namespace {

double shareIn(HeatMeasure measure, int daysFromFebruary) {
  return measure == HeatMeasure::heatUnits ? wakingShare(daysFromFebruary) : 1;
}

}  // namespace

double baseOf(HeatMeasure measure) {
  return measure == HeatMeasure::heatUnits ? 3 : 6.1;
}

double wakingShare(int daysFromFebruary) {
  constexpr double scaleDays = 10;
  return 1 / (1 + std::exp(-daysFromFebruary / scaleDays));
}

double heatOf(HeatMeasure measure, DayExtremes day, int daysFromFebruary) {
  return shareIn(measure, daysFromFebruary) * singleSine(day, {.lower = baseOf(measure)});
}

double expectedHeatOf(HeatMeasure measure,
                      DayExtremes normal,
                      double scatter,
                      int daysFromFebruary) {
  return shareIn(measure, daysFromFebruary)
         * expectedDegreeDays(normal, baseOf(measure), scatter);
}

}  // namespace topwire
