#include "core/exchange/past_stages_reader.h"

#include "tests/core/deeds_support.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

namespace topwire {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::SizeIs;

Checked<std::vector<PlacedPastStage>> read(std::string_view text) {
  IdSource ids = IdSource::countingFrom(1);
  return readPastStages(text, "bloom.csv", ids);
}

/// "place cultivar bbch day" of each date, or "place: sentence" of each problem.
std::vector<std::string> told(std::string_view text) {
  const auto result = read(text);
  std::vector<std::string> lines;
  if (!result) {
    for (const Problem& problem : result.error()) lines.push_back(inEnglish(problem));
    return lines;
  }
  for (const auto& [past, place] : *result)
    lines.push_back(place + ' ' + past.cultivar + ' ' + std::to_string(past.bbch) + ' '
                    + isoText(past.day));
  return lines;
}

TEST(PastStagesReader, TakesColumnsInAnyOrder) {
  EXPECT_THAT(told("Date,Note,STAGE,Cultivar\n"
                   "2019-05-02,late,full bloom,Gala\n"
                   "\n"
                   "2020-04-28,\"a, b\",60,\"Delicious, spur\"\n"),
              ElementsAre("bloom.csv:2 Gala 65 2019-05-02",
                          "bloom.csv:4 Delicious, spur 60 2020-04-28"));
}

TEST(PastStagesReader, TakesYearAndDayOfYear) {
  EXPECT_THAT(told("cultivar;bbch;year;day_of_year\r\n"
                   "Gala;65;2019;1\r\nGala;65;2020;366\r\nGala;53;2021;121"),
              ElementsAre("bloom.csv:2 Gala 65 2019-01-01",
                          "bloom.csv:3 Gala 65 2020-12-31",
                          "bloom.csv:4 Gala 53 2021-05-01"));
}

TEST(PastStagesReader, TakesSpanish) {
  EXPECT_THAT(told("\xEF\xBB\xBF"
                   "variedad\tetapa\tfecha\nGala\tPlena floración\t2019-10-02\n"),
              ElementsAre("bloom.csv:2 Gala 65 2019-10-02"));
  EXPECT_THAT(told("Variedad,Etapa,Año,Día del año\nGala,65,2019,275\n"),
              ElementsAre("bloom.csv:2 Gala 65 2019-10-02"));
}

TEST(PastStagesReader, TellsEveryFaultWithItsLine) {
  EXPECT_THAT(
      told("cultivar,stage,date\n"
           "Gala,full blom,2019-05-02\n"
           "Gala,65,2019-02-29\n"
           ",65,2019-05-02\n"
           "Gala\n"
           "Gala,somewhen,2019-05-02\n"),
      ElementsAre(
          HasSubstr("bloom.csv:2: There is no stage \"full blom\"; write "
                    "\"full bloom\"."),
          HasSubstr("bloom.csv:3: \"2019-02-29\" is no day"),
          HasSubstr("bloom.csv:4: This line names no cultivar"),
          HasSubstr("bloom.csv:5: There is no stage \"\""),
          HasSubstr("bloom.csv:5: \"\" is no day"),
          HasSubstr("bloom.csv:6: There is no stage \"somewhen\"; write its BBCH")));
}

TEST(PastStagesReader, TellsWhatIsNoDayOfAYear) {
  EXPECT_THAT(told("cultivar,stage,year,doy\n"
                   "Gala,65,2019,366\nGala,65,2019,0\nGala,65,2019,\nGala,65,19x,3\n"
                   "Gala,65,99999,3\nGala,65,2019,99999999999999999999\n"),
              ElementsAre(HasSubstr("bloom.csv:2: \"366\" is no day of the year 2019"),
                          HasSubstr("bloom.csv:3: \"0\" is no day"),
                          HasSubstr("bloom.csv:4: \"\" is no day"),
                          HasSubstr("bloom.csv:5: \"19x\" is no year"),
                          HasSubstr("bloom.csv:6: \"99999\" is no year"),
                          HasSubstr("bloom.csv:7: \"9999")));
}

TEST(PastStagesReader, AsksForTheColumnsItNeeds) {
  for (const char* text : {"",
                           "\n",
                           "Gala,65,2019-05-02\n",
                           "cultivar,stage\n",
                           "cultivar,date\n",
                           "stage,date\n",
                           "cultivar,stage,year\n"})
    EXPECT_THAT(told(text),
                ElementsAre(HasSubstr("bloom.csv:1: The first line must name")))
        << text;
}

TEST(PastStagesReader, StopsAtAHundredFaults) {
  std::string text = "cultivar,stage,date\n";
  for (int i = 0; i < 100'000; ++i) text += "Gala,65,never\n";
  EXPECT_THAT(told(text), SizeIs(100));
}

TEST(PastStagesReader, HandsItsPlacesToTheDeed) {
  const auto dates =
      read("cultivar,stage,date\nGala,65,2019-05-02\nGalla,65,2018-05-02\n");
  ASSERT_TRUE(dates.has_value());
  EXPECT_THAT(
      testing::said(importPastStages(testing::orchardOfTwo(),
                                     testing::smallTables(),
                                     *dates,
                                     "bloom.csv",
                                     dayOf(2027, 4, 6))),
      ElementsAre(HasSubstr("bloom.csv:3: Galla is not in the table. Is it Gala?")));
}

RC_GTEST_PROP(PastStagesReader, NeverFallsOverABrokenTable, (const std::string& junk)) {
  read(junk);
  read("cultivar,stage,date\n" + junk);
  read("cultivar;bbch;year;doy\n" + junk);
}

}  // namespace
}  // namespace topwire
