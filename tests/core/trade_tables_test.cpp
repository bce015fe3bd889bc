#include "core/orchard/trade_tables.h"

#include "core/phenology/stage.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

#include <set>

namespace topwire {

namespace {

using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::StartsWith;

const TradeTables& shipped() {
  return testing::shippedTables();
}

TEST(ShippedTables, EveryRowNamesItsSource) {
  for (const Cultivar& cultivar : shipped().cultivars)
    EXPECT_GT(cultivar.source.size(), 10U) << cultivar.name;
  for (const Rootstock& rootstock : shipped().rootstocks)
    EXPECT_GT(rootstock.source.size(), 10U) << rootstock.name;
  for (const Station& station : shipped().stations)
    EXPECT_GT(station.source.size(), 10U) << station.name;
  for (const FrostKill& kill : shipped().frostKills)
    EXPECT_GT(kill.source.size(), 10U) << kill.name;
}

TEST(ShippedTables, KillBudsByTheStagesThatAreDated) {
  for (const FrostKill& kill : shipped().frostKills) {
    const Stage* stage = stageByCode(kill.bbch);
    ASSERT_NE(stage, nullptr) << kill.name;
    EXPECT_EQ(stage->name.en, kill.name);
  }
}

TEST(ShippedTables, HoldTheNamesThatOrchardsUse) {
  for (const char* name : {"Gala",
                           "Fuji",
                           "Golden Delicious",
                           "Braeburn",
                           "Idared",
                           "Jonagold",
                           "Granny Smith",
                           "Elstar",
                           "McIntosh",
                           "Empire"})
    EXPECT_NE(shipped().cultivar(name), nullptr) << name;
  for (const char* name : {"M.9 T337", "G.41", "B.9", "M.26", "M.9 Nic29", "G.11"})
    EXPECT_NE(shipped().rootstock(name), nullptr) << name;
  for (const char* name :
       {"Ellensburg", "Penticton", "Klein-Altendorf", "Orange Airport"})
    EXPECT_NE(shipped().station(name), nullptr) << name;
  EXPECT_EQ(shipped().cultivar("gala"), nullptr);
}

/// Observed at Klein-Altendorf in the same years: days against Golden Delicious's full
/// bloom, and from full bloom to harvest.
TEST(ShippedTables, CarryTheFiguresOfTheBloomRecord) {
  EXPECT_EQ(shipped().cultivar("Golden Delicious")->bloomShiftDays, 0);
  EXPECT_EQ(shipped().cultivar("Jonagold")->bloomShiftDays, -1.5);
  EXPECT_EQ(shipped().cultivar("Braeburn")->bloomToHarvestDays, 170);
  EXPECT_EQ(shipped().cultivar("Elstar")->bloomToHarvestDays, 133);
}

/// Western Regional Climate Center, Ellensburg, January: 33.7 and 18.6 degrees F.
TEST(ShippedTables, FahrenheitIsReadIntoCelsius) {
  const MonthlyNormals& normals = shipped().station("Ellensburg")->normals;
  EXPECT_NEAR(normals.maximum[0], 17.0 / 18, 1e-12);
  EXPECT_NEAR(normals.minimum[0], -67.0 / 9, 1e-12);
  EXPECT_EQ(shipped().station("Penticton")->normals.minimum[11], -3.7);
}

TEST(ShippedTables, OneStationLiesInTheSouth) {
  EXPECT_LT(shipped().station("Orange Airport")->latitude, 0);
  EXPECT_EQ(shipped().station("Orange Airport")->elevation, Length::metres(950));
}

std::string faultsOf(const Problems& problems) {
  std::string all;
  for (const Problem& problem : problems) all += inEnglish(problem) + "\n";
  return all;
}

constexpr const char* gala = R"([[cultivar]]
name = "Gala"
vigour = "moderate to strong"
bloom_shift_days = -3
bloom_to_harvest_days = 120
biennial = false
habit = "III"
source = "a test"
)";

std::string with(std::string text, const std::string& from, const std::string& to) {
  return text.replace(text.find(from), from.size(), to);
}

TEST(ReadCultivars, ReadsARow) {
  const auto read = readCultivars(gala, "c.toml");
  ASSERT_TRUE(read) << faultsOf(read.error());
  ASSERT_EQ(read->size(), 1U);
  EXPECT_EQ(read->front().vigourScore, 0.5);
  EXPECT_EQ(read->front().bloomShiftDays, -3);
}

struct Fault {
  std::string text;
  const char* place;
  const char* says;
};

TEST(ReadCultivars, TellsEachFaultWithLineFieldAndRemedy) {
  const Fault faults[] = {
      {with(gala, "habit = \"III\"\n", ""), "c.toml:1: ", "field habit is missing; add"},
      {with(gala, "name = \"Gala\"\n", ""), "c.toml:1: ", "number 1 the field name is"},
      {with(gala, "habit", "habits"), "c.toml:1: ", "field habit is missing"},
      {with(gala, "biennial = false", "biennial = \"no\""),
       "c.toml:6: ",
       "true nor false"},
      {with(gala, "= -3", "= \"early\""),
       "c.toml:4: ",
       "bloom_shift_days is not a number"},
      {with(gala, "= -3", "= nan"), "c.toml:4: ", "bloom_shift_days is not a number"},
      {with(gala, "120", "1200"), "c.toml:5: ", "lies outside anything likely"},
      {with(gala, "\"III\"", "3"), "c.toml:7: ", "not text between quotation marks"},
      {with(gala, "\"III\"", "\"\""), "c.toml:7: ", "not text between quotation marks"},
      {with(gala, "moderate to strong", "lusty"), "c.toml:3: ", "\"weak to moderate\""},
      {with(gala, "vigour =", "vigour"), "c.toml:3: ", "stops being TOML"},
      {std::string{gala} + "blight = \"S\"\n", "c.toml:9: ", "there is no field blight"},
      {std::string{gala} + gala, "c.toml:9: ", "repeats that of line 1"},
      {"[[variety]]\nname = \"Gala\"\n", "c.toml:1: ", "variety does not belong"},
      {"cultivar = 3\n", "c.toml:1: ", "begin each with [[cultivar]]"},
      {"", "c.toml:", "no rows"}};
  for (const Fault& fault : faults) {
    const auto read = readCultivars(fault.text, "c.toml");
    ASSERT_FALSE(read) << fault.text;
    EXPECT_THAT(inEnglish(read.error().front()),
                AllOf(StartsWith(fault.place), HasSubstr(fault.says)));
  }
}

TEST(ReadCultivars, TellsAllFaultsAtOnce) {
  const auto read = readCultivars(
      "[[cultivar]]\nname = \"A\"\nbiennial = 1\n[[cultivar]]\nname = 7\n", "c.toml");
  ASSERT_FALSE(read);
  EXPECT_EQ(read.error().size(), 5U + 1 + 1 + 6) << faultsOf(read.error());
}

constexpr const char* stock = R"([[rootstock]]
name = "M.9"
vigour_score = 0
suits_system = true
source = "a test"
)";

