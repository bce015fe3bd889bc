#include "core/orchard/delay_weights.h"

#include "core/orchard/table_rows.h"

#include <algorithm>
#include <array>

namespace topwire {

namespace {

const TableKind delayKind{"delay", {"delay", "retraso"}};

using Named = std::pair<std::string_view, DelayCost>;
constexpr std::array<Named, 4> costs{Named{"low", DelayCost::low},
                                     Named{"medium", DelayCost::medium},
                                     Named{"high", DelayCost::high},
                                     Named{"very high", DelayCost::veryHigh}};

DelayWeight weightFrom(TableRow& row) {
  DelayWeight weight;
  weight.name = row.text({"name", "name = \"high\""});
  weight.cost =
      row.oneOf<DelayCost>({"name", "name = \"high\""}, {costs.begin(), costs.end()});
  weight.perDay = row.number({"per_day", "per_day = 0.2"}, {0, 100});
  weight.undone = row.number({"undone", "undone = 6"}, {0, 1000});
  weight.source = row.text({"source", "source = \"where the figures come from\""});
  return weight;
}

}  // namespace

Checked<std::vector<DelayWeight>> readDelayWeights(std::string_view toml,
                                                   const std::string& file) {
  auto weights = readTable<DelayWeight>(toml, file, delayKind, weightFrom);
  if (!weights) return weights;
  Problems missing;
  for (const auto& [name, cost] : costs)
    if (std::ranges::find(*weights, cost, &DelayWeight::cost) == weights->end())
      missing.push_back(
          {Sentence{phrase("Tables", "The cost \"%1\" has no row; add one."),
                    {std::string{name}}},
           file,
           {}});
  if (!missing.empty()) return tl::unexpected{std::move(missing)};
  return weights;
}

}  // namespace topwire
