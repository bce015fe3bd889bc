#include "storage/schema/migrate.h"

#include "core/edit/workbench.h"
#include "storage/orchard_file.h"
#include "storage/sqlite/statement.h"
#include "tests/storage/file_support.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

#include <map>

namespace topwire {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

std::vector<std::string> stepsAnd(const std::string& further) {
  std::vector<std::string> steps = schemaSteps();
  steps.push_back(further);
  return steps;
}

class Migration : public ::testing::Test {
protected:
  void SetUp() override {
    SqliteOrchardFiles current;
    ASSERT_EQ(testing::outcome(current.create(path, testing::orchardOfEverything())),
              "done");
  }

  Result<OpenedOrchard> openWith(const std::vector<std::string>& steps, Access access) {
    return SqliteOrchardFiles{{.steps = &steps}}.open(path, access);
  }

  std::int64_t ask(const std::string& file, const std::string& sql) {
    return Connection{file, Connection::Mode::readUnchanging}.number(sql);
  }

  testing::TemporaryFolder folder;
  std::string path = folder.file("creek.topwire");
};

TEST(Schema, StandsInTheProgramByteForByte) {
  ASSERT_EQ(schemaSteps().size(), 4U);
  EXPECT_EQ(schemaSteps()[0], testing::sourceText("storage/schema/0001_first.sql"));
  EXPECT_EQ(schemaSteps()[1], testing::sourceText("storage/schema/0002_weather.sql"));
  EXPECT_EQ(schemaSteps()[2], testing::sourceText("storage/schema/0003_targets.sql"));
  EXPECT_EQ(schemaSteps()[3], testing::sourceText("storage/schema/0004_crews.sql"));
}

TEST_F(Migration, AFreshFileHasTheNewestVersionAndTheApplicationId) {
  EXPECT_EQ(ask(path, "PRAGMA user_version"),
            static_cast<std::int64_t>(schemaSteps().size()));
  EXPECT_EQ(ask(path, "PRAGMA application_id"), applicationId);
  // Where `file` and the like look for it: SQLite's file format, 1.3, offset 68.
  EXPECT_EQ(testing::bytesOf(path).substr(68, 4), "Twre");
}

TEST_F(Migration, SetsACopyAsideThenBringsTheFileUpToDateAndSaysSo) {
  const auto steps = stepsAnd("ALTER TABLE crew ADD COLUMN color TEXT;");
  const auto opened = openWith(steps, Access::write);
  ASSERT_TRUE(opened.has_value()) << testing::outcome(opened);
  EXPECT_EQ(opened->orchard, testing::orchardOfEverything());
  const std::string copy = folder.file("creek.before-v5.topwire");
  ASSERT_EQ(opened->notes.size(), 1U);
  EXPECT_EQ(inEnglish(opened->notes[0]),
            path + " came from an earlier version and was brought up to date. A copy as "
                   "it was is kept in "
                + copy + '.');
  EXPECT_EQ(ask(copy, "PRAGMA user_version"), 4);
  SqliteOrchardFiles current;
  const auto kept = current.open(copy, Access::write);
  ASSERT_TRUE(kept.has_value());
  EXPECT_EQ(kept->orchard, testing::orchardOfEverything());
}

TEST_F(Migration, RunsOnce) {
  const auto steps = stepsAnd("ALTER TABLE crew ADD COLUMN color TEXT;");
  ASSERT_TRUE(openWith(steps, Access::write).has_value());
  const auto again = openWith(steps, Access::write);
  ASSERT_TRUE(again.has_value()) << testing::outcome(again);
  EXPECT_THAT(again->notes, IsEmpty());
}

TEST_F(Migration, AStepThatFailsLeavesTheFileAsItWas) {
  for (const char* bad : {"CREATE TABLE further (a); SELECT nonsense FROM nowhere;",
                          "CREATE TABLE further (a); UPDATE planting SET block = "
                          "'00000000000000000000000000000009';"}) {
    const auto steps = stepsAnd(bad);
    EXPECT_FALSE(openWith(steps, Access::write).has_value());
    EXPECT_EQ(ask(path, "PRAGMA user_version"), 4);
    EXPECT_EQ(ask(path, "SELECT COUNT(*) FROM sqlite_schema WHERE name = 'further'"), 0);
  }
  SqliteOrchardFiles current;
  const auto opened = current.open(path, Access::write);
  ASSERT_TRUE(opened.has_value());
  EXPECT_EQ(opened->orchard, testing::orchardOfEverything());
}

TEST_F(Migration, AnEarlierCopyIsNeverReplaced) {
  testing::writeBytes(folder.file("creek.before-v5.topwire"), "mine");
  const auto steps = stepsAnd("ALTER TABLE crew ADD COLUMN color TEXT;");
  ASSERT_TRUE(openWith(steps, Access::write).has_value());
  EXPECT_EQ(testing::bytesOf(folder.file("creek.before-v5.topwire")), "mine");
  EXPECT_THAT(folder.names(), ::testing::Contains("creek.before-v5-2.topwire"));
}

TEST_F(Migration, AnOlderFileIsNotMigratedByLooking) {
  const auto steps = stepsAnd("ALTER TABLE crew ADD COLUMN color TEXT;");
  const std::string before = testing::bytesOf(path);
  EXPECT_THAT(testing::outcome(openWith(steps, Access::look)),
              HasSubstr("comes from an earlier version. Open it once for writing"));
  EXPECT_TRUE(testing::bytesOf(path) == before);
  EXPECT_THAT(folder.names(), ElementsAre("creek.topwire"));
}

TEST_F(Migration, ANewerFileIsRefusedAndLeftAsItIs) {
  const auto steps = stepsAnd("ALTER TABLE crew ADD COLUMN color TEXT;");
  ASSERT_TRUE(openWith(steps, Access::write).has_value());
  const std::string before = testing::bytesOf(path);
  SqliteOrchardFiles current;
  for (const Access access : {Access::write, Access::look})
    EXPECT_EQ(testing::outcome(current.open(path, access)),
              path
                  + " was written by a newer Topwire (file version 5; this one knows up "
                    "to 4). Install the newer one to open it.");
  EXPECT_TRUE(testing::bytesOf(path) == before);
}

/// "name, notes" for every table of the version the connection holds.
std::map<std::string, std::string> tablesOf(Connection& connection) {
  std::map<std::string, std::string> tables;
  Statement statement{connection,
                      "SELECT t.name, group_concat(c.name) FROM sqlite_schema AS t "
                      "JOIN pragma_table_info(t.name) AS c "
                      "WHERE t.type = 'table' GROUP BY t.name"};
  while (statement.step()) tables[statement.text(0)] = statement.text(1);
  return tables;
}

/// A file as the program wrote it when the schema had but `count` steps, with what that
/// could hold of the file `from`.
void writeEarlierFile(const std::string& path, const std::string& from, int count) {
  Connection connection{path, Connection::Mode::create};
  connection.execute("PRAGMA application_id = " + std::to_string(applicationId));
  applySteps(connection, {schemaSteps().begin(), schemaSteps().begin() + count});
  connection.execute("PRAGMA foreign_keys = OFF; ATTACH '" + from + "' AS newer");
  for (const auto& [table, columns] : tablesOf(connection))
    connection.execute("INSERT INTO main." + table + " (" + columns + ") SELECT "
                       + columns + " FROM newer." + table);
  connection.execute("DETACH newer");
}

/// What a file of the third version could hold, as one of today has it.
Orchard withoutCrewDays(Orchard orchard) {
  Settings settings = orchard.settings;
  const Settings fresh;
  settings.workdays = fresh.workdays;
  settings.startMinute = fresh.startMinute;
  settings.moveMinutes = fresh.moveMinutes;
  settings.moveMinutesPerKm = fresh.moveMinutesPerKm;
  settings.keepTogether = fresh.keepTogether;
  settings.gangAtMost = fresh.gangAtMost;
  orchard.settings = settings;
  orchard.workDays.clear();
  orchard.turnouts.clear();
  orchard.pins.clear();
  orchard.closures.clear();
  orchard.plannedJobs.clear();
  for (auto& [id, crew] : orchard.crews)
    crew = Crew{id, crew.name, crew.workers, crew.hoursPerDay};
  for (auto& [id, block] : orchard.blocks) {
    block.workersAtMost.reset();
    block.latitude.reset();
    block.longitude.reset();
  }
  return orchard;
}

/// What one of the second version could.
Orchard withoutTargets(Orchard orchard) {
  orchard.measurements.clear();
  orchard.targets.clear();
  orchard.closes.clear();
  orchard.programmes.clear();
  for (auto& [id, block] : orchard.blocks) {
    block.wires.clear();
    block.postSpacing.reset();
  }
  return orchard;
}

Orchard withoutWeather(Orchard orchard) {
  orchard.weather.clear();
  orchard.pastStages.clear();
  orchard.settings.firstLeafDelayDays = Settings{}.firstLeafDelayDays;
  for (auto& [id, block] : orchard.blocks)
    block.minimumCorrection = block.maximumCorrection = 0;
  return orchard;
}

class EarlierVersion : public Migration, public ::testing::WithParamInterface<int> {};

TEST_P(EarlierVersion, OpensWithEverythingInIt) {
  const std::string early = folder.file("early.topwire");
  writeEarlierFile(early, path, GetParam());
  Orchard expected = withoutCrewDays(testing::orchardOfEverything());
  if (GetParam() <= 2) expected = withoutTargets(expected);
  if (GetParam() == 1) expected = withoutWeather(expected);
  SqliteOrchardFiles current;
  for (const char* when : {"migrated", "opened again"}) {
    const auto opened = current.open(early, Access::write);
    ASSERT_TRUE(opened.has_value()) << testing::outcome(opened);
    EXPECT_EQ(opened->orchard, expected) << when;
  }
  EXPECT_THAT(folder.names(),
              ::testing::Contains("early.before-v" + std::to_string(schemaSteps().size())
                                  + ".topwire"));
}

INSTANTIATE_TEST_SUITE_P(All, EarlierVersion, ::testing::Values(1, 2, 3));

TEST_F(Migration, HistoryOfTheFirstVersionIsStillUndone) {
  const std::string early = folder.file("early.topwire");
  writeEarlierFile(early, path, 1);
  // As the first version wrote it.
  Connection{early, Connection::Mode::write}.execute(
      R"(INSERT INTO crew VALUES ('00000000000000000000000000000009', 'Late', 2, 8);
         INSERT INTO journal (kind, at, who, name, change) VALUES ('did', 1, 'Ana',
         'Crew Late added', '{"edits":[{"after":{"hoursPerDay":8.0,
         "id":"00000000000000000000000000000009","name":"Late","workers":2},
         "before":null,"record":"crew"}],"name":{"context":"Deed",
         "text":"Crew %1 added","values":["Late"]}}');)");
  SqliteOrchardFiles current;
  auto opened = current.open(early, Access::write);
  ASSERT_TRUE(opened.has_value()) << testing::outcome(opened);
  Workbench bench{
      opened->orchard, *opened->journal, [] { return 0; }, IdSource::countingFrom(9)};
  EXPECT_EQ(bench.orchard().crews.size(), 2U);
  ASSERT_TRUE(bench.undo().has_value());
  EXPECT_EQ(
      bench.orchard(),
      withoutWeather(withoutTargets(withoutCrewDays(testing::orchardOfEverything()))));
}

}  // namespace
}  // namespace topwire
