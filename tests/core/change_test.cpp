#include "core/edit/change.h"

#include "tests/support/builders.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace topwire {
namespace {

using ::testing::HasSubstr;

constexpr TaskKey leaderTie{{0, 2}, "leader-tie", {2027}, 2};

Tick tickOf(const std::string& rows) {
  Tick tick;
  tick.id = {0xfedcba9876543210, 7};
  tick.task = leaderTie;
  tick.rows = parseRows(rows).rows;
  tick.percent = 50;
  tick.minutes = 90;
  tick.by = "Ñandú crew";
  tick.day = dayOf(2027, 4, 6);
  return tick;
}

Planting fullPlanting() {
  Planting planting =
      testing::planting(2, testing::block(1, "Creek", "1-12, 15"), dayOf(2024, 2, 29));
  planting.kind = PlantingKind::replant;
  planting.treesPerRow.reset();
  planting.trees = 37;
  planting.vigour = Vigour::strong;
  planting.vigourReason = "Brotes de más de 60 cm — 2026 \"visto\"";
  return planting;
}

TaskMark fullMark() {
  TaskMark mark;
  mark.task = leaderTie;
  mark.moved = DaySpan{dayOf(2027, 3, 1), dayOf(2027, 3, 9)};
  mark.setAsideReason = "lluvia\nlluvia";
  mark.handTitle = "Mend wire 🍎";
  mark.handSecondsPerTree = 4;
  return mark;
}

/// Every record kind and every kind of value a name can hold, in each of the three
/// shapes of an edit.
Change changeOfEverything() {
  Block block = testing::block(1, "Río Ñ", "1-12, 15");
  block.rowLength = Length::feet(300);
  block.elevation = Length::metres(-3);
  Block later = block;
  later.notes = "two\nlines";
  Tick back = tickOf("1-4");
  back.takesBack = TickId{1, 2};
  return {Sentence{phrase("Deed", "%1 %2 %3 %4 %5"),
                   {std::string{"Ñ"},
                    std::int64_t{-4},
                    Figure{0.1, 2},
                    dayOf(2027, 4, 6),
                    Words{"Tie", "Atar"}}},
          {Edit<Settings>{testing::northernSettings(), testing::southernSettings()},
           Edit<Block>{block, later},
           Edit<Planting>{std::nullopt, fullPlanting()},
           Edit<Crew>{Crew{{0, 5}, "Río", 6, 7.25}, std::nullopt},
           Edit<Observation>{std::nullopt,
                             Observation{{0, 6}, {0, 2}, 53, dayOf(2027, 3, 30), "Ana"}},
           Edit<Tick>{std::nullopt, back},
           Edit<TaskMark>{std::nullopt, fullMark()}}};
}

TEST(ChangeJson, ReadsBackEqualForEveryRecordKindAndNonAsciiText) {
  const Change change = changeOfEverything();
  ASSERT_EQ(change.edits.size(), std::variant_size_v<AnyEdit>);
  const auto read = changeFromJson(toJson(change));
  ASSERT_TRUE(read.has_value()) << read.error().detail;
  EXPECT_EQ(*read, change);
}

TEST(ChangeJson, WritesDaysAndRowsAsAPersonReadsThem) {
  const std::string json =
      toJson(Change{Sentence{}, {Edit<Tick>{std::nullopt, tickOf("1-4, 7")}}});
  EXPECT_THAT(json, HasSubstr("\"day\":\"2027-04-06\""));
  EXPECT_THAT(json, HasSubstr("\"rows\":\"1-4, 7\""));
  EXPECT_THAT(json, HasSubstr("\"id\":\"fedcba98765432100000000000000007\""));
}

TEST(ChangeJson, MendsTextThatIsNoUtf8RatherThanThrowing) {
  Tick tick = tickOf("1");
  tick.by = "caf\xE9";
  const auto read =
      changeFromJson(toJson(Change{Sentence{}, {Edit<Tick>{std::nullopt, tick}}}));
  ASSERT_TRUE(read.has_value());
  EXPECT_EQ(std::get<Edit<Tick>>(read->edits[0]).after->by, "caf\xEF\xBF\xBD");
}

class BadJson : public ::testing::TestWithParam<std::string> {};

TEST_P(BadJson, IsAProblemAndNoCrash) {
  EXPECT_FALSE(changeFromJson(GetParam()).has_value()) << GetParam();
}

std::string jsonOfOneCrewWith(const std::string& crew) {
  return R"({"name":{"context":"","text":"","values":[]},"edits":[{"record":"crew",)"
         R"("before":null,"after":)"
         + crew + "}]}";
}

INSTANTIATE_TEST_SUITE_P(
    Change,
    BadJson,
    ::testing::Values(
        "",
        "{",
        "[]",
        "null",
        R"({"name":{}})",
        R"({"name":{"context":"","text":"","values":[{"day":"2027-02-30"}]},"edits":[]})",
        R"({"name":{"context":"","text":"","values":[]},"edits":[{"record":"tree","before":null,"after":null}]})",
        jsonOfOneCrewWith("null"),
        jsonOfOneCrewWith("{}"),
        jsonOfOneCrewWith(R"({"id":"12","name":"A","workers":1,"hoursPerDay":8})"),
        jsonOfOneCrewWith(
            R"({"id":"0123456789abcdef0123456789abcdef","name":7,"workers":1,"hoursPerDay":8})"),
        std::string(100'000, '[')));

TEST(ChangeJson, TheTableOfBadCrewsWouldReadWithAGoodOne) {
  EXPECT_TRUE(
      changeFromJson(
          jsonOfOneCrewWith(
              R"({"id":"0123456789abcdef0123456789abcdef","name":"A","workers":1,"hoursPerDay":8})"))
          .has_value());
}

TEST(Inverted, UndoesAllEditsInTheOtherOrder) {
  const Orchard before =
      testing::orchardOfOne(testing::northernSettings(), dayOf(2025, 4, 1));
  const Block added = testing::block(9, "Hill", "1-3");
  Settings renamed = before.settings;
  renamed.name = "Elder Bend";
  const Change change{
      Sentence{phrase("Test", "Hill added")},
      {Edit<Settings>{before.settings, renamed},
       Edit<Block>{std::nullopt, added},
       Edit<Planting>{std::nullopt, testing::planting(8, added, dayOf(2026, 4, 1))}}};
  auto ids = IdSource::countingFrom(100);
  const Change inverse = inverted(change, ids);
  EXPECT_TRUE(std::holds_alternative<Edit<Planting>>(inverse.edits.front()));
  EXPECT_EQ(inverse.name, change.name);

  Orchard orchard = before;
  apply(orchard, change);
  EXPECT_NE(orchard, before);
  apply(orchard, inverse);
  EXPECT_EQ(orchard, before);
}

TEST(Inverted, TakesAnAddedTickBackWithAFurtherOne) {
  auto ids = IdSource::countingFrom(100);
  const Change inverse =
      inverted({Sentence{}, {Edit<Tick>{std::nullopt, tickOf("1-4")}}}, ids);
  const auto& edit = std::get<Edit<Tick>>(inverse.edits.at(0));
  EXPECT_FALSE(edit.before);
  EXPECT_EQ(edit.after->id, (TickId{100, 101}));
  EXPECT_EQ(edit.after->takesBack, tickOf("1-4").id);
  EXPECT_EQ(edit.after->task, leaderTie);
  EXPECT_EQ(edit.after->minutes, 0);
}

struct Unfit {
  const char* name;
  AnyEdit edit;
};

class ChangeThatDoesNotFit : public ::testing::TestWithParam<Unfit> {};

TEST_P(ChangeThatDoesNotFit, IsSaidSo) {
  Orchard orchard = testing::orchardOfOne(testing::northernSettings(), dayOf(2025, 4, 1));
  orchard.ticks[tickOf("1").id] = tickOf("1");
  EXPECT_FALSE(fits(orchard, {Sentence{}, {GetParam().edit}}).has_value());
}

Planting onlyPlanting() {
  return testing::orchardOfOne(testing::northernSettings(), dayOf(2025, 4, 1))
      .plantings.begin()
      ->second;
}

INSTANTIATE_TEST_SUITE_P(
    Change,
    ChangeThatDoesNotFit,
    ::testing::Values(
        Unfit{"settings otherwise",
              Edit<Settings>{testing::southernSettings(), testing::northernSettings()}},
        Unfit{"added twice",
              Edit<Block>{std::nullopt, testing::block(1, "Creek", "1-10")}},
        Unfit{"not there", Edit<Crew>{Crew{{0, 5}, "Río", 6, 8}, std::nullopt}},
        Unfit{"edited meanwhile",
              Edit<Block>{testing::block(1, "Creek", "1-9"),
                          testing::block(1, "Creek", "1-8")}},
        Unfit{"planting under ticks", Edit<Planting>{onlyPlanting(), std::nullopt}},
        Unfit{"tick changed", Edit<Tick>{tickOf("1"), tickOf("1-2")}},
        Unfit{"tick removed", Edit<Tick>{tickOf("1"), std::nullopt}}),
    [](const auto& unfit) {
      std::string name = unfit.param.name;
      std::ranges::replace(name, ' ', '_');
      return name;
    });

TEST(Apply, LetsAPlantingsStoredTasksGoWithIt) {
  Orchard orchard = testing::orchardOfOne(testing::northernSettings(), dayOf(2025, 4, 1));
  orchard.tasks[leaderTie] = {
      leaderTie, dayOf(2027, 4, 1), dayOf(2027, 4, 9), std::nullopt, false};
  apply(orchard, {Sentence{}, {Edit<Planting>{onlyPlanting(), std::nullopt}}});
  EXPECT_TRUE(orchard.tasks.empty());
}

TEST(ApplyDeathTest, OfAChangeThatDoesNotFitIsABrokenContract) {
  Orchard orchard;
  const Change change{Sentence{}, {Edit<Crew>{Crew{{0, 5}, "Río", 6, 8}, std::nullopt}}};
  EXPECT_DEATH(apply(orchard, change), "contract broken");
}

}  // namespace
}  // namespace topwire
