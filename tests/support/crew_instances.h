#pragma once

#include "core/crews/crew_problem.h"

#include <cstdint>

namespace topwire::testing {

/// The same numbers from a seed on any machine: SplitMix64 (Steele, Lea, Flood 2014).
class SeededNumbers {
public:
  explicit SeededNumbers(std::uint64_t seed) : state_{seed} {}

  std::uint64_t next();
  /// From `least` to `most`, inclusive.
  int between(int least, int most);
  bool chance(double share);
  double unit();
  /// Near the normal distribution: mean 0, variance 1, never beyond 6.
  double normal();

private:
  std::uint64_t state_;
};

struct CrewInstance {
  int blocks = 60;
  int days = 56;      ///< up to 200: around the season's peak
  double load = 1.0;  ///< work that cannot be late, of what the gangs can do, in the
                      ///< worst three weeks
  std::uint64_t seed = 1;
};

/// An orchard's work as it comes: twenty operations with windows hung on bloom, blocks of
/// about a hectare, gangs of three to five, three skills, days lost to rain.
CrewProblem orchardProblem(const CrewInstance& instance);

/// A few blocks with whatever the problem's words allow: needs, pins, closings, young
/// trees, paces, rows longer than a day.
CrewProblem oddProblem(std::uint64_t seed);

}  // namespace topwire::testing
