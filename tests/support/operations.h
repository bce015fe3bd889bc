#pragma once

#include "core/planning/planner.h"

#include <string>
#include <vector>

namespace topwire::testing {

inline Anchor atStage(int bbch, int days = 0) {
  return {OnStage{bbch}, 0, days};
}

inline Anchor atPlanting(int months = 0, int days = 0) {
  return {OnPlanting{}, months, days};
}

inline Anchor atMonth(unsigned month, unsigned day, int seasonsLater = 0) {
  return {OnMonth{month, day, seasonsLater}, 0, 0};
}

inline Anchor afterJob(const std::string& id, int days = 0) {
  return {OnCompletion{id}, 0, days};
}

/// An operation for every vigour and kind of planting, at 36 seconds a tree.
inline Operation operation(const std::string& id,
                           Anchor opens,
                           Anchor closes,
                           std::vector<LeafRange> leaves = {{1, LeafRange::open}}) {
  Operation made;
  made.id = id;
  made.name = {"Do " + id, "Hacer " + id};
  made.leaves = std::move(leaves);
  made.vigours = {Vigour::weak, Vigour::moderate, Vigour::strong};
  made.kinds = {PlantingKind::main, PlantingKind::pollinizer, PlantingKind::replant};
  made.opens = std::move(opens);
  made.closes = std::move(closes);
  made.secondsPerTree = {{1, 36}};
  made.source = "made for a test";
  return made;
}

inline Programmes programmesOf(std::vector<Operation> operations) {
  Programme programme;
  programme.id = "tall-spindle-apple";
  programme.operations = std::move(operations);
  return {{programme.id, programme}};
}

}  // namespace topwire::testing
