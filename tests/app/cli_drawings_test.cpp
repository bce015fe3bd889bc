#include "tests/app/cli_support.h"

#include <QDir>
#include <QXmlStreamReader>

#include <gmock/gmock.h>

namespace topwire::testing {

namespace {

using ::testing::HasSubstr;
using ::testing::StartsWith;

TEST_F(CliTest, drawingsWritesAnSvgOfEachOperation) {
  const Said said = cli({"drawings", "--svg", in("art")});
  EXPECT_EQ(said.code, 0) << said.err;
  EXPECT_THAT(said.out, StartsWith("Tall spindle apple: drawings written: "));
  const QDir folder{QString::fromStdString(in("art"))};
  EXPECT_GE(folder.entryList({QStringLiteral("*.svg")}).size(), 70);
  QXmlStreamReader reader{
      QByteArray::fromStdString(contentOf(in("art/dormant-pruning.svg")))};
  while (!reader.atEnd()) reader.readNext();
  EXPECT_FALSE(reader.hasError());
}

TEST_F(CliTest, drawingsFollowTheLeafAndTheProgramme) {
  EXPECT_EQ(cli({"drawings", "--svg", in("a"), "--leaf", "4"}).code, 0);
  EXPECT_EQ(cli({"drawings", "--svg", in("b"), "--leaf", "7"}).code, 0);
  EXPECT_EQ(cli({"drawings", "--svg", in("c"), "--programme", "planar-wall-apple"}).code,
            0);
  EXPECT_FALSE(exists(in("a/plant.svg")));
  EXPECT_NE(contentOf(in("a/dormant-pruning.svg")),
            contentOf(in("b/dormant-pruning.svg")));
  EXPECT_TRUE(exists(in("c/wall-bend-arms.svg")));
}

TEST_F(CliTest, contactSheetIsWhatItsNameEndsIn) {
  const std::map<std::string, std::string> starts{
      {".svg", "<svg "}, {".png", "\x89PNG"}, {".pdf", "%PDF-"}};
  for (const auto& [ending, start] : starts) {
    const std::string file = in("sheet" + ending);
    EXPECT_EQ(cli({"drawings", "--contact-sheet", file}).code, 0);
    EXPECT_THAT(contentOf(file), StartsWith(start));
  }
}

TEST_F(CliTest, drawingsRefusesWhatItCannotDo) {
  expectRefused(cli({"drawings"}), 2, "");
  expectRefused(
      cli({"drawings", "--contact-sheet", in("x.gif")}), 2, ".svg, .png or .pdf");
  expectRefused(cli({"drawings", "--svg", in("x"), "--programme", "hedge"}),
                3,
                "There is no programme \"hedge\"");
  expectRefused(cli({"drawings", "--svg", file_ + "/x"}), 3, "was not written");
  expectRefused(
      cli({"drawings", "--contact-sheet", in("none/x.png")}), 3, "was not written");
}

}  // namespace

}  // namespace topwire::testing
