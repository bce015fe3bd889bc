#include "core/phenology/own_heat.h"

#include "core/phenology/stage_needs.h"

namespace topwire {

namespace {

class Gathering {
public:
  Gathering(const Orchard& orchard,
            const TradeTables& tables,
            Season current,
            const HeatBy& heatBy)
      : orchard_(&orchard), tables_(&tables), current_(current), heatBy_(&heatBy) {}

  void add(const PastStage& past) { add(past.cultivar, past.bbch, past.day, nullptr); }

  void add(const Observation& seen) {
    const auto found = orchard_->plantings.find(seen.planting);
    if (found == orchard_->plantings.end()) return;
    const Planting& planting = found->second;
    if (leafOf(*orchard_, planting, seasonAt(seen.day)) < 2) return;
    add(planting.cultivar, seen.bbch, seen.day, &planting);
  }

  std::vector<OwnHeat> take() { return std::move(own_); }

private:
  Season seasonAt(Day day) const {
    return seasonOf(day, orchard_->settings.hemisphere());
  }

  void add(const std::string& cultivar, int bbch, Day day, const Planting* planting) {
    const Season season = seasonAt(day);
    const Rung* rung = rungOf(bbch);
    if (rung == nullptr || rung->days != 0 || season == current_) return;
    const auto heat = (*heatBy_)(planting, season, day);
    if (!heat || *heat <= 0) return;
    const double published =
        publishedNeed(*tables_, tables_->cultivar(cultivar), *rung).needed;
    own_.push_back({cultivar, bbch, season, *heat / published});
  }

  const Orchard* orchard_;
  const TradeTables* tables_;
  Season current_;
  const HeatBy* heatBy_;
  std::vector<OwnHeat> own_;
};

}  // namespace

std::vector<OwnHeat> ownHeatOf(const Orchard& orchard,
                               const TradeTables& tables,
                               Season current,
                               const HeatBy& heatBy) {
  Gathering gathering{orchard, tables, current, heatBy};
  for (const auto& [id, past] : orchard.pastStages) gathering.add(past);
  for (const auto& [id, seen] : orchard.observations) gathering.add(seen);
  return gathering.take();
}

}  // namespace topwire
