#include "core/orchard/trade_tables.h"

#include <toml++/toml.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <optional>
#include <utility>

namespace topwire {

namespace {

/// What one kind of table is called: the key of its rows and the word for people.
struct Kind {
  const char* key;
  Words word;
};

const Kind cultivarKind{"cultivar", {"cultivar", "variedad"}};
const Kind rootstockKind{"rootstock", {"rootstock", "portainjerto"}};
const Kind stationKind{"station", {"station", "estación"}};
const Kind stageKind{"stage", {"stage", "estado"}};
const Kind stageHeatKind{"stage_heat", {"stage", "estado"}};

/// A field's name with a line that shows how to write it.
struct Field {
  const char* name;
  const char* example;
};

struct Bounds {
  double least = std::numeric_limits<double>::lowest();
  double most = std::numeric_limits<double>::max();
};

std::string placeOf(const std::string& file, const toml::source_region& source) {
  return file + ":" + std::to_string(source.begin.line);
}

/// Reads one row's fields. What it cannot read it reports, and gives an empty value for,
/// so that all faults of a file are told at once.
class RowReader {
public:
  RowReader(const toml::table& row,
            int number,
            const Kind& kind,
            const std::string& file,
            Problems& problems)
      : row_(&row), kind_(&kind), file_(&file), problems_(&problems) {
    const auto name = row["name"].value<std::string>();
    label_ = name ? '"' + *name + '"' : "number " + std::to_string(number);
  }

  std::string text(Field field) {
    const toml::node* node = find(field);
    if (node == nullptr) return {};
    const auto* value = node->as_string();
    if (value == nullptr || value->get().empty()) {
      wrongType(field,
                *node,
                phrase("Tables",
                       "In %1 %2 the field %3 is not text between "
                       "quotation marks; write it like: %4"));
      return {};
    }
    return value->get();
  }

  bool flag(Field field) {
    const toml::node* node = find(field);
    if (node == nullptr) return false;
    const auto* value = node->as_boolean();
    if (value == nullptr)
      wrongType(field,
                *node,
                phrase("Tables",
                       "In %1 %2 the field %3 is neither true nor false; write it like: "
                       "%4"));
    return value != nullptr && value->get();
  }

  double number(Field field, Bounds bounds) {
    const toml::node* node = find(field);
    return node == nullptr ? 0 : numberIn(*node, field, bounds);
  }

  std::array<double, 12> twelve(Field field, Bounds bounds) {
    std::array<double, 12> values{};
    const toml::node* node = find(field);
    if (node == nullptr) return values;
    const toml::array* months = node->as_array();
    if (months == nullptr || months->size() != values.size()) {
      wrongType(field,
                *node,
                phrase("Tables",
                       "In %1 %2 the field %3 is not a list of twelve numbers, January "
                       "first; write it like: %4"));
      return values;
    }
    for (std::size_t i = 0; i < values.size(); ++i)
      values[i] = numberIn((*months)[i], field, bounds);
    return values;
  }

  /// The value that `words` gives the text; the first one's where it is none of them.
  template <class T>
  T oneOf(Field field, const std::vector<std::pair<std::string_view, T>>& words) {
    const toml::node* node = find(field);
    if (node == nullptr) return words.front().second;
    const auto written = node->value<std::string>();
    std::string choices;
    for (const auto& [word, value] : words) {
      if (written == word) return value;
      choices += (choices.empty() ? "\"" : ", \"") + std::string{word} + '"';
    }
    report(phrase("Tables", "In %1 %2 the field %3 is none of: %4. Write one of them."),
           field,
           choices,
           node->source());
    return words.front().second;
  }

  void report(Phrase phrase,
              Field field,
              const std::string& value,
              const toml::source_region& source) {
    problems_->push_back({Sentence{phrase, {kind_->word, label_, field.name, value}},
                          placeOf(*file_, source),
                          {}});
  }

  const toml::source_region& source() const { return row_->source(); }

  /// To be called last: whatever no other call asked for is unknown.
  void reportUnknown() {
    std::string known;
    for (const auto& name : asked_) known += (known.empty() ? "" : ", ") + name;
    for (const auto& [key, node] : *row_) {
      const std::string name{key.str()};
      if (std::ranges::find(asked_, name) != asked_.end()) continue;
      report(phrase("Tables",
                    "In %1 %2 there is no field %3; take it out or use one of: %4."),
             {name.c_str(), ""},
             known,
             key.source());
    }
  }

private:
  const toml::node* find(Field field) {
    asked_.emplace_back(field.name);
    const toml::node* node = row_->get(field.name);
    if (node == nullptr)
      report(phrase("Tables", "In %1 %2 the field %3 is missing; add a line like: %4"),
             field,
             field.example,
             row_->source());
    return node;
  }

  void wrongType(Field field, const toml::node& node, Phrase phrase) {
    report(phrase, field, field.example, node.source());
  }

