#pragma once

#include "core/base/result.h"
#include "core/edit/change.h"
#include "core/phenology/stage.h"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace topwire {

/// Gathers what is wrong with a deed's input, each with its field, and ends in a change
/// or in all of it.
class Faults {
public:
  void add(std::string place, Phrase phrase, std::vector<Value> values = {}) {
    problems_.push_back({Sentence{phrase, std::move(values)}, std::move(place), {}});
  }

  void add(Problem problem) { problems_.push_back(std::move(problem)); }

  bool any() const { return !problems_.empty(); }

  Checked<Change> orElse(Change change) &&;

  Problems take() && { return std::move(problems_); }

  Checked<Change> asRefusal() && { return tl::unexpected{std::move(problems_)}; }

private:
  Problems problems_;
};

/// A refusal for one reason alone.
Checked<Change> refusal(std::string place, Phrase phrase, std::vector<Value> values = {});

/// Without blanks at either end.
std::string withoutBlanks(std::string_view text);
/// For comparing names: lower case for A to Z and the accented letters of Western
/// European languages.
std::string folded(std::string_view text);

/// Text must be UTF-8 without control characters, and no longer than a field shows.
void checkText(Faults& faults, const std::string& place, std::string_view text);
/// As above, and not empty.
void checkName(Faults& faults, const std::string& place, std::string_view text);
/// Notes may run over several lines.
void checkNotes(Faults& faults, const std::string& place, std::string_view text);

/// From the shore of the Dead Sea to above the highest farmed land.
void checkElevation(Faults& faults, const std::string& place, Length elevation);

/// A day in the years Topwire plans for.
void checkLikelyDay(Faults& faults, const std::string& place, Day day);

/// Whether a stage may plausibly be seen on that day; noted at "day".
void checkSeasonOf(Faults& faults, const Orchard& orchard, const Stage& stage, Day day);
/// For a code that is none of the stages dated here.
void addUnknownStage(Faults& faults, const std::string& place, int bbch);

/// Finds with `find(id)`; nothing where the record is gone.
template <class Map>
const typename Map::mapped_type* lookUp(const Map& map,
                                        const typename Map::key_type& id) {
  const auto found = map.find(id);
  return found == map.end() ? nullptr : &found->second;
}

/// "Creek 1: Gala"; what a person calls a planting.
std::string calledName(const Orchard& orchard, const Planting& planting);
bool hasTicks(const Orchard& orchard, PlantingId planting);
/// Rows on which standing ticks of this planting lie.
RowSet tickedRows(const Orchard& orchard, PlantingId planting);
/// "Row 29 is", "Rows 29, 31 are" not in `where`, which has `rows`.
void checkRowsWithin(
    Faults& faults, const RowSet& rows, const RowSet& allowed, Phrase one, Phrase many);

}  // namespace topwire
