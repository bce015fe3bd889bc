#include "app/models/lane_layout.h"

#include <gmock/gmock.h>

#include <random>

namespace topwire {

namespace {

constexpr double least = 100;
constexpr double gap = 4;

TEST(LaneLayout, hoursLieEvenlyAlongTheLine) {
  const DayAxis axis{390, 870};
  EXPECT_DOUBLE_EQ(axis.placeOf(390, 480), 0);
  EXPECT_DOUBLE_EQ(axis.placeOf(510, 480), 120);
  EXPECT_DOUBLE_EQ(axis.placeOf(870, 480), 480);
  EXPECT_DOUBLE_EQ(axis.placeOf(900, 480), 480) << "work after hours stays on the page";
}

TEST(LaneLayout, aLineHoldsAsManyAsAreNotTooNarrow) {
  EXPECT_EQ(mostInLine(100, least, gap), 1);
  EXPECT_EQ(mostInLine(203, least, gap), 1);
  EXPECT_EQ(mostInLine(204, least, gap), 2);
  EXPECT_EQ(mostInLine(40, least, gap), 1) << "one at least";
}

TEST(LaneLayout, cardsWithRoomStandWhereTheirHoursAre) {
  const auto cards = placeCards({{0, 200}, {220, 600}}, 600, least, gap);
  ASSERT_EQ(cards.size(), 2U);
  EXPECT_DOUBLE_EQ(cards[0].left, 0);
  EXPECT_DOUBLE_EQ(cards[0].width, 200);
  EXPECT_DOUBLE_EQ(cards[1].left, 220);
  EXPECT_DOUBLE_EQ(cards[1].width, 380);
}

TEST(LaneLayout, aShortJobTakesItsRoomFromTheLongOneAfterIt) {
  const auto cards = placeCards({{0, 30}, {40, 600}}, 600, least, gap);
  EXPECT_DOUBLE_EQ(cards[0].width, least);
  EXPECT_DOUBLE_EQ(cards[1].left, least + gap);
  EXPECT_DOUBLE_EQ(cards[1].left + cards[1].width, 600) << "its end stays";
}

TEST(LaneLayout, aShortJobAtTheEndTakesItsRoomFromTheOneBefore) {
  const auto cards = placeCards({{0, 560}, {580, 600}}, 600, least, gap);
  EXPECT_DOUBLE_EQ(cards[1].left, 500);
  EXPECT_DOUBLE_EQ(cards[0].width, 496);
}

TEST(LaneLayout, tooManyForOneLineGoOnInTheNext) {
  std::vector<LaneStretch> stretches;
  for (int i = 0; i < 7; ++i) stretches.push_back({i * 80.0, i * 80.0 + 75});
  const auto cards = placeCards(stretches, 600, least, gap);
  EXPECT_EQ(cards[3].line, 0);
  EXPECT_EQ(cards[4].line, 1) << "shared out evenly";
  EXPECT_EQ(cards[6].line, 1);
}

/// Whatever the jobs: nothing narrower than can be read, nothing over its neighbour,
/// nothing off the lane, and the order kept.
TEST(LaneLayout, noCardStandsOverAnother) {
  std::mt19937 random{7};  // NOLINT(cert-msc51-cpp): the same cases each time
  for (int round = 0; round < 2000; ++round) {
    const double width = 300 + static_cast<double>(random() % 700);
    std::vector<LaneStretch> stretches;
    double at = 0;
    const auto count = random() % 9;
    for (unsigned i = 0; i < count && at < width; ++i) {
      const double from = at + static_cast<double>(random() % 60);
      at = std::min(width, from + 5 + static_cast<double>(random() % 250));
      stretches.push_back({std::min(from, width), at});
    }
    const auto cards = placeCards(stretches, width, least, gap);
    ASSERT_EQ(cards.size(), stretches.size());
    for (std::size_t i = 0; i < cards.size(); ++i) {
      ASSERT_GE(cards[i].width, least - 1e-9);
      ASSERT_GE(cards[i].left, 0);
      ASSERT_LE(cards[i].left + cards[i].width, width + 1e-9);
      if (i == 0) continue;
      ASSERT_GE(cards[i].line, cards[i - 1].line);
      if (cards[i].line != cards[i - 1].line) continue;
      ASSERT_GE(cards[i].left, cards[i - 1].left + cards[i - 1].width + gap - 1e-9);
    }
  }
}

}  // namespace

}  // namespace topwire
