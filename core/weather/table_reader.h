#pragma once

#include "core/weather/reading_pace.h"
#include "core/weather/table_columns.h"
#include "core/weather/weather_collector.h"

#include <string>
#include <string_view>

namespace topwire {

/// Reads a CSV with headings: NOAA's daily summaries, or any other with a date, a minimum
/// and a maximum. False where the pace asked to stop; a problem, placed in `file`, where
/// the table says two things of its unit or leaves open what its dates are.
Result<bool> readTable(std::string_view text,
                       const std::string& file,
                       const TableColumns& columns,
                       const WeatherReading& reading,
                       ReadingPace& pace,
                       WeatherCollector& collector);

}  // namespace topwire
