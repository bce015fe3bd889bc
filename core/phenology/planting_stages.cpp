#include "core/phenology/planting_stages.h"

#include "core/phenology/stage_needs.h"
#include "core/weather/normals.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace topwire {

namespace {

constexpr double squared(double x) {
  return x * x;
}

/// Eight in ten of a normal distribution lie within this many deviations.
constexpr double eightInTen = 1.2816;

/// Variance that each degree day from an observed stage on adds to the need of the next:
/// first bloom's, 23 degree days after 364, spread evenly over its way.
constexpr double varianceByHeat = 23.0 * 23 / 364;

/// Two people judge one stage a day or two apart, at some eight degree days a day; ours.
constexpr double judgedWithin = 12;

/// Half the leaves are down in mid-November, mid-May in the south; from memory.
constexpr unsigned leafFallMonth = 11;
constexpr double leafFallDeviation = 10;

using Seen = std::map<int, Day>;

/// Of two records of one stage the earlier holds: by then it was reached.
Seen seenIn(const PlantingCase& which) {
  const Hemisphere hemisphere = which.orchard.settings.hemisphere();
  Seen seen;
  for (const auto& [id, observation] : which.orchard.observations) {
    if (observation.planting != which.planting.id || observation.day > which.today)
      continue;
    if (seasonOf(observation.day, hemisphere) != which.season) continue;
    const auto [entry, isNew] = seen.emplace(observation.bbch, observation.day);
    if (!isNew) entry->second = std::min(entry->second, observation.day);
  }
  return seen;
}

/// A point of the ladder that an observation fixes.
struct Fixed {
  int bbch;  ///< the stage that was seen
  Day day;   ///< when its heat was reached
  double need;
  double extraDays = 0;  ///< deviation of a stage that lies off the ladder
};

/// The middle of many days, and what lies around it in eight cases of ten.
struct DayQuantiles {
  Day early;
  Day middle;
  Day late;
};

/// One outlook in the making.
class Stages {
public:
  Stages(const PlantingCase& which, SiteHeat& site)
      : which_(&which)
      , cultivar_(which.tables.cultivar(which.planting.cultivar))
      , courses_(&site.courses(which.season, which.today))
      , correction_(site.correction())
      , seen_(seenIn(which))
      , leaf_(leafOf(which.orchard, which.planting, which.season))
      , fruit_(fruitStages(cultivar_)) {}

  Outlook made() {
    for (const Rung& rung : heatLadder()) add(onLadder(rung));
    for (const AfterBloom& stage : fruit_) add(afterBloom(stage, lastFruitSeen(stage)));
    add(afterBloom(terminalBud(leaf_), nullptr));
    add(leafFall());
    settle({stages::petalFall, stages::terminalBud, stages::leafFall});
    settle({stages::budSwell,
            stages::silverTip,
            stages::greenTip,
            stages::halfInchGreen,
            stages::tightCluster,
            stages::pink,
            stages::fullPink,
            stages::firstBloom,
            stages::fullBloom,
            stages::petalFall,
            stages::fruitSet,
            stages::juneDrop,
            stages::harvest,
            stages::leafFall});
    return inOrder();
  }

private:
  const Day* seen(int bbch) const {
    const auto found = seen_.find(bbch);
    return found == seen_.end() ? nullptr : &found->second;
  }

  void add(StageEstimate estimate) {
    if (const Day* day = seen(estimate.bbch)) {
      const int bbch = estimate.bbch;
      estimate = {};
      estimate.bbch = bbch;
      estimate.kind = StageKind::observed;
      estimate.date = estimate.early = estimate.late = *day;
    }
    estimate.degreesForElevation = correction_.forElevation;
    estimate.degreesForBlock = correction_.forBlock();
    dated_[estimate.bbch] = estimate;
  }

  /// The observed stage nearest before the rung, else the nearest after it, else the
  /// first fruit stage seen, counted back to full bloom.
  std::optional<Fixed> fixedFor(const Rung& rung) const {
    std::optional<Fixed> fixed;
    for (const Rung& other : heatLadder()) {
      const Day* day = seen(other.bbch);
      if (day == nullptr || (other.bbch > rung.bbch && fixed)) continue;
      fixed = Fixed{other.bbch, plusDays(*day, -other.days), needOf(other)};
    }
    return fixed ? fixed : fixedByFruit();
  }

