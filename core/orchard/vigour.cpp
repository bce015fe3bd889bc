#include "core/orchard/trade_tables.h"

#include <iterator>

namespace topwire {

namespace {

Vigour classOf(double score) {
  if (score <= -1) return Vigour::weak;
  return score >= 1 ? Vigour::strong : Vigour::moderate;
}

/// The latest target of the planting in this season or an earlier one.
const SeasonTarget* targetUpTo(const Orchard& orchard,
                               const Planting& planting,
                               Season season) {
  const auto after = orchard.targets.upper_bound({planting.id, season});
  if (after == orchard.targets.begin()) return nullptr;
  const auto& [of, target] = *std::prev(after);
  return of.planting == planting.id ? &target : nullptr;
}

}  // namespace

VigourBasis vigourOf(const TradeTables& tables, const Planting& planting) {
  const Cultivar* cultivar = tables.cultivar(planting.cultivar);
  const Rootstock* rootstock = tables.rootstock(planting.rootstock);
  VigourBasis basis{};
  basis.fromCultivar = cultivar != nullptr ? cultivar->vigourScore : 0;
  basis.fromRootstock = rootstock != nullptr ? rootstock->vigourScore : 0;
  basis.score = basis.fromCultivar + basis.fromRootstock;
  basis.byGrower = planting.vigour.has_value();
  basis.vigour = planting.vigour.value_or(classOf(basis.score));
  if (basis.byGrower) basis.reason = planting.vigourReason;
  return basis;
}

VigourBasis vigourIn(Season season,
                     const Orchard& orchard,
                     const TradeTables& tables,
                     const Planting& planting) {
  VigourBasis basis = vigourOf(tables, planting);
  for (Season at = season; const SeasonTarget* target = targetUpTo(orchard, planting, at);
       at = target->of.season.plus(-1)) {
    if (!target->vigour) continue;
    basis.vigour = *target->vigour;
    basis.byGrower = true;
    basis.reason = target->vigourReason;
    basis.since = target->of.season;
    break;
  }
  return basis;
}

}  // namespace topwire
