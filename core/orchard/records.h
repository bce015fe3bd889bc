#pragma once

#include "core/base/phrase.h"
#include "core/calendar/day.h"
#include "core/calendar/season.h"
#include "core/orchard/crew_records.h"
#include "core/orchard/record_ids.h"
#include "core/orchard/row_set.h"
#include "core/orchard/task_records.h"
#include "core/orchard/weather_records.h"
#include "core/units/length.h"

#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace topwire {

enum class Vigour { weak, moderate, strong };

/// Twelve monthly means of daily minimum and maximum, January first, in degrees Celsius,
/// as measured at the station (no correction for the orchard's elevation).
struct MonthlyNormals {
  std::array<double, 12> minimum{};
  std::array<double, 12> maximum{};

  friend bool operator==(const MonthlyNormals&, const MonthlyNormals&) = default;
};

/// What holds for the whole orchard. The station's normals are a copy, so that a plan
/// does not move when a table shipped with the program is corrected.
struct Settings {
  std::string name;
  double latitude = 0;  ///< degrees, negative south of the equator
  Length elevation;
  UnitSystem units = UnitSystem::metric;
  std::string station;  ///< name of the station the normals were measured at
  Length stationElevation;
  MonthlyNormals normals;
  /// Nothing that closes before this day is planned: the records begin here.
  Day recordsFrom{};
  /// How much later a planting in its first leaf blooms than established trees: one to
  /// two weeks, from memory.
  int firstLeafDelayDays = 10;
  /// Monday first; as a rule Monday to Saturday (common practice).
  std::array<bool, 7> workdays{true, true, true, true, true, true, false};
  int startMinute = 390;     ///< of the working day, from midnight: 06:30
  int moveMinutes = 20;      ///< to go to another block and set up there
  int moveMinutesPerKm = 0;  ///< besides, where both blocks have coordinates
  int keepTogether = 50;     ///< percent: how strongly crews stay on what they began
  int gangAtMost = 8;        ///< workers; larger crews are split for planning

  Hemisphere hemisphere() const { return hemisphereAt(latitude); }

  friend bool operator==(const Settings&, const Settings&) = default;
};

struct Block {
  BlockId id;
  std::string name;
  RowSet rows;
  Length rowSpacing;
  std::optional<Length> rowLength;  ///< of one row, for counting trees by spacing
  std::optional<Length> elevation;  ///< the orchard's where absent
  /// Degrees C added to the station's minimum and maximum beside the correction for
  /// elevation: a frost hollow's nights are colder than height alone makes them.
  double minimumCorrection = 0;
  double maximumCorrection = 0;
  std::vector<Length> wires;  ///< heights above the ground, lowest first; empty: not said
  std::optional<Length> postSpacing;  ///< along the row
  std::optional<int> workersAtMost;   ///< at one time; one a row where absent
  /// Degrees, for distances between blocks; both or neither.
  std::optional<double> latitude;
  std::optional<double> longitude;
  std::string notes;

  friend bool operator==(const Block&, const Block&) = default;
};

/// `replant`: single trees set into gaps of another planting's rows, so its rows lie
/// within that planting's. The others have their rows to themselves.
enum class PlantingKind { main, pollinizer, replant };

struct Planting {
  PlantingId id;
  BlockId block;
  std::string code;      ///< short, unique, typed on the command line: creek-1-gala
  std::string cultivar;  ///< a name in the cultivar table
  std::string rootstock;
  PlantingKind kind = PlantingKind::main;
  Day planted{};  ///< the day planned for, while it lies ahead
  RowSet rows;
  Length treeSpacing;
  std::optional<int> treesPerRow;  ///< else row length over tree spacing
  std::optional<int> trees;        ///< of the whole planting; goes before treesPerRow
  std::optional<Vigour> vigour;    ///< the grower's word; else derived
  std::string vigourReason;        ///< why the grower overrode it
  std::string programme;           ///< id of its programme

  friend bool operator==(const Planting&, const Planting&) = default;
};

/// "We saw it on this day": a stage reached in one planting.
struct Observation {
  ObservationId id;
  PlantingId planting;
  int bbch = 0;
  Day day{};
  std::string by;

  friend bool operator==(const Observation&, const Observation&) = default;
};

/// A date from the grower's own book: when a cultivar reached a stage here in an earlier
/// season, in whichever planting stood then.
struct PastStage {
  PastStageId id;
  std::string cultivar;
  int bbch = 0;
  Day day{};

  friend bool operator==(const PastStage&, const PastStage&) = default;
};

/// What is measured on sample trees. Lengths are kept in micrometres, fruit as a count,
/// space filled in percent of the room to the next tree.
enum class Measure {
  trunkDiameter,
  trunkGirth,
  leaderHeight,  ///< of its tip above the ground
  leaderGrowth,  ///< this season's, so far
  shootGrowth,   ///< this season's, of terminal shoots that bear no fruit
  fruitPerTree,
  spaceFilled,
  missingTrees  ///< in the whole planting: a single value
};

/// One measure taken on some trees of a planting on one day.
struct Measurement {
  MeasurementId id;
  PlantingId planting;
  Measure measure = Measure::trunkDiameter;
  Day day{};
  std::vector<std::int64_t> values;  ///< one a tree, in the order they were taken
  std::string by;
  std::string note;  ///< where on the tree, which rows

  friend bool operator==(const Measurement&, const Measurement&) = default;
};

/// What names a planting's season.
struct PlantingSeason {
  PlantingId planting;
  Season season{};

  friend auto operator<=>(const PlantingSeason&, const PlantingSeason&) = default;
};

/// What the grower settled on for a planting's coming season.
struct SeasonTarget {
  PlantingSeason of;
  /// The class from this season on, until a later target says otherwise.
  std::optional<Vigour> vigour;
  std::string vigourReason;
  std::optional<int> fruitFrom;  ///< to keep per tree, at least
  std::optional<int> fruitTo;    ///< at most
  std::string note;

  friend bool operator==(const SeasonTarget&, const SeasonTarget&) = default;
};

/// A season that was closed: looked back on, with the next one settled.
struct SeasonClose {
  Season season{};
  Day day{};
  std::string by;

  friend bool operator==(const SeasonClose&, const SeasonClose&) = default;
};

/// A programme of this orchard's own, as its file's text; its id is no shipped one's.
struct OwnProgramme {
  std::string id;
  std::string text;

  friend bool operator==(const OwnProgramme&, const OwnProgramme&) = default;
};

}  // namespace topwire
