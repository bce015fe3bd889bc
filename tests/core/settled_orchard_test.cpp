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

WantedPin pinOf(const std::string& task) {
  WantedPin wanted;
  wanted.task = task;
  wanted.pin.crew = CrewId{0, 30};
  wanted.pin.day = today;
  wanted.line = 9;
  return wanted;
}

TEST(SettledOrchard, performsThePinsWithTheSkillTheirWorkAsksFor) {
  DescribedOrchard wanted = described();
  wanted.orchard.crews[{0, 30}] = {{0, 30}, "North", 6, 8, {"pruning"}};
  wanted.pins = {pinOf("p2:dormant-pruning:2027:1")};
  const auto orchard = settle(wanted);
  ASSERT_TRUE(orchard) << inEnglish(orchard.error().front());
  ASSERT_EQ(orchard->pins.size(), 1U);
  EXPECT_EQ(orchard->pins.begin()->second.task.operation, "dormant-pruning");
  wanted.orchard.crews.at({0, 30}).skills = {"tractor"};
  const auto refused = settle(wanted);
  ASSERT_FALSE(refused);
  EXPECT_THAT(inEnglish(refused.error().front()),
              HasSubstr("orchard.toml:9: The work asks for pruning"));
  wanted.pins = {pinOf("p2:no-such-work:2027:1")};
  EXPECT_THAT(inEnglish(settle(wanted).error().front()),
              HasSubstr("orchard.toml:9: There is no task"));
}

}  // namespace
}  // namespace topwire
