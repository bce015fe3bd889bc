#include "storage/orchard_file.h"
#include "storage/schema/migrate.h"
#include "storage/sqlite/connection.h"
#include "tests/storage/file_support.h"

#include <gmock/gmock.h>

#include <filesystem>
#include <functional>
#include <random>

namespace topwire {
namespace {

using ::testing::AllOf;
using ::testing::HasSubstr;

constexpr const char* notAnOrchard = " is not an orchard file.";
constexpr const char* isDamaged = " is damaged and was left as it is.";

void makeGood(const std::string& path) {
  SqliteOrchardFiles files;
  ASSERT_EQ(testing::outcome(files.create(path, testing::orchardOfEverything())), "done");
}

void makeWith(const std::string& path, const std::string& sql) {
  Connection{path, Connection::Mode::create}.execute(sql);
}

/// A good file that someone then worked on with a database program.
void makeAltered(const std::string& path, const std::string& sql) {
  makeGood(path);
  Connection connection{path, Connection::Mode::write};
  connection.execute("PRAGMA foreign_keys = OFF; PRAGMA ignore_check_constraints = ON;");
  connection.execute(sql);
}

std::string randomBytes(std::size_t count) {
  std::mt19937 random{7};
  std::string bytes;
  while (bytes.size() < count) bytes += static_cast<char>(random() & 0xFF);
  return bytes;
}

struct BadFile {
  const char* name;
  std::function<void(const std::string& path)> make;
  std::vector<std::string> said;
};

void PrintTo(const BadFile& file, std::ostream* out) {
  *out << file.name;
}

class BadFileTest : public ::testing::TestWithParam<BadFile> {};

TEST_P(BadFileTest, IsRefusedWithASentenceAndLeftAsItIs) {
  const testing::TemporaryFolder folder;
  const std::string path = folder.file("creek.topwire");
  GetParam().make(path);
  const std::string before = testing::bytesOf(path);
  SqliteOrchardFiles files;
  for (const Access access : {Access::write, Access::look}) {
    const std::string said = testing::outcome(files.open(path, access));
    EXPECT_THAT(said, HasSubstr(path));
    for (const std::string& part : GetParam().said) EXPECT_THAT(said, HasSubstr(part));
  }
  EXPECT_TRUE(testing::bytesOf(path) == before);
  EXPECT_EQ(folder.names(), std::set<std::string>{"creek.topwire"});
}

INSTANTIATE_TEST_SUITE_P(
    Storage,
    BadFileTest,
    ::testing::Values(
        BadFile{"empty",
                [](const auto& path) { testing::writeBytes(path, ""); },
                {notAnOrchard}},
        BadFile{"text",
                [](const auto& path) { testing::writeBytes(path, "name = \"Creek\"\n"); },
                {notAnOrchard}},
        BadFile{"random_bytes",
                [](const auto& path) { testing::writeBytes(path, randomBytes(20'000)); },
                {notAnOrchard}},
        BadFile{"header_then_random_bytes",
                [](const auto& path) {
                  makeGood(path);
                  testing::writeBytes(
                      path, testing::bytesOf(path).substr(0, 100) + randomBytes(8092));
                },
                {isDamaged}},
        BadFile{"foreign_database",
                [](const auto& path) { makeWith(path, "CREATE TABLE a (b)"); },
                {notAnOrchard}},
        BadFile{"foreign_application",
                [](const auto& path) {
                  makeWith(path,
                           "PRAGMA application_id = 1; PRAGMA user_version = 1; CREATE "
                           "TABLE a (b)");
                },
                {notAnOrchard}},
        BadFile{"newer",
                [](const auto& path) { makeAltered(path, "PRAGMA user_version = 99"); },
                {"written by a newer Topwire (file version 99"}},
        BadFile{"negative_version",
                [](const auto& path) { makeAltered(path, "PRAGMA user_version = -1"); },
                {isDamaged}},
        BadFile{"right_header_wrong_schema",
                [](const auto& path) {
                  makeWith(path,
                           "PRAGMA application_id = " + std::to_string(applicationId)
                               + "; PRAGMA user_version = "
                               + std::to_string(schemaSteps().size())
                               + "; CREATE TABLE a (b)");
                },
                {isDamaged}},
        BadFile{"table_missing",
                [](const auto& path) { makeAltered(path, "DROP TABLE crew"); },
                {isDamaged}},
        BadFile{"no_settings",
                [](const auto& path) { makeAltered(path, "DELETE FROM settings"); },
                {"table settings"}},
        BadFile{"eleven_months",
                [](const auto& path) {
                  makeAltered(path, "DELETE FROM normal WHERE month = 12");
                },
                {"table normal"}},
        BadFile{
            "rows_no_rows",
            [](const auto& path) { makeAltered(path, "UPDATE block SET rows = '1-x'"); },
            {"table block, row 00000000000000000000000000000001, the value of rows "
             "can't be read: \"1-x\""}},
        BadFile{"day_that_is_none",
                [](const auto& path) {
                  makeAltered(path, "UPDATE planting SET planted = '2027-02-30'");
                },
                {"table planting", "value of planted", "2027-02-30"}},
        BadFile{"weather_on_a_day_that_is_none",
                [](const auto& path) {
                  makeAltered(
                      path,
                      "UPDATE weather SET day = '1878-12-32' WHERE day = '1878-12-31'");
                },
                {"table weather, row 1878-12-32, the value of day"}},
        BadFile{"unknown_word",
                [](const auto& path) {
                  makeAltered(path, "UPDATE planting SET kind = 'hedge'");
                },
                // Found by SQLite's check when writing, by reading the row when looking.
                {"newest copy from its backups folder"}},
        BadFile{"number_too_large",
                [](const auto& path) {
                  makeAltered(path, "UPDATE crew SET workers = 99999999999");
                },
                {"table crew", "value of workers", "99999999999"}},
        BadFile{"id_that_is_none",
                [](const auto& path) {
                  makeAltered(path, "UPDATE observation SET planting = 'creek'");
                },
                {"table observation", "value of planting", "creek"}}),
    [](const auto& bad) { return bad.param.name; });

TEST(TruncatedFile, IsRefusedAtEveryLength) {
  const testing::TemporaryFolder folder;
  const std::string whole = folder.file("whole.topwire");
  makeGood(whole);
  const std::string bytes = testing::bytesOf(whole);
  ASSERT_GT(bytes.size(), 20'000U);
  SqliteOrchardFiles files;
  std::vector<std::size_t> lengths{1, 15, 16, 50, 99, 100, 101, 511, 512, 513, 1024};
  for (std::size_t length = 4096; length < bytes.size(); length += 4096)
    lengths.insert(lengths.end(), {length - 1, length, length + 1});
  lengths.push_back(bytes.size() - 1);
  for (const std::size_t length : lengths) {
    const std::string path = folder.file("cut.topwire");
    testing::writeBytes(path, bytes.substr(0, length));
    for (const Access access : {Access::write, Access::look})
      EXPECT_THAT(testing::outcome(files.open(path, access)),
                  ::testing::AnyOf(HasSubstr(notAnOrchard), HasSubstr(isDamaged)))
          << length;
    EXPECT_EQ(testing::bytesOf(path).size(), length);
  }
}

TEST(DecayedFile, IsRefusedOrReadButNeverBringsTheProgramDown) {
  const testing::TemporaryFolder folder;
  const std::string path = folder.file("creek.topwire");
  makeGood(path);
  const std::string bytes = testing::bytesOf(path);
  std::mt19937 random{2027};
  SqliteOrchardFiles files;
  int refused = 0;
  for (int attempt = 0; attempt < 150; ++attempt) {
    std::string decayed = bytes;
    for (int spot = 0; spot < 8; ++spot)
      decayed[random() % decayed.size()] = static_cast<char>(random() & 0xFF);
    testing::writeBytes(path, decayed);
    const auto opened = files.open(path, Access::write);
    if (opened) continue;
    ++refused;
    EXPECT_THAT(inEnglish(opened.error()), HasSubstr(path));
  }
  EXPECT_GT(refused, 50);
}

TEST(MissingFile, IsSaidSo) {
  const testing::TemporaryFolder folder;
  SqliteOrchardFiles files;
  EXPECT_EQ(
      testing::outcome(files.open(folder.file("a.topwire"), Access::write)),
      "There is no file " + folder.file("a.topwire") + ". Check its name and folder.");
  EXPECT_EQ(testing::outcome(files.open(folder.path(), Access::look)),
            folder.path() + " is not a file. Choose an orchard file.");
  EXPECT_TRUE(folder.names().empty());
}

}  // namespace
}  // namespace topwire
