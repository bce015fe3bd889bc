#pragma once

#include "core/base/phrase.h"
#include "core/orchard/delay_weights.h"
#include "core/orchard/records.h"

#include <array>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <variant>
#include <vector>

namespace topwire {

/// First and last leaf, inclusive; "4+" has no last one in practice.
struct LeafRange {
  static constexpr int open = 99;
  int first;
  int last;

  bool contains(int leaf) const { return first <= leaf && leaf <= last; }

  friend bool operator==(const LeafRange&, const LeafRange&) = default;
};

struct OnStage {
  int bbch;
  friend bool operator==(const OnStage&, const OnStage&) = default;
};

struct OnPlanting {
  friend bool operator==(const OnPlanting&, const OnPlanting&) = default;
};

/// A day of the local season, written for the north; south it is six months later.
struct OnMonth {
  unsigned month;
  unsigned day;
  int seasonsLater = 0;  ///< -1 for the season before: November before the first leaf
  friend bool operator==(const OnMonth&, const OnMonth&) = default;
};

/// When the named operation is done on the same planting: its last tick, or its closing
/// while it is not finished.
struct OnCompletion {
  std::string operation;
  friend bool operator==(const OnCompletion&, const OnCompletion&) = default;
};

using AnchorPoint = std::variant<OnStage, OnPlanting, OnMonth, OnCompletion>;

/// A day a window hangs on: a point plus an offset. Months are added first, capped to the
/// month's end, then days.
struct Anchor {
  AnchorPoint point;
  int months = 0;
  int days = 0;

  friend bool operator==(const Anchor&, const Anchor&) = default;
};

/// `spray`: while a block is closed after a spray, as its label and local law say.
enum class Avoid { wet, frost, heat, wind, spray };

enum class Per { tree, post, rowEnd, metreOfRow, metreOfWire };

struct Material {
  std::string item;  ///< "soft tie"; the key materials are summed under
  Words name;
  double amount = 0;  ///< in the unit of the item in resources/tables/materials.toml
  Per per = Per::tree;
  friend bool operator==(const Material&, const Material&) = default;
};

struct CutOff {
  Anchor anchor;
  Words reason;
};

/// What the latest measurement must say. Work is asked for where nothing was measured: a
/// grower who measures nothing is told of it, not let down by it.
struct Condition {
  enum class Side { atLeast, below };
  Measure measure = Measure::trunkDiameter;
  Side side = Side::atLeast;
  std::int64_t value = 0;  ///< as Measurement keeps it
  bool topWire = false;    ///< instead of `value`, the height of the block's top wire

  friend bool operator==(const Condition&, const Condition&) = default;
};

/// Passes follow each other every so many days from the opening until the closing.
struct Repeat {
  std::array<int, 3> everyDays{};  ///< by Vigour
  /// Sooner, where two measurements of this season show the leader growing this much in
  /// fewer days.
  std::optional<Length> everyGrowth;
  std::optional<Condition> until;  ///< once measured so, no further pass is asked for
};

struct Operation {
  std::string id;
  Words name;
  Words shortName;  ///< for a narrow bar; the name where not given
  /// Empty for work that opens on the planting day and gives no leaves: it is done once
  /// per planting, in whichever season its days fall. All other work gives leaves.
  std::vector<LeafRange> leaves;
  std::set<Vigour> vigours;
  std::set<PlantingKind> kinds;
  Anchor opens;
  Anchor closes;
  std::optional<CutOff> cutOff;
  std::optional<Repeat> repeat;
  /// Operations whose rows must be done before these rows are, where the planting has
  /// them at all.
  std::vector<std::string> needs;
  std::vector<Condition> when;  ///< all of them
  DelayCost delayCost = DelayCost::medium;
  Words delayReason;
  /// From this leaf on. All zero for work that is not counted by the tree: an order, a
  /// soil sample, machine work on the bare site.
  std::map<int, int> secondsPerTree;
  std::vector<Words> how;  ///< at most three lines
  Words doneWhen;
  std::vector<Words> tools;
  std::vector<Material> materials;
  std::set<Avoid> avoid;
  std::string skill;  ///< wanted of who does it, in small letters; empty: anyone
  bool cuts = false;  ///< opens wounds in living wood
  Words caution;
  std::string drawing;  ///< name of its line drawing; the id where the file names none
  std::string source;
  int line = 0;  ///< where it stands in the file

  bool oncePerPlanting() const { return leaves.empty(); }

  /// The leaf does not matter to work done once per planting.
  bool appliesTo(int leaf, Vigour vigour, PlantingKind kind) const;
  /// The figure of the nearest leaf at or below; of the lowest one given before that.
  int secondsPerTreeAt(int leaf) const;
};

/// The operations for one training system, read from a file a grower can edit by hand.
struct Programme {
  std::string id;
  Words name;
  Words summary;
  std::vector<Operation> operations;

  const Operation* find(std::string_view wantedId) const;
};

}  // namespace topwire
