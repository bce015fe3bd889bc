#include "core/closing/labour_by_month.h"
#include "core/closing/next_season.h"
#include "core/edit/workbench.h"
#include "tests/core/deeds_support.h"
#include "tests/support/builders.h"
#include "tests/support/memory_journal.h"
#include "tests/support/operations.h"

#include <gmock/gmock.h>

#include <numeric>

namespace topwire {

namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing::said;

struct Closed {
  Orchard orchard;
  Day today = dayOf(2027, 11, 5);
  SeasonProposal proposal{Season{2027}, {}, {}};
  std::uint64_t firstId = 500;

  explicit Closed(const Settings& settings = testing::northernSettings(),
                  Day planted = dayOf(2025, 4, 10))
      : orchard(testing::orchardOfOne(settings, planted)) {}

  SeasonTarget& target() {
    SeasonTarget made;
    made.of = {{0, 2}, Season{2028}};
    return proposal.targets.emplace_back(made);
  }

  ProposedReplant& replant(int trees, const std::string& rows = "1-10") {
    const Day planted = replantingDay(Season{2027}, orchard.settings.hemisphere());
    return proposal.replants.emplace_back(
        ProposedReplant{{0, 2}, parseRows(rows).rows, trees, planted});
  }

  Checked<Change> close() const {
    IdSource ids = IdSource::countingFrom(firstId);
    return closeSeason(orchard, testing::shippedTables(), proposal, "Ada", today, ids);
  }

