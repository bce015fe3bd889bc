#pragma once

#include "core/orchard/orchard.h"
#include "core/orchard/trade_tables.h"
#include "core/phenology/stage.h"

#include <optional>
#include <vector>

namespace topwire {

/// Where a stage's date comes from. `byOffset`: a set number of days from another stage,
/// or a month of the season; no heat sum is published for it.
enum class StageKind { observed, expected, byOffset };

/// The heat behind an expected date: counted from the season's first day, or from an
/// observed stage on, then with what lies between the two stages as the need. Sums belong
/// to one method and are never compared across methods. The cultivar's shift is in days
/// and not in `needed`.
struct HeatBasis {
  double needed = 0;   ///< degree days C
  double reached = 0;  ///< by the end of the day the outlook was made for
  double base = 0;     ///< degrees C
  Day from{};          ///< first day summed

  friend bool operator==(const HeatBasis&, const HeatBasis&) = default;
};

/// One stage of one planting in one season. The span holds eight cases in ten; it is the
/// one day where the stage was observed.
struct StageEstimate {
  int bbch = 0;
  StageKind kind = StageKind::expected;
  Day date{};
  Day early{};
  Day late{};
  std::optional<HeatBasis> heat;
  double cultivarShiftDays = 0;    ///< against Golden Delicious; later is positive
  int firstLeafDelayDays = 0;      ///< a planting in its first leaf wakes later
  double degreesForElevation = 0;  ///< added to the station's temperatures
  std::optional<int> pulledBy;     ///< the observed stage that moved this one

  friend bool operator==(const StageEstimate&, const StageEstimate&) = default;
};

/// All stages of one planting in one season, in the order it reaches them: their dates
/// never run backwards.
struct Outlook {
  std::vector<StageEstimate> stages;
  /// False at a warm-winter station, where the published ladder of heat sums does not
  /// hold and local dates are wanted.
  bool ladderHolds = true;

  const StageEstimate* find(int bbch) const;
};

/// Answers when a planting reaches its stages. Monthly normals stand behind it now; daily
/// weather and an ensemble of past years fit the same question.
class StageForecaster {
public:
  virtual ~StageForecaster() = default;
  virtual Outlook outlook(const Orchard& orchard,
                          const Planting& planting,
                          Season season,
                          Day today) const = 0;
};

}  // namespace topwire
