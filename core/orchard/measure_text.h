#pragma once

#include "core/base/result.h"
#include "core/orchard/records.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace topwire {

/// In the order they are listed.
std::span<const Measure> allMeasures();
/// "trunk-diameter", as files and the command line write it.
std::string codeOf(Measure measure);
std::optional<Measure> measureByCode(std::string_view code);
Words nameOf(Measure measure);
/// Lengths are kept in micrometres; the others are counts and percent.
bool isLength(Measure measure);

/// Reads values of sample trees as they are typed: "1.5, 1 5/8, 1.4 in", "38 36 41 mm",
/// "7 ft 2 in; 6 ft 11 in", "12 15 9". A unit holds for the values before it that have
/// none; where there is none at all it is the one `measuredText` writes. A comma within
/// one number is a decimal comma (1,5), any other separates. The problem names the words
/// that can't be read; its place is "values".
Result<std::vector<std::int64_t>> readMeasured(std::string_view text,
                                               Measure measure,
                                               UnitSystem units);

/// "38.5 mm", "1.52 in", "2.95 m", "9.7 ft", "41 cm", "16.1 in", "31", "80 %".
std::string measuredText(double value, Measure measure, UnitSystem units);
/// The number of the above, for an axis.
double shownValue(double value, Measure measure, UnitSystem units);
/// The unit of the above alone; empty for counts.
std::string unitText(Measure measure, UnitSystem units);

}  // namespace topwire
