#include "core/sheet/work_sheet.h"

#include "tests/support/builders.h"
#include "tests/support/operations.h"
#include "tests/support/weather.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class WorkSheetTest : public ::testing::Test {
protected:
  WorkSheet make(const Programmes& programmes, IsoWeek week = {2027, 14}) const {
    const FixedForecaster forecaster;
    const Trade trade{tables, programmes, forecaster};
    const Plan plan =
        planTasks(orchard, trade, {Season{2026}, Season{2028}}, dayOf(2027, 4, 6));
    return workSheet(orchard, trade, plan, week, dayOf(2027, 4, 6));
  }

  Operation inApril(const std::string& id, unsigned from, unsigned to) const {
    return operation(id, atMonth(4, from), atMonth(4, to));
  }

  void tick(const std::string& id, const std::string& rows, Day day, int percent = 100) {
    Tick made;
    made.id = {9, ++last};
    made.task = {orchard.plantings.begin()->first, id, Season{2027}, 1};
    made.rows = parseRows(rows).rows;
    made.percent = percent;
    made.day = day;
    orchard.ticks[made.id] = made;
  }

  std::vector<std::string> jobsOf(const WorkSheet& sheet) const {
    std::vector<std::string> ids;
    for (const SheetBlock& block : sheet.blocks)
      for (const SheetJob& job : block.jobs)
        ids.push_back(block.name + '/' + job.operation);
    return ids;
  }

  Orchard orchard = orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
  TradeTables tables;
  std::uint64_t last = 0;
};

TEST_F(WorkSheetTest, HoldsWhatIsOpenSomeDayOfTheWeek) {
  // Week 14 of 2027 is 5 to 11 April.
  const Programmes programmes = programmesOf({inApril("before", 1, 4),
                                              inApril("touches", 11, 20),
                                              inApril("whole", 1, 30),
                                              inApril("after", 12, 20)});
  const WorkSheet sheet = make(programmes);
  EXPECT_EQ(isoText(sheet.days.first), "2027-04-05");
  EXPECT_THAT(jobsOf(sheet), ElementsAre("Creek/before", "Creek/touches", "Creek/whole"));
  EXPECT_EQ(sheet.blocks[0].jobs[0].state, TaskState::late);
}

TEST_F(WorkSheetTest, KeepsFinishedWorkOfThisWeekOnly) {
  tick("lastWeek", "1-10", dayOf(2027, 4, 2));
  tick("thisWeek", "1-10", dayOf(2027, 4, 5));
  EXPECT_THAT(jobsOf(make(programmesOf(
                  {inApril("lastWeek", 1, 20), inApril("thisWeek", 1, 20)}))),
              ElementsAre("Creek/thisWeek"));
}

TEST_F(WorkSheetTest, ShowsEachRowAndWhatIsLeft) {
  tick("rub", "1-3", dayOf(2027, 4, 5));
  tick("rub", "4", dayOf(2027, 4, 5), 50);
  Operation rub = inApril("rub", 1, 20);
  rub.materials = {{"soft tie", {"soft ties", "amarres"}, 1.5}};
  const SheetJob job = make(programmesOf({rub})).blocks.at(0).jobs.at(0);
  ASSERT_THAT(job.rows, SizeIs(10));
  EXPECT_EQ(job.rows[2], (SheetRow{3, RowCell::done}));
  EXPECT_EQ(job.rows[3], (SheetRow{4, RowCell::partly}));
  EXPECT_EQ(job.rows[4], (SheetRow{5, RowCell::toDo}));
  EXPECT_DOUBLE_EQ(job.treesLeft, 650);
  EXPECT_DOUBLE_EQ(job.hoursLeft, 6.5);
  EXPECT_EQ(job.materials.at(0).count, 975);
}

