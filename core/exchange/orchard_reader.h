#pragma once

#include "core/base/result.h"
#include "core/edit/change.h"
#include "core/exchange/crew_reader.h"
#include "core/orchard/trade_tables.h"
#include "core/planning/planner.h"

#include <string>
#include <string_view>
#include <vector>

namespace topwire {

/// An orchard described in TOML: [orchard], [[block]] with its [[block.planting]],
/// [[crew]], [[work-day]], [[turnout]], [[closure]], [[seen]], [[measurement]], and
/// [[tick]] and [[pin]]. The blocks are checked as if
/// entered by hand; every fault is told with its line.
struct DescribedOrchard {
  Orchard orchard;

  /// Ticks and pins name tasks that only a plan can date; they are performed after
  /// planning, the pins last.
  struct WantedTick {
    std::string task;  ///< "creek-1-gala:rub-rivals:2027:1"
    std::string rows;  ///< all of the task's where empty
    int percent = 100;
    int minutes = 0;
    std::string by;
    Day day{};
    int line = 0;  ///< where it stands in the text
  };

  std::vector<WantedTick> ticks;
  std::vector<WantedPin> pins;
};

/// `file` names the text in the problems.
Checked<DescribedOrchard> readOrchard(std::string_view toml,
                                      const std::string& file,
                                      const TradeTables& tables,
                                      const Programmes& programmes,
                                      IdSource& ids);

}  // namespace topwire
