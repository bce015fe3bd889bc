#include "storage/orchard_file.h"

#include "core/edit/workbench.h"
#include "storage/sqlite/connection.h"
#include "tests/storage/file_support.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::UnorderedElementsAre;

class OrchardFile : public ::testing::Test {
protected:
  OpenedOrchard made(const Orchard& orchard = testing::orchardOfEverything()) {
    auto opened = files.create(path, orchard);
    EXPECT_TRUE(opened.has_value()) << testing::outcome(opened);
    return std::move(*opened);
  }

  OpenedOrchard opened(Access access) {
    auto result = files.open(path, access);
    EXPECT_TRUE(result.has_value()) << testing::outcome(result);
    return std::move(*result);
  }

  /// As somebody with a database program would.
  void execute(const std::string& sql) {
    Connection{path, Connection::Mode::write}.execute(sql);
  }

  testing::TemporaryFolder folder;
  std::string path = folder.file("creek.topwire");
  SqliteOrchardFiles files;
};

JournalEntry adding(const Block& block) {
  return {EntryKind::did,
          1'800'000'000,
          "Ana",
          {Sentence{phrase("Test", "%1 added"), {block.name}},
           {Edit<Block>{std::nullopt, block}}}};
}

TEST_F(OrchardFile, HoldsEveryKindOfRecordExactly) {
  EXPECT_EQ(made().orchard, testing::orchardOfEverything());
  EXPECT_EQ(opened(Access::write).orchard, testing::orchardOfEverything());
  EXPECT_EQ(opened(Access::look).orchard, testing::orchardOfEverything());
}

TEST_F(OrchardFile, LeavesNoSideFilesOnceClosed) {
  {
    const OpenedOrchard open = made();
    EXPECT_FALSE(open.readOnly);
    ASSERT_TRUE(open.journal->write(adding(testing::block(9, "Hill", "1-3"))));
    EXPECT_THAT(
        folder.names(),
        UnorderedElementsAre("creek.topwire", "creek.topwire-wal", "creek.topwire-shm"));
  }
  EXPECT_THAT(folder.names(), ElementsAre("creek.topwire"));
  EXPECT_TRUE(opened(Access::look).readOnly);
  EXPECT_THAT(folder.names(), ElementsAre("creek.topwire"));
}