  std::optional<Fixed> fixedByFruit() const {
    const double need = needOf(*rungOf(stages::fullBloom));
    for (const AfterBloom& stage : fruit_)
      if (const Day* day = seen(stage.bbch))
        return Fixed{stage.bbch, plusDays(*day, -stage.days), need, stage.deviation};
    return std::nullopt;
  }

  double needOf(const Rung& rung) const {
    return publishedNeed(which_->tables, cultivar_, rung).needed
           * which_->calibration.factorFor(which_->planting.cultivar, rung.heatOf);
  }

  StageEstimate onLadder(const Rung& rung) const {
    const auto fixed = fixedFor(rung);
    StageEstimate estimate = fixed ? pulled(rung, *fixed) : unpulled(rung);
    estimate.bbch = rung.bbch;
    estimate.kind = rung.days == 0 ? StageKind::expected : StageKind::byOffset;
    if (rung.days != 0) estimate.heat.reset();
    return estimate;
  }

  HeatBasis basis(double needed, Day from) const {
    HeatBasis heat;
    heat.needed = needed;
    heat.reached = std::max(
        0.0, courses_->middleBy(which_->today) - courses_->middleBy(plusDays(from, -1)));
    heat.base = baseOf(HeatMeasure::heatUnits);
    heat.from = from;
    heat.pastSeasons = courses_->pastSeasons;
    heat.ownSeasons = which_->calibration.seasonsOf(which_->planting.cultivar);
    return heat;
  }

  StageEstimate unpulled(const Rung& rung) const {
    const PublishedNeed published = publishedNeed(which_->tables, cultivar_, rung);
    const double need = needOf(rung);
    const double share =
        std::hypot(published.deviation / published.needed,
                   which_->calibration.uncertaintyFor(which_->planting.cultivar));
    StageEstimate estimate;
    estimate.cultivarShiftDays = cultivar_ != nullptr ? cultivar_->bloomShiftDays : 0;
    estimate.firstLeafDelayDays =
        leaf_ == 1 ? which_->orchard.settings.firstLeafDelayDays : 0;
    place(estimate,
          daysOver([&](std::size_t, double deviate) {
            return need * std::exp(share * deviate);
          }),
          rung.days + estimate.firstLeafDelayDays);
    estimate.heat = basis(need, courses_->season.first);
    return estimate;
  }

  /// The sum goes on from the day the observed stage fixes, in either direction.
  StageEstimate pulled(const Rung& rung, const Fixed& fixed) const {
    const double needed = needOf(rung) - fixed.need;
    const double deviation =
        needed == 0
            ? 0
            : std::sqrt(varianceByHeat * std::abs(needed) + squared(judgedWithin));
    StageEstimate estimate;
    estimate.pulledBy = fixed.bbch;
    DayQuantiles days{fixed.day, fixed.day, fixed.day};
    if (needed != 0)
      days = daysOver([&](std::size_t course, double deviate) {
        return courses_->by(course, fixed.day) + needed + deviation * deviate;
      });
    if (needed > 0) estimate.heat = basis(needed, plusDays(fixed.day, 1));
    place(estimate, days, rung.days);
    widen(estimate, fixed.extraDays);
    return estimate;
  }

  /// Days on which each course reaches `sumWanted(course, deviate)`.
  template <class SumWanted>
  DayQuantiles daysOver(SumWanted sumWanted) const {
    std::vector<Day> days;
    days.reserve(courses_->sums.size() * equallyLikely.size());
    for (std::size_t course = 0; course < courses_->sums.size(); ++course)
      for (const double deviate : equallyLikely)
        days.push_back(courses_->reaching(course, sumWanted(course, deviate)));
    std::ranges::sort(days);
    const auto at = [&](double share) {
      return days[static_cast<std::size_t>(
          std::lround(share * static_cast<double>(days.size() - 1)))];
    };
    return {at(0.1), at(0.5), at(0.9)};
  }

