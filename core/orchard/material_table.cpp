#include "core/orchard/material_table.h"

#include "core/orchard/table_rows.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

const TableKind materialKind{"material", {"material", "material"}};
const TableKind trellisKind{"trellis", {"trellis", "espaldera"}};

constexpr TableField sourceField{"source", "source = \"where the figures come from\""};

Length feet(double count) {
  return Length::micrometres(std::llround(count * 304'800));
}

MaterialItem materialFrom(TableRow& row) {
  MaterialItem item;
  item.name = row.text({"item", "item = \"soft tie\""});
  item.label.en = row.text({"name_en", "name_en = \"soft tie\""});
  item.label.es = row.text({"name_es", "name_es = \"amarre suave\""});
  item.unit = row.oneOf<MaterialUnit>({"unit", "unit = \"piece\""},
                                      {{"piece", MaterialUnit::piece},
                                       {"g", MaterialUnit::gram},
                                       {"ml", MaterialUnit::millilitre},
                                       {"m", MaterialUnit::metre}});
  item.pack.en = row.text({"purchase_en", "purchase_en = \"box of 1,000\""});
  item.pack.es = row.text({"purchase_es", "purchase_es = \"caja de 1,000\""});
  item.packSize = row.number({"purchase_size", "purchase_size = 1000"}, {0.001, 1e7});
  item.share = row.number({"share", "share = 1"}, {0.01, 1});
  item.sparePercent = row.number({"spare_percent", "spare_percent = 5"}, {0, 50});
  item.source = row.text(sourceField);
  return item;
}

TrellisPlan trellisFrom(TableRow& row) {
  TrellisPlan plan;
  plan.name = row.text({"programme", "programme = \"tall-spindle-apple\""});
  for (const double height :
       row.numbers({"wires_ft", "wires_ft = [2.5, 5, 7.5, 10]"}, {0.3, 30}))
    plan.wires.push_back(feet(height));
  if (!std::ranges::is_sorted(plan.wires))
    row.report(
        phrase("Tables", "In %1 %2 the field %3 does not rise; put the lowest first."),
        {"wires_ft", ""},
        {},
        row.source());
  plan.postSpacing =
      feet(row.number({"posts_every_ft", "posts_every_ft = 33"}, {3, 200}));
  const auto count = [&row](TableField field) {
    return static_cast<int>(std::lround(row.number(field, {0, 20})));
  };
  plan.endPostsPerRow = count({"end_posts_a_row", "end_posts_a_row = 2"});
  plan.anchorsPerRow = count({"anchors_a_row", "anchors_a_row = 2"});
  plan.source = row.text(sourceField);
  return plan;
}

}  // namespace

Checked<std::vector<MaterialItem>> readMaterials(std::string_view toml,
                                                 const std::string& file) {
  return readTable<MaterialItem>(toml, file, materialKind, materialFrom);
}

Checked<std::vector<TrellisPlan>> readTrellises(std::string_view toml,
                                                const std::string& file) {
  return readTable<TrellisPlan>(toml, file, trellisKind, trellisFrom);
}

}  // namespace topwire
