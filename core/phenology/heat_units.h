#pragma once

#include "core/weather/degree_days.h"

namespace topwire {

/// How a day's heat is counted; a sum holds only with the measure it was derived with.
///
/// `heatUnits` is what the stages' dates come from: single-sine degree days above 3
/// degrees C, of which a tree takes up a share that grows as it wakes from dormancy (see
/// `wakingShare`). `degreeDays` are those the trade publishes: single sine above 6.1
/// degrees C (43 F), every day whole.
enum class HeatMeasure { heatUnits, degreeDays };

/// Degrees C; no heat is counted below it.
double baseOf(HeatMeasure measure);

/// The share of a day's heat that counts, from 0 to 1: one half on 1 February (1 August
/// in the south), the logistic curve 1 / (1 + exp(-days / 10)) around it. A stated start
/// day does the same in one step, but then a warm week just before or after it is worth
/// everything or nothing; why base, day and scale are these is told in DEVELOPERS.md.
double wakingShare(int daysFromFebruary);

/// `daysFromFebruary` counts from 1 February, 1 August in the south.
double heatOf(HeatMeasure measure, DayExtremes day, int daysFromFebruary);
/// The mean over days that scatter around this normal; see expectedDegreeDays.
double expectedHeatOf(HeatMeasure measure,
                      DayExtremes normal,
                      double scatter,
                      int daysFromFebruary);

}  // namespace topwire
