#include "tests/app/cli_support.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using testing::cli;
using testing::cliInto;
using testing::CliTest;
using testing::contentOf;
using testing::exists;
using testing::expectRefused;
using ::testing::HasSubstr;
using testing::orchardText;
using testing::Said;
using testing::write;

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

TEST_F(CliTest, sheetThatCannotBeWrittenIsAProblem) {
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

TEST_F(CliTest, problemsEndWithThreeAndChangeNothing) {
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

TEST_F(CliTest, filesThatAreNoOrchardAreRefused) {
  write(in("text.topwire"), "not a database, but long enough to be looked at as one");
  expectRefused(cli({"tasks", in("text.topwire")}), 3, "text.topwire");
  const std::string whole = contentOf(file_);
  write(in("half.topwire"), whole.substr(0, whole.size() / 2));
  expectRefused(cli({"tasks", in("half.topwire")}), 3, "half.topwire");
  write(in("empty.topwire"), "");
  expectRefused(cli({"tasks", in("empty.topwire")}), 3, "empty.topwire");
}

TEST_F(CliTest, faultsOfADescriptionAreAllToldAndLeaveNoFile) {
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

TEST_F(CliTest, aTickForNoTaskIsToldWithItsLineAndTheNearest) {
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

TEST_F(CliTest, aResultThatStandardOutputDoesNotTakeIsAProblem) {
  // The kernel's own full disk: full(4).
  const Said said = cliInto("/dev/full", {"tasks", file_, "--today", "2027-04-06"});
  expectRefused(said, 3, "Standard output");
}

}  // namespace
}  // namespace topwire
