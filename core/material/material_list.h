#pragma once

#include "core/calendar/iso_week.h"
#include "core/planning/planner.h"
#include "core/planning/progress.h"

#include <string>
#include <vector>

namespace topwire {

/// What one task adds to a line.
struct MaterialUse {
  TaskKey task;
  Words title;
  double amount;  ///< for its rows still to do, in the line's unit

  friend bool operator==(const MaterialUse&, const MaterialUse&) = default;
};

/// One item with all the work of a span that asks for it.
struct MaterialLine {
  std::string item;
  Words name;
  MaterialUnit unit = MaterialUnit::piece;
  double needed = 0;  ///< in the rows; pieces as whole ones
  /// The share that does not go round again, with spares; pieces as whole ones.
  double toBuy = 0;
  double share = 1;
  double sparePercent = 0;
  Words pack;
  int packs = 0;  ///< that hold `toBuy`; none where the table does not know the item
  std::vector<MaterialUse> uses;

  friend bool operator==(const MaterialLine&, const MaterialLine&) = default;
};

/// Lines in the table's order, then what it does not know by name.
struct MaterialList {
  std::vector<MaterialLine> lines;
  /// What could not be counted, and why.
  std::vector<Sentence> notes;

  bool empty() const { return lines.empty(); }

  friend bool operator==(const MaterialList&, const MaterialList&) = default;
};

/// What the rows still to do of these tasks ask for; done, lapsed and set aside ones ask
/// for nothing.
MaterialList materialOf(const Orchard& orchard,
                        const Trade& trade,
                        const std::vector<const TaskView*>& views);

/// For the work due in a week or planned in a season. `plan` must reach over them.
MaterialList materialOfWeek(const Orchard& orchard,
                            const Trade& trade,
                            const Plan& plan,
                            IsoWeek week,
                            Day today);
MaterialList materialOfSeason(const Orchard& orchard,
                              const Trade& trade,
                              const Plan& plan,
                              Season season,
                              Day today);
/// For a new planting: all its work up to the end of the first leaf, whenever it falls,
/// and the trees themselves.
MaterialList materialOfPlanting(const Orchard& orchard,
                                const Trade& trade,
                                const Planting& planting,
                                Day today);

/// One kind of work that asks for a line's item, with where.
struct MaterialWork {
  Words title;
  std::vector<PlantingId> plantings;  ///< each once
  double amount = 0;

  friend bool operator==(const MaterialWork&, const MaterialWork&) = default;
};

/// The line's uses by work, those that ask for most first.
std::vector<MaterialWork> workOf(const MaterialLine& line);

/// "3,400", "66 L", "17 gal", "120 lb": the unit is the orchard's; all but pieces to the
/// decimal a scale or tape shows.
Sentence amountText(double amount, MaterialUnit unit, UnitSystem units);
/// "4 × box of 1,000".
Sentence packsText(const MaterialLine& line);

}  // namespace topwire
