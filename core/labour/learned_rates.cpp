#include "core/labour/learned_rates.h"

#include "core/planning/progress.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <set>

namespace topwire {

namespace {

struct Pace {
  double seconds;  ///< per tree
  double weight;   ///< in hours at the programme's pace
};

/// The first leaf of those that share the figure of this one.
int firstLeafAlike(const Operation& operation, int leaf) {
  const auto& figures = operation.secondsPerTree;
  const auto next = figures.upper_bound(leaf);
  return next == figures.begin() ? figures.begin()->first : std::prev(next)->first;
}

/// In the order the work went on: a row half done comes before the same row done.
std::map<TaskKey, std::vector<const Tick*>> ticksByTask(const Orchard& orchard) {
  std::map<TaskKey, std::vector<const Tick*>> byTask;
  for (const Tick* tick : standingTicks(orchard)) byTask[tick->task].push_back(tick);
  for (auto& [key, ticks] : byTask)
    std::ranges::stable_sort(ticks, {}, [](const Tick* tick) {
      return std::tuple{tick->day, tick->percent, tick->id};
    });
  return byTask;
}

/// Rows, and parts of rows, that this tick adds to what is done.
double rowsAdded(std::map<int, int>& percentByRow, const Tick& tick) {
  double added = 0;
  for (const int row : tick.rows.rows()) {
    int& percent = percentByRow[row];
    added += std::max(0, tick.percent - percent) / 100.0;
    percent = std::max(percent, tick.percent);
  }
  return added;
}

/// Where half the weight lies below and half above; of several such figures the one
/// nearest to `preferred`.
double middleOf(std::vector<Pace> paces, double preferred) {
  std::ranges::sort(paces, {}, &Pace::seconds);
  double total = 0;
  for (const Pace& pace : paces) total += pace.weight;
  double below = 0;
  for (std::size_t i = 0; i < paces.size(); ++i) {
    below += paces[i].weight;
    const double here = paces[i].seconds;
    if (below == total / 2 && i + 1 < paces.size())
      return std::clamp(preferred, here, paces[i + 1].seconds);
    if (below > total / 2) return here;
  }
  return preferred;
}

Pace meanDrawnIn(const std::vector<Pace>& paces, double programme) {
  std::vector<Pace> all = paces;
  all.push_back({programme, LearnedRates::hoursOfPrior});
  const double middle = middleOf(std::move(all), programme);
  Pace mean{0, 0};
  for (const Pace& pace : paces) {
    mean.seconds += pace.weight * std::clamp(pace.seconds, middle / 2, middle * 2);
    mean.weight += pace.weight;
  }
  mean.seconds /= mean.weight;
  return mean;
}

}  // namespace

LearnedRates::LearnedRates(const Orchard& orchard,
                           const std::map<std::string, Programme>& programmes) {
  for (const auto& [key, ticks] : ticksByTask(orchard)) {
    const auto planting = orchard.plantings.find(key.planting);
    if (planting == orchard.plantings.end()) continue;
    const auto programme = programmes.find(planting->second.programme);
    if (programme == programmes.end()) continue;
    const Operation* operation = programme->second.find(key.operation);
    if (operation == nullptr || operation->secondsPerTree.empty()) continue;
    const int leaf = leafOf(orchard, planting->second, key.season);
    append(seen_[{programme->first, key.operation, firstLeafAlike(*operation, leaf)}],
           ticks,
           treesPerRow(orchard, planting->second));
  }
}

/// A tick without minutes says nothing of pace, nor do minutes without trees.
void LearnedRates::append(std::vector<Seen>& seen,
                          const std::vector<const Tick*>& ticks,
                          double treesInRow) {
  std::map<int, int> percentByRow;
  for (const Tick* tick : ticks) {
    const double trees = treesInRow * rowsAdded(percentByRow, *tick);
    if (tick->minutes > 0 && trees > 0)
      seen.push_back({trees, static_cast<double>(tick->minutes), tick->by});
  }
}

const std::vector<LearnedRates::Seen>* LearnedRates::seenOf(const std::string& programme,
                                                            const Operation& operation,
                                                            int leaf) const {
  const auto found =
      seen_.find({programme, operation.id, firstLeafAlike(operation, leaf)});
  return found == seen_.end() ? nullptr : &found->second;
}

LabourRate LearnedRates::learned(LabourRate rate, const std::vector<Seen>& seen) {
  if (seen.empty()) return rate;
  std::vector<Pace> paces;
  for (const Seen& one : seen) {
    const double hours = one.trees * rate.programme / 3600;
    paces.push_back({one.minutes * 60 / one.trees, std::min(hours, hoursOfPrior)});
    rate.hours += one.minutes / 60;
  }
  const Pace mean = meanDrawnIn(paces, rate.programme);
  rate.own = mean.seconds;
  rate.weight = mean.weight / (mean.weight + hoursOfPrior);
  return rate;
}

LabourRate LearnedRates::of(const std::string& programme,
                            const Operation& operation,
                            int leaf) const {
  LabourRate rate;
  rate.programme = operation.secondsPerTreeAt(leaf);
  if (rate.programme <= 0) return rate;
  const std::vector<Seen>* seen = seenOf(programme, operation, leaf);
  return seen == nullptr ? rate : learned(rate, *seen);
}

LabourRate LearnedRates::ofCrew(const std::string& programme,
                                const Operation& operation,
                                int leaf,
                                const std::string& crew) const {
  LabourRate rate;
  rate.programme = of(programme, operation, leaf).seconds();
  if (rate.programme <= 0) return rate;
  std::vector<Seen> own;
  if (const std::vector<Seen>* seen = seenOf(programme, operation, leaf))
    std::ranges::copy_if(*seen, std::back_inserter(own), [&crew](const Seen& one) {
      return one.by == crew;
    });
  return learned(rate, own);
}

std::vector<std::string> LearnedRates::crewsSeen(const std::string& programme,
                                                 const Operation& operation,
                                                 int leaf) const {
  const std::vector<Seen>* seen = seenOf(programme, operation, leaf);
  if (seen == nullptr) return {};
  std::set<std::string> names;
  for (const Seen& one : *seen) names.insert(one.by);
  return {names.begin(), names.end()};
}

}  // namespace topwire