  double numberIn(const toml::node& node, Field field, Bounds bounds) {
    const auto value = node.is_number() ? node.value<double>() : std::nullopt;
    if (!value || !std::isfinite(*value)) {
      wrongType(
          field,
          node,
          phrase("Tables", "In %1 %2 the field %3 is not a number; write it like: %4"));
      return 0;
    }
    if (*value < bounds.least || *value > bounds.most) {
      wrongType(field,
                node,
                phrase("Tables",
                       "In %1 %2 the field %3 lies outside anything likely; check it "
                       "and write it like: %4"));
      return 0;
    }
    return *value;
  }

  const toml::table* row_;
  const Kind* kind_;
  const std::string* file_;
  Problems* problems_;
  std::string label_;
  std::vector<std::string> asked_;
};

std::optional<toml::table> parsed(std::string_view text,
                                  const std::string& file,
                                  Problems& problems) {
  try {
    return toml::parse(text, file);
  } catch (const toml::parse_error& fault) {
    problems.push_back(
        {Sentence{
             phrase("Tables", "The file stops being TOML here (%1); mend this line."),
             {std::string{fault.description()}}},
         placeOf(file, fault.source()),
         std::string{fault.description()}});
    return std::nullopt;
  }
}

/// The rows [[kind]] of the file; anything beside them is a fault.
const toml::array* rowsOf(const toml::table& root,
                          const Kind& kind,
                          const std::string& file,
                          Problems& problems) {
  for (const auto& [key, node] : root) {
    if (key.str() == kind.key) continue;
    problems.push_back(
        {Sentence{phrase("Tables",
                         "%1 does not belong in this file; take it out, or "
                         "name it [[%2]] if it is one of its rows."),
                  {std::string{key.str()}, kind.key}},
         placeOf(file, key.source()),
         {}});
  }
  const toml::node* node = root.get(kind.key);
  if (node != nullptr && node->is_array_of_tables()) return node->as_array();
  problems.push_back(
      {Sentence{phrase("Tables", "The file has no rows; begin each with [[%1]]."),
                {kind.key}},
       placeOf(file, node != nullptr ? node->source() : root.source()),
       {}});
  return nullptr;
}

/// Reads every row with `readRow` and reports names given twice.
template <class Row, class ReadRow>
Checked<std::vector<Row>> readTable(std::string_view text,
                                    const std::string& file,
                                    const Kind& kind,
                                    ReadRow readRow) {
  Problems problems;
  std::vector<Row> rows;
  std::map<std::string, toml::source_region> firstNamed;
  const auto root = parsed(text, file, problems);
  const auto* found = root ? rowsOf(*root, kind, file, problems) : nullptr;
  for (std::size_t i = 0; found != nullptr && i < found->size(); ++i) {
    RowReader reader{
        *(*found)[i].as_table(), static_cast<int>(i) + 1, kind, file, problems};
    rows.push_back(readRow(reader));
    reader.reportUnknown();
    const auto [first, isNew] = firstNamed.emplace(rows.back().name, reader.source());
    if (!isNew && !rows.back().name.empty())
      reader.report(phrase("Tables",
                           "In %1 %2 the field %3 repeats that of line %4; name it "
                           "otherwise or take one row out."),
                    {"name", ""},
                    std::to_string(first->second.begin.line),
                    reader.source());
  }
  if (!problems.empty()) return tl::unexpected{std::move(problems)};
  return rows;
}

constexpr Field nameField{"name", "name = \"Gala\""};
constexpr Field sourceField{"source", "source = \"where the figures come from\""};

Cultivar cultivarFrom(RowReader& row) {
  Cultivar cultivar;
  cultivar.name = row.text(nameField);
  cultivar.vigourScore = row.oneOf<double>({"vigour", ""},
                                           {{"moderate", 0},
                                            {"weak", -1},
                                            {"weak to moderate", -0.5},
                                            {"moderate to strong", 0.5},
                                            {"strong", 1}});
  cultivar.bloomShiftDays =
      row.number({"bloom_shift_days", "bloom_shift_days = -1.5"}, {-30, 30});
  cultivar.bloomToHarvestDays = static_cast<int>(std::lround(
      row.number({"bloom_to_harvest_days", "bloom_to_harvest_days = 140"}, {60, 250})));
  cultivar.biennial = row.flag({"biennial", "biennial = false"});
  cultivar.habit = row.text({"habit", "habit = \"III\""});
  cultivar.source = row.text(sourceField);
  return cultivar;
}

Rootstock rootstockFrom(RowReader& row) {
  Rootstock rootstock;
  rootstock.name = row.text({"name", "name = \"M.9 T337\""});
  rootstock.vigourScore = row.number({"vigour_score", "vigour_score = 0.5"}, {-3, 3});
  rootstock.suitsSystem = row.flag({"suits_system", "suits_system = true"});
  rootstock.source = row.text(sourceField);
  return rootstock;
}

bool isFahrenheit(RowReader& row) {
  return row.oneOf<bool>({"units", "units = \"C\""}, {{"C", false}, {"F", true}});
}

double celsius(double fahrenheit) {
  return (fahrenheit - 32) * 5 / 9;
}

void reportCrossedNormals(RowReader& row, const MonthlyNormals& normals) {
  for (std::size_t month = 0; month < 12; ++month)
    if (normals.minimum[month] > normals.maximum[month])
      row.report(phrase("Tables",
                        "In %1 %2 the field %3 lies above the maximum in month %4; check "
                        "the two lists."),
                 {"minimum", ""},
                 std::to_string(month + 1),
                 row.source());
}

Station stationFrom(RowReader& row) {
  Station station;
  station.name = row.text({"name", "name = \"Ellensburg\""});
  station.latitude = row.number({"latitude", "latitude = 46.97"}, {-90, 90});
  station.elevation = Length::micrometres(
      std::llround(1e6 * row.number({"elevation_m", "elevation_m = 450"}, {-430, 5000})));
  station.period = row.text({"period", "period = \"1991-2020\""});
  const bool fahrenheit = isFahrenheit(row);
  MonthlyNormals& normals = station.normals;
  constexpr Bounds likely{-80, 140};
  normals.minimum = row.twelve({"minimum", "minimum = [-4.3, -3.0, ... -3.7]"}, likely);
  normals.maximum = row.twelve({"maximum", "maximum = [0.9, 4.3, ... 1.4]"}, likely);
  reportCrossedNormals(row, normals);
  if (fahrenheit)
    for (auto* months : {&normals.minimum, &normals.maximum})
      for (double& value : *months) value = celsius(value);
  station.source = row.text(sourceField);
  return station;
}

FrostKill frostKillFrom(RowReader& row) {
  FrostKill kill;
  kill.name = row.text({"name", "name = \"green tip\""});
  kill.bbch = static_cast<int>(std::lround(row.number({"bbch", "bbch = 53"}, {0, 99})));
  const bool fahrenheit = isFahrenheit(row);
  constexpr Bounds likely{-60, 40};
  kill.oneInTen = row.number({"kills_one_in_ten", "kills_one_in_ten = 18"}, likely);
  kill.nineInTen = row.number({"kills_nine_in_ten", "kills_nine_in_ten = 10"}, likely);
  if (kill.nineInTen > kill.oneInTen)
    row.report(
        phrase("Tables",
               "In %1 %2 the field %3 lies above kills_one_in_ten; check the two."),
        {"kills_nine_in_ten", ""},
        {},
        row.source());
  if (fahrenheit)
    for (double* value : {&kill.oneInTen, &kill.nineInTen}) *value = celsius(*value);
  kill.source = row.text(sourceField);
  return kill;
}

StageHeat stageHeatFrom(RowReader& row) {
  StageHeat heat;
  heat.name = row.text({"name", "name = \"green tip\""});
  row.oneOf<bool>({"method", ""}, {{"waking sine 3 C", true}});
  heat.needed = row.number({"needed", "needed = 364"}, {1, 3000});
  heat.deviation = row.number({"deviation", "deviation = 23"}, {0, 1000});
  heat.published = row.text({"published", "published = \"sum, base, start, method\""});
  heat.source = row.text(sourceField);
  return heat;
}

template <class Row>
const Row* named(const std::vector<Row>& rows, std::string_view name) {
  const auto found = std::ranges::find(rows, name, &Row::name);
  return found == rows.end() ? nullptr : &*found;
}

}  // namespace

const Cultivar* TradeTables::cultivar(std::string_view name) const {
  return named(cultivars, name);
}

const Rootstock* TradeTables::rootstock(std::string_view name) const {
  return named(rootstocks, name);
}

const Station* TradeTables::station(std::string_view name) const {
  return named(stations, name);
}

const StageHeat* TradeTables::heatOf(std::string_view stage) const {
  return named(stageHeat, stage);
}

Checked<std::vector<Cultivar>> readCultivars(std::string_view toml,
                                             const std::string& file) {
  return readTable<Cultivar>(toml, file, cultivarKind, cultivarFrom);
}

Checked<std::vector<Rootstock>> readRootstocks(std::string_view toml,
                                               const std::string& file) {
  return readTable<Rootstock>(toml, file, rootstockKind, rootstockFrom);
}

Checked<std::vector<Station>> readStations(std::string_view toml,
                                           const std::string& file) {
  return readTable<Station>(toml, file, stationKind, stationFrom);
}

Checked<std::vector<FrostKill>> readFrostKills(std::string_view toml,
                                               const std::string& file) {
  return readTable<FrostKill>(toml, file, stageKind, frostKillFrom);
}

Checked<std::vector<StageHeat>> readStageHeat(std::string_view toml,
                                              const std::string& file) {
  return readTable<StageHeat>(toml, file, stageHeatKind, stageHeatFrom);
}

}  // namespace topwire
