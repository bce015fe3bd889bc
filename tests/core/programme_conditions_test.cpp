#include "core/programme/programme_reader.h"

#include <gmock/gmock.h>

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

/// Ten lines and the further ones behind them.
std::string operation(const std::string& id, const std::string& more = {}) {
  return "[[operation]]\nid = \"" + id + R"("
name = { en = "Name", es = "Nombre" }
leaves = "1-3"
opens = { stage = "green tip" }
closes = { stage = "pink" }
seconds-per-tree = 12
how = { en = ["Do it"], es = ["Hágalo"] }
done-when = { en = "Done", es = "Listo" }
source = "common practice"
)" + more + '\n';
}

std::vector<std::string> faultsOf(const std::string& operations) {
  std::vector<std::string> said;
  const auto read = readProgramme(head + operations, "p.toml");
  if (read) return said;
  for (const Problem& problem : read.error()) said.push_back(inEnglish(problem));
  return said;
}

Operation firstOf(const std::string& operations) {
  const auto read = readProgramme(head + operations, "p.toml");
  if (read) return read->operations.front();
  ADD_FAILURE() << inEnglish(read.error().front());
  return {};
}

TEST(ProgrammeConditions, readsWhatHasToBeDoneBefore) {
  const std::string others = operation("raise-trellis") + operation("plant");
  EXPECT_THAT(
      firstOf(operation("tie", "needs = [\"raise-trellis\", \"plant\"]") + others).needs,
      ElementsAre("raise-trellis", "plant"));
  EXPECT_THAT(firstOf(operation("tie", "needs = \"plant\"") + others).needs,
              ElementsAre("plant"));
}

