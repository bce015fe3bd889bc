#pragma once

#include "core/planning/planner.h"

#include <map>
#include <string>
#include <vector>

namespace topwire {

/// The shipped programmes with an orchard's own beside them. Each own one is read once
/// per change of its record, not at every planning, and shipped ones stay where they are
/// in memory.
class ProgrammesAtHand {
public:
  explicit ProgrammesAtHand(const Programmes& shipped)
      : shipped_(&shipped), all_(shipped) {}

  /// Takes up what the orchard's own programmes say now.
  void take(const Orchard& orchard);

  const Programmes& all() const { return all_; }

  const Programmes& shipped() const { return *shipped_; }

  /// Own ones that don't read, which are left out.
  const std::vector<Sentence>& notes() const { return notes_; }

private:
  void read(const OwnProgramme& own);
  void leaveOut(const std::string& id);

  const Programmes* shipped_;
  Programmes all_;
  std::map<std::string, OwnProgramme> taken_;
  std::vector<Sentence> notes_;
};

/// The same for once.
Programmes programmesOf(const Programmes& shipped, const Orchard& orchard);

/// The plantings that ask for the programme, by code.
std::vector<const Planting*> plantingsUsing(const Orchard& orchard,
                                            const std::string& programme);

}  // namespace topwire
