#pragma once

#include "core/weather/weather_file.h"

#include <optional>
#include <string>
#include <string_view>

namespace topwire {

/// Reads daily weather in any of the formats of WeatherFormat, told apart by what stands
/// in the text. Temperatures come out in degrees C and rain in mm, both to 0.01.
///
/// What is doubtful is left out and told: values its source has flagged, values no
/// instrument shows, lines that cannot be read. A minimum above its maximum is swapped
/// with it. Days without values stay gaps. A day that stands twice has the values of the
/// later line, but a measurement stands before a forecast wherever it is. The text is
/// refused as a whole where it is none of the formats, where most lines cannot be read,
/// where the temperatures cannot be in the unit told, or where no day has both
/// temperatures.
///
/// `file` names the text in the problems. Nothing comes back where `progress`, which may
/// be empty, asked to stop.
Checked<std::optional<WeatherFile>> readWeather(std::string_view text,
                                                const std::string& file,
                                                const WeatherReading& reading,
                                                const ReadingProgress& progress = {});

}  // namespace topwire
