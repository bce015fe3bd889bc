#include "core/phenology/normals_forecaster.h"

#include "core/phenology/heat_course.h"
#include "core/weather/normals.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace topwire {

namespace {

/// A stage up to petal fall. `heat` is the sum from the season's first day, single sine
/// above 6.1 degrees C; where no sum is published, that of a neighbour, `days` away.
/// `spread` places the stage on a scale of variance in days squared: two stages' interval
/// has the standard deviation sqrt(|difference|).
struct Rung {
  int bbch;
  double heat;
  int days;
  double spread;
};

constexpr double squared(double x) {
  return x * x;
}

constexpr double fullBloomHeat = 225;
constexpr double fullBloomSpread = squared(3);

/// Sums: McIntosh in Massachusetts (UMass Extension, Healthy Fruit 2018-2020: green tip,
/// half-inch green, tight cluster, pink and petal fall, base 43 F; the middles of its
/// ranges), and for bloom Golden Delicious at Klein-Altendorf, 1958-2020 (205 at first
/// and 227 at full bloom, rounded down). Silver tip is from memory of the same list.
/// Spreads: how far the ladder's day lay from the observed first bloom over those 62
/// seasons, standard deviations of 18, 13, 11, 8 and 6 days before bloom and 6 after it,
/// 3 from first to full bloom. Bud swell's and full pink's days are from memory.
constexpr std::array ladder{
    Rung{stages::budSwell, 45, -7, -squared(18) - squared(7)},
    Rung{stages::silverTip, 45, 0, -squared(18)},
    Rung{stages::greenTip, 61, 0, -squared(13)},
    Rung{stages::halfInchGreen, 97, 0, -squared(11)},
    Rung{stages::tightCluster, 128, 0, -squared(8)},
    Rung{stages::pink, 162, 0, -squared(6)},
    Rung{stages::fullPink, 200, -2, -squared(2)},
    Rung{stages::firstBloom, 200, 0, 0},
    Rung{stages::fullBloom, fullBloomHeat, 0, fullBloomSpread},
    Rung{stages::petalFall, 270, 0, squared(6)},
};

/// Standard deviation of first and of full bloom about their mean date, 1958-2020, Golden
/// Delicious, Cox and Boskoop at Klein-Altendorf.
constexpr double bloomDeviation = 9.9;

/// Eight cases in ten of a normal distribution lie within this many deviations.
constexpr double eightInTen = 1.2816;

/// A planting in its first leaf blooms one to two weeks after established trees; from
/// memory.
constexpr int firstLeafDelay = 10;

/// Published ladders hold where the coldest month is no warmer; at Meknes (10.5 degrees)
/// bloom took three times the heat. The limit is ours.
constexpr double warmestHoldingWinter = 8;

/// A stage counted in days from full bloom.
struct AfterBloom {
  int bbch;
  int days;
  double deviation;  ///< of the interval, days
};

/// Fruit of 10 mm 14 to 20 days and the June drop about 40 days after full bloom are from
/// memory, and so are their deviations. Harvest: 5 to 9 days by cultivar at
/// Klein-Altendorf, 1958-2020.
std::array<AfterBloom, 3> fruitStages(int bloomToHarvest) {
  return {{{stages::fruitSet, 17, 3},
           {stages::juneDrop, 40, 5},
           {stages::harvest, bloomToHarvest, 7}}};
}

/// Shoots of bearing trees stop in late July, of young ones into September (75 to 110
/// days after full bloom); from memory. Trees count as young to their third leaf.
AfterBloom terminalBud(int leaf) {
  return {stages::terminalBud, leaf <= 3 ? 110 : 75, 10};
}

/// Half the leaves are down in mid-November, mid-May in the south; from memory.
constexpr unsigned leafFallMonth = 11;
constexpr double leafFallDeviation = 10;

/// For a cultivar the table does not know: that of Golden Delicious.
constexpr int usualBloomToHarvest = 151;

using Seen = std::map<int, Day>;

/// Of two records of one stage the earlier holds: by then it was reached.
Seen seenIn(const Orchard& orchard, const Planting& planting, Season season, Day today) {
  const Hemisphere hemisphere = orchard.settings.hemisphere();
  Seen seen;
  for (const auto& [id, observation] : orchard.observations) {
    if (observation.planting != planting.id || observation.day > today) continue;
    if (seasonOf(observation.day, hemisphere) != season) continue;
    const auto [entry, isNew] = seen.emplace(observation.bbch, observation.day);
    if (!isNew) entry->second = std::min(entry->second, observation.day);
  }
  return seen;
}

/// A point of the ladder that an observation fixes.
struct Fixed {
  int bbch;  ///< the stage that was seen
  double heat;
  Day day;  ///< when that heat was reached
  double spread;
  double extra = 0;  ///< variance of a stage that lies off the ladder
};

/// One outlook in the making.
class Forecast {
public:
  Forecast(const Orchard& orchard,
           const Planting& planting,
           const Cultivar* cultivar,
           Season season,
           Day today)
      : hemisphere_(orchard.settings.hemisphere())
      , season_(season)
      , today_(today)
      , correction_(lapseCorrection(elevationOf(orchard, planting),
                                    orchard.settings.stationElevation))
      , heat_(orchard.settings.normals, correction_, season, hemisphere_)
      , seen_(seenIn(orchard, planting, season, today))
      , leaf_(leafIn(season, planting.planted, hemisphere_))
      , shift_(cultivar != nullptr ? cultivar->bloomShiftDays : 0)
      , fruit_(fruitStages(cultivar != nullptr ? cultivar->bloomToHarvestDays
                                               : usualBloomToHarvest)) {}

