#pragma once

#include "core/orchard/records.h"
#include "core/weather/degree_days.h"

#include <vector>

namespace topwire {

/// Daily means for each day of `year` (365 or 366 values) whose average over each month
/// is that month's normal: repeated smoothing of the step function with the monthly error
/// put back, after Rymes and Myers 2001 (Solar Energy 71:225).
std::vector<double> dailyFromMonthly(const std::array<double, 12>& monthly, int year);

/// Degrees Celsius to add at `site` to a temperature measured at `station`: 6.5 degrees a
/// kilometre down (ISO 2533, the standard atmosphere's lapse rate).
double lapseCorrection(Length site, Length station);

/// Mean single-sine degree days of days that scatter around the given normal with the
/// standard deviation `scatter` (degrees C), over ten equally likely shifts.
double expectedDegreeDays(DayRange normal, double lower, double scatter);

}  // namespace topwire