  Orchard after() const { return testing::after(orchard, close()); }
};

std::vector<const Planting*> replantsOf(const Orchard& orchard) {
  std::vector<const Planting*> replants;
  for (const auto& [id, planting] : orchard.plantings)
    if (planting.kind == PlantingKind::replant) replants.push_back(&planting);
  return replants;
}

TEST(CloseSeason, settlesTargetsReplantsAndTheRecordInOneChange) {
  Closed closed;
  SeasonTarget& target = closed.target();
  target.vigour = Vigour::strong;
  target.vigourReason = "grew 30 in";
  target.fruitFrom = 20;
  target.fruitTo = 30;
  closed.replant(14, "3-4");
  const Orchard after = closed.after();
  EXPECT_EQ(after.targets.at({{0, 2}, Season{2028}}), target);
  EXPECT_EQ(after.closes.at(Season{2027}),
            (SeasonClose{Season{2027}, closed.today, "Ada"}));
  ASSERT_EQ(replantsOf(after).size(), 1U);
  const Planting& replant = *replantsOf(after)[0];
  EXPECT_EQ(replant.code, "creek-gala");
  EXPECT_EQ(replant.cultivar, "Gala");
  EXPECT_EQ(replant.planted, dayOf(2028, 4, 1));
  EXPECT_EQ(treesIn(after, replant), 14);
  EXPECT_EQ(treesIn(after, after.plantings.at({0, 2})), 1000 - 14);
  EXPECT_EQ(testing::nameOf(closed.close()), "Season 2027 closed");
}

TEST(CloseSeason, isUndoneWhole) {
  Closed closed;
  closed.target().fruitFrom = 20;
  closed.replant(14);
  testing::MemoryJournal journal;
  Workbench bench{closed.orchard, journal, [] { return 0; }, IdSource::countingFrom(9)};
  ASSERT_TRUE(bench.perform(*closed.close()));
  EXPECT_NE(bench.orchard(), closed.orchard);
  ASSERT_TRUE(bench.undo());
  EXPECT_EQ(bench.orchard(), closed.orchard);
  ASSERT_TRUE(bench.redo());
  EXPECT_EQ(bench.orchard(), closed.after());
}

TEST(CloseSeason, goesThroughTheJournal) {
  Closed closed;
  closed.target().vigour = Vigour::weak;
  closed.replant(3);
  const Checked<Change> change = closed.close();
  ASSERT_TRUE(change.has_value());
  const auto read = changeFromJson(toJson(*change));
  ASSERT_TRUE(read.has_value());
  EXPECT_EQ(*read, *change);
}

TEST(CloseSeason, writesNoTargetThatSaysNothing) {
  Closed closed;
  closed.target();
  EXPECT_THAT(closed.after().targets, IsEmpty());
}

TEST(CloseSeason, waitsForTheLeavesToFall) {
  Closed closed;
  closed.today = dayOf(2027, 9, 30);
  EXPECT_THAT(said(closed.close()),
              ElementsAre("season: Season 2027 can be closed from 1 October 2027 on; "
                          "until then its work goes on."));
  closed.today = dayOf(2027, 10, 1);
  EXPECT_THAT(said(closed.close()), IsEmpty());
  closed.today = dayOf(2028, 2, 29);
  EXPECT_THAT(said(closed.close()), IsEmpty());
}

TEST(CloseSeason, happensOnce) {
  Closed closed;
  closed.orchard = closed.after();
  EXPECT_THAT(said(closed.close()),
              ElementsAre("season: Season 2027 was closed on 5 November 2027 already."));
}

TEST(CloseSeason, refusesWhatLiesBeforeTheRecords) {
  Closed closed;
  closed.orchard.settings.recordsFrom = dayOf(2028, 1, 1);
  EXPECT_THAT(said(closed.close()), ElementsAre(HasSubstr("nothing to close")));
}

TEST(CloseSeason, namesEveryNumberOutOfRange) {
  Closed closed;
  SeasonTarget& target = closed.target();
  target.fruitFrom = 40;
  target.fruitTo = 30;
  closed.replant(1001, "1-11").planted = dayOf(2028, 9, 1);
  EXPECT_THAT(said(closed.close()),
              ElementsAre("p2.fruit: 40 fruit at least and 30 at most; swap them.",
                          "p2.trees: 1001 trees can't be missing of 1000; check the "
                          "count.",
                          "p2.rows: Replants stand in the planting's own rows: 1-10.",
                          "p2.planted: Replants for season 2028 are planted between 1 "
                          "September 2027 and 31 August 2028; choose another day."));
  closed.proposal.targets[0].fruitTo = 3000;
  EXPECT_THAT(said(closed.close())[0], HasSubstr("between 0 and 2000"));
}

TEST(CloseSeason, takesTreesMissingOfAReplantOffIt) {
  Closed closed;
  closed.replant(14, "3-4");
  Closed next{closed};
  next.orchard = closed.after();
  next.firstId = 700;
  const PlantingId first = replantsOf(next.orchard)[0]->id;
  next.orchard.closes.clear();
  next.proposal.replants[0].host = first;
  next.proposal.replants[0].trees = 5;
  const Orchard after = next.after();
  EXPECT_EQ(treesIn(after, after.plantings.at(first)), 9);
  EXPECT_EQ(replantsOf(after).size(), 2U);
  EXPECT_EQ(treesIn(after, after.plantings.at({0, 2})), 986) << "no gap is filled twice";
  next.proposal.replants[0].trees = 14;
  EXPECT_THAT(said(next.close()), ElementsAre(HasSubstr("can't be missing")));
}

TEST(CloseSeason, namesReplantsOfOneCultivarApart) {
  Closed closed;
  closed.replant(4, "1-2");
  closed.replant(6, "5");
  const Orchard after = closed.after();
  std::vector<std::string> codes;
  for (const Planting* replant : replantsOf(after)) codes.push_back(replant->code);
  EXPECT_THAT(codes, ElementsAre("creek-gala", "creek-gala-2"));
}

struct ClosingDays {
  const char* name;
  Settings (*settings)();
  Day today;
  int season;
  bool allowed;
  Day replanted;
};

class WhenClosed : public ::testing::TestWithParam<ClosingDays> {};

TEST_P(WhenClosed, theSeasonAndItsSpringAreFound) {
  const auto& [name, settings, today, season, allowed, replanted] = GetParam();
  Closed closed{settings()};
  closed.orchard.settings.recordsFrom = dayOf(2027, 1, 1);
  if (season > 2027)
    closed.orchard.closes[Season{2027}] = {Season{2027}, dayOf(2028, 5, 1), ""};
  EXPECT_EQ(seasonToClose(closed.orchard, today), Season{season});
  EXPECT_EQ(replantingDay(Season{season}, closed.orchard.settings.hemisphere()),
            replanted);
  closed.proposal.season = Season{season};
  closed.today = today;
  EXPECT_EQ(closed.close().has_value(), allowed);
}

INSTANTIATE_TEST_SUITE_P(BothHemispheres,
                         WhenClosed,
                         ::testing::Values(ClosingDays{"autumn",
                                                       testing::northernSettings,
                                                       dayOf(2027, 11, 5),
                                                       2027,
                                                       true,
                                                       dayOf(2028, 4, 1)},
                                           ClosingDays{"newYear",
                                                       testing::northernSettings,
                                                       dayOf(2028, 1, 1),
                                                       2027,
                                                       true,
                                                       dayOf(2028, 4, 1)},
                                           ClosingDays{"leapDay",
                                                       testing::northernSettings,
                                                       dayOf(2028, 2, 29),
                                                       2027,
                                                       true,
                                                       dayOf(2028, 4, 1)},
                                           ClosingDays{"nextSummerOnceClosed",
                                                       testing::northernSettings,
                                                       dayOf(2028, 7, 1),
                                                       2028,
                                                       false,
                                                       dayOf(2029, 4, 1)},
                                           ClosingDays{"southernAutumn",
                                                       testing::southernSettings,
                                                       dayOf(2028, 4, 1),
                                                       2027,
                                                       true,
                                                       dayOf(2028, 10, 1)},
                                           ClosingDays{"southernLeapDay",
                                                       testing::southernSettings,
                                                       dayOf(2028, 2, 29),
                                                       2026,
                                                       true,
                                                       dayOf(2027, 10, 1)},
                                           ClosingDays{"southernWinter",
                                                       testing::southernSettings,
                                                       dayOf(2028, 8, 2),
                                                       2027,
                                                       true,
                                                       dayOf(2028, 10, 1)}),
                         [](const auto& row) { return row.param.name; });

TEST(CloseSeason, givesTheNextLeafToPlantingsOfNewYearsDay) {
  Closed south{testing::southernSettings(), dayOf(2028, 1, 1)};
  south.today = dayOf(2028, 6, 1);
  testing::FixedForecaster forecaster;
  const Programmes programmes = testing::programmesOf({});
  const Trade trade{testing::shippedTables(), programmes, forecaster};
  const auto leaves = nextLeaves(south.orchard, trade, Season{2027}, south.today);
  ASSERT_EQ(leaves.size(), 1U);
  EXPECT_EQ(leaves[0].leaf, 2) << "set in leaf, their first is the season they came in";
}

TEST(CloseSeason, proposesTheNextLeafsFruitWithItsReasons) {
  const Closed closed;
  testing::FixedForecaster forecaster;
  const Programmes programmes = testing::programmesOf({});
  const Trade trade{testing::shippedTables(), programmes, forecaster};
  const auto leaves = nextLeaves(closed.orchard, trade, Season{2027}, closed.today);
  ASSERT_EQ(leaves.size(), 1U);
  EXPECT_EQ(leaves[0].leaf, 4);
  ASSERT_TRUE(leaves[0].fruitFrom && leaves[0].fruitTo);
  EXPECT_GT(*leaves[0].fruitTo, *leaves[0].fruitFrom);
  EXPECT_THAT(leaves[0].fruitReasons, ::testing::Not(IsEmpty()));
  const SeasonReview review{Season{2027}, {}};
  const SeasonProposal proposal = proposalOf(closed.orchard, review, leaves);
  EXPECT_EQ(proposal.targets.at(0).fruitTo, leaves[0].fruitTo);
  EXPECT_EQ(proposal.targets.at(0).vigour, std::nullopt) << "nothing speaks for another";
}

/// Two jobs of ten worker-hours: one in May, one across New Year.
struct Labour {
  Closed closed;
  Programmes programmes = testing::programmesOf(
      {testing::operation("tie", testing::atMonth(5, 1), testing::atMonth(5, 31)),
       testing::operation(
           "prune", testing::atMonth(12, 22, -1), testing::atMonth(1, 10))});
  testing::FixedForecaster forecaster;