  Outlook made() {
    for (const Rung& rung : ladder) add(onLadder(rung));
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
  /// A stage's estimate with the variance its span comes from.
  struct Dated {
    StageEstimate estimate;
    double variance = 0;
  };

  const Day* seen(int bbch) const {
    const auto found = seen_.find(bbch);
    return found == seen_.end() ? nullptr : &found->second;
  }

  void add(Dated dated) {
    StageEstimate& estimate = dated.estimate;
    if (const Day* day = seen(estimate.bbch)) {
      const int bbch = estimate.bbch;
      estimate = {};
      estimate.bbch = bbch;
      estimate.kind = StageKind::observed;
      estimate.date = *day;
      dated.variance = 0;
    }
    estimate.degreesForElevation = correction_;
    const int reach =
        static_cast<int>(std::lround(eightInTen * std::sqrt(dated.variance)));
    estimate.early = plusDays(estimate.date, -reach);
    estimate.late = plusDays(estimate.date, reach);
    dated_[estimate.bbch] = dated;
  }

  /// The observed stage nearest before the rung, else the nearest after it, else the
  /// first fruit stage seen, counted back to full bloom.
  std::optional<Fixed> fixedFor(const Rung& rung) const {
    std::optional<Fixed> fixed;
    for (const Rung& other : ladder) {
      const Day* day = seen(other.bbch);
      if (day == nullptr || (other.bbch > rung.bbch && fixed)) continue;
      fixed = Fixed{other.bbch, other.heat, plusDays(*day, -other.days), other.spread};
    }
    return fixed ? fixed : fixedByFruit();
  }

  std::optional<Fixed> fixedByFruit() const {
    for (const AfterBloom& stage : fruit_)
      if (const Day* day = seen(stage.bbch))
        return Fixed{stage.bbch,
                     fullBloomHeat,
                     plusDays(*day, -stage.days),
                     fullBloomSpread,
                     squared(stage.deviation)};
    return std::nullopt;
  }

  Dated onLadder(const Rung& rung) const {
    const auto fixed = fixedFor(rung);
    Dated dated = fixed ? pulled(rung, *fixed) : unpulled(rung);
    dated.estimate.bbch = rung.bbch;
    dated.estimate.kind = rung.days == 0 ? StageKind::expected : StageKind::byOffset;
    if (rung.days != 0) dated.estimate.heat.reset();
    return dated;
  }

  Dated unpulled(const Rung& rung) const {
    Dated dated;
    StageEstimate& estimate = dated.estimate;
    estimate.cultivarShiftDays = shift_;
    estimate.firstLeafDelayDays = leaf_ == 1 ? firstLeafDelay : 0;
    const int moved = static_cast<int>(std::lround(shift_)) + estimate.firstLeafDelayDays;
    estimate.date = plusDays(heat_.reaching(rung.heat), rung.days + moved);
    estimate.heat =
        HeatBasis{rung.heat, heat_.by(today_), HeatCourse::base, heat_.season().first};
    const double bloom = std::clamp(rung.spread, 0.0, fullBloomSpread);
    dated.variance = squared(bloomDeviation) + std::abs(rung.spread - bloom);
    return dated;
  }

  /// The sum goes on from the day the observed stage fixes, in either direction.
  Dated pulled(const Rung& rung, const Fixed& fixed) const {
    Dated dated;
    StageEstimate& estimate = dated.estimate;
    const double start = heat_.by(fixed.day);
    const double needed = rung.heat - fixed.heat;
    const Day reached = needed == 0 ? fixed.day : heat_.reaching(start + needed);
    estimate.date = plusDays(reached, rung.days);
    estimate.pulledBy = fixed.bbch;
    if (needed > 0)
      estimate.heat = HeatBasis{needed,
                                std::max(0.0, heat_.by(today_) - start),
                                HeatCourse::base,
                                plusDays(fixed.day, 1)};
    dated.variance = std::abs(rung.spread - fixed.spread) + fixed.extra;
    return dated;
  }

  const AfterBloom* lastFruitSeen(const AfterBloom& before) const {
    const AfterBloom* last = nullptr;
    for (const AfterBloom& stage : fruit_)
      if (stage.days < before.days && seen(stage.bbch) != nullptr) last = &stage;
    return last;
  }

  /// Days from full bloom, or from `pulling`, a stage that was seen since.
  Dated afterBloom(const AfterBloom& stage, const AfterBloom* pulling) const {
    const Dated& bloom = dated_.at(stages::fullBloom);
    Dated dated = bloom;
    StageEstimate& estimate = dated.estimate;
    if (bloom.estimate.kind == StageKind::observed) estimate.pulledBy = stages::fullBloom;
    estimate.bbch = stage.bbch;
    estimate.kind = StageKind::byOffset;
    estimate.heat.reset();
    estimate.date = plusDays(bloom.estimate.date, stage.days);
    dated.variance = bloom.variance + squared(stage.deviation);
    if (pulling == nullptr) return dated;
    estimate.date = plusDays(*seen(pulling->bbch), stage.days - pulling->days);
    estimate.pulledBy = pulling->bbch;
    dated.variance = squared(stage.deviation) - squared(pulling->deviation);
    return dated;
  }

  Dated leafFall() const {
    Dated dated;
    dated.estimate.bbch = stages::leafFall;
    dated.estimate.kind = StageKind::byOffset;
    dated.estimate.date = localSeasonDay(season_, hemisphere_, leafFallMonth, 15);
    dated.variance = squared(leafFallDeviation);
    return dated;
  }

  /// Keeps stages that follow one another in order: none lies after a later one that was
  /// seen, nor before an earlier one, nor outside the season.
  void settle(std::initializer_list<int> track) {
    Day latest = heat_.season().last;
    for (auto bbch = std::rbegin(track); bbch != std::rend(track); ++bbch) {
      StageEstimate& estimate = dated_.at(*bbch).estimate;
      estimate.date = std::min(estimate.date, latest);
      estimate.late = std::min(estimate.late, latest);
      if (estimate.kind == StageKind::observed) latest = estimate.date;
    }
    Day earliest = heat_.season().first;
    Day seenBefore = earliest;
    for (const int bbch : track) {
      StageEstimate& estimate = dated_.at(bbch).estimate;
      estimate.date = earliest = std::max(estimate.date, earliest);
      estimate.early = std::min(std::max(estimate.early, seenBefore), estimate.date);
      estimate.late = std::max(estimate.late, estimate.date);
      if (estimate.kind == StageKind::observed) seenBefore = estimate.date;
    }
  }

  /// By date; stages on one day in the scale's order.
  Outlook inOrder() const {
    Outlook outlook;
    outlook.ladderHolds = heat_.coldestMonth() <= warmestHoldingWinter;
    for (const Stage& stage : allStages())
      outlook.stages.push_back(dated_.at(stage.bbch).estimate);
    std::ranges::stable_sort(outlook.stages, {}, &StageEstimate::date);
    return outlook;
  }

  Hemisphere hemisphere_;
  Season season_;
  Day today_;
  double correction_;
  HeatCourse heat_;
  Seen seen_;
  int leaf_;
  double shift_;
  std::array<AfterBloom, 3> fruit_;
  std::map<int, Dated> dated_;
};

}  // namespace

Outlook NormalsForecaster::outlook(const Orchard& orchard,
                                   const Planting& planting,
                                   Season season,
                                   Day today) const {
  return Forecast{orchard, planting, tables_->cultivar(planting.cultivar), season, today}
      .made();
}

}  // namespace topwire
