#include "core/labour/learned_paces.h"

#include "core/labour/hours_figure.h"
#include "tests/support/builders.h"
#include "tests/support/operations.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using namespace topwire::testing;
using ::testing::IsEmpty;
using ::testing::SizeIs;

/// Ten rows of 100 trees, in their third leaf in 2027.
class LearnedPacesTest : public ::testing::Test {
protected:
  LearnedPacesTest() {
    Operation tie = operation("tie", atStage(53), atStage(57));
    tie.secondsPerTree = {{1, 24}, {3, 36}};
    Operation order = operation("order", atPlanting(-6), atPlanting(-5));
    order.secondsPerTree = {{1, 0}};
    Operation hang =
        operation("hang", atMonth(4, 1), atMonth(5, 1), {{5, LeafRange::open}});
    programmes = programmesOf({tie, order, hang});
  }

  /// Eight rows of 100 trees.
  void tick(const char* crew, int minutes, int season = 2027, int pass = 1) {
    Tick made;
    made.id = {0, ++last};
    made.task = {orchard.plantings.begin()->first, "tie", Season{season}, pass};
    made.rows = RowSet::range(1, 8);
    made.percent = 100;
    made.minutes = minutes;
    made.by = crew;
    made.day = dayOf(season, 4, 12);
    orchard.ticks[made.id] = made;
  }

  std::vector<LearnedPace> paces() const {
    return learnedPaces(orchard, programmes, Season{2027});
  }

  Orchard orchard = orchardOfOne(northernSettings(), dayOf(2025, 4, 10));
  Programmes programmes;
  std::uint64_t last = 0;
};

TEST_F(LearnedPacesTest, WithoutTicksTellTheProgrammesFigures) {
  const auto all = paces();
  ASSERT_THAT(all, SizeIs(1)) << "hanging is for older trees, an order has no trees";
  EXPECT_EQ(all[0].operation, "tie");
  EXPECT_EQ(all[0].firstLeaf, 3);
  EXPECT_EQ(all[0].lastLeaf, std::nullopt);
  EXPECT_EQ(all[0].rate.programme, 36);
  EXPECT_FALSE(all[0].isLearned());
  EXPECT_THAT(all[0].crews, IsEmpty());
}

TEST_F(LearnedPacesTest, TellEachCrewsOwn) {
  tick("Wren", 8 * 80);            // 48 seconds a tree
  tick("Heron", 8 * 60, 2027, 2);  // 36
  const auto all = paces();
  ASSERT_THAT(all, SizeIs(1));
  EXPECT_TRUE(all[0].isLearned());
  EXPECT_DOUBLE_EQ(all[0].rate.hours, 8 * 140 / 60.0);
  ASSERT_THAT(all[0].crews, SizeIs(2));
  EXPECT_EQ(all[0].crews[0].crew, "Heron");
  EXPECT_EQ(all[0].crews[1].crew, "Wren");
  EXPECT_LT(all[0].crews[0].rate.seconds(), all[0].rate.seconds());
  EXPECT_GT(all[0].crews[1].rate.seconds(), all[0].rate.seconds());
  EXPECT_EQ(all[0].crews[1].rate.programme, all[0].rate.seconds())
      << "a crew's own starts from the pace of all";
}

TEST_F(LearnedPacesTest, KeepWhatWasLearnedOnTreesOfAnotherLeaf) {
  tick("Heron", 8 * 60, 2025);
  const auto all = paces();
  ASSERT_THAT(all, SizeIs(2));
  EXPECT_EQ(all[0].firstLeaf, 1);
  EXPECT_EQ(all[0].lastLeaf, 2);
  EXPECT_TRUE(all[0].isLearned());
  EXPECT_FALSE(all[1].isLearned());
}

TEST(HoursFigure, NeverMakesNothingOfSomeWork) {
  EXPECT_EQ(hoursFigure(0), (Figure{0, 1}));
  EXPECT_EQ(hoursFigure(8.5), (Figure{8.5, 1}));
  EXPECT_EQ(hoursFigure(0.04), (Figure{0.04, 2}));
  EXPECT_EQ(hoursFigure(0.0001), (Figure{0.01, 2}));
}

}  // namespace
}  // namespace topwire