TEST(ProgrammeConditions, readsLengthsFruitAndPercentAsAMeasurementKeepsThem) {
  using Side = Condition::Side;
  const auto when = firstOf(operation("thin", R"(when = [
  { measure = "trunk diameter", at-least = "1.5 in" },
  { measure = "Trunk Girth", below = "15,5 cm" },
  { measure = "leader height", below = "top wire" },
  { measure = "leader height", at-least = "6 ft 6 in" },
  { measure = "leader growth", below = "600 mm" },
  { measure = "shoot growth", at-least = "0.5 m" },
  { measure = "fruit per tree", at-least = 30 },
  { measure = "space filled", at-least = 90 }])"))
                        .when;
  EXPECT_THAT(
      when,
      ElementsAre(Condition{Measure::trunkDiameter, Side::atLeast, 38'100, false},
                  Condition{Measure::trunkGirth, Side::below, 155'000, false},
                  Condition{Measure::leaderHeight, Side::below, 0, true},
                  Condition{Measure::leaderHeight, Side::atLeast, 1'981'200, false},
                  Condition{Measure::leaderGrowth, Side::below, 600'000, false},
                  Condition{Measure::shootGrowth, Side::atLeast, 500'000, false},
                  Condition{Measure::fruitPerTree, Side::atLeast, 30, false},
                  Condition{Measure::spaceFilled, Side::atLeast, 90, false}));
}

TEST(ProgrammeConditions, readsVisitsByGrowthAndTheirEnd) {
  const auto repeat =
      firstOf(operation("tie",
                        "repeat = { weak = 28, moderate = 21, strong = 14, growth = "
                        R"("15 in", until = { measure = "leader height", at-least = )"
                        R"("top wire" } })"))
          .repeat;
  ASSERT_TRUE(repeat);
  EXPECT_EQ(repeat->everyDays, (std::array{28, 21, 14}));
  EXPECT_EQ(repeat->everyGrowth, Length::inches(15));
  EXPECT_EQ(repeat->until,
            (Condition{Measure::leaderHeight, Condition::Side::atLeast, 0, true}));
}

TEST(ProgrammeConditions, leavesGrowthAndEndOutWhereNotWritten) {
  const auto repeat = firstOf(operation("tie", "repeat = 21")).repeat;
  EXPECT_FALSE(repeat->everyGrowth || repeat->until);
}

TEST(ProgrammeConditions, readsWhatDelayCosts) {
  const Operation plain = firstOf(operation("tie"));
  EXPECT_EQ(plain.delayCost, DelayCost::medium);
  EXPECT_EQ(plain.delayReason, Words{});
  const Operation said = firstOf(operation(
      "tie",
      R"(if-late = { cost = "very high", en = "The leader breaks", es = "Se quiebra" })"));
  EXPECT_EQ(said.delayCost, DelayCost::veryHigh);
  EXPECT_EQ(said.delayReason, (Words{"The leader breaks", "Se quiebra"}));
  EXPECT_EQ(firstOf(operation("tie", "if-late = { cost = \"low\" }")).delayCost,
            DelayCost::low);
}

TEST(ProgrammeConditions, readsWhatAMaterialIsCountedBy) {
  const Operation read = firstOf(operation("wire", R"(materials = [
  { item = "clip", en = "clip", es = "clip", per-tree = 1 },
  { item = "staple", en = "staple", es = "grapa", per-post = 4 },
  { item = "anchor", en = "anchor", es = "ancla", per-row-end = 1 },
  { item = "drip line", en = "drip line", es = "manguera", per-metre-of-row = 1.02 },
  { item = "wire", en = "wire", es = "alambre", per-metre-of-wire = 1.05 }]
avoid = ["spray"])"));
  std::vector<std::pair<double, Per>> amounts;
  for (const Material& material : read.materials)
    amounts.emplace_back(material.amount, material.per);
  EXPECT_THAT(amounts,
              ElementsAre(std::pair{1.0, Per::tree},
                          std::pair{4.0, Per::post},
                          std::pair{1.0, Per::rowEnd},
                          std::pair{1.02, Per::metreOfRow},
                          std::pair{1.05, Per::metreOfWire}));
  EXPECT_EQ(read.avoid, std::set{Avoid::spray});
}

struct FaultCase {
  const char* name;
  std::string more;  ///< of operation "a"; its first line is the file's fifteenth
  std::vector<const char*> said;

  friend std::ostream& operator<<(std::ostream& out, const FaultCase& row) {
    return out << row.name;
  }
};

class ConditionFault : public ::testing::TestWithParam<FaultCase> {};

TEST_P(ConditionFault, isSaidWithItsLineItsFieldAndARemedy) {
  const FaultCase& row = GetParam();
  const auto said = faultsOf(operation("a", row.more));
  ASSERT_THAT(said, SizeIs(1));
  EXPECT_THAT(said.front(), StartsWith("p.toml:15: In operation a, "));
  for (const char* part : row.said) EXPECT_THAT(said.front(), HasSubstr(part));
  EXPECT_THAT(said.front(), Not(HasSubstr("%")));
}

std::string when(const std::string& conditions) {
  return "when = [" + conditions + ']';
}

std::string until(const std::string& condition) {
  return "repeat = { weak = 3, moderate = 2, strong = 1, until = { " + condition + " } }";
}

const std::vector<FaultCase> faultCases{
    {"needsNoText", "needs = [3]", {"needs is not a list of texts"}},
    {"needsItself", "needs = \"a\"", {"needs names the operation itself"}},
    {"needsNobody", "needs = \"zzzzzz\"", {"“zzzzzz”", "no operation"}},
    {"whenNoList", "when = \"grown\"", {"when is not a list of sets of fields"}},
    {"measureMissing", when("{ below = 3 }"), {"when.measure is missing"}},
    {"measureUnknown",
     when(R"({ measure = "trunk diametre", below = "3 in" })"),
     {"when.measure", "did you mean “trunk diameter”?"}},
    {"measureOfTheWholePlanting",
     when("{ measure = \"missing trees\", below = 3 }"),
     {"write one of: trunk diameter, trunk girth"}},
    {"boundMissing",
     when("{ measure = \"trunk girth\" }"),
     {"when names no bound", "at-least or below"}},
    {"boundOnBothSides",
     when(R"({ measure = "trunk girth", below = "3 in", at-least = "2 in" })"),
     {"when has both at-least and below"}},
    {"boundMisspelt",
     when(R"({ measure = "trunk girth", below = "3 in", at-last = "2 in" })"),
     {"did you mean when.at-least?"}},
    {"lengthWithoutUnit",
     when(R"({ measure = "trunk girth", below = "3" })"),
     {"when.below says “3”", "with its unit"}},
    {"lengthInNoUnit",
     when(R"({ measure = "trunk girth", below = "3 feathers" })"),
     {"“3 feathers”", "no length"}},
    {"lengthOfNothing",
     when(R"({ measure = "trunk girth", below = "0 in" })"),
     {"no length"}},
    {"lengthAsNumber",
     when("{ measure = \"trunk girth\", below = 3 }"),
     {"when.below is not text"}},
    {"topWireOfATrunk",
     when(R"({ measure = "trunk girth", below = "top wire" })"),
     {"“top wire”", "no length"}},
    {"fruitAsText",
     when(R"({ measure = "fruit per tree", at-least = "30" })"),
     {"when.at-least is not a whole number"}},
    {"spaceBeyondReason",
     when("{ measure = \"space filled\", at-least = 900 }"),
     {"when.at-least is 900", "1 to 200"}},
    {"twoThatShutEachOtherOut",
     when(R"({ measure = "trunk girth", below = "3 in" }, )"
          R"({ measure = "trunk girth", at-least = "3 in" })"),
     {"no tree can meet at once"}},
    {"untilNoTable",
     "repeat = { weak = 3, moderate = 2, strong = 1, until = \"top wire\" }",
     {"repeat.until is not a set of fields"}},
    {"untilFromTheStart",
     until(R"(measure = "leader height", below = "top wire")"),
     {"repeat.until.below", "before the first one", "write at-least"}},
    {"growthWithoutUnit",
     "repeat = { weak = 3, moderate = 2, strong = 1, growth = \"15\" }",
     {"repeat.growth says “15”"}},
    {"repeatKeyUnknown",
     "repeat = { weak = 3, moderate = 2, strong = 1, grow = \"15 in\" }",
     {"did you mean repeat.growth?"}},
    {"lateWithoutCost",
     R"(if-late = { en = "Breaks", es = "Se quiebra" })",
     {"if-late.cost is missing"}},
    {"lateUnknown", "if-late = { cost = \"hihg\" }", {"if-late.cost", "“high”?"}},
    {"lateInOneLanguage",
     R"(if-late = { cost = "high", en = "Breaks" })",
     {"if-late.es has no words"}},
    {"materialCountedTwice",
     R"(materials = [{ item = "t", en = "t", es = "a", per-tree = 1, per-post = 1 }])",
     {"materials.per-post stands beside per-tree"}},
};

INSTANTIATE_TEST_SUITE_P(Table,
                         ConditionFault,
                         ::testing::ValuesIn(faultCases),
                         [](const auto& row) { return std::string{row.param.name}; });

TEST(ProgrammeConditions, letsThinningGoOnUntilFewFruitAreLeft) {
  EXPECT_THAT(faultsOf(operation("a", until("measure = \"fruit per tree\", below = 30"))),
              IsEmpty());
}

TEST(ProgrammeConditions, endsNoVisitsByWhatTheyAreAskedForBy) {
  const std::string grown = R"(measure = "leader height", at-least = "top wire")";
  EXPECT_THAT(
      faultsOf(operation("a", when("{ " + grown + " }") + '\n' + until(grown))),
      ElementsAre(AllOf(StartsWith("p.toml:16: "), HasSubstr("repeat.until ends"))));
}

TEST(ProgrammeConditions, suggestsTheWorkMeant) {
  EXPECT_THAT(faultsOf(operation("tie", "needs = [\"rise-trellis\"]")
                       + operation("raise-trellis")),
              ElementsAre(HasSubstr("did you mean “raise-trellis”?")));
}

TEST(ProgrammeConditions, namesACircleOfNeedsOnce) {
  EXPECT_THAT(
      faultsOf(operation("lead-in", "needs = [\"b\"]") + operation("b", "needs = [\"c\"]")
               + operation("c", "needs = [\"b\"]")),
      ElementsAre(AllOf(StartsWith("p.toml:26: In operation b, "),
                        HasSubstr("in a circle (b → c → b)"),
                        HasSubstr("take a name out of needs"))));
}

TEST(ProgrammeConditions, namesACircleOfNeedsAndAnchors) {
  std::string after = operation("b");
  const std::string opens = "opens = { stage = \"green tip\" }";
  after.replace(after.find(opens), opens.size(), "opens = { after = \"a\" }");
  EXPECT_THAT(faultsOf(operation("a", "needs = [\"b\"]") + after),
              ElementsAre(HasSubstr("in a circle (a → b → a)")));
}

}  // namespace
}  // namespace topwire
