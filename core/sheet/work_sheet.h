#pragma once

#include "core/calendar/iso_week.h"
#include "core/planning/day_cautions.h"
#include "core/planning/planner.h"
#include "core/planning/progress.h"

#include <string>
#include <vector>

namespace topwire {

enum class RowCell { toDo, partly, done };

struct SheetRow {
  int number;
  RowCell cell;
  friend bool operator==(const SheetRow&, const SheetRow&) = default;
};

struct SheetMaterial {
  Words name;
  double count;  ///< for the rows left, in `unit`; pieces rounded up
  MaterialUnit unit = MaterialUnit::piece;
  UnitSystem units = UnitSystem::metric;  ///< those the orchard reads amounts in
  friend bool operator==(const SheetMaterial&, const SheetMaterial&) = default;
};

/// One job in one planting for the week.
struct SheetJob {
  int number;  ///< counted through the sheet
  TaskKey task;
  Words title;
  std::string operation;
  /// An earlier job on the sheet of the same operation and the same words: "As job 2".
  std::optional<int> sameAs;
  std::string cultivar;
  int leaf;
  Vigour vigour;
  PlantingKind kind;
  TaskState state;
  Day opens;
  Day closes;
  std::optional<Day> cutOff;
  Words cutOffReason;
  std::vector<Words> how;
  Words doneWhen;
  std::vector<Words> tools;
  std::vector<SheetMaterial> materials;
  std::set<Avoid> avoid;
  Words caution;
  std::string drawing;
  std::vector<SheetRow> rows;
  double treesLeft;
  double hoursLeft;
};

struct SheetBlock {
  std::string name;
  std::vector<SheetJob> jobs;  ///< in the order of work
};

/// A day's caution with the jobs that had better wait for it.
struct SheetCaution {
  Day day{};
  Sentence sentence;
  RowSet jobs;  ///< their numbers; none for heat that is only told
  friend bool operator==(const SheetCaution&, const SheetCaution&) = default;
};

/// The week's work by block, as data; app/paper decides where it stands on the page.
struct WorkSheet {
  std::string orchard;
  IsoWeek week;
  DaySpan days;
  Day madeOn;
  std::vector<SheetBlock> blocks;
  double hoursLeft;
  /// From the weather known of its days to come, by day; the weightiest first.
  std::vector<SheetCaution> cautions;
};

/// Jobs that are open at some time in the week and not finished, with those done this
/// week kept for the record. Blocks stand in the order of their most urgent job; jobs
/// inside a block after the ones they wait for, then by closing.
WorkSheet workSheet(const Orchard& orchard,
                    const Trade& trade,
                    const Plan& plan,
                    IsoWeek week,
                    Day today);

/// The general caution a sheet carries; local rules and labels come first.
std::vector<Sentence> sheetCautions(const WorkSheet& sheet);

}  // namespace topwire
