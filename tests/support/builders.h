#pragma once

#include "core/edit/change.h"
#include "core/orchard/orchard.h"
#include "core/orchard/trade_tables.h"
#include "core/phenology/outlook.h"
#include "core/planning/planner.h"

#include <string>

namespace topwire::testing {

/// Text of a file below the project's root; aborts where it cannot be read.
std::string sourceText(const std::string& path);

/// The tables and programmes as shipped in resources/.
const TradeTables& shippedTables();
const Programmes& shippedProgrammes();

/// Settings of an invented orchard at 47 degrees north (or 39 south), on normals of a
/// shipped station; records begin long ago.
Settings northernSettings();
Settings southernSettings();

Block block(std::uint64_t id, const std::string& name, const std::string& rows);
/// A planting of Gala on M.9 T337 at 3 ft, 100 trees a row, in all the block's rows.
Planting planting(std::uint64_t id, const Block& block, Day planted);
/// An orchard of one block ("Creek", rows 1-10) with one planting set on that day.
Orchard orchardOfOne(const Settings& settings, Day planted);

/// A forecaster that works out each outlook anew, as a plain function.
class PlainForecaster : public StageForecaster {
public:
  std::unique_ptr<StageForecast> over(const Orchard& orchard, Day today) const final;
  virtual Outlook outlook(const Orchard& orchard,
                          const Planting& planting,
                          Season season,
                          Day today) const = 0;
};

/// Stages on fixed days, for tests that are about planning and not about weather: full
/// bloom on 10 May (10 November in the south) with the others around it.
class FixedForecaster final : public PlainForecaster {
public:
  Outlook outlook(const Orchard& orchard,
                  const Planting& planting,
                  Season season,
                  Day today) const override;
};

}  // namespace topwire::testing
