#include "core/edit/programme_deeds.h"

#include "core/planning/plan_effect.h"
#include "core/planning/programmes_at_hand.h"
#include "core/programme/programme_reader.h"
#include "core/programme/programme_text.h"
#include "tests/core/deeds_support.h"
#include "tests/support/builders.h"
#include "tests/support/operations.h"

#include <gmock/gmock.h>

namespace topwire {
namespace {

using testing::after;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing::nameOf;
using testing::orchardOfTwo;
using testing::said;
using testing::shippedProgrammes;

constexpr const char* spindle = "tall-spindle-apple";

const std::string& shippedText() {
  static const std::string text =
      testing::sourceText("resources/programmes/tall-spindle-apple.toml");
  return text;
}

Checked<Change> added(const Orchard& orchard, const std::string& id = "mine") {
  return addProgramme(orchard, shippedProgrammes(), shippedText(), id, {"Mine", ""});
}

/// With a copy called "mine" that the first planting goes by.
Orchard withOwn() {
  Orchard orchard = after(orchardOfTwo(), added(orchardOfTwo()));
  return after(
      orchard,
      chooseProgramme(
          orchard, programmesOf(shippedProgrammes(), orchard), {{0, 10}}, "mine"));
}

std::vector<std::string> spokenOf(const std::vector<Sentence>& sentences) {
  std::vector<std::string> spoken;
  for (const Sentence& sentence : sentences) spoken.push_back(inEnglish(sentence));
  return spoken;
}

TEST(ProgrammeDeeds, AShippedOneIsCopiedUnderAFreshId) {
  EXPECT_EQ(nameOf(added(orchardOfTwo())), "Programme Mine added");
  const Orchard orchard = withOwn();
  const Programmes all = programmesOf(shippedProgrammes(), orchard);
  EXPECT_EQ(all.at("mine").name, (Words{"Mine", "Mine"}));
  EXPECT_EQ(all.at("mine").operations.size(), all.at(spindle).operations.size());
  EXPECT_THAT(said(added(orchard)),
              ElementsAre(HasSubstr("id: There is a programme mine already")));
  EXPECT_THAT(said(added(orchard, spindle)),
              ElementsAre(HasSubstr("id: tall-spindle-apple is the id of a programme")));
  EXPECT_THAT(said(added(orchard, "My spindle")),
              ElementsAre(HasSubstr("id: A programme's id has small letters")));
  EXPECT_THAT(
      said(addProgramme(orchard, shippedProgrammes(), shippedText(), "x", {" ", ""})),
      ElementsAre(HasSubstr("name: A name is missing")));
  EXPECT_EQ(freshProgrammeId(orchard, shippedProgrammes(), "mine"), "mine-2");
}

TEST(ProgrammeDeeds, AnEditKeepsTheId) {
  const Orchard orchard = withOwn();
  const std::string text = orchard.programmes.at("mine").text;
  EXPECT_TRUE(editProgramme(orchard, "mine", text)->empty());
  EXPECT_THAT(said(editProgramme(orchard, "mine", shippedText())),
              ElementsAre(HasSubstr("The text names itself tall-spindle-apple")));
  EXPECT_THAT(said(editProgramme(orchard, "mine", "format = ")),
              ElementsAre(HasSubstr("mine:1: From here on the text is not TOML")));
  EXPECT_THAT(said(editProgramme(orchard, spindle, shippedText())),
              ElementsAre(HasSubstr("no longer in the orchard")));
  const auto other = withoutOperation(text, "site-choice");
  EXPECT_EQ(nameOf(editProgramme(orchard, "mine", other.value())),
            "Programme Mine changed");
}

TEST(ProgrammeDeeds, AUsedOneStays) {
  Orchard orchard = withOwn();
  EXPECT_THAT(said(removeProgramme(orchard, "mine")),
              ElementsAre(HasSubstr("programme: Mine is used by p10; choose another")));
  orchard =
      after(orchard, chooseProgramme(orchard, shippedProgrammes(), {{0, 10}}, spindle));
  EXPECT_EQ(nameOf(removeProgramme(orchard, "mine")), "Programme Mine removed");
  orchard = after(orchard, removeProgramme(orchard, "mine"));
  EXPECT_THAT(orchard.programmes, IsEmpty());
}

TEST(ProgrammeDeeds, PlantingsChoose) {
  const Orchard orchard = orchardOfTwo();
  const Programmes all = shippedProgrammes();
  const auto change =
      chooseProgramme(orchard, all, {{0, 10}, {0, 11}}, "planar-wall-apple");
  EXPECT_THAT(nameOf(change), HasSubstr("p10, p11 goes by the programme"));
  EXPECT_TRUE(chooseProgramme(orchard, all, {{0, 10}}, spindle)->empty());
  EXPECT_THAT(said(chooseProgramme(orchard, all, {{0, 10}}, "none")),
              ElementsAre(HasSubstr("programme: There is no programme none here")));
}

TEST(ProgrammeDeeds, AFileIsBroughtInOrPutsANewWording) {
  Orchard orchard = orchardOfTwo();
  EXPECT_THAT(
      said(bringInProgramme(orchard, shippedProgrammes(), shippedText(), "f.toml")),
      ElementsAre(HasSubstr("came with Topwire")));
  EXPECT_THAT(
      said(bringInProgramme(orchard, shippedProgrammes(), "format = 2", "f.toml")),
      ::testing::Contains(HasSubstr("f.toml:1: In the programme, format is 2")));
  const std::string text = copyOf(shippedText(), "ours", {"Ours", "Nuestro"}).value();
  orchard =
      after(orchard, bringInProgramme(orchard, shippedProgrammes(), text, "f.toml"));
  EXPECT_EQ(orchard.programmes.at("ours").text, text);
  EXPECT_TRUE(bringInProgramme(orchard, shippedProgrammes(), text, "f.toml")->empty());
}

TEST(OwnProgrammes, OneThatDoesNotReadIsLeftOutAndTold) {
  Orchard orchard = withOwn();
  ProgrammesAtHand atHand{shippedProgrammes()};
  atHand.take(orchard);
  const Operation* shipped = &atHand.all().at(spindle).operations.front();
  EXPECT_TRUE(atHand.all().contains("mine"));
  EXPECT_THAT(atHand.notes(), IsEmpty());
  orchard.programmes.at("mine").text = "format = 1";
  atHand.take(orchard);
  EXPECT_FALSE(atHand.all().contains("mine"));
  EXPECT_THAT(spokenOf(atHand.notes()),
              ElementsAre(HasSubstr("The programme mine of this orchard does not read")));
  orchard.programmes.clear();
  atHand.take(orchard);
  EXPECT_THAT(atHand.notes(), IsEmpty());
  EXPECT_EQ(&atHand.all().at(spindle).operations.front(), shipped);
}

/// On stages of fixed days: full bloom on 10 May.
class EffectTest : public ::testing::Test {
protected:
  PlanEffect of(const std::vector<Operation>& before,
                const std::vector<Operation>& after) const {
    const Programmes programmes = testing::programmesOf(before);
    return effectOf(orchard_,
                    {noTables_, programmes, forecaster_},
                    testing::programmesOf(after).begin()->second,
                    today_);
  }

