#pragma once

#include "core/orchard/orchard.h"
#include "core/orchard/trade_tables.h"
#include "core/phenology/stage.h"

#include <memory>
#include <optional>
#include <vector>

namespace topwire {

/// Where a stage's date comes from. `byOffset`: a set number of days from another stage,
/// or a month of the season; no heat sum is published for it.
enum class StageKind { observed, expected, byOffset };

/// The heat behind an expected date, in heat units: counted from the season's first day,
/// or from an observed stage on, then with what lies between the two stages as the need.
struct HeatBasis {
  double needed = 0;    ///< with the cultivar's shift and the grower's own dates in it
  double reached = 0;   ///< by the end of the day the outlook was made for
  double base = 0;      ///< degrees C
  Day from{};           ///< first day summed
  int pastSeasons = 0;  ///< whose weather stands for what is to come; 0 for the normals
  int ownSeasons = 0;  ///< of this cultivar's dates here, by which the need was corrected

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
  double degreesForBlock = 0;      ///< mean of the grower's own corrections, beside it
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
  friend bool operator==(const Outlook&, const Outlook&) = default;
};

/// The stages of one orchard as known on one day. What they take to work out is kept, so
/// one of these serves a whole planning.
class StageForecast {
public:
  virtual ~StageForecast() = default;
  /// The planting must be one of the orchard's.
  virtual Outlook outlook(const Planting& planting, Season season) = 0;
};

/// Answers when plantings reach their stages.
class StageForecaster {
public:
  virtual ~StageForecaster() = default;
  /// As known on `today`; `orchard` must outlive the forecast.
  virtual std::unique_ptr<StageForecast> over(const Orchard& orchard,
                                              Day today) const = 0;
};

}  // namespace topwire
