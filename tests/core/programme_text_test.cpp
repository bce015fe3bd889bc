#include "core/programme/programme_text.h"

#include "core/programme/operation_text.h"
#include "core/programme/programme_reader.h"
#include "tests/support/builders.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>
#include <toml++/toml.h>

#include <algorithm>
#include <filesystem>
#include <functional>
#include <random>
#include <sstream>

namespace topwire {
namespace {

using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::StartsWith;

const std::vector<std::string>& shippedTexts() {
  static const std::vector<std::string> texts = [] {
    std::vector<std::string> read;
    const auto folder =
        std::filesystem::path{TOPWIRE_SOURCE_DIR} / "resources/programmes";
    for (const auto& file : std::filesystem::directory_iterator{folder})
      read.push_back(
          testing::sourceText("resources/programmes/" + file.path().filename().string()));
    return read;
  }();
  return texts;
}

Programme programmeIn(std::string_view text) {
  auto read = readProgramme(text, "p.toml");
  if (!read)
    for (const Problem& problem : read.error()) ADD_FAILURE() << inEnglish(problem);
  return read.value_or(Programme{});
}

std::vector<std::string> faultsOf(const Checked<std::string>& edited) {
  std::vector<std::string> said;
  if (edited) return said;
  for (const Problem& problem : edited.error()) said.push_back(inEnglish(problem));
  return said;
}

std::vector<std::string> commentLines(const std::string& text) {
  std::vector<std::string> comments;
  std::istringstream lines{text};
  for (std::string line; std::getline(lines, line);)
    if (line.starts_with('#')) comments.push_back(line);
  return comments;
}

/// What a form may do to an operation.
using Twist = std::function<void(Operation&, int)>;

const std::vector<Twist>& twists() {
  static const std::vector<Twist> all{
      [](Operation& o, int n) {
        o.name = {"Name \"" + std::to_string(n), "Año\\ñ"};
      },
      [](Operation& o, int n) {
        o.shortName = {std::to_string(n), "corto"};
      },
      [](Operation& o, int) { o.shortName = o.name; },
      [](Operation& o, int n) {
        o.leaves = {{-n - 1, n}};
      },
      [](Operation& o, int n) {
        o.leaves = {{1, 1}, {3, 3 + n}, {12, LeafRange::open}};
      },
      [](Operation& o, int) {
        o.vigours = {Vigour::weak, Vigour::strong};
      },
      [](Operation& o, int) {
        o.vigours = {Vigour::weak, Vigour::moderate, Vigour::strong};
      },
      [](Operation& o, int) { o.kinds = {PlantingKind::main}; },
      [](Operation& o, int n) {
        o.opens = {OnStage{53}, 0, n};
      },
      [](Operation& o, int n) {
        o.opens = {OnPlanting{}, -n, n};
      },
      [](Operation& o, int n) {
        o.closes = {OnMonth{11, 30, -1}, n, 0};
      },
      [](Operation& o, int n) {
        o.closes = {OnCompletion{"plant"}, 0, n};
      },
      [](Operation& o, int n) {
        o.cutOff = CutOff{{OnStage{69}, 0, n}, {"Too late", "Ya es tarde"}};
      },
      [](Operation& o, int) { o.cutOff.reset(); },
      [](Operation& o, int n) {
        o.repeat = Repeat{{n + 3, n + 2, n + 1}, {}, {}};
      },
      [](Operation& o, int n) {
        o.repeat = Repeat{{n + 1, n + 1, n + 1}, {}, {}};
      },
      [](Operation& o, int n) {
        o.repeat =
            Repeat{{n + 1, n + 1, n + 1},
                   Length::inches(n + 1),
                   Condition{Measure::leaderHeight, Condition::Side::atLeast, 0, true}};
      },
      [](Operation& o, int) { o.repeat.reset(); },
      [](Operation& o, int) { o.needs = {"plant"}; },
      [](Operation& o, int) { o.needs.clear(); },
      [](Operation& o, int n) {
        o.when = {
            {Measure::trunkDiameter, Condition::Side::atLeast, 38'100 + n * 125, false},
            {Measure::spaceFilled, Condition::Side::below, 80 + n, false}};
      },
      [](Operation& o, int) { o.when.clear(); },
      [](Operation& o, int n) { o.delayCost = static_cast<DelayCost>(n % 4); },
      [](Operation& o, int) {
        o.delayReason = {"It splits", "Se parte"};
      },
      [](Operation& o, int) { o.delayReason = {}; },
      [](Operation& o, int n) {
        o.secondsPerTree = {{1, n}};
      },
      [](Operation& o, int n) {
        o.secondsPerTree = {{-1, n + 1}, {3, n + 2}};
      },
      [](Operation& o, int n) { o.how.resize(1 + static_cast<std::size_t>(n % 3)); },
      [](Operation& o, int n) {
        o.how = {{"Line " + std::to_string(n), "Línea"}};
      },
      [](Operation& o, int) {
        o.doneWhen = {"All done", "Todo listo"};
      },
      [](Operation& o, int) {
        o.tools = {{"saw", "serrucho"}, {"gloves", "guantes"}};
      },
      [](Operation& o, int) { o.tools.clear(); },
      [](Operation& o, int n) {
        o.materials = {
            {"soft tie", {"soft tie", "amarre"}, 0.1 * (n + 1), static_cast<Per>(n % 5)}};
      },
      [](Operation& o, int) { o.materials.clear(); },
      [](Operation& o, int) {
        o.avoid = {Avoid::wet, Avoid::wind};
      },
      [](Operation& o, int) { o.avoid.clear(); },
      [](Operation& o, int n) { o.cuts = n % 2 == 0; },
      [](Operation& o, int n) { o.skill = n % 2 == 0 ? "" : "tractor"; },
      [](Operation& o, int) {
        o.caution = {"Mind the wire.", "Cuidado con el alambre."};
      },
      [](Operation& o, int) { o.caution = {}; },
      [](Operation& o, int) { o.drawing = "soil-test"; },
      [](Operation& o, int) { o.drawing = o.id; },
      [](Operation& o, int) { o.source = "Tried here."; }};
  return all;
}

TEST(ProgrammeText, EveryStatementIsFoundWhereTheParserFindsIt) {
  for (const std::string& text : shippedTexts()) {
    const toml::table whole = toml::parse(text);
    std::size_t assignments = 0;
    std::string again;
    for (const TomlStatement& statement : tomlStatements(text)) {
      again += statement.lines.in(text);
      if (!statement.isHeader()) ++assignments;
    }
    // Headers and assignments alone, each as found, mean what the whole text means.
    EXPECT_EQ(toml::parse(again), whole);
    EXPECT_GT(assignments, 300U);
  }
}

TEST(ProgrammeText, StringsOfEveryKindEndWhereTomlEndsThem) {
  const std::string text =
      "a = \"x # \\\" = [\" # one\n"
      "'b.c'.\"d e\" = '''\n[[operation]] '' # no\n''''\n"
      "f = [ # first\n  \"]\", # second\n  { g = '}' },\n]\n"
      "h = 1979-05-27 07:32:00 # day\n"
      "i = \"\"\"a \\\"\"\" \"\"\"\"\"\r\n"
      "[ t . \"u\" ]\nv=1";
  ASSERT_NO_THROW(toml::parse(text));
  std::vector<std::string> values;
  std::vector<TomlPath> paths;
  for (const TomlStatement& statement : tomlStatements(text)) {
    values.emplace_back(statement.value.in(text));
    paths.push_back(statement.path);
  }
  EXPECT_THAT(values,
              ElementsAre("\"x # \\\" = [\"",
                          "'''\n[[operation]] '' # no\n''''",
                          "[ # first\n  \"]\", # second\n  { g = '}' },\n]",
                          "1979-05-27 07:32:00",
                          "\"\"\"a \\\"\"\" \"\"\"\"\"",
                          "",
                          "1"));
  EXPECT_EQ(paths[1], (TomlPath{"b.c", "d e"}));
  EXPECT_EQ(paths[5], (TomlPath{"t", "u"}));
}

RC_GTEST_PROP(ProgrammeTextProperty, AnyTextIsTakenApartWithoutHarm, ()) {
  const auto text = *rc::gen::container<std::string>(
      rc::gen::elementOf(std::string{"ab.=[]{}\"'#,\\\n\r\t "}));
  std::size_t end = 0;
  for (const TomlStatement& statement : tomlStatements(text)) {
    RC_ASSERT(statement.lines.begin >= end);
    RC_ASSERT(statement.value.begin <= statement.value.end);
    RC_ASSERT(statement.lines.end <= text.size());
    end = statement.lines.end;
  }
}

/// Random steps that are the same at every run.
class ProgrammeTextEdits : public ::testing::TestWithParam<unsigned> {
protected:
  int upTo(std::size_t count) {
    return std::uniform_int_distribution<int>{0, static_cast<int>(count) - 1}(random_);
  }

  template <class List>
  auto& anyOf(List& list) {
    return list[static_cast<std::size_t>(upTo(list.size()))];
  }

private:
  std::mt19937 random_{GetParam()};
};

/// What the programme's rules allow reads back; whatever else the programme says, and
/// every comment, stays; the same edit again changes no byte.
TEST_P(ProgrammeTextEdits, SayWhatTheyShouldAndNothingElse) {
  std::string text = anyOf(shippedTexts());
  const auto comments = commentLines(text);
  Programme programme = programmeIn(text);
  int allowed = 0;
  for (int step = 0; step < 5; ++step) {
    Programme wanted = programme;
    Operation& operation = anyOf(wanted.operations);
    anyOf(twists())(operation, upTo(9));
    const auto edited = withOperation(text, operation);
    if (!edited) continue;
    ++allowed;
    programme = programmeIn(*edited);
    EXPECT_TRUE(
        std::ranges::equal(programme.operations, wanted.operations, sameOperation));
    EXPECT_EQ(commentLines(*edited), comments);
    EXPECT_EQ(withOperation(*edited, operation), *edited);
    text = *edited;
  }
  EXPECT_GT(allowed, 0);
}

TEST_P(ProgrammeTextEdits, TakenBackLeaveEveryValueAsItWas) {
  const std::string& text = anyOf(shippedTexts());
  const Programme before = programmeIn(text);
  const Operation& original = anyOf(before.operations);
  Operation twisted = original;
  anyOf(twists())(twisted, upTo(9));
  const auto edited = withOperation(text, twisted);
  if (!edited) return;
  const auto back = withOperation(*edited, original);
  ASSERT_THAT(faultsOf(back), IsEmpty());
  EXPECT_TRUE(std::ranges::equal(
      programmeIn(*back).operations, before.operations, sameOperation));
}

INSTANTIATE_TEST_SUITE_P(Random, ProgrammeTextEdits, ::testing::Range(0U, 6U));

constexpr const char* small = R"(# My programme.
format = 1
id = "mine"
name.en = "Mine"  # called so at home
name.es = "Mío"
summary = { en = "A test", es = "Una prueba" }

# ---- spring

# Rub them early.
[[operation]]
  id = "rub"
  name = { en = "Rub", es = "Quitar" }   # both
  leaves = "1-3"
  opens.stage = "green tip"
  opens.days = 3
  closes = { stage = "pink" } # never later
  seconds-per-tree = 12
  how.en = [
    "One.",  # the first
    "Two.",
  ]
  how.es = ["Uno.", "Dos."]
  done-when = { en = "Done", es = "Listo" }
  source = "common practice"

  [operation.cut-off]
  stage = "full bloom"
  reason = { en = "Late", es = "Tarde" }

# ---- summer

[[operation]]
id = "tie"
name = { en = "Tie", es = "Amarrar" }
leaves = "1-3"
opens = { after = "rub" }
closes = { after = "rub", days = 9 }
seconds-per-tree = 12
how = { en = ["Tie."], es = ["Amarre."] }
done-when = { en = "Tied", es = "Amarrado" }
source = "common practice")";

Operation rub() {
  return *programmeIn(small).find("rub");
}

std::string edited(const Operation& operation) {
  const auto text = withOperation(small, operation);
  EXPECT_THAT(faultsOf(text), IsEmpty());
  return text.value_or("");
}

TEST(ProgrammeText, OneValueChangesInPlace) {
  Operation operation = rub();
  operation.opens.days = 5;
  std::string expected = small;
  expected.replace(expected.find("days = 3"), 8, "days = 5");
  EXPECT_EQ(edited(operation), expected);

  operation = rub();
  operation.closes = {OnStage{60}, 0, -1};
  expected = small;
  expected.replace(expected.find("{ stage = \"pink\" }"),
                   18,
                   "{ stage = \"first bloom\", days = -1 }");
  EXPECT_EQ(edited(operation), expected);
}

TEST(ProgrammeText, DottedKeysStayDotted) {
  Operation operation = rub();
  operation.opens = {OnMonth{4, 2, 0}, 0, 3};
  EXPECT_THAT(edited(operation),
              AllOf(HasSubstr("  opens.days = 3\n  opens.month = \"april\"\n"
                              "  opens.day = 2\n  closes ="),
                    Not(HasSubstr("opens.stage"))));
}

TEST(ProgrammeText, ANewFieldGoesWhereOperationsHaveIt) {
  Operation operation = rub();
  operation.repeat = Repeat{{21, 21, 14}, {}, {}};
  operation.caution = {"Mind it.", "Cuidado."};
  EXPECT_THAT(edited(operation),
              AllOf(HasSubstr("# never later\n  repeat = { weak = 21, moderate = 21, "
                              "strong = 14 }\n  seconds"),
                    HasSubstr("es = \"Listo\" }\n  caution.en = \"Mind it.\"\n"
                              "  caution.es = \"Cuidado.\"\n  source")));
}

TEST(ProgrammeText, CommentsInsideAReplacedListMoveAboveIt) {
  Operation operation = rub();
  operation.how[0].en = "First.";
  EXPECT_THAT(edited(operation),
              HasSubstr("  # the first\n  how.en = [\"First.\", \"Two.\"]\n"));
}

TEST(ProgrammeText, ATableOfItsOwnIsWrittenAmongTheOtherLines) {
  Operation operation = rub();
  operation.cutOff->anchor.days = 2;
  EXPECT_THAT(edited(operation),
              AllOf(HasSubstr("  cut-off.stage = \"full bloom\"\n  cut-off.days = 2\n"
                              "  cut-off.reason.en = \"Late\"\n"),
                    Not(HasSubstr("[operation.cut-off]")),
                    HasSubstr("\n# ---- summer\n")));
  operation.cutOff.reset();
  EXPECT_THAT(edited(operation), Not(HasSubstr("cut-off")));
}

TEST(ProgrammeText, ATextWithoutALastLineBreakIsGoneOnWith) {
  Operation tie = *programmeIn(small).find("tie");
  tie.source = "Tried.";
  tie.drawing = "leader-tie";
  EXPECT_THAT(withOperation(small, tie).value_or(""),
              HasSubstr("drawing = \"leader-tie\"\nsource = \"Tried.\""));
}

TEST(ProgrammeText, LineBreaksOfTheOtherKindStay) {
  std::string text;
  for (const char* c = small; *c != '\0'; ++c)
    text += *c == '\n' ? "\r\n" : std::string{*c};
  Operation operation = rub();
  operation.repeat = Repeat{{9, 9, 9}, {}, {}};
  const std::string result = withOperation(text, operation).value_or("");
  EXPECT_THAT(result, HasSubstr("repeat = 9\r\n"));
  EXPECT_EQ(std::ranges::count(result, '\n'), std::ranges::count(result, '\r'));
}

TEST(ProgrammeText, ACopyHasItsOwnIdAndNameAndEveryOtherByte) {
  const auto copy = copyOf(small, "ours", {"Ours \"new\"", "Nuestro"});
  ASSERT_TRUE(copy);
  EXPECT_EQ(programmeIn(*copy).id, "ours");
  EXPECT_EQ(programmeIn(*copy).name, (Words{"Ours \"new\"", "Nuestro"}));
  EXPECT_EQ(copyOf(*copy, "mine", {"Mine", "Mío"}), small);
}

TEST(ProgrammeText, ACopiedOperationStandsBehindTheFirst) {
  const auto text = withCopiedOperation(small, "rub", "rub-again", {"Again", "Otra vez"});
  ASSERT_THAT(faultsOf(text), IsEmpty());
  const Programme programme = programmeIn(*text);
  ASSERT_EQ(programme.operations.size(), 3U);
  const Operation& copy = programme.operations[1];
  Operation expected = rub();
  expected.id = "rub-again";
  expected.name = expected.shortName = {"Again", "Otra vez"};
  expected.drawing = "rub";
  EXPECT_TRUE(sameOperation(copy, expected));
  EXPECT_EQ(withoutOperation(*text, "rub-again"), small);
  EXPECT_THAT(faultsOf(withCopiedOperation(small, "rub", "tie", {"T", "T"})),
              ElementsAre(HasSubstr("the id is the same as in line")));
}

TEST(ProgrammeText, AnOperationGoesWithItsComment) {
  const auto text = withoutOperation(small, "tie");
  ASSERT_TRUE(text);
  EXPECT_THAT(*text, AllOf(HasSubstr("# Rub them early."), HasSubstr("# ---- summer")));
  EXPECT_EQ(programmeIn(*text).operations.size(), 1U);
}

TEST(ProgrammeText, WhatOthersHangOnStays) {
  EXPECT_THAT(faultsOf(withoutOperation(small, "rub")),
              ::testing::Each(HasSubstr("hangs on “rub”, which no operation has")));
}

TEST(ProgrammeText, AFaultOfTheEditIsPlacedAtItsField) {
  Operation operation = rub();
  operation.closes = {OnStage{53}, 0, -2};
  operation.how.clear();
  EXPECT_THAT(faultsOf(withOperation(small, operation)),
              ElementsAre(StartsWith("mine:"), StartsWith("closes: In operation rub")));
  operation = rub();
  operation.leaves = {{5, 6}};
  EXPECT_THAT(faultsOf(withOperation(small, operation)),
              ::testing::Each(StartsWith("mine:")));
}

TEST(ProgrammeText, AFieldCanBeSetAsItIsTyped) {
  const auto text = withField(small, "tie", "repeat", TomlValue{"14", {}, false});
  ASSERT_THAT(faultsOf(text), IsEmpty());
  EXPECT_THAT(*text, HasSubstr("days = 9 }\nrepeat = 14\nseconds"));
  EXPECT_THAT(faultsOf(withField(small, "tie", "repeat", TomlValue{"[", {}, false})),
              ElementsAre(HasSubstr("not TOML")));
  EXPECT_THAT(faultsOf(withField(small, "tee", "repeat", std::nullopt)),
              ElementsAre(HasSubstr("There is no operation tee")));
}

TEST(ProgrammeText, OperationsInBracesAreLeftToTheHand) {
  const std::string text = R"(format = 1
id = "mine"
name = { en = "Mine", es = "Mío" }
summary = { en = "A test", es = "Una prueba" }
operation = [{ id = "rub", name = { en = "Rub", es = "Quitar" }, leaves = 1, opens = { stage = 53 }, closes = { stage = 60 }, seconds-per-tree = 1, how = { en = "A", es = "B" }, done-when = { en = "A", es = "B" }, source = "x" }]
)";
  Operation operation = *programmeIn(text).find("rub");
  operation.cuts = true;
  EXPECT_THAT(faultsOf(withOperation(text, operation)),
              ElementsAre(HasSubstr("change it in the text by hand")));
}

TEST(ProgrammeText, ALineIsOfAnOperationAndAField) {
  EXPECT_EQ(programmePlace(small, 3).field, "id");
  EXPECT_EQ(programmePlace(small, 3).operation, "");
  EXPECT_EQ(programmePlace(small, 15).operation, "rub");
  EXPECT_EQ(programmePlace(small, 15).field, "opens");
  EXPECT_EQ(programmePlace(small, 29).field, "cut-off");
  EXPECT_EQ(programmePlace(small, 900).operation, "");
}

}  // namespace
}  // namespace topwire
