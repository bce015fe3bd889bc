#include "core/edit/change.h"
#include "core/edit/crew_fields.h"
#include "core/edit/sentence_json.h"
#include "core/edit/value_json.h"
#include "core/edit/weather_json.h"

#include <nlohmann/json.hpp>

#include <array>
#include <utility>

namespace topwire {

namespace {

using Json = nlohmann::json;
// Those of the values, which the records' own would hide.
using topwire::read;
using topwire::toJson;

template <class T>
Json toJson(const std::optional<T>& value);
template <class T>
void read(const Json& json, std::optional<T>& value);

/// Every record lists its fields once; writing and reading both walk the list. Those of
/// crews are in crew_fields.h.
template <FieldsOf<TaskKey> Key, class Visit>
void fields(Key& key, Visit visit) {
  visit("planting", key.planting);
  visit("operation", key.operation);
  visit("season", key.season.year);
  visit("pass", key.pass);
}

template <FieldsOf<PlantingSeason> Key, class Visit>
void fields(Key& key, Visit visit) {
  visit("planting", key.planting);
  visit("season", key.season.year);
}

template <FieldsOf<Settings> Record, class Visit>
void fields(Record& settings, Visit visit) {
  visit("name", settings.name);
  visit("latitude", settings.latitude);
  visit("elevation", settings.elevation);
  visit("units", settings.units);
  visit("station", settings.station);
  visit("stationElevation", settings.stationElevation);
  visit("minimum", settings.normals.minimum);
  visit("maximum", settings.normals.maximum);
  visit("recordsFrom", settings.recordsFrom);
  visit(Later{"firstLeafDelayDays"}, settings.firstLeafDelayDays);
  visit(Later{"workdays"}, settings.workdays);
  visit(Later{"startMinute"}, settings.startMinute);
  visit(Later{"moveMinutes"}, settings.moveMinutes);
  visit(Later{"moveMinutesPerKm"}, settings.moveMinutesPerKm);
  visit(Later{"keepTogether"}, settings.keepTogether);
  visit(Later{"gangAtMost"}, settings.gangAtMost);
}

template <FieldsOf<Block> Record, class Visit>
void fields(Record& block, Visit visit) {
  visit("id", block.id);
  visit("name", block.name);
  visit("rows", block.rows);
  visit("rowSpacing", block.rowSpacing);
  visit("rowLength", block.rowLength);
  visit("elevation", block.elevation);
  visit(Later{"minimumCorrection"}, block.minimumCorrection);
  visit(Later{"maximumCorrection"}, block.maximumCorrection);
  visit(Later{"wires"}, block.wires);
  visit(Later{"postSpacing"}, block.postSpacing);
  visit(Later{"workersAtMost"}, block.workersAtMost);
  visit(Later{"latitude"}, block.latitude);
  visit(Later{"longitude"}, block.longitude);
  visit("notes", block.notes);
}

template <FieldsOf<Planting> Record, class Visit>
void fields(Record& planting, Visit visit) {
  visit("id", planting.id);
  visit("block", planting.block);
  visit("code", planting.code);
  visit("cultivar", planting.cultivar);
  visit("rootstock", planting.rootstock);
  visit("kind", planting.kind);
  visit("planted", planting.planted);
  visit("rows", planting.rows);
  visit("treeSpacing", planting.treeSpacing);
  visit("treesPerRow", planting.treesPerRow);
  visit("trees", planting.trees);
  visit("vigour", planting.vigour);
  visit("vigourReason", planting.vigourReason);
  visit("programme", planting.programme);
}

template <FieldsOf<Observation> Record, class Visit>
void fields(Record& seen, Visit visit) {
  visit("id", seen.id);
  visit("planting", seen.planting);
  visit("bbch", seen.bbch);
  visit("day", seen.day);
  visit("by", seen.by);
}

template <FieldsOf<Tick> Record, class Visit>
void fields(Record& tick, Visit visit) {
  visit("id", tick.id);
  visit("task", tick.task);
  visit("rows", tick.rows);
  visit("percent", tick.percent);
  visit("minutes", tick.minutes);
  visit("by", tick.by);
  visit("day", tick.day);
  visit("takesBack", tick.takesBack);
}

template <FieldsOf<TaskMark> Record, class Visit>
void fields(Record& mark, Visit visit) {
  visit("task", mark.task);
  visit("moved", mark.moved);
  visit("setAsideReason", mark.setAsideReason);
  visit("handTitle", mark.handTitle);
  visit("handSecondsPerTree", mark.handSecondsPerTree);
}

template <FieldsOf<PastStage> Record, class Visit>
void fields(Record& past, Visit visit) {
  visit("id", past.id);
  visit("cultivar", past.cultivar);
  visit("bbch", past.bbch);
  visit("day", past.day);
}

template <FieldsOf<Measurement> Record, class Visit>
void fields(Record& taken, Visit visit) {
  visit("id", taken.id);
  visit("planting", taken.planting);
  visit("measure", taken.measure);
  visit("day", taken.day);
  visit("values", taken.values);
  visit("by", taken.by);
  visit("note", taken.note);
}

template <FieldsOf<SeasonTarget> Record, class Visit>
void fields(Record& target, Visit visit) {
  visit("of", target.of);
  visit("vigour", target.vigour);
  visit("vigourReason", target.vigourReason);
  visit("fruitFrom", target.fruitFrom);
  visit("fruitTo", target.fruitTo);
  visit("note", target.note);
}

template <FieldsOf<SeasonClose> Record, class Visit>
void fields(Record& close, Visit visit) {
  visit("season", close.season.year);
  visit("day", close.day);
  visit("by", close.by);
}

template <FieldsOf<OwnProgramme> Record, class Visit>
void fields(Record& own, Visit visit) {
  visit("id", own.id);
  visit("text", own.text);
}

template <class Record>
concept Listed = requires(Record& record) { fields(record, [](auto, auto&) {}); };

template <Listed Record>
Json toJson(const Record& record);
template <Listed Record>
void read(const Json& json, Record& record);

struct FieldWriter {
  Json& json;

