#include "core/planning/explain.h"

#include "core/phenology/weather_forecaster.h"
#include "tests/support/builders.h"
#include "tests/support/operations.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::Contains;
using ::testing::ContainsRegex;
using ::testing::HasSubstr;
using ::testing::Not;

class ExplainTest : public ::testing::Test {
protected:
  std::vector<std::string> why(const Programmes& programmes,
                               std::size_t index = 0) const {
    const FixedForecaster forecaster;
    const Trade trade{tables, programmes, forecaster};
    const Plan plan =
        planTasks(orchard, trade, {Season{2027}, Season{2027}}, dayOf(2027, 4, 6));
    std::vector<std::string> sentences;
    for (const Sentence& sentence : explain(orchard, trade, plan.tasks.at(index)))
      sentences.push_back(inEnglish(sentence));
    return sentences;
  }

  Orchard orchard = orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
  TradeTables tables;
};

TEST_F(ExplainTest, NamesStageOffsetAndSpan) {
  const auto told =
      why(programmesOf({operation("rub", atStage(53, 3), atStage(57, -2))}));
  EXPECT_THAT(told, Contains("Opens 11 April 2027: 3 days after green tip."));
  EXPECT_THAT(told, Contains("Closes 1 May 2027: 2 days before pink."));
  EXPECT_THAT(told,
              Contains("Expected on 8 April 2027: green tip; eight years in ten "
                       "between 3 April 2027 and 13 April 2027."));
}

TEST_F(ExplainTest, TellsLabourFromTreesAndSeconds) {
  EXPECT_THAT(why(programmesOf({operation("rub", atStage(53), atStage(57))})),
              Contains("Labour: 1000 trees at 36 seconds each, 10.0 worker-hours."));
}

TEST_F(ExplainTest, TellsTheCutOffWithItsReason) {
  Operation flowers = operation("flowers", atStage(57), atStage(60));
  flowers.cutOff = CutOff{atStage(65, 2), {"Open flowers let blight in.", "-"}};
  const auto told = why(programmesOf({flowers}));
  EXPECT_THAT(
      told,
      Contains("No longer worth doing after 12 May 2027: 2 days after full bloom."));
  EXPECT_THAT(told, Contains("Open flowers let blight in."));
}

TEST_F(ExplainTest, TellsTheEarlyEdgeWithItsSpan) {
  Operation flowers = operation("flowers", atStage(54), atStage(60));
  flowers.cutOff = CutOff{atStage(69), {"No flower is left.", "-"}};
  const auto told = why(programmesOf({flowers}));
  EXPECT_THAT(told, Contains("Closes 2 May 2027: ahead of first bloom."));
  EXPECT_THAT(told,
              Contains("Bloom may come early: of the span from 2 May 2027 to 12 May 2027 "
                       "the early edge is taken, so that it is done before the first "
                       "flowers open in nine seasons of ten."));
  flowers.opens = atStage(57);
  EXPECT_THAT(why(programmesOf({flowers})),
              Contains("Bloom may come early, but the early edge of the span from 2 May "
                       "2027 to 12 May 2027 lies before the middle of the window, so it "
                       "is held to the middle, 5 May 2027."));
}

TEST_F(ExplainTest, TellsTheEarlyEdgeOnceForClosingAndCutOff) {
  Operation flowers = operation("flowers", atMonth(4, 20), atMonth(5, 20));
  flowers.cutOff = CutOff{atStage(65), {"Open flowers let blight in.", "-"}};
  const auto told = why(programmesOf({flowers}));
  EXPECT_THAT(told, Contains("Closes 5 May 2027: ahead of full bloom."));
  EXPECT_THAT(told,
              Contains("No longer worth doing after 5 May 2027: ahead of full bloom."));
  EXPECT_EQ(std::ranges::count(
                told,
                "Bloom may come early: of the span from 5 May 2027 to 15 May 2027 the "
                "early edge is taken, so that it is done before full bloom in nine "
                "seasons of ten."),
            1);
}

TEST_F(ExplainTest, TellsVisitsOfARepeat) {
  Operation tie = operation("tie", atMonth(6, 1), atMonth(9, 1));
  tie.repeat = Repeat{{28, 21, 14}, {}, {}};
  const auto told = why(programmesOf({tie}), 1);
  EXPECT_THAT(told, Contains("Visit 2 of one every 21 days."));
  EXPECT_THAT(told, Contains("After 2 August 2027 the next visit takes its place."));
}

TEST_F(ExplainTest, TellsWhatItWaitsFor) {
  const auto told =
      why(programmesOf({operation("wire", atMonth(4, 1), atMonth(4, 30)),
                        operation("tie", afterJob("wire", 1), afterJob("wire", 21))}),
          1);
  EXPECT_THAT(told, Contains("Opens 1 May 2027: 1 day after \u201cDo wire\u201d."));
  EXPECT_THAT(told, Contains(HasSubstr("not finished; its closing, 30 April 2027")));
}

TEST_F(ExplainTest, TellsWhoseWordAVigourClassIs) {
  const Programmes rub = programmesOf({operation("rub", atStage(53), atStage(57))});
  EXPECT_THAT(why(rub), Contains(HasSubstr("Vigour class: moderate, from Gala")));
  orchard.plantings.begin()->second.vigour = Vigour::strong;
  EXPECT_THAT(why(rub), Contains("Vigour class: strong, by the grower's word."));
}

/// The heat behind an edge, as told of a planting of that orchard.
std::string heatTold(const Orchard& orchard, Season season, Day today) {
  const WeatherForecaster forecaster{shippedTables()};
  const Programmes rub = programmesOf({operation("rub", atStage(57), atStage(60))});
  const Trade trade{shippedTables(), rub, forecaster};
  const Plan plan = planTasks(orchard, trade, {season, season}, today);
  for (const Sentence& sentence : explain(orchard, trade, plan.tasks.at(0)))
    if (inEnglish(sentence).starts_with("Heat:")) return inEnglish(sentence);
  return {};
}

TEST_F(ExplainTest, TellsUntilWhenHeatCountsInPart) {
  EXPECT_THAT(heatTold(orchard, {2027}, dayOf(2027, 4, 6)),
              HasSubstr("(degree days above 3 °C, before March in part)"));
  EXPECT_THAT(heatTold(orchardOfOne(southernSettings(), dayOf(2025, 9, 10)),
                       {2027},
                       dayOf(2027, 9, 6)),
              HasSubstr("(degree days above 3 °C, before September in part)"));
}

TEST_F(ExplainTest, HeatSinceAStageSeenInSpringCountsWhole) {
  const Observation seen{
      {0, 9}, orchard.plantings.begin()->first, 53, dayOf(2027, 3, 28), {}};
  orchard.observations[seen.id] = seen;
  EXPECT_THAT(heatTold(orchard, {2027}, dayOf(2027, 4, 6)),
              HasSubstr("since 29 March 2027 (degree days above 3 °C)"));
}

TEST_F(ExplainTest, EveryShippedTaskCanSayWhyInBothLanguages) {
  const FixedForecaster forecaster;
  const Trade trade{shippedTables(), shippedProgrammes(), forecaster};
  const Plan plan =
      planTasks(orchard, trade, {Season{2022}, Season{2034}}, dayOf(2027, 4, 6));
  for (const Task& task : plan.tasks) {
    const auto told = explain(orchard, trade, task);
    ASSERT_GE(told.size(), 4U) << task.key.operation;
    for (const Sentence& sentence : told)
      EXPECT_THAT(inEnglish(sentence), Not(ContainsRegex("%[1-9]")));
  }
}

}  // namespace
}  // namespace topwire
