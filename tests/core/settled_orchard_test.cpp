#include "core/exchange/settled_orchard.h"

#include "core/planning/progress.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using ::testing::ElementsAre;
using testing::FixedForecaster;
using ::testing::HasSubstr;
using testing::orchardOfOne;
using testing::shippedProgrammes;
using testing::shippedTables;

const Day today = dayOf(2027, 4, 6);

DescribedOrchard described() {
  DescribedOrchard described;
  described.orchard = orchardOfOne(testing::northernSettings(), dayOf(2023, 4, 17));
  return described;
}

DescribedOrchard::WantedTick tickOf(const std::string& task, const std::string& rows) {
  DescribedOrchard::WantedTick tick;
  tick.task = task;
  tick.rows = rows;
  tick.by = "Heron";
  tick.day = dayOf(2027, 3, 2);
  tick.line = 7;
  return tick;
}

Checked<Orchard> settle(const DescribedOrchard& described) {
  const FixedForecaster forecaster;
  IdSource ids = IdSource::countingFrom(100);
  return settledOrchard(described,
                        "orchard.toml",
                        {shippedTables(), shippedProgrammes(), forecaster},
                        today,
                        ids);
}

TEST(SettledOrchard, performsTheTicksAndStoresTheTasks) {
  DescribedOrchard wanted = described();
  wanted.ticks = {tickOf("p2:dormant-pruning:2027:1", "1-4")};
  const auto orchard = settle(wanted);
  ASSERT_TRUE(orchard) << inEnglish(orchard.error().front());
  ASSERT_EQ(orchard->ticks.size(), 1U);
  const Tick& tick = orchard->ticks.begin()->second;
  EXPECT_EQ(rowsText(tick.rows), "1-4");
  EXPECT_EQ(tick.by, "Heron");
  EXPECT_TRUE(orchard->tasks.contains(tick.task));
}

TEST(SettledOrchard, aTickWithoutRowsIsForAllOfThem) {
  DescribedOrchard wanted = described();
  wanted.ticks = {tickOf("p2:dormant-pruning:2027:1", "")};
  const auto orchard = settle(wanted);
  ASSERT_TRUE(orchard) << inEnglish(orchard.error().front());
  EXPECT_EQ(rowsText(orchard->ticks.begin()->second.rows), "1-10");
}

TEST(SettledOrchard, keepsTheTaskOfATickFromASeasonThatIsOver) {
  DescribedOrchard wanted = described();
  auto old = tickOf("p2:dormant-pruning:2026:1", "1-10");
  old.day = dayOf(2026, 3, 2);
  wanted.ticks = {old};
  const auto orchard = settle(wanted);
  ASSERT_TRUE(orchard) << inEnglish(orchard.error().front());
  EXPECT_TRUE(orchard->tasks.contains(orchard->ticks.begin()->second.task));
}

TEST(SettledOrchard, tellsEveryTickThatCannotBePerformed) {
  DescribedOrchard wanted = described();
  wanted.ticks = {tickOf("p2:dormant-prunning:2027:1", "1-4"),
                  tickOf("p2:dormant-pruning:2027:1", "10-11"),
                  tickOf("q", "1")};
  const auto orchard = settle(wanted);
  ASSERT_FALSE(orchard);
  std::vector<std::string> told;
  for (const Problem& problem : orchard.error()) told.push_back(inEnglish(problem));
  EXPECT_THAT(told,
              ElementsAre(HasSubstr("orchard.toml:7: There is no task "
                                    "\"p2:dormant-prunning:2027:1\"; the nearest is "
                                    "\"p2:dormant-pruning:2027:1\"."),
                          HasSubstr("11"),
                          HasSubstr("\"q\"; a task is written as planting, operation")));
}

TEST(SettledOrchard, theSameDescriptionGivesTheSameOrchard) {
  DescribedOrchard wanted = described();
  wanted.ticks = {tickOf("p2:dormant-pruning:2027:1", "1-4")};
  EXPECT_EQ(settle(wanted).value(), settle(wanted).value());
}

}  // namespace
}  // namespace topwire
