#pragma once

#include "core/labour/labour_rate.h"
#include "core/orchard/orchard.h"
#include "core/programme/programme.h"

#include <map>
#include <string>
#include <tuple>
#include <vector>

namespace topwire {

/// The crew's own pace, from ticks that note their minutes, by operation and leaf. Leaves
/// for which the programme gives one figure are one kind of tree and learn from each
/// other, as do all plantings that follow the same programme.
///
/// The programme's figure counts as much as one worker's day of ticks, `hoursOfPrior`:
/// published figures differ by about half from place to place, one crew's days from each
/// other by nearly as much. So a day's ticks move it halfway and a week's nearly all the
/// way. Two things keep a slip of the finger from running away with the plan: no single
/// tick counts more than the programme does, and a pace is drawn in to between half and
/// twice the middle one, the programme's among them.
class LearnedRates {
public:
  static constexpr double hoursOfPrior = 8;

  LearnedRates(const Orchard& orchard,
               const std::map<std::string, Programme>& programmes);

  LabourRate of(const std::string& programme, const Operation& operation, int leaf) const;
  /// One crew's own pace, `crew` being the name its ticks are noted by, drawn in toward
  /// that of all of them in the same way. `programme` of the answer is the pace of all.
  LabourRate ofCrew(const std::string& programme,
                    const Operation& operation,
                    int leaf,
                    const std::string& crew) const;
  /// Names under which hours of it were noted, in their order.
  std::vector<std::string> crewsSeen(const std::string& programme,
                                     const Operation& operation,
                                     int leaf) const;

private:
  struct Seen {
    double trees;
    double minutes;
    std::string by;
  };

  const std::vector<Seen>* seenOf(const std::string& programme,
                                  const Operation& operation,
                                  int leaf) const;
  /// Moved from the figure of `rate` toward what was seen.
  static LabourRate learned(LabourRate rate, const std::vector<Seen>& seen);

  static void append(std::vector<Seen>& seen,
                     const std::vector<const Tick*>& ticks,
                     double treesInRow);

  /// Programme, operation, the first leaf its figure holds from.
  using Kind = std::tuple<std::string, std::string, int>;

  std::map<Kind, std::vector<Seen>> seen_;
};

}  // namespace topwire
