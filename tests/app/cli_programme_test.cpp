#include "tests/app/cli_support.h"

#include <gmock/gmock.h>

namespace topwire::testing {
namespace {

using ::testing::AllOf;
using ::testing::HasSubstr;

constexpr const char* shippedFile =
    TOPWIRE_SOURCE_DIR "/resources/programmes/tall-spindle-apple.toml";

class CliProgramme : public CliTest {
protected:
  void SetUp() override {
    CliTest::SetUp();
    EXPECT_EQ(programme({"--copy",
                         "tall-spindle-apple",
                         "--as",
                         "my-spindle",
                         "--name",
                         "Our spindle"})
                  .out,
              "Programme Our spindle added.\n");
  }

  Said programme(const Words& more) const {
    Words words{"programme", file_};
    words.insert(words.end(), more.begin(), more.end());
    return onTheDay(words);
  }

  /// The own programme in a file, with its dormant pruning opening four days later.
  std::string changedFile() const {
    std::string text = programme({"--export", "my-spindle"}).out;
    const auto at = text.find("\nopens", text.find("id = \"dormant-pruning\""));
    text.replace(text.find(" }", at), 2, ", days = 4 }");
    write(in("changed.toml"), text);
    return in("changed.toml");
  }
};

TEST_F(CliProgramme, IsListedWithItsPlantings) {
  EXPECT_EQ(programme({"--use", "my-spindle", "--planting", "creek-1-gala"}).code, 0);
  const auto rows = rowsOf(cli({"programmes", file_, "--csv"}).out);
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_EQ(rows[0].at("programme"), "my-spindle");
  EXPECT_EQ(rows[0].at("from"), "orchard");
  EXPECT_EQ(rows[0].at("plantings"), "creek-1-gala");
  EXPECT_EQ(rows[2].at("from"), "shipped");
  EXPECT_EQ(task(pruning_).at("task"), pruning_);
}

TEST_F(CliProgramme, IsPrintedAsItsFileAndBroughtInAgain) {
  EXPECT_EQ(programme({"--export", "tall-spindle-apple"}).out, contentOf(shippedFile));
  EXPECT_EQ(programme({"--remove", "my-spindle"}).out,
            "Programme Our spindle removed.\n");
  expectRefused(programme({"--export", "my-spindle"}), 3, "There is no programme");
  EXPECT_EQ(cli({"undo", file_}).code, 0);
  const std::string file = changedFile();
  EXPECT_EQ(programme({"--bring-in", file}).out, "Programme Our spindle brought in.\n");
  EXPECT_EQ(programme({"--export", "my-spindle"}).out, contentOf(file));
}

TEST_F(CliProgramme, TellsWhatAChangeWouldDoAndDoesNothing) {
  const std::string file = changedFile();
  EXPECT_THAT(programme({"--try", file}),
              AllOf(::testing::Field(&Said::out, "Nothing changes in the plan.\n"),
                    ::testing::Field(&Said::err, HasSubstr("No planting goes by"))));
  EXPECT_EQ(programme({"--use", "my-spindle", "--planting", "creek-1-gala"}).code, 0);
  const auto rows = rowsOf(programme({"--try", file, "--csv"}).out);
  ASSERT_FALSE(rows.empty());
  for (const Row& row : rows) {
    EXPECT_THAT(row.at("task"), HasSubstr("creek-1-gala:dormant-pruning:"));
    EXPECT_EQ(row.at("opens_later"), "4");
  }
  EXPECT_EQ(rowsOf(programme({"--try", file, "--csv"}).out), rows);
}

TEST_F(CliProgramme, RefusesWithASentence) {
  expectRefused(programme({"--copy", "tall-spindel-apple", "--name", "x"}),
                3,
                "the nearest is \"tall-spindle-apple\"");
  expectRefused(
      programme({"--copy", "tall-spindle-apple", "--as", "my-spindle", "--name", "x"}),
      3,
      "There is a programme my-spindle already");
  expectRefused(programme({"--bring-in", shippedFile}), 3, "came with Topwire");
  expectRefused(programme({}), 2, "");
  expectRefused(
      programme({"--use", "my-spindle", "--planting", "creek"}), 3, "no planting");
  EXPECT_EQ(programme({"--use", "my-spindle", "--planting", "creek-1-gala"}).code, 0);
  expectRefused(programme({"--remove", "my-spindle"}), 3, "is used by creek-1-gala");
}

}  // namespace
}  // namespace topwire::testing
