#include "core/edit/workbench.h"

#include "core/edit/deeds.h"
#include "core/planning/progress.h"
#include "tests/support/builders.h"
#include "tests/support/memory_journal.h"

#include <gtest/gtest.h>

namespace topwire {
namespace {

Orchard startingOrchard() {
  return testing::orchardOfOne(testing::northernSettings(), dayOf(2025, 4, 1));
}

Change adding(std::uint64_t id, const std::string& name) {
  return *addBlock(startingOrchard(), testing::block(id, name, "1-5"));
}

Task leaderTie() {
  Task task;
  task.key = {{0, 2}, "leader-tie", {2027}, 1};
  task.opens = dayOf(2027, 4, 1);
  task.closes = dayOf(2027, 4, 20);
  task.rows = RowSet::range(1, 10);
  return task;
}

Tick tickOf(std::uint64_t id, int first, int last) {
  Tick tick;
  tick.id = {1, id};
  tick.rows = RowSet::range(first, last);
  tick.by = "Crew A";
  tick.day = dayOf(2027, 4, 6);
  return tick;
}

class WorkbenchTest : public ::testing::Test {
protected:
  Workbench benchOn(const Orchard& orchard) {
    return {orchard, journal, [this] { return now++; }, IdSource::countingFrom(1000)};
  }

