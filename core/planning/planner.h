#pragma once

#include "core/orchard/trade_tables.h"
#include "core/phenology/outlook.h"
#include "core/planning/task.h"

#include <map>

namespace topwire {

/// The programmes at hand, by id.
using Programmes = std::map<std::string, Programme>;

/// All that planning reads beside the orchard. The references must outlive the call.
struct Trade {
  const TradeTables& tables;
  const Programmes& programmes;
  const StageForecaster& forecaster;
};

/// First and last season, inclusive.
struct SeasonSpan {
  Season first;
  Season last;
};

/// The seasons kept planned on a given day: the current one, the next, and the last one,
/// whose work may still be late.
SeasonSpan plannedSeasons(const Orchard& orchard, Day today);
/// Every season that has a window in these days.
SeasonSpan seasonsTouching(const Orchard& orchard, DaySpan days);

/// Operations x plantings x stages -> tasks. Pure: the same input gives the same bytes.
/// A person's marks are respected; work added by hand and stored tasks that kept their
/// ticks are included. Work whose conditions the measurements deny is left out. Work that
/// needs other work keeps its window, but opens no earlier than what it waits for.
Plan planTasks(const Orchard& orchard, const Trade& trade, SeasonSpan seasons, Day today);
/// With a forecast over this orchard that serves other questions, too.
Plan planTasks(const Orchard& orchard,
               const Trade& trade,
               StageForecast& forecast,
               SeasonSpan seasons);

/// The operation behind a task; nothing for work added by hand, or one its programme no
/// longer holds.
const Operation* operationOf(const Orchard& orchard,
                             const Programmes& programmes,
                             const TaskKey& key);

}  // namespace topwire
