#pragma once

#include "core/base/record_id.h"
#include "core/base/result.h"
#include "core/edit/weather_deeds.h"

#include <string>
#include <string_view>
#include <vector>

namespace topwire {

/// Dates of stages in earlier seasons, from a table with commas, semicolons or tabs
/// between its values. Its first line names the columns, in any order and in English or
/// Spanish: cultivar; stage, by name or BBCH code; and either date (YYYY-MM-DD), or year
/// and "day of year", 1 being 1 January. Other columns are passed over.
///
/// Every fault is told with its line, up to a hundred of them. What the dates mean is
/// checked by the deed that brings them in.
Checked<std::vector<PlacedPastStage>> readPastStages(std::string_view text,
                                                     const std::string& file,
                                                     IdSource& ids);

}  // namespace topwire
