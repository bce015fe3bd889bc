#include "tests/support/builders.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gmock/gmock.h>

#include <map>

namespace topwire {
namespace {

using ::testing::AllOf;
using ::testing::Contains;
using ::testing::Each;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::SizeIs;
using testing::sourceText;
using ::testing::StartsWith;

using Row = std::map<std::string, std::string>;

const char* const orchardText = R"([orchard]
name = "Alder Bend"
latitude = 46.9
elevation = "1620 ft"
units = "us-customary"
station = "Ellensburg"
records-from = 2027-01-01

[[block]]
name = "Creek 1"
rows = "1-12"
row-spacing = 11
row-length = 300

[[block.planting]]
cultivar = "Gala"
rootstock = "M.9 T337"
planted = 2024-04-17
tree-spacing = 3

[[block]]
name = "Quarry"
rows = "1-6"
row-spacing = 12
row-length = 300

[[block.planting]]
cultivar = "Fuji"
rootstock = "M.9 T337"
planted = 2023-04-17
tree-spacing = 3
)";

struct Said {
  int code = -1;
  std::string out;
  std::string err;
};

/// Runs the real program. Its environment is this one with `extra` on top.
Said cli(const std::vector<std::string>& words,
         const std::map<std::string, std::string>& extra = {}) {
  QProcess process;
  auto environment = QProcessEnvironment::systemEnvironment();
  for (const auto& [name, value] : extra)
    environment.insert(QString::fromStdString(name), QString::fromStdString(value));
  process.setProcessEnvironment(environment);
  QStringList arguments;
  for (const std::string& word : words) arguments << QString::fromStdString(word);
  process.start(QStringLiteral(TOPWIRE_CLI), arguments);
  EXPECT_TRUE(process.waitForFinished(60'000));
  EXPECT_EQ(process.exitStatus(), QProcess::NormalExit);
  return {process.exitCode(),
          process.readAllStandardOutput().toStdString(),
          process.readAllStandardError().toStdString()};
}

/// Rows by column of a CSV that quotes nothing but whole fields.
std::vector<Row> rowsOf(const std::string& csv) {
  static const QRegularExpression field{
      QStringLiteral("(?:^|,)(?:\"((?:[^\"]|\"\")*)\"|([^,]*))")};
  std::vector<std::string> columns;
  std::vector<Row> rows;
  const auto lines =
      QString::fromStdString(csv).split(QLatin1Char{'\n'}, Qt::SkipEmptyParts);
  for (const QString& line : lines) {
    std::vector<std::string> values;
    for (auto match = field.globalMatch(line); match.hasNext();) {
      const auto one = match.next();
      values.push_back((one.captured(1) + one.captured(2)).toStdString());
    }
    if (columns.empty()) {
      columns = values;
      continue;
    }
    Row row;
    EXPECT_EQ(values.size(), columns.size()) << line.toStdString();
    for (std::size_t i = 0; i < values.size(); ++i) row[columns[i]] = values[i];
    rows.push_back(row);
  }
  return rows;
}

std::string firstLine(const std::string& text) {
  return text.substr(0, text.find('\n'));
}

void write(const std::string& path, const std::string& text) {
  QFile file{QString::fromStdString(path)};
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(QByteArray::fromStdString(text));
}

std::string contentOf(const std::string& path) {
  QFile file{QString::fromStdString(path)};
  EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path;
  return file.readAll().toStdString();
}

bool exists(const std::string& path) {
  return QFile::exists(QString::fromStdString(path));
}

/// One sentence on standard error, nothing on standard output.
void expectRefused(const Said& said, int code, const std::string& part) {
  EXPECT_EQ(said.code, code) << said.err;
  EXPECT_EQ(said.out, "");
  EXPECT_THAT(said.err, HasSubstr(part));
  EXPECT_EQ(std::ranges::count(said.err, '\n'), 1) << said.err;
  EXPECT_TRUE(said.err.ends_with(".\n")) << said.err;
}

class Cli : public ::testing::Test {
protected:
  void SetUp() override {
    file_ = in("alder.topwire");
    write(in("orchard.toml"), orchardText);
    const Said made =
        cli({"new", file_, "--from", in("orchard.toml"), "--today", "2027-04-06"});
    ASSERT_EQ(made.code, 0) << made.err;
    ASSERT_THAT(made.out, HasSubstr("Alder Bend"));
  }

  std::string in(const std::string& name) const {
    return dir_.filePath(QString::fromStdString(name)).toStdString();
  }

  std::vector<Row> tasks(const std::vector<std::string>& more = {}) const {
    std::vector<std::string> words{"tasks", file_, "--today", "2027-04-06", "--csv"};
    words.insert(words.end(), more.begin(), more.end());
    const Said said = cli(words);
    EXPECT_EQ(said.code, 0) << said.err;
    return rowsOf(said.out);
  }

  Row task(const std::string& text) const {
    for (const Row& row : tasks())
      if (row.at("task") == text) return row;
    ADD_FAILURE() << "no task " << text;
    return {};
  }

  Said tick(const std::string& rows) const {
    return cli({"tick",
                file_,
                pruning_,
                "--rows",
                rows,
                "--minutes",
                "90",
                "--by",
                "Heron",
                "--day",
                "2027-04-05",
                "--today",
                "2027-04-06"});
  }

  QTemporaryDir dir_;
  std::string file_;
  std::string pruning_ = "creek-1-gala:dormant-pruning:2027:1";
};

const std::vector<std::string> verbs{"new",
                                     "blocks",
                                     "copy",
                                     "undo",
                                     "redo",
                                     "journal",
                                     "check-programme",
                                     "tasks",
                                     "why",
                                     "tick",
                                     "untick",
                                     "set-aside",
                                     "stages",
                                     "observe",
                                     "sheet"};

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
    EXPECT_THAT(help.out, HasSubstr("FILE")) << verb;
    EXPECT_THAT(help.out, HasSubstr("Example:\n  topwire-cli " + verb + ' ')) << verb;
  }
}

TEST(CliHelp, versionIsTold) {
  EXPECT_THAT(cli({"--version"}).out, StartsWith("topwire-cli 0."));
}

struct UsageCase {
  std::vector<std::string> words;
  std::string part;
};

TEST(CliUsage, anArgumentThatCannotBeReadEndsWithTwo) {
  const std::vector<UsageCase> cases{
      {{}, "--help"},
      {{"taks", "f"}, "nearest is \"tasks\""},
      {{"tasks"}, "FILE"},
      {{"tasks", "f", "--today", "2027-02-29"}, "\"2027-02-29\" is no day"},
      {{"tasks", "f", "--today", "6 April"}, "\"6 April\" is no day"},
      {{"tasks", "f", "--from", "2027-04-01"}, "--to"},
      {{"tasks", "f", "--state", "overdue"}, "\"overdue\" is no state"},
      {{"tasks", "f", "--csv", "--json"}, "--json"},
      {{"tasks", "f", "--colour"}, "--colour"},
      {{"--language", "fr", "tasks", "f"}, "\"fr\" is no language"},
      {{"tick", "f", "t", "--rows", "1-4"}, "--by"},
      {{"tick", "f", "t", "--by", "Heron"}, "--rows"},
      {{"tick", "f", "t", "--by", "Heron", "--rows", "4-1"}, "\"4-1\" is not rows"},
      {{"tick", "f", "t", "--by", "Heron", "--rows", "1", "--percent", "0"}, "--percent"},
      {{"tick", "f", "t", "--by", "Heron", "--rows", "1", "--minutes", "-5"},
       "--minutes"},
      {{"sheet", "f", "--week", "2027-W53", "--pdf", "o"}, "\"2027-W53\" is no ISO week"},
      {{"sheet", "f", "--week", "2027-W14", "--pdf", "o", "--paper", "a3"}, "a3"},
  };
  for (const UsageCase& one : cases) expectRefused(cli(one.words), 2, one.part);
}

TEST_F(Cli, tasksHasTheColumnsScriptsRelyOn) {
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

TEST_F(Cli, tasksAreFilteredByBlockStateAndDays) {
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

TEST_F(Cli, tasksAsJsonHoldsTheSameRows) {
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

TEST_F(Cli, tasksForReadingStartsWithTheTask) {
  const Said said = cli({"tasks", file_, "--today", "2027-04-06"});
  EXPECT_THAT(firstLine(said.out), StartsWith("task  "));
  EXPECT_THAT(said.out, HasSubstr(pruning_ + "  "));
}

TEST_F(Cli, whyTellsTheDatesAndWhereTheyComeFrom) {
  const Said said = cli({"why", file_, pruning_, "--today", "2027-04-06"});
  EXPECT_EQ(said.code, 0);
  EXPECT_THAT(said.out, HasSubstr("Creek 1"));
  EXPECT_GE(std::ranges::count(said.out, '\n'), 3) << said.out;
}

TEST_F(Cli, tickIsKeptUndoneRedoneAndTakenBack) {
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

TEST_F(Cli, tickOfAllRowsFinishesTheTask) {
  EXPECT_EQ(tick("all").code, 0);
  EXPECT_EQ(task(pruning_).at("state"), "done");
  EXPECT_EQ(task(pruning_).at("hours_left"), "0.0");
}

TEST_F(Cli, partOfARowCountsAsPart) {
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

TEST_F(Cli, setAsideStandsUntilUndone) {
  const Said said =
      cli({"set-aside", file_, pruning_, "--reason", "no crew", "--today", "2027-04-06"});
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_EQ(task(pruning_).at("state"), "set-aside");
  EXPECT_EQ(cli({"undo", file_, "--today", "2027-04-06"}).code, 0);
  EXPECT_NE(task(pruning_).at("state"), "set-aside");
}

TEST_F(Cli, stagesHasTheColumnsScriptsRelyOn) {
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

TEST_F(Cli, observedStageReplacesItsDateAndIsReplanned) {
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

TEST_F(Cli, observingSaysWhatMoved) {
  const Said said = cli(
      {"observe", file_, "creek-1-gala", "53", "2027-03-20", "--today", "2027-04-06"});
  EXPECT_THAT(said.out, HasSubstr("moved"));
}

TEST_F(Cli, sheetIsAPdfOfTheSizeAskedFor) {
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

TEST_F(Cli, sheetThatCannotBeWrittenIsAProblem) {
  expectRefused(cli({"sheet",
                     file_,
                     "--week",
                     "2027-W14",
                     "--pdf",
                     in("none/out.pdf"),
                     "--today",
                     "2027-04-06"}),
                3,
                "out.pdf");
}

TEST_F(Cli, blocksListsPlantings) {
  const auto rows = rowsOf(cli({"blocks", file_, "--today", "2027-04-06", "--csv"}).out);
  ASSERT_THAT(rows, SizeIs(2));
  EXPECT_EQ(rows[0].at("planting"), "creek-1-gala");
  EXPECT_EQ(rows[0].at("row_spacing"), "11 ft");
  EXPECT_EQ(rows[1].at("leaf"), "5");
  EXPECT_EQ(rows[1].at("vigour"), "strong");
}

TEST_F(Cli, copyIsAnOrchardOfItsOwn) {
  const std::string copy = in("copy.topwire");
  EXPECT_EQ(cli({"copy", file_, copy}).code, 0);
  EXPECT_EQ(tick("1-4").code, 0);
  const auto rows = rowsOf(cli({"tasks", copy, "--today", "2027-04-06", "--csv"}).out);
  for (const Row& row : rows) EXPECT_EQ(row.at("rows_done"), "0.00");
}

TEST_F(Cli, checkProgrammeFindsFaultsWithTheirLines) {
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

TEST_F(Cli, problemsEndWithThreeAndChangeNothing) {
  const std::string today = "2027-04-06";
  const std::vector<UsageCase> cases{
      {{"tasks", in("none.topwire")}, "none.topwire"},
      {{"tasks", file_, "--block", "Creek"}, "Creek 1, Quarry"},
      {{"why", file_, "creek-1-gala:dormant-prunning:2027:1"}, pruning_},
      {{"why", file_, "nonsense"}, "\"nonsense\""},
      {{"tick", file_, pruning_, "--rows", "12-13", "--by", "Heron"}, "13"},
      {{"tick", file_, pruning_, "--rows", "1", "--by", "Heron", "--day", "2027-04-07"},
       "still to come"},
      {{"stages", file_, "--planting", "creek-1-gale"}, "\"creek-1-gala\""},
      {{"observe", file_, "quarry", "53", "2027-04-01"}, "quarry"},
      {{"observe", file_, "quarry-fuji", "54.5", "2027-04-01"}, "54"},
      {{"observe", file_, "quarry-fuji", "53", "2027-05-01"}, "still to come"},
      {{"undo", file_}, "undo"},
      {{"redo", file_}, "redo"},
      {{"new", file_, "--from", in("orchard.toml")}, "alder.topwire"},
      {{"new", in("b.topwire"), "--from", in("none.toml")}, "none.toml"},
  };
  const auto before = tasks();
  for (UsageCase one : cases) {
    one.words.insert(one.words.end(), {"--today", today});
    expectRefused(cli(one.words), 3, one.part);
  }
  EXPECT_EQ(tasks(), before);
  EXPECT_FALSE(exists(in("b.topwire")));
}

TEST_F(Cli, filesThatAreNoOrchardAreRefused) {
  write(in("text.topwire"), "not a database, but long enough to be looked at as one");
  expectRefused(cli({"tasks", in("text.topwire")}), 3, "text.topwire");
  const std::string whole = contentOf(file_);
  write(in("half.topwire"), whole.substr(0, whole.size() / 2));
  expectRefused(cli({"tasks", in("half.topwire")}), 3, "half.topwire");
  write(in("empty.topwire"), "");
  expectRefused(cli({"tasks", in("empty.topwire")}), 3, "empty.topwire");
}

TEST_F(Cli, faultsOfADescriptionAreAllToldAndLeaveNoFile) {
  write(in("bad.toml"),
        std::string{orchardText} + "colour = \"red\"\n\n[[tick]]\nby = \"Heron\"\n");
  const Said said =
      cli({"new", in("bad.topwire"), "--from", in("bad.toml"), "--today", "2027-04-06"});
  EXPECT_EQ(said.code, 3);
  EXPECT_EQ(said.out, "");
  EXPECT_THAT(said.err, HasSubstr("bad.toml:32: \"colour\""));
  EXPECT_THAT(said.err, HasSubstr("bad.toml:34: This tick has no \"task\""));
  EXPECT_FALSE(exists(in("bad.topwire")));
}

TEST_F(Cli, aTickForNoTaskIsToldWithItsLineAndTheNearest) {
  write(in("bad.toml"),
        std::string{orchardText}
            + "\n[[tick]]\ntask = \"creek-1-gala:dormant-pruning:2027:11\"\n"
              "rows = \"1-4\"\nby = \"Heron\"\nday = 2027-03-02\n");
  expectRefused(
      cli({"new", in("bad.topwire"), "--from", in("bad.toml"), "--today", "2027-04-06"}),
      3,
      "bad.toml:34: There is no task \"creek-1-gala:dormant-pruning:2027:11\"; the "
      "nearest is \"creek-1-gala:dormant-pruning:2027:1\"");
  EXPECT_FALSE(exists(in("bad.topwire")));
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

TEST_F(Cli, aLocaleThatWritesCommasChangesNothing) {
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

TEST_F(Cli, spanishNamesComeOnRequestOnly) {
  const auto english = tasks();
  const auto spanish = tasks({"--language", "es"});
  ASSERT_EQ(spanish.size(), english.size());
  EXPECT_NE(spanish.front().at("name"), english.front().at("name"));
  EXPECT_EQ(spanish.front().at("task"), english.front().at("task"));
  EXPECT_EQ(spanish.front().at("state"), english.front().at("state"));
}

TEST_F(Cli, theDemosOpen) {
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
