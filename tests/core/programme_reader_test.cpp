#include "core/programme/programme_reader.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <ostream>

namespace topwire {

namespace {

using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::SizeIs;
using ::testing::StartsWith;

constexpr const char* head = R"(format = 1
id = "test"
name = { en = "Test", es = "Prueba" }
summary = { en = "A test", es = "Una prueba" }
)";

/// Replaces the lines that begin with the same field, or adds them behind the others.
std::string operation(const std::string& id,
                      const std::vector<std::string>& changes = {}) {
  std::vector<std::string> lines{"[[operation]]",
                                 "id = \"" + id + "\"",
                                 R"(name = { en = "Name", es = "Nombre" })",
                                 "leaves = \"1-3\"",
                                 "opens = { stage = \"green tip\" }",
                                 "closes = { stage = \"pink\" }",
                                 "seconds-per-tree = 12",
                                 "how = { en = [\"Do it\"], es = [\"Hágalo\"] }",
                                 R"(done-when = { en = "Done", es = "Listo" })",
                                 "source = \"common practice\""};
  for (const std::string& change : changes) {
    const std::string field = change.substr(0, change.find(' '));
    const auto same = std::ranges::find_if(
        lines, [&](const std::string& line) { return line.starts_with(field + " "); });
    const bool removes = change == field;
    if (same == lines.end())
      lines.push_back(change);
    else
      *same = removes ? std::string{"# none"} : change;
  }
  std::string text;
  for (const std::string& line : lines) text += line + '\n';
  return text;
}

std::vector<std::string> faultsOf(const std::string& text) {
  std::vector<std::string> said;
  const auto read = readProgramme(text, "p.toml");
  if (read) return said;
  for (const Problem& problem : read.error()) said.push_back(inEnglish(problem));
  return said;
}

Programme programmeOf(const std::string& operations) {
  auto read = readProgramme(head + operations, "p.toml");
  if (!read) ADD_FAILURE() << inEnglish(read.error().front());
  return read.value_or(Programme{});
}

struct FaultCase {
  const char* name;
  std::string change;  ///< of operation "a", whose header stands in line 5
  int line;
  std::vector<const char*> said;

