#include "core/planning/day_cautions.h"

#include <algorithm>
#include <functional>
#include <tuple>

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

bool sameOrFigures(const Value& one, const Value& other) {
  const bool figures =
      std::holds_alternative<Figure>(one) && std::holds_alternative<Figure>(other);
  return figures || one == other;
}

void add(std::vector<SharedCaution>& all,
         const DayCaution& caution,
         PlantingId planting) {
  const auto same = std::ranges::find_if(
      all, [&](const SharedCaution& other) { return alike(caution, other.caution); });
  if (same == all.end()) return all.push_back({caution, {planting}});
  if (caution.extent > same->caution.extent) same->caution = caution;
  same->plantings.push_back(planting);
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

bool alike(const DayCaution& one, const DayCaution& other) {
  return std::tie(one.day, one.kind, one.severity, one.source)
             == std::tie(other.day, other.kind, other.severity, other.source)
         && one.sentence.text == other.sentence.text
         && one.advice.text == other.advice.text
         && std::ranges::equal(one.sentence.values, other.sentence.values, sameOrFigures);
}

std::vector<SharedCaution> sharedAmong(const Orchard& orchard,
                                       const CautionsByPlanting& cautions) {
  std::vector<SharedCaution> all;
  for (const Block* block : blocksInOrder(orchard))
    for (const Planting* planting : plantingsOf(orchard, block->id)) {
      const auto own = cautions.find(planting->id);
      if (own == cautions.end()) continue;
      for (const DayCaution& caution : own->second) add(all, caution, planting->id);
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

std::string placesOf(const Orchard& orchard, const SharedCaution& caution) {
  const bool everywhere = std::ranges::all_of(orchard.plantings, [&](const auto& entry) {
    return entry.second.planted > caution.caution.day
           || std::ranges::find(caution.plantings, entry.first)
                  != caution.plantings.end();
  });
  std::string places;
  if (!everywhere)
    for (const std::string& name : placeNames(orchard, caution.plantings))
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