  Trade trade() const { return {testing::shippedTables(), programmes, forecaster}; }

  std::vector<MonthLabour> months() const {
    const Orchard& orchard = closed.orchard;
    const Plan plan =
        planTasks(orchard, trade(), plannedSeasons(orchard, closed.today), closed.today);
    return labourByMonth(orchard, plan, trade(), closed.proposal, closed.today);
  }
};

TEST(LabourByMonth, spreadsWorkOverItsDays) {
  Labour labour;
  const auto months = labour.months();
  ASSERT_EQ(months.size(), 12U);
  EXPECT_EQ(months[0].month, 1U);
  EXPECT_NEAR(months[4].planned, 10, 1e-9);
  EXPECT_NEAR(months[0].planned, 5, 1e-9);
  EXPECT_NEAR(months[11].planned, 5, 1e-9) << "the December before, under its name";
  EXPECT_NEAR(months[4].coming, 10, 1e-9);
}

TEST(LabourByMonth, putsNotedHoursOnTheirDays) {
  Labour labour;
  Tick tick;
  tick.id = {0, 1};
  tick.task = {{0, 2}, "tie", Season{2027}, 1};
  tick.rows = RowSet::range(1, 10);
  tick.minutes = 660;
  tick.day = dayOf(2027, 6, 2);
  labour.closed.orchard.ticks[tick.id] = tick;
  EXPECT_DOUBLE_EQ(labour.months()[5].noted, 11);
}

TEST(LabourByMonth, plansTheReplantsIn) {
  Labour labour;
  labour.closed.replant(50);
  const auto months = labour.months();
  EXPECT_NEAR(months[4].coming, 10, 1e-9)
      << "the gaps' trees are tied, and no tree of a gap twice";
  EXPECT_NEAR(months[4].planned, 10, 1e-9);
}

TEST(LabourByMonth, beginsInJulyInTheSouth) {
  Labour labour;
  labour.closed = Closed{testing::southernSettings()};
  labour.closed.today = dayOf(2028, 5, 1);
  const auto months = labour.months();
  EXPECT_EQ(months[0].month, 7U);
  EXPECT_EQ(months[4].month, 11U);
  EXPECT_NEAR(months[4].planned, 10 * 30.0 / 31, 0.4);
}

}  // namespace

}  // namespace topwire
