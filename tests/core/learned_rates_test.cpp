#include "core/labour/learned_rates.h"

#include "core/planning/explain.h"
#include "tests/support/builders.h"
#include "tests/support/operations.h"

#include <gmock/gmock.h>

#include <cmath>
#include <random>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::Contains;

/// Ten rows of 100 trees, in their third leaf in 2027; 36 seconds a tree make a row an
/// hour.
class LearnedRatesTest : public ::testing::Test {
protected:
  LearnedRatesTest() {
    Operation tie = operation("tie", atStage(53), atStage(57));
    tie.secondsPerTree = {{1, 24}, {3, 36}};
    programmes = programmesOf({tie});
  }

  TickId tick(const std::string& rows, int minutes, int percent = 100, int pass = 1) {
    Tick made;
    made.id = {0, ++last};
    made.task = {orchard.plantings.begin()->first, "tie", season, pass};
    made.rows = parseRows(rows).rows;
    made.percent = percent;
    made.minutes = minutes;
    made.day = dayOf(season.year, 4, 12);
    orchard.ticks[made.id] = made;
    return made.id;
  }

  /// A day of a worker's: eight rows a visit, each at this many minutes.
  void days(int count, int minutesPerRow) {
    for (int day = 0; day < count; ++day) tick("1-8", 8 * minutesPerRow, 100, ++passes);
  }

  LabourRate rate(int leaf = 3) const {
    const LearnedRates rates{orchard, programmes};
    const auto& [id, programme] = *programmes.begin();
    return rates.of(id, programme.operations.front(), leaf);
  }

  Orchard orchard = orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
  Programmes programmes;
  Season season{2027};
  std::uint64_t last = 0;
  int passes = 0;
};

TEST_F(LearnedRatesTest, WithoutTicksIsTheProgrammes) {
  EXPECT_EQ(rate(), (LabourRate{36, 0, 0, 0}));
  EXPECT_EQ(rate().seconds(), 36);
}

TEST_F(LearnedRatesTest, ADaysTicksMoveItHalfway) {
  days(1, 80);  // 48 seconds a tree
  EXPECT_DOUBLE_EQ(rate().own, 48);
  EXPECT_DOUBLE_EQ(rate().hours, 8 * 80 / 60.0);
  EXPECT_DOUBLE_EQ(rate().weight, 0.5);
  EXPECT_EQ(rate().seconds(), 42);
}

TEST_F(LearnedRatesTest, ManyDaysAreTheCrewsOwn) {
  days(50, 80);
  EXPECT_GT(rate().weight, 0.97);
  EXPECT_EQ(rate().seconds(), 48);
}

TEST_F(LearnedRatesTest, MoreOfTheSameMovesItFurtherTheSameWay) {
  int before = 36;
  for (int day = 0; day < 12; ++day) {
    days(1, 90);
    EXPECT_GE(rate().seconds(), before);
    before = rate().seconds();
  }
  EXPECT_LE(before, 54);
}

TEST_F(LearnedRatesTest, MoreMinutesNeverMakeAFasterCrew) {
  days(3, 70);
  const TickId last_ = tick("1-8", 1, 100, ++passes);
  double before = 0;
  for (int minutes = 1; minutes < 6000; minutes += 37) {
    orchard.ticks.at(last_).minutes = minutes;
    EXPECT_GE(rate().own, before) << minutes;
    before = rate().own;
  }
}

TEST_F(LearnedRatesTest, OneWildTickMovesLittle) {
  days(4, 60);
  tick("1-8", 60 * 80, 100, ++passes);  // a nought too many
  EXPECT_LE(rate().seconds(), 42);
  EXPECT_GE(rate().seconds(), 36);
}

TEST_F(LearnedRatesTest, OneWildTickAloneStaysWithinHalfAgain) {
  tick("1-8", 60 * 80);
  EXPECT_EQ(rate().seconds(), 54);
  orchard.ticks.begin()->second.minutes = 1;
  EXPECT_EQ(rate().seconds(), 27);
}

