#include "core/crews/crew_paces.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr int usual = 1000;

}  // namespace

CrewPaces::CrewPaces(const Orchard& orchard,
                     const Trade& trade,
                     const std::vector<CrewId>& crews,
                     bool supposed)
    : rates_(orchard, trade.programmes), supposed_(supposed) {
  for (const CrewId id : crews) crews_.push_back(orchard.crews.at(id).name);
}

const JobPace& CrewPaces::of(const std::string& programme,
                             const Operation& operation,
                             int leaf) {
  const auto [place, isNew] = known_.try_emplace({programme, operation.id, leaf});
  if (isNew) place->second = workedOut(programme, operation, leaf);
  return place->second;
}

JobPace CrewPaces::workedOut(const std::string& programme,
                             const Operation& operation,
                             int leaf) const {
  std::vector<int> seconds;
  for (const std::string& crew : crews_)
    seconds.push_back(rates_.ofCrew(programme, operation, leaf, crew).seconds());
  if (supposed_ || seconds.empty())
    seconds.push_back(rates_.of(programme, operation, leaf).seconds());
  JobPace pace{std::ranges::min(seconds), {}};
  if (pace.seconds <= 0 || pace.seconds == std::ranges::max(seconds)) return pace;
  for (const int one : seconds) pace.byCrew.push_back(usual * one / pace.seconds);
  return pace;
}

}  // namespace topwire
