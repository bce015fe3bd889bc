#include "core/calendar/day.h"
#include "tests/app/cli_support.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using ::testing::AllOf;
using testing::cli;
using testing::contentOf;
using testing::expectRefused;
using testing::firstLine;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing::Row;
using testing::rowsOf;
using testing::Said;
using ::testing::SizeIs;
using ::testing::StartsWith;
using testing::Words;
using testing::write;

class CliWeatherTest : public testing::CliTest {
protected:
  /// `topwire-cli weather` on the orchard, with these words after it.
  Said weather(const Words& more = {}) const {
    Words words{"weather", file_};
    words.insert(words.end(), more.begin(), more.end());
    return onTheDay(words);
  }

  std::vector<Row> days() const {
    const Said said = weather({"--csv"});
    EXPECT_EQ(said.code, 0) << said.err;
    return rowsOf(said.out);
  }

  Said import(const std::string& text, const Words& more = {}) const {
    write(in("station.csv"), text);
    Words words{"--import", in("station.csv")};
    words.insert(words.end(), more.begin(), more.end());
    return weather(words);
  }

  std::string journal() const { return cli({"journal", file_, "--csv"}).out; }
};

TEST_F(CliWeatherTest, anImportTellsWhatItReadAndWhatItMoved) {
  // A winter so mild that the stages come weeks early.
  std::string text = "date,min (F),max (F),rain (in)\n";
  for (Day day = dayOf(2027, 1, 1); day <= dayOf(2027, 4, 5); day = plusDays(day, 1))
    text += isoText(day) + ",41,68,0.1\n";
  const Said said = import(text + "2027-04-06,soon,68,\n");
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_THAT(
      said.out,
      AllOf(StartsWith("Read as a table: the minimum from \"min (F)\", the "
                       "maximum from \"max (F)\", rain from \"rain (in)\".\n"
                       "95 days with both temperatures were read, from 1 January "
                       "2027 to 5 April 2027.\n"
                       "One more day lacks a temperature.\n"
                       "Temperatures were taken for degrees Fahrenheit, as the "
                       "headings say: from 5.0 to 20.0 degrees Celsius.\n"
                       "station.csv:97: \"soon\" is no number; it is left out.\n"),
            HasSubstr("\nWeather of 96 days from station.csv brought in.\n"),
            HasSubstr("moved")));
  const auto known = days();
  ASSERT_THAT(known, SizeIs(96));
  EXPECT_THAT(known.front(),
              ::testing::ElementsAre(::testing::Pair("day", "2027-01-01"),
                                     ::testing::Pair("maximum", "20.00"),
                                     ::testing::Pair("minimum", "5.00"),
                                     ::testing::Pair("rain", "2.54"),
                                     ::testing::Pair("source", "measured")));
  EXPECT_EQ(known.back().at("minimum"), "");
  EXPECT_EQ(onTheDay({"undo", file_}).code, 0);
  EXPECT_THAT(days(), IsEmpty());
}

TEST_F(CliWeatherTest, aFileAlreadyInChangesNothing) {
  const std::string text = "date,tmin,tmax\n2027-04-04,1.5,12\n2027-04-05,2,11\n";
  EXPECT_EQ(import(text).code, 0);
  const std::string before = journal();
  EXPECT_THAT(import(text).out, HasSubstr("nothing was changed.\n"));
  EXPECT_EQ(journal(), before);
}

TEST_F(CliWeatherTest, unitStationAndForecastAreTold) {
  const std::string text =
      "station,date,tmin,tmax\n"
      "Mill,2027-04-07,41,50\n"
      "Quarry,2027-04-07,32,50\n";
  expectRefused(import(text), 3, "several stations; say which one to read: Mill, Quarry");
  const Said said = import(text, {"--station", "quarry", "--unit", "F", "--forecast"});
  EXPECT_THAT(said.out,
              AllOf(HasSubstr("Station Quarry.\n"),
                    HasSubstr("as you said: from 0.0 to 10.0 degrees Celsius.\n"),
                    HasSubstr("Forecast of 1 day from station.csv brought in.\n")));
  const auto known = days();
  ASSERT_THAT(known, SizeIs(1));
  EXPECT_EQ(known.front().at("source"), "forecast");
  EXPECT_EQ(known.front().at("minimum"), "0.00");
}

TEST_F(CliWeatherTest, ghcnDailyComesInAsItIs) {
  const Said said = import(
      "XX000000001,20270404,TMAX,120,,,S,0700\n"
      "XX000000001,20270404,TMIN,-15,,,S,0700\n"
      "XX000000001,20270405,TMAX,300,,I,S,0700\n");
  EXPECT_THAT(said.out,
              AllOf(StartsWith("Read as GHCN-Daily by station.\n"),
                    HasSubstr("flags it I: failed internal consistency check.\n")));
  EXPECT_EQ(days().front().at("minimum"), "-1.50");
}

