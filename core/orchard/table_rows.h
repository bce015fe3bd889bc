#pragma once

#include "core/base/result.h"

#include <toml++/toml.h>

#include <array>
#include <limits>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace topwire {

/// What one kind of table is called: the key of its rows and the word for people.
struct TableKind {
  const char* key;
  Words word;
};

/// A field's name with a line that shows how to write it.
struct TableField {
  const char* name;
  const char* example;
};

struct TableBounds {
  double least = std::numeric_limits<double>::lowest();
  double most = std::numeric_limits<double>::max();
};

/// Reads one row's fields. What it cannot read it reports, and gives an empty value for,
/// so that all faults of a file are told at once.
class TableRow {
public:
  TableRow(const toml::table& row,
           int number,
           const TableKind& kind,
           const std::string& file,
           Problems& problems)
      : row_(&row), kind_(&kind), file_(&file), problems_(&problems) {
    const auto name = row["name"].value<std::string>();
    label_ = name ? '"' + *name + '"' : "number " + std::to_string(number);
  }

  std::string text(TableField field);

  bool flag(TableField field);

  double number(TableField field, TableBounds bounds);

  std::array<double, 12> twelve(TableField field, TableBounds bounds);

  /// As many as there are, one at least.
  std::vector<double> numbers(TableField field, TableBounds bounds);

  /// The value that `words` gives the text; the first one's where it is none of them.
  template <class T>
  T oneOf(TableField field, const std::vector<std::pair<std::string_view, T>>& words) {
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
              TableField field,
              const std::string& value,
              const toml::source_region& source);

  const toml::source_region& source() const { return row_->source(); }

  /// To be called last: whatever no other call asked for is unknown.
  void reportUnknown();

private:
  const toml::node* find(TableField field);

  void wrongType(TableField field, const toml::node& node, Phrase phrase);

  double numberIn(const toml::node& node, TableField field, TableBounds bounds);

  const toml::table* row_;
  const TableKind* kind_;
  const std::string* file_;
  Problems* problems_;
  std::string label_;
  std::vector<std::string> asked_;
};

/// Nothing, with the fault told, where the text is no TOML.
std::optional<toml::table> parsedTable(std::string_view text,
                                       const std::string& file,
                                       Problems& problems);

/// The rows [[kind]] of the file; anything beside them is a fault.
const toml::array* rowsOf(const toml::table& root,
                          const TableKind& kind,
                          const std::string& file,
                          Problems& problems);

/// Reads every row with `readRow` and reports names given twice, where rows have names.
template <class Row, class ReadRow>
Checked<std::vector<Row>> readTable(std::string_view text,
                                    const std::string& file,
                                    const TableKind& kind,
                                    ReadRow readRow) {
  Problems problems;
  std::vector<Row> rows;
  std::map<std::string, toml::source_region> firstNamed;
  const auto root = parsedTable(text, file, problems);
  const auto* found = root ? rowsOf(*root, kind, file, problems) : nullptr;
  for (std::size_t i = 0; found != nullptr && i < found->size(); ++i) {
    TableRow reader{
        *(*found)[i].as_table(), static_cast<int>(i) + 1, kind, file, problems};
    rows.push_back(readRow(reader));
    reader.reportUnknown();
    if constexpr (requires { rows.back().name; }) {
      const auto [first, isNew] = firstNamed.emplace(rows.back().name, reader.source());
      if (!isNew && !rows.back().name.empty())
        reader.report(phrase("Tables",
                             "In %1 %2 the field %3 repeats that of line %4; name it "
                             "otherwise or take one row out."),
                      {"name", ""},
                      std::to_string(first->second.begin.line),
                      reader.source());
    }
  }
  if (!problems.empty()) return tl::unexpected{std::move(problems)};
  return rows;
}

}  // namespace topwire