TEST_F(OrchardFile, CanBeReadWithAnSqliteShell) {
  made();
  Connection shell{path, Connection::Mode::readUnchanging};
  EXPECT_EQ(shell.text("SELECT planted FROM planting WHERE code = 'p2'"), "2024-02-29");
  EXPECT_EQ(shell.text("SELECT rows FROM tick WHERE takes_back IS NULL"), "1-4, 7");
  EXPECT_EQ(shell.number("SELECT row_length_um FROM block"), 25'400);
}

TEST_F(OrchardFile, IsNotMadeOverAnother) {
  testing::writeBytes(path, "mine");
  EXPECT_EQ(testing::outcome(files.create(path, {})),
            "There is a file " + path + " already. Choose another name.");
  EXPECT_EQ(testing::bytesOf(path), "mine");
  EXPECT_THAT(folder.names(), ElementsAre("creek.topwire"));
}

TEST_F(OrchardFile, IsNotMadeInAFolderThatIsNotThere) {
  const std::string far = folder.file("no/where.topwire");
  EXPECT_THAT(testing::outcome(files.create(far, {})), HasSubstr(far));
  EXPECT_TRUE(folder.names().empty());
}

TEST_F(OrchardFile, IsNotMadeFromRecordsThatBreakItsRules) {
  Orchard orchard = testing::orchardOfEverything();
  orchard.crews.begin()->second.workers = 0;
  EXPECT_THAT(testing::outcome(files.create(path, orchard)),
              HasSubstr("breaks a rule of the file"));
  Orchard orphans = testing::orchardOfEverything();
  orphans.blocks.clear();
  EXPECT_FALSE(files.create(path, orphans).has_value());
  EXPECT_TRUE(folder.names().empty());
}

TEST_F(OrchardFile, CopiesWholeWhileItIsOpen) {
  const OpenedOrchard open = made();
  ASSERT_TRUE(open.journal->write(adding(testing::block(9, "Hill", "1-3"))));
  const std::string copy = folder.file("copy.topwire");
  ASSERT_EQ(testing::outcome(files.copyTo(path, copy)), "done");
  const auto read = files.open(copy, Access::look);
  ASSERT_TRUE(read.has_value());
  EXPECT_EQ(read->orchard.blocks.size(), 2U);
  EXPECT_EQ(testing::outcome(files.copyTo(path, copy)),
            "There is a file " + copy + " already. Choose another name.");
  EXPECT_THAT(testing::outcome(files.copyTo(folder.file("none"), folder.file("b"))),
              HasSubstr("There is no file"));
}

TEST_F(OrchardFile, ReadsBackTheNewestEntriesOldestFirst) {
  std::vector<JournalEntry> entries;
  for (std::uint64_t id = 10; id < 15; ++id)
    entries.push_back(adding(testing::block(id, "Ñ" + std::to_string(id), "1-3")));
  entries[3].kind = EntryKind::redid;
  {
    const OpenedOrchard open = made();
    for (const JournalEntry& entry : entries)
      ASSERT_EQ(testing::outcome(open.journal->write(entry)), "done");
  }
  const auto read = opened(Access::look).journal->recent(2);
  ASSERT_TRUE(read.has_value());
  ASSERT_EQ(read->size(), 2U);
  for (std::size_t i = 0; i < 2; ++i) {
    EXPECT_EQ((*read)[i].kind, entries[i + 3].kind);
    EXPECT_EQ((*read)[i].change, entries[i + 3].change);
    EXPECT_EQ((*read)[i].by, "Ana");
    EXPECT_EQ((*read)[i].at, 1'800'000'000);
  }
}

TEST_F(OrchardFile, WritesAnEntryWholeOrNotAtAll) {
  const OpenedOrchard open = made();
  JournalEntry entry = adding(testing::block(9, "Hill", "1-3"));
  entry.change.edits.push_back(Edit<Crew>{std::nullopt, Crew{{0, 8}, "Nobody", 0, 8}});
  EXPECT_THAT(testing::outcome(open.journal->write(entry)),
              HasSubstr("breaks a rule of the file. Nothing was written."));
  EXPECT_EQ(opened(Access::look).orchard, testing::orchardOfEverything());
  EXPECT_TRUE(open.journal->recent(9)->empty());
}

TEST_F(OrchardFile, RefusesAChangeMadeFromOtherRecordsThanItHolds) {
  const OpenedOrchard open = made();
  const Crew before = open.orchard.crews.begin()->second;
  Crew after = before;
  after.workers = 9;
  const auto write = [&](const AnyEdit& edit) {
    return testing::outcome(
        open.journal->write({EntryKind::did, 1, "Ana", {Sentence{}, {edit}}}));
  };
  const auto changed = HasSubstr("was changed by another program since it was opened");
  execute("UPDATE crew SET workers = 7");
  EXPECT_THAT(write(Edit<Crew>{before, after}), changed);
  EXPECT_THAT(write(Edit<Crew>{before, std::nullopt}), changed);
  EXPECT_THAT(write(Edit<Crew>{std::nullopt, after}), changed);
  execute(
      "DELETE FROM planned_job; DELETE FROM pin; DELETE FROM turnout; DELETE FROM crew");
  EXPECT_THAT(write(Edit<Crew>{before, after}), changed);
  EXPECT_EQ(write(Edit<Crew>{std::nullopt, after}), "done");
}

TEST_F(OrchardFile, OpenedToLookTakesNoWrites) {
  made();
  const OpenedOrchard open = opened(Access::look);
  EXPECT_EQ(
      testing::outcome(open.journal->write(adding(testing::block(9, "Hill", "1-3")))),
      "The file was opened to look at only, so nothing was changed.");
  EXPECT_NE(testing::outcome(open.journal->writeTasks({})), "done");
}

TEST_F(OrchardFile, ReplacesTheStoredTasks) {
  const TaskKey key{{0, 2}, "scout", {2028}, 1};
  const std::map<TaskKey, StoredTask> tasks{
      {key, {key, dayOf(2028, 9, 1), dayOf(2028, 9, 9), dayOf(2028, 9, 12), false}}};
  {
    const OpenedOrchard open = made();
    ASSERT_EQ(testing::outcome(open.journal->writeTasks(tasks)), "done");
  }
  EXPECT_EQ(opened(Access::look).orchard.tasks, tasks);
}

TEST_F(OrchardFile, TicksAndJournalAreOnlyEverAddedTo) {
  {
    const OpenedOrchard open = made();
    ASSERT_TRUE(open.journal->write(adding(testing::block(9, "Hill", "1-3"))));
  }
  for (const char* sql : {"UPDATE tick SET minutes = 1",
                          "DELETE FROM tick",
                          "INSERT OR REPLACE INTO tick SELECT * FROM tick",
                          "UPDATE journal SET who = 'Eva'",
                          "DELETE FROM journal",
                          "INSERT OR REPLACE INTO journal SELECT * FROM journal"}) {
    try {
      execute(sql);
      FAIL() << sql;
    } catch (const SqliteError& error) {
      EXPECT_THAT(error.what(), HasSubstr("only ever added")) << sql;
    }
  }
}

TEST_F(OrchardFile, UndoSurvivesClosing) {
  const auto clock = [] { return std::int64_t{1'800'000'000}; };
  {
    OpenedOrchard open = made();
    Workbench bench{open.orchard, *open.journal, clock, IdSource::countingFrom(500)};
    for (std::uint64_t id = 10; id < 13; ++id)
      ASSERT_TRUE(bench.perform(
          adding(testing::block(id, "Hill " + std::to_string(id), "1-3")).change));
    ASSERT_TRUE(bench.undo().has_value());
  }
  OpenedOrchard open = opened(Access::write);
  Workbench bench{open.orchard, *open.journal, clock, IdSource::countingFrom(900)};
  EXPECT_EQ(inEnglish(*bench.undoName()), "Hill 11 added");
  EXPECT_EQ(inEnglish(*bench.redoName()), "Hill 12 added");
  ASSERT_TRUE(bench.undo().has_value());
  ASSERT_TRUE(bench.undo().has_value());
  EXPECT_EQ(bench.orchard(), testing::orchardOfEverything());
  EXPECT_EQ(opened(Access::look).orchard, testing::orchardOfEverything());
}

TEST_F(OrchardFile, HistoryReachesOnlyBackToAnEntryThatCanBeRead) {
  {
    const OpenedOrchard open = made();
    ASSERT_TRUE(open.journal->write(adding(testing::block(9, "Hill", "1-3"))));
  }
  execute(
      "INSERT INTO journal (kind, at, who, name, change) VALUES ('did', 1, '', '', "
      "'{}')");
  OpenedOrchard open = opened(Access::write);
  ASSERT_TRUE(open.journal->write(adding(testing::block(10, "Dell", "1-3"))));
  const auto read = open.journal->recent(9);
  ASSERT_TRUE(read.has_value());
  ASSERT_EQ(read->size(), 1U);
  EXPECT_EQ(inEnglish((*read)[0].change.name), "Dell added");
}

}  // namespace
}  // namespace topwire
