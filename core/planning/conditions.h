#pragma once

#include "core/calendar/season.h"
#include "core/orchard/measurements.h"
#include "core/programme/programme.h"

#include <optional>
#include <vector>

namespace topwire {

/// A condition with what it was held against.
struct ConditionReason {
  Condition condition;
  std::int64_t bound = 0;  ///< the condition's value, or the height of the top wire
  std::optional<MeasuredMean> measured;

  /// Nothing where nothing was measured.
  std::optional<bool> holds() const;

  friend bool operator==(const ConditionReason&, const ConditionReason&) = default;
};

/// How much the leader grew between two measurements of one season.
struct GrowthPace {
  Day from{};
  Day to{};
  Length grown;

  friend bool operator==(const GrowthPace&, const GrowthPace&) = default;
};

/// What one planting's measurements say to the conditions of its programme.
class MeasuredTrees {
public:
  /// The references must outlive this.
  MeasuredTrees(const Orchard& orchard, const Planting& planting);

  /// By the last measurement up to and including `upTo`. A trunk, a leader's height and
  /// the space filled hold until measured again. Growth and fruit belong to one season:
  /// those of `season` count, and those of the one before where `lastSeasonToo`.
  ConditionReason weigh(const Condition& condition,
                        Season season,
                        Day upTo,
                        bool lastSeasonToo) const;

  /// The leader's growth between each measurement of the season and the next one of the
  /// same measure, its height or its growth so far, by the day they are known.
  std::vector<GrowthPace> pacesIn(Season season) const;

private:
  void addPaces(std::vector<GrowthPace>& paces, Measure measure, DaySpan season) const;

  Hemisphere hemisphere_;
  Length topWire_;
  std::vector<const Measurement*> measurements_;
};

}  // namespace topwire
