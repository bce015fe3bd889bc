#pragma once

#include "tests/support/builders.h"

namespace topwire::testing {

/// Two blocks in third leaf and two crews, of seven workers in all, on ordinary days.
inline Orchard orchardOfTwoCrews() {
  Orchard orchard = orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
  const Block quarry = block(11, "Quarry", "1-8");
  orchard.blocks[quarry.id] = quarry;
  const Planting planted = planting(12, quarry, dayOf(2025, 4, 10));
  orchard.plantings[planted.id] = planted;
  const auto addCrew = [&](std::uint64_t id, const char* name, int workers) {
    Crew crew;
    crew.id = CrewId{0, id};
    crew.name = name;
    crew.workers = workers;
    crew.hoursPerDay = 8;
    orchard.crews[crew.id] = crew;
  };
  addCrew(8, "Kestrel", 3);
  addCrew(9, "Wren", 4);
  return orchard;
}

inline constexpr CrewId kestrel{0, 8};
inline constexpr CrewId wren{0, 9};

}  // namespace topwire::testing
