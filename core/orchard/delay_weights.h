#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace topwire {

/// What a day's delay past the closing costs, from lost minutes to a lost tree.
enum class DelayCost { low, medium, high, veryHigh };

/// What late work costs, as shipped in resources/tables/delay.toml: hours of work lost
/// for each hour of work.
struct DelayWeight {
  std::string name;  ///< as programmes write the cost
  DelayCost cost = DelayCost::medium;
  double perDay = 0;  ///< for each day past the closing
  double undone = 0;
  std::string source;
};

/// A row for each cost; one that is missing is told.
Checked<std::vector<DelayWeight>> readDelayWeights(std::string_view toml,
                                                   const std::string& file);

}  // namespace topwire