  friend std::ostream& operator<<(std::ostream& out, const FaultCase& row) {
    return out << row.name;
  }
};

class ProgrammeFault : public ::testing::TestWithParam<FaultCase> {};

TEST_P(ProgrammeFault, isSaidWithItsLineItsFieldAndARemedy) {
  const FaultCase& row = GetParam();
  const auto said = faultsOf(head + operation("a", {row.change}));
  ASSERT_THAT(said, SizeIs(1));
  EXPECT_THAT(said.front(), StartsWith("p.toml:" + std::to_string(row.line) + ": In "));
  EXPECT_THAT(said.front(), HasSubstr("In operation "));
  for (const char* part : row.said) EXPECT_THAT(said.front(), HasSubstr(part));
  EXPECT_THAT(said.front(), Not(HasSubstr("%")));
}

const std::vector<FaultCase> faultCases{
    {"unknownKey", "tolls = []", 15, {"no field tolls", "did you mean tools?"}},
    {"unknownKeyLikeNone", "zzzzzz = 1", 15, {"no field zzzzzz", "seconds-per-tree"}},
    {"noSpanish", "name = { en = \"Name\" }", 7, {"name.es has no words", "write both"}},
    {"blankEnglish", R"(name = { en = " ", es = "N" })", 7, {"name.en has no words"}},
    {"oneLanguageOnly", "name = \"Name\"", 7, {"write name.en and name.es"}},
    {"thirdLanguage",
     R"(name = { en = "N", es = "N", fr = "N" })",
     7,
     {"no field name.fr"}},
    {"howMissing", "how", 5, {"how is missing", "how.en"}},
    {"howInOneLanguage", "how = { en = [\"Do\"] }", 12, {"how.es has no words"}},
    {"howUneven",
     R"(how = { en = ["a", "b"], es = ["a"] })",
     12,
     {"2 lines in English and 1 in Spanish"}},
    {"howTooLong",
     R"(how = { en = ["1", "2", "3", "4"], es = ["1", "2", "3", "4"] })",
     12,
     {"4 lines", "room for three"}},
    {"howNoList",
     "how = { en = 3, es = [\"a\"] }",
     12,
     {"how.en is not a list of texts"}},
    {"doneWhenMissing", "done-when", 5, {"done-when is missing"}},
    {"sourceMissing", "source", 5, {"source is missing"}},
    {"sourceEmpty", "source = \"\"", 14, {"source is empty"}},
    {"idNoText", "id = 7", 6, {"operation 1", "id is not text"}},
    {"idCapitals", "id = \"operation a B\"", 6, {"small letters"}},
    {"stageUnknown",
     "opens = { stage = \"gren tip\" }",
     9,
     {"opens.stage", "did you mean “green tip”?"}},
    {"stageLikeNone", "opens = { stage = \"xxxxxxxxxx\" }", 9, {"write one of", "pink"}},
    {"stageCodeUnknown", "opens = { stage = 12 }", 9, {"opens.stage is 12"}},
    {"stageNoText", "opens = { stage = true }", 9, {"opens.stage is not text"}},
    {"anchorNoTable", "opens = \"green tip\"", 9, {"opens is not a set of fields"}},
    {"anchorMissing", "opens", 5, {"opens is missing", "{ stage = \"green tip\" }"}},
    {"anchorOnNothing", "opens = { days = 3 }", 9, {"hangs on nothing"}},
    {"anchorOnTwo",
     "opens = { stage = \"pink\", planting = true }",
     9,
     {"both stage and planting"}},
    {"anchorKey",
     "opens = { stage = \"pink\", dais = 3 }",
     9,
     {"did you mean opens.days"}},
    {"plantingFalse", "opens = { planting = false }", 9, {"can only be true"}},
    {"monthUnknown",
     "opens = { month = \"febuary\", day = 1 }",
     9,
     {"did you mean “february”?"}},
    {"monthWithoutDay", "opens = { month = \"may\" }", 9, {"opens.day is missing"}},
    {"dayTooHigh",
     "opens = { month = \"april\", day = 31 }",
     9,
     {"opens.day is 31", "1 to 30"}},
    {"daysNoNumber",
     R"(opens = { stage = "pink", days = "3" })",
     9,
     {"opens.days is not a whole number"}},
    {"leavesBackwards", "leaves = \"3-1\"", 8, {"“3-1”, which runs backwards"}},
    {"leavesNone", "leaves = \"some\"", 8, {"“some”, which names no leaves"}},
    {"leavesEmpty", "leaves = []", 8, {"names no leaves"}},
    {"leavesMissing", "leaves", 5, {"leaves is missing", "planting day"}},
    {"vigourUnknown", "vigour = [\"week\"]", 15, {"did you mean “weak”?"}},
    {"plantingsUnknown", "plantings = [\"mane\"]", 15, {"did you mean “main”?"}},
    {"avoidUnknown", "avoid = [\"hail\"]", 15, {"write one of: wet, frost"}},
    {"cutsNoFlag", "cuts = \"yes\"", 15, {"cuts is neither true nor false"}},
    {"skillInCapitals", "skill = \"Pruning\"", 15, {"names a skill in small letters"}},
    {"skillEmpty", "skill = \"\"", 15, {"skill is empty"}},
    {"skillsTwo", "skill = \"pruning, tractor\"", 15, {"names a skill in small letters"}},
    {"repeatZero", "repeat = 0", 15, {"repeat is 0", "1 to 366"}},
    {"repeatZeroForOne",
     "repeat = { weak = 0, moderate = 2, strong = 3 }",
     15,
     {"repeat.weak is 0"}},
    {"repeatWithoutOne",
     "repeat = { weak = 1, moderate = 2 }",
     15,
     {"repeat.strong is missing"}},
    {"secondsNegative", "seconds-per-tree = -1", 11, {"seconds-per-tree is -1"}},
    {"secondsZeroInALeaf",
     "seconds-per-tree = { 1 = 0 }",
     11,
     {"seconds-per-tree.1 is 0"}},
    {"secondsByNoLeaf", "seconds-per-tree = { one = 5 }", 11, {"one names no leaf"}},
    {"secondsMissing", "seconds-per-tree", 5, {"seconds-per-tree is missing"}},
    {"secondsText", "seconds-per-tree = \"12\"", 11, {"not a whole number"}},
    {"materialWithoutCount",
     R"(materials = [{ item = "tie", en = "tie", es = "amarre" }])",
     15,
     {"materials.per-tree is missing"}},
    {"materialOfNone",
     R"(materials = [{ item = "tie", en = "t", es = "a", per-tree = 0 }])",
     15,
     {"materials.per-tree is not a number above zero"}},
    {"materialsNoList", "materials = \"ties\"", 15, {"materials is not a list"}},
    {"cutOffWithoutReason",
     "cut-off = { stage = \"full bloom\" }",
     15,
     {"cut-off.reason is missing"}},
    {"cutOffBeforeClosing",
     R"(cut-off = { stage = "tight cluster", reason = { en = "a", es = "b" } })",
     15,
     {"cut-off comes before closes"}},
    {"closesOnAnEarlierStage",
     "closes = { stage = \"silver tip\" }",
     10,
     {"closes comes before opens"}},
    {"closesBeforeTheSameStage",
     "closes = { stage = \"green tip\", days = -1 }",
     10,
     {"closes comes before opens"}},
    {"afterItself", "closes = { after = \"a\" }", 10, {"hangs on the operation itself"}},
    {"afterNobody", "closes = { after = \"zzzzz\" }", 10, {"“zzzzz”", "no operation"}},
};

INSTANTIATE_TEST_SUITE_P(Table,
                         ProgrammeFault,
                         ::testing::ValuesIn(faultCases),
                         [](const auto& row) { return std::string{row.param.name}; });

TEST(ReadProgramme, saysWhereTheTextStopsBeingToml) {
  EXPECT_THAT(faultsOf("format = 1\nid = \"test\nname = 3\n"),
              ElementsAre(AllOf(StartsWith("p.toml:2: "), HasSubstr("is not TOML"))));
}

TEST(ReadProgramme, takesNoTwoFieldsOfOneName) {
  EXPECT_THAT(faultsOf("format = 1\nformat = 1\n"),
              ElementsAre(AllOf(StartsWith("p.toml:2: "), HasSubstr("is not TOML"))));
}

TEST(ReadProgramme, readsNoFormatOfTheFuture) {
  std::string text = head + operation("a");
  text.replace(text.find("format = 1"), 10, "format = 2");
  EXPECT_THAT(faultsOf(text),
              ElementsAre(AllOf(StartsWith("p.toml:1: "), HasSubstr("reads format 1"))));
}

TEST(ReadProgramme, wantsAtLeastOneOperation) {
  EXPECT_THAT(faultsOf(head), ElementsAre(HasSubstr("[[operation]]")));
  EXPECT_THAT(faultsOf(""),
              ElementsAre(HasSubstr("format is missing"),
                          HasSubstr("id is missing"),
                          HasSubstr("name is missing"),
                          HasSubstr("summary is missing"),
                          HasSubstr("[[operation]]")));
}

TEST(ReadProgramme, reportsAllFaultsAtOnceInTheOrderOfTheirLines) {
  const std::string text =
      head
      + operation("a",
                  {"leaves = \"3-1\"",
                   "opens = { stage = \"gren tip\" }",
                   "source = \"\"",
                   "repeat = 0",
                   "colour = 1"})
      + operation("a", {"closes = { after = \"b\" }", "vigour = [\"week\"]"});
  EXPECT_THAT(
      faultsOf(text),
      ElementsAre(StartsWith("p.toml:8: "),
                  StartsWith("p.toml:9: "),
                  StartsWith("p.toml:14: "),
                  StartsWith("p.toml:15: "),
                  StartsWith("p.toml:16: "),
                  AllOf(StartsWith("p.toml:18: "), HasSubstr("same as in line 6")),
                  AllOf(StartsWith("p.toml:22: "), HasSubstr("“b”")),
                  AllOf(StartsWith("p.toml:27: "), HasSubstr("week"))));
}

TEST(ReadProgramme, suggestsTheOperationMeant) {
  EXPECT_THAT(faultsOf(head + operation("rub-rivals")
                       + operation("second-rub",
                                   {"opens = { after = \"rub-rival\" }",
                                    "closes = { after = \"rub-rivals\", days = 9 }"})),
              ElementsAre(HasSubstr("did you mean “rub-rivals”?")));
}

TEST(ReadProgramme, namesTheWholeCircleOfAnchorsOnce) {
  const auto hangingOn = [](const std::string& id, const std::string& other) {
    return operation(id,
                     {"opens = { after = \"" + other + "\" }",
                      "closes = { after = \"" + other + "\", days = 7 }"});
  };
  const auto said = faultsOf(head + hangingOn("lead-in", "b") + hangingOn("b", "c")
                             + hangingOn("c", "d") + hangingOn("d", "b"));
  EXPECT_THAT(said,
              ElementsAre(AllOf(StartsWith("p.toml:15: "),
                                HasSubstr("in a circle (b → c → d → b)"))));
}

TEST(ReadProgramme, hangsNothingOnWorkDoneInLaterLeaves) {
  const std::string early = operation("early",
                                      {"leaves = \"1+\"",
                                       "opens = { after = \"late\" }",
                                       "closes = { after = \"late\", days = 7 }"});
  EXPECT_THAT(faultsOf(head + early + operation("late", {"leaves = \"2-3\""})),
              ElementsAre(HasSubstr("first done in leaf 2, after leaf 1"),
                          HasSubstr("closes hangs on late")));
  EXPECT_THAT(faultsOf(head + early + operation("late", {"leaves = \"1\""})), IsEmpty());
  EXPECT_THAT(faultsOf(head + early + operation("late", {"leaves = -1"})), IsEmpty());
}

TEST(ReadProgramme, hangsNothingOnWorkNotDoneOnTheseTrees) {
  const std::string text =
      head + operation("first", {"vigour = [\"strong\"]", "plantings = [\"main\"]"})
      + operation("then",
                  {"opens = { after = \"first\" }",
                   R"(vigour = ["moderate", "strong"])",
                   R"(plantings = ["main", "replant"])"});
  EXPECT_THAT(faultsOf(text),
              ElementsAre(HasSubstr("first, which is not done on moderate trees"),
                          HasSubstr("first, which is not done on replants")));
}

TEST(ReadProgramme, letsWorkOnThePlantingDayLeaveOutLeaves) {
  const Programme programme = programmeOf(operation("plant",
                                                    {"leaves",
                                                     "opens = { planting = true }",
                                                     "closes = { planting = true, days = "
                                                     "7 }"}));
  const Operation& plant = programme.operations.front();
  EXPECT_TRUE(plant.oncePerPlanting());
  for (const int leaf : {-3, 0, 1, 40})
    EXPECT_TRUE(plant.appliesTo(leaf, Vigour::weak, PlantingKind::main)) << leaf;
}

TEST(ReadProgramme, keepsEveryField) {
  const Programme programme = programmeOf(operation(
      "all-of-it",
      {R"(short = { en = "S", es = "C" })",
       R"(leaves = [0, "2-3", "-3 to -1", "-6--5", "7+"])",
       R"(vigour = ["weak", "Strong"])",
       "plantings = [\"pollinizer\"]",
       "opens = { month = \"November\", day = 30, season = -1, months = 1, weeks = 2, "
       "days = -3 }",
       "closes = { stage = 57, days = 3 }",
       R"(cut-off = { stage = "Full Bloom", reason = { en = "R", es = "P" } })",
       "repeat = { weak = 28, moderate = 21, strong = 14 }",
       "seconds-per-tree = { 1 = 24, 3 = 30 }",
       R"(tools = { en = ["saw", "gloves"], es = ["serrucho", "guantes"] })",
       R"(materials = [{ item = "tie", en = "tie", es = "amarre", per-tree = 0.5 }])",
       R"(avoid = ["wet", "heat"])",
       "cuts = true",
       "skill = \"poda ñ\"",
       R"(caution = { en = "Care", es = "Cuidado" })",
       "drawing = \"other\""}));
  const Operation& read = programme.operations.front();
  EXPECT_EQ(read.shortName, (Words{"S", "C"}));
  EXPECT_THAT(read.leaves,
              ElementsAre(LeafRange{0, 0},
                          LeafRange{2, 3},
                          LeafRange{-3, -1},
                          LeafRange{-6, -5},
                          LeafRange{7, LeafRange::open}));
  EXPECT_EQ(read.vigours, (std::set{Vigour::weak, Vigour::strong}));
  EXPECT_EQ(read.kinds, std::set{PlantingKind::pollinizer});
  EXPECT_EQ(read.opens, (Anchor{OnMonth{11, 30, -1}, 1, 11}));
  EXPECT_EQ(read.closes, (Anchor{OnStage{57}, 0, 3}));
  EXPECT_EQ(read.cutOff->anchor, (Anchor{OnStage{65}, 0, 0}));
  EXPECT_EQ(read.cutOff->reason, (Words{"R", "P"}));
  EXPECT_EQ(read.repeat->everyDays, (std::array{28, 21, 14}));
  EXPECT_EQ(read.secondsPerTree, (std::map<int, int>{{1, 24}, {3, 30}}));
  EXPECT_THAT(read.tools,
              ElementsAre(Words{"saw", "serrucho"}, Words{"gloves", "guantes"}));
  EXPECT_THAT(read.materials, ElementsAre(Material{"tie", {"tie", "amarre"}, 0.5}));
  EXPECT_EQ(read.avoid, (std::set{Avoid::wet, Avoid::heat}));
  EXPECT_TRUE(read.cuts);
  EXPECT_EQ(read.skill, "poda ñ");
  EXPECT_EQ(read.caution, (Words{"Care", "Cuidado"}));
  EXPECT_EQ(read.drawing, "other");
  EXPECT_EQ(read.line, 5);
}

TEST(ReadProgramme, fillsInWhatMayBeLeftOut) {
  const Programme programme = programmeOf(operation("a"));
  const Operation& read = programme.operations.front();
  EXPECT_EQ(read.shortName, read.name);
  EXPECT_EQ(read.drawing, "a");
  EXPECT_THAT(read.vigours, SizeIs(3));
  EXPECT_THAT(read.kinds, SizeIs(3));
  EXPECT_FALSE(read.repeat || read.cutOff || read.cuts);
  EXPECT_EQ(read.skill, "");
  EXPECT_EQ(programme.find("a"), &read);
  EXPECT_EQ(programme.find("b"), nullptr);
}

TEST(ReadProgramme, takesTheSameDaysForEveryVigour) {
  const Programme programme = programmeOf(operation("a", {"repeat = 7"}));
  EXPECT_EQ(programme.operations.front().repeat->everyDays, (std::array{7, 7, 7}));
}

TEST(Operation, takesTheSecondsOfTheNearestLeafBelow) {
  Operation operation;
  EXPECT_EQ(operation.secondsPerTreeAt(1), 0);
  operation.secondsPerTree = {{2, 20}, {4, 40}};
  for (const auto& [leaf, seconds] :
       std::map<int, int>{{-1, 20}, {1, 20}, {2, 20}, {3, 20}, {4, 40}, {12, 40}})
    EXPECT_EQ(operation.secondsPerTreeAt(leaf), seconds) << leaf;
}

TEST(InAnchorOrder, putsWorkBehindWhatItHangsOnAndKeepsTheFilesOrderElse) {
  const Programme programme = programmeOf(
      operation("c", {"opens = { after = \"b\" }", "closes = { after = \"b\" }"})
      + operation("x") + operation("b", {"opens = { after = \"a\" }"}) + operation("a"));
  std::vector<std::string> ids;
  for (const Operation* each : inAnchorOrder(programme)) ids.push_back(each->id);
  EXPECT_THAT(ids, ElementsAre("a", "b", "c", "x"));
}

}  // namespace

}  // namespace topwire
