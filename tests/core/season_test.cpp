#include "core/calendar/season.h"

#include <gtest/gtest.h>

namespace topwire {

namespace {

constexpr Hemisphere north = Hemisphere::north;
constexpr Hemisphere south = Hemisphere::south;

TEST(Season, HemisphereIsTheLatitudesSign) {
  EXPECT_EQ(hemisphereAt(47), north);
  EXPECT_EQ(hemisphereAt(0), north);
  EXPECT_EQ(hemisphereAt(-0.5), south);
}

TEST(Season, EachDayLiesInOneSeason) {
  struct Row {
    Day day;
    Hemisphere hemisphere;
    int season;
  };

  const Row rows[] = {{dayOf(2027, 1, 1), north, 2027},
                      {dayOf(2027, 12, 31), north, 2027},
                      {dayOf(2028, 2, 29), north, 2028},
                      {dayOf(2027, 6, 30), south, 2026},
                      {dayOf(2027, 7, 1), south, 2027},
                      {dayOf(2027, 12, 31), south, 2027},
                      {dayOf(2028, 1, 1), south, 2027},
                      {dayOf(2028, 2, 29), south, 2027},
                      {dayOf(2028, 6, 30), south, 2027}};
  for (const auto& [day, hemisphere, season] : rows)
    EXPECT_EQ(seasonOf(day, hemisphere).year, season) << isoText(day);
}

TEST(Season, SeasonsFollowOneAnotherWithoutGap) {
  for (const Hemisphere hemisphere : {north, south})
    for (Season season{2020}; season.year < 2032; season = season.plus(1)) {
      EXPECT_EQ(plusDays(lastDayOf(season, hemisphere), 1),
                firstDayOf(season.plus(1), hemisphere));
      EXPECT_EQ(seasonOf(firstDayOf(season, hemisphere), hemisphere), season);
      EXPECT_EQ(seasonOf(lastDayOf(season, hemisphere), hemisphere), season);
    }
  EXPECT_EQ(isoText(lastDayOf({2027}, south)), "2028-06-30");
}

TEST(Season, SouthernNamesShowBothYears) {
  EXPECT_EQ(nameOf({2027}, north), "2027");
  EXPECT_EQ(nameOf({2027}, south), "2027-28");
  EXPECT_EQ(nameOf({2099}, south), "2099-00");
}

TEST(Season, NorthernDatesMoveHalfAYearInTheSouth) {
  struct Row {
    unsigned month;
    unsigned day;
    Hemisphere hemisphere;
    const char* local;
  };

  constexpr Row rows[] = {{2, 1, north, "2027-02-01"},
                          {2, 1, south, "2027-08-01"},
                          {2, 31, north, "2027-02-28"},
                          {8, 31, south, "2028-02-29"},
                          {12, 31, south, "2028-06-30"},
                          {1, 1, south, "2027-07-01"},
                          {7, 10, south, "2028-01-10"}};
  for (const auto& [month, day, hemisphere, local] : rows)
    EXPECT_EQ(isoText(localSeasonDay({2027}, hemisphere, month, day)), local)
        << month << "/" << day;
}

struct Planted {
  const char* what;
  Day planted;
  Hemisphere hemisphere;
  int firstLeaf;
};

/// The table in core/calendar/season.h, row by row, and the days beside each boundary.
TEST(Leaf, FirstLeafFollowsThePlantingDay) {
  const Planted rows[] = {
      {"spring", dayOf(2027, 4, 10), north, 2027},
      {"in leaf", dayOf(2027, 6, 12), north, 2027},
      {"late summer", dayOf(2027, 8, 31), north, 2027},
      {"growth over", dayOf(2027, 9, 1), north, 2028},
      {"autumn", dayOf(2027, 11, 10), north, 2028},
      {"New Year's Eve", dayOf(2027, 12, 31), north, 2028},
      {"New Year's Day", dayOf(2028, 1, 1), north, 2028},
      {"leap day", dayOf(2028, 2, 29), north, 2028},
      {"late winter", dayOf(2027, 8, 20), south, 2027},
      {"first day of a southern season", dayOf(2027, 7, 1), south, 2027},
      {"New Year's Eve, in leaf", dayOf(2027, 12, 31), south, 2027},
      {"across New Year, in leaf", dayOf(2028, 1, 5), south, 2027},
      {"leap day, still growing", dayOf(2028, 2, 29), south, 2027},
      {"28 February of a common year", dayOf(2027, 2, 28), south, 2026},
      {"growth over", dayOf(2028, 3, 1), south, 2028},
      {"autumn", dayOf(2028, 5, 25), south, 2028},
      {"last day of a southern season", dayOf(2028, 6, 30), south, 2028}};
  for (const auto& [what, planted, hemisphere, firstLeaf] : rows)
    EXPECT_EQ(firstLeafSeason(planted, hemisphere).year, firstLeaf)
        << what << ", " << isoText(planted);
}

TEST(Leaf, CountsUpFromOneAndDownThroughNought) {
  struct Row {
    int season;
    int leaf;
  };

  constexpr Row rows[] = {{2024, -3},
                          {2025, -2},
                          {2026, -1},
                          {2027, 0},
                          {2028, 1},
                          {2029, 2},
                          {2030, 3},
                          {2038, 11}};
  for (const auto& [season, leaf] : rows) {
    EXPECT_EQ(leafIn({season}, dayOf(2027, 11, 10), north), leaf) << season;
    EXPECT_EQ(leafIn({season}, dayOf(2028, 4, 10), north), leaf) << season;
    EXPECT_EQ(leafIn({season}, dayOf(2028, 5, 25), south), leaf) << season;
    EXPECT_EQ(leafIn({season}, dayOf(2029, 2, 28), south), leaf) << season;
  }
}

TEST(Leaf, GrowthEndsHalfAYearApart) {
  EXPECT_EQ(isoText(growthEnds({2027}, north)), "2027-09-01");
  EXPECT_EQ(isoText(growthEnds({2027}, south)), "2028-03-01");
}

}  // namespace

}  // namespace topwire