TEST_F(LearnedRatesTest, TicksTakenBackTeachNothing) {
  const TickId wrong = tick("1-8", 640);
  Tick back = orchard.ticks.at(wrong);
  back.id = {0, ++last};
  back.takesBack = wrong;
  back.minutes = 0;
  orchard.ticks[back.id] = back;
  EXPECT_EQ(rate(), (LabourRate{36, 0, 0, 0}));
}

TEST_F(LearnedRatesTest, CountsWhatEachTickAddsToARow) {
  tick("1-4", 120, 50);  // four half rows at an hour each whole
  tick("1-4", 120, 100);
  EXPECT_DOUBLE_EQ(rate().own, 36);
  EXPECT_DOUBLE_EQ(rate().hours, 4);
  tick("1-4", 600, 100);  // said again: no tree more
  EXPECT_DOUBLE_EQ(rate().hours, 4);
}

TEST_F(LearnedRatesTest, TicksWithoutMinutesTeachNothingButAreDone) {
  tick("1-4", 0, 50);
  EXPECT_DOUBLE_EQ(rate().hours, 0);
  tick("1-4", 120, 100);
  EXPECT_DOUBLE_EQ(rate().own, 36);
}

TEST_F(LearnedRatesTest, KeepsLeavesOfAnotherFigureApart) {
  season = Season{2026};  // the second leaf, at 24 seconds
  days(3, 60);
  EXPECT_DOUBLE_EQ(rate(2).own, 36);
  EXPECT_DOUBLE_EQ(rate(1).own, 36);  // one figure for both
  EXPECT_DOUBLE_EQ(rate(3).hours, 0);
}

TEST_F(LearnedRatesTest, LearnsFromOtherPlantingsOfTheProgramme) {
  days(3, 80);
  Planting other = orchard.plantings.begin()->second;
  other.id = {0, 77};
  other.code = "other";
  orchard.plantings[other.id] = other;
  const FixedForecaster forecaster;
  const TradeTables tables;
  const Plan plan = planTasks(
      orchard, {tables, programmes, forecaster}, {season, season}, dayOf(2027, 4, 6));
  const Task* task = plan.find({other.id, "tie", season, 1});
  ASSERT_NE(task, nullptr);
  EXPECT_EQ(task->labour.programme, 36);
  EXPECT_EQ(task->secondsPerTree, 45);
}

TEST_F(LearnedRatesTest, IsToldWithTheReasons) {
  days(3, 80);
  const FixedForecaster forecaster;
  const TradeTables tables;
  const Trade trade{tables, programmes, forecaster};
  const Plan plan = planTasks(orchard, trade, {season, season}, dayOf(2027, 4, 6));
  std::vector<std::string> told;
  for (const Sentence& sentence : explain(orchard, trade, plan.tasks.at(0)))
    told.push_back(inEnglish(sentence));
  EXPECT_THAT(told,
              Contains("Labour: 1000 trees at 45 seconds each, 12.5 worker-hours."));
  EXPECT_THAT(told,
              Contains("The programme says 36 seconds a tree, your 32 hours of ticks say "
                       "48; the ticks count for 75 % of the figure."));
}

/// Crews differ from the programme by about 40 %, one crew's days by 30 %: what is
/// planned with lies nearer the truth than the programme alone or a few ticks alone.
TEST_F(LearnedRatesTest, LiesNearerTheTruthThanEitherAlone) {
  std::mt19937 random{20270406};
  std::lognormal_distribution<double> crew{0, 0.4};
  std::lognormal_distribution<double> day{-0.045, 0.3};
  double blended = 0;
  double alone = 0;
  double programme = 0;
  for (int trial = 0; trial < 400; ++trial) {
    orchard.ticks.clear();
    const double truth = 36 * crew(random);
    double minutes = 0;
    for (int pass = 1; pass <= 2; ++pass) {
      const int taken = static_cast<int>(std::lround(800 * truth / 60 * day(random)));
      tick("1-8", taken, 100, pass);
      minutes += taken;
    }
    const auto squared = [truth](double figure) {
      return std::pow(std::log(figure / truth), 2);
    };
    blended += squared(rate().seconds());
    alone += squared(minutes * 60 / 1600);
    programme += squared(36);
  }
  EXPECT_LT(blended, alone);
  EXPECT_LT(blended, programme / 2);
}

}  // namespace
}  // namespace topwire