  testing::MemoryJournal journal;
  std::int64_t now = 1'800'000'000;
  Workbench bench = benchOn(startingOrchard());
};

TEST_F(WorkbenchTest, WritesThenAppliesThenTells) {
  std::vector<Sentence> told;
  std::size_t blocksWhenTold = 0;
  std::size_t writtenWhenTold = 0;
  const auto listening = bench.onChange([&](const Change& change) {
    told.push_back(change.name);
    blocksWhenTold = bench.orchard().blocks.size();
    writtenWhenTold = journal.entries.size();
  });
  bench.setUser("Ana");
  ASSERT_TRUE(bench.perform(adding(7, "Hill")).has_value());
  ASSERT_EQ(told.size(), 1U);
  EXPECT_EQ(inEnglish(told[0]), "Block Hill added");
  EXPECT_EQ(blocksWhenTold, 2U);
  EXPECT_EQ(writtenWhenTold, 1U);
  EXPECT_EQ(journal.entries[0].by, "Ana");
  EXPECT_EQ(journal.entries[0].at, 1'800'000'000);
  EXPECT_EQ(journal.entries[0].kind, EntryKind::did);
}

TEST_F(WorkbenchTest, ARefusedWriteTouchesNothing) {
  int told = 0;
  const auto listening = bench.onChange([&](const Change&) { ++told; });
  journal.refuses = true;
  EXPECT_FALSE(bench.perform(adding(7, "Hill")).has_value());
  EXPECT_EQ(bench.orchard(), startingOrchard());
  EXPECT_EQ(bench.undoName(), nullptr);
  EXPECT_EQ(told, 0);

  journal.refuses = false;
  ASSERT_TRUE(bench.perform(adding(7, "Hill")).has_value());
  journal.refuses = true;
  EXPECT_FALSE(bench.undo().has_value());
  EXPECT_EQ(bench.orchard().blocks.size(), 2U);
  ASSERT_NE(bench.undoName(), nullptr);
  EXPECT_EQ(bench.redoName(), nullptr);
}

TEST_F(WorkbenchTest, AnEditThatChangesNothingIsNoStep) {
  const Block same = bench.orchard().blocks.begin()->second;
  ASSERT_TRUE(bench.perform(*editBlock(bench.orchard(), same)).has_value());
  ASSERT_TRUE(bench.perform(Change{}).has_value());
  EXPECT_TRUE(journal.entries.empty());
  EXPECT_EQ(bench.undoName(), nullptr);
}

TEST_F(WorkbenchTest, AChangeMadeFromAnotherStateIsRefusedUnwritten) {
  const Change stale = adding(7, "Hill");
  ASSERT_TRUE(bench.perform(stale).has_value());
  EXPECT_FALSE(bench.perform(stale).has_value());
  EXPECT_EQ(journal.entries.size(), 1U);
}

TEST_F(WorkbenchTest, UndoAndRedoWalkTheSameSteps) {
  ASSERT_TRUE(bench.perform(adding(7, "Hill")).has_value());
  ASSERT_TRUE(bench.perform(adding(8, "Dell")).has_value());
  const Orchard full = bench.orchard();
  EXPECT_EQ(inEnglish(*bench.undoName()), "Block Dell added");
  ASSERT_TRUE(bench.undo().has_value());
  ASSERT_TRUE(bench.undo().has_value());
  EXPECT_EQ(bench.orchard(), startingOrchard());
  EXPECT_FALSE(bench.undo().has_value());
  EXPECT_EQ(inEnglish(*bench.redoName()), "Block Hill added");
  ASSERT_TRUE(bench.redo().has_value());
  ASSERT_TRUE(bench.redo().has_value());
  EXPECT_EQ(bench.orchard(), full);
  EXPECT_FALSE(bench.redo().has_value());
}

TEST_F(WorkbenchTest, ANewChangeEndsRedo) {
  ASSERT_TRUE(bench.perform(adding(7, "Hill")).has_value());
  ASSERT_TRUE(bench.undo().has_value());
  ASSERT_TRUE(bench.perform(adding(8, "Dell")).has_value());
  EXPECT_EQ(bench.redoName(), nullptr);
}

TEST_F(WorkbenchTest, UndoneTicksStayOnRecordAndStandAgainAfterRedo) {
  const Change change = *tickRows(bench.orchard(), leaderTie(), {}, tickOf(1, 1, 4));
  ASSERT_TRUE(bench.perform(change).has_value());
  const auto done = [&] {
    return progressOf(bench.orchard())[leaderTie().key].rowsDone();
  };
  EXPECT_EQ(done(), 4);
  ASSERT_TRUE(bench.undo().has_value());
  EXPECT_EQ(done(), 0);
  ASSERT_TRUE(bench.redo().has_value());
  EXPECT_EQ(done(), 4);
  ASSERT_TRUE(bench.undo().has_value());
  EXPECT_EQ(done(), 0);
  EXPECT_EQ(bench.orchard().ticks.size(), 4U);
}

TEST_F(WorkbenchTest, UndoOfAPlantingThatHasTicksOnRecordIsRefusedWithASentence) {
  Workbench fresh = benchOn([] {
    Orchard orchard = startingOrchard();
    orchard.plantings.clear();
    return orchard;
  }());
  const Planting gala = startingOrchard().plantings.begin()->second;
  ASSERT_TRUE(
      fresh.perform({Sentence{}, {Edit<Planting>{std::nullopt, gala}}}).has_value());
  ASSERT_TRUE(fresh.perform(*tickRows(fresh.orchard(), leaderTie(), {}, tickOf(1, 1, 4)))
                  .has_value());
  ASSERT_TRUE(fresh.undo().has_value());
  const auto refused = fresh.undo();
  ASSERT_FALSE(refused.has_value());
  EXPECT_EQ(inEnglish(refused.error().sentence),
            "Planting p2 has ticks on record, so it can't be taken out. Set its open "
            "tasks aside instead.");
  EXPECT_TRUE(fresh.redo().has_value());
}

TEST_F(WorkbenchTest, HistorySurvivesARestart) {
  for (const auto& [id, name] : std::map<std::uint64_t, std::string>{
           {7, "Hill"}, {8, "Dell"}, {9, "Moor"}, {10, "Fen"}})
    ASSERT_TRUE(bench.perform(adding(id, name)).has_value());
  ASSERT_TRUE(bench.undo().has_value());
  ASSERT_TRUE(bench.undo().has_value());
  ASSERT_TRUE(bench.redo().has_value());

  Workbench again = benchOn(bench.orchard());
  EXPECT_EQ(inEnglish(*again.undoName()), "Block Moor added");
  EXPECT_EQ(inEnglish(*again.redoName()), "Block Fen added");
  ASSERT_TRUE(again.redo().has_value());
  EXPECT_EQ(again.redoName(), nullptr);
  for (int step = 0; step < 4; ++step) ASSERT_TRUE(again.undo().has_value());
  EXPECT_EQ(again.orchard(), startingOrchard());
  EXPECT_EQ(again.undoName(), nullptr);
}

TEST_F(WorkbenchTest, ReplanningIsWrittenAndToldButIsNoStep) {
  int told = 0;
  const auto listening = bench.onReplan([&] { ++told; });
  const TaskKey key = leaderTie().key;
  const std::map<TaskKey, StoredTask> tasks{
      {key, {key, dayOf(2027, 4, 1), dayOf(2027, 4, 9), std::nullopt, false}}};
  ASSERT_TRUE(bench.replan(tasks).has_value());
  EXPECT_EQ(journal.tasks, tasks);
  EXPECT_EQ(bench.orchard().tasks, tasks);
  EXPECT_EQ(told, 1);
  EXPECT_EQ(bench.undoName(), nullptr);

  journal.refuses = true;
  EXPECT_FALSE(bench.replan({}).has_value());
  EXPECT_EQ(bench.orchard().tasks, tasks);
}

}  // namespace
}  // namespace topwire
