#pragma once

#include "core/orchard/records.h"
#include "core/weather/degree_days.h"

#include <array>
#include <vector>

namespace topwire {

/// Standard normal deviates at the middles of ten equally likely classes: the 5th, 15th
/// ... 95th percentiles.
inline constexpr std::array equallyLikely{
    -1.645, -1.036, -0.674, -0.385, -0.126, 0.126, 0.385, 0.674, 1.036, 1.645};

/// Daily means for each day of `year` (365 or 366 values) whose average over each month
/// is that month's normal: repeated smoothing of the step function with the monthly error
/// put back, after Rymes and Myers 2001 (Solar Energy 71:225).
std::vector<double> dailyFromMonthly(const std::array<double, 12>& monthly, int year);

/// Degrees Celsius to add at `site` to a temperature measured at `station`: 6.5 degrees a
/// kilometre down (ISO 2533, the standard atmosphere's lapse rate).
double lapseCorrection(Length site, Length station);

/// Mean single-sine degree days of days that scatter around the given normal with the
/// standard deviation `scatter` (degrees C), over ten equally likely shifts.
double expectedDegreeDays(DayExtremes normal, double lower, double scatter);

}  // namespace topwire
