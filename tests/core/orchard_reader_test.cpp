#include "core/exchange/orchard_reader.h"

#include "core/exchange/nearest.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>

#include <ostream>

namespace topwire {
namespace {

using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using testing::shippedProgrammes;
using testing::shippedTables;

/// Lines are counted below, so the text starts on its first line.
const std::string good = R"([orchard]
name = "Alder Bend"
latitude = 46.9
elevation = "1620 ft"
units = "us-customary"
station = "Ellensburg"
records-from = 2027-01-01

[[crew]]
name = "Heron"
workers = 7

[[block]]
name = "Creek 1"
rows = "1-8, 10"
row-spacing = 11
row-length = "300 ft"
elevation = "500 m"
notes = "Wet at the low end."

[[block.planting]]
cultivar = "Gala"
rootstock = "M.9 T337"
planted = "2025-04-17"
rows = "1-8"
tree-spacing = "3 ft 6 in"

[[block.planting]]
code = "bees"
cultivar = "Golden Delicious"
rootstock = "G.41"
kind = "pollinizer"
planned = 2029-04-10
rows = 10
tree-spacing = 3
trees = 90
vigour = "weak"
vigour-reason = "Wet feet"

[[seen]]
planting = "creek-1-gala"
stage = "silver tip"
day = 2027-03-28
by = "Wren"

[[seen]]
planting = "creek-1-gala"
stage = 51
day = 2027-03-20

[[tick]]
task = "creek-1-gala:dormant-pruning:2027:1"
rows = "1-4"
percent = 50
minutes = 240
by = "Heron"
day = 2027-03-02
)";

Checked<DescribedOrchard> read(const std::string& text) {
  IdSource ids = IdSource::countingFrom(1);
  return readOrchard(text, "orchard.toml", shippedTables(), shippedProgrammes(), ids);
}

/// `good` with one piece of it replaced.
std::string with(const std::string& from, const std::string& to) {
  std::string text = good;
  const auto at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  return text.replace(at, from.size(), to);
}

std::vector<std::string> problemsIn(const std::string& text) {
  std::vector<std::string> told;
  const auto result = read(text);
  if (result) return told;
  for (const Problem& problem : result.error()) told.push_back(inEnglish(problem));
  return told;
}

TEST(OrchardReader, readsEveryField) {
  const auto result = read(good);
  ASSERT_TRUE(result) << inEnglish(result.error().front());
  const Orchard& orchard = result->orchard;
  EXPECT_EQ(orchard.settings.name, "Alder Bend");
  EXPECT_EQ(orchard.settings.units, UnitSystem::usCustomary);
  EXPECT_EQ(orchard.settings.elevation, Length::feet(1620));
  EXPECT_EQ(orchard.settings.recordsFrom, dayOf(2027, 1, 1));
  const Station* station = shippedTables().station("Ellensburg");
  ASSERT_NE(station, nullptr);
  EXPECT_EQ(orchard.settings.normals, station->normals);
  EXPECT_EQ(orchard.settings.stationElevation, station->elevation);

  const Block* block = blockByName(orchard, "Creek 1");
  ASSERT_NE(block, nullptr);
  EXPECT_EQ(rowsText(block->rows), "1-8, 10");
  EXPECT_EQ(block->rowSpacing, Length::feet(11));
  EXPECT_EQ(block->rowLength, Length::feet(300));
  EXPECT_EQ(block->elevation, Length::metres(500));
  EXPECT_EQ(block->notes, "Wet at the low end.");

  const Planting* gala = plantingByCode(orchard, "creek-1-gala");
  ASSERT_NE(gala, nullptr);
  EXPECT_EQ(gala->planted, dayOf(2025, 4, 17));
  EXPECT_EQ(gala->treeSpacing, Length::inches(42));
  EXPECT_EQ(gala->programme, "tall-spindle-apple");
  EXPECT_EQ(gala->vigour, std::nullopt);

  const Planting* bees = plantingByCode(orchard, "bees");
  ASSERT_NE(bees, nullptr);
  EXPECT_EQ(bees->kind, PlantingKind::pollinizer);
  EXPECT_EQ(rowsText(bees->rows), "10");
  EXPECT_EQ(bees->trees, 90);
  EXPECT_EQ(bees->vigour, Vigour::weak);
  EXPECT_EQ(bees->vigourReason, "Wet feet");
  EXPECT_EQ(bees->planted, dayOf(2029, 4, 10));

  ASSERT_EQ(orchard.crews.size(), 1U);
  EXPECT_EQ(orchard.crews.begin()->second.workers, 7);
  EXPECT_EQ(orchard.observations.size(), 2U);
  ASSERT_EQ(result->ticks.size(), 1U);
  EXPECT_EQ(result->ticks[0].rows, "1-4");
  EXPECT_EQ(result->ticks[0].percent, 50);
  EXPECT_EQ(result->ticks[0].minutes, 240);
  EXPECT_EQ(result->ticks[0].line, 52);
}

TEST(OrchardReader, takesNormalsOfAStationOfItsOwn) {
  const auto whole = read(
      "[orchard]\nname = \"H\"\nlatitude = 47\nelevation = 480\n"
      "station = \"Home\"\nrecords-from = 2027-01-01\n"
      "[orchard.normals]\nstation-elevation = \"450 m\"\n"
      "minimum = [-7,-5,-2,1,5,9,12,11,6,1,-3,-7]\n"
      "maximum = [1,5,11,16,20,24,28,28,24,16,7,1]\n");
  ASSERT_TRUE(whole) << inEnglish(whole.error().front());
  EXPECT_EQ(whole->orchard.settings.station, "Home");
  EXPECT_EQ(whole->orchard.settings.stationElevation, Length::metres(450));
  EXPECT_EQ(whole->orchard.settings.elevation, Length::metres(480));
  EXPECT_EQ(whole->orchard.settings.normals.maximum[6], 28);
}

TEST(OrchardReader, takesABlocksCorrectionsAndTheFirstLeafsDelay) {
  const auto plain = read(good);
  ASSERT_TRUE(plain);
  EXPECT_EQ(plain->orchard.settings.firstLeafDelayDays, 10);
  EXPECT_EQ(blockByName(plain->orchard, "Creek 1")->minimumCorrection, 0);
  const auto result = read(with("row-spacing = 11\n",
                                "row-spacing = 11\nminimum-correction = -1.5\n"
                                "maximum-correction = 1\n"));
  ASSERT_TRUE(result) << inEnglish(result.error().front());
  const Block* block = blockByName(result->orchard, "Creek 1");
  EXPECT_EQ(block->minimumCorrection, -1.5);
  EXPECT_EQ(block->maximumCorrection, 1);
  const auto delayed =
      read(with("latitude = 46.9\n", "latitude = 46.9\nfirst-leaf-delay = 7\n"));
  ASSERT_TRUE(delayed) << inEnglish(delayed.error().front());
  EXPECT_EQ(delayed->orchard.settings.firstLeafDelayDays, 7);
}

struct FaultCase {
  std::string name;
  std::string from;
  std::string to;
  std::string place;
  std::string part;
};

/// What a failing test is called by.
void PrintTo(const FaultCase& fault, std::ostream* out) {
  *out << fault.name;
}

class OrchardReaderFault : public ::testing::TestWithParam<FaultCase> {};

TEST_P(OrchardReaderFault, isToldOnceWithItsLine) {
  const FaultCase& fault = GetParam();
  EXPECT_THAT(problemsIn(with(fault.from, fault.to)),
              ElementsAre(AllOf(HasSubstr("orchard.toml:" + fault.place + ": "),
                                HasSubstr(fault.part))));
}

// clang-format off
INSTANTIATE_TEST_SUITE_P(Table, OrchardReaderFault, ::testing::Values(
  FaultCase{"syntax", "workers = 7", "workers 7", "11", "not TOML"},
  FaultCase{"noSuchLocalDate", "2027-03-28", "2027-02-29", "43", "day between 1 and 28"},
  FaultCase{"noSuchDayInText", "\"2025-04-17\"", "\"2025-02-29\"", "24", "\"planted\" is \"2025-02-29\""},
  FaultCase{"dayIsNumber", "\"2025-04-17\"", "20250417", "24", "\"planted\" takes a day"},
  FaultCase{"unknownKey", "row-length", "row-lenght", "17", "\"row-length\""},
  FaultCase{"unknownKeyFarOff", "notes", "favourite-colour", "19", "take the line out"},
  FaultCase{"unknownTable", "[[crew]]", "[[crews]]", "9", "\"crew\""},
  FaultCase{"singleBrackets", "[[crew]]", "[crew]", "9", "[[crew]]"},
  FaultCase{"missingName", "name = \"Heron\"\n", "", "9", "This crew has no \"name\""},
  FaultCase{"missingSpacing", "row-spacing = 11\n", "", "13", "\"row-spacing\""},
  FaultCase{"correctionTooLarge", "notes = \"Wet at the low end.\"", "minimum-correction = 18", "19", "10 degrees Celsius"},
  FaultCase{"correctionIsText", "notes = \"Wet at the low end.\"", "maximum-correction = \"2 F\"", "19", "takes a number"},
  FaultCase{"delayTooLong", "records-from", "first-leaf-delay = 61\nrecords-from", "7", "from 0 to 60"},
  FaultCase{"rowsBackwards", "\"1-8, 10\"", "\"8-1, 10\"", "15", "backwards"},
  FaultCase{"rowsTwice", "\"1-8, 10\"", "\"1-8, 8-10\"", "15", "twice"},
  FaultCase{"rowsNoRows", "rows = \"1-4\"", "rows = \"all\"", "53", "\"all\""},
  FaultCase{"rowsOutOfBounds", "rows = 10\n", "rows = 0\n", "34", "1 to 9999"},
  FaultCase{"overlappingRows", "rows = 10\n", "rows = \"8, 10\"\n", "34", "8"},
  FaultCase{"rowsOutsideBlock", "rows = 10\n", "rows = 11\n", "34", "11"},
  FaultCase{"unknownCultivar", "\"Golden Delicious\"", "\"Goldon Delicious\"", "30", "Goldon Delicious"},
  FaultCase{"unknownRootstock", "\"G.41\"", "\"G.4l\"", "31", "G.4l"},
  FaultCase{"zeroRowSpacing", "row-spacing = 11", "row-spacing = 0", "16", "pacing"},
  FaultCase{"zeroTreeSpacing", "tree-spacing = 3\n", "tree-spacing = \"0 ft\"\n", "35", "pacing"},
  FaultCase{"lengthInYards", "\"300 ft\"", "\"100 yd\"", "17", "\"row-length\" takes a length"},
  FaultCase{"unknownKind", "\"pollinizer\"", "\"polinizer\"", "32", "main, pollinizer, replant"},
  FaultCase{"unknownProgramme", "trees = 90", "trees = 90\nprogramme = \"vase\"", "37", "tall-spindle-apple"},
  FaultCase{"plantedAndPlanned", "planned = 2029-04-10", "planned = 2029-04-10\nplanted = 2029-04-10", "33", "both"},
  FaultCase{"unknownStation", "\"Ellensburg\"", "\"Elensburg\"", "6", "\"Ellensburg\" is the nearest name"},
  FaultCase{"latitudeAsText", "46.9", "\"46.9 N\"", "3", "without quotes"},
  FaultCase{"unknownPlanting", "planting = \"creek-1-gala\"\nstage = 51", "planting = \"creek-1-galla\"\nstage = 51", "47", "write \"creek-1-gala\""},
  FaultCase{"unknownStage", "\"silver tip\"", "\"sliver tip\"", "42", "write \"silver tip\""},
  FaultCase{"percent", "percent = 50", "percent = 150", "54", "1 to 100"},
  FaultCase{"noWorker", "by = \"Heron\"\n", "", "51", "\"by\""},
  FaultCase{"duplicateBlock", "[[seen]]", "[[block]]\nname = \"Creek 1\"\nrows = 1\nrow-spacing = 11\n[[seen]]", "41", "Creek 1"},
  FaultCase{"notUtf8", "Wet at", "Wet \xff at", "19", "utf-8"}),
  [](const auto& tested) { return tested.param.name; });

// clang-format on

TEST(OrchardReader, tellsAllFaultsAtOnceInTheOrderOfTheirLines) {
  std::string text = with("latitude", "lattitude");
  text.replace(text.find("\"300 ft\""), 8, "\"far\"");
  text.replace(text.find("\"2025-04-17\""), 12, "\"2025-13-01\"");
  text.replace(text.find("percent = 50"), 12, "percent = 0");
  EXPECT_THAT(problemsIn(text),
              ElementsAre(HasSubstr("orchard.toml:1: This orchard has no \"latitude\""),
                          HasSubstr("orchard.toml:3: \"lattitude\" is no field"),
                          HasSubstr("orchard.toml:17: "),
                          HasSubstr("orchard.toml:24: "),
                          HasSubstr("orchard.toml:54: ")));
}

TEST(OrchardReader, faultyRowsOfABlockAreNotToldAgainForItsPlantings) {
  EXPECT_THAT(problemsIn(with("\"1-8, 10\"", "\"one to ten\"")),
              ElementsAre(HasSubstr("orchard.toml:15: ")));
}

TEST(OrchardReader, normalsAreTwelveNumbersEach) {
  EXPECT_THAT(problemsIn("[orchard]\nname = \"H\"\nlatitude = 47\nelevation = 480\n"
                         "station = \"Home\"\nrecords-from = 2027-01-01\n"
                         "[orchard.normals]\nstation-elevation = \"450 m\"\n"
                         "minimum = [-7,-5,-2,1,5,9,12,11,6,1,-3]\n"
                         "maximum = \"hot\"\n"),
              ElementsAre(HasSubstr("orchard.toml:9: \"minimum\" takes twelve"),
                          HasSubstr("orchard.toml:10: \"maximum\" takes numbers")));
}

TEST(OrchardReader, anEmptyTextLacksTheOrchard) {
  EXPECT_THAT(problemsIn(""), ElementsAre(HasSubstr("[orchard]")));
}

TEST(OrchardReader, readsTheDemos) {
  for (const char* path : {"demo/orchard.toml", "demo/orchard-south.toml"}) {
    IdSource ids = IdSource::countingFrom(1);
    const auto result = readOrchard(
        testing::sourceText(path), path, shippedTables(), shippedProgrammes(), ids);
    ASSERT_TRUE(result) << inEnglish(result.error().front());
  }
}

TEST(NearestName, findsWhatWasMeant) {
  const std::vector<std::string> known{"Gala", "Fuji", "Golden Delicious"};
  EXPECT_EQ(nearestName("gala", known), "Gala");
  EXPECT_EQ(nearestName("Fjui", known), "Fuji");
  EXPECT_EQ(nearestName("Golden Delicius", known), "Golden Delicious");
  EXPECT_EQ(nearestName("Honeypot", known), "");
  EXPECT_EQ(nearestName("", known), "");
}

}  // namespace
}  // namespace topwire
