#include "storage/backups.h"

#include "storage/orchard_file.h"
#include "tests/storage/file_support.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

#include <filesystem>

namespace topwire {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

constexpr std::int64_t secondsADay = 86'400;

class Backups : public ::testing::Test {
protected:
  /// One session with the file: opened on that day, one block added, closed.
  void workOn(Day day) {
    auto opened = files.open(path, Access::write);
    ASSERT_TRUE(opened.has_value()) << testing::outcome(opened);
    const Block block = testing::block(next_, "Block " + std::to_string(next_), "1-3");
    ++next_;
    const std::int64_t at = daysBetween(Day{}, day) * secondsADay + 3600;
    ASSERT_TRUE(opened->journal->write(
        {EntryKind::did, at, "Ana", {Sentence{}, {Edit<Block>{std::nullopt, block}}}}));
  }

  std::vector<std::string> copies() {
    std::vector<std::string> names;
    const std::string backups = backupFolderOf(path);
    if (!std::filesystem::exists(backups)) return names;
    for (const auto& entry : std::filesystem::directory_iterator{backups})
      names.push_back(entry.path().filename().string());
    std::ranges::sort(names);
    return names;
  }

  void SetUp() override {
    ASSERT_EQ(testing::outcome(files.create(path, testing::orchardOfEverything())),
              "done");
  }

  testing::TemporaryFolder folder;
  std::string path = folder.file("creek.topwire");
  SqliteOrchardFiles files;

private:
  std::uint64_t next_ = 100;
};

TEST_F(Backups, AreMadeOnOpeningOnceSomethingChanged) {
  EXPECT_TRUE(files.open(path, Access::write).has_value());
  EXPECT_TRUE(copies().empty());
  workOn(dayOf(2027, 4, 6));
  EXPECT_TRUE(files.open(path, Access::look).has_value());
  EXPECT_TRUE(copies().empty());
  EXPECT_TRUE(files.open(path, Access::write).has_value());
  EXPECT_THAT(copies(), ElementsAre("creek 2027-04-06 000001.topwire"));
  const auto copy =
      files.open(backupFolderOf(path) + "/creek 2027-04-06 000001.topwire", Access::look);
  ASSERT_TRUE(copy.has_value()) << testing::outcome(copy);
  EXPECT_EQ(copy->orchard.blocks.size(), 2U);
}

TEST_F(Backups, KeepTheLastOfEachOfFiveDays) {
  for (const unsigned day : {1U, 2U, 2U, 3U, 4U, 6U, 9U, 9U}) workOn(dayOf(2027, 4, day));
  EXPECT_TRUE(files.open(path, Access::write).has_value());
  EXPECT_THAT(copies(),
              ElementsAre("creek 2027-04-02 000003.topwire",
                          "creek 2027-04-03 000004.topwire",
                          "creek 2027-04-04 000005.topwire",
                          "creek 2027-04-06 000006.topwire",
                          "creek 2027-04-09 000008.topwire"));
}

TEST_F(Backups, LeaveOtherFilesInTheirFolderAlone) {
  std::filesystem::create_directory(backupFolderOf(path));
  testing::writeBytes(backupFolderOf(path) + "/creek at pruning.topwire", "mine");
  for (const unsigned day : {1U, 2U, 3U, 4U, 5U, 6U, 7U}) workOn(dayOf(2027, 4, day));
  EXPECT_EQ(copies().size(), 6U);
  EXPECT_EQ(copies().back(), "creek at pruning.topwire");
}

TEST_F(Backups, ThatCannotBeMadeAreNoReasonNotToWork) {
  workOn(dayOf(2027, 4, 6));
  testing::writeBytes(backupFolderOf(path), "a file where the folder would be");
  const auto opened = files.open(path, Access::write);
  ASSERT_TRUE(opened.has_value());
  ASSERT_EQ(opened->notes.size(), 1U);
  EXPECT_THAT(inEnglish(opened->notes[0]), HasSubstr("No backup of " + path));
}

}  // namespace
}  // namespace topwire
