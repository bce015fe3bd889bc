#include "tests/app/cli_support.h"

#include <gmock/gmock.h>

#include <set>

namespace topwire {
namespace {

using ::testing::Each;
using testing::expectRefused;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using testing::Row;
using testing::rowsOf;
using testing::Said;

/// With a crew to work there.
class CliCrewsTest : public testing::CliTest {
protected:
  void SetUp() override {
    CliTest::SetUp();
    const std::string described = in("with-crew.toml");
    testing::write(described,
                   std::string{testing::orchardText}
                       + "\n[[crew]]\nname = \"Heron\"\nworkers = 4\n");
    file_ = in("with-crew.topwire");
    const Said made = onTheDay({"new", file_, "--from", described});
    ASSERT_EQ(made.code, 0) << made.err;
  }

  std::vector<Row> lanes() const {
    const Said said = onTheDay({"crews", file_, "--csv"});
    EXPECT_EQ(said.code, 0) << said.err;
    return rowsOf(said.out);
  }

  std::string text() const { return onTheDay({"crews", file_}).out; }
};

TEST_F(CliCrewsTest, TellsWhoGoesWhere) {
  const auto rows = lanes();
  ASSERT_THAT(rows, Not(IsEmpty()));
  EXPECT_EQ(rows[0].at("crew"), "Heron");
  EXPECT_EQ(rows[0].at("start"), "06:30");
  EXPECT_THAT(rows[0].at("task"), HasSubstr(":2027:"));
  EXPECT_THAT(text(), HasSubstr("workers are expected."));
}

TEST_F(CliCrewsTest, TheSamePlanTwice) {
  EXPECT_EQ(onTheDay({"crews", file_, "--json"}).out,
            onTheDay({"crews", file_, "--json"}).out);
}

TEST_F(CliCrewsTest, PlansForThoseWhoTurnedOut) {
  ASSERT_EQ(onTheDay({"turnout", file_, "--crew", "Heron", "--workers", "2"}).code, 0);
  EXPECT_THAT(text(), HasSubstr("2 of "));
  for (const Row& row : lanes()) EXPECT_LE(std::stoi(row.at("workers")), 2);
  ASSERT_EQ(onTheDay({"turnout", file_, "--crew", "Heron", "--workers", "0"}).code, 0);
  EXPECT_THAT(lanes(), IsEmpty());
  expectRefused(
      onTheDay({"turnout", file_, "--crew", "Heorn", "--workers", "2"}), 3, "\"Heron\"");
}

TEST_F(CliCrewsTest, KeepsOutOfAClosedBlock) {
  const std::string block = lanes().at(0).at("block");
  ASSERT_EQ(
      onTheDay(
          {"keep-out", file_, block, "--until", "2027-04-07 06:00", "--reason", "spray"})
          .code,
      0);
  for (const Row& row : lanes()) EXPECT_NE(row.at("block"), block);
  EXPECT_THAT(text(),
              HasSubstr(block + ": keep out until 06:00 on 7 April 2027, spray."));
  expectRefused(
      onTheDay({"keep-out", file_, block, "--until", "Friday"}), 3, "\"Friday\"");
  ASSERT_EQ(onTheDay({"keep-out", file_, block, "--remove"}).code, 0);
  EXPECT_THAT(text(), Not(HasSubstr("keep out")));
}

TEST_F(CliCrewsTest, PinsAndHoldsTasks) {
  const std::string task = lanes().at(0).at("task");
  ASSERT_EQ(onTheDay({"pin", file_, task, "--day", "2027-04-08"}).code, 0);
  for (const Row& row : lanes()) EXPECT_NE(row.at("task"), task);
  ASSERT_EQ(onTheDay({"pin", file_, task, "--remove"}).code, 0);
  ASSERT_EQ(onTheDay({"pin", file_, task, "--crew", "Heron"}).code, 0);
  EXPECT_EQ(lanes().at(0).at("pinned"), "yes");
}

TEST_F(CliCrewsTest, RestsOnAHoliday) {
  ASSERT_EQ(onTheDay({"work-day", file_, "--percent", "0", "--reason", "holiday"}).code,
            0);
  EXPECT_THAT(lanes(), IsEmpty());
  EXPECT_THAT(text(), HasSubstr("No work on this day: holiday."));
}

TEST_F(CliCrewsTest, PutsThePlanOnRecordAndTakesItBack) {
  const Said said = onTheDay({"accept-crews", file_});
  ASSERT_EQ(said.code, 0) << said.err;
  EXPECT_THAT(testing::cli({"journal", file_, "--csv"}).out, HasSubstr("accepted"));
  EXPECT_EQ(onTheDay({"undo", file_}).code, 0);
}

TEST_F(CliCrewsTest, TellsLabourByWeekAndWhatWouldHelp) {
  const Said weeks = onTheDay({"crews", file_, "--weeks", "--csv"});
  ASSERT_EQ(weeks.code, 0) << weeks.err;
  const auto rows = rowsOf(weeks.out);
  ASSERT_GE(rows.size(), 26U);
  EXPECT_EQ(rows[0].at("monday"), "2027-04-05");
  const Said helped = onTheDay({"crews", file_, "--workers-more", "5", "--csv"});
  ASSERT_EQ(helped.code, 0) << helped.err;
  for (const Row& row : rowsOf(helped.out))
    EXPECT_LE(std::stod(row.at("supposed")), std::stod(row.at("as_known")))
        << row.at("hours");
}

TEST_F(CliCrewsTest, TellsWhyATaskStandsWhereItDoes) {
  const std::string task = lanes().at(0).at("task");
  const Said said = onTheDay({"crews", file_, "--task", task});
  ASSERT_EQ(said.code, 0) << said.err;
  EXPECT_THAT(said.out, HasSubstr("close"));
}

TEST_F(CliCrewsTest, SpeaksSpanish) {
  const std::string said = onTheDay({"crews", file_, "--language", "es"}).out;
  EXPECT_THAT(said, Not(HasSubstr("workers are expected")));
  EXPECT_THAT(said, HasSubstr("trabajador"));
}

}  // namespace
}  // namespace topwire