TEST(ReadRootstocks, ReadsARowAndTellsFaults) {
  const auto read = readRootstocks(stock, "r.toml");
  ASSERT_TRUE(read);
  EXPECT_TRUE(read->front().suitsSystem);
  const auto wrong = readRootstocks(with(stock, "= 0", "= 9"), "r.toml");
  ASSERT_FALSE(wrong);
  EXPECT_THAT(inEnglish(wrong.error().front()),
              AllOf(StartsWith("r.toml:3: "), HasSubstr("rootstock \"M.9\"")));
}

constexpr const char* station = R"([[station]]
name = "Here"
latitude = 50.6
elevation_m = 160.5
period = "1991-2020"
units = "C"
minimum = [-0.1, 0.0, 2.0, 4.3, 7.7, 10.7, 12.7, 12.4, 9.3, 6.4, 3.1, 0.8]
maximum = [5, 6.7, 10.7, 15.4, 19.4, 22.5, 24.7, 24.2, 20.0, 14.8, 9.5, 6.1]
source = "a test"
)";

TEST(ReadStations, ReadsARow) {
  const auto read = readStations(station, "s.toml");
  ASSERT_TRUE(read) << faultsOf(read.error());
  EXPECT_EQ(read->front().normals.maximum[0], 5);
  EXPECT_EQ(read->front().elevation, Length::millimetres(160'500));
}

TEST(ReadStations, TellsEachFault) {
  const Fault faults[] = {
      {with(station, ", 0.8]", "]"), "s.toml:7: ", "minimum is not a list of twelve"},
      {with(station, ", 6.1]", ", 6.1, 5]"), "s.toml:8: ", "maximum is not a list"},
      {with(station, "[5, 6.7", "[\"5\", 6.7"), "s.toml:8: ", "maximum is not a number"},
      {with(station, "\"C\"", "\"K\""), "s.toml:6: ", "units is none of: \"C\", \"F\""},
      {with(station, "50.6", "150.6"), "s.toml:3: ", "latitude lies outside"},
      {with(station, "[5,", "[-5,"), "s.toml:1: ", "above the maximum in month 1"}};
  for (const Fault& fault : faults) {
    const auto read = readStations(fault.text, "s.toml");
    ASSERT_FALSE(read) << fault.text;
    EXPECT_THAT(inEnglish(read.error().front()),
                AllOf(StartsWith(fault.place), HasSubstr(fault.says)));
  }
}

constexpr const char* kill = R"([[stage]]
name = "green tip"
bbch = 53
units = "F"
kills_one_in_ten = 18
kills_nine_in_ten = 10
source = "a test"
)";

TEST(ReadFrostKills, ReadsARowAndTellsFaults) {
  const auto read = readFrostKills(kill, "f.toml");
  ASSERT_TRUE(read) << faultsOf(read.error());
  EXPECT_EQ(read->front().bbch, 53);
  EXPECT_NEAR(read->front().oneInTen, -70.0 / 9, 1e-12);
  const Fault faults[] = {
      {with(kill, "ten = 10", "ten = 19"), "f.toml:1: ", "lies above kills_one_in_ten"},
      {with(kill, "ten = 18", "ten = 180"), "f.toml:5: ", "lies outside"},
      {with(kill, "53", "\"green\""), "f.toml:3: ", "bbch is not a number"}};
  for (const Fault& fault : faults) {
    const auto wrong = readFrostKills(fault.text, "f.toml");
    ASSERT_FALSE(wrong) << fault.text;
    EXPECT_THAT(inEnglish(wrong.error().front()),
                AllOf(StartsWith(fault.place), HasSubstr(fault.says)));
  }
}

VigourBasis vigourOfTrees(const char* cultivar, const char* rootstock) {
  Planting planting;
  planting.cultivar = cultivar;
  planting.rootstock = rootstock;
  return vigourOf(shipped(), planting);
}

/// Common practice: the combinations growers agree on.
TEST(VigourOf, AddsCultivarAndRootstock) {
  struct Row {
    const char* cultivar;
    const char* rootstock;
    double score;
    Vigour vigour;
  };

  constexpr Row rows[] = {{"Gala", "M.9 T337", 0.5, Vigour::moderate},
                          {"Fuji", "M.9 T337", 1, Vigour::strong},
                          {"Delicious, spur", "B.9", -2, Vigour::weak},
                          {"Braeburn", "G.41", -0.5, Vigour::moderate},
                          {"Jonagold", "M.26", 2, Vigour::strong}};
  for (const auto& [cultivar, rootstock, score, vigour] : rows) {
    const VigourBasis basis = vigourOfTrees(cultivar, rootstock);
    EXPECT_EQ(basis.score, score) << cultivar;
    EXPECT_EQ(basis.vigour, vigour) << cultivar;
    EXPECT_FALSE(basis.byGrower);
  }
}

TEST(VigourOf, NamesNotInTheTablesCountAsModerate) {
  EXPECT_EQ(vigourOfTrees("Seedling 12", "own roots").vigour, Vigour::moderate);
  EXPECT_EQ(vigourOfTrees("Fuji", "own roots").score, 1);
}

TEST(VigourOf, TheGrowersWordGoesFirstAndTheScoreStays) {
  Planting planting;
  planting.cultivar = "Fuji";
  planting.rootstock = "M.26";
  planting.vigour = Vigour::weak;
  const VigourBasis basis = vigourOf(shipped(), planting);
  EXPECT_EQ(basis.vigour, Vigour::weak);
  EXPECT_TRUE(basis.byGrower);
  EXPECT_EQ(basis.score, 2);
}

TEST(VigourOf, StocksThatOutgrowTheWallAreMarked) {
  for (const char* name : {"M.7", "MM.106", "MM.111"})
    EXPECT_FALSE(shipped().rootstock(name)->suitsSystem) << name;
  EXPECT_TRUE(shipped().rootstock("M.26")->suitsSystem);
}

}  // namespace

}  // namespace topwire
