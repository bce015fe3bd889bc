#include "storage/orchard_file.h"
#include "storage/sqlite/connection.h"
#include "tests/storage/file_support.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>

namespace topwire {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

JournalEntry ticking(std::uint64_t id) {
  Tick tick;
  tick.id = {7, id};
  tick.task = {{0, 2}, "leader-tie", {2027}, 2};
  tick.rows = RowSet::range(1, 4);
  tick.by = "Crew A";
  tick.day = dayOf(2027, 9, 6);
  return {EntryKind::did,
          1'800'000'000,
          "Ana",
          {Sentence{phrase("Test", "Ticked")}, {Edit<Tick>{std::nullopt, tick}}}};
}

JournalEntry addingLargeBlock(std::uint64_t id) {
  Block block = testing::block(id, "Hill", "1-3");
  block.notes = std::string(3000, 'x');
  return {EntryKind::did, 1, "Ana", {Sentence{}, {Edit<Block>{std::nullopt, block}}}};
}

class Durability : public ::testing::Test {
protected:
  void SetUp() override {
    ASSERT_EQ(testing::outcome(files.create(path, testing::orchardOfEverything())),
              "done");
  }

  std::string openOutcome(Access access) {
    return testing::outcome(files.open(path, access));
  }

  Orchard onDisk(Access access) {
    const auto opened = files.open(path, access);
    EXPECT_TRUE(opened.has_value()) << testing::outcome(opened);
    return opened ? opened->orchard : Orchard{};
  }

