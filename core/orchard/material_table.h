#pragma once

#include "core/base/phrase.h"
#include "core/base/result.h"
#include "core/units/length.h"

#include <string>
#include <string_view>
#include <vector>

namespace topwire {

/// What amounts of an item are counted in.
enum class MaterialUnit { piece, gram, millilitre, metre };

/// What programmes ask to be picked up, as shipped in resources/tables/materials.toml.
struct MaterialItem {
  std::string name;  ///< "soft tie"; the key programmes name it by
  Words label;       ///< of one of it
  MaterialUnit unit = MaterialUnit::piece;
  Words pack;           ///< what it is bought in: "box of 1,000"
  double packSize = 1;  ///< in `unit`
  /// How much of a need is bought; the rest goes round again from earlier use.
  double share = 1;
  double sparePercent = 0;
  std::string source;

  friend bool operator==(const MaterialItem&, const MaterialItem&) = default;
};

/// The trellis a programme is planned with where a block does not say what stands on it
/// (resources/tables/trellis.toml).
struct TrellisPlan {
  std::string name;           ///< the programme's id
  std::vector<Length> wires;  ///< heights above the ground, lowest first
  Length postSpacing;
  int endPostsPerRow = 2;
  int anchorsPerRow = 2;
  std::string source;

  friend bool operator==(const TrellisPlan&, const TrellisPlan&) = default;
};

/// Each reads one TOML text; every fault with its line. `file` names it in the problems.
Checked<std::vector<MaterialItem>> readMaterials(std::string_view toml,
                                                 const std::string& file);
Checked<std::vector<TrellisPlan>> readTrellises(std::string_view toml,
                                                const std::string& file);

}  // namespace topwire
