#include "core/orchard/trade_tables.h"

namespace topwire {

namespace {

Vigour classOf(double score) {
  if (score <= -1) return Vigour::weak;
  return score >= 1 ? Vigour::strong : Vigour::moderate;
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
  return basis;
}

}  // namespace topwire
