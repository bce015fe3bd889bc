#include "tests/core/deeds_support.h"

#include "tests/support/builders.h"

#include <gmock/gmock.h>

namespace topwire::testing {

namespace {

using ::testing::IsEmpty;

template <class Entry>
Entry named(const char* name) {
  Entry entry;
  entry.name = name;
  return entry;
}

}  // namespace

Orchard orchardOfTwo() {
  Orchard orchard;
  orchard.settings = northernSettings();
  const Block creek = block(1, "Creek 1", "1-28");
  const Block hill = block(2, "Hill", "1-5");
  orchard.blocks = {{creek.id, creek}, {hill.id, hill}};
  Planting gala = planting(10, creek, dayOf(2024, 4, 10));
  gala.rows = RowSet::range(1, 20);
  Planting pollinizer = planting(11, creek, dayOf(2024, 4, 10));
  pollinizer.kind = PlantingKind::pollinizer;
  pollinizer.rows = RowSet::range(21, 21);
  Planting replant = planting(12, creek, dayOf(2026, 4, 10));
  replant.kind = PlantingKind::replant;
  replant.rows = RowSet::range(3, 4);
  replant.trees = 7;
  for (const Planting& one : {gala, pollinizer, replant}) orchard.plantings[one.id] = one;
  return orchard;
}

const TradeTables& smallTables() {
  static const TradeTables made = [] {
    TradeTables tables;
    tables.cultivars = {named<Cultivar>("Gala"),
                        named<Cultivar>("Fuji"),
                        named<Cultivar>("Golden Delicious")};
    tables.rootstocks = {named<Rootstock>("M.9 T337"), named<Rootstock>("G.41")};
    return tables;
  }();
  return made;
}

Task leaderTie() {
  Task task;
  task.key = {{0, 10}, "leader-tie", {2027}, 1};
  task.opens = dayOf(2027, 4, 1);
  task.closes = dayOf(2027, 4, 20);
  task.rows = RowSet::range(1, 20);
  return task;
}

const Words tieTheLeader{"Tie the leader", "Atar el eje"};

Tick goodTick() {
  Tick tick;
  tick.id = {1, 1};
  tick.rows = RowSet::range(1, 4);
  tick.minutes = 90;
  tick.by = "Crew A";
  tick.day = dayOf(2027, 4, 6);
  return tick;
}

std::vector<std::string> said(const Checked<Change>& change) {
  std::vector<std::string> lines;
  if (change) return lines;
  for (const Problem& problem : change.error()) lines.push_back(inEnglish(problem));
  return lines;
}

std::string nameOf(const Checked<Change>& change) {
  return change ? inEnglish(change->name) : "refused: " + said(change).front();
}

Orchard after(Orchard orchard, const Checked<Change>& change) {
  EXPECT_THAT(said(change), IsEmpty());
  if (change) apply(orchard, *change);
  return orchard;
}

}  // namespace topwire::testing