  static void place(StageEstimate& estimate, const DayQuantiles& days, int offset) {
    estimate.date = plusDays(days.middle, offset);
    estimate.early = plusDays(days.early, offset);
    estimate.late = plusDays(days.late, offset);
  }

  /// Adds a spread of its own, standard deviation in days, to the span.
  static void widen(StageEstimate& estimate, double deviation) {
    const auto wider = [&](Day edge) {
      return static_cast<int>(std::lround(
          std::hypot(daysBetween(estimate.date, edge), eightInTen * deviation)));
    };
    const int before = wider(estimate.early);
    const int after = wider(estimate.late);
    estimate.early = plusDays(estimate.date, -before);
    estimate.late = plusDays(estimate.date, after);
  }

  const AfterBloom* lastFruitSeen(const AfterBloom& before) const {
    const AfterBloom* last = nullptr;
    for (const AfterBloom& stage : fruit_)
      if (stage.days < before.days && seen(stage.bbch) != nullptr) last = &stage;
    return last;
  }

  /// Days from full bloom, or from `pulling`, a stage that was seen since.
  StageEstimate afterBloom(const AfterBloom& stage, const AfterBloom* pulling) const {
    StageEstimate estimate = dated_.at(stages::fullBloom);
    if (estimate.kind == StageKind::observed) estimate.pulledBy = stages::fullBloom;
    estimate.bbch = stage.bbch;
    estimate.kind = StageKind::byOffset;
    estimate.heat.reset();
    double deviation = stage.deviation;
    if (pulling != nullptr) {
      const Day day = *seen(pulling->bbch);
      estimate.date = estimate.early = estimate.late = plusDays(day, -pulling->days);
      estimate.pulledBy = pulling->bbch;
      deviation = std::sqrt(squared(stage.deviation) - squared(pulling->deviation));
    }
    place(estimate, {estimate.early, estimate.date, estimate.late}, stage.days);
    widen(estimate, deviation);
    return estimate;
  }

  StageEstimate leafFall() const {
    StageEstimate estimate;
    estimate.bbch = stages::leafFall;
    estimate.kind = StageKind::byOffset;
    estimate.date = estimate.early = estimate.late = localSeasonDay(
        which_->season, which_->orchard.settings.hemisphere(), leafFallMonth, 15);
    widen(estimate, leafFallDeviation);
    return estimate;
  }

  /// Keeps stages that follow one another in order: none lies after a later one that was
  /// seen, nor before an earlier one, nor outside the season.
  void settle(std::initializer_list<int> track) {
    Day latest = courses_->season.last;
    for (auto bbch = std::rbegin(track); bbch != std::rend(track); ++bbch) {
      StageEstimate& estimate = dated_.at(*bbch);
      estimate.date = std::min(estimate.date, latest);
      estimate.late = std::min(estimate.late, latest);
      if (estimate.kind == StageKind::observed) latest = estimate.date;
    }
    Day earliest = courses_->season.first;
    Day seenBefore = earliest;
    for (const int bbch : track) {
      StageEstimate& estimate = dated_.at(bbch);
      estimate.date = earliest = std::max(estimate.date, earliest);
      estimate.early = std::min(std::max(estimate.early, seenBefore), estimate.date);
      estimate.late = std::max(estimate.late, estimate.date);
      if (estimate.kind == StageKind::observed) seenBefore = estimate.date;
    }
  }

  /// By date; stages on one day in the scale's order.
  Outlook inOrder() const {
    Outlook outlook;
    for (const Stage& stage : allStages())
      outlook.stages.push_back(dated_.at(stage.bbch));
    std::ranges::stable_sort(outlook.stages, {}, &StageEstimate::date);
    return outlook;
  }

  const PlantingCase* which_;
  const Cultivar* cultivar_;
  const HeatCourses* courses_;
  SiteCorrection correction_;
  Seen seen_;
  int leaf_;
  std::vector<AfterBloom> fruit_;
  std::map<int, StageEstimate> dated_;
};

}  // namespace

Outlook stagesOf(const PlantingCase& which, SiteHeat& site) {
  return Stages{which, site}.made();
}

}  // namespace topwire
