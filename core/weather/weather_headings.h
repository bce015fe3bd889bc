#pragma once

#include "core/weather/weather_file.h"

#include <optional>
#include <string_view>

namespace topwire {

/// What a column of a table holds, as far as weather is concerned.
enum class ColumnKind { date, minimum, maximum, rain, forecast, station, name };

struct Heading {
  ColumnKind kind = ColumnKind::date;
  /// The column holds the flags of the value, "measurement,quality,source", not itself.
  bool attributes = false;
  std::optional<TemperatureUnit> temperatureUnit;
  std::optional<RainUnit> rainUnit;
};

/// Understands English and Spanish headings such as "tmin", "Temp. max (F)", "minTemp_C",
/// "Temperatura mínima (°C)" and "precipitation", in UTF-8 or Latin-1, by the words they
/// are made of. Nothing where a word is unknown, so that "min humidity" is no
/// temperature.
std::optional<Heading> understand(std::string_view heading);

}  // namespace topwire
