#include "core/planning/conditions.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

bool belongsToOneSeason(Measure measure) {
  return measure == Measure::leaderGrowth || measure == Measure::shootGrowth
         || measure == Measure::fruitPerTree;
}

}  // namespace

std::optional<bool> ConditionReason::holds() const {
  if (!measured) return std::nullopt;
  const bool reached = measured->value >= static_cast<double>(bound);
  return reached == (condition.side == Condition::Side::atLeast);
}

MeasuredTrees::MeasuredTrees(const Orchard& orchard, const Planting& planting)
    : hemisphere_(orchard.settings.hemisphere())
    , topWire_(topWireOf(blockOf(orchard, planting)))
    , measurements_(measurementsOf(orchard, planting.id)) {}

ConditionReason MeasuredTrees::weigh(const Condition& condition,
                                     Season season,
                                     Day upTo,
                                     bool lastSeasonToo) const {
  DaySpan within{Day::min(), upTo};
  if (belongsToOneSeason(condition.measure))
    within.first = firstDayOf(season.plus(lastSeasonToo ? -1 : 0), hemisphere_);
  const std::int64_t bound =
      condition.topWire ? topWire_.inMicrometres() : condition.value;
  return {condition, bound, lastMean(measurements_, condition.measure, within)};
}

std::vector<GrowthPace> MeasuredTrees::pacesIn(Season season) const {
  const DaySpan days{firstDayOf(season, hemisphere_), lastDayOf(season, hemisphere_)};
  std::vector<GrowthPace> paces;
  addPaces(paces, Measure::leaderHeight, days);
  addPaces(paces, Measure::leaderGrowth, days);
  std::ranges::stable_sort(paces, {}, &GrowthPace::to);
  return paces;
}

void MeasuredTrees::addPaces(std::vector<GrowthPace>& paces,
                             Measure measure,
                             DaySpan season) const {
  const Measurement* before = nullptr;
  for (const Measurement* each : measurements_) {
    if (each->measure != measure || !season.contains(each->day)) continue;
    if (before && before->day < each->day) {
      const auto grown = std::llround(*meanOf(*each) - *meanOf(*before));
      paces.push_back({before->day, each->day, Length::micrometres(grown)});
    }
    before = each;
  }
}

}  // namespace topwire
