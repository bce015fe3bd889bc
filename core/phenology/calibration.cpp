#include "core/phenology/calibration.h"

#include <cmath>

namespace topwire {

namespace {

constexpr double squared(double x) {
  return x * x;
}

/// Of one season's sum about its mean: 23 of 364 degree days at first bloom, Golden
/// Delicious at Klein-Altendorf, 1998-2010.
constexpr double seasonDeviation = 0.063;

/// Of cultivars about what their days against Golden Delicious let expect: 3 days between
/// seasons, of which the mean of a few seasons keeps about half; at 10 degree days a day.
constexpr double cultivarDeviation = 0.04;

/// Of one stage about the ladder. Places judge the stages differently; ours.
constexpr double stageDeviation = 0.06;

/// Means over seasons, since the dates of one season share its weather.
class SeasonMeans {
public:
  void add(Season season, double value) {
    auto& [sum, count] = seasons_[season];
    sum += value;
    ++count;
  }

  int count() const { return static_cast<int>(seasons_.size()); }

  double shrunk(double deviation) const {
    double total = 0;
    for (const auto& [season, entry] : seasons_) total += entry.first / entry.second;
    return total / (count() + squared(seasonDeviation) / squared(deviation));
  }

private:
  std::map<Season, std::pair<double, int>> seasons_;
};

}  // namespace

Calibration::Calibration(const std::vector<OwnHeat>& own, double placeDeviation)
    : placeDeviation_(placeDeviation) {
  SeasonMeans place;
  for (const OwnHeat& one : own) place.add(one.season, std::log(one.ratio));
  if (place.count() > 0) place_ = {place.shrunk(placeDeviation), place.count()};

  std::map<std::string, SeasonMeans> cultivars;
  for (const OwnHeat& one : own)
    cultivars[one.cultivar].add(one.season, std::log(one.ratio) - place_.shift);
  for (const auto& [name, means] : cultivars)
    cultivars_[name] = {means.shrunk(cultivarDeviation), means.count()};

  std::map<std::pair<std::string, int>, SeasonMeans> stages;
  for (const OwnHeat& one : own)
    stages[{one.cultivar, one.bbch}].add(
        one.season,
        std::log(one.ratio) - place_.shift - cultivars_.at(one.cultivar).shift);
  for (const auto& [key, means] : stages)
    stages_[key] = {means.shrunk(stageDeviation), means.count()};
}

double Calibration::factorFor(const std::string& cultivar, int bbch) const {
  double shift = place_.shift;
  if (const auto found = cultivars_.find(cultivar); found != cultivars_.end())
    shift += found->second.shift;
  if (const auto found = stages_.find({cultivar, bbch}); found != stages_.end())
    shift += found->second.shift;
  return std::exp(shift);
}

double Calibration::uncertaintyFor(const std::string& cultivar) const {
  const auto left = [](double deviation, int seasons) {
    return 1 / (1 / squared(deviation) + seasons / squared(seasonDeviation));
  };
  return std::sqrt(left(placeDeviation_, place_.seasons)
                   + left(cultivarDeviation, seasonsOf(cultivar)));
}

int Calibration::seasonsOf(const std::string& cultivar) const {
  const auto found = cultivars_.find(cultivar);
  return found == cultivars_.end() ? 0 : found->second.seasons;
}

}  // namespace topwire
