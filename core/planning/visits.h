#pragma once

#include "core/planning/conditions.h"

#include <optional>
#include <vector>

namespace topwire {

/// One pass of repeated work.
struct Visit {
  DaySpan days;
  int every = 0;  ///< days since the visit before it; of the first one, to expect
  std::optional<GrowthPace> growth;  ///< where growth brought it forward

  friend bool operator==(const Visit&, const Visit&) = default;
};

/// Ties that follow each other within a week are one visit, however fast the leader
/// grows: common practice.
constexpr int leastDaysByGrowth = 7;

/// How often visits are due: every so many days, or sooner where the leader grows
/// `everyGrowth` in fewer. `paces` are by the day they are known; a pace moves no visit
/// that was due before that day.
struct VisitRule {
  int everyDays = 1;
  std::optional<Length> everyGrowth;
  std::vector<GrowthPace> paces;
};

/// The visits that fill the window, at least one. A visit is due until the next one
/// begins; a remainder under half an interval joins the last one.
std::vector<Visit> visitsIn(DaySpan window, const VisitRule& rule);

/// At that pace, rounded down so that no more than this grows, a century at the most;
/// nothing where the leader stands still.
std::optional<int> daysToGrow(Length length, const GrowthPace& pace);

}  // namespace topwire
