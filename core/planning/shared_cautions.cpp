#include "core/planning/day_cautions.h"

#include <algorithm>
#include <functional>

namespace topwire {

namespace {

bool isAbout(CautionKind kind, const Operation& operation) {
  switch (kind) {
    case CautionKind::frost:
    case CautionKind::freezing:
      return operation.avoid.contains(Avoid::frost);
    case CautionKind::wet:
      return operation.avoid.contains(Avoid::wet);
    case CautionKind::heat:
      return operation.avoid.contains(Avoid::heat);
    case CautionKind::hardCold:
    case CautionKind::blightWeather:
    case CautionKind::damp:
      break;
  }
  return operation.cuts;
}

}  // namespace

CautionsByPlanting cautionsOn(const Orchard& orchard,
                              const TradeTables& tables,
                              const Outlooks& outlooks,
                              Day day) {
  CautionsByPlanting all;
  for (const auto& [id, outlook] : outlooks) {
    const auto planting = orchard.plantings.find(id);
    if (planting == orchard.plantings.end()) continue;
    auto cautions = cautionsFor(orchard, tables, planting->second, outlook, day);
    if (!cautions.empty()) all.emplace(id, std::move(cautions));
  }
  return all;
}

std::vector<SharedCaution> sharedAmong(const Orchard& orchard,
                                       const CautionsByPlanting& cautions) {
  std::vector<SharedCaution> all;
  for (const Block* block : blocksInOrder(orchard))
    for (const Planting* planting : plantingsOf(orchard, block->id)) {
      const auto own = cautions.find(planting->id);
      if (own == cautions.end()) continue;
      for (const DayCaution& caution : own->second) {
        const auto same = std::ranges::find(all, caution, &SharedCaution::caution);
        if (same == all.end())
          all.push_back({caution, {planting->id}});
        else
          same->plantings.push_back(planting->id);
      }
    }
  std::ranges::stable_sort(
      all, std::greater{}, [](const SharedCaution& one) { return one.caution.severity; });
  return all;
}

std::vector<SharedCaution> cautionsAhead(const Orchard& orchard,
                                         const TradeTables& tables,
                                         const Outlooks& outlooks,
                                         Day today,
                                         int days) {
  std::vector<SharedCaution> all;
  for (int ahead = 0; ahead < days; ++ahead)
    for (SharedCaution& one : sharedAmong(
             orchard, cautionsOn(orchard, tables, outlooks, plusDays(today, ahead))))
      all.push_back(std::move(one));
  return all;
}

std::string placesOf(const Orchard& orchard, const std::vector<PlantingId>& plantings) {
  std::string places;
  if (plantings.size() < orchard.plantings.size())
    for (const std::string& name : placeNames(orchard, plantings))
      places += (places.empty() ? "" : ", ") + name;
  return places;
}

const DayCaution* shouldWait(const Operation& operation,
                             std::span<const DayCaution> cautions) {
  const auto found = std::ranges::find_if(cautions, [&](const DayCaution& caution) {
    return isAbout(caution.kind, operation);
  });
  return found == cautions.end() ? nullptr : &*found;
}

Sentence cautionAdvice() {
  return {phrase("Caution",
                 "Cautions, not orders: thermometers, sites and trees differ. Look at "
                 "your own, and let local advice and local rules come first.")};
}

}  // namespace topwire