TEST_F(CliWeatherTest, aFileThatIsNoWeatherLeavesTheOrchardAlone) {
  const std::string before = journal();
  expectRefused(import("Dear Sir, it was warm.\n"), 3, "none of the weather files");
  expectRefused(import(""), 3, "The file is empty.");
  expectRefused(weather({"--import", in("none.csv")}), 3, "cannot be read");
  const Said said = import("date,tmin,tmax\nsoon,1,2\nlater,1,2\n2027-04-05,1,2\n");
  EXPECT_EQ(said.code, 3);
  EXPECT_EQ(said.out, "");
  EXPECT_THAT(said.err,
              AllOf(StartsWith("Of 3 lines 2 cannot be read"),
                    HasSubstr("\nstation.csv:2: \"soon\" is no day")));
  EXPECT_EQ(journal(), before);
  EXPECT_THAT(days(), IsEmpty());
}

TEST_F(CliWeatherTest, aDayIsTypedIn) {
  const Said said = weather({"--day",
                             "2027-04-05",
                             "--min",
                             "-1.5",
                             "--max",
                             "12",
                             "--unit",
                             "C",
                             "--rain",
                             "3,2",
                             "--rain-unit",
                             "mm"});
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_EQ(firstLine(said.out), "Weather of 5 April 2027 typed in.");
  EXPECT_EQ(
      weather({"--day", "2027-04-07", "--min", "32", "--max", "50", "--rain", "0.1"})
          .code,
      0);
  EXPECT_EQ(weather({"--csv"}).out,
            "day,minimum,maximum,rain,source\n"
            "2027-04-05,-1.50,12.00,3.20,typed\n"
            "2027-04-07,0.00,10.00,2.54,forecast\n");
  EXPECT_EQ(weather().out,
            "day         minimum  maximum  rain  source\n"
            "2027-04-05    -1.50    12.00  3.20  typed\n"
            "2027-04-07     0.00    10.00  2.54  forecast\n");
}

TEST_F(CliWeatherTest, aDayIsTypedAlikeInAnyLocale) {
  for (const char* locale : {"C", "de_DE.UTF-8", "es_ES.UTF-8"}) {
    const Said said = cli({"weather",
                           file_,
                           "--day",
                           "2027-04-05",
                           "--min",
                           "1.5",
                           "--max",
                           "12",
                           "--unit",
                           "C",
                           "--today",
                           "2027-04-06"},
                          {{"LC_ALL", locale}});
    EXPECT_EQ(said.code, 0) << said.err;
    EXPECT_EQ(days().front().at("minimum"), "1.50") << locale;
  }
}

TEST_F(CliWeatherTest, figuresThatCannotBeAreRefused) {
  expectRefused(weather({"--day", "2027-04-05"}), 3, "missing");
  expectRefused(weather({"--day", "2027-04-05", "--min", "9", "--max", "2"}), 3, "above");
  expectRefused(weather({"--min", "9"}), 2, "--day");
  expectRefused(weather({"--day", "2027-04-05", "--min", "cold"}), 2, "\"cold\" is no");
  expectRefused(weather({"--day", "soon", "--min", "2"}), 2, "\"soon\" is no day");
  expectRefused(weather({"--unit", "K"}), 2, "it is C, F or tenths");
  expectRefused(weather({"--forecast"}), 2, "--import");
  expectRefused(weather({"--import", "a", "--day", "2027-04-05"}), 2, "excludes");
}

TEST_F(CliWeatherTest, pastSeasonsDatesComeIn) {
  write(in("bloom.csv"),
        "cultivar,stage,date\nGala,full bloom,2025-05-02\nGala,full bloom,2026-04-28\n");
  const Said said = weather({"--past", in("bloom.csv")});
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_THAT(firstLine(said.out), HasSubstr("bloom.csv"));
  write(in("bloom.csv"), "cultivar,stage,date\nGala,full bloom,soon\n");
  expectRefused(weather({"--past", in("bloom.csv")}), 3, "bloom.csv:2: ");
}

TEST_F(CliWeatherTest, speaksSpanishToo) {
  const Said said =
      import("fecha;mínima (°C);máxima (°C)\n05/04/2027;1,5;12\n06/04/2027;2;13\n",
             {"--language", "es"});
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_THAT(days(), SizeIs(2));
}

}  // namespace
}  // namespace topwire
