#include "core/exchange/record_fields.h"

#include "core/exchange/nearest.h"
#include "core/orchard/measure_text.h"
#include "core/phenology/stage.h"

namespace topwire {

int readStage(TableFields& fields, const toml::table& table) {
  const auto code = table["stage"].value_exact<std::int64_t>();
  if (code) {
    fields.whole("stage", 0, 99);
    return static_cast<int>(*code);
  }
  const auto name = fields.required("stage", fields.text("stage"), "\"silver tip\"");
  if (fields.isFaulty("stage")) return 0;
  std::vector<std::string> names;
  for (const Stage& stage : allStages()) {
    if (stage.name.en == name) return stage.bbch;
    names.push_back(stage.name.en);
  }
  const std::string nearest = nearestName(name, names);
  fields.fault(
      "stage",
      {nearest.empty()
           ? phrase("Orchard file",
                    "There is no stage \"%1\"; write its BBCH code, such as 53, or its "
                    "name, such as \"green tip\".")
           : phrase("Orchard file", R"(There is no stage "%1"; write "%2".)"),
       {name, nearest}});
  return 0;
}

Measurement readMeasurement(TableFields& fields, UnitSystem units) {
  std::vector<std::string> codes;
  for (const Measure measure : allMeasures()) codes.push_back(codeOf(measure));
  Measurement taken;
  const auto which =
      fields.required("measure", fields.choice("measure", codes), "\"trunk-diameter\"");
  taken.measure = allMeasures()[which];
  taken.day = fields.required("day", fields.day("day"), "2026-12-03");
  const auto typed = fields.required("values", fields.text("values"), "\"38 36 41 mm\"");
  taken.by = fields.text("by").value_or("");
  taken.note = fields.text("note").value_or("");
  if (fields.isFaulty("values") || fields.isFaulty("measure")) return taken;
  if (auto values = readMeasured(typed, taken.measure, units))
    taken.values = std::move(*values);
  else
    fields.fault("values", values.error().sentence);
  return taken;
}

}  // namespace topwire