  testing::TemporaryFolder folder;
  std::string path = folder.file("creek.topwire");
  SqliteOrchardFiles files;
};

std::string heldSentence(const std::string& path) {
  return path + " is open in another window or program. You can look at it, not change "
                "it.";
}

TEST_F(Durability, ASecondWriterInTheSameProgramIsRefusedAndMayLook) {
  auto first = files.open(path, Access::write);
  ASSERT_TRUE(first.has_value());
  EXPECT_EQ(openOutcome(Access::write), heldSentence(path));
  EXPECT_EQ(openOutcome(Access::look), "done");
  EXPECT_EQ(testing::outcome(first->journal->write(ticking(1))), "done");
  first->journal.reset();
  EXPECT_EQ(openOutcome(Access::write), "done");
}

TEST_F(Durability, ASecondWriterByAnotherNameOfTheFileIsRefusedToo) {
  const auto first = files.open(path, Access::write);
  ASSERT_EQ(symlink(path.c_str(), folder.file("other.topwire").c_str()), 0);
  EXPECT_EQ(testing::outcome(files.open(folder.file("other.topwire"), Access::write)),
            heldSentence(folder.file("other.topwire")));
}

TEST_F(Durability, ASecondWriterInAnotherProgramIsRefusedAndSeesWhatIsWritten) {
  const auto first = files.open(path, Access::write);
  ASSERT_TRUE(first.has_value());
  EXPECT_EQ(testing::inChild([&] { return openOutcome(Access::write); }),
            heldSentence(path));
  ASSERT_EQ(testing::outcome(first->journal->write(ticking(1))), "done");
  EXPECT_EQ(testing::inChild([&] {
              return std::to_string(onDisk(Access::look).ticks.count({7, 1}));
            }),
            "1");
}

TEST_F(Durability, AFileHeldByAnotherProgramIsRefusedHere) {
  int ready[2];
  int finish[2];
  ASSERT_EQ(pipe(ready), 0);
  ASSERT_EQ(pipe(finish), 0);
  const pid_t child = fork();
  if (child == 0) {
    const auto held = files.open(path, Access::write);
    char byte = held ? 'y' : 'n';
    _exit(write(ready[1], &byte, 1) == 1 && read(finish[0], &byte, 1) == 1 ? 0 : 1);
  }
  char byte = 0;
  ASSERT_EQ(read(ready[0], &byte, 1), 1);
  EXPECT_EQ(byte, 'y');
  EXPECT_EQ(openOutcome(Access::write), heldSentence(path));
  EXPECT_EQ(write(finish[1], "x", 1), 1);
  waitpid(child, nullptr, 0);
  EXPECT_EQ(openOutcome(Access::write), "done");
}

/// POSIX drops a process's locks when it closes any descriptor of the file. A refused
/// second opening must not cost the first its locks: another program could then change
/// the journal mode under it.
TEST_F(Durability, ARefusedOpeningLeavesSqlitesLocksInPlace) {
  const auto first = files.open(path, Access::write);
  ASSERT_NE(openOutcome(Access::write), "done");
  ASSERT_EQ(openOutcome(Access::look), "done");
  EXPECT_THAT(testing::inChild([&]() -> std::string {
                try {
                  Connection other{path, Connection::Mode::write};
                  other.execute("PRAGMA busy_timeout = 0");
                  return other.text("PRAGMA journal_mode = DELETE");
                } catch (const SqliteError& error) {
                  return error.what();
                }
              }),
              HasSubstr("database is locked"));
}

TEST_F(Durability, AProgramKilledInATransactionLosesNothingItConfirmed) {
  testing::inChild([&]() -> std::string {
    const auto open = files.open(path, Access::write);
    if (!open || !open->journal->write(ticking(1))) return "refused";
    Connection raw{path, Connection::Mode::write};
    // A cache of one page spills what is not committed into the log.
    raw.execute("PRAGMA cache_size = 1; BEGIN IMMEDIATE; UPDATE crew SET workers = 99;");
    for (int i = 0; i < 50; ++i)
      raw.execute("UPDATE block SET notes = notes || hex(randomblob(2000))");
    raise(SIGKILL);
    return "not reached";
  });
  EXPECT_EQ(folder.names().count("creek.topwire-wal"), 1U);
  Orchard expected = testing::orchardOfEverything();
  apply(expected, ticking(1).change);
  EXPECT_EQ(onDisk(Access::look), expected);
  EXPECT_EQ(onDisk(Access::write), expected);
  EXPECT_EQ(folder.names().count("creek.topwire-wal"), 0U);
}

/// Ticks one after another until killed, telling each once it is confirmed.
void tickWithoutEnd(SqliteOrchardFiles& files, const std::string& path, int tell) {
  const auto open = files.open(path, Access::write);
  for (std::uint64_t id = 1; open && open->journal->write(ticking(id)); ++id)
    if (write(tell, "x", 1) != 1) break;
  _exit(1);
}

TEST_F(Durability, EveryTickConfirmedBeforeAKillIsThere) {
  std::size_t confirmed = 0;
  for (const int wanted : {1, 7, 40}) {
    int ends[2];
    ASSERT_EQ(pipe(ends), 0);
    const testing::TemporaryFolder other;
    const std::string file = other.file("creek.topwire");
    ASSERT_EQ(testing::outcome(files.copyTo(path, file)), "done");
    const pid_t child = fork();
    if (child == 0) tickWithoutEnd(files, file, ends[1]);
    close(ends[1]);
    char byte = 0;
    for (int i = 0; i < wanted; ++i) ASSERT_EQ(read(ends[0], &byte, 1), 1);
    kill(child, SIGKILL);
    waitpid(child, nullptr, 0);
    confirmed = static_cast<std::size_t>(wanted);
    while (read(ends[0], &byte, 1) == 1) ++confirmed;
    close(ends[0]);
    const auto open = files.open(file, Access::write);
    ASSERT_TRUE(open.has_value()) << testing::outcome(open);
    const std::size_t there =
        open->orchard.ticks.size() - testing::orchardOfEverything().ticks.size();
    EXPECT_GE(there, confirmed);
    EXPECT_LE(there, confirmed + 1);  // written, not yet told
    EXPECT_EQ(open->journal->recent(9999)->size(), there);
  }
}

TEST_F(Durability, AFullDiskIsSaidAndLosesNothing) {
  const std::int64_t pages =
      Connection{path, Connection::Mode::readUnchanging}.number("PRAGMA page_count");
  SqliteOrchardFiles nearlyFull{{.mostPages = pages + 12}};
  auto open = nearlyFull.open(path, Access::write);
  ASSERT_TRUE(open.has_value());
  Orchard expected = open->orchard;
  std::string said = "done";
  for (std::uint64_t id = 100; id < 200; ++id) {
    said = testing::outcome(open->journal->write(addingLargeBlock(id)));
    if (said != "done") break;
    apply(expected, addingLargeBlock(id).change);
  }
  EXPECT_EQ(said,
            "The disk is full, so nothing was written to " + path
                + ". Free some space and do it again.");
  EXPECT_GT(expected.blocks.size(), 1U);
  open->journal.reset();
  EXPECT_EQ(onDisk(Access::write), expected);
}

TEST_F(Durability, ADiskTooFullForANewFileLeavesNone) {
  SqliteOrchardFiles full{{.mostPages = 6}};
  const testing::TemporaryFolder empty;
  EXPECT_THAT(testing::outcome(
                  full.create(empty.file("new.topwire"), testing::orchardOfEverything())),
              HasSubstr("The disk is full"));
  EXPECT_TRUE(empty.names().empty());
}

/// A limit on file size makes the system itself refuse a write.
TEST_F(Durability, AWriteTheSystemRefusesIsSaidAndLosesNothing) {
  const std::string said = testing::inChild([&]() -> std::string {
    signal(SIGXFSZ, SIG_IGN);
    const auto open = files.open(path, Access::write);
    struct stat status {};
    if (!open || stat((path + "-wal").c_str(), &status) != 0) return "not open";
    const auto room = static_cast<rlim_t>(status.st_size) + 9000;
    const rlimit limit{room, room};
    setrlimit(RLIMIT_FSIZE, &limit);
    std::string last = testing::outcome(open->journal->write(ticking(1)));
    for (std::uint64_t id = 100; id < 120 && last == "done"; ++id)
      last = testing::outcome(open->journal->write(addingLargeBlock(id)));
    return last;
  });
  EXPECT_THAT(said, HasSubstr("nothing was written"));
  const Orchard kept = onDisk(Access::write);
  for (const auto& [id, block] : testing::orchardOfEverything().blocks)
    EXPECT_EQ(kept.blocks.at(id), block);
}

/// Root may write anywhere, so that the tests below step down first.
void becomeNobody() {
  if (geteuid() != 0) return;
  if (setgid(65534) != 0 || setuid(65534) != 0) _exit(2);
}

TEST_F(Durability, AReadOnlyFolderCanBeLookedAtAndNotWritten) {
  ASSERT_EQ(chmod(path.c_str(), 0444), 0);
  ASSERT_EQ(chmod(folder.path().c_str(), 0555), 0);
  const std::string other = folder.file("other.topwire");
  const auto asNobody = [&](const std::function<std::string()>& work) {
    return testing::inChild([&] {
      becomeNobody();
      return work();
    });
  };
  EXPECT_EQ(asNobody([&] { return openOutcome(Access::write); }),
            path
                + " or its folder is read-only. Open it to look at only, or move it to a "
                  "folder of your own.");
  EXPECT_EQ(asNobody([&]() -> std::string {
              return onDisk(Access::look) == testing::orchardOfEverything() ? "same"
                                                                            : "other";
            }),
            "same");
  EXPECT_THAT(asNobody([&] { return testing::outcome(files.create(other, {})); }),
              HasSubstr("read-only"));
  EXPECT_THAT(asNobody([&] { return testing::outcome(files.copyTo(path, other)); }),
              HasSubstr("read-only"));
  EXPECT_THAT(folder.names(), ElementsAre("creek.topwire"));
}

TEST_F(Durability, AFileOneMayNotReadIsSaidSo) {
  ASSERT_EQ(chmod(path.c_str(), 0), 0);
  ASSERT_EQ(chmod(folder.path().c_str(), 0555), 0);
  EXPECT_THAT(testing::inChild([&] {
                becomeNobody();
                return openOutcome(Access::look);
              }),
              HasSubstr("You may not read " + path));
}

}  // namespace
}  // namespace topwire