TEST_F(WorkSheetTest, PutsWorkAfterTheWorkItWaitsFor) {
  const WorkSheet sheet = make(programmesOf(
      {operation("tie", afterJob("wire", -25), atMonth(4, 9)), inApril("wire", 1, 30)}));
  EXPECT_THAT(jobsOf(sheet), ElementsAre("Creek/wire", "Creek/tie"));
}

TEST_F(WorkSheetTest, PutsTheBlockWithTheNearestClosingFirst) {
  const Block ridge = block(11, "Ridge", "1-4");
  orchard.blocks[ridge.id] = ridge;
  Planting fuji = planting(12, ridge, dayOf(2026, 4, 1));
  orchard.plantings[fuji.id] = fuji;
  Operation second = inApril("secondLeafJob", 1, 8);
  second.leaves = {{2, 2}};
  const WorkSheet sheet = make(programmesOf({inApril("all", 1, 20), second}));
  EXPECT_THAT(jobsOf(sheet),
              ElementsAre("Ridge/secondLeafJob", "Ridge/all", "Creek/all"));
}

TEST_F(WorkSheetTest, PointsARepeatedJobToItsFirst) {
  const Block ridge = block(11, "Ridge", "1-4");
  orchard.blocks[ridge.id] = ridge;
  orchard.plantings[{0, 12}] = planting(12, ridge, dayOf(2026, 4, 1));
  Operation rub = inApril("rub", 1, 20);
  rub.how = {{"Rub.", "Frotar."}};
  const WorkSheet sheet = make(programmesOf({rub}));
  EXPECT_EQ(sheet.blocks.at(0).jobs.at(0).sameAs, std::nullopt);
  EXPECT_EQ(sheet.blocks.at(1).jobs.at(0).sameAs, 1);
  EXPECT_EQ(sheet.blocks.at(1).jobs.at(0).number, 2);
}

TEST_F(WorkSheetTest, IsEmptyWhereNothingIsDue) {
  EXPECT_THAT(make(programmesOf({})).blocks, IsEmpty());
}

TEST_F(WorkSheetTest, TakesWeek53AcrossNewYear) {
  const WorkSheet sheet = make(
      programmesOf({operation("guards", atMonth(12, 30), atMonth(12, 31))}), {2026, 53});
  EXPECT_EQ(isoText(sheet.days.first), "2026-12-28");
  EXPECT_EQ(isoText(sheet.days.last), "2027-01-03");
}

// FixedForecaster: 6 to 11 April lie between silver and half-inch green.
TEST_F(WorkSheetTest, TellsDaysToComeWhoseWeatherLetsJobsWait) {
  Operation rub = inApril("rub", 1, 30);
  rub.avoid = {Avoid::wet, Avoid::frost};
  Operation look = inApril("look", 1, 8);
  Operation strip = inApril("strip", 9, 30);
  strip.avoid = {Avoid::wet};
  for (const unsigned day : {5U, 7U, 9U})
    put(orchard, dayOf(2027, 4, day), {4, 12, 3.5, WeatherSource::forecast});
  put(orchard, dayOf(2027, 4, 8), {-1, 12, 0, WeatherSource::forecast});
  put(orchard, dayOf(2027, 4, 11), {12, 33, 0, WeatherSource::forecast});
  const WorkSheet sheet = make(programmesOf({rub, look, strip}));
  std::vector<std::string> told;
  for (const SheetCaution& caution : sheet.cautions)
    told.push_back(isoText(caution.day) + ' ' + inEnglish(caution.sentence) + ' '
                   + rowsText(caution.jobs));
  EXPECT_THAT(told,
              ElementsAre("2027-04-07 Rain, 3.5 mm. 2",
                          "2027-04-08 Frosty morning, down to -1.0 °C. 2",
                          "2027-04-09 Rain, 3.5 mm. 2-3",
                          "2027-04-11 Hot, up to 33.0 °C. "));
  EXPECT_THAT(make(programmesOf({rub}), {2027, 13}).cautions, IsEmpty());
}

}  // namespace
}  // namespace topwire
