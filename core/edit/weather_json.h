#pragma once

#include "core/orchard/weather_records.h"

#include <nlohmann/json.hpp>

namespace topwire {

/// A month as a letter for each day's source and a column for each figure, which keeps a
/// century of them small. Reading throws what the library does, or std::runtime_error
/// for a month that is not sound.
nlohmann::json toJson(const WeatherMonth& month);
void read(const nlohmann::json& json, WeatherMonth& month);

}  // namespace topwire
