#pragma once

#include "core/base/result.h"
#include "core/edit/change.h"
#include "core/orchard/trade_tables.h"
#include "core/planning/task.h"

#include <optional>
#include <string>
#include <vector>

namespace topwire {

/// The short list of what a person can do to an orchard. Each checks its input against
/// the orchard and answers a change to perform, or every problem found, each with the
/// field it is about as its place. Nothing is changed here. Those of weather and of past
/// dates are in weather_deeds.h, those of measurements and targets in target_deeds.h,
/// those of crews and their plan in crew_deeds.h.
///
/// Fields of a block: name, rows, rowSpacing, rowLength, elevation, minimumCorrection,
/// maximumCorrection, workersAtMost, latitude, longitude. Of a planting: code, cultivar,
/// rootstock, planted, rows, treeSpacing, trees, vigour, programme. Of the settings,
/// beside their own names: normals, firstLeafDelay, start.

Checked<Change> changeSettings(const Orchard& orchard, const Settings& settings);

Checked<Change> addBlock(const Orchard& orchard, const Block& block);
Checked<Change> editBlock(const Orchard& orchard, const Block& block);
/// With its plantings and what is known of them; refused while any planting has ticks.
Checked<Change> deleteBlock(const Orchard& orchard, BlockId block);

Checked<Change> addPlanting(const Orchard& orchard,
                            const TradeTables& tables,
                            const Planting& planting);
Checked<Change> editPlanting(const Orchard& orchard,
                             const TradeTables& tables,
                             const Planting& planting);
Checked<Change> deletePlanting(const Orchard& orchard, PlantingId planting);

/// The tick's rows must lie in the task's. `title` is what the task is called.
Checked<Change> tickRows(const Orchard& orchard,
                         const Task& task,
                         const Words& title,
                         const Tick& tick);
Checked<Change> takeBackTick(const Orchard& orchard, TickId tick, TickId newId, Day day);
/// Every standing tick that touches these rows of the task is taken back; what such ticks
/// said of other rows is ticked again.
Checked<Change> untickRows(const Orchard& orchard,
                           const Task& task,
                           const Words& title,
                           const RowSet& rows,
                           IdSource& ids,
                           Day day);

/// Replaces an earlier observation of the same stage in the same season.
Checked<Change> observeStage(const Orchard& orchard, const Observation& observation);

Checked<Change> setTaskAside(const Orchard& orchard,
                             const Task& task,
                             const Words& title,
                             const std::string& reason);
Checked<Change> moveTask(const Orchard& orchard,
                         const Task& task,
                         const Words& title,
                         DaySpan window);
/// Takes back what a person said of the task; work added by hand goes.
Checked<Change> restoreTask(const Orchard& orchard, const Task& task, const Words& title);
Checked<Change> addWork(const Orchard& orchard,
                        PlantingId planting,
                        const std::string& title,
                        DaySpan window,
                        int secondsPerTree);

}  // namespace topwire
