#include "core/planning/stage_shifts.h"

#include "core/phenology/stage.h"
#include "tests/support/builders.h"
#include "tests/support/operations.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

/// FixedForecaster with every expected stage of some plantings moved by so many days, and
/// stages seen.
class MovedForecaster final : public PlainForecaster {
public:
  Outlook outlook(const Orchard& orchard,
                  const Planting& planting,
                  Season season,
                  Day today) const override {
    Outlook outlook = FixedForecaster{}.outlook(orchard, planting, season, today);
    const auto own = days.find(planting.id);
    if (season != Season{2027} || own == days.end()) return outlook;
    for (StageEstimate& stage : outlook.stages) {
      for (Day* day : {&stage.date, &stage.early, &stage.late})
        *day = plusDays(*day, own->second);
      if (stage.bbch <= seenUpTo) stage.kind = StageKind::observed;
    }
    return outlook;
  }

  std::map<PlantingId, int> days;
  int seenUpTo = 0;
};

class StageShiftsTest : public ::testing::Test {
protected:
  StageShiftsTest() {
    for (std::uint64_t i = 2; i <= 5; ++i) {
      const Block block = testing::block(10 * i, "Creek " + std::to_string(i), "1-10");
      orchard.blocks[block.id] = block;
      const Planting planting = testing::planting(10 * i + 1, block, dayOf(2024, 4, 10));
      orchard.plantings[planting.id] = planting;
    }
  }

  static PlantingId plantingIn(std::uint64_t block) { return {0, 10 * block + 1}; }

  std::vector<std::string> told(const Programmes& programmes) {
    const Day today = dayOf(2027, 4, 6);
    const SeasonSpan seasons = plannedSeasons(orchard, today);
    const Trade trade{tables, programmes, forecaster};
    const MovedForecaster unmoved;
    const Trade before{tables, programmes, unmoved};
    orchard.tasks =
        reconcile(orchard, planTasks(orchard, before, seasons, today), seasons).tasks;
    const Plan plan = planTasks(orchard, trade, seasons, today);
    std::vector<std::string> sentences;
    for (const Sentence& sentence :
         sentencesOf(orchard,
                     stageShifts(outlooksOf(orchard, before, today),
                                 outlooksOf(orchard, trade, today),
                                 Season{2027},
                                 plan,
                                 reconcile(orchard, plan, seasons).differences)))
      sentences.push_back(inEnglish(sentence));
    return sentences;
  }

  Orchard orchard = [] {
    Orchard empty;
    empty.settings = northernSettings();
    return empty;
  }();
  TradeTables tables;
  MovedForecaster forecaster;
};

const Programmes& tipAndBloom() {
  static const Programmes programmes =
      programmesOf({operation("rub", atStage(53), atStage(53, 20)),
                    operation("tie", atStage(53, 3), atStage(53, 30)),
                    operation("thin", atStage(65, 14), atStage(65, 40)),
                    operation("mow", atMonth(5, 1), atMonth(6, 1))});
  return programmes;
}

TEST_F(StageShiftsTest, TellsNothingWhereNothingMoved) {
  EXPECT_THAT(told(tipAndBloom()), IsEmpty());
}

TEST_F(StageShiftsTest, TellsStageBlockDaysAndTasks) {
  forecaster.days = {{plantingIn(2), -4}};
  EXPECT_THAT(
      told(tipAndBloom()),
      ElementsAre("Green tip at Creek 2 expected 4 days earlier: 2 tasks moved.",
                  "Full bloom at Creek 2 expected 4 days earlier: 1 task moved."));
}

TEST_F(StageShiftsTest, TellsAStageThatWasSeenFromThoseThatFollow) {
  forecaster.days = {{plantingIn(2), 1}};
  forecaster.seenUpTo = stages::greenTip;
  EXPECT_THAT(
      told(tipAndBloom()),
      ElementsAre("Green tip at Creek 2 seen 9 April 2027, 1 day later than expected: "
                  "2 tasks moved.",
                  "Full bloom at Creek 2 expected 1 day later: 1 task moved."));
}

TEST_F(StageShiftsTest, TellsWhatWasSeenBeforeWhatMovedMore) {
  forecaster.days = {{plantingIn(2), 1}};
  forecaster.seenUpTo = stages::greenTip;
  const Programmes more = programmesOf({operation("rub", atStage(53), atStage(53, 20)),
                                        operation("thin", atStage(65), atStage(65, 40)),
                                        operation("pinch", atStage(65), atStage(65, 9))});
  const auto sentences = told(more);
  ASSERT_EQ(sentences.size(), 2U);
  EXPECT_THAT(sentences[0], ::testing::HasSubstr("seen"));
  EXPECT_THAT(sentences[1], ::testing::HasSubstr("2 tasks moved"));
}

TEST_F(StageShiftsTest, GathersBlocksThatMovedAlike) {
  forecaster.days = {{plantingIn(2), -4}, {plantingIn(3), -4}, {plantingIn(4), -2}};
  EXPECT_THAT(
      told(tipAndBloom()),
      ElementsAre(
          "Green tip at Creek 2, Creek 3 expected 4 days earlier: 4 tasks moved.",
          "Full bloom at Creek 2, Creek 3 expected 4 days earlier: 2 tasks moved.",
          "Green tip at Creek 4 expected 2 days earlier: 2 tasks moved."));
}

TEST_F(StageShiftsTest, KeepsManyBlocksShort) {
  const Programmes rub = programmesOf({operation("rub", atStage(53), atStage(53, 20))});
  for (std::uint64_t block = 2; block <= 5; ++block)
    forecaster.days[plantingIn(block)] = 3;
  EXPECT_THAT(
      told(rub),
      ElementsAre("Green tip in all blocks expected 3 days later: 4 tasks moved."));
  const Block ridge = testing::block(60, "Ridge", "1-10");
  orchard.blocks[ridge.id] = ridge;
  orchard.plantings[{0, 61}] = testing::planting(61, ridge, dayOf(2024, 4, 10));
  EXPECT_THAT(told(rub),
              ElementsAre("Green tip at Creek 2, Creek 3 and 2 more expected 3 days "
                          "later: 4 tasks moved."));
}

TEST_F(StageShiftsTest, CountsWorkThatWaitsForOtherWorkUnderTheStageBehindIt) {
  forecaster.days = {{plantingIn(3), -5}};
  const Programmes chain =
      programmesOf({operation("rub", atMonth(4, 1), atStage(54)),
                    operation("strip", afterJob("rub", 7), afterJob("rub", 14)),
                    operation("look", afterJob("strip", 3), afterJob("strip", 9))});
  EXPECT_THAT(
      told(chain),
      ElementsAre("Half-inch green at Creek 3 expected 5 days earlier: 3 tasks moved."));
}

TEST_F(StageShiftsTest, LeavesOutWhatAPersonMoved) {
  forecaster.days = {{plantingIn(2), -4}};
  const TaskKey key{plantingIn(2), "rub", Season{2027}, 1};
  TaskMark mark;
  mark.task = key;
  mark.moved = DaySpan{dayOf(2027, 4, 2), dayOf(2027, 4, 9)};
  orchard.marks[key] = mark;
  const Programmes rub = programmesOf({operation("rub", atStage(53), atStage(53, 20))});
  EXPECT_THAT(told(rub), IsEmpty());
}

}  // namespace
}  // namespace topwire