  Orchard orchard_ =
      testing::orchardOfOne(testing::northernSettings(), dayOf(2024, 4, 1));
  TradeTables noTables_;
  testing::FixedForecaster forecaster_;
  Day today_ = dayOf(2027, 4, 6);
};

TEST_F(EffectTest, TellsWhatMovesComesAndGoes) {
  using testing::atMonth;
  using testing::operation;
  const Operation rub = operation("rub", atMonth(4, 20), atMonth(4, 30));
  Operation later = rub;
  later.opens.days = 3;
  later.closes.days = 5;
  const Operation tie = operation("tie", atMonth(6, 1), atMonth(6, 30));
  const PlanEffect effect =
      of({rub, tie}, {later, operation("thin", atMonth(6, 5), atMonth(6, 9))});
  // This season and the next; last season's is over in both.
  EXPECT_THAT(spokenOf(summaryOf(effect)),
              ElementsAre("2 tasks move", "2 tasks come", "2 tasks go"));
  EXPECT_EQ(effect.differences[0].opensShift, 3);
  EXPECT_EQ(effect.differences[0].closesShift, 5);
}

TEST_F(EffectTest, CountsTheWorkStillToDoThisSeason) {
  using testing::atMonth;
  using testing::operation;
  const Operation past = operation("past", atMonth(2, 1), atMonth(2, 9));
  Operation rub = operation("rub", atMonth(4, 20), atMonth(4, 30));
  Operation slower = rub;
  slower.secondsPerTree = {{1, 72}};
  // 1,000 trees at 36 s more each.
  EXPECT_THAT(spokenOf(summaryOf(of({past, rub}, {past, slower}))),
              ElementsAre("10 worker-hours more this season"));
  EXPECT_DOUBLE_EQ(of({past, slower}, {past, rub}).hours, -10);
  EXPECT_TRUE(of({rub}, {rub}).none());
  EXPECT_THAT(spokenOf(summaryOf(of({rub}, {rub}))),
              ElementsAre("Nothing changes in the plan"));
}

TEST_F(EffectTest, IsTheSameForTheSameProgramme) {
  const Programmes& programmes = shippedProgrammes();
  const Trade trade{testing::shippedTables(), programmes, forecaster_};
  EXPECT_TRUE(effectOf(orchard_, trade, programmes.at(spindle), today_).none());
}

}  // namespace
}  // namespace topwire
