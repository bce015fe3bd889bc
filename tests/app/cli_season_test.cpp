#include "tests/app/cli_support.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using testing::cli;
using testing::expectRefused;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using testing::Row;
using testing::rowsOf;
using testing::Said;
using ::testing::StartsWith;

using CliSeasonTest = testing::CliTest;

std::vector<Row> section(const std::vector<Row>& rows, const std::string& name) {
  std::vector<Row> found;
  for (const Row& row : rows)
    if (row.at("section") == name) found.push_back(row);
  return found;
}

TEST_F(CliSeasonTest, MaterialOfASeasonIsATableForScripts) {
  const Said said = onTheDay({"material", file_, "--season", "2027", "--csv"});
  ASSERT_EQ(said.code, 0) << said.err;
  const auto rows = rowsOf(said.out);
  ASSERT_THAT(rows, Not(IsEmpty()));
  for (const Row& row : rows) {
    EXPECT_THAT(row.at("tasks"), HasSubstr(":2027:")) << row.at("item");
    EXPECT_GT(std::stod(row.at("needed")), 0);
  }
}

TEST_F(CliSeasonTest, MaterialIsAskedForOneSpanAtATime) {
  expectRefused(onTheDay({"material", file_, "--season", "2027", "--week", "2027-W15"}),
                2,
                "--week");
  expectRefused(onTheDay({"material", file_, "--season", "27"}), 2, "is no season");
  expectRefused(
      onTheDay({"material", file_, "--planting", "creek-1-gal"}), 3, "creek-1-gala");
}

TEST_F(CliSeasonTest, ClosingShowsTheReviewAndChangesNothing) {
  const Said said =
      cli({"close", file_, "--season", "2027", "--today", "2027-11-05", "--csv"});
  ASSERT_EQ(said.code, 0) << said.err;
  const auto rows = rowsOf(said.out);
  EXPECT_THAT(section(rows, "labour"), ::testing::SizeIs(12));
  EXPECT_THAT(section(rows, "work"), Not(IsEmpty()));
  EXPECT_THAT(section(rows, "next-leaf"), ::testing::SizeIs(2));
  EXPECT_THAT(cli({"journal", file_, "--csv"}).out, Not(HasSubstr("closed")));
  EXPECT_THAT(cli({"close", file_, "--season", "2027", "--today", "2027-11-05"}).out,
              StartsWith("Season 2027: "));
}

TEST_F(CliSeasonTest, AcceptingClosesTheSeasonOnce) {
  const testing::Words words{"close",
                             file_,
                             "--season",
                             "2027",
                             "--today",
                             "2027-11-05",
                             "--accept",
                             "--by",
                             "Ada"};
  const Said said = cli(words);
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_THAT(said.out, StartsWith("Season 2027 closed."));
  expectRefused(cli(words), 3, "was closed on 5 November 2027 already");
}

TEST_F(CliSeasonTest, ASeasonThatGoesOnIsNotClosed) {
  expectRefused(
      cli({"close", file_, "--season", "2027", "--today", "2027-08-01", "--accept"}),
      3,
      "from 1 October 2027 on");
}

}  // namespace
}  // namespace topwire
