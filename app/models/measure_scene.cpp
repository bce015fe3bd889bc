#include "app/models/measure_scene.h"

#include "core/orchard/measurements.h"

#include <algorithm>

namespace topwire {

namespace {

/// An old block's early years say little of this one.
constexpr int mostSeasons = 8;
/// With fewer there would be no course to see.
constexpr int leastSeasons = 3;

/// The session's own forecast, which keeps what it has reckoned.
class SessionForecast final : public StageForecast {
public:
  explicit SessionForecast(const Session& session) : session_(&session) {}

  Outlook outlook(const Planting& planting, Season season) override {
    return session_->outlook(planting, season);
  }

private:
  const Session* session_;
};

double kept(Length length) {
  return static_cast<double>(length.inMicrometres());
}

class SceneOf {
public:
  SceneOf(const Session& session, const Planting& planting)
      : session_(&session)
      , planting_(&planting)
      , forecast_(session)
      , hemisphere_(session.orchard().settings.hemisphere()) {}

  MeasureScene made() {
    const int leaf = leafOf(orchard(), *planting_, session_->season());
    const int first = std::max(1, leaf - mostSeasons + 1);
    const int last = std::max({leaf, first + leastSeasons - 1, 1});
    for (int each = first; each <= last; ++each) {
      const Season season = session_->season().plus(each - leaf);
      scene_.leaves.push_back({each, daysOf(season)});
      seasons_.push_back(season);
    }
    scene_.today = session_->today();
    scene_.units = orchard().settings.units;
    scene_.plots = {trunks(), leaders(), shoots()};
    return std::move(scene_);
  }

private:
  const Orchard& orchard() const { return session_->orchard(); }

  const TargetTables& tables() const { return session_->tables().targets; }

  DaySpan daysOf(Season season) const {
    return {firstDayOf(season, hemisphere_), lastDayOf(season, hemisphere_)};
  }

  Vigour vigourOf(Season season) const {
    return vigourIn(season, orchard(), session_->tables(), *planting_).vigour;
  }

  MeasurePlot plotOf(Measure measure) const {
    MeasurePlot plot;
    plot.measure = measure;
    for (const Measurement* taken : measurementsOf(orchard(), planting_->id)) {
      const auto mean = lastMean({taken}, measure, {taken->day, taken->day});
      if (!mean || !scene_.days().contains(taken->day)) continue;
      plot.measured.push_back(
          {taken->day, taken->day, mean->value, static_cast<int>(taken->values.size())});
    }
    return plot;
  }

  /// As thick as is usual in each leaf: from its own figure at bloom to the next one's
  /// when shoots set their buds.
  MeasurePlot trunks() {
    MeasurePlot plot = plotOf(Measure::trunkDiameter);
    std::vector<WantedPoint> course;
    for (std::size_t i = 0; i < seasons_.size(); ++i) {
      const DaySpan growth = growthDays(
          session_->outlook(*planting_, seasons_[i]), seasons_[i], hemisphere_);
      const auto here = usualTrunk(scene_.leaves[i].leaf);
      const auto next = usualTrunk(scene_.leaves[i].leaf + 1);
      if (!here || !next) continue;
      course.push_back({growth.first, *here, *here});
      course.push_back({growth.last, *next, *next});
    }
    plot.wanted.push_back(std::move(course));
    return plot;
  }

  std::optional<double> usualTrunk(int leaf) const {
    const FruitByLeaf* row = tables().fruit(leaf, CropStrength::moderate);
    if (row == nullptr) return std::nullopt;
    return kept(row->trunk);
  }

  MeasurePlot leaders() {
    MeasurePlot plot = plotOf(Measure::leaderHeight);
    std::vector<WantedPoint> course;
    for (const Season season : seasons_) {
      const auto wanted =
          leaderCourse(orchard(), session_->tables(), forecast_, *planting_, season);
      if (!wanted) continue;
      const double start = kept(wanted->start);
      const double end = kept(wanted->end);
      course.push_back({daysOf(season).first, start, start});
      course.push_back({wanted->growth.first, start, start});
      course.push_back({wanted->growth.last, end, end});
      course.push_back({daysOf(season).last, end, end});
    }
    plot.wanted.push_back(std::move(course));
    return plot;
  }

  /// A season's growth is often measured in the winter after it, but belongs to it.
  MeasurePlot shoots() {
    MeasurePlot plot = plotOf(Measure::shootGrowth);
    plot.isBand = true;
    for (MeasuredPoint& point : plot.measured)
      point.drawnAt =
          std::min(point.day, daysOf(grownSeason(point.day, hemisphere_)).last);
    for (std::size_t i = 0; i < seasons_.size(); ++i) {
      const ShootGrowth* row =
          tables().growth(Measure::shootGrowth, scene_.leaves[i].leaf);
      if (row == nullptr) continue;
      const DaySpan days = daysOf(seasons_[i]);
      const double low = kept(row->targetFrom);
      const double high = kept(row->targetTo);
      plot.wanted.push_back({{days.first, low, high}, {days.last, low, high}});
    }
    return plot;
  }

  const Session* session_;
  const Planting* planting_;
  SessionForecast forecast_;
  Hemisphere hemisphere_;
  std::vector<Season> seasons_;
  MeasureScene scene_;
};

}  // namespace

MeasureScene measureScene(const Session& session, const Planting& planting) {
  return SceneOf{session, planting}.made();
}

PlantingTargets targetsOf(const Session& session, const Planting& planting) {
  SessionForecast forecast{session};
  return topwire::targetsOf(
      session.orchard(), session.tables(), forecast, planting, session.today());
}

}  // namespace topwire
