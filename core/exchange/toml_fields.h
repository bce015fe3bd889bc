#pragma once

#include "core/base/result.h"
#include "core/orchard/row_set.h"
#include "core/units/length.h"

#include <toml++/toml.h>

#include <cstddef>
#include <functional>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace topwire {

/// Everything found wrong with one text, each placed at "file:line".
class FileFaults {
public:
  explicit FileFaults(std::string file) : file_(std::move(file)) {}

  bool any() const { return !found_.empty(); }

  void add(int line, Sentence sentence);
  /// In the order of their lines.
  Problems inOrder() const;

private:
  std::string file_;
  std::vector<std::pair<int, Sentence>> found_;
};

/// The table a text holds; nothing where it is not TOML, with the fault noted.
std::optional<toml::table> parseToml(std::string_view text, FileFaults& faults);

/// Reads one table of a file field by field. A field that is there but not as it should
/// be is noted as a fault and read as absent. The fields asked for are the ones known, so
/// that `refuseOthers`, called last, finds the misspelt ones.
class TableFields {
public:
  /// `title` is how faults call it: "block". The references must outlive this.
  TableFields(const toml::table& table, std::string title, FileFaults& faults)
      : table_(&table), title_(std::move(title)), faults_(&faults) {}

  std::optional<std::string> text(std::string_view key);
  /// Between `least` and `most`, both inclusive.
  std::optional<int> whole(std::string_view key, int least, int most);
  std::optional<double> number(std::string_view key);
  /// A TOML date, or text written as YYYY-MM-DD.
  std::optional<Day> day(std::string_view key);
  /// Text such as "11 ft", or a bare number in `units`.
  std::optional<Length> length(std::string_view key, UnitSystem units);
  /// The place of the text among `names`; a fault lists them.
  std::optional<std::size_t> choice(std::string_view key,
                                    const std::vector<std::string>& names);
  /// Text such as "1-12, 15", or one bare row number.
  std::optional<RowSet> rows(std::string_view key);
  std::vector<double> numbers(std::string_view key);
  /// Texts in square brackets.
  std::vector<std::string> texts(std::string_view key);
  /// The tables of [[key]]; none where it is absent.
  std::vector<const toml::table*> tables(std::string_view key);
  const toml::table* oneTable(std::string_view key);

  /// `value`, or a fault that shows how the field is written.
  template <class T>
  T required(std::string_view key, std::optional<T> value, std::string_view example) {
    if (!value && !has(key)) missing(key, example);
    return value.value_or(T{});
  }

  bool has(std::string_view key) const { return table_->contains(key); }

  /// True where a fault of this field, or its absence, was noted already.
  bool isFaulty(std::string_view key) const { return faulty_.contains(key); }

  bool hasFaults() const { return !faulty_.empty(); }

  /// From now on the field counts as faulty, because the fault was noted elsewhere.
  void mute(std::string_view key) { faulty_.emplace(key); }

  int line() const;
  /// The table's own line where the field is absent.
  int lineOf(std::string_view key) const;
  void fault(std::string_view key, Sentence sentence);
  /// A misspelt field counts as faulty under the name it was meant to have.
  void refuseOthers();

private:
  const toml::node* find(std::string_view key);
  void missing(std::string_view key, std::string_view example);
  void notRows(std::string_view key, const RowFault& rowFault);

  const toml::table* table_;
  std::string title_;
  FileFaults* faults_;
  std::set<std::string, std::less<>> asked_;
  std::set<std::string, std::less<>> faulty_;
};

}  // namespace topwire
