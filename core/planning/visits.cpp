#include "core/planning/visits.h"

#include "core/base/contract.h"

#include <algorithm>

namespace topwire {

namespace {

struct Interval {
  int days;
  std::optional<GrowthPace> growth;
};

const GrowthPace* paceKnownOn(Day day, const VisitRule& rule) {
  const auto later = std::ranges::upper_bound(rule.paces, day, {}, &GrowthPace::to);
  return later == rule.paces.begin() ? nullptr : &*std::prev(later);
}

/// The first day on which what is known by then calls for a visit.
Interval intervalAfter(Day visit, const VisitRule& rule) {
  const int latest = rule.everyGrowth ? rule.everyDays : 0;
  for (int days = leastDaysByGrowth; days < latest; ++days) {
    const GrowthPace* pace = paceKnownOn(plusDays(visit, days), rule);
    const auto needed = pace ? daysToGrow(*rule.everyGrowth, *pace) : std::nullopt;
    if (needed && *needed <= days) return {days, *pace};
  }
  return {rule.everyDays, std::nullopt};
}

}  // namespace

std::optional<int> daysToGrow(Length length, const GrowthPace& pace) {
  if (pace.grown <= Length{}) return std::nullopt;
  constexpr std::int64_t never = 36'500;
  const std::int64_t days = length.inMicrometres() * daysBetween(pace.from, pace.to)
                            / pace.grown.inMicrometres();
  return static_cast<int>(std::min(days, never));
}

std::vector<Visit> visitsIn(DaySpan window, const VisitRule& rule) {
  TOPWIRE_REQUIRE(rule.everyDays > 0);
  std::vector<Visit> visits{{window, rule.everyDays, std::nullopt}};
  while (true) {
    const Day last = visits.back().days.first;
    const Interval interval = intervalAfter(last, rule);
    const Day next = plusDays(last, interval.days);
    const int left = daysBetween(next, window.last) + 1;
    if (left < interval.days - interval.days / 2) return visits;
    visits.back().days.last = plusDays(next, -1);
    visits.push_back({{next, window.last}, interval.days, interval.growth});
  }
}

}  // namespace topwire
