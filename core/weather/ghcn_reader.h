#pragma once

#include "core/weather/reading_pace.h"
#include "core/weather/weather_collector.h"

#include <string_view>

namespace topwire {

/// Whether a line has the shape of the format's lines.
bool isFixedWidthLine(std::string_view line);
bool isByStationLine(std::string_view line);

/// Read NOAA's Global Historical Climatology Network - Daily, whose readme lays down both
/// formats: values in tenths of a degree C and of a millimetre, -9999 where there is
/// none, three flags to a value of which any in the second means that a quality check
/// failed. False where the pace asked to stop.
bool readFixedWidth(std::string_view text,
                    const WeatherReading& reading,
                    ReadingPace& pace,
                    WeatherCollector& collector);
bool readByStation(std::string_view text,
                   const WeatherReading& reading,
                   ReadingPace& pace,
                   WeatherCollector& collector);

}  // namespace topwire
