#pragma once

#include "core/orchard/records.h"

#include <map>
#include <string_view>
#include <vector>

namespace topwire {

/// Everything one orchard file holds, in memory: plain values, copied freely. Changed
/// only by applying a Change (see core/edit).
struct Orchard {
  Settings settings;
  std::map<BlockId, Block> blocks;
  std::map<PlantingId, Planting> plantings;
  std::map<CrewId, Crew> crews;
  std::map<ObservationId, Observation> observations;
  std::map<PastStageId, PastStage> pastStages;
  std::map<MonthOfYear, WeatherMonth> weather;
  std::map<MeasurementId, Measurement> measurements;
  std::map<PlantingSeason, SeasonTarget> targets;
  std::map<Season, SeasonClose> closes;
  std::map<std::string, OwnProgramme> programmes;
  std::map<TickId, Tick> ticks;
  std::map<TaskKey, TaskMark> marks;
  std::map<Day, WorkDay> workDays;
  std::map<CrewDay, Turnout> turnouts;
  std::map<PinId, Pin> pins;
  std::map<ClosureId, BlockClosure> closures;
  std::map<PlannedPlace, PlannedJob> plannedJobs;
  std::map<TaskKey, StoredTask> tasks;  ///< derived; see StoredTask

  friend bool operator==(const Orchard&, const Orchard&) = default;
};

/// Blocks by name, numbers inside names compared as numbers ("Creek 2" before "Creek
/// 10").
std::vector<const Block*> blocksInOrder(const Orchard& orchard);
/// Crews by name, in the same way.
std::vector<const Crew*> crewsInOrder(const Orchard& orchard);
/// A block's plantings: main first, then pollinizers, then replants, each by first row.
std::vector<const Planting*> plantingsOf(const Orchard& orchard, BlockId block);
const Planting* plantingByCode(const Orchard& orchard, std::string_view code);
const Block* blockByName(const Orchard& orchard, std::string_view name);
const Block& blockOf(const Orchard& orchard, const Planting& planting);

/// The blocks these plantings stand in, in order; with the cultivars where only part of a
/// block is meant: "Creek 1 (Gala)".
std::vector<std::string> placeNames(const Orchard& orchard,
                                    const std::vector<PlantingId>& plantings);

/// Places for trees in one row of a planting; 0 where neither count nor lengths say. A
/// total that is no multiple of the rows is shared out evenly, as a fraction.
double placesPerRow(const Orchard& orchard, const Planting& planting);
/// Trees in one row of a planting, or in all of it: its places less those that replants
/// in its rows have filled, from the day they are written down, since the gaps are there
/// whether or not the replants stand in them yet. A planting and its replants together
/// are thus the places, and no tree is counted twice.
double treesPerRow(const Orchard& orchard, const Planting& planting);
int treesIn(const Orchard& orchard, const Planting& planting);

Length elevationOf(const Orchard& orchard, const Planting& planting);
int leafOf(const Orchard& orchard, const Planting& planting, Season season);
bool hasRecords(const Orchard& orchard, PlantingId planting);

/// Nothing where nothing is known of the day.
const WeatherDay* weatherOn(const Orchard& orchard, Day day);

/// A code for a new planting: block and cultivar in lower case with hyphens, numbered
/// where it is taken: "creek-1-gala-2".
std::string freshCode(const Orchard& orchard,
                      std::string_view blockName,
                      std::string_view cultivar);

}  // namespace topwire
