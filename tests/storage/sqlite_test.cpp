#include "storage/sqlite/connection.h"
#include "storage/sqlite/statement.h"
#include "storage/sqlite/transaction.h"
#include "tests/storage/file_support.h"

#include <gmock/gmock.h>
#include <sqlite3.h>

#include <array>
#include <limits>

namespace topwire {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

Connection inMemory() {
  return {":memory:", Connection::Mode::create};
}

/// The code of what `work` throws; SQLITE_OK where it throws nothing.
template <class Work>
int codeOf(Work work) {
  try {
    work();
    return SQLITE_OK;
  } catch (const SqliteError& error) {
    return error.code();
  }
}

TEST(Connection, OpensPathsThatWouldMeanSomethingInAUri) {
  const testing::TemporaryFolder folder;
  const std::string path = folder.file("50% of #1? ñ.db");
  Connection{path, Connection::Mode::create}.execute("CREATE TABLE a (b)");
  EXPECT_THAT(folder.names(), ElementsAre("50% of #1? ñ.db"));
  EXPECT_EQ((Connection{path, Connection::Mode::readUnchanging}.number(
                "SELECT COUNT(*) FROM a")),
            0);
}

TEST(Connection, DoesNotMakeAFileItWasToOpen) {
  const testing::TemporaryFolder folder;
  const auto open = [&] { Connection{folder.file("a.db"), Connection::Mode::write}; };
  EXPECT_EQ(codeOf(open), SQLITE_CANTOPEN);
  EXPECT_TRUE(folder.names().empty());
}

TEST(Connection, SaysWhatWasRefusedAndWhere) {
  Connection connection = inMemory();
  try {
    connection.execute("SELECT a FROM nowhere");
    FAIL();
  } catch (const SqliteError& error) {
    EXPECT_EQ(error.code(), SQLITE_ERROR);
    EXPECT_THAT(error.what(), HasSubstr("no such table: nowhere"));
    EXPECT_THAT(error.what(), HasSubstr("SELECT a FROM"));
  }
}

TEST(Connection, IsGuarded) {
  Connection connection = inMemory();
  EXPECT_EQ(connection.number("PRAGMA foreign_keys"), 1);
  EXPECT_EQ(connection.number("PRAGMA trusted_schema"), 0);
  // The defensive flag makes this a no-op, and the schema no table one can write.
  connection.execute("PRAGMA writable_schema = ON");
  EXPECT_NE(codeOf([&] { connection.execute("DELETE FROM sqlite_schema"); }), SQLITE_OK);
}

TEST(Statement, GivesBackWhatWasBound) {
  Connection connection = inMemory();
  Statement statement{connection, "SELECT ?, ?, ?, ?, ?"};
  const std::string withNul{"a\0ñ", 4};
  statement.bind(1, std::numeric_limits<std::int64_t>::min());
  statement.bind(2, 0.1 + 0.2);
  statement.bind(3, withNul);
  statement.bind(4, std::string_view{});
  statement.bindNothing(5);
  ASSERT_TRUE(statement.step());
  EXPECT_EQ(statement.number(0), std::numeric_limits<std::int64_t>::min());
  EXPECT_EQ(statement.real(1), 0.1 + 0.2);
  EXPECT_EQ(statement.text(2), withNul);
  EXPECT_EQ(statement.text(3), "");
  EXPECT_FALSE(statement.isNothing(3));
  EXPECT_TRUE(statement.isNothing(4));
  EXPECT_FALSE(statement.step());
}

TEST(Statement, RunsAgainWithOtherValues) {
  Connection connection = inMemory();
  connection.execute("CREATE TABLE a (b INTEGER) STRICT");
  Statement insert{connection, "INSERT INTO a VALUES (?)"};
  for (const std::int64_t number : {1, 2, 3}) {
    insert.bind(1, number);
    insert.run();
  }
  EXPECT_EQ(connection.number("SELECT SUM(b) FROM a"), 6);
}

TEST(Statement, ThrowsForAParameterThatIsNotThere) {
  Connection connection = inMemory();
  Statement statement{connection, "SELECT ?"};
  EXPECT_EQ(codeOf([&] { statement.bind(2, std::int64_t{1}); }), SQLITE_RANGE);
}

TEST(Transaction, IsKeptWhenCommittedAndRolledBackElse) {
  Connection connection = inMemory();
  connection.execute("CREATE TABLE a (b)");
  {
    Transaction kept{connection};
    connection.execute("INSERT INTO a VALUES (1)");
    kept.commit();
  }
  {
    const Transaction dropped{connection};
    connection.execute("INSERT INTO a VALUES (2)");
  }
  EXPECT_FALSE(connection.inTransaction());
  EXPECT_EQ(connection.number("SELECT COUNT(*) FROM a"), 1);
}

TEST(Transaction, DoesNotNest) {
  Connection connection = inMemory();
  const Transaction outer{connection};
  EXPECT_EQ(codeOf([&] { const Transaction inner{connection}; }), SQLITE_ERROR);
  EXPECT_TRUE(connection.inTransaction());
}

TEST(Connection, CopiesWholeWhileItHoldsAnOpenDatabase) {
  const testing::TemporaryFolder folder;
  Connection from{folder.file("from.db"), Connection::Mode::create};
  from.execute("PRAGMA journal_mode = WAL; CREATE TABLE a (b); INSERT INTO a VALUES (7)");
  from.copyTo(folder.file("to.db"));
  Connection to{folder.file("to.db"), Connection::Mode::readUnchanging};
  EXPECT_EQ(to.number("SELECT b FROM a"), 7);
}

}  // namespace
}  // namespace topwire
