#pragma once

#include "core/base/result.h"
#include "core/orchard/delay_weights.h"
#include "core/orchard/material_table.h"
#include "core/orchard/orchard.h"
#include "core/orchard/target_tables.h"

#include <string>
#include <string_view>
#include <vector>

namespace topwire {

/// A cultivar as shipped in resources/tables/cultivars.toml, with its sources.
struct Cultivar {
  std::string name;
  double vigourScore = 0;      ///< -1 weak, -0.5, 0 moderate, +0.5, +1 strong
  double bloomShiftDays = 0;   ///< full bloom against Golden Delicious; later is positive
  int bloomToHarvestDays = 0;  ///< full bloom to harvest
  bool biennial = false;
  std::string habit;
  std::string source;
};

struct Rootstock {
  std::string name;
  double vigourScore = 0;
  bool suitsSystem = true;  ///< false where it outgrows a narrow wall (M.7 and up)
  std::string source;
};

/// A station with published normals, offered when an orchard is described.
struct Station {
  std::string name;
  double latitude = 0;
  Length elevation;
  MonthlyNormals normals;  ///< degrees Celsius, converted where published otherwise
  std::string period;
  std::string source;
};

/// What kills the flower buds of a stage in half an hour, degrees Celsius.
struct FrostKill {
  std::string name;  ///< of the stage
  int bbch = 0;
  double oneInTen = 0;
  double nineInTen = 0;
  std::string source;
};

/// The heat a stage needs, for Golden Delicious, in the heat units of
/// core/phenology/heat_units.h; the file's head says how the sums were found.
struct StageHeat {
  std::string name;  ///< the stage's, as core/phenology/stage.h has it
  double needed = 0;
  double deviation = 0;   ///< standard deviation from season to season
  std::string published;  ///< the sum it was converted from, with base, start and method
  std::string source;
};

struct TradeTables {
  std::vector<Cultivar> cultivars;
  std::vector<Rootstock> rootstocks;
  std::vector<Station> stations;
  std::vector<FrostKill> frostKills;
  std::vector<StageHeat> stageHeat;
  TargetTables targets = {};
  std::vector<MaterialItem> materials = {};
  std::vector<TrellisPlan> trellises = {};
  std::vector<DelayWeight> delayWeights = {};

  const Cultivar* cultivar(std::string_view name) const;
  const Rootstock* rootstock(std::string_view name) const;
  const Station* station(std::string_view name) const;
  /// By the stage's English name.
  const StageHeat* heatOf(std::string_view stage) const;
  const MaterialItem* material(std::string_view name) const;
  const DelayWeight& delayWeight(DelayCost cost) const;
  /// That of a programme.
  const TrellisPlan* trellis(std::string_view programme) const;
};

/// Each reads one TOML text; every fault with its line. `file` names it in the problems.
Checked<std::vector<Cultivar>> readCultivars(std::string_view toml,
                                             const std::string& file);
Checked<std::vector<Rootstock>> readRootstocks(std::string_view toml,
                                               const std::string& file);
Checked<std::vector<Station>> readStations(std::string_view toml,
                                           const std::string& file);
Checked<std::vector<FrostKill>> readFrostKills(std::string_view toml,
                                               const std::string& file);

Checked<std::vector<StageHeat>> readStageHeat(std::string_view toml,
                                              const std::string& file);

/// What made up a vigour class, for showing it.
struct VigourBasis {
  Vigour vigour;
  double score;
  double fromCultivar;
  double fromRootstock;
  bool byGrower;       ///< the grower's word; the score is what it would have been
  std::string reason;  ///< the grower's, where given
  std::optional<Season> since;  ///< the season whose target changed it
};

/// Scion plus stock score (resources/tables); -1 or less is weak, 1 or more strong. A
/// name missing from a table counts as moderate.
VigourBasis vigourOf(const TradeTables& tables, const Planting& planting);

/// The class in one season: what the latest target up to it says, else as above.
VigourBasis vigourIn(Season season,
                     const Orchard& orchard,
                     const TradeTables& tables,
                     const Planting& planting);

}  // namespace topwire
