#include "core/edit/weather_deeds.h"
#include "core/phenology/stage.h"
#include "tests/core/deeds_support.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using testing::after;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using testing::nameOf;
using testing::orchardOfTwo;
using testing::said;
using testing::smallTables;

Day today() {
  return dayOf(2027, 4, 6);
}

PastStage past(std::uint64_t id, const char* cultivar, int bbch, Day day) {
  return {{0, id}, cultivar, bbch, day};
}

TEST(PastStages, AreAddedAndRemoved) {
  const Orchard before = orchardOfTwo();
  const auto adding = addPastStage(
      before, smallTables(), past(1, " gala ", 65, dayOf(2019, 5, 2)), today());
  EXPECT_EQ(nameOf(adding), "Past date noted: full bloom of Gala on 2 May 2019");
  const Orchard later = after(before, adding);
  EXPECT_EQ(later.pastStages.at({0, 1}), past(1, "Gala", 65, dayOf(2019, 5, 2)));
  const auto removing = removePastStage(later, {0, 1});
  EXPECT_EQ(nameOf(removing), "Past date removed: full bloom of Gala on 2 May 2019");
  EXPECT_EQ(after(later, removing), before);
  EXPECT_THAT(said(removePastStage(before, {0, 1})),
              ElementsAre("That date is no longer in the orchard."));
}

TEST(PastStages, OfTheSameSeasonAreReplaced) {
  Orchard orchard = orchardOfTwo();
  for (const PastStage& one : {past(1, "Gala", 65, dayOf(2019, 5, 2)),
                               past(2, "Gala", 65, dayOf(2020, 5, 2)),
                               past(3, "Gala", 60, dayOf(2019, 4, 28)),
                               past(4, "Fuji", 65, dayOf(2019, 5, 3)),
                               past(5, "Gala", 65, dayOf(2019, 5, 4))})
    orchard = after(orchard, addPastStage(orchard, smallTables(), one, today()));
  EXPECT_EQ(orchard.pastStages.size(), 4U);
  EXPECT_EQ(orchard.pastStages.at({0, 1}).day, dayOf(2019, 5, 4));
}

TEST(PastStages, TakeACultivarOfThePlantingsThatNoTableHas) {
  Orchard orchard = orchardOfTwo();
  orchard.plantings.begin()->second.cultivar = "Our own";
  EXPECT_EQ(
      nameOf(addPastStage(
          orchard, smallTables(), past(1, "our own", 65, dayOf(2019, 5, 2)), today())),
      "Past date noted: full bloom of Our own on 2 May 2019");
}

struct BadPast {
  PastStage past;
  std::string expected;
};

class PastFault : public ::testing::TestWithParam<BadPast> {};

TEST_P(PastFault, IsSaidWithItsField) {
  EXPECT_THAT(said(addPastStage(orchardOfTwo(), smallTables(), GetParam().past, today())),
              ElementsAre(HasSubstr(GetParam().expected)));
}

INSTANTIATE_TEST_SUITE_P(
    Deeds,
    PastFault,
    ::testing::Values(
        BadPast{past(1, "Galla", 65, dayOf(2019, 5, 2)),
                "cultivar: Galla is not in the table. Is it Gala?"},
        BadPast{past(1, "Quince", 65, dayOf(2019, 5, 2)),
                "cultivar: Quince is not in the table; choose"},
        BadPast{past(1, "", 65, dayOf(2019, 5, 2)), "cultivar: Nothing is chosen here"},
        BadPast{past(1, "Gala", 64, dayOf(2019, 5, 2)), "stage: BBCH 64 is not a stage"},
        BadPast{past(1, "Gala", 65, dayOf(2027, 4, 7)),
                "day: 7 April 2027 is still to come"},
        BadPast{past(1, "Gala", 65, dayOf(19, 5, 2)), "day: A date in the year 19"},
        BadPast{past(1, "Gala", 65, dayOf(2019, 10, 2)),
                "day: full bloom is not seen on 2 October"}));

TEST(ImportedPastStages, ComeInAsOneChange) {
  const Orchard before = after(orchardOfTwo(),
                               addPastStage(orchardOfTwo(),
                                            smallTables(),
                                            past(1, "Gala", 65, dayOf(2019, 5, 2)),
                                            today()));
  const std::vector<PlacedPastStage> dates{
      {past(2, "Gala", 65, dayOf(2019, 5, 2)), "b.csv:2"},
      {past(3, "GALA", 65, dayOf(2020, 5, 2)), "b.csv:3"},
      {past(4, "Fuji", 60, dayOf(2020, 4, 30)), "b.csv:4"},
      {past(5, "Fuji", 60, dayOf(2020, 4, 29)), "b.csv:5"}};
  const auto change = importPastStages(before, smallTables(), dates, "b.csv", today());
  EXPECT_EQ(nameOf(change), "2 past dates from b.csv brought in");
  const Orchard later = after(before, change);
  EXPECT_EQ(later.pastStages.size(), 3U);
  EXPECT_EQ(later.pastStages.at({0, 5}).day, dayOf(2020, 4, 29)) << "the later line";
  const auto again = importPastStages(later, smallTables(), dates, "b.csv", today());
  EXPECT_EQ(nameOf(again), "No new dates in b.csv");
  EXPECT_TRUE(again->empty());
}

TEST(ImportedPastStages, AreRefusedTogetherWithEveryPlace) {
  const std::vector<PlacedPastStage> dates{
      {past(2, "Gala", 65, dayOf(2019, 5, 2)), "b.csv:2"},
      {past(3, "Galla", 64, dayOf(2020, 5, 2)), "b.csv:3"},
      {past(4, "Fuji", 60, dayOf(2028, 4, 30)), "b.csv:4"}};
  EXPECT_THAT(
      said(importPastStages(orchardOfTwo(), smallTables(), dates, "b.csv", today())),
      ElementsAre(HasSubstr("b.csv:3: Galla is not"),
                  HasSubstr("b.csv:3: BBCH 64"),
                  HasSubstr("b.csv:4: 30 April 2028")));
  EXPECT_THAT(said(importPastStages(orchardOfTwo(), smallTables(), {}, "b.csv", today())),
              ElementsAre("b.csv: There is no date in this file."));
}

}  // namespace
}  // namespace topwire
