#pragma once

#include "core/orchard/orchard.h"
#include "core/planning/progress.h"

#include <optional>
#include <vector>

namespace topwire {

/// One row of a block as its picture shows it.
struct RowLane {
  int row = 0;
  std::optional<PlantingKind> kind;  ///< main or pollinizer; nothing: no planting has it
  int replants = 0;                  ///< trees set into this row's gaps
  double trees = 0;
  bool inTask = false;
  int percent = 0;  ///< of the task

  friend bool operator==(const RowLane&, const RowLane&) = default;
};

/// The block's rows in field order; `task` may be null, then no row is in it.
std::vector<RowLane> rowLanes(const Orchard& orchard,
                              BlockId block,
                              const TaskView* task);

}  // namespace topwire