  void operator()(const char* name, const auto& field) const {
    json[name] = toJson(field);
  }

  void operator()(Later later, const auto& field) const { (*this)(later.name, field); }
};

struct FieldReader {
  const Json& json;

  void operator()(const char* name, auto& field) const { read(json.at(name), field); }

  void operator()(Later later, auto& field) const {
    if (json.contains(later.name)) (*this)(later.name, field);
  }
};

template <Listed Record>
Json toJson(const Record& record) {
  Json json = Json::object();
  fields(record, FieldWriter{json});
  return json;
}

template <Listed Record>
void read(const Json& json, Record& record) {
  fields(record, FieldReader{json});
}

template <class T>
Json toJson(const std::optional<T>& value) {
  return value ? toJson(*value) : Json{};
}

template <class T>
void read(const Json& json, std::optional<T>& value) {
  if (json.is_null()) return;
  T held{};
  read(json, held);
  value = held;
}

/// In the order of AnyEdit's alternatives.
constexpr std::array recordNames{"settings",
                                 "block",
                                 "planting",
                                 "crew",
                                 "observation",
                                 "tick",
                                 "mark",
                                 "past stage",
                                 "weather",
                                 "measurement",
                                 "season target",
                                 "season close",
                                 "programme",
                                 "work day",
                                 "turnout",
                                 "pin",
                                 "closure",
                                 "planned job"};
static_assert(recordNames.size() == std::variant_size_v<AnyEdit>);

Json toJson(const AnyEdit& any) {
  return std::visit(
      [&](const auto& edit) {
        return Json{{"record", recordNames[any.index()]},
                    {"before", toJson(edit.before)},
                    {"after", toJson(edit.after)}};
      },
      any);
}

template <std::size_t Index = 0>
AnyEdit readEdit(const Json& json) {
  if constexpr (Index == recordNames.size()) {
    throw UnreadableJson{json.at("record").get<std::string>()};
  } else {
    if (json.at("record") != recordNames[Index]) return readEdit<Index + 1>(json);
    std::variant_alternative_t<Index, AnyEdit> edit;
    read(json.at("before"), edit.before);
    read(json.at("after"), edit.after);
    if (!edit.before && !edit.after) throw UnreadableJson{"an edit with neither side"};
    return edit;
  }
}

Change readChange(const Json& json) {
  Change change;
  read(json.at("name"), change.name);
  const Json& edits = json.at("edits");
  change.edits.reserve(edits.size());
  for (const Json& edit : edits) change.edits.push_back(readEdit(edit));
  return change;
}

}  // namespace

std::string toJson(const Change& change) {
  Json edits = Json::array();
  for (const AnyEdit& edit : change.edits) edits.push_back(toJson(edit));
  const Json json{{"name", toJson(change.name)}, {"edits", std::move(edits)}};
  // Text that is no UTF-8 is mended rather than thrown about.
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

Result<Change> changeFromJson(std::string_view json) {
  try {
    return readChange(Json::parse(json));
  } catch (const std::exception& fault) {
    Problem problem{Sentence{phrase("Deed",
                                    "A change on record can't be read, so undo does not "
                                    "reach past it.")},
                    {},
                    fault.what()};
    return tl::unexpected<Problem>{std::move(problem)};
  }
}

}  // namespace topwire
