#include "core/material/material_table_text.h"

namespace topwire {

namespace {

const char* codeOf(MaterialUnit unit) {
  if (unit == MaterialUnit::gram) return "g";
  if (unit == MaterialUnit::millilitre) return "ml";
  return unit == MaterialUnit::metre ? "m" : "piece";
}

Figure amount(double value, MaterialUnit unit) {
  return {value, unit == MaterialUnit::piece ? 0 : 1};
}

std::string tasksOf(const Orchard& orchard, const MaterialLine& line) {
  std::string tasks;
  for (const MaterialUse& use : line.uses)
    if (!use.task.operation.empty())
      tasks += (tasks.empty() ? "" : " ") + taskText(orchard, use.task);
  return tasks;
}

}  // namespace

Table tableOf(const MaterialList& list, const Orchard& orchard, Language language) {
  Table table{{"item",
               "name",
               "unit",
               "needed",
               "to_buy",
               "share",
               "spare_percent",
               "packs",
               "pack",
               "tasks"},
              {}};
  for (const MaterialLine& line : list.lines)
    table.rows.push_back({line.item,
                          line.name.in(language),
                          std::string{codeOf(line.unit)},
                          amount(line.needed, line.unit),
                          amount(line.toBuy, line.unit),
                          Figure{line.share, 2},
                          Figure{line.sparePercent, 1},
                          std::int64_t{line.packs},
                          line.pack.in(language),
                          tasksOf(orchard, line)});
  return table;
}

}  // namespace topwire
