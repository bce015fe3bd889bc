#include "core/orchard/table_rows.h"

#include <algorithm>
#include <cmath>

namespace topwire {

namespace {

std::string placeOf(const std::string& file, const toml::source_region& source) {
  return file + ":" + std::to_string(source.begin.line);
}

}  // namespace

std::string TableRow::text(TableField field) {
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

bool TableRow::flag(TableField field) {
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

double TableRow::number(TableField field, TableBounds bounds) {
  const toml::node* node = find(field);
  return node == nullptr ? 0 : numberIn(*node, field, bounds);
}

std::array<double, 12> TableRow::twelve(TableField field, TableBounds bounds) {
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

std::vector<double> TableRow::numbers(TableField field, TableBounds bounds) {
  const toml::node* node = find(field);
  if (node == nullptr) return {};
  const toml::array* list = node->as_array();
  if (list == nullptr || list->empty()) {
    wrongType(field,
              *node,
              phrase("Tables",
                     "In %1 %2 the field %3 is not a list of numbers; write it like: "
                     "%4"));
    return {};
  }
  std::vector<double> values;
  for (const toml::node& element : *list)
    values.push_back(numberIn(element, field, bounds));
  return values;
}

void TableRow::report(Phrase phrase,
                      TableField field,
                      const std::string& value,
                      const toml::source_region& source) {
  problems_->push_back({Sentence{phrase, {kind_->word, label_, field.name, value}},
                        placeOf(*file_, source),
                        {}});
}

void TableRow::reportUnknown() {
  std::string known;
  for (const auto& name : asked_) known += (known.empty() ? "" : ", ") + name;
  for (const auto& [key, node] : *row_) {
    const std::string name{key.str()};
    if (std::ranges::find(asked_, name) != asked_.end()) continue;
    report(
        phrase("Tables", "In %1 %2 there is no field %3; take it out or use one of: %4."),
        {name.c_str(), ""},
        known,
        key.source());
  }
}

const toml::node* TableRow::find(TableField field) {
  asked_.emplace_back(field.name);
  const toml::node* node = row_->get(field.name);
  if (node == nullptr)
    report(phrase("Tables", "In %1 %2 the field %3 is missing; add a line like: %4"),
           field,
           field.example,
           row_->source());
  return node;
}

void TableRow::wrongType(TableField field, const toml::node& node, Phrase phrase) {
  report(phrase, field, field.example, node.source());
}

double TableRow::numberIn(const toml::node& node, TableField field, TableBounds bounds) {
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

std::optional<toml::table> parsedTable(std::string_view text,
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

const toml::array* rowsOf(const toml::table& root,
                          const TableKind& kind,
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

}  // namespace topwire
