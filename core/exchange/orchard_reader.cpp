#include "core/exchange/orchard_reader.h"

#include "core/edit/crew_deeds.h"
#include "core/edit/deeds.h"
#include "core/edit/target_deeds.h"
#include "core/exchange/nearest.h"
#include "core/exchange/record_fields.h"
#include "core/planning/usual_programme.h"

#include <algorithm>
#include <utility>

namespace topwire {

namespace {

/// The name in the file of a field that a deed names: "rowSpacing" is "row-spacing".
std::string keyOf(const TableFields& fields, const std::string& place) {
  std::string key;
  for (const char c : place) {
    const bool capital = c >= 'A' && c <= 'Z';
    if (capital) key += '-';
    key += capital ? static_cast<char>(c - 'A' + 'a') : c;
  }
  if (key == "planted" && fields.has("planned")) return "planned";
  if (key == "young-minutes") return "young-hours";
  if (key == "until-minute") return "until";
  if (key == "trees" && !fields.has("trees")) return "trees-per-row";
  return key;
}

void readPlanted(TableFields& fields, Planting& planting) {
  const auto planted = fields.day("planted");
  const auto planned = fields.day("planned");
  if (fields.has("planted") && fields.has("planned"))
    fields.fault("planned",
                 {phrase("Orchard file",
                         "This planting is both \"planted\" and \"planned\"; keep the "
                         "one that is so.")});
  planting.planted = fields.has("planned")
                         ? planned.value_or(Day{})
                         : fields.required("planted", planted, "2024-04-18");
}

void readTrees(TableFields& fields, Planting& planting) {
  planting.treesPerRow = fields.whole("trees-per-row", 1, 99'999);
  planting.trees = fields.whole("trees", 1, 999'999);
}

void readVigour(TableFields& fields, Planting& planting) {
  if (const auto vigour = fields.choice("vigour", {"weak", "moderate", "strong"}))
    planting.vigour = static_cast<Vigour>(*vigour);
  planting.vigourReason = fields.text("vigour-reason").value_or("");
}

/// Builds the orchard record by record, with the deeds a person's entries go through. A
/// record with faults is kept all the same, so that what refers to it is checked as well;
/// the orchard is only handed out where there were none.
class OrchardReading {
public:
  OrchardReading(const TradeTables& tables,
                 const Programmes& programmes,
                 IdSource& ids,
                 FileFaults& faults)
      : tables_(&tables), programmes_(&programmes), ids_(&ids), faults_(&faults) {}

  void read(const toml::table& file);

  DescribedOrchard take() { return std::move(described_); }

private:
  void readSettings(const toml::table& table);
  void readStation(TableFields& fields, Settings& settings);
  bool readNormals(const toml::table& table, Settings& settings);
  void readOneCrew(const toml::table& table);
  void readCrewDays(TableFields& file);
  void readBlock(const toml::table& table);
  void readPlanting(const toml::table& table,
                    const Block& block,
                    const TableFields& blockFields);
  void readProgramme(TableFields& fields, Planting& planting);
  void readSeen(const toml::table& table);
  std::optional<PlantingId> readPlantingCode(TableFields& fields);
  void readMeasured(const toml::table& table);
  void readTick(const toml::table& table);
  bool perform(TableFields& fields, const Checked<Change>& change);

  Orchard& orchard() { return described_.orchard; }

  UnitSystem units() const { return described_.orchard.settings.units; }

  const TradeTables* tables_;
  const Programmes* programmes_;
  IdSource* ids_;
  FileFaults* faults_;
  DescribedOrchard described_;
};

void OrchardReading::read(const toml::table& file) {
  TableFields fields{file, "file", *faults_};
  if (const toml::table* settings = fields.oneTable("orchard"))
    readSettings(*settings);
  else if (!fields.has("orchard"))
    fields.fault("orchard",
                 {phrase("Orchard file",
                         "The file has no table [orchard]; add one with the orchard's "
                         "name, latitude, elevation and station.")});
  for (const toml::table* crew : fields.tables("crew")) readOneCrew(*crew);
  for (const toml::table* block : fields.tables("block")) readBlock(*block);
  readCrewDays(fields);
  for (const toml::table* seen : fields.tables("seen")) readSeen(*seen);
  for (const toml::table* taken : fields.tables("measurement")) readMeasured(*taken);
  for (const toml::table* tick : fields.tables("tick")) readTick(*tick);
  fields.refuseOthers();
}

/// True where the change was performed; else its problems are noted at the fields they
/// name, except for those whose field is known to be at fault.
bool OrchardReading::perform(TableFields& fields, const Checked<Change>& change) {
  if (change) {
    apply(orchard(), *change);
    return true;
  }
  for (const Problem& problem : change.error()) {
    const std::string key = keyOf(fields, problem.place);
    if (!fields.isFaulty(key)) faults_->add(fields.lineOf(key), problem.sentence);
  }
  return false;
}

void OrchardReading::readSettings(const toml::table& table) {
  TableFields fields{table, "orchard", *faults_};
  Settings settings;
  const auto units = fields.choice("units", {"metric", "us-customary"});
  settings.units = units == 1U ? UnitSystem::usCustomary : UnitSystem::metric;
  settings.name = fields.required("name", fields.text("name"), "\"Alder Bend\"");
  settings.latitude = fields.required("latitude", fields.number("latitude"), "46.9");
  settings.elevation = fields.required(
      "elevation", fields.length("elevation", settings.units), "\"1500 ft\"");
  settings.recordsFrom =
      fields.required("records-from", fields.day("records-from"), "2027-01-01");
  settings.firstLeafDelayDays =
      fields.whole("first-leaf-delay", 0, 60).value_or(settings.firstLeafDelayDays);
  readWorkingDay(fields, settings);
  readStation(fields, settings);
  fields.refuseOthers();
  if (!perform(fields, changeSettings(orchard(), settings)))
    orchard().settings = settings;
}

void OrchardReading::readStation(TableFields& fields, Settings& settings) {
  settings.station = fields.required("station", fields.text("station"), "\"Ellensburg\"");
  const toml::table* normals = fields.oneTable("normals");
  if (normals != nullptr) {
    if (!readNormals(*normals, settings)) fields.mute("normals");
    return;
  }
  if (fields.isFaulty("normals")) return;
  if (const Station* station = tables_->station(settings.station)) {
    settings.stationElevation = station->elevation;
    settings.normals = station->normals;
    return;
  }
  fields.mute("normals");
  if (fields.isFaulty("station")) return;
  std::vector<std::string> names;
  names.reserve(tables_->stations.size());
  for (const Station& station : tables_->stations) names.push_back(station.name);
  const std::string nearest = nearestName(settings.station, names);
  fields.fault("station",
               {nearest.empty()
                    ? phrase("Orchard file",
                             "There is no station \"%1\"; name a shipped one, or give "
                             "its monthly normals in [orchard.normals].")
                    : phrase("Orchard file",
                             "There is no station \"%1\"; \"%2\" is the nearest name, or "
                             "give its monthly normals in [orchard.normals]."),
                {settings.station, nearest}});
}

/// False where the table had faults.
bool OrchardReading::readNormals(const toml::table& table, Settings& settings) {
  TableFields fields{table, "table of normals", *faults_};
  settings.stationElevation =
      fields.required("station-elevation",
                      fields.length("station-elevation", settings.units),
                      "\"450 m\"");
  const auto read = [&fields](const char* key, std::array<double, 12>& months) {
    const auto degrees = fields.numbers(key);
    if (degrees.size() == months.size())
      std::ranges::copy(degrees, months.begin());
    else if (!fields.isFaulty(key))
      fields.fault(key,
                   {phrase("Orchard file",
                           "\"%1\" takes twelve numbers, January first, in degrees "
                           "Celsius."),
                    {key}});
  };
  read("minimum", settings.normals.minimum);
  read("maximum", settings.normals.maximum);
  fields.refuseOthers();
  return !fields.hasFaults();
}

void OrchardReading::readOneCrew(const toml::table& table) {
  TableFields fields{table, "crew", *faults_};
  Crew crew = readCrew(fields);
  crew.id = ids_->next<CrewId>();
  fields.refuseOthers();
  if (!perform(fields, addCrew(orchard(), crew))) orchard().crews[crew.id] = crew;
}

/// What hangs on a field at fault would be told a second time by the deed.
void OrchardReading::readCrewDays(TableFields& file) {
  for (const toml::table* table : file.tables("work-day")) {
    TableFields fields{*table, "work day", *faults_};
    const WorkDay work = readWorkDay(fields);
    if (!fields.hasFaults()) perform(fields, setWorkDay(orchard(), work));
  }
  for (const toml::table* table : file.tables("turnout")) {
    TableFields fields{*table, "turnout", *faults_};
    const Turnout turnout = readTurnout(fields, orchard());
    if (!fields.hasFaults()) perform(fields, setTurnout(orchard(), turnout));
  }
  for (const toml::table* table : file.tables("closure")) {
    TableFields fields{*table, "closure", *faults_};
    BlockClosure closure = readClosure(fields, orchard());
    closure.id = ids_->next<ClosureId>();
    if (!fields.hasFaults()) perform(fields, closeBlock(orchard(), closure));
  }
  for (const toml::table* table : file.tables("pin")) {
    TableFields fields{*table, "pin", *faults_};
    described_.pins.push_back(readPin(fields, orchard()));
  }
}

void OrchardReading::readBlock(const toml::table& table) {
  TableFields fields{table, "block", *faults_};
  Block block;
  block.id = ids_->next<BlockId>();
  block.name = fields.required("name", fields.text("name"), "\"Creek 1\"");
  block.rows = fields.required("rows", fields.rows("rows"), "\"1-12\"");
  block.rowSpacing =
      fields.required("row-spacing", fields.length("row-spacing", units()), "\"11 ft\"");
  block.rowLength = fields.length("row-length", units());
  block.elevation = fields.length("elevation", units());
  block.minimumCorrection = fields.number("minimum-correction").value_or(0);
  block.maximumCorrection = fields.number("maximum-correction").value_or(0);
  readPlaceOf(fields, block);
  block.notes = fields.text("notes").value_or("");
  const auto plantings = fields.tables("planting");
  fields.refuseOthers();
  if (!perform(fields, addBlock(orchard(), block))) orchard().blocks[block.id] = block;
  for (const toml::table* planting : plantings) readPlanting(*planting, block, fields);
}

void OrchardReading::readPlanting(const toml::table& table,
                                  const Block& block,
                                  const TableFields& blockFields) {
  TableFields fields{table, "planting", *faults_};
  Planting planting;
  planting.id = ids_->next<PlantingId>();
  planting.block = block.id;
  planting.cultivar = fields.required("cultivar", fields.text("cultivar"), "\"Gala\"");
  planting.rootstock =
      fields.required("rootstock", fields.text("rootstock"), "\"M.9 T337\"");
  const auto kind = fields.choice("kind", {"main", "pollinizer", "replant"});
  planting.kind = static_cast<PlantingKind>(kind.value_or(0));
  planting.rows = fields.rows("rows").value_or(block.rows);
  planting.treeSpacing =
      fields.required("tree-spacing", fields.length("tree-spacing", units()), "\"3 ft\"");
  const auto code = fields.text("code");
  planting.code = code.value_or(freshCode(orchard(), block.name, planting.cultivar));
  readPlanted(fields, planting);
  readTrees(fields, planting);
  readVigour(fields, planting);
  readProgramme(fields, planting);
  fields.refuseOthers();
  // What follows from a fault of the block is not told again.
  if (blockFields.isFaulty("rows")) fields.mute("rows");
  if (blockFields.isFaulty("row-length")) fields.mute("trees-per-row");
  if (!perform(fields, addPlanting(orchard(), *tables_, planting)))
    orchard().plantings[planting.id] = planting;
}

void OrchardReading::readProgramme(TableFields& fields, Planting& planting) {
  const auto id = fields.text("programme");
  planting.programme = id.value_or(usualProgramme(*programmes_));
  if (!id || programmes_->contains(*id)) return;
  std::string known;
  for (const auto& [name, programme] : *programmes_)
    known += (known.empty() ? "" : ", ") + name;
  fields.fault("programme",
               {phrase("Orchard file", "There is no programme \"%1\"; there is: %2."),
                {*id, known}});
}

void OrchardReading::readSeen(const toml::table& table) {
  TableFields fields{table, "stage seen", *faults_};
  Observation seen;
  seen.id = ids_->next<ObservationId>();
  const auto planting = readPlantingCode(fields);
  seen.bbch = readStage(fields, table);
  seen.day = fields.required("day", fields.day("day"), "2027-03-28");
  seen.by = fields.text("by").value_or("");
  fields.refuseOthers();
  const bool whole = planting && !fields.isFaulty("stage") && !fields.isFaulty("day");
  if (!whole) return;
  seen.planting = *planting;
  perform(fields, observeStage(orchard(), seen));
}

std::optional<PlantingId> OrchardReading::readPlantingCode(TableFields& fields) {
  const auto code =
      fields.required("planting", fields.text("planting"), "\"creek-1-gala\"");
  if (fields.isFaulty("planting")) return std::nullopt;
  if (const Planting* planting = plantingByCode(orchard(), code)) return planting->id;
  std::vector<std::string> codes;
  codes.reserve(orchard().plantings.size());
  for (const auto& [id, planting] : orchard().plantings) codes.push_back(planting.code);
  const std::string nearest = nearestName(code, codes);
  fields.fault("planting",
               {nearest.empty()
                    ? phrase("Orchard file",
                             "No planting above has the code \"%1\"; name one that has "
                             "its block in this file.")
                    : phrase("Orchard file",
                             R"(No planting above has the code "%1"; write "%2".)"),
                {code, nearest}});
  return std::nullopt;
}

void OrchardReading::readMeasured(const toml::table& table) {
  TableFields fields{table, "measurement", *faults_};
  const auto planting = readPlantingCode(fields);
  Measurement taken = readMeasurement(fields, units());
  taken.id = ids_->next<MeasurementId>();
  fields.refuseOthers();
  if (!planting || fields.hasFaults()) return;
  taken.planting = *planting;
  perform(fields, addMeasurement(orchard(), taken));
}

void OrchardReading::readTick(const toml::table& table) {
  TableFields fields{table, "tick", *faults_};
  DescribedOrchard::WantedTick tick;
  tick.task =
      fields.required("task", fields.text("task"), "\"creek-1-gala:rub-rivals:2027:1\"");
  tick.rows = rowsText(fields.rows("rows").value_or(RowSet{}));
  tick.percent = fields.whole("percent", 1, 100).value_or(100);
  tick.minutes = fields.whole("minutes", 0, 999'999).value_or(0);
  tick.by = fields.required("by", fields.text("by"), "\"Heron\"");
  tick.day = fields.required("day", fields.day("day"), "2027-04-06");
  tick.line = fields.lineOf("task");
  fields.refuseOthers();
  described_.ticks.push_back(std::move(tick));
}

}  // namespace

Checked<DescribedOrchard> readOrchard(std::string_view toml,
                                      const std::string& file,
                                      const TradeTables& tables,
                                      const Programmes& programmes,
                                      IdSource& ids) {
  FileFaults faults{file};
  const auto parsed = parseToml(toml, faults);
  if (!parsed) return tl::unexpected{faults.inOrder()};
  OrchardReading reading{tables, programmes, ids, faults};
  reading.read(*parsed);
  if (faults.any()) return tl::unexpected{faults.inOrder()};
  return reading.take();
}

}  // namespace topwire
