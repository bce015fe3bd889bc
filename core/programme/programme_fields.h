#pragma once

#include "core/programme/programme_faults.h"
#include "core/units/length.h"

#include <toml++/toml.h>

#include <array>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace topwire {

/// One table of a programme file, read field by field. A field that is there but not as
/// it should be is noted as a fault and read as absent. The fields asked for are the ones
/// known: `refuseOthers`, called last, notes the rest.
class ProgrammeFields {
public:
  /// `owner` is how faults call what the table describes: "operation leader-tie"; `path`
  /// leads from there to this table: "opens". `table` and `faults` must outlive this.
  ProgrammeFields(const toml::table& table,
                  Words owner,
                  std::string path,
                  ProgrammeFaults& faults)
      : table_(&table)
      , owner_(std::move(owner))
      , path_(std::move(path))
      , faults_(&faults) {}

  bool has(std::string_view key) const { return table_->contains(key); }

  /// Blank text counts as absent.
  std::optional<std::string> text(std::string_view key);
  /// Between `least` and `most`, both inclusive.
  std::optional<int> whole(std::string_view key, int least, int most);
  std::optional<double> positive(std::string_view key);
  /// Above zero, as text with its unit: "15 in".
  std::optional<Length> length(std::string_view key);
  std::optional<bool> flag(std::string_view key);
  /// One text or a list of them.
  std::vector<std::string> texts(std::string_view key);
  /// The same words in both languages: key.en and key.es.
  std::optional<Words> words(std::string_view key);
  /// Words whose languages stand in this table beside other fields; empty where neither
  /// does.
  Words ownWords();
  /// As many lines in one language as in the other.
  std::vector<Words> wordLists(std::string_view key);
  std::optional<ProgrammeFields> table(std::string_view key);
  /// The tables of a list; none where it is absent.
  std::vector<ProgrammeFields> tables(std::string_view key);
  /// Any node, for a field that may be written in several ways.
  const toml::node* node(std::string_view key);
  std::vector<std::string> keys() const;

  /// Notes that the field has to be there, with a line to copy.
  void missing(std::string_view key, std::string_view example);
  /// `phrase` takes the owner as %1, the field's path as %2, then `more`.
  void fault(std::string_view key, Phrase phrase, std::vector<Value> more = {});
  /// "..., which is not one of ...; did you mean ...?"
  void notAmong(std::string_view key,
                const std::string& typed,
                const std::vector<std::string>& known);
  void refuseOthers();

  /// Where the table stands, and where a field does; the table's own line where absent.
  int line() const;
  int lineOf(std::string_view key) const;
  std::string pathTo(std::string_view key) const;

  const std::string& path() const { return path_; }

  const Words& owner() const { return owner_; }

  ProgrammeFaults& faults() { return *faults_; }

private:
  std::string spoken(std::string_view language);

  const toml::table* table_;
  Words owner_;
  std::string path_;
  ProgrammeFaults* faults_;
  int outerLine_ = 1;
  std::set<std::string, std::less<>> asked_;
};

}  // namespace topwire
