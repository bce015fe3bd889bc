#include "core/edit/weather_deeds.h"
#include "core/edit/workbench.h"
#include "storage/orchard_file.h"
#include "tests/app/cli_support.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>

#include <gmock/gmock.h>

#include <algorithm>

namespace topwire {
namespace {

using ::testing::AllOf;
using testing::cli;
using testing::CliTest;
using testing::contentOf;
using testing::exists;
using testing::expectRefused;
using testing::firstLine;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using testing::Row;
using testing::rowsOf;
using testing::Said;
using ::testing::SizeIs;
using ::testing::StartsWith;
using testing::write;

const std::vector<std::string> verbs{
    "new",     "blocks",          "copy",    "undo",    "redo",
    "journal", "check-programme", "tasks",   "why",     "tick",
    "untick",  "set-aside",       "stages",  "observe", "targets",
    "measure", "cautions",        "weather", "sheet",   "material",
    "close",   "drawings"};

TEST(CliHelp, listsEveryVerbAndTheExitCodes) {
  const Said help = cli({"--help"});
  EXPECT_EQ(help.code, 0);
  for (const std::string& verb : verbs) EXPECT_THAT(help.out, HasSubstr("  " + verb));
  for (const char* code : {"0  done", "1  findings", "2  usage", "3  problem"})
    EXPECT_THAT(help.out, HasSubstr(code));
}

TEST(CliHelp, ofEachVerbShowsItsArgumentsAndAnExample) {
  for (const std::string& verb : verbs) {
    const Said help = cli({verb, "--help"});
    EXPECT_EQ(help.code, 0) << verb;
    EXPECT_EQ(help.err, "") << verb;
    EXPECT_THAT(help.out, HasSubstr(verb == "drawings" ? "DIR" : "FILE")) << verb;
    EXPECT_THAT(help.out, HasSubstr("Example:\n  topwire-cli " + verb + ' ')) << verb;
  }
}

/// The example in a verb's help, as words after the program's name.
QStringList exampleOf(const std::string& verb) {
  const std::string help = cli({verb, "--help"}).out;
  const std::string lead = "Example:\n  topwire-cli ";
  const auto at = help.find(lead) + lead.size();
  return QProcess::splitCommand(
      QString::fromStdString(help.substr(at, help.find('\n', at) - at)));
}

TEST_F(CliTest, theExamplesInTheHelpWorkOnTheDemoInThisOrder) {
  for (const char* verb : {"new",
                           "blocks",
                           "tasks",
                           "why",
                           "tick",
                           "untick",
                           "set-aside",
                           "observe",
                           "weather",
                           "cautions",
                           "targets",
                           "measure",
                           "undo",
                           "redo",
                           "journal",
                           "stages",
                           "sheet",
                           "copy",
                           "check-programme"}) {
    testing::Words words;
    for (const QString& one : exampleOf(verb)) {
      const std::string word = one.toStdString();
      const bool shipped = word.starts_with("demo/") || word.starts_with("resources/");
      const bool written = word.ends_with(".topwire") || word.ends_with(".pdf");
      words.push_back(shipped   ? TOPWIRE_SOURCE_DIR "/" + word
                      : written ? in("help-" + word)
                                : word);
    }
    const bool timeless = words[0] == "copy" || words[0] == "journal"
                          || words[0] == "check-programme"
                          || std::ranges::count(words, "--today") > 0;
    const Said said = timeless ? cli(words) : onTheDay(words);
    EXPECT_EQ(said.code, 0) << verb << ": " << said.err;
  }
}

TEST(CliHelp, versionIsTold) {
  EXPECT_THAT(cli({"--version"}).out, StartsWith("topwire-cli 0."));
}

TEST_F(CliTest, tasksHasTheColumnsScriptsRelyOn) {
  const Said said = cli({"tasks", file_, "--today", "2027-04-06", "--csv"});
  EXPECT_EQ(firstLine(said.out),
            "task,block,planting,cultivar,operation,name,leaf,vigour,opens,closes,"
            "cut_off,state,rows,rows_done,trees,hours_left,pass,season");
  EXPECT_EQ(said.err, "");
  const Row row = task(pruning_);
  EXPECT_EQ(row.at("block"), "Creek 1");
  EXPECT_EQ(row.at("leaf"), "4");
  EXPECT_EQ(row.at("rows"), "1-12");
  EXPECT_EQ(row.at("trees"), "1200");
  EXPECT_EQ(row.at("rows_done"), "0.00");
}

TEST_F(CliTest, tasksAreFilteredByBlockStateAndDays) {
  const auto all = tasks();
  EXPECT_THAT(tasks({"--block", "Quarry"}),
              AllOf(Not(IsEmpty()), Not(SizeIs(all.size()))));
  for (const Row& row : tasks({"--block", "Quarry"}))
    EXPECT_EQ(row.at("block"), "Quarry");
  const auto waiting = tasks({"--state", "waiting"});
  ASSERT_THAT(waiting, Not(IsEmpty()));
  for (const Row& row : waiting) EXPECT_GT(row.at("opens"), "2027-04-06");
  const auto week = tasks({"--from", "2027-04-05", "--to", "2027-04-11"});
  ASSERT_THAT(week, Not(IsEmpty()));
  for (const Row& row : week) {
    EXPECT_LE(row.at("opens"), "2027-04-11");
    EXPECT_GE(row.at("closes"), "2027-04-05");
  }
}

TEST_F(CliTest, tasksAsJsonHoldsTheSameRows) {
  const Said said = cli({"tasks", file_, "--today", "2027-04-06", "--json"});
  QJsonParseError fault;
  const auto json = QJsonDocument::fromJson(QByteArray::fromStdString(said.out), &fault);
  ASSERT_EQ(fault.error, QJsonParseError::NoError);
  ASSERT_EQ(static_cast<std::size_t>(json.array().size()), tasks().size());
  const auto first = json.array().first().toObject();
  EXPECT_TRUE(first[QStringLiteral("hours_left")].isDouble());
  EXPECT_EQ(first[QStringLiteral("task")].toString().toStdString(),
            tasks().front().at("task"));
}

TEST_F(CliTest, tasksForReadingStartsWithTheTask) {
  const Said said = cli({"tasks", file_, "--today", "2027-04-06"});
  EXPECT_THAT(firstLine(said.out), StartsWith("task  "));
  EXPECT_THAT(said.out, HasSubstr(pruning_ + "  "));
}

TEST_F(CliTest, whyTellsTheDatesAndWhereTheyComeFrom) {
  const Said said = cli({"why", file_, pruning_, "--today", "2027-04-06"});
  EXPECT_EQ(said.code, 0);
  EXPECT_THAT(said.out, HasSubstr("Creek 1"));
  EXPECT_GE(std::ranges::count(said.out, '\n'), 3) << said.out;
}

TEST_F(CliTest, tickIsKeptUndoneRedoneAndTakenBack) {
  const Said ticked = tick("1-4");
  EXPECT_EQ(ticked.code, 0) << ticked.err;
  EXPECT_THAT(ticked.out, Not(IsEmpty()));
  EXPECT_EQ(task(pruning_).at("rows_done"), "4.00");

  EXPECT_THAT(cli({"undo", file_, "--today", "2027-04-06"}).out, StartsWith("Undone: "));
  EXPECT_EQ(task(pruning_).at("rows_done"), "0.00");
  EXPECT_THAT(cli({"redo", file_, "--today", "2027-04-06"}).out,
              StartsWith("Done again: "));
  EXPECT_EQ(task(pruning_).at("rows_done"), "4.00");

  const Said untick =
      cli({"untick", file_, pruning_, "--rows", "4", "--today", "2027-04-06"});
  EXPECT_EQ(untick.code, 0) << untick.err;
  EXPECT_EQ(task(pruning_).at("rows_done"), "3.00");

  const auto journal = rowsOf(cli({"journal", file_, "--csv"}).out);
  ASSERT_THAT(journal, SizeIs(4));
  EXPECT_EQ(journal[0].at("by"), "Heron");
  EXPECT_EQ(journal[0].at("kind"), "did");
  EXPECT_EQ(journal[1].at("kind"), "undid");
  EXPECT_EQ(journal[2].at("kind"), "redid");
  EXPECT_THAT(journal[0].at("at"),
              ::testing::MatchesRegex("[0-9]+-[0-9]+-[0-9]+T[0-9]+:[0-9]+:[0-9]+Z"));
}

TEST_F(CliTest, tickOfAllRowsFinishesTheTask) {
  EXPECT_EQ(tick("all").code, 0);
  EXPECT_EQ(task(pruning_).at("state"), "done");
  EXPECT_EQ(task(pruning_).at("hours_left"), "0.0");
}

TEST_F(CliTest, partOfARowCountsAsPart) {
  const Said said = cli({"tick",
                         file_,
                         pruning_,
                         "--rows",
                         "1-2",
                         "--percent",
                         "50",
                         "--by",
                         "Heron",
                         "--today",
                         "2027-04-06"});
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_EQ(task(pruning_).at("rows_done"), "1.00");
}

TEST_F(CliTest, setAsideStandsUntilUndone) {
  const Said said =
      cli({"set-aside", file_, pruning_, "--reason", "no crew", "--today", "2027-04-06"});
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_EQ(task(pruning_).at("state"), "set-aside");
  EXPECT_EQ(cli({"undo", file_, "--today", "2027-04-06"}).code, 0);
  EXPECT_NE(task(pruning_).at("state"), "set-aside");
}

TEST_F(CliTest, stagesHasTheColumnsScriptsRelyOn) {
  const Said said = cli({"stages", file_, "--today", "2027-04-06", "--csv"});
  EXPECT_EQ(firstLine(said.out),
            "planting,block,cultivar,bbch,stage,kind,date,early,late");
  for (const Row& row : rowsOf(said.out)) {
    EXPECT_LE(row.at("early"), row.at("date"));
    EXPECT_LE(row.at("date"), row.at("late"));
  }
  const auto one = rowsOf(cli({"stages",
                               file_,
                               "--today",
                               "2027-04-06",
                               "--planting",
                               "quarry-fuji",
                               "--csv"})
                              .out);
  ASSERT_THAT(one, Not(IsEmpty()));
  for (const Row& row : one) EXPECT_EQ(row.at("planting"), "quarry-fuji");
}

TEST_F(CliTest, observedStageReplacesItsDateAndIsReplanned) {
  for (const char* stage : {"53", "green tip"}) {
    const Said said = cli({"observe",
                           file_,
                           "creek-1-gala",
                           stage,
                           "2027-03-25",
                           "--by",
                           "Wren",
                           "--today",
                           "2027-04-06"});
    EXPECT_EQ(said.code, 0) << said.err;
    const auto rows = rowsOf(cli({"stages",
                                  file_,
                                  "--today",
                                  "2027-04-06",
                                  "--planting",
                                  "creek-1-gala",
                                  "--csv"})
                                 .out);
    const auto found =
        std::ranges::find_if(rows, [](const Row& row) { return row.at("bbch") == "53"; });
    ASSERT_NE(found, rows.end());
    EXPECT_EQ(found->at("kind"), "observed");
    EXPECT_EQ(found->at("date"), "2027-03-25");
  }
}

TEST_F(CliTest, observingSaysWhatMovedAndWhy) {
  const Said said = cli(
      {"observe", file_, "creek-1-gala", "53", "2027-03-20", "--today", "2027-04-06"});
  EXPECT_THAT(said.out, HasSubstr("moved"));
  EXPECT_THAT(said.out, HasSubstr("\nGreen tip at Creek 1 seen 20 March 2027, "));
  EXPECT_THAT(said.out, HasSubstr(" earlier than expected: "));
  EXPECT_THAT(onTheDay({"tick", file_, pruning_, "--rows", "1", "--by", "Wren"}).out,
              Not(HasSubstr("expected")));
}

/// Puts days of weather into the file, as an import does.
void know(const std::string& path, const std::vector<DatedWeather>& days) {
  SqliteOrchardFiles files;
  auto opened = files.open(path, Access::write);
  ASSERT_TRUE(opened);
  Workbench bench{std::move(opened->orchard),
                  *opened->journal,
                  [] { return std::int64_t{0}; },
                  IdSource::countingFrom(1)};
  const auto change = importWeather(bench.orchard(), days, "station.csv");
  ASSERT_TRUE(change);
  ASSERT_TRUE(bench.perform(*change));
}

TEST_F(CliTest, cautionsTellTheComingDaysAndHowMuchShouldWait) {
  know(file_,
       {{dayOf(2027, 4, 5), {2, 12, 1, WeatherSource::measured}},
        {dayOf(2027, 4, 7), {4, 12, 4.2, WeatherSource::forecast}}});
  const Said said = onTheDay({"cautions", file_, "--csv"});
  EXPECT_EQ(said.code, 0) << said.err;
  const auto rows = rowsOf(said.out);
  const auto rain =
      std::ranges::find_if(rows, [](const Row& row) { return row.at("kind") == "wet"; });
  ASSERT_NE(rain, rows.end()) << said.out;
  EXPECT_EQ(rain->at("day"), "2027-04-07");
  EXPECT_EQ(rain->at("severity"), "low");
  EXPECT_EQ(rain->at("source"), "forecast");
  EXPECT_THAT(rain->at("caution"), StartsWith("Rain, "));
  EXPECT_GT(std::stoi(rain->at("waiting")), 0);
  EXPECT_THAT(said.err, StartsWith("Cautions, not orders"));
}

TEST_F(CliTest, cautionsAreNoneWhereNothingIsKnown) {
  const Said said = onTheDay({"cautions", file_, "--csv"});
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_EQ(said.out, "day,blocks,kind,severity,source,waiting,caution\n");
  EXPECT_EQ(said.err, "");
}

TEST_F(CliTest, sheetIsAPdfOfTheSizeAskedFor) {
  const std::map<std::string, std::string> boxes{{"a4", "[0 0 595"},
                                                 {"letter", "[0 0 612"}};
  for (const auto& [paper, box] : boxes) {
    const std::string pdf = in(paper + ".pdf");
    const Said said = cli({"sheet",
                           file_,
                           "--week",
                           "2027-W14",
                           "--pdf",
                           pdf,
                           "--paper",
                           paper,
                           "--today",
                           "2027-04-06"});
    EXPECT_EQ(said.code, 0) << said.err;
    EXPECT_EQ(said.err, "");
    const std::string content = contentOf(pdf);
    EXPECT_THAT(content, StartsWith("%PDF-"));
    EXPECT_THAT(content, HasSubstr("/MediaBox " + box));
  }
}

TEST_F(CliTest, blocksListsPlantings) {
  const auto rows = rowsOf(cli({"blocks", file_, "--today", "2027-04-06", "--csv"}).out);
  ASSERT_THAT(rows, SizeIs(2));
  EXPECT_EQ(rows[0].at("planting"), "creek-1-gala");
  EXPECT_EQ(rows[0].at("row_spacing"), "11 ft");
  EXPECT_EQ(rows[1].at("leaf"), "5");
  EXPECT_EQ(rows[1].at("vigour"), "strong");
}

TEST_F(CliTest, copyIsAnOrchardOfItsOwn) {
  const std::string copy = in("copy.topwire");
  EXPECT_EQ(cli({"copy", file_, copy}).code, 0);
  EXPECT_EQ(tick("1-4").code, 0);
  const auto rows = rowsOf(cli({"tasks", copy, "--today", "2027-04-06", "--csv"}).out);
  for (const Row& row : rows) EXPECT_EQ(row.at("rows_done"), "0.00");
}

TEST_F(CliTest, checkProgrammeFindsFaultsWithTheirLines) {
  const std::string shipped =
      TOPWIRE_SOURCE_DIR "/resources/programmes/tall-spindle-apple.toml";
  const Said sound = cli({"check-programme", shipped});
  EXPECT_EQ(sound.code, 0) << sound.out;
  EXPECT_THAT(sound.out, HasSubstr("tall-spindle-apple"));
  write(in("broken.toml"), "id = \"x\"\n\n[[operation]]\nid = \"a\"\nnmae = 3\n");
  const Said broken = cli({"check-programme", in("broken.toml")});
  EXPECT_EQ(broken.code, 1);
  EXPECT_THAT(broken.out, HasSubstr("broken.toml:5: "));
  EXPECT_EQ(broken.err, "");
  expectRefused(cli({"check-programme", in("none.toml")}), 3, "none.toml");
}

/// Locales are seldom installed; glibc also takes compiled ones from LOCPATH.
void compileLocale(const std::string& name, const std::string& folder) {
  const auto text = [](const std::string& part) { return QString::fromStdString(part); };
  QProcess::execute(QStringLiteral("localedef"),
                    {QStringLiteral("-i"),
                     text(name),
                     QStringLiteral("-f"),
                     QStringLiteral("UTF-8"),
                     text(folder + '/' + name + ".UTF-8")});
}

TEST_F(CliTest, aLocaleThatWritesCommasChangesNothing) {
  for (const char* name : {"de_DE", "es_ES"}) compileLocale(name, in(""));
  const std::vector<std::vector<std::string>> commands{
      {"tasks", file_, "--today", "2027-04-06", "--csv"},
      {"tasks", file_, "--today", "2027-04-06", "--json"},
      {"blocks", file_, "--today", "2027-04-06", "--csv"},
      {"why", file_, pruning_, "--today", "2027-04-06"}};
  for (const auto& words : commands) {
    const std::string plain = cli(words).out;
    ASSERT_NE(plain, "");
    for (const char* locale : {"de_DE.UTF-8", "es_ES.UTF-8", "C", "no_SUCH"}) {
      const Said said = cli(words, {{"LC_ALL", locale}, {"LOCPATH", in("")}});
      EXPECT_EQ(said.out, plain) << locale;
      EXPECT_EQ(said.err, "") << locale;
    }
  }
}

TEST_F(CliTest, spanishNamesComeOnRequestOnly) {
  const auto english = tasks();
  const auto spanish = tasks({"--language", "es"});
  ASSERT_EQ(spanish.size(), english.size());
  EXPECT_NE(spanish.front().at("name"), english.front().at("name"));
  EXPECT_EQ(spanish.front().at("task"), english.front().at("task"));
  EXPECT_EQ(spanish.front().at("state"), english.front().at("state"));
}

TEST_F(CliTest, theDemosOpen) {
  const std::map<std::string, std::string> demos{
      {"demo/orchard.toml", "2027-04-06"}, {"demo/orchard-south.toml", "2026-10-06"}};
  for (const auto& [path, today] : demos) {
    const std::string file = in(std::to_string(path.size()) + ".topwire");
    const Said made =
        cli({"new", file, "--from", TOPWIRE_SOURCE_DIR "/" + path, "--today", today});
    ASSERT_EQ(made.code, 0) << made.err;
    const auto rows = rowsOf(cli({"tasks", file, "--today", today, "--csv"}).out);
    std::map<std::string, int> byState;
    for (const Row& row : rows) ++byState[row.at("state")];
    for (const char* state : {"open", "done", "waiting"})
      EXPECT_GT(byState[state], 0) << path << ' ' << state;
  }
}

}  // namespace
}  // namespace topwire
